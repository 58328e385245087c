package org.longlow.constraints.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.BodyChecks;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.body.Population;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;

class AdjustTest {

  private static final FitMachine MACHINE =
      FitMachine.of(TestMachine.asFiled("runabout").placed()).orElseThrow();

  private static Adjuster adjuster(String name) {
    return MACHINE.adjusters().stream()
        .filter(a -> a.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsAdjustedMovesAndNothingElse() {
    BodyChecks still = MACHINE.checks();
    FitMachine.Adjusted moved = MACHINE.at(Map.of(adjuster("grips"), 25.0), everything());
    assertThat(moved.barred()).isEmpty();
    BodyChecks now = moved.checks().orElseThrow();
    Set<String> grips = Set.copyOf(MACHINE.seat().hands().orElseThrow().pins());
    still
        .places()
        .pins()
        .forEach(
            (pin, at) -> {
              PointMm by = now.places().pin(pin).minus(at);
              assertThat(by.x()).as(pin).isCloseTo(grips.contains(pin) ? 25 : 0, within(1e-9));
              assertThat(by.z()).as(pin).isCloseTo(0, within(1e-9));
            });
  }

  /** So many names that nothing counts as newly too close. */
  private static Set<String> everything() {
    List<String> names = List.copyOf(MACHINE.placed().layout().parts().keySet());
    java.util.Set<String> pairs = new java.util.HashSet<>();
    for (String a : names) {
      for (String b : names) {
        pairs.add(a + " and " + b);
      }
    }
    return pairs;
  }

  @Test
  void whatRunsIntoTheMachineIsBarred() {
    FitMachine.Adjusted far = MACHINE.at(Map.of(adjuster("height"), -400.0), MACHINE.fouled());
    assertThat(far.checks()).isEmpty();
    assertThat(far.barred()).endsWith(" too close");
    assertThat(MACHINE.at(Map.of(adjuster("height"), 0.0), MACHINE.fouled()).barred()).isEmpty();
  }

  @Test
  void eachAdjusterHasWhereTheMachineStandsNow() {
    for (Adjuster a : MACHINE.adjusters()) {
      assertThat(a.now())
          .as(a.name())
          .isBetween(a.settings().get(0) - 1e-6, a.settings().get(a.settings().size() - 1) + 1e-6);
      if (!a.measure()) {
        assertThat(a.settings()).contains(0.0);
      }
    }
  }

  private static final Adjuster A = Adjuster.about("a", "a", Adjuster.Way.SEAT_ALONG, 40, 2);
  private static final Adjuster B = Adjuster.about("b", "b", Adjuster.Way.PEGS_ALONG, 40, 2);

  private static boolean[] fits(int... who) {
    boolean[] fit = new boolean[3];
    for (int w : who) {
      fit[w] = true;
    }
    return fit;
  }

  @Test
  void theLeastHardwareIsFoundByHand() {
    // settings -40, -20, 0, 20, 40: the first at -40 and 0, the second at 0, the third at 20
    Best best = new Best(List.of(true, true, false));
    best.single(A, List.of(fits(0), fits(), fits(0, 1), fits(2), fits(2)));
    AdjustReport.Least least = best.least().orElseThrow();
    assertThat(best.all()).isTrue();
    assertThat(least.all()).isTrue();
    assertThat(least.ranges()).containsExactly(new AdjustReport.Range(A, 0, 20));

    // one that stands still is less than one that moves
    best.single(B, List.of(fits(), fits(0, 1, 2), fits(), fits(), fits()));
    assertThat(best.least().orElseThrow().ranges())
        .containsExactly(new AdjustReport.Range(B, -20, -20));

    // two are taken only where they take in more than one does
    Best two = new Best(List.of(false, false, false));
    two.single(A, List.of(fits(0), fits(), fits(), fits(), fits(1)));
    assertThat(two.least().orElseThrow().ranges())
        .containsExactly(new AdjustReport.Range(A, -40, 40));
    List<boolean[]> grid = new ArrayList<>();
    for (int k = 0; k < 9; k++) {
      grid.add(fits());
    }
    grid.set(4, fits(0, 2)); // a 0, b 0
    grid.set(5, fits(1)); // a 0, b 40
    two.pair(A, B, 2, grid);
    assertThat(two.least().orElseThrow().ranges())
        .containsExactly(new AdjustReport.Range(A, 0, 0), new AdjustReport.Range(B, 0, 40));

    Best none = new Best(List.of(true, false, false));
    none.single(A, List.of(fits(0), fits(0), fits(0), fits(0), fits(0)));
    assertThat(none.least()).isEmpty();
  }

  @Test
  void placesAreSaidFromAsDrawn() {
    Adjuster seat = Adjuster.about("seat", "", Adjuster.Way.SEAT_ALONG, 100, 4);
    assertThat(seat.where(25).in(Units.MM)).isEqualTo("25 mm farther forward than drawn");
    assertThat(seat.where(-25).in(Units.MM)).isEqualTo("25 mm farther back than drawn");
    assertThat(seat.where(0).in(Units.MM)).isEqualTo("where drawn");
    Adjuster up = Adjuster.about("gripsUp", "", Adjuster.Way.GRIPS_UP, 60, 4);
    assertThat(up.where(-15).in(Units.MM)).isEqualTo("15 mm lower than drawn");
    Adjuster back = Adjuster.about("back", "", Adjuster.Way.BACK, 8, 4);
    assertThat(back.where(4).in(Units.MM)).isEqualTo("4° farther back than drawn");
    Adjuster recline = Adjuster.between("recline", true, 10, 20, 14, 4);
    assertThat(recline.where(14).in(Units.MM)).isEqualTo("14°");
  }

  @Test
  void whomToTakeInIsTheSurveysPercentiles() {
    List<PercentilePerson> all = PercentilePerson.of(Population.soldiers(1, 0.5));
    assertThat(all)
        .extracting(PercentilePerson::words)
        .containsExactly(
            "5 % woman", "50 % woman", "95 % woman", "5 % man", "50 % man", "95 % man");
    // percentiles of the survey's own table; stature is close to normal in it
    assertThat(all.get(0).measures().statureMm()).isCloseTo(1525, within(8.0));
    assertThat(all.get(5).measures().statureMm()).isCloseTo(1869, within(8.0));
    assertThat(PercentilePerson.of(Population.soldiers(1, 0))).hasSize(3);
    List<MeasuredCrowd.Someone> men = new ArrayList<>();
    for (int k = 1; k <= 20; k++) {
      men.add(new MeasuredCrowd.Someone("no. " + k, Sex.MALE, 1600 + 10 * k, 80, Map.of()));
    }
    assertThat(new MeasuredCrowd(men).anchors())
        .extracting(a -> a.measures().statureMm())
        .containsExactly(1610.0, 1700.0, 1790.0);
    // their table is no survey: they are called by their names, and each of them once
    assertThat(new MeasuredCrowd(men).anchors())
        .extracting(PercentilePerson::words)
        .containsExactly("no. 1", "no. 10", "no. 19");
    assertThat(new MeasuredCrowd(men.subList(0, 1)).anchors()).hasSize(1);
    assertThat(new MeasuredCrowd(List.of()).anchors()).isEmpty();
  }
}
