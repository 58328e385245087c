package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

class GapsTest {

  private static Solid box(String name, double x, double z, double size, double from, double to) {
    List<PointMm> corners =
        List.of(
            new PointMm(x, z),
            new PointMm(x + size, z),
            new PointMm(x + size, z + size),
            new PointMm(x, z + size));
    return new Solid(name, List.of(new Prism(Curves.polygon(corners), new Interval(from, to))));
  }

  // Euclid I.47: 3, 4, 5.
  @Test
  void gapAcrossAndAlongAddAsASquareRoot() {
    Gap gap = box("a", 0, 0, 100, -10, 10).to(box("b", 103, 0, 100, 14, 20), 100);
    assertThat(gap.gapMm()).isCloseTo(5, within(1e-9));
  }

  @Test
  void overlapIsAsDeepAsTheShortestWayOut() {
    Gap gap = box("a", 0, 0, 100, -50, 50).to(box("b", 93, 0, 100, -50, 50), 100);
    assertThat(gap.gapMm()).isCloseTo(-7, within(1e-9));
    assertThat(gap.where().x()).isCloseTo(96.5, within(1e-9));
  }

  @Test
  void overlapInElevationWithRoomAcrossIsAGap() {
    Gap gap = box("a", 0, 0, 100, -50, 50).to(box("b", 10, 10, 20, 58, 70), 100);
    assertThat(gap.gapMm()).isCloseTo(8, within(1e-9));
  }

  @Test
  void bodyInsideAnotherOverlaps() {
    Gap gap = box("a", 0, 0, 100, -50, 50).to(box("b", 40, 40, 20, -5, 5), 100);
    assertThat(gap.gapMm()).isNegative();
  }

  @Test
  void beyondTheHorizonIsNothing() {
    assertThat(box("a", 0, 0, 100, -1, 1).to(box("b", 200, 0, 10, -1, 1), 99)).isNull();
  }

  @ParameterizedTest(name = "seed {0}")
  @ValueSource(longs = {11, 12, 13, 14})
  void indexedGapsEqualJtsDistanceOfAllPairs(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    List<Solid> bodies = new ArrayList<>();
    List<Prism> prisms = new ArrayList<>();
    for (int i = 0; i < 40; i++) {
      PointMm at = new PointMm(random.nextDouble(2000), random.nextDouble(1000));
      double y = random.nextDouble(-200, 200);
      Prism prism =
          new Prism(
              Curves.disc(at, 20 + random.nextDouble(100)),
              new Interval(y, y + random.nextDouble(100)));
      prisms.add(prism);
      bodies.add(new Solid("p" + i, List.of(prism)));
    }
    List<Gap> gaps = Gaps.among(bodies, 80, (a, b) -> 80);
    int expected = 0;
    for (int i = 0; i < 40; i++) {
      for (int j = i + 1; j < 40; j++) {
        Geometry a = prisms.get(i).outline();
        Geometry b = prisms.get(j).outline();
        if (a.getEnvelopeInternal().distance(b.getEnvelopeInternal()) >= 80) {
          continue;
        }
        double side = a.distance(b);
        double across = Math.max(0, prisms.get(i).across().gap(prisms.get(j).across()));
        double distance = Math.hypot(side, across);
        if (distance >= 80) {
          continue;
        }
        expected++;
        String first = "p" + i;
        String second = "p" + j;
        Gap gap =
            gaps.stream()
                .filter(g -> g.first().equals(first) && g.second().equals(second))
                .findFirst()
                .orElseThrow();
        assertThat(Math.max(0, gap.gapMm())).isCloseTo(distance, within(1e-9));
      }
    }
    assertThat(gaps).hasSize(expected);
    assertThat(expected).isGreaterThan(5);
  }

  /** 5, 20 and 20 mm: smallest first, of equal ones by name, whichever list they come from. */
  @Test
  void gapsAreListedSmallestFirstThenByName() {
    Solid middle = box("middle", 0, 0, 100, -10, 10);
    Solid far = box("far", 120, 0, 50, -10, 10);
    Solid also = box("also", -70, 0, 50, -10, 10);
    Solid near = box("near", 0, 105, 50, -10, 10);
    Solid away = box("away", 0, 500, 50, -10, 10);
    List<Gap> gaps =
        Gaps.between(List.of(middle), List.of(far, away, also, near), 30, (a, b) -> 30);
    assertThat(gaps).extracting(Gap::second).containsExactly("near", "also", "far");
    assertThat(gaps).extracting(Gap::gapMm).containsExactly(5.0, 20.0, 20.0);
    List<Gap> among = Gaps.among(List.of(far, middle, away, near), 30, (a, b) -> 30);
    assertThat(among).extracting(Gap::first).containsExactly("middle", "far");
    assertThat(among).extracting(Gap::second).containsExactly("near", "middle");
  }

  @Test
  void eachPairMayHaveItsOwnCutOrBeOfNoInterest() {
    Solid middle = box("middle", 0, 0, 100, -10, 10);
    Solid far = box("far", 120, 0, 50, -10, 10);
    Solid near = box("near", -55, 0, 50, -10, 10);
    List<Solid> all = List.of(middle, far, near);
    Gaps.Cut cut = (a, b) -> b.name().equals("far") ? 19 : 30;
    assertThat(Gaps.among(all, 40, cut)).extracting(Gap::second).containsExactly("near");
    Gaps.Cut wider = (a, b) -> b.name().equals("far") ? 21 : Gaps.Cut.NEVER;
    assertThat(Gaps.among(all, 40, wider)).extracting(Gap::second).containsExactly("far");
    // never more than the horizon
    assertThat(Gaps.among(all, 19, (a, b) -> 1000)).extracting(Gap::second).containsExactly("near");
    assertThat(Gaps.between(List.of(middle), List.of(far), 21, (a, b) -> 1000)).hasSize(1);
    assertThat(Gaps.between(List.of(middle), List.of(far), 19, (a, b) -> 1000)).isEmpty();
    // what has no outline is nowhere
    Solid nothing = new Solid("nothing", List.of());
    assertThat(Gaps.among(List.of(nothing, middle), 1000, (a, b) -> 1000)).isEmpty();
  }
}
