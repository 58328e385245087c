package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** What hardly moves stays as it was painted; what moves farther, or has come to rest, does not. */
class SteadyTest {

  private static final GeometryFactory PLANE = new GeometryFactory();
  private static final double PX_PER_MM = 0.4;
  private static final double UNSEEN_MM = Steady.UNSEEN_PX / PX_PER_MM;

  private final Steady steady = new Steady();

  private static Drawing of(Mark... marks) {
    return Drawing.of("", new Layer("one", "one", List.of(marks)));
  }

  private static Mark box(double x, double side) {
    Coordinate[] ring = {
      new Coordinate(x, 0),
      new Coordinate(x + side, 0),
      new Coordinate(x + side, side),
      new Coordinate(x, 0)
    };
    return new Mark.Shape("box", PLANE.createPolygon(ring), Style.wide(Tone.INK));
  }

  private static Mark words(String text, double x, double turnDeg) {
    return new Mark.Words("words", text, x, 0, 2.5, turnDeg, Anchor.START, Tone.INK);
  }

  private List<Mark> moving(Mark... marks) {
    return steady.moving(of(marks), PX_PER_MM);
  }

  @Test
  void aMarkThatHardlyMovesIsTheSame() {
    Mark first = moving(box(0, 100)).get(0);
    assertThat(moving(box(0.99 * UNSEEN_MM, 100)).get(0)).isSameAs(first);
    Mark far = box(1.01 * UNSEEN_MM, 100);
    assertThat(moving(far).get(0)).isSameAs(far);
  }

  /** Steps too small to see do not add up to one that is. */
  @Test
  void smallStepsDoNotAddUp() {
    double worst = 0;
    double x = 0;
    for (int i = 0; i < 40; i++) {
      x += 0.3 * UNSEEN_MM;
      Geometry seen = ((Mark.Shape) moving(box(x, 100)).get(0)).geometry();
      worst = Math.max(worst, Math.abs(seen.getCoordinate().x - x));
    }
    assertThat(worst).isBetween(0.5 * UNSEEN_MM, UNSEEN_MM);
  }

  @Test
  void onePointThatMovesIsEnough() {
    moving(box(0, 100));
    Mark grown = box(0, 100 + 1.01 * UNSEEN_MM);
    assertThat(moving(grown).get(0)).isSameAs(grown);
  }

  @Test
  void whatLooksOtherwiseIsTakenAtOnce() {
    moving(words("12 mm", 0, 0));
    for (Mark now : List.of(words("13 mm", 0, 0), words("13 mm", 0, 1), words("13 mm", 9, 1))) {
      assertThat(moving(now).get(0)).isSameAs(now);
    }
    Mark.Shape plain = (Mark.Shape) box(0, 100);
    moving(plain);
    Mark dyed = new Mark.Shape("box", plain.geometry(), Style.wide(Tone.BAD));
    assertThat(moving(dyed).get(0)).isSameAs(dyed);
    Mark line =
        new Mark.Shape(
            "box", ((Mark.Shape) box(0, 100)).geometry().getBoundary(), Style.wide(Tone.BAD));
    assertThat(moving(line).get(0)).isSameAs(line);
  }

  @Test
  void atRestEverythingIsExact() {
    moving(box(0, 100), words("a", 0, 0));
    Mark moved = box(1e-9, 100);
    Mark same = words("a", 0, 0);
    List<Mark> marks = steady.exact(of(moved, same));
    assertThat(marks.get(0)).isSameAs(moved);
    assertThat(marks.get(1)).as("the same as before, so not painted again").isEqualTo(same);
    assertThat(marks.get(1)).isNotSameAs(same);
  }

  /** One more mark of one thing leaves those of other things alone. */
  @Test
  void whatComesInBetweenShiftsNothing() {
    List<Mark> before = new ArrayList<>(moving(words("a", 0, 0), box(0, 100)));
    List<Mark> now = moving(words("a", 0, 0), words("b", 50, 0), box(0.1 * UNSEEN_MM, 100));
    assertThat(now.get(0)).isSameAs(before.get(0));
    assertThat(now.get(2)).isSameAs(before.get(1));
  }
}
