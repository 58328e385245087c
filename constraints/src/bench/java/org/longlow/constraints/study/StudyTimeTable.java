package org.longlow.constraints.study;

import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.Supplier;

/**
 * The edits of {@link StudyBenchmark} in processor time of the thread, for a machine that others
 * load, and on the clock, least and median: the steering is looked at by another thread, which only
 * the clock tells. Prints a table.
 */
public final class StudyTimeTable {
  private static final int WARM_UP = Integer.getInteger("warmUp", 1500);
  private static final int MEASURED = Integer.getInteger("measured", 1500);

  private StudyTimeTable() {}

  /** Runs in the folder of the module; takes no arguments. */
  public static void main(String[] args) {
    Edits edits = new Edits();
    System.out.println("edit         least ms    median      99 %  clock ms    median  findings");
    row("slide seat", () -> Study.of(edits.slideSeat()));
    row("stretch", () -> Study.of(edits.stretch()));
    row("exhaust", () -> Study.of(edits.slideExhaust()));
    Edits roomy = new Edits(Edits.KNEE_ROOM);
    System.out.println("with a gap kept to people:");
    row("slide seat", () -> Study.of(roomy.slideSeat()));
    row("stretch", () -> Study.of(roomy.stretch()));
  }

  private static void row(String name, Supplier<Study> edit) {
    double[] ms = new double[MEASURED];
    double[] clock = new double[MEASURED];
    int findings = 0;
    for (int k = -WARM_UP; k < MEASURED; k++) {
      long now = System.nanoTime();
      long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      findings = edit.get().findings().size();
      long end = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      ms[Math.max(0, k)] = (end - begin) / 1e6;
      clock[Math.max(0, k)] = (System.nanoTime() - now) / 1e6;
    }
    Arrays.sort(ms);
    Arrays.sort(clock);
    System.out.println(
        String.format(
            Locale.ROOT,
            "%-10s %10.2f %9.2f %9.2f %9.2f %9.2f %9d",
            name,
            ms[0],
            ms[MEASURED / 2],
            ms[MEASURED * 99 / 100],
            clock[0],
            clock[MEASURED / 2],
            findings));
  }
}
