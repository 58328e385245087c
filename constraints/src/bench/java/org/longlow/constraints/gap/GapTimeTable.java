package org.longlow.constraints.gap;

import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.shape.Prism;

/**
 * The gaps of {@link GapBenchmark} in processor time of the thread: the figures to use on a machine
 * that others load. Prints a table; best of several rounds.
 */
public final class GapTimeTable {
  private static final int ROUNDS = 5;

  private GapTimeTable() {}

  /** Runs; takes no arguments. */
  public static void main(String[] args) {
    System.out.println("parts  within 40 mm us  every pair us  JTS every pair us");
    for (int parts : new int[] {20, 60, 200}) {
      List<Prism> prisms = GapSet.of(parts);
      System.out.println(
          String.format(
              Locale.ROOT,
              "%5d %16.0f %14.0f %18.0f",
              parts,
              best(40_000 / parts, () -> GapSet.longlow(prisms, 40)),
              best(10_000 / parts, () -> GapSet.longlow(prisms, 1e6)),
              best(1 + 40_000 / (parts * parts), () -> GapSet.jts(prisms))));
    }
  }

  private static double best(int times, Runnable call) {
    double least = Double.POSITIVE_INFINITY;
    for (int r = 0; r < ROUNDS; r++) {
      long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      for (int k = 0; k < times; k++) {
        call.run();
      }
      long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      least = Math.min(least, (end - begin) / 1e3 / times);
    }
    return least;
  }
}
