package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;

/**
 * One line on the terminal that says how far a long command is, and is wiped when it ends or is
 * interrupted. Where errors do not go to a terminal it says nothing, or a line now and then. Safe
 * for several threads.
 */
final class ProgressLine implements AutoCloseable {

  /** Back to the beginning of the line, and clear it (ECMA-48: erase in line). */
  private static final String WIPE = "\r\u001b[K";

  /** A pipe is told nothing of what ends within this. */
  private static final Duration FIRST = Duration.ofSeconds(10);

  /** Between two lines to a pipe. */
  private static final Duration EVERY = Duration.ofMinutes(1);

  private final PrintStream terminal;
  private final PrintStream log;
  private final long everyNanos;
  private final Thread onInterrupt;
  private long fromNanos = System.nanoTime();
  private boolean shown;

  /**
   * @param terminal where the line goes; null for nowhere
   */
  ProgressLine(PrintStream terminal) {
    this(terminal, null, Duration.ZERO);
  }

  private ProgressLine(PrintStream terminal, PrintStream log, Duration every) {
    this.terminal = terminal;
    this.log = log;
    everyNanos = every.toNanos();
    onInterrupt = new Thread(this::wipe);
    if (terminal != null) {
      Runtime.getRuntime().addShutdownHook(onInterrupt);
    }
  }

  static ProgressLine onTerminal() {
    return new ProgressLine(isTerminal() ? System.err : null);
  }

  /** For what may take minutes: where there is no terminal, a line now and then. */
  static ProgressLine ofLongWork() {
    return isTerminal() ? new ProgressLine(System.err) : lines(System.err, FIRST, EVERY);
  }

  /** Whole lines, the first after some time and so long between two. */
  static ProgressLine lines(PrintStream log, Duration first, Duration every) {
    return new ProgressLine(null, log, every).after(first);
  }

  /** Errors may go to a terminal while the rest goes to a file; where that cannot be told, both. */
  private static boolean isTerminal() {
    try {
      String where = Files.readSymbolicLink(Path.of("/proc/self/fd/2")).toString();
      return where.startsWith("/dev/pts/") || where.startsWith("/dev/tty");
    } catch (IOException | UnsupportedOperationException e) {
      return System.console() != null;
    }
  }

  /** Returns this line, which from now on says nothing for so long. */
  synchronized ProgressLine after(Duration quiet) {
    fromNanos = System.nanoTime() + quiet.toNanos();
    return this;
  }

  /** Shows what is going on and how much of it is done. */
  synchronized void show(String what, int done, int of) {
    long now = System.nanoTime();
    if (log != null && now - fromNanos >= 0) {
      log.println("longlow: " + what + ": " + done + " of " + of);
      fromNanos = now + everyNanos;
    }
    if (terminal != null && now - fromNanos >= 0) {
      terminal.print(WIPE + what + ": " + done + " of " + of);
      terminal.flush();
      shown = true;
    }
  }

  private synchronized void wipe() {
    if (shown) {
      terminal.print(WIPE);
      terminal.flush();
      shown = false;
    }
  }

  @Override
  public void close() {
    wipe();
    if (terminal != null) {
      try {
        Runtime.getRuntime().removeShutdownHook(onInterrupt);
      } catch (IllegalStateException e) {
        // interrupted just now: the hook runs, and what it wipes is gone already
      }
    }
  }
}
