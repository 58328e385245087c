package org.longlow.constraints.fit;

import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.function.IntConsumer;
import org.longlow.constraints.check.Checks;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Population;

/**
 * One person of a crowd judged by what depends on their body, beside all checks with them alone
 * aboard, in processor time of the thread; then a crowd on the clock. Prints a table.
 */
public final class CrowdTimeTable {

  private static final int PEOPLE = Integer.getInteger("people", 10_000);
  private static final int MEASURED = Integer.getInteger("measured", 600);
  private static final Gear GEAR = Gear.riding(true, true, false);

  private CrowdTimeTable() {}

  /** Takes layout files. */
  public static void main(String[] files) throws IOException {
    System.out.println("machine     each ms: least  median  mean   whole checks: least  median");
    for (String file : files) {
      machine(Path.of(file));
    }
  }

  private static void machine(Path file) {
    if (!(LayoutReader.read(file) instanceof ReadResult.Read good)) {
      throw new IllegalArgumentException(file + " is no layout");
    }
    Study study = Study.of(good.layout());
    FitMachine machine = FitMachine.of(study.placed()).orElseThrow();
    BodyJudge judge = new BodyJudge(machine.checks(), GEAR, Set.of());
    SampledCrowd crowd =
        new SampledCrowd(Population.soldiers(1, 0.5), SampledCrowd.From.SOLDIERS, PEOPLE);
    double[] each = times(4 * MEASURED, i -> judge.judge(crowd, i % crowd.size()));
    double[] whole =
        times(MEASURED / 6, i -> whole(study, machine, Body.of(crowd.person(i), GEAR)));
    System.out.printf(
        Locale.ROOT,
        "%-12s %13.3f %7.3f %7.3f %20.2f %7.2f%n",
        study.layout().name(),
        each[0],
        each[each.length / 2],
        Arrays.stream(each).average().orElseThrow(),
        whole[0],
        whole[whole.length / 2]);
    for (int threads : new int[] {1, 2}) {
      long begin = System.nanoTime();
      new CrowdRun(judge, crowd, threads, Progress.NONE, () -> false).run();
      System.out.printf(
          Locale.ROOT,
          "  %d people on %d threads: %.2f s%n",
          PEOPLE,
          threads,
          (System.nanoTime() - begin) / 1e9);
    }
  }

  /** Sorted, ms, the second half of the runs: the first is warm-up. */
  private static double[] times(int runs, IntConsumer work) {
    double[] ms = new double[runs];
    for (int i = 0; i < runs; i++) {
      long begin = ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
      work.accept(i);
      ms[i] = (ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime() - begin) / 1e6;
    }
    double[] measured = Arrays.copyOfRange(ms, runs / 2, runs);
    Arrays.sort(measured);
    return measured;
  }

  private static void whole(Study study, FitMachine machine, Body body) {
    Sitting sitting = Seats.sit("somebody", body, machine.seat(), study.placed().places());
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    Checks.all(
        study.placed(),
        study.shapes(),
        List.of(sitting),
        wheels,
        new Stances(wheels, study.shapes()).all(Study.riders(List.of(sitting))),
        Progress.NONE);
  }
}
