package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.BarCloud;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Rod;
import org.longlow.rider.geom.PointMm;

/** Gaps of round bars, against points of their surface one by one. */
class RoundGapTest {

  private static final GeometryFactory POINTS = new GeometryFactory();

  private static Prism bar(List<PointMm> line, boolean roundEnds, double y, double radius) {
    return new Prism(
        roundEnds ? Curves.rounded(List.of(line), 2 * radius) : Curves.strip(line, 2 * radius),
        new Interval(y - radius, y + radius),
        List.of(new Rod(line.get(0), line.get(1), y, radius, roundEnds, roundEnds)));
  }

  private static double gap(Prism a, Prism b) {
    return new Solid("a", List.of(a)).to(new Solid("b", List.of(b)), 1e4).gapMm();
  }

  private static double squareGap(Prism a, Prism b) {
    return gap(new Prism(a.outline(), a.across()), new Prism(b.outline(), b.across()));
  }

  private static double cloudGap(List<PointMm> line, boolean roundEnds, Prism bar, Prism filled) {
    double least = Double.POSITIVE_INFINITY;
    double middle = bar.across().middle();
    for (double[] p : BarCloud.of(line, roundEnds, middle, bar.across().length() / 2, 3)) {
      double side = filled.outline().distance(POINTS.createPoint(new Coordinate(p[0], p[2])));
      double across = new Interval(p[1], p[1]).gap(filled.across());
      least = Math.min(least, Math.hypot(side, Math.max(0, across)));
    }
    return least;
  }

  /** Nor does one beside the middle begin again with its image on the other side. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 60})
  void aBarOnBothSidesHasOneLine(double y) {
    PointMm bend = new PointMm(100, 0);
    List<Piece> one =
        List.of(
            new Rod(PointMm.ORIGIN, bend, y, 8, true, true),
            new Rod(bend, new PointMm(180, 40), y, 8, true, true));
    List<Piece> both = Stream.concat(one.stream(), one.stream().map(Piece::mirrored)).toList();
    assertThat(Face.Core.of(both).line().ends).isEqualTo(Face.Core.of(one).line().ends).hasSize(16);
  }

  private static PointMm at(Random random) {
    return new PointMm(200 * random.nextDouble(), 200 * random.nextDouble());
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void aBarKeepsWhatItsSurfaceKeepsFromAPrism(long seed) {
    Random random = new Random(seed);
    int rounder = 0;
    for (int n = 0; n < 40; n++) {
      boolean roundEnds = n % 2 == 0;
      List<PointMm> line = List.of(at(random), at(random));
      Prism bar = bar(line, roundEnds, 60 * random.nextGaussian(), 8 + 20 * random.nextDouble());
      PointMm middle = at(random).plus(new PointMm(120 * random.nextDouble(), 0));
      List<PointMm> ring = new ArrayList<>();
      for (int i = 0; i < 4; i++) {
        ring.add(middle.plus(PointMm.unit(Math.PI * i / 2).times(10 + 40 * random.nextDouble())));
      }
      double from = 60 * random.nextGaussian();
      Prism filled = new Prism(Curves.polygon(ring), new Interval(from, from + 50));
      double told = gap(bar, filled);
      double square = squareGap(bar, filled);
      double cloud = cloudGap(line, roundEnds, bar, filled);
      // outlines have chords in place of arcs
      assertThat(told).isGreaterThanOrEqualTo(square - 1e-9);
      assertThat(told).as(seed + " " + n).isLessThanOrEqualTo(cloud + 0.1);
      assertThat(gap(filled, bar)).isCloseTo(told, within(1e-9));
      if (roundEnds && cloud > 0.5) {
        // chords of its round ends in the elevation, and 3 degrees of its surface
        assertThat(told).as(seed + " " + n).isCloseTo(cloud, within(0.4));
      }
      rounder += told > square + 1 ? 1 : 0;
    }
    assertThat(rounder).isGreaterThan(3);
  }

  /** Two bars that cross: the middle lines are as far apart as they are across. */
  @ParameterizedTest
  @CsvSource({"40, 10, 15, 15", "24, 10, 15, -1", "25.1, 10, 15, 0.1"})
  void barsThatCrossAreApartByTheirMiddles(double y, double r1, double r2, double gap) {
    Prism along = bar(List.of(new PointMm(0, 100), new PointMm(300, 100)), false, 0, r1);
    Prism up = bar(List.of(new PointMm(150, 0), new PointMm(150, 200)), true, y, r2);
    double told = gap(along, up);
    if (gap < 0) {
      assertThat(told).isNegative();
    } else {
      assertThat(told).isCloseTo(gap, within(1e-9));
    }
  }

  /**
   * Side by side and one over the other by 3 and 4: their middles are 50 apart, not their boxes.
   */
  @Test
  void barsThatRunAlongEachOtherAreApartByTheirMiddles() {
    Prism one = bar(List.of(new PointMm(0, 0), new PointMm(300, 0)), false, 0, 12);
    Prism other = bar(List.of(new PointMm(0, 30), new PointMm(300, 30)), false, 40, 13);
    assertThat(gap(one, other)).isCloseTo(50 - 25, within(1e-9));
    assertThat(squareGap(one, other)).isCloseTo(Math.hypot(15, 5), within(1e-6));
    Solid moved = new Solid("b", List.of(other)).moved(new RigidMotion(0, new PointMm(0, -30)));
    assertThat(new Solid("a", List.of(one)).to(moved, 1e3).gapMm()).isCloseTo(15, within(1e-9));
    Solid aside = new Solid("b", List.of(other)).across(32);
    assertThat(new Solid("a", List.of(one)).to(aside, 1e3).gapMm())
        .isCloseTo(Math.hypot(30, 72) - 25, within(1e-9));
    // corners of the boxes are in each other, the bars are not
    assertThat(
            new Solid("a", List.of(one))
                .overlaps(
                    new Solid(
                        "b",
                        List.of(
                            bar(
                                List.of(new PointMm(0, 20), new PointMm(300, 20)),
                                false,
                                20,
                                13)))))
        .isFalse();
    assertThat(gap(one, bar(List.of(new PointMm(0, 20), new PointMm(300, 20)), false, 20, 13)))
        .isCloseTo(Math.hypot(20, 20) - 25, within(1e-9));
  }

  @Test
  void nothingBeyondTheCutIsTold() {
    Prism one = bar(List.of(new PointMm(0, 0), new PointMm(300, 0)), false, 0, 12);
    Prism other = bar(List.of(new PointMm(0, 30), new PointMm(300, 30)), false, 40, 13);
    Solid a = new Solid("a", List.of(one));
    Solid b = new Solid("b", List.of(other));
    assertThat(a.to(b, 24.9)).isNull();
    assertThat(a.to(b, 25.1).gapMm()).isCloseTo(25, within(1e-9));
    assertThat(a.apartMm(b, 24.9)).isInfinite();
    assertThat(a.apartMm(b, 30)).isCloseTo(25, within(1e-9));
  }
}
