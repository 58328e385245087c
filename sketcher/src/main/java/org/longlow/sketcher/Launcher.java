package org.longlow.sketcher;

import java.io.Console;
import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import org.longlow.sketcher.cli.ExitCodes;
import org.longlow.sketcher.cli.Longlow;

/**
 * The entry point. A plain class, so that commands never load the window toolkit.
 *
 * <p>The window is reached by name only when it is asked for, which keeps the start of a command
 * short.
 */
public final class Launcher {

  private Launcher() {}

  public static void main(String[] args) throws IOException {
    if (args.length > 0 && !args[0].equals("open")) {
      // commands draw into memory and never look for a screen
      System.setProperty("java.awt.headless", "true");
    }
    if (args.length == 1 && args[0].equals(WarmUp.WORD)) {
      System.exit(WarmUp.run());
    }
    PrintWriter out = new PrintWriter(System.out, false, letters());
    PrintWriter err = new PrintWriter(System.err, true, letters());
    int code = Longlow.run(out, err, args);
    if (code != ExitCodes.STAY_OPEN) {
      System.exit(code);
    }
  }

  /** Returns UTF-8, but for a Windows console, which reads letters by its own code page. */
  private static Charset letters() {
    Console console = File.separatorChar == '\\' ? System.console() : null;
    return console == null ? StandardCharsets.UTF_8 : console.charset();
  }
}
