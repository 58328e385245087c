package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;

class AdviceTest {

  private static Solid plate(String name, double x, double size, Interval... across) {
    Geometry outline =
        Curves.polygon(
            List.of(
                new PointMm(x, 0),
                new PointMm(x + size, 0),
                new PointMm(x + size, size),
                new PointMm(x, size)));
    return new Solid(name, List.of(across).stream().map(i -> new Prism(outline, i)).toList());
  }

  private static String move(Solid still, Solid pegs) {
    return Advice.move("pegs", new Clearing(List.of(new Clearing.Position(still, pegs)), 10))
        .in(Units.MM);
  }

  @Test
  void whatIsShortAcrossOnlyIsSaidSo() {
    Solid boot = plate("boot", 0, 500, new Interval(-100, 100));
    Solid pegs = plate("pegs", 200, 100, new Interval(102, 150), new Interval(-150, -102));
    assertThat(move(boot, pegs))
        .isEqualTo(
            "8 mm short across the machine: set pegs 8 mm farther out on each side; no move in side"
                + " view of less than 109 mm helps");
    Solid left = plate("pegs", 200, 100, new Interval(102, 150));
    assertThat(move(boot, left))
        .startsWith("8 mm short across the machine: set pegs 8 mm to the left;");
    Solid right = plate("pegs", 200, 100, new Interval(-150, -102));
    assertThat(move(boot, right))
        .startsWith("8 mm short across the machine: set pegs 8 mm to the right;");
  }

  @Test
  void whatIsShortInTheElevationIsMovedThere() {
    Solid boot = plate("boot", 0, 100, new Interval(-100, 100));
    Solid pegs = plate("pegs", 104, 30, new Interval(-50, 50));
    assertThat(move(boot, pegs)).isEqualTo("move pegs 6.1 mm forward");
  }

  @Test
  void asideInTheElevationIsOfferedWhereItIsNear() {
    Solid boot = plate("boot", 0, 100, new Interval(-100, 100));
    Solid pegs = plate("pegs", 90, 30, new Interval(98, 150));
    assertThat(move(boot, pegs))
        .isEqualTo(
            "12 mm short across the machine: set pegs 12 mm to the left, or move it 20.1 mm"
                + " forward");
  }
}
