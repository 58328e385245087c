package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.ShellPart;

/** Sheet laid flat, rolled back by closed forms; all of aluminium, so that corners are folded. */
class PatternsTest {

  private static final double NEAR_MM = 0.1;

  private static Unrolled unrolled(Outline outline, Breadth breadth, double t, boolean open) {
    ShellPart shell =
        Made.formed(outline, Made.spread(100, 100, false), breadth, t, open, Formers.NONE);
    return Unrolled.of(shell, Made.PLACES).orElseThrow();
  }

  private static FlatPiece called(Unrolled flat, String what) {
    return flat.patterns().stream().filter(p -> p.what().equals(what)).findFirst().orElseThrow();
  }

  /** Half-breadth along an arc of radius 150 about (100, -40): outward of it bulges. */
  @Test
  void aRoundedSideRollsBackOntoItsCylinder() {
    double radius = 150;
    double t = 3;
    double[] stations = new double[2 * 201];
    for (int i = 0; i <= 200; i++) {
      stations[2 * i] = i;
      stations[2 * i + 1] = Math.sqrt(radius * radius - (i - 100) * (i - 100)) - 40;
    }
    Unrolled flat =
        unrolled(
            Made.outline(0, 0, 200, 0, 200, 100, 0, 60),
            new Breadth(Made.stations(false, stations), Profile.FLAT),
            t,
            false);
    assertThat(flat.needsFormers()).isFalse();
    FlatPiece side = called(flat, "side");
    assertThat(side.count()).isEqualTo(2);
    double half = Math.asin(100 / radius);
    assertThat(side.longMm()).isCloseTo(2 * half * (radius - t / 2), within(0.05));
    for (Coordinate c : side.outline().getCoordinates()) {
      // rolled round the middle of the sheet, then out to its outer face
      double turn = c.x / (radius - t / 2) - half;
      double x = 100 + radius * Math.sin(turn);
      boolean onEdge =
          Math.abs(c.y) < NEAR_MM
              || Math.abs(c.y - (60 + 0.2 * x)) < NEAR_MM
              || Math.abs(x) < NEAR_MM
              || Math.abs(x - 200) < NEAR_MM;
      assertThat(onEdge).as("%s %s", x, c.y).isTrue();
    }
    // the strip below fits between sides that are cut square to themselves: at an end they slant
    FlatPiece strip = called(flat, "edge strip");
    double edge = Math.sqrt(radius * radius - 100 * 100) - 40;
    double wide = 2 * (edge - t / Math.cos(half));
    assertThat(flat.strip().get(0).wideMm()).isCloseTo(wide, within(NEAR_MM));
    assertThat(strip.folds()).hasSize(3);
  }

  @Test
  void aFoldTakesItsAllowance() {
    Outline angle = new Outline.Drawn(Made.outline(0, 0, 100, 0, 100, 80).vertices(), false);
    Unrolled flat =
        unrolled(angle, new Breadth(Made.stations(false, 0, 50, 100, 40), Profile.FLAT), 2, true);
    FlatPiece strip = called(flat, "edge strip");
    // drawn along the middle: legs less what the radius of 2 + 1 takes, and its arc at 0.44 of 2
    double arc = Math.PI / 2 * (2 + 0.44 * 2);
    assertThat(strip.longMm()).isCloseTo(97 + arc + 77, within(1e-6));
    assertThat(strip.folds()).hasSize(1);
    assertThat(strip.folds().get(0).alongMm()).isCloseTo(97 + arc / 2, within(1e-6));
    assertThat(strip.folds().get(0).rad()).isCloseTo(Math.PI / 2, within(1e-9));
    assertThat(strip.outline().getEnvelopeInternal().getHeight()).isCloseTo(100, within(1e-6));
  }

  /** Flat sides that slant both ways: y = 100 - 0.1 x - 0.3 z. */
  @Test
  void aSlantedFlatSideKeepsItsDistances() {
    Outline wedge = Made.reaching(0, 0, 100, 100, 300, 0, 70, 70, 300, 100, 40, 40, 0, 100, 70, 70);
    Unrolled flat = unrolled(wedge, Breadth.EVEN, 2, false);
    assertThat(flat.needsFormers()).isFalse();
    FlatPiece side = called(flat, "side");
    double[][] corners = {{0, 100, 0}, {300, 70, 0}, {300, 40, 100}, {0, 70, 100}};
    for (double[] p : corners) {
      for (double[] q : corners) {
        double far = Math.hypot(Math.hypot(p[0] - q[0], p[1] - q[1]), p[2] - q[2]);
        assertThat(has(side, far)).as("%s", far).isTrue();
      }
    }
    assertThat(side.outline().getArea())
        .isCloseTo(300 * 100 * Math.sqrt(1 + 0.1 * 0.1 + 0.3 * 0.3), within(1.0));
  }

  private static boolean has(FlatPiece p, double far) {
    List<Coordinate> all = List.of(p.outline().getCoordinates());
    return all.stream()
        .anyMatch(a -> all.stream().anyMatch(b -> Math.abs(a.distance(b) - far) < 0.01));
  }

  /** Two flat panels that meet at x 150, both slanting 0.3 on 1 upward. */
  @Test
  void aSlantedSideWithABendIsFolded() {
    double t = 2;
    Outline bent =
        Made.reaching(
            0, 0, 100, 100, 150, 0, 85, 85, 300, 0, 40, 40, 300, 100, 10, 10, 150, 100, 55, 55, 0,
            100, 70, 70);
    FlatPiece side = called(unrolled(bent, Breadth.EVEN, t, false), "side");
    // normals (0.1, 1, 0.3) and (0.3, 1, 0.3)
    double cos = (0.03 + 1 + 0.09) / Math.sqrt((0.01 + 1 + 0.09) * (0.09 + 1 + 0.09));
    double turn = Math.acos(cos);
    // square to the rulings, which run (0, -0.3, 1): y counts for what is across them
    double first = 150 * Math.sqrt(1 + 0.01 / 1.09);
    double second = 150 * Math.sqrt(1 + 0.09 / 1.09);
    double mitre = t * Math.tan(turn / 2);
    double fold = 2 * (t + t / 2) * Math.tan(turn / 2) - turn * (t + 0.44 * t);
    assertThat(side.folds()).hasSize(1);
    assertThat(Math.abs(side.folds().get(0).rad())).isCloseTo(turn, within(1e-6));
    assertThat(side.folds().get(0).rad()).isPositive();
    assertThat(side.outline().getArea())
        .isCloseTo((first + second - mitre - fold) * 100 * Math.sqrt(1.09), within(1.0));
  }

  @Test
  void aTwistedSideCannotBeLaidFlat() {
    Outline twisted =
        Made.reaching(0, 0, 100, 100, 300, 0, 60, 60, 300, 100, 100, 100, 0, 100, 60, 60);
    Unrolled flat = unrolled(twisted, Breadth.EVEN, 2, false);
    assertThat(flat.needsFormers()).isTrue();
    assertThat(flat.patterns()).extracting(FlatPiece::what).containsExactly("edge strip");
  }
}
