package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.stream.Stream;

/**
 * A command that was run in this process.
 *
 * @param code how it ended
 * @param out what it answered
 * @param err what it said beside the answer
 */
public record Ran(int code, String out, String err) {

  /** Runs a command; its words may be paths and figures too. */
  public static Ran of(Object... words) {
    StringWriter out = new StringWriter();
    StringWriter err = new StringWriter();
    int code =
        Longlow.run(
            new PrintWriter(out, true),
            new PrintWriter(err, true),
            Stream.of(words).map(String::valueOf).toArray(String[]::new));
    return new Ran(code, out.toString(), err.toString());
  }

  /** All that it said, the answer first. */
  public String said() {
    return out + err;
  }
}
