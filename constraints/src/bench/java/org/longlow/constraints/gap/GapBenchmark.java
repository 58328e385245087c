package org.longlow.constraints.gap;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.longlow.constraints.shape.Prism;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Gaps of all parts, indexes built anew each time, beside JTS distance over all pairs. */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class GapBenchmark {
  @Param({"20", "60", "200"})
  public int parts;

  private List<Prism> prisms;

  /** Makes the parts. */
  @Setup
  public void prepare() {
    prisms = GapSet.of(parts);
  }

  /** As the findings ask: pairs within 40 mm. */
  @Benchmark
  public List<Gap> within40Mm() {
    return GapSet.longlow(prisms, 40);
  }

  /**
   * Every pair, however far, with the depth of every overlap: as much as the reference and more.
   */
  @Benchmark
  public List<Gap> everyPair() {
    return GapSet.longlow(prisms, 1e6);
  }

  /** The reference. */
  @Benchmark
  public double jtsEveryPair() {
    return GapSet.jts(prisms);
  }
}
