package org.longlow.sketcher;

import java.io.PrintWriter;
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

  public static void main(String[] args) {
    if (args.length > 0 && !args[0].equals("open")) {
      // commands draw into memory and never look for a screen
      System.setProperty("java.awt.headless", "true");
    }
    PrintWriter out = new PrintWriter(System.out, false, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = Longlow.run(out, err, args);
    if (code != ExitCodes.STAY_OPEN) {
      System.exit(code);
    }
  }
}
