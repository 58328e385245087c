package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.space.Hull;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Separation;

/** Where pieces of a body lie beside its true faces. */
class TwistTest {

  /** How far a point is from a body, 0 within, mm. */
  private static double mm(PartShape shape, double x, double y, double z) {
    Hull point = Hull.of(List.of(new double[] {x, y, z}));
    Separation separation = new Separation();
    double least = 1000;
    for (Prism prism : shape.prisms()) {
      for (Piece piece : prism.convex()) {
        separation.begin(1, 1, 1);
        least = Math.min(least, separation.mm(piece, point, 1000));
      }
    }
    return least;
  }

  @Test
  void aTwistedSideIsNotFilledOut() {
    // below 100 to 0, above 0 to 100: half way all is 50, and its hull is 100
    PartShape body =
        Made.solid(
            Made.reaching(0, 0, 100, 100, 400, 0, 0, 0, 400, 200, 100, 100, 0, 200, 0, 0),
            Made.spread(10, 10, false),
            Breadth.EVEN);
    for (double x = 20; x < 400; x += 40) {
      for (double z = 10; z < 200; z += 20) {
        double side = (1 - x / 400) * (1 - z / 200) * 100 + x / 400 * z / 200 * 100;
        assertThat(mm(body, x, side - 1, z)).isLessThanOrEqualTo(0);
        assertThat(mm(body, x, side + 1.5, z)).isGreaterThan(0);
      }
    }
  }

  @Test
  void largeCurvesAreCutAsFineAsSmallOnes() {
    PartShape rod =
        Made.solid(
            Made.outline(0, -250, 300, -250, 300, 250, 0, 250),
            Made.spread(250, 250, false),
            new Breadth(List.of(), Made.profile(Profile.Shape.OVAL)));
    for (double deg = 0; deg < 360; deg += 4.5) {
      double a = Math.toRadians(deg);
      assertThat(mm(rod, 150, 255 * Math.cos(a), 255 * Math.sin(a))).isBetween(4.999, 5.201);
    }
  }

  @Test
  void aSheetHasTheWallsOfItsSteps() {
    PartShape cowl =
        Made.shell(
            Made.outline(0, 0, 200, 0, 200, 60, 100, 60, 100, 200, 0, 200),
            Made.spread(150, 150, false),
            new Breadth(Made.stations(false, 0, 150, 200, 149), Profile.FLAT),
            3,
            false);
    assertThat(mm(cowl, 99, 0, 130)).isLessThanOrEqualTo(0);
    assertThat(mm(cowl, 99, 0, 30)).isGreaterThan(20);
    assertThat(mm(cowl, 108, 0, 130)).isBetween(7.99, 8.01);
  }
}
