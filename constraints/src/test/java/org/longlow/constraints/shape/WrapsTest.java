package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Profile;

/** Round bodies laid flat, rolled back by closed forms of cylinders and cones. */
class WrapsTest {

  private static final double NEAR_MM = 0.1;

  private static final Profile ROUND = Made.profile(Profile.Shape.ROUND);

  private static Unrolled unrolled(Outline outline, Breadth breadth, double t) {
    Part part = Made.formed(outline, Made.spread(60, 60, false), breadth, t, false, Formers.NONE);
    return Unrolled.of(part, Made.PLACES).orElseThrow();
  }

  /** A cone of radius {@code a} at 0 and {@code b} at {@code length}. */
  private static Unrolled cone(double a, double b, double length, double t) {
    return unrolled(
        Made.outline(0, -a, length, -b, length, b, 0, a),
        new Breadth(Made.stations(false, 0, a, length, b), ROUND),
        t);
  }

  @Test
  void aCylinderIsARectangleAndTwoDiscs() {
    double t = 2;
    Unrolled flat = cone(60, 60, 250, t);
    assertThat(flat.wrapped()).isTrue();
    assertThat(flat.needsFormers()).isFalse();
    assertThat(flat.patterns())
        .extracting(FlatPiece::what)
        .containsExactly("wrap", "rear end", "front end");
    FlatPiece wrap = flat.patterns().get(0);
    assertThat(wrap.folds()).isEmpty();
    assertThat(wrap.longMm()).isCloseTo(2 * Math.PI * (60 - t / 2), within(NEAR_MM));
    assertThat(wrap.outline().getEnvelopeInternal().getHeight()).isCloseTo(250, within(1e-6));
    double area = 250 * 2 * Math.PI * (60 - t / 2);
    assertThat(wrap.outline().getArea()).isCloseTo(area, within(0.001 * area));
    for (FlatPiece end : flat.patterns().subList(1, 3)) {
      for (Coordinate c : end.outline().getCoordinates()) {
        assertThat(Math.hypot(c.x, c.y)).isCloseTo(60 - t, within(0.03));
      }
    }
  }

  /** Fans of rings about a tip: radii and angle of a cone of the middle of the sheet. */
  @ParameterizedTest
  @ValueSource(doubles = {0, 1.5, 4})
  void aConeIsAFanAboutItsTip(double t) {
    Unrolled flat = cone(90, 30, 200, t);
    FlatPiece wrap = flat.patterns().get(0);
    double slope = 60 / 200.0;
    double slant = Math.hypot(1, slope);
    // square to the sheet the middle lies t/2 in: radius less by t/2 times the cosine of the slope
    double tip = (90 - t / 2 / slant) * slant / slope;
    double end = (30 - t / 2 / slant) * slant / slope;
    assertThat(tip - end).isCloseTo(Math.hypot(200, 60), within(1e-9));
    double turn = 2 * Math.PI * slope / slant;
    assertThat(wrap.outline().getArea()).isCloseTo(turn / 2 * (tip * tip - end * end), within(5.0));
    // its first ruling lies upright at 0: the tip is above its upper end
    Coordinate centre = new Coordinate(0, tip);
    List<Coordinate> outer = new ArrayList<>();
    List<Coordinate> inner = new ArrayList<>();
    for (Coordinate c : wrap.outline().getCoordinates()) {
      double r = c.distance(centre);
      (r > (tip + end) / 2 ? outer : inner).add(c);
      assertThat(Math.min(Math.abs(r - tip), Math.abs(r - end))).as("%s", c).isLessThan(NEAR_MM);
    }
    for (List<Coordinate> ring : List.of(outer, inner)) {
      double least = 0;
      double most = 0;
      for (Coordinate c : ring) {
        // from the first ruling on, the way that is gone
        double a = Math.atan2(c.x - centre.x, centre.y - c.y);
        least = Math.min(least, a);
        most = Math.max(most, a);
      }
      assertThat((most - least) * tip).isCloseTo(turn * tip, within(NEAR_MM));
    }
    // the wall at the back fits in at its narrower face
    double wall = t > 0 ? 90 - slope * t - t * slant : 90;
    assertThat(flat.patterns().get(1).outline().getEnvelopeInternal().getWidth())
        .isCloseTo(2 * wall, within(NEAR_MM));
    double front = 30 - t * slant;
    assertThat(flat.patterns().get(2).outline().getEnvelopeInternal().getWidth())
        .isCloseTo(2 * front, within(NEAR_MM));
  }

  @Test
  void aConeWithATipIsAWholeFan() {
    double t = 2;
    Unrolled flat =
        unrolled(
            Made.outline(0, -50, 160, 0, 0, 50),
            new Breadth(Made.stations(false, 0, 50, 160, 0), ROUND),
            t);
    assertThat(flat.patterns()).extracting(FlatPiece::what).containsExactly("wrap", "rear end");
    double slope = 50 / 160.0;
    double slant = Math.hypot(1, slope);
    double tip = (50 - t / 2 / slant) * slant / slope;
    double turn = 2 * Math.PI * slope / slant;
    assertThat(flat.patterns().get(0).outline().getArea())
        .isCloseTo(turn / 2 * tip * tip, within(5.0));
  }

  /** Flat top and floor between half rounds: a cylinder of another section. */
  @Test
  void roundedSidesAreWrappedToo() {
    double t = 3;
    Unrolled flat =
        unrolled(Made.outline(0, 0, 200, 0, 200, 80, 0, 80), new Breadth(List.of(), ROUND), t);
    // 60 to each side and 80 high: rounds of 40, flats of 40
    FlatPiece wrap = flat.patterns().get(0);
    assertThat(wrap.longMm()).isCloseTo(2 * 40 + 2 * Math.PI * (40 - t / 2), within(NEAR_MM));
    Breadth corners = new Breadth(List.of(), Made.corner(15));
    FlatPiece box =
        unrolled(Made.outline(0, 0, 200, 0, 200, 80, 0, 80), corners, t).patterns().get(0);
    assertThat(box.longMm())
        .isCloseTo(2 * 90 + 2 * 50 + 2 * Math.PI * (15 - t / 2), within(NEAR_MM));
    assertThat(box.folds()).isEmpty();
  }

  /** The way round an ellipse, by ten thousand chords, less what the middle lies further in. */
  @Test
  void anOvalTubeIsAsLongAsItsMiddle() {
    double t = 2;
    Breadth oval = new Breadth(List.of(), Made.profile(Profile.Shape.OVAL));
    FlatPiece wrap =
        unrolled(Made.outline(0, 0, 200, 0, 200, 80, 0, 80), oval, t).patterns().get(0);
    double round = 0;
    int n = 10_000;
    for (int i = 0; i < n; i++) {
      double a = 2 * Math.PI * i / n;
      double b = 2 * Math.PI * (i + 1) / n;
      round += Math.hypot(60 * (Math.cos(b) - Math.cos(a)), 40 * (Math.sin(b) - Math.sin(a)));
    }
    assertThat(wrap.longMm()).isCloseTo(round - Math.PI * t, within(NEAR_MM));
  }

  @Test
  void aTubeThatNarrowsHasAPieceForEachLength() {
    Unrolled flat =
        unrolled(
            Made.outline(0, -60, 150, -60, 300, -20, 300, 20, 150, 60, 0, 60),
            new Breadth(Made.stations(false, 0, 60, 75, 60, 150, 60, 300, 20), ROUND),
            1);
    assertThat(flat.patterns())
        .extracting(FlatPiece::what)
        .containsExactly("wrap 1", "wrap 2", "rear end", "front end");
    assertThat(flat.patterns().get(0).outline().getEnvelopeInternal().getHeight())
        .isCloseTo(150, within(1e-6));
  }

  @Test
  void whatBendsTwoWaysIsNotWrapped() {
    // as high everywhere but broader behind, its rounds of one radius: a side that twists
    Breadth wedge = new Breadth(Made.stations(false, 0, 60, 200, 45), ROUND);
    Unrolled oval =
        unrolled(
            Made.outline(0, 0, 200, 0, 200, 60, 0, 80),
            new Breadth(Made.stations(false, 0, 60, 200, 60), Made.profile(Profile.Shape.OVAL)),
            1);
    assertThat(oval.needsFormers()).isTrue();
    assertThat(oval.wrapped()).isFalse();
    // rounds of 40 all along, only farther apart behind: each is a slanted cylinder
    Unrolled slanted = unrolled(Made.outline(0, 0, 200, 0, 200, 80, 0, 80), wedge, 1);
    assertThat(slanted.wrapped()).isTrue();
    Unrolled smooth =
        unrolled(
            Made.outline(0, -60, 300, -60, 300, 60, 0, 60),
            new Breadth(Made.stations(true, 0, 60, 150, 80, 300, 60), ROUND),
            1);
    assertThat(smooth.needsFormers()).isTrue();
    assertThat(smooth.patterns()).isEmpty();
  }
}
