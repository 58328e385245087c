package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random path data: an outline or a fault, never an exception. */
class SvgPathFuzzTest {

  private static final int CASES = Integer.getInteger("longlow.fuzz.paths", 10_000);

  private static final String[] WORDS = {
    "M",
    "m",
    "L",
    "l",
    "H",
    "h",
    "V",
    "v",
    "C",
    "c",
    "S",
    "s",
    "Q",
    "q",
    "T",
    "t",
    "A",
    "a",
    "Z",
    "z",
    "0",
    "1",
    "-1",
    "10",
    "1e9",
    "-1e300",
    "1e-300",
    ".5",
    "-.5.5",
    "1 1",
    "10,20",
    ",",
    "e",
    "NaN",
    "+",
    "é",
    "50 60 70 80 90 100",
    "10 10 0 0 1 5 5",
    "0 0 0 1 1 0 0"
  };

  @TempDir Path folder;

  @Test
  void everyPathIsAnswered() throws IOException {
    List<String> escaped = new ArrayList<>();
    int traced = 0;
    Path file = folder.resolve("a.svg");
    for (int seed = 0; seed < CASES; seed++) {
      SplittableRandom random = new SplittableRandom(seed);
      StringBuilder d = new StringBuilder(random.nextInt(3) == 0 ? "" : "M0 0");
      for (int n = random.nextInt(12); n > 0; n--) {
        d.append(random.nextInt(4) == 0 ? "" : " ").append(WORDS[random.nextInt(WORDS.length)]);
      }
      Files.writeString(
          file, "<svg xmlns='http://www.w3.org/2000/svg'><path d='" + d + "'/></svg>");
      try {
        SvgTrace trace = SvgTrace.read(folder, "a.svg", "", 0.5);
        if (trace.fault() == null) {
          traced++;
          trace.vertices().forEach(v -> assertThat(v.x().evaluate(name -> 0)).isFinite());
        } else {
          assertThat(trace.fault()).isNotBlank();
        }
      } catch (Exception | StackOverflowError e) {
        escaped.add(d + ": " + e);
      }
    }
    assertThat(escaped).isEmpty();
    assertThat(traced).isGreaterThan(CASES / 20);
  }
}
