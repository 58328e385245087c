package org.longlow.sketcher.fx;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;
import java.util.Optional;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.longlow.demo.Demos;
import org.longlow.sketcher.desk.Autosave;

/**
 * Opens a shipped machine as {@code longlow open} does and tells when the window is up and when the
 * machine is painted on it, in seconds from the start of the program. Not part of the build; run it
 * as a program, once for each figure, with a machine's name.
 */
public final class OpenTime {

  private OpenTime() {}

  public static void main(String[] args) throws Exception {
    Path folder = Files.createTempDirectory("longlow-open");
    Path file = Demos.copy(args.length > 0 ? args[0] : Demos.names().get(0), folder);
    Autosave autosave = new Autosave(Files.createTempDirectory("longlow-benchmark"));
    double began = sinceStart();
    Platform.setImplicitExit(false);
    Beginning begun = new Beginning(Optional.of(file), autosave);
    Platform.startup(
        () -> {
          double toolkit = sinceStart();
          Window window = LonglowWindow.show(new Stage(), begun);
          double shown = sinceStart();
          window
              .board()
              .afterPaint(
                  () -> {
                    if (window.desk().shown().isPresent()) {
                      afterPulse(() -> told(began, toolkit, shown));
                    }
                  });
        });
  }

  /** What was painted is on the screen with the pulse after it. */
  private static void afterPulse(Runnable action) {
    new AnimationTimer() {
      private int pulses;

      @Override
      public void handle(long now) {
        if (++pulses == 2) {
          stop();
          action.run();
        }
      }
    }.start();
  }

  private static void told(double began, double toolkit, double shown) {
    double painted = sinceStart();
    System.out.printf(
        Locale.ROOT,
        "program %.2f  toolkit %.2f  window up %.2f  machine painted %.2f, %.2f s later;"
            + " processor: window %.2f, worker %.2f, all %.2f%n",
        began,
        toolkit,
        shown,
        painted,
        painted - shown,
        spent("JavaFX Application"),
        spent("longlow-worker"),
        processor());
    System.exit(0);
  }

  private static double spent(String thread) {
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    double seconds = 0;
    for (long id : threads.getAllThreadIds()) {
      ThreadInfo info = threads.getThreadInfo(id);
      if (info != null && info.getThreadName().startsWith(thread)) {
        seconds += threads.getThreadCpuTime(id) / 1e9;
      }
    }
    return seconds;
  }

  /** Processor time of the whole program so far, with loading, compiling and painting, s. */
  private static double processor() {
    return ProcessHandle.current().info().totalCpuDuration().orElseThrow().toMillis() / 1e3;
  }

  private static double sinceStart() {
    return (System.currentTimeMillis() - ManagementFactory.getRuntimeMXBean().getStartTime()) / 1e3;
  }
}
