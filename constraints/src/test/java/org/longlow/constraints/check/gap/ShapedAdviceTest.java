package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.Boxes;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.TestMachine;

/** What is said of a body whose breadth varies that comes too close: done, it mends. */
class ShapedAdviceTest {

  private static final Pattern MOVE =
      Pattern.compile(
          "(?:move \\w+|it)(?: ([0-9.]+) mm (forward|back))?(?: and)?(?: ([0-9.]+) mm (up|down))");
  private static final Pattern ALONG = Pattern.compile("move \\w+ ([0-9.]+) mm (forward|back)");
  private static final Pattern ASIDE = Pattern.compile("([0-9.]+) mm to the (left|right)");
  private static final Pattern APART =
      Pattern.compile("([0-9.]+) mm farther (out|in) on each side");

  /** Two things high over the machine: a wedge 300 by 80, and a box beside or over it. */
  private static TestMachine with(double x, double z, double left, double right, String profile) {
    String wedge =
        "{'kind': 'box', 'frame': 'oneAt', 'mass': '1 kg', 'outline': {'points': [[0, 0], [300,"
            + " 0], [300, 80], [0, 80]]}, 'stations': [{'x': 0, 'left': 120}, {'x': 300, 'left':"
            + " 40}]"
            + profile
            + "}";
    return Boxes.add(
        TestMachine.runabout().pin("oneAt", 300, 1600).with("parts", "one", wedge),
        "two",
        Boxes.at(x, z, x + 100, z + 60),
        left,
        right,
        "");
  }

  private static TestMachine shifted(
      double x, double z, double left, double right, String profile, Matcher m) {
    double along = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
    double up = m.groupCount() < 3 || m.group(3) == null ? 0 : Double.parseDouble(m.group(3));
    double dx = "back".equals(m.group(2)) ? -along : along;
    double dz = m.groupCount() > 3 && "down".equals(m.group(4)) ? -up : up;
    assertThat(along + up).isPositive();
    return with(x + dx, z + dz, left, right, profile);
  }

  private static boolean fails(TestMachine machine) {
    return machine.finding("gap.one.two").map(Finding::verdict).equals(Optional.of(Verdict.FAIL));
  }

  // over it, beside its left where that is broad, beside its right where it is narrow
  @ParameterizedTest
  @CsvSource({
    "350, 1670, 60, 60, ''",
    "350, 1670, 60, 60, ', ''profile'': ''oval'''",
    "350, 1610, 200, -90, ''",
    "500, 1610, -50, 200, ''",
    "500, 1610, -50, 200, ', ''profile'': {''shape'': ''flat'', ''corner'': 20}'",
    "550, 1640, 40, 40, ''"
  })
  void doneItMends(double x, double z, double left, double right, String profile) {
    Finding f = with(x, z, left, right, profile).finding("gap.one.two").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    boolean moved = f.text().contains("move two");
    int tried = 0;
    Matcher across = ASIDE.matcher(f.text());
    if (f.text().contains("two ") && across.find()) {
      double mm = Double.parseDouble(across.group(1)) * (across.group(2).equals("left") ? 1 : -1);
      assertThat(fails(with(x, z, left + mm, right - mm, profile))).as(f.text()).isFalse();
      tried++;
    }
    Matcher each = APART.matcher(f.text());
    if (each.find()) {
      double mm = Double.parseDouble(each.group(1)) * (each.group(2).equals("out") ? 1 : -1);
      boolean toLeft = left > -right;
      double out = left > 0 && right > 0 ? mm : toLeft ? mm : -mm;
      double in = left > 0 && right > 0 ? mm : -out;
      assertThat(fails(with(x, z, left + out, right + in, profile))).as(f.text()).isFalse();
      tried++;
    }
    Matcher up = MOVE.matcher(f.text());
    Matcher along = ALONG.matcher(f.text());
    if (up.find()) {
      assertThat(fails(shifted(x, z, left, right, profile, up))).as(f.text()).isFalse();
      tried++;
    } else if (moved && along.find()) {
      assertThat(fails(shifted(x, z, left, right, profile, along))).as(f.text()).isFalse();
      tried++;
    }
    assertThat(tried).as(String.format(Locale.ROOT, "%s", f.text())).isPositive();
  }

  /** Deep in each other as seen from the side, a little short across: that is what is said. */
  @ParameterizedTest
  @CsvSource({"300, -117, left", "-117, 300, right"})
  void whatOnlyAMoveAcrossMendsSaysSoWithItsAmount(double left, double right, String side) {
    Finding f = with(305, 1610, left, right, "").finding("gap.one.two").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.text())
        .contains("mm short across the machine: set two ")
        .contains("mm to the " + side)
        .contains("no move in side view of less than ");
  }
}
