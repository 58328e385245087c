package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import org.longlow.constraints.words.OneLine;

/**
 * Prints what commands say so that no name, note or formula of a file reaches the terminal as a
 * command to it; see {@link OneLine#lines}.
 */
final class PlainWriter extends PrintWriter {

  private boolean ending;

  PlainWriter(PrintWriter to) {
    super(to);
  }

  @Override
  public void write(String text, int from, int length) {
    String plain = ending ? null : OneLine.lines(text.substring(from, from + length));
    if (plain == null) {
      super.write(text, from, length);
    } else {
      super.write(plain, 0, plain.length());
    }
  }

  @Override
  public void write(char[] text, int from, int length) {
    write(new String(text, from, length), 0, length);
  }

  @Override
  public void write(int c) {
    write(String.valueOf((char) c), 0, 1);
  }

  /** Ends the line as the system does, which may take a carriage return. */
  @Override
  public void println() {
    ending = true;
    super.println();
    ending = false;
    flush();
  }
}
