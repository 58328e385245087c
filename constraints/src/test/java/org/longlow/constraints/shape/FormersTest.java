package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.shape.FormersAsked.box;
import static org.longlow.constraints.shape.FormersAsked.off;
import static org.longlow.constraints.shape.FormersAsked.only;
import static org.longlow.constraints.shape.FormersAsked.points;
import static org.longlow.constraints.shape.FormersAsked.told;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.Vertex;

/** Formers against surfaces in closed form: none is off by more than 0.05 mm. */
class FormersTest {

  private static final double NEAR_MM = 0.05;

  private static final Profile ROUND = Made.profile(Profile.Shape.ROUND);
  private static final Profile OVAL = Made.profile(Profile.Shape.OVAL);

  /** A cone of radius 100 at 0, 40 at 300. */
  private static Part cone(Formers formers) {
    return Made.formed(
        Made.outline(0, -100, 300, -40, 300, 40, 0, 100),
        Made.spread(100, 100, false),
        new Breadth(Made.stations(false, 0, 100, 300, 40), ROUND),
        formers);
  }

  @Test
  void aConeLosesItsSkinSquareToItself() {
    for (double skin : new double[] {0, 3, 25}) {
      for (double x : new double[] {100, 215.5}) {
        FormerCut cut = only(cone(Made.across(skin, x)));
        // the generators of the cone turn in by 60 on 300
        double radius = 100 - 0.2 * x - skin * Math.hypot(1, 0.2);
        for (Coordinate p : points(cut.line())) {
          assertThat(Math.hypot(p.x, p.y))
              .as("skin %s at %s", skin, x)
              .isCloseTo(radius, within(0.03));
        }
        assertThat(box(cut.line()).getWidth()).isCloseTo(2 * radius, within(NEAR_MM));
        assertThat(cut.skinMm()).isEqualTo(skin);
      }
    }
  }

  /**
   * Its front edge is lower than it leans: what lies nearest to it is the top of the other face.
   */
  @Test
  void anEdgeThatIsLowLeansAsFarAsOneThatIsHigh() {
    // a wedge 30 high whose sides run from 150 out to 0 over 300: at y 75 half its length is left
    Part wedge =
        Made.formed(
            Made.outline(0, 0, 300, 0, 300, 30, 0, 30),
            Made.spread(150, 150, false),
            new Breadth(Made.stations(false, 0, 150, 300, 0), Profile.FLAT),
            Made.along(0, 75));
    FormerCut cut = only(wedge);
    FormerCut.Lean front =
        cut.leans().stream()
            .max(Comparator.comparingDouble(l -> Math.abs(l.offMm())))
            .orElseThrow();
    assertThat(Math.abs(front.offMm())).isCloseTo(10 * 2, within(NEAR_MM));
    assertThat(Math.abs(front.rad())).isCloseTo(Math.atan(2), within(1e-3));
  }

  @Test
  void itsSheetLiesWhereTheBodyIsLargerAndTheLeanIsThatOfTheCone() {
    FormerCut cut = only(cone(Made.across(3, 100)));
    assertThat(cut.ahead()).isFalse();
    assertThat(cut.leans()).hasSize(4);
    for (FormerCut.Lean lean : cut.leans()) {
      assertThat(lean.offMm()).isCloseTo(0.2 * 10, within(NEAR_MM));
      assertThat(lean.rad()).isCloseTo(Math.atan(0.2), within(0.006));
    }
    Part other =
        Made.formed(
            Made.outline(0, -40, 300, -100, 300, 100, 0, 40),
            Made.spread(100, 100, false),
            new Breadth(Made.stations(false, 0, 40, 300, 100), ROUND),
            Made.across(3, 100));
    assertThat(only(other).ahead()).isTrue();
  }

  /**
   * A body whose floor rises by 0.3 while its roof rises by 0.8: its sheet lies ahead, where there
   * is more of it, but the other face's floor lies above this one's, within it.
   */
  @Test
  void anEdgeLeansInwardWhereTheOtherFaceIsNarrower() {
    Part rising =
        Made.formed(
            Made.outline(0, 0, 300, 90, 300, 340, 0, 100),
            Made.spread(100, 100, false),
            new Breadth(Made.stations(false, 0, 80, 300, 110), Profile.FLAT),
            Made.across(0, 100));
    FormerCut cut = only(rising);
    assertThat(cut.ahead()).isTrue();
    // by the surface itself: places of it at both faces of a sheet of 10 mm
    double floor = 0.3 * 100 - 0.3 * 110;
    double roof = 0.8 * 110 - 0.8 * 100;
    double side = 0.1 * 110 - 0.1 * 100;
    for (FormerCut.Lean lean : cut.leans()) {
      double off =
          switch (lean.edge()) {
            case TOP -> roof;
            case BOTTOM -> floor;
            case LEFT, RIGHT -> side;
          };
      assertThat(lean.offMm()).as("%s", lean.edge()).isCloseTo(off, within(NEAR_MM));
      assertThat(lean.rad()).isCloseTo(Math.atan(off / 10), within(0.006));
    }
    assertThat(cut.leans())
        .extracting(FormerCut.Lean::edge)
        .contains(FormerCut.Edge.BOTTOM, FormerCut.Edge.TOP);
    assertThat(box(cut.other()).getMinY()).isCloseTo(33, within(0.01));
  }

  @Test
  void aSlantedBoxHasTheSectionOfItsPlanes() {
    // sides fall from 100 to 40, the top from 120 to 60, on 300; the floor is level
    Part box =
        Made.formed(
            Made.outline(0, 0, 300, 0, 300, 60, 0, 120),
            Made.spread(100, 100, false),
            new Breadth(Made.stations(false, 0, 100, 300, 40), Profile.FLAT),
            4,
            false,
            Made.across(0, 150));
    Envelope line = box(only(box).line());
    double slope = Math.hypot(1, 0.2);
    assertThat(line.getMaxX()).isCloseTo(70 - 4 * slope, within(0.01));
    assertThat(line.getMinX()).isCloseTo(-70 + 4 * slope, within(0.01));
    assertThat(line.getMinY()).isCloseTo(4, within(0.01));
    assertThat(line.getMaxY()).isCloseTo(90 - 4 * slope, within(0.01));
    assertThat(only(box).line().getArea())
        .isCloseTo(line.getWidth() * line.getHeight(), within(0.5));
  }

  @Test
  void openSidesHaveNoSkin() {
    Part open =
        Made.formed(
            Made.outline(0, 0, 300, 0, 300, 60, 0, 120),
            Made.spread(100, 100, false),
            new Breadth(Made.stations(false, 0, 100, 300, 40), Profile.FLAT),
            4,
            true,
            Made.across(0, 150));
    Envelope line = box(only(open).line());
    assertThat(line.getMaxX()).isCloseTo(70, within(0.01));
    assertThat(line.getMaxY()).isCloseTo(90 - 4 * Math.hypot(1, 0.2), within(0.01));
  }

  @Test
  void aWallThatIsMetTakesItsSheetToo() {
    Part box =
        Made.formed(
            Made.outline(0, 0, 300, 0, 300, 60, 0, 60),
            Made.spread(100, 100, false),
            Breadth.EVEN,
            4,
            false,
            Made.across(0, 3.9, 4.1));
    List<FormerCut> cuts = FormerCuts.of(box, Made.PLACES);
    assertThat(cuts).extracting(FormerCut::placeMm).containsExactly(4.1);
    assertThat(FormerFaults.of(box, Made.PLACES))
        .extracting(FormerFaults.Fault::of)
        .containsExactly("former 1");
    assertThat(told(box)).contains("only the skin is there");
    assertThat(cuts.get(0).name()).isEqualTo("former 2");
  }

  /** Half axes 300, 150 and 100, by stations and points one degree apart. */
  private static final double[] AXES = {300, 150, 100};

  private static Part ellipsoid(Formers formers) {
    List<Vertex> ring = new ArrayList<>();
    for (int i = 0; i < 360; i++) {
      double a = Math.toRadians(i);
      ring.add(
          new Vertex(Made.mm(AXES[0] * Math.cos(a)), Made.mm(AXES[2] * Math.sin(a)), null, true));
    }
    double[] stations = new double[2 * 181];
    for (int i = 0; i <= 180; i++) {
      stations[2 * i] = -AXES[0] * Math.cos(Math.toRadians(i));
      stations[2 * i + 1] = Math.max(0, AXES[1] * Math.sin(Math.toRadians(i)));
    }
    return Made.formed(
        new Outline.Drawn(ring, true),
        Made.spread(150, 150, false),
        new Breadth(Made.stations(false, stations), OVAL),
        formers);
  }

  /** How far a place inside lies from the ellipsoid: its foot is p·a²/(a² + m), m by halving. */
  private static double depth(double... p) {
    double low = -AXES[2] * AXES[2] + 1e-9;
    double high = 0;
    for (int i = 0; i < 200; i++) {
      double m = (low + high) / 2;
      double sum = 0;
      for (int k = 0; k < 3; k++) {
        sum += Math.pow(p[k] * AXES[k] / (AXES[k] * AXES[k] + m), 2);
      }
      low = sum > 1 ? m : low;
      high = sum > 1 ? high : m;
    }
    double far = 0;
    for (int k = 0; k < 3; k++) {
      far += Math.pow(p[k] * low / (AXES[k] * AXES[k] + low), 2);
    }
    return Math.sqrt(far);
  }

  @Test
  void formersOfAnEllipsoidLieItsSkinUnderIt() {
    for (double x : new double[] {0, 120, -235}) {
      FormerCut cut = only(ellipsoid(Made.across(5, x)));
      for (Coordinate p : points(cut.line())) {
        assertThat(depth(x, p.x, p.y)).as("%s %s %s", x, p.x, p.y).isCloseTo(5, within(NEAR_MM));
      }
      // all the way round, and no hole in it
      assertThat(cut.line().getNumGeometries()).isEqualTo(1);
      assertThat(cut.line().contains(Curves.FACTORY.createPoint(new Coordinate(0, 0)))).isTrue();
    }
    FormerCut along = only(ellipsoid(Made.along(5, 60)));
    for (Coordinate p : points(along.line())) {
      assertThat(depth(p.x, 60, p.y)).as("%s %s", p.x, p.y).isCloseTo(5, within(NEAR_MM));
    }
    assertThat(box(along.line()).getWidth()).isGreaterThan(500);
    assertThat(along.across()).isFalse();
  }

  /** Sides that twist: from 100 below and 60 above to 60 below and 100 above. */
  @Test
  void twistedSidesLoseTheirSkinToo() {
    Outline twisted =
        Made.reaching(0, 0, 100, 100, 300, 0, 60, 60, 300, 100, 100, 100, 0, 100, 60, 60);
    double t = 6;
    FormerCut cut =
        only(
            Made.formed(
                twisted,
                Made.spread(100, 100, false),
                Breadth.EVEN,
                t,
                false,
                Made.across(0, 200)));
    for (double z = 10; z <= 90; z += 16) {
      // the point under the side at (u, z'): against its normal, found where x is 200
      double low = 150;
      double high = 250;
      double[] under = new double[3];
      for (int i = 0; i < 100; i++) {
        double u = (low + high) / 2;
        under = under(u, z, t);
        low = under[0] < 200 ? u : low;
        high = under[0] < 200 ? high : u;
      }
      assertThat(under[0]).isCloseTo(200, within(1e-6));
      assertThat(off(cut.line(), under[1], under[2])).isLessThan(NEAR_MM);
      assertThat(off(cut.line(), -under[1], under[2])).isLessThan(NEAR_MM);
    }
  }

  private static double[] under(double x, double z, double t) {
    double s = x / 300;
    double v = z / 100;
    double y = (100 - 40 * s) * (1 - v) + (60 + 40 * s) * v;
    double dx = (-40 * (1 - v) + 40 * v) / 300;
    double dz = (-(100 - 40 * s) + (60 + 40 * s)) / 100;
    double size = Math.sqrt(dx * dx + dz * dz + 1);
    return new double[] {x + t * dx / size, y - t / size, z + t * dz / size};
  }

  /** A screen-like hollow: a valley between stations keeps the skin off both its sides. */
  @Test
  void aValleyRoundsTheSkin() {
    Part valley =
        Made.formed(
            Made.outline(0, 0, 300, 0, 300, 100, 0, 100),
            Made.spread(100, 100, false),
            new Breadth(Made.stations(false, 0, 100, 150, 60, 300, 100), Profile.FLAT),
            5,
            false,
            Made.across(0, 151));
    // the nearest of the side at (151, y) is the valley itself at (150, 60)
    assertThat(box(only(valley).line()).getMaxX()).isCloseTo(60 - Math.sqrt(25 - 1), within(0.01));
  }
}
