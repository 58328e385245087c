package org.longlow.rider.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;

class BodyTest {

  /**
   * Worked skeleton, erect on a hard seat, survey means, men / women: figures printed to 1 mm. The
   * regressions pass through the means, so the average man and woman must give them.
   */
  @Test
  void theAveragePersonGivesTheWorkedSkeleton() {
    check(
        Body.of(Sex.MALE, 1756.21, 85.52, Gear.NONE),
        584,
        508,
        692,
        710,
        823,
        424,
        419,
        73,
        335,
        330);
    check(
        Body.of(Sex.FEMALE, 1628.47, 67.76, Gear.NONE),
        529,
        468,
        635,
        653,
        762,
        394,
        403,
        63,
        311,
        300);
  }

  private static void check(Body body, double... mm) {
    double neck = body.hipToNeckMm();
    double[] got = {
      neck,
      body.hipToShoulderMm(),
      neck + body.head().tragion().z(),
      neck + body.head().eye().z(),
      neck + body.head().vertex().z(),
      body.thighMm(),
      body.shankMm(),
      body.foot().ankle().z(),
      body.upperArmMm(),
      body.elbowToGripMm()
    };
    for (int i = 0; i < got.length; i++) {
      // Printed to whole millimetres; half a millimetre plus the rounding of the coefficients.
      assertThat(got[i]).as("item " + i).isCloseTo(mm[i], within(0.55));
    }
  }

  @Test
  void tallerPeopleHaveLongerLinks() {
    for (Sex sex : Sex.values()) {
      Body before = Body.of(sex, 1400, 70, Gear.NONE);
      for (double mm = 1450; mm <= 2100; mm += 50) {
        Body next = Body.of(sex, mm, 70, Gear.NONE);
        assertThat(next.thighMm()).isGreaterThan(before.thighMm());
        assertThat(next.shankMm()).isGreaterThan(before.shankMm());
        assertThat(next.hipToShoulderMm()).isGreaterThan(before.hipToShoulderMm());
        assertThat(next.upperArmMm()).isGreaterThan(before.upperArmMm());
        assertThat(next.elbowToGripMm()).isGreaterThan(before.elbowToGripMm());
        before = next;
      }
    }
  }

  @Test
  void segmentMassesAddUpToTheBody() {
    for (Sex sex : Sex.values()) {
      double sum = 0;
      for (Segment segment : Segment.values()) {
        sum += segment.massShare(sex) * (segment.paired() ? 2 : 1);
      }
      assertThat(sum).isCloseTo(1, within(1e-12));
    }
    assertThat(Segment.THIGH.massShare(Sex.MALE)).isCloseTo(0.1416, within(1e-9));
  }

  @Test
  void theSheetHoldsEverything() {
    Body.Sheet sheet = Body.of(Sex.FEMALE, 1650, 65, Gear.NONE).sheet();
    assertThat(sheet.measures()).hasSize(79).containsKey("d_elbowtogrip");
    assertThat(sheet.segmentMassesKg().get("thigh")).isCloseTo(65 * 0.1478 / 0.9999, within(1e-9));
    Body.Centre thigh = sheet.segmentCentres().get("thigh");
    assertThat(thigh.fraction()).isCloseTo(0.3612, within(1e-12));
    assertThat(thigh.mm()).isCloseTo(0.3612 * sheet.segmentLengthsMm().get("thigh"), within(1e-9));
    sheet
        .segmentCentres()
        .forEach((name, centre) -> assertThat(centre.fraction()).as(name).isBetween(0.2, 0.7));
  }

  @Test
  void bootsRaiseTheAnkleAndTiltTheFoot() {
    Body bare = Body.of(Sex.MALE, 1756, 85, Gear.NONE);
    Body shod = Body.of(Sex.MALE, 1756, 85, Gear.RIDING);
    assertThat(shod.foot().ankle().z() - bare.foot().ankle().z()).isBetween(20.0, 31.0);
    assertThat(shod.head().radiusMm() - bare.head().radiusMm()).isEqualTo(47);
    assertThat(bare.foot().ballMm())
        .isCloseTo(bare.measures().get("balloffootlength"), within(1e-9));
  }

  @Test
  void aPopulationRepeatsWhateverTheOrder() {
    Population people = Population.soldiers(42, 0.4);
    List<Double> forward =
        LongStream.range(0, 200).mapToObj(i -> people.person(i).get("d_thighlink")).toList();
    List<Double> parallel =
        LongStream.range(0, 200)
            .parallel()
            .mapToObj(i -> people.person(i).get("d_thighlink"))
            .toList();
    assertThat(parallel).isEqualTo(forward);
    assertThat(Population.soldiers(43, 0.4).person(0).statureMm())
        .isNotEqualTo(people.person(0).statureMm());
  }

  @Test
  void aPopulationHasTheSurveysMeansAndSpreads() {
    Population men = Population.soldiers(7, 0);
    String[] names = {
      "stature", "weightkg", "sittingheight", "d_thighlink", "d_elbowtogrip", "thighclearance"
    };
    int n = 8000;
    var people = LongStream.range(0, n).mapToObj(men::person).toList();
    for (String name : names) {
      MeasureStats stats = Anthropometry.survey().measures(Sex.MALE).get(name);
      double[] values = people.stream().mapToDouble(p -> p.get(name)).toArray();
      double mean = java.util.Arrays.stream(values).average().orElseThrow();
      double variance =
          java.util.Arrays.stream(values).map(v -> (v - mean) * (v - mean)).sum() / (n - 1);
      // Four standard errors of a mean of 8000; spreads within 6 % (rejection trims the tails).
      assertThat(mean)
          .as(name)
          .isCloseTo(stats.mean(), within(4 * stats.sd() / Math.sqrt(n) + 0.1));
      assertThat(Math.sqrt(variance)).as(name).isCloseTo(stats.sd(), within(0.06 * stats.sd()));
    }
  }

  @Test
  void sampledBodiesAreAlwaysBuildable() {
    Population people = Population.usAdults(new SplittableRandom(5).nextLong(), 0.5);
    for (int i = 0; i < 3000; i++) {
      Body body = Body.of(people.person(i), Gear.RIDING);
      assertThat(body.thighMm()).isBetween(250.0, 600.0);
    }
  }
}
