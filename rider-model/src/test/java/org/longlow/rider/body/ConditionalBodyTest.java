package org.longlow.rider.body;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.QRDecomposition;
import org.hipparchus.linear.RealMatrix;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A person with own measurements against plain least squares on rows that have exactly the survey's
 * means and covariances.
 */
class ConditionalBodyTest {

  private static final int ROWS = 300;

  /** Rows whose sample mean and covariance are those of the survey's block. */
  private static RealMatrix rows(Sex sex) {
    Anthropometry.Correlation block = Anthropometry.survey().correlation(sex);
    int n = block.order().size();
    SplittableRandom random = new SplittableRandom(41);
    RealMatrix raw = new Array2DRowRealMatrix(ROWS, n);
    for (int j = 0; j < n; j++) {
      double sum = 0;
      for (int i = 0; i < ROWS; i++) {
        raw.setEntry(i, j, random.nextDouble(-1, 1));
        sum += raw.getEntry(i, j);
      }
      for (int i = 0; i < ROWS; i++) {
        raw.addToEntry(i, j, -sum / ROWS);
      }
    }
    RealMatrix own = raw.transpose().multiply(raw).scalarMultiply(1.0 / (ROWS - 1));
    RealMatrix wanted = new Array2DRowRealMatrix(n, n);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        wanted.setEntry(i, j, block.matrix()[i][j] * block.sd()[i] * block.sd()[j]);
      }
    }
    RealMatrix turn =
        MatrixUtils.inverse(new CholeskyDecomposition(own, 1e-9, 1e-12).getLT())
            .multiply(new CholeskyDecomposition(wanted, 1e-6, 1e-12).getLT());
    RealMatrix rows = raw.multiply(turn);
    for (int i = 0; i < ROWS; i++) {
      for (int j = 0; j < n; j++) {
        rows.addToEntry(i, j, block.mean()[j]);
      }
    }
    return rows;
  }

  private static double[] column(Sex sex, RealMatrix rows, String name) {
    List<String> order = Anthropometry.survey().correlation(sex).order();
    if (order.contains(name)) {
      return rows.getColumn(order.indexOf(name));
    }
    double[] out = new double[ROWS];
    for (int i = 0; i < ROWS; i++) {
      Map<String, Double> row = new LinkedHashMap<>();
      for (int j = 0; j < order.size(); j++) {
        row.put(order.get(j), rows.getEntry(i, j));
      }
      out[i] = Derived.rules().get(name).formula().applyAsDouble(row);
    }
    return out;
  }

  /** Least squares of {@code wanted} on stature, mass and the measured, at this person. */
  private static double regressed(
      Sex sex, RealMatrix rows, String wanted, double stature, double kg, Map<String, Double> own) {
    Map<String, Double> by = new LinkedHashMap<>();
    by.put("stature", stature);
    by.put("weightkg", kg);
    by.putAll(own);
    RealMatrix design = new Array2DRowRealMatrix(ROWS, by.size() + 1);
    double[] at = new double[by.size() + 1];
    at[0] = 1;
    int j = 1;
    for (int i = 0; i < ROWS; i++) {
      design.setEntry(i, 0, 1);
    }
    for (Map.Entry<String, Double> entry : by.entrySet()) {
      design.setColumn(j, column(sex, rows, entry.getKey()));
      at[j++] = entry.getValue();
    }
    return new QRDecomposition(design)
        .getSolver()
        .solve(new ArrayRealVector(column(sex, rows, wanted)))
        .dotProduct(new ArrayRealVector(at));
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void theRestFollowsAsLeastSquaresOnTheSurveysRowsSays(Sex sex) {
    RealMatrix rows = rows(sex);
    List<String> wanted =
        List.of(
            "eyeheightsitting",
            "trochanterionheight",
            "d_thighlink",
            "d_shanklink",
            "d_cervicaleheightsitting",
            "acromionradialelength");
    List<String> measurable =
        List.of(
            "sittingheight",
            "buttockkneelength",
            "kneeheightsitting",
            "radialestylionlength",
            "d_acromionbelowcervicale");
    SplittableRandom random = new SplittableRandom(7);
    for (int n = 0; n < 12; n++) {
      double stature = random.nextDouble(1560, 1800);
      double kg = random.nextDouble(55, 95);
      BodyMeasures plain = BodyMeasures.of(sex, stature, kg);
      Map<String, Double> own = new LinkedHashMap<>();
      for (String name : measurable) {
        if (random.nextInt(2) == 0) {
          own.put(name, plain.get(name) + random.nextDouble(-25, 25));
        }
      }
      BodyMeasures body = BodyMeasures.of(sex, stature, kg, own);
      for (String name : wanted) {
        // Printed means, deviations and coefficients are rounded; correlations to four digits.
        assertThat(body.get(name))
            .as("%s given %s", name, own)
            .isCloseTo(regressed(sex, rows, name, stature, kg, own), within(0.6));
      }
      own.forEach((name, value) -> assertThat(body.get(name)).isEqualTo(value));
    }
  }

  @Test
  void aShortTrunkBringsTheEyeDown() {
    Map<String, Double> own = Map.of("sittingheight", 866.0);
    BodyMeasures plain = BodyMeasures.of(Sex.MALE, 1748, 82);
    BodyMeasures body = BodyMeasures.of(Sex.MALE, 1748, 82, own);
    double lower = plain.get("eyeheightsitting") - body.get("eyeheightsitting");
    assertThat(lower).isBetween(41.0, 48.0);
    Body man = Body.of(Sex.MALE, 1748, 82, own, Gear.NONE);
    Body usual = Body.of(Sex.MALE, 1748, 82, Gear.NONE);
    assertThat(eyeAboveSeat(usual) - eyeAboveSeat(man)).isBetween(38.0, 52.0);
    assertThat(body.get("d_thighlink")).isGreaterThan(plain.get("d_thighlink"));
  }

  private static double eyeAboveSeat(Body body) {
    return Body.HIP_ABOVE_SEAT_MM + body.hipToNeckMm() + body.head().eye().z();
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void whatIsExpectedAnywayChangesNothingAndOrderDoesNotMatter(Sex sex) {
    SplittableRandom random = new SplittableRandom(11);
    List<String> names = new ArrayList<>(Anthropometry.survey().measures(sex).keySet());
    names.removeAll(List.of("stature", "weightkg"));
    for (int n = 0; n < 200; n++) {
      double stature = random.nextDouble(1550, 1800);
      double kg = random.nextDouble(55, 95);
      BodyMeasures plain = BodyMeasures.of(sex, stature, kg);
      Map<String, Double> usual = new LinkedHashMap<>();
      Map<String, Double> own = new LinkedHashMap<>();
      List<String> picked = new ArrayList<>();
      for (int i = 0; i < 5; i++) {
        String name = names.get(random.nextInt(names.size()));
        if (plain.get(name) < 100) {
          continue; // a few millimetres are no small stray of these
        }
        usual.put(name, plain.get(name));
        own.put(name, plain.get(name) + random.nextDouble(-8, 8));
        picked.add(0, name);
      }
      BodyMeasures same = BodyMeasures.of(sex, stature, kg, usual);
      plain
          .values()
          .forEach(
              (name, value) ->
                  // derived regressions are rounded by themselves
                  assertThat(same.get(name)).as(name).isCloseTo(value, within(0.03)));
      Map<String, Double> turned = new LinkedHashMap<>();
      picked.forEach(name -> turned.put(name, own.get(name)));
      assertThat(BodyMeasures.of(sex, stature, kg, turned).values())
          .isEqualTo(BodyMeasures.of(sex, stature, kg, own).values());
    }
  }

  @Test
  void anArmMeasuredToTheGripLengthensItsLinks() {
    BodyMeasures plain = BodyMeasures.of(Sex.FEMALE, 1640, 66);
    double reach = plain.get("d_shouldertogrip") + 30;
    BodyMeasures body = BodyMeasures.of(Sex.FEMALE, 1640, 66, Map.of("d_shouldertogrip", reach));
    assertThat(body.get("acromionradialelength"))
        .isGreaterThan(plain.get("acromionradialelength") + 5);
    assertThat(body.get("acromionradialelength") + body.get("d_elbowtogrip"))
        .isCloseTo(reach, within(0.03));
  }

  @Test
  void measuresThatDoNotGoTogetherAreQuestionedThoughEachAloneWouldDo() {
    BodyMeasures plain = BodyMeasures.of(Sex.MALE, 1750, 80);
    double sitting = plain.get("sittingheight") + 45;
    double eye = plain.get("eyeheightsitting") - 45;
    assertThat(BodyMeasures.of(Sex.MALE, 1750, 80, Map.of("sittingheight", sitting)).notes())
        .isEmpty();
    assertThat(BodyMeasures.of(Sex.MALE, 1750, 80, Map.of("eyeheightsitting", eye)).notes())
        .isEmpty();
    assertThat(
            BodyMeasures.of(
                    Sex.MALE, 1750, 80, Map.of("sittingheight", sitting, "eyeheightsitting", eye))
                .notes())
        .anyMatch(note -> note.contains("go"));
    assertThat(BodyMeasures.of(Sex.MALE, 1950, 48).notes())
        .anyMatch(note -> note.contains("together"));
    assertThat(BodyMeasures.of(Sex.MALE, 1700, 110).notes()).isEmpty();
  }

  @ParameterizedTest
  @EnumSource(Sex.class)
  void theDistanceIsMahalanobis(Sex sex) {
    Anthropometry.Correlation block = Anthropometry.survey().correlation(sex);
    List<String> given = List.of("sittingheight", "trochanterionheight", "eyeheightsitting");
    int n = given.size() + 2;
    RealMatrix joint = new Array2DRowRealMatrix(n, n);
    List<String> all = new ArrayList<>(List.of("stature", "weightkg"));
    all.addAll(given);
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        int a = block.order().indexOf(all.get(i));
        int b = block.order().indexOf(all.get(j));
        joint.setEntry(i, j, block.matrix()[a][b] * block.sd()[a] * block.sd()[b]);
      }
    }
    // residuals with stature and mass at their means: the joint distance, those two being zero
    double[] stray = {0, 0, 12, -9, 20};
    double square =
        new ArrayRealVector(stray)
            .dotProduct(new LUDecomposition(joint).getSolver().solve(new ArrayRealVector(stray)));
    Residuals.Oddity oddity =
        Residuals.of(sex)
            .oddity(
                Map.of(
                    "sittingheight", 12.0, "trochanterionheight", -9.0, "eyeheightsitting", 20.0));
    assertThat(oddity.square()).isCloseTo(square, within(1e-9 * square));
    assertThat(oddity.freedoms()).isEqualTo(3);
  }
}
