package org.longlow.constraints.study;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** One edit, everything but the drawing answered: solve, settle, seven stances, all findings. */
@State(Scope.Thread)
@BenchmarkMode(Mode.SampleTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class StudyBenchmark {
  private final Edits edits = new Edits();

  /** The seat slides. */
  @Benchmark
  public Study slideSeat() {
    return Study.of(edits.slideSeat());
  }

  /** The end of the exhaust slides. */
  @Benchmark
  public Study slideExhaust() {
    return Study.of(edits.slideExhaust());
  }

  /** The wheelbase changes. */
  @Benchmark
  public Study stretch() {
    return Study.of(edits.stretch());
  }
}
