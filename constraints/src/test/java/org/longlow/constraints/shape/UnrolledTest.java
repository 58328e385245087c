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

  @Test
  void whatIsAsBroadEverywhereIsNotLaidOut() {
    assertThat(of(BOX, EVEN, Breadth.EVEN, 2, false)).isEmpty();
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
    double left = Math.hypot(90, 100) + Math.hypot(210, 50);
    assertThat(flat.needsFormers()).isFalse();
    assertThat(flat.strips()).isEqualTo(1);
    assertThat(flat.sides()).isEqualTo(2);
    assertThat(flat.sideLongMm()).isCloseTo(left, within(1e-9));
    assertThat(flat.sideAreaMm2()).isCloseTo(100 * left, within(1e-6));
    assertThat(told(flat))
        .containsExactly(
            "tail 0.000 246.000",
            "station 2 90.000 146.000",
            "nose 300.000 196.000",
            "nose 400.000 196.000",
            "station 2 610.000 146.000",
            "tail 700.000 246.000",
            "tail 800.000 246.000");
    assertThat(flat.stripLongMm()).isCloseTo(800, within(1e-9));
    assertThat(flat.stripWideMm()).isCloseTo(246, within(1e-9));
    double strip = 2 * (90 * (246 + 146) / 2.0 + 210 * (146 + 196) / 2.0) + 100 * (246 + 196);
    assertThat(flat.stripAreaMm2()).isCloseTo(strip, within(1e-6));
    // outer faces: both sides, and the strip 2 mm wider to each side
    double edge = 2 * (90 * (250 + 150) / 2.0 + 210 * (150 + 200) / 2.0) + 100 * (250 + 200);
    assertThat(flat.sheetAreaMm2()).isCloseTo(100 * (left + 300) + edge, within(1e-3));
  }

  @Test
  void whereTheRightIsLongerItIsThatAndAPairHasTwoOfEach() {
    Breadth breadth =
        new Breadth(List.of(station("a", 0, 150, -100), station("b", 300, 150, -20)), Profile.FLAT);
    Unrolled flat = of(BOX, Made.spread(150, -20, true), breadth, 2, false).orElseThrow();
    assertThat(flat.strips()).isEqualTo(2);
    assertThat(flat.sides()).isEqualTo(4);
    assertThat(flat.sideLongMm()).isCloseTo(Math.hypot(300, 80), within(1e-9));
    assertThat(flat.strip().get(0).wideMm()).isCloseTo(46, within(1e-9));
  }

  /** A triangle that rises by 30 over 40: its side is as high as it is there. */
  @Test
  void sidesEndAtTheOutline() {
    Breadth breadth =
        new Breadth(List.of(station("a", 0, 60, 60), station("b", 40, 30, 30)), Profile.FLAT);
    Unrolled flat = of(Made.outline(0, 0, 40, 0, 40, 30), EVEN, breadth, 1, false).orElseThrow();
    assertThat(flat.sideLongMm()).isCloseTo(50, within(1e-9));
    assertThat(flat.sideAreaMm2()).isCloseTo(50 * 30 / 2.0, within(1e-9));
    assertThat(told(flat))
        .containsExactly(
            "a 0.000 118.000", "b 40.000 58.000", "b 70.000 58.000", "a 120.000 118.000");
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
        .startsWith("point 1 0.000 396.000", "point 2 300.000 236.000");
    assertThat(told(flat)).element(3).isEqualTo("point 4 700.000 376.000");
  }

  @Test
  void roundSidesLeaveNoStrip() {
    Breadth breadth = new Breadth(List.of(), Made.profile(Profile.Shape.OVAL));
    Unrolled flat = of(BOX, EVEN, breadth, 2, false).orElseThrow();
    assertThat(flat.strip()).isEmpty();
    assertThat(flat.stripLongMm()).isZero();
    assertThat(flat.stripWideMm()).isZero();
    assertThat(flat.needsFormers()).isTrue();
  }

  @Test
  void whatIsOpenIsAStripOfItsFullWidth() {
    Outline line = new Outline.Drawn(Made.outline(0, 0, 300, 0, 300, 400).vertices(), false);
    Breadth breadth =
        new Breadth(List.of(station("a", 0, 60, 40), station("b", 150, 30, 30)), Profile.FLAT);
    Unrolled flat = of(line, EVEN, breadth, 3, true).orElseThrow();
    assertThat(flat.sides()).isZero();
    assertThat(flat.needsFormers()).isFalse();
    assertThat(told(flat))
        .containsExactly("a 0.000 100.000", "b 150.000 60.000", "point 3 700.000 60.000");
    double area = 150 * 80 + 550 * 60.0;
    assertThat(flat.stripAreaMm2()).isCloseTo(area, within(1e-6));
    assertThat(flat.sheetAreaMm2()).isCloseTo(area, within(1e-6));
  }
}
