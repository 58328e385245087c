package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What is met on the way to full lock, on a machine with something put in the way. */
class LockFindingsTest {

  /** A box behind the front wheel, on one side of it: from and to across, left positive, mm. */
  private static TestMachine boxed(double from, double to, String lockDeg) {
    return TestMachine.runabout()
        .lacking("apron", "frontGuard")
        .with("demands", "lock", "'" + lockDeg + " deg'")
        .pin("boxLow", 1390, 230)
        .with(
            "parts",
            "beside",
            String.format(
                Locale.ROOT,
                "{'kind': 'box', 'frame': 'boxLow', 'outline': {'points': [['0 mm', '0 mm'],"
                    + " ['60 mm', '0 mm'], ['60 mm', '50 mm'], ['0 mm', '50 mm']]},"
                    + " 'left': '%s mm', 'right': '%s mm', 'mass': '1 kg',"
                    + " 'touches': ['floorRail', 'boards', 'rider']}",
                to,
                -from));
  }

  private static Finding one(Study study, String id) {
    List<Finding> found = study.findings().stream().filter(f -> f.id().equals(id)).toList();
    assertThat(found)
        .as(id + " of " + study.findings().stream().map(Finding::id).toList())
        .hasSize(1);
    return found.get(0);
  }

  /** The first turn, deg, at which a round tyre is in the box: a look at points of it, by hand. */
  private static double touchDeg(Study study, double from, double to) {
    Tyre tyre = new Tyre(258.8, 90, 45, false);
    for (int k = 0; k <= 2000; k++) {
      double rad = Math.toRadians(k / 50.0) * -Math.signum(from);
      for (Standing s : study.standings()) {
        boolean asked = s.kind() == Stance.Kind.LADEN || s.kind() == Stance.Kind.FULL_BUMP;
        if (asked && in(s.places(), tyre, from, to, rad)) {
          return Math.toDegrees(Math.abs(rad));
        }
      }
    }
    return Double.NaN;
  }

  private static boolean in(Places places, Tyre tyre, double from, double to, double rad) {
    PointMm bottom = places.pin("headBottom");
    PointMm along = places.pin("headTop").minus(bottom);
    PointMm up = along.times(1 / along.length());
    PointMm axle = places.pin("frontAxle");
    PointMm low = places.pin("boxLow");
    for (double x = 0; x <= 60; x += 10) {
      for (double z = 0; z <= 50; z += 5) {
        for (double y : new double[] {from, to}) {
          // the point turned back, about the axis, into the wheel as it is straight ahead
          PointMm p = low.plus(new PointMm(x, z)).minus(bottom);
          double ahead = p.x() * up.z() - p.z() * up.x();
          double on = p.dot(up);
          double back = ahead * Math.cos(rad) + y * Math.sin(rad);
          double side = -ahead * Math.sin(rad) + y * Math.cos(rad);
          PointMm there = bottom.plus(new PointMm(up.z(), -up.x()).times(back)).plus(up.times(on));
          double out = there.distance(axle) - (tyre.freeRadiusMm() - 45);
          if (Math.hypot(Math.max(0, out), side) < 45) {
            return true;
          }
        }
      }
    }
    return false;
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, -1})
  void aBoxBesideTheWheelIsMetOnItsSideWhereHandSums(double side) {
    double from = side * 62;
    double to = side * 92;
    Study study = boxed(Math.min(from, to), Math.max(from, to), "40").study();
    double touch = touchDeg(study, from, to);
    assertThat(touch).isBetween(2.0, 30.0);
    // what is behind the axis swings to the other side
    String here = side > 0 ? "lock.right" : "lock.left";
    String there = side > 0 ? "lock.left" : "lock.right";
    Finding pair = one(study, "lock.frontWheel.beside");
    assertThat(pair.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(pair.value()).isNegative();
    assertThat(pair.text()).contains(side > 0 ? "to the right" : "to the left").contains("meet");
    assertThat(pair.where()).isPresent();
    Finding turned = one(study, here);
    assertThat(turned.verdict()).isEqualTo(Verdict.FAIL);
    // before the hand sums' round crown, by what the corners round it are larger, and no later
    assertThat(turned.value()).isLessThanOrEqualTo(touch + 0.03).isGreaterThan(touch - 0.5);
    assertThat(one(study, there).value()).isGreaterThan(turned.value() + 2);
    assertThat(one(study, there).text()).doesNotContain("beside meet");
  }

  /** A box beside the wheel that keeps its gap at little lock: how near, and turned how far. */
  @Test
  void whatComesNearestIsToldWithTheTurnAndTheStance() {
    Study study = boxed(72, 92, "1").study();
    assertThat(study.findings())
        .noneMatch(f -> f.id().startsWith("lock.") && f.verdict() == Verdict.FAIL);
    String told = one(study, "lock.right").text();
    assertThat(told)
        .startsWith("To the right the steering turns the 1° asked before anything meets.")
        .containsPattern(
            "Of what keeps its gap to both sides frontWheel and beside come nearest, [\\d.]+ mm apart turned 1°"
                + " to the right, (laden|full bump)");
    double said = Double.parseDouble(told.replaceAll(".*come nearest, ([\\d.]+) mm.*", "$1"));
    double least = Double.POSITIVE_INFINITY;
    for (Standing s : study.standings()) {
      if (s.kind() == Stance.Kind.LADEN || s.kind() == Stance.Kind.FULL_BUMP) {
        least = Math.min(least, apart(s.places(), 72, Math.toRadians(-1)));
      }
    }
    // corners go round the crown, and what is found is 0.1 mm on the near side
    assertThat(said).isBetween(least - 1.0, least + 0.05);
  }

  /** How far a round tyre is from points of the box's face, turned back into the wheel. */
  private static double apart(Places places, double y, double rad) {
    PointMm bottom = places.pin("headBottom");
    PointMm along = places.pin("headTop").minus(bottom);
    PointMm up = along.times(1 / along.length());
    PointMm axle = places.pin("frontAxle");
    double least = Double.POSITIVE_INFINITY;
    for (double x = 0; x <= 60; x += 2) {
      for (double z = 0; z <= 50; z += 2) {
        PointMm p = places.pin("boxLow").plus(new PointMm(x, z)).minus(bottom);
        double ahead = p.x() * up.z() - p.z() * up.x();
        double back = ahead * Math.cos(rad) + y * Math.sin(rad);
        double side = -ahead * Math.sin(rad) + y * Math.cos(rad);
        PointMm there =
            bottom.plus(new PointMm(up.z(), -up.x()).times(back)).plus(up.times(p.dot(up)));
        double out = Math.max(0, there.distance(axle) - (258.8 - 45));
        least = Math.min(least, Math.hypot(out, side) - 45);
      }
    }
    return least;
  }

  @Test
  void lessLockThanUpToTheBoxPassesAndMoreFails() {
    Study wide = boxed(-92, -62, "40").study();
    double touch = one(wide, "lock.left").value();
    Study less = boxed(-92, -62, String.valueOf(touch - 0.3)).study();
    assertThat(one(less, "lock.left").verdict()).isEqualTo(Verdict.PASS);
    assertThat(one(less, "lock.left").value()).isCloseTo(touch - 0.3, within(1e-9));
    // a tyre wants its gap before it touches
    assertThat(one(less, "lock.frontWheel.beside").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(one(less, "lock.frontWheel.beside").value()).isBetween(0.0, 15.0);
    Study more = boxed(-92, -62, String.valueOf(touch + 0.3)).study();
    assertThat(one(more, "lock.left").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(boxed(-92, -62, "0.5").study().findings())
        .noneMatch(f -> f.id().startsWith("lock.") && f.verdict() == Verdict.FAIL);
  }

  /** What lies on the bars and is said to touch the rider, or is worked by hand, spares thighs. */
  @ParameterizedTest
  @ValueSource(
      strings = {"'kind': 'box', 'touches': ['rider']", "'kind': 'lever'", "'kind': 'box'"})
  void whatSteersSparesLimbsThatItDoesNotTouchStraightAhead(String kind) {
    TestMachine machine =
        TestMachine.runabout()
            .lacking("apron")
            .pin("trayLow", 820, 690)
            .with(
                "parts",
                "tray",
                "{"
                    + kind
                    + ", 'frame': 'trayLow', 'outline': {'points': [['0 mm', '0 mm'], ['60 mm', '0"
                    + " mm'], ['60 mm', '80 mm'], ['0 mm', '80 mm']]}, 'left': '50 mm', 'right':"
                    + " '50 mm', 'mass': '1 kg', 'steered': true}");
    assertThat(machine.study().findings())
        .filteredOn(f -> f.id().startsWith("lock.tray."))
        .isNotEmpty()
        .allMatch(f -> f.verdict() == Verdict.FAIL)
        .allMatch(f -> f.who().isPresent() && f.text().contains("thigh"));
  }

  /**
   * Nothing is looked at beyond 85 degrees, and what is said must not take that for what is asked.
   */
  @Test
  void whatIsLookedAtIsNotSaidToBeAsked() {
    assertThat(one(boxed(-92, -62, "90").study(), "lock.frontWheel.beside").text())
        .contains("to the 85° looked at")
        .doesNotContain("85° of lock asked");
    assertThat(one(boxed(-92, -62, "80").study(), "lock.frontWheel.beside").text())
        .contains("to the 80° of lock asked");
  }

  @Test
  void withNothingThatSteersLockIsNotKnown() {
    Study study = TestMachine.runabout().lacking("front").study();
    Finding finding = one(study, "lock.steering");
    assertThat(finding.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(study.findings()).noneMatch(f -> f.id().equals("lock.left"));
  }

  /** Bars on a post turn about that; with the post in the place of the head it is all the same. */
  @Test
  void aPostInThePlaceOfTheHeadChangesNothing() {
    Study plain = TestMachine.asFiled("runabout");
    Study post =
        TestMachine.runabout()
            .part("front", "postTop", "'headTop'")
            .part("front", "postBottom", "'headBottom'")
            .study();
    for (String id : List.of("lock.bars.apron", "lock.left", "lock.right")) {
      assertThat(one(post, id).value()).isCloseTo(one(plain, id).value(), within(0.3));
    }
  }
}
