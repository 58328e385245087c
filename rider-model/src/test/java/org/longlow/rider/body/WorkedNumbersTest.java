package org.longlow.rider.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.WeightShares;

/** Numbers worked out elsewhere from the same survey and tables, and textbook examples. */
class WorkedNumbersTest {

  private static Body mean(Sex sex) {
    return sex == Sex.MALE
        ? Body.of(Sex.MALE, 1756.21, 85.52, Gear.NONE)
        : Body.of(Sex.FEMALE, 1628.47, 67.76, Gear.NONE);
  }

  /**
   * Head and foot of the mean man and woman, mm, printed to 0.1: worked out person by person from
   * the survey's rows. The regressions pass through the means; their coefficients are rounded.
   */
  @ParameterizedTest
  @CsvSource({
    "MALE, 113.8, 131.2, 107.8, 76.6, 199.5, 200.9, 271.2, 63.0, 138.7",
    "FEMALE, 108.9, 126.5, 106.3, 60.6, 189.8, 182.1, 246.3, 73.5, 141.2"
  })
  void headFootAndHipOfMeanPeople(
      Sex sex,
      double eyeDown,
      double earDown,
      double earUp,
      double shoulderDown,
      double headLength,
      double ball,
      double toe,
      double trochanterUp,
      double hipAhead) {
    Body body = mean(sex);
    Body.Head head = body.head();
    assertThat(head.vertex().z() - head.eye().z()).isCloseTo(eyeDown, within(0.1));
    assertThat(head.vertex().z() - head.tragion().z()).isCloseTo(earDown, within(0.1));
    assertThat(head.tragion().z()).isCloseTo(earUp, within(0.1));
    // 90 mm ahead of C7 at a craniovertebral angle of 50 degrees
    assertThat(head.tragion().x()).isCloseTo(90, within(1.0));
    assertThat(body.hipToNeckMm() - body.hipToShoulderMm()).isCloseTo(shoulderDown, within(0.1));
    assertThat(2 * head.radiusMm()).isCloseTo(headLength, within(0.1));
    assertThat(body.foot().ballMm()).isCloseTo(ball, within(0.1));
    assertThat(body.foot().toeMm()).isCloseTo(toe, within(0.1));
    BodyMeasures m = body.measures();
    assertThat(m.get("d_trochanterionaboveseat")).isCloseTo(trochanterUp, within(0.1));
    // buttock-knee less thigh link + 15, less 55 from knee pivot to kneecap
    assertThat(m.get("buttockkneelength") - body.thighMm() - 55).isCloseTo(hipAhead, within(0.15));
  }

  /** Shoulder to elbow centre: 0.853 x 335.2 = 286 mm beside de Leva's 0.1618 x 1756 = 284. */
  @Test
  void jointCentresOfTheArmAgreeWithDeLeva() {
    double link = Body.ELBOW_JOINT_DOWN - Body.SHOULDER_JOINT_DOWN;
    assertThat(link).isCloseTo(0.853, within(1e-9));
    assertThat(link * mean(Sex.MALE).upperArmMm())
        .isCloseTo(286, within(0.5))
        .isCloseTo(281.7 / 1741 * 1756, within(2.0));
  }

  /** At one stature, who sits high has short legs: partial correlation, printed to 0.01. */
  @ParameterizedTest
  @CsvSource({"MALE, -0.64", "FEMALE, -0.73"})
  void trunkAndLegsTradeOff(Sex sex, double printed) {
    Anthropometry.Correlation block = Anthropometry.survey().correlation(sex);
    double[] sitting = block.matrix()[block.order().indexOf("sittingheight")];
    int legs = block.order().indexOf("trochanterionheight");
    double withStature = block.matrix()[legs][0];
    double partial =
        (sitting[legs] - sitting[0] * withStature)
            / Math.sqrt((1 - sitting[0] * sitting[0]) * (1 - withStature * withStature));
    assertThat(partial).isCloseTo(printed, within(0.006));
  }

  /** Sitting height over stature from the 5th to the 95th percentile, printed to 0.001. */
  @ParameterizedTest
  @CsvSource({"MALE, 0.500, 0.544", "FEMALE, 0.502, 0.548"})
  void sampledPeopleSitAsHighAsTheSurveys(Sex sex, double low, double high) {
    Population people = Population.soldiers(19, sex == Sex.FEMALE ? 1 : 0);
    int n = 4000;
    double[] share =
        IntStream.range(0, n)
            .mapToObj(people::person)
            .mapToDouble(p -> p.get("sittingheight") / p.statureMm())
            .sorted()
            .toArray();
    // three standard errors of such a percentile of 4000
    assertThat(share[n / 20]).isCloseTo(low, within(0.002));
    assertThat(share[n - n / 20]).isCloseTo(high, within(0.002));
  }

  /** Every mean, spread and correlation of the survey's block, from sampled people. */
  @ParameterizedTest
  @EnumSource(Sex.class)
  void sampledPeopleHaveTheSurveysMeansSpreadsAndCorrelations(Sex sex) {
    Anthropometry.Correlation block = Anthropometry.survey().correlation(sex);
    Population people = Population.soldiers(23, sex == Sex.FEMALE ? 1 : 0);
    int n = 4000;
    List<String> names = block.order();
    double[][] units = new double[names.size()][n];
    for (int i = 0; i < n; i++) {
      BodyMeasures person = people.person(i);
      for (int j = 0; j < names.size(); j++) {
        units[j][i] = person.get(names.get(j));
      }
    }
    for (int j = 0; j < names.size(); j++) {
      double[] column = units[j];
      double mean = Arrays.stream(column).average().orElseThrow();
      double length = Math.sqrt(Arrays.stream(column).map(v -> (v - mean) * (v - mean)).sum());
      double sd = block.sd()[j];
      // four standard errors; rejection trims the tails of spreads
      assertThat(mean)
          .as(names.get(j))
          .isCloseTo(block.mean()[j], within(4 * sd / Math.sqrt(n) + 0.1));
      assertThat(length / Math.sqrt(n - 1)).as(names.get(j)).isCloseTo(sd, within(0.06 * sd));
      units[j] = Arrays.stream(column).map(v -> (v - mean) / length).toArray();
      for (int k = 0; k < j; k++) {
        double printed = block.matrix()[j][k];
        double sampled = 0;
        for (int i = 0; i < n; i++) {
          sampled += units[j][i] * units[k][i];
        }
        assertThat(sampled)
            .as(names.get(j) + " with " + names.get(k))
            .isCloseTo(printed, within(4 * (1 - printed * printed) / Math.sqrt(n) + 0.02));
      }
    }
  }

  /**
   * Winter 2009, Table 4.1: head, arms and trunk are 0.678 of the body with their centre at 0.626.
   */
  @Test
  void theWorkedSharesAreWinters() {
    WeightShares w = WeightShares.WORKED;
    double kg = w.head() + w.trunk() + w.arms();
    assertThat(kg).isCloseTo(0.678, within(1e-9));
    assertThat(
            (w.head() * w.headHeight() + w.trunk() * w.trunkHeight() + w.arms() * w.armsHeight())
                / kg)
        .isCloseTo(0.626, within(1e-3));
    assertThat(w.legs()).isCloseTo(2 * 0.161, within(1e-9));
    // foot and shank about the knee: their centre at 0.606 of 0.061 each
    assertThat(w.feet()).isCloseTo(2 * 0.061 * 0.606, within(1e-9));
    assertThat(Spine.Part.THORAX.shareOfTrunk() * w.trunk()).isCloseTo(0.216, within(1e-9));
    assertThat(Spine.Part.LUMBAR.shareOfTrunk() * w.trunk()).isCloseTo(0.139, within(1e-9));
    assertThat(Spine.Part.PELVIS.shareOfTrunk() * w.trunk()).isCloseTo(0.142, within(1e-9));
  }

  /**
   * Winter 2009, chapter 4 (from memory): trochanter (72.1, 92.8) and condyle (86.4, 54.9) cm give
   * a thigh's centre, 0.433 from the hip, at (78.3, 76.4); ankle (84.9, 11.0) and metatarsal
   * (101.1, 1.3) a foot's, half-way, at (93.0, 6.15).
   */
  @Test
  void centresLieOnTheirSegmentsAsInTheTextbook() {
    PointMm thigh = new PointMm(721, 928).towards(new PointMm(864, 549), 0.433);
    assertThat(thigh.distance(new PointMm(783, 764))).isLessThan(0.8);
    PointMm foot = new PointMm(849, 110).towards(new PointMm(1011, 13), 0.5);
    assertThat(foot.distance(new PointMm(930, 61.5))).isLessThan(0.1);
  }
}
