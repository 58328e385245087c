package org.longlow.sketcher.fx;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadInfo;
import java.lang.management.ThreadMXBean;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.stage.Stage;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Autosave;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Wren;

/**
 * Drags every pin that can move for 300 frames in the window's own loop and tells how long a frame
 * takes, from the pointer's move (solve, settle, stances, drawing) to the painted card; findings
 * come after it. Not part of the build; run it as a program, with a machine's name or the test
 * machine. On a busy computer the processor time of a frame says more than its wall clock.
 */
public final class DragBenchmark {

  private static final int FRAMES = Integer.getInteger("frames", 300);
  private static final int WARM_UP = Integer.getInteger("warmUp", 200);

  /** Which pins, where not all that can move. */
  private static final List<String> ONLY = List.of(System.getProperty("pins", "").split(","));

  private static final double REACH_MM = 25;

  private final Window window;
  private final Desk desk;
  private final List<String> pins = new ArrayList<>();
  private final CountDownLatch done = new CountDownLatch(1);
  private double[] answer;
  private double[] gap;

  /** Processor time of each frame, of all three threads together, ms. */
  private double[] work;

  private long workSoFar;
  private int frame;
  private int pin = -1;
  private long asked;
  private long[] spent;
  private long lastPulse;
  private PointMm from;
  private boolean warming = true;
  private int tiles;
  private boolean waiting;
  private Study before;

  private DragBenchmark(Window window) {
    this.window = window;
    this.desk = window.desk();
  }

  public static void main(String[] args) throws Exception {
    Layout layout =
        Machines.shipped().stream()
            .map(Shipped::layout)
            .filter(l -> args.length > 0 && l.name().equals(args[0]))
            .findFirst()
            .orElseGet(Wren::layout);
    Platform.setImplicitExit(false);
    CountDownLatch up = new CountDownLatch(1);
    DragBenchmark[] run = new DragBenchmark[1];
    Autosave autosave = new Autosave(Files.createTempDirectory("longlow-benchmark"));
    Platform.startup(
        () -> {
          Stage stage = new Stage();
          Desk desk = new Desk(Platform::runLater, autosave);
          Window window = LonglowWindow.show(stage, desk, List::of);
          run[0] = new DragBenchmark(window);
          desk.files().openCopy(layout, Optional.empty());
          up.countDown();
        });
    up.await();
    Platform.runLater(run[0]::begin);
    run[0].done.await();
    Platform.exit();
  }

  private void begin() {
    window.board().afterPaint(this::painted);
    new AnimationTimer() {
      @Override
      public void handle(long now) {
        if (desk.shown().isEmpty() || !desk.isIdle() && desk.drags().drag().isEmpty()) {
          return;
        }
        if (pins.isEmpty()) {
          pins.addAll(new java.util.TreeSet<>(desk.shown().get().movable()));
          pins.removeIf(p -> !desk.shown().get().layout().pins().containsKey(p));
          pins.removeIf(p -> !ONLY.contains("") && !ONLY.contains(p));
          if (pins.isEmpty()) {
            stop();
            done.countDown();
            return;
          }
        }
        if (desk.drags().drag().isEmpty() && !next()) {
          stop();
          done.countDown();
          return;
        }
        if (gap != null && lastPulse != 0 && frame > 0 && frame < gap.length) {
          gap[frame] = (System.nanoTime() - lastPulse) / 1e6;
        }
        lastPulse = System.nanoTime();
        if (!waiting) {
          ask();
        }
      }
    }.start();
  }

  private boolean next() {
    if (warming && pin >= 0 && pin + 1 == pins.size()) {
      warming = false;
      pin = -1;
    }
    if (++pin >= pins.size()) {
      return false;
    }
    String name = pins.get(pin);
    from = desk.shown().get().study().placed().places().pin(name);
    frame = 0;
    int n = warming ? WARM_UP / pins.size() + 1 : FRAMES;
    answer = new double[n];
    spent = spent();
    tiles = window.board().tilesPainted();
    gap = new double[n];
    work = new double[n];
    workSoFar = Arrays.stream(spent).sum();
    if (!desk.drags().grab(name)) {
      throw new IllegalStateException(name + " cannot be dragged");
    }
    return true;
  }

  private void ask() {
    double a = 2 * Math.PI * frame / 60;
    waiting = true;
    before = desk.shown().get().study();
    asked = System.nanoTime();
    desk.drags().moveTo(from.plus(new PointMm(REACH_MM * Math.sin(a), REACH_MM * Math.sin(2 * a))));
  }

  private void painted() {
    if (!waiting
        || desk.shown().isEmpty()
        || !desk.shown().get().live()
        || desk.shown().get().study() == before) {
      return;
    }
    waiting = false;
    long all = Arrays.stream(spent()).sum();
    work[frame] = (all - workSoFar) / 1e6;
    workSoFar = all;
    answer[frame++] = (System.nanoTime() - asked) / 1e6;
    if (frame == answer.length) {
      if (!warming) {
        report(pins.get(pin));
      }
      lastPulse = 0;
      desk.drags().drop();
    }
  }

  private void report(String name) {
    if (pin == 0) {
      System.out.printf(
          Locale.ROOT,
          "%d pins that can move, %d frames each; ms%n%-16s %27s   %27s   %26s%n%-16s %8s %9s %9s  "
              + " %8s %9s %9s   %8s %8s %8s %8s %8s %8s%n",
          pins.size(),
          FRAMES,
          "",
          "move to painted",
          "pulse to pulse",
          "processor a frame",
          "pin",
          "median",
          "99 %",
          "worst",
          "median",
          "99 %",
          "worst",
          "worker",
          "window",
          "painter",
          "99 %",
          "worst",
          "tiles");
    }
    long[] now = spent();
    double[] a = answer.clone();
    double[] g = Arrays.stream(gap).filter(v -> v > 0).toArray();
    double[] w = work.clone();
    Arrays.sort(a);
    Arrays.sort(g);
    Arrays.sort(w);
    System.out.printf(
        Locale.ROOT,
        "%-16s %8.1f %9.1f %9.1f   %8.1f %9.1f %9.1f   %8.1f %8.1f %8.1f %8.1f %8.1f %8.1f%n",
        name,
        at(a, 0.5),
        at(a, 0.99),
        at(a, 1),
        at(g, 0.5),
        at(g, 0.99),
        at(g, 1),
        (now[0] - spent[0]) / 1e6 / answer.length,
        (now[1] - spent[1]) / 1e6 / answer.length,
        (now[2] - spent[2]) / 1e6 / answer.length,
        at(w, 0.99),
        at(w, 1),
        (double) (window.board().tilesPainted() - tiles) / answer.length);
  }

  /** Processor time so far of the worker, the interface thread and the painter, ns. */
  private static long[] spent() {
    long[] sums = new long[3];
    ThreadMXBean threads = ManagementFactory.getThreadMXBean();
    for (long id : threads.getAllThreadIds()) {
      ThreadInfo info = threads.getThreadInfo(id);
      if (info != null) {
        String name = info.getThreadName();
        int kind =
            name.equals("longlow-worker")
                ? 0
                : name.startsWith("JavaFX Application") ? 1 : name.startsWith("Quantum") ? 2 : -1;
        if (kind >= 0) {
          sums[kind] += threads.getThreadCpuTime(id);
        }
      }
    }
    return sums;
  }

  private static double at(double[] sorted, double share) {
    return sorted.length == 0
        ? Double.NaN
        : sorted[(int) Math.min(sorted.length - 1, Math.floor(share * sorted.length))];
  }
}
