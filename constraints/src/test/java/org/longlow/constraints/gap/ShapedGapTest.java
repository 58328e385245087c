package org.longlow.constraints.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.Made;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;

/** Gaps between bodies whose breadth varies, against closed forms and clouds of points. */
class ShapedGapTest {

  private static Solid solid(String name, PartShape shape) {
    return new Solid(name, shape.prisms());
  }

  /** A round bar along the machine, its middle at a height. */
  private static Solid rod(double radius, double z) {
    return solid(
        "rod",
        Made.solid(
            Made.outline(0, z - radius, 400, z - radius, 400, z + radius, 0, z + radius),
            Made.spread(radius, radius, false),
            new Breadth(List.of(), Made.profile(Profile.Shape.OVAL))));
  }

  @Test
  void roundBarsAreAsFarApartAsTheirMiddlesLessTheirRadii() {
    Solid one = rod(40, 0);
    for (int deg = 0; deg <= 90; deg += 15) {
      double far = 120;
      double z = far * Math.sin(Math.toRadians(deg));
      Solid other = rod(50, z).across(far * Math.cos(Math.toRadians(deg)));
      // straight pieces go round a curve, 0.2 mm outside of each at most
      assertThat(one.to(other, 200).gapMm()).isBetween(30 - 0.42, 30 + 1e-5);
    }
    // they touch and are in each other where that is so, not where their boxes are
    Solid aslant = rod(50, 66).across(66);
    assertThat(one.to(aslant, 40).gapMm()).isBetween(3.338 - 0.42, 3.34);
    assertThat(one.overlaps(aslant)).isFalse();
    Solid in = rod(50, 60).across(60);
    assertThat(one.overlaps(in)).isTrue();
    assertThat(one.to(in, 40).gapMm()).isNegative();
  }

  @Test
  void aNarrowingCowlClearsWhatItsBroadEndDoesNot() {
    PartShape cowl =
        Made.solid(
            Made.outline(0, 0, 600, 0, 600, 200, 0, 200),
            Made.spread(200, 200, false),
            new Breadth(Made.stations(false, 0, 200, 600, 50), Profile.FLAT));
    Solid body = solid("cowl", cowl);
    for (int x = 50; x <= 500; x += 50) {
      PartShape post =
          Made.solid(
              Made.outline(x, 50, x + 1, 50, x + 1, 150, x, 150),
              Made.spread(320, -300, false),
              Breadth.EVEN);
      // from (x, 300) to the plane through (0, 200) and (600, 50)
      double apart = (600 * (300 - 200) + 150 * x) / Math.hypot(600, 150);
      assertThat(body.to(solid("post", post), 500).gapMm()).isCloseTo(apart, within(0.02));
    }
  }

  @Test
  void touchingIsNotOverlapping() {
    PartShape wedge =
        Made.solid(
            Made.outline(0, 0, 300, 0, 300, 100, 0, 100),
            Made.spread(100, 100, false),
            new Breadth(Made.stations(false, 0, 100, 300, 40), Profile.FLAT));
    PartShape beside =
        Made.solid(
            Made.reaching(0, 0, 200, -100, 300, 0, 200, -40, 300, 100, 200, -40, 0, 100, 200, -100),
            Made.spread(200, -100, false),
            Breadth.EVEN);
    Solid one = solid("wedge", wedge);
    assertThat(one.to(solid("beside", beside), 10).gapMm()).isZero();
    assertThat(one.overlaps(solid("beside", beside))).isFalse();
    assertThat(one.overlaps(solid("beside", beside).across(-0.5))).isTrue();
    assertThat(one.to(solid("beside", beside).across(3), 10).gapMm())
        .isCloseTo(3 * 300 / Math.hypot(300, 60), within(0.02));
  }

  /** What clears a body in pieces is worked out with fewer faces, and asks for no less. */
  @Test
  void whatClearsABodyInPiecesClearsIt() {
    Random random = new Random(3);
    for (int i = 0; i < 4; i++) {
      Solid one = solid("one", any(random));
      Solid other = solid("other", any(random)).moved(Solid.by(new PointMm(120, 30)));
      Clearing clearing = new Clearing(List.of(new Clearing.Position(one, other)), 12);
      Solid up = other.moved(Solid.by(clearing.elevation()));
      assertThat(one.apartMm(up, 100)).isGreaterThan(12 - 1e-3);
      Solid aside = other.across(clearing.acrossMm());
      assertThat(one.apartMm(aside, 1e4)).isGreaterThan(12 - 1e-3);
      // in each other by no more than that takes
      double depth = -one.to(other, 10).gapMm();
      assertThat(depth).isPositive().isLessThanOrEqualTo(clearing.elevationMm() + 1e-6);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6})
  void noPointOfOneIsNearerToTheOtherThanSaid(long seed) {
    Random random = new Random(seed);
    Solid one = solid("one", any(random));
    PartShape shape = any(random);
    RigidMotion motion =
        new RigidMotion(random.nextDouble() * 6, new PointMm(300 + 200 * random.nextDouble(), 100));
    double aside = 200 * random.nextDouble();
    Solid other = solid("other", shape).moved(motion).across(aside);
    Gap gap = one.to(other, 1e4);
    double least = Double.POSITIVE_INFINITY;
    List<double[]> a = cloud(one, random);
    List<double[]> b = cloud(other, random);
    for (double[] p : a) {
      for (double[] q : b) {
        least =
            Math.min(
                least,
                (p[0] - q[0]) * (p[0] - q[0])
                    + (p[1] - q[1]) * (p[1] - q[1])
                    + (p[2] - q[2]) * (p[2] - q[2]));
      }
    }
    double nearest = Math.sqrt(least);
    if (gap.gapMm() >= 0) {
      assertThat(gap.gapMm()).isLessThan(nearest + 0.02);
      // points of a cloud lie some 20 mm from each other
      assertThat(gap.gapMm()).isGreaterThan(nearest - 25);
    } else {
      assertThat(nearest).isLessThan(25);
    }
  }

  private static PartShape any(Random random) {
    Profile.Shape[] shapes = {Profile.Shape.FLAT, Profile.Shape.ROUND, Profile.Shape.OVAL};
    double w = 40 + 100 * random.nextDouble();
    double v = 20 + 100 * random.nextDouble();
    double slope = 80 * random.nextDouble();
    return Made.solid(
        Made.outline(0, 0, 300, slope, 300, slope + 60, 150, 200, 0, 100),
        Made.spread(w, w, false),
        new Breadth(
            Made.stations(random.nextBoolean(), 0, w, 120, v, 300, w / 2),
            Made.profile(shapes[random.nextInt(3)])));
  }

  /** Points in a body: mixtures of the points it reaches to in many directions. */
  private static List<double[]> cloud(Solid body, Random random) {
    List<double[]> cloud = new ArrayList<>();
    double[] at = new double[3];
    for (Face face : body.faces()) {
      face.convex()
          .forEach(
              piece -> {
                List<double[]> corners = new ArrayList<>();
                for (int i = 0; i < 30; i++) {
                  double[] d = {
                    random.nextGaussian(), random.nextGaussian(), random.nextGaussian()
                  };
                  piece.farthest(d, at);
                  corners.add(at.clone());
                }
                for (int i = 0; i < 60; i++) {
                  double[] p = corners.get(random.nextInt(30));
                  double[] q = corners.get(random.nextInt(30));
                  double t = random.nextDouble();
                  cloud.add(
                      new double[] {
                        p[0] + t * (q[0] - p[0]), p[1] + t * (q[1] - p[1]), p[2] + t * (q[2] - p[2])
                      });
                }
              });
    }
    return cloud;
  }
}
