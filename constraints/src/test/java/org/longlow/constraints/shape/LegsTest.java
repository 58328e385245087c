package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.Formers;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;

/** Folds held against their legs, of aluminium: at a right angle 3 mm take 3 + 1.5 of each. */
class LegsTest {

  private static Unrolled open(double t, double... xz) {
    return of(new Outline.Drawn(Made.outline(xz).vertices(), false), t, true);
  }

  private static Unrolled of(Outline outline, double t, boolean open) {
    ShellPart shell =
        Made.formed(outline, Made.spread(100, 100, false), Breadth.EVEN, t, open, Formers.NONE);
    return Unrolled.of(shell, Made.PLACES).orElseThrow();
  }

  private static List<String> told(Unrolled flat) {
    return flat.faults().stream().map(Object::toString).toList();
  }

  @Test
  void aLipIsAsLongAsItsFoldTakesOrIsTold() {
    assertThat(told(open(3, 0, 0, 400, 0, 400, 4.6))).isEmpty();
    Unrolled lip = open(3, 0, 0, 400, 0, 400, 4.4);
    assertThat(told(lip))
        .singleElement()
        .asString()
        .startsWith("edge strip: leg 2 of 4.4 mm is too short to be folded so")
        .contains("take 4.5 mm");
    assertThat(lip.isFoldable(true)).isFalse();
    // as drawn, nothing taken off, its fold on it
    assertThat(lip.stripLongMm()).isCloseTo(404.4, within(1e-9));
    assertThat(lip.stripFolds().get(0).alongMm()).isCloseTo(400, within(1e-9));
  }

  @Test
  void twoFoldsShareTheLegBetweenThem() {
    assertThat(told(open(3, 0, 0, 100, 0, 100, 9.1, 200, 9.1))).isEmpty();
    assertThat(told(open(3, 0, 0, 100, 0, 100, 8.9, 200, 8.9)))
        .singleElement()
        .asString()
        .contains("leg 2 of 8.9 mm", "take 9 mm");
  }

  /** Round its outer face 2 and 2 mm are taken at each end, half of that by the seam. */
  @Test
  void aClosedLineIsHeldByItsOuterFace() {
    assertThat(told(of(Made.outline(0, 0, 50, 0, 50, 8.1, 0, 8.1), 2, false))).isEmpty();
    assertThat(told(of(Made.outline(0, 0, 50, 0, 50, 7.9, 0, 7.9), 2, false)))
        .singleElement()
        .asString()
        .contains("leg 2 of 7.9 mm", "take 8 mm");
  }

  @Test
  void aTipNearlyShutGivesNoLengthOfItsOwn() {
    Unrolled tip = open(3, 0, 0, 400, 0, 0, 10);
    assertThat(told(tip)).singleElement().asString().contains("fold 1 of 178.6\u00b0 is too sharp");
    assertThat(tip.stripLongMm()).isCloseTo(400 + Math.hypot(400, 10), within(1e-9));
    for (double turn : new double[] {139, 141}) {
      double back = Math.toRadians(180 - turn);
      Unrolled v = open(1, 0, 0, 100, 0, 100 - 100 * Math.cos(back), 100 * Math.sin(back));
      assertThat(told(v)).as("%s", turn).hasSize(turn > 140 ? 1 : 0);
    }
    assertThat(told(open(2, 0, 0, 400, 0, 0, 0))).hasSize(1);
  }

  /** A side in two panels that slant up, bent 6 mm or 1 mm from its end. */
  @Test
  void aSlantedSideIsHeldToo() {
    for (double end : new double[] {6, 1}) {
      Outline bent =
          Made.reaching(
              0, 0, 100, 100, 150, 0, 100, 100, 150 + end, 0, 100 - end, 100 - end, 150 + end, 100,
              70 - end, 70 - end, 150, 100, 70, 70, 0, 100, 70, 70);
      Unrolled flat = of(bent, 3, false);
      assertThat(flat.needsFormers()).isFalse();
      assertThat(flat.isFoldable(false)).as("%s", end).isEqualTo(end > 5);
      if (end < 5) {
        // square to rulings that run (0, -0.3, 1): nothing taken off
        double area = (150 + end * Math.sqrt(1 + 1 / 1.09)) * 100 * Math.sqrt(1.09);
        assertThat(flat.sideAreaMm2()).isCloseTo(area, within(1.0));
      }
    }
  }

  private static Formers formers(double every, double flange) {
    return new Formers(
        List.of(),
        List.of(),
        Optional.of(Made.mm(every)),
        Made.mm(3),
        Optional.of(Made.mm(flange)),
        Optional.empty(),
        List.of());
  }

  private static List<String> told(Formers formers) {
    return FormerFaults.of(block(formers), Made.PLACES).stream()
        .map(f -> f.line().toString())
        .toList();
  }

  private static Part block(Formers formers) {
    return Made.formed(
        Made.outline(5, 0, 395, 0, 395, 200, 5, 200),
        Made.spread(100, 100, false),
        Breadth.EVEN,
        formers);
  }

  /** 390 mm from 5 on: 60 places at 6.5 mm, 61 at 6.4. */
  @Test
  void aSpacingMakesAllItAsksForOrNone() {
    assertThat(FormerCuts.of(block(formers(6.5, 10)), Made.PLACES)).hasSize(60);
    assertThat(FormerCuts.of(block(formers(6.4, 10)), Made.PLACES)).isEmpty();
    assertThat(told(formers(6.4, 10)))
        .anyMatch(f -> f.contains("makes 61 of them, allowed: 60; none of these is made"));
  }

  /** 3 mm of sheet round 3 mm take 6 of a rim that is square. */
  @Test
  void aRimIsAsBroadAsItsFoldTakesOrIsTold() {
    assertThat(told(formers(200, 6.1))).isEmpty();
    assertThat(told(formers(200, 5.9)))
        .singleElement()
        .asString()
        .contains("its rim of 5.9 mm cannot be folded so, the fold alone takes 6 mm");
    double wide =
        FormerCuts.of(block(formers(200, 5.9)), Made.PLACES)
            .get(0)
            .board()
            .getEnvelopeInternal()
            .getWidth();
    assertThat(wide).isCloseTo(200 + 2 * 5.9, within(1e-6));
  }
}
