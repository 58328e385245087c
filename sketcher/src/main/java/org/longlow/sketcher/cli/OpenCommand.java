package org.longlow.sketcher.cli;

import java.lang.reflect.InvocationTargetException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** {@code longlow open}: the window. */
@Command(name = "open", description = "Opens the window.")
final class OpenCommand implements Callable<Integer> {

  /** Reached by name, so that no command but this one loads the window toolkit. */
  private static final String WINDOW = "org.longlow.sketcher.fx.LonglowWindow";

  @Parameters(paramLabel = "FILE", arity = "0..1", description = "A layout file to open.")
  private Path file;

  @Override
  public Integer call() throws ReflectiveOperationException {
    try {
      Class.forName(WINDOW)
          .getMethod("open", Optional.class)
          .invoke(null, Optional.ofNullable(file));
    } catch (InvocationTargetException e) {
      if (e.getCause() instanceof UnsupportedOperationException none) {
        throw new Refusal(
            "no window can be opened here ("
                + none.getMessage()
                + "); use the other commands, or run it where there is a screen");
      }
      throw e;
    }
    return ExitCodes.STAY_OPEN;
  }
}
