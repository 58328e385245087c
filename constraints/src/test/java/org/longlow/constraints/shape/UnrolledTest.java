package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Profile;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.Spread;
import org.longlow.constraints.layout.Station;

/** Sheet laid flat, against lengths and areas by hand. */
class UnrolledTest {

  private static final Outline BOX = Made.outline(0, 0, 300, 0, 300, 100, 0, 100);
  private static final Spread EVEN = Made.spread(200, 200, false);

  private static Optional<Unrolled> of(Outline o, Spread s, Breadth b, double t, boolean open) {
    return Unrolled.of((ShellPart) Made.shell(o, s, b, t, open).part(), Made.PLACES);
  }

  private static Station station(String name, double x, double left, double right) {
    return new Station(
        name,
        Made.mm(x),
        new HalfBreadths(Optional.of(Made.mm(left)), Optional.of(Made.mm(right))),
        false);
  }

  private static List<String> told(Unrolled flat) {
    return flat.strip().stream()
        .map(w -> "%s %.3f %.3f".formatted(w.where(), w.alongMm(), w.wideMm()))
        .toList();
  }

  /**
   * By how much a fold inward makes sheet shorter than its outer line (longer than its inner line
   * for a sheet of no thickness outside): bent round a radius of one thickness, its true length
   * lies at 0.44 of the thickness.
   *
   * @param outMm how far the line that is given lies outside the bend's radius
   */
  private static double fold(double turnRad, double thicknessMm, double outMm) {
    return turnRad * (thicknessMm + 0.44 * thicknessMm)
        - 2 * (thicknessMm + outMm) * Math.tan(turnRad / 2);
  }

  private static String at(String where, double alongMm, double wideMm) {
    return "%s %.3f %.3f".formatted(where, alongMm, wideMm);
  }

  /** Legs to the bends, which have an inside radius of the thickness, and their arcs at 0.44. */
  @Test
  void whatIsAsBroadEverywhereIsFoldedToo() {
    double t = 2;
    Unrolled flat = of(BOX, EVEN, Breadth.EVEN, t, false).orElseThrow();
    double arc = Math.PI / 2 * 1.44 * t;
    // the strip begins and ends in the middle of the sheet, mitred
    double length = (300 - t / 2 - 2 * t) + (100 - 4 * t) + (300 - 4 * t) + (100 - 2 * t - t / 2);
    assertThat(flat.even()).isTrue();
    assertThat(flat.needsFormers()).isFalse();
    assertThat(flat.sides()).isEqualTo(2);
    assertThat(flat.strips()).isEqualTo(1);
    assertThat(flat.stripLongMm()).isCloseTo(length + 3 * arc, within(1e-9));
    assertThat(flat.stripWideMm()).isCloseTo(400 - 2 * t, within(1e-9));
    assertThat(flat.stripFolds())
        .extracting(FlatPiece.Fold::alongMm)
        .usingElementComparator((a, b) -> Math.abs(a - b) < 1e-9 ? 0 : 1)
        .containsExactly(
            295 + arc / 2, 295 + arc + 92 + arc / 2, 295 + arc + 92 + arc + 292 + arc / 2);
    assertThat(flat.stripFolds()).allMatch(f -> Math.abs(f.rad() - Math.PI / 2) < 1e-9);
    // its sides are cut to the outline: no pattern besides the strip
    assertThat(flat.patterns()).extracting(FlatPiece::what).containsExactly("edge strip");
    Unrolled pair = of(BOX, Made.spread(200, -150, true), Breadth.EVEN, t, false).orElseThrow();
    assertThat(pair.strips()).isEqualTo(2);
    assertThat(pair.sides()).isEqualTo(4);
    assertThat(pair.stripWideMm()).isCloseTo(50 - 2 * t, within(1e-9));
  }

  /** As wide as four sheets of 2 mm there is less room within than sheet around it. */
  @Test
  void whatHasNoRoomWithinIsOneFlatSheet() {
    for (double half : List.of(2.0, 4.0)) {
      Unrolled panel =
          of(BOX, Made.spread(half, half, false), Breadth.EVEN, 2, false).orElseThrow();
      assertThat(panel.panel()).isTrue();
      assertThat(panel.sides()).isEqualTo(1);
      assertThat(panel.strips()).isZero();
      assertThat(panel.patterns()).isEmpty();
    }
    Unrolled wider = of(BOX, Made.spread(4, 4.1, false), Breadth.EVEN, 2, false).orElseThrow();
    assertThat(wider.panel()).isFalse();
    assertThat(wider.sides()).isEqualTo(2);
    assertThat(wider.stripWideMm()).isCloseTo(4.1, within(1e-9));
  }

  /** Broad to the left as 200, 100, 150 at 0, 90 and 300, and 50 to the right. */
  @Test
  void theLongerSideIsTheLeftAndItsStripIsAsWideAsSaidBetweenItsSides() {
    Breadth breadth =
        new Breadth(
            List.of(
                station("tail", 0, 200, 50),
                station("", 90, 100, 50),
                station("nose", 300, 150, 50)),
            Profile.FLAT);
    Unrolled flat = of(BOX, EVEN, breadth, 2, false).orElseThrow();
    // where its outer face is hollow it is longer in the middle of the sheet
    double bend = Math.atan2(100, 90) + Math.atan2(50, 210);
    double left = Math.hypot(90, 100) + Math.hypot(210, 50) + fold(bend, 2, 0);
    double corner = fold(Math.PI / 2, 2, 2);
    assertThat(flat.needsFormers()).isFalse();
    assertThat(flat.strips()).isEqualTo(1);
    assertThat(flat.sides()).isEqualTo(2);
    assertThat(flat.sideLongMm()).isCloseTo(left, within(1e-9));
    assertThat(flat.sideAreaMm2()).isCloseTo(100 * left, within(1e-6));
    // it meets itself in the middle of the sheet; the left side slants, and is cut square to itself
    double tail = 250 - 2 - 2 * Math.hypot(1, 100 / 90.0);
    double nose = 200 - 2 - 2 * Math.hypot(1, 50 / 210.0);
    double hollow = 150 - 2 - flat.strip().get(1).wideMm();
    assertThat(hollow).isBetween(2 * Math.hypot(1, 50 / 210.0), 2 * Math.hypot(1, 100 / 90.0));
    double wide = 150 - 2 - hollow;
    assertThat(told(flat))
        .containsExactly(
            at("tail", 0, tail),
            at("station 2", 90 - 1, wide),
            at("nose", 300 - 1 + corner / 2, nose),
            at("nose", 400 - 1 + 1.5 * corner, nose),
            at("station 2", 610 - 1 + 2 * corner, wide),
            at("tail", 700 - 1 + 2.5 * corner, tail),
            at("tail", 800 - 2 + 3 * corner, tail));
    assertThat(flat.stripLongMm()).isCloseTo(800 - 2 + 3 * corner, within(1e-9));
    assertThat(flat.stripWideMm()).isCloseTo(tail, within(1e-9));
    // straight from place to place but for what folds take there, a few square millimetres each
    double strip = 2 * (90 * (tail + wide) / 2 + 210 * (wide + nose) / 2) + 100 * (tail + nose);
    double folds = (1 - 1.5 * corner) * nose + (1 - 1.5 * corner) * tail;
    assertThat(flat.stripAreaMm2()).isCloseTo(strip - folds, within(0.002 * strip));
  }

  @Test
  void whereTheRightIsLongerItIsThatAndAPairHasTwoOfEach() {
    Breadth breadth =
        new Breadth(List.of(station("a", 0, 150, -100), station("b", 300, 150, -20)), Profile.FLAT);
    Unrolled flat = of(BOX, Made.spread(150, -20, true), breadth, 2, false).orElseThrow();
    assertThat(flat.strips()).isEqualTo(2);
    assertThat(flat.sides()).isEqualTo(4);
    assertThat(flat.sideLongMm()).isCloseTo(Math.hypot(300, 80), within(1e-9));
    assertThat(flat.strip().get(0).wideMm())
        .isCloseTo(50 - 2 - 2 * Math.hypot(1, 80 / 300.0), within(1e-9));
  }

  /** A triangle that rises by 30 over 40: its side is as high as it is there. */
  @Test
  void sidesEndAtTheOutline() {
    Breadth breadth =
        new Breadth(List.of(station("a", 0, 60, 60), station("b", 40, 30, 30)), Profile.FLAT);
    Unrolled flat = of(Made.outline(0, 0, 40, 0, 40, 30), EVEN, breadth, 1, false).orElseThrow();
    assertThat(flat.sideLongMm()).isCloseTo(50, within(1e-9));
    assertThat(flat.sideAreaMm2()).isCloseTo(50 * 30 / 2.0, within(1e-9));
    double right = fold(Math.PI / 2, 1, 1);
    double sharp = fold(Math.PI - Math.atan2(40, 30), 1, 1);
    double seam = 0.5 / Math.tan(Math.atan2(30, 40) / 2);
    double slant = 2 * Math.hypot(1, 30 / 40.0);
    assertThat(told(flat))
        .containsExactly(
            at("a", 0, 120 - slant),
            at("b", 40 - seam + right / 2, 60 - slant),
            at("b", 70 - seam + right + sharp / 2, 60 - slant),
            at("a", 120 - 2 * seam + right + sharp, 120 - slant));
  }

  @Test
  void pointsThatSayItAskForFormersAtTheSidesButNotForTheStrip() {
    Outline outline =
        Made.reaching(0, 0, 200, 200, 300, 0, 120, 120, 300, 100, 120, 120, 0, 100, 180, 200);
    Unrolled flat = of(outline, EVEN, Breadth.EVEN, 2, false).orElseThrow();
    assertThat(flat.needsFormers()).isTrue();
    assertThat(flat.sideLongMm()).isZero();
    assertThat(told(flat))
        .hasSize(5)
        .element(1)
        .asString()
        .startsWith("point 2 %.3f ".formatted(300 - 1 + fold(Math.PI / 2, 2, 2) / 2));
    assertThat(flat.strip().get(0).wideMm()).isCloseTo(400 - 2 * 2, within(0.3)).isLessThan(396);
    assertThat(flat.strip().get(3).wideMm()).isCloseTo(380 - 2 * 2, within(0.3)).isLessThan(376);
  }

  @Test
  void sidesThatBendTwoWaysLeaveNoStrip() {
    Breadth breadth =
        new Breadth(
            List.of(station("a", 0, 100, 100), station("b", 300, 60, 90)),
            Made.profile(Profile.Shape.OVAL));
    Unrolled flat = of(BOX, EVEN, breadth, 2, false).orElseThrow();
    assertThat(flat.strip()).isEmpty();
    assertThat(flat.stripLongMm()).isZero();
    assertThat(flat.stripWideMm()).isZero();
    assertThat(flat.needsFormers()).isTrue();
    assertThat(flat.patterns()).isEmpty();
    // its ends, and between them no less than a straight tube as broad as its narrower end
    assertThat(flat.sheetAreaMm2()).isGreaterThan(300 * 2 * Math.hypot(100, 150));
  }

  @Test
  void whatIsOpenIsAStripOfItsFullWidth() {
    Outline line = new Outline.Drawn(Made.outline(0, 0, 300, 0, 300, 400).vertices(), false);
    Breadth breadth =
        new Breadth(List.of(station("a", 0, 60, 40), station("b", 150, 30, 30)), Profile.FLAT);
    Unrolled flat = of(line, EVEN, breadth, 3, true).orElseThrow();
    assertThat(flat.sides()).isZero();
    assertThat(flat.needsFormers()).isFalse();
    // the line is the middle of an open sheet
    double fold = fold(Math.PI / 2, 3, 1.5);
    assertThat(told(flat))
        .containsExactly(at("a", 0, 100), at("b", 150, 60), at("point 3", 700 + fold, 60));
    double area = 150 * 80 + 550 * 60.0;
    assertThat(flat.stripAreaMm2()).isCloseTo(area + 60 * fold, within(1e-6));
  }
}
