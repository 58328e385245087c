package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Random path data: an outline or a fault, never an exception. */
class SvgPathFuzzTest {

  private static final int CASES = Integer.getInteger("longlow.fuzz.paths", 10_000);

  /** One in so many seeds is tried unless all are asked for. */
  private static final int STEP =
      Boolean.getBoolean("longlow.long") || System.getProperty("longlow.fuzz.paths") != null
          ? 1
          : 5;

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

  /** Commands of SVG 1.1, 8.3, each with how many numbers it takes. */
  private static final String[] COMMANDS = {"L2", "H1", "V1", "C6", "S4", "Q4", "T2", "Z0"};

  @TempDir Path folder;

  private static String word(SplittableRandom random) {
    return WORDS[random.nextInt(WORDS.length)];
  }

  private static String command(SplittableRandom random) {
    if (random.nextInt(6) == 0) {
      return "a" + number(random) + number(random) + " 30 " + random.nextInt(2) + " 1 9 9";
    }
    String command = COMMANDS[random.nextInt(COMMANDS.length)];
    String letter = command.substring(0, 1);
    StringBuilder text =
        new StringBuilder(random.nextBoolean() ? letter : letter.toLowerCase(Locale.ROOT));
    for (int n = command.charAt(1) - '0'; n > 0; n--) {
      text.append(number(random));
    }
    return text.toString();
  }

  private static String number(SplittableRandom random) {
    return " " + (random.nextInt(20) == 0 ? 1e30 : random.nextInt(-500, 500));
  }

  @Test
  void everyPathIsAnswered() throws IOException {
    List<String> escaped = new ArrayList<>();
    int traced = 0;
    Path file = folder.resolve("a.svg");
    for (int seed = 0; seed < CASES; seed += STEP) {
      SplittableRandom random = new SplittableRandom(seed);
      StringBuilder d = new StringBuilder(random.nextInt(3) == 0 ? "" : "M0 0");
      for (int n = random.nextInt(12); n > 0; n--) {
        // enough sound commands that many paths are read to their end
        String next = random.nextInt(8) == 0 ? word(random) : command(random);
        d.append(random.nextInt(4) == 0 ? "" : " ").append(next);
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
    assertThat(traced).isGreaterThan(CASES / STEP / 20);
  }
}
