package org.longlow.image;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.spi.ToolProvider;

/** Runs tools of the JDK and other programs, and ends with what they said where one fails. */
final class Tool {

  private Tool() {}

  /**
   * Runs a tool of the JDK that this runs on.
   *
   * @return what it wrote
   * @throws IllegalStateException if it fails, with what it said
   */
  static String run(String name, List<String> arguments) {
    ToolProvider tool =
        ToolProvider.findFirst(name)
            .orElseThrow(
                () -> new IllegalStateException("no " + name + " here; run Maven with a full JDK"));
    StringWriter said = new StringWriter();
    PrintWriter writer = new PrintWriter(said);
    int code = tool.run(writer, writer, arguments.toArray(String[]::new));
    if (code != 0) {
      throw new IllegalStateException(name + " ended with " + code + ": " + said);
    }
    return said.toString();
  }

  /** Runs a program to its end and returns its exit code; its output goes to {@code log}. */
  static int start(Path log, List<String> command) throws IOException, InterruptedException {
    return new ProcessBuilder(command)
        .redirectErrorStream(true)
        .redirectOutput(log.toFile())
        .start()
        .waitFor();
  }
}
