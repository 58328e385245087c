package org.longlow.sketcher.fuzz;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.app.FigureAnswers;

/** Spoilt inputs of every figure kind: an answer of finite numbers, or faults of one line each. */
class FigureFuzzTest {

  private static final int CASES = Integer.getInteger("longlow.fuzz", 500);

  private static final JsonMapper MAPPER = new JsonMapper();

  private static final Map<String, String> INPUTS = new LinkedHashMap<>();

  static {
    INPUTS.put("tyre", "{'size':'120/70 R17'}");
    INPUTS.put("trail", "{'radiusMm':299.9,'rakeDeg':27,'offsetMm':35}");
    INPUTS.put(
        "lean",
        "{'wheelbaseMm':1500,'front':{'radiusMm':299.9,'sectionRadiusMm':60},"
            + "'rear':{'radiusMm':314.9,'sectionRadiusMm':90,'centreHeightMm':310},"
            + "'point':{'xMm':700,'yMm':300,'zMm':250},'rollDeg':20}");
    INPUTS.put("turn", "{'speedKmh':60,'radiusM':40,'cgHeightMm':600,'sectionRadiusMm':75}");
    INPUTS.put(
        "axle-loads",
        "{'wheelbaseMm':1500,'masses':[{'massKg':80,'xMm':560,'zMm':700},"
            + "{'massKg':75,'xMm':640,'zMm':390}]}");
    INPUTS.put(
        "breakover",
        "{'wheelbaseMm':1500,'front':{'radiusMm':299.9},'rear':{'radiusMm':314.9},"
            + "'point':{'xMm':700,'zMm':140}}");
    INPUTS.put(
        "side-wind",
        "{'rakeDeg':27,'wheelbaseMm':1500,'groundTrailMm':113.5,"
            + "'point':{'xMm':1650,'zMm':700},'forceN':60}");
    INPUTS.put("chain", "{'teeth':[16,42],'pitchMm':15.875,'centreMm':600}");
    INPUTS.put(
        "foam",
        "{'layers':[{'thicknessMm':30,'densityKgM3':45,'ifd25N':170,'supportFactor':2.5},"
            + "{'thicknessMm':20,'densityKgM3':100,'closedCell':true,'wallStressKPa':60,"
            + "'polymerDensityKgM3':910}],'pressureKPa':6.2}");
    INPUTS.put(
        "foam-test",
        "{'densityKgM3':45,'thicknessMm':50,'presses':[{'depthMm':12.5,'loadKg':15},"
            + "{'depthMm':22,'loadKg':21},{'depthMm':32,'loadKg':37}]}");
    INPUTS.put(
        "seat-load",
        "{'massKg':80,'backDeg':40,'panDeg':15,'backCentreShare':0.3,'headRest':true,'handsShare':0.05}");
    INPUTS.put(
        "cope",
        "{'branchRadiusMm':14,'branchInnerRadiusMm':12,'mainRadiusMm':17,'angleDeg':60,"
            + "'offsetMm':2,'stationsDeg':[0,45,90]}");
    INPUTS.put(
        "body", "{'sex':'female','statureMm':1640,'massKg':62,'measured':{'sittingheight':860}}");
    INPUTS.put(
        "stability",
        "{'w':1.02,'c':0.08,'lambda':0.3141592653589793,'g':9.81,'r_R':0.3,'m_R':2,'I_Rxx':0.0603,"
            + "'I_Ryy':0.12,'x_B':0.3,'z_B':-0.9,'m_B':85,'I_Bxx':9.2,'I_Bxz':2.4,'I_Bzz':2.8,'x_H':0.9,"
            + "'z_H':-0.7,'m_H':4,'I_Hxx':0.05892,'I_Hxz':-0.00756,'I_Hzz':0.00708,'r_F':0.35,'m_F':3,"
            + "'I_Fxx':0.1405,'I_Fyy':0.28,'speedsMs':[0,5]}");
  }

  @Test
  void everyKindHasAnInputHere() {
    assertThat(INPUTS.keySet()).containsExactlyInAnyOrderElementsOf(FigureAnswers.kinds());
    INPUTS.forEach(
        (kind, json) ->
            assertThat(FigureAnswers.answer(kind, json.replace('\'', '"')).faults())
                .as(kind)
                .isEmpty());
  }

  @Test
  void everySpoiltInputIsAnswered() throws IOException {
    List<String> escaped = new ArrayList<>();
    int answered = 0;
    int refused = 0;
    for (Map.Entry<String, String> input : INPUTS.entrySet()) {
      JsonNode root = MAPPER.readTree(input.getValue().replace('\'', '"'));
      for (long seed = 0; seed < CASES; seed++) {
        String json = new Mutations(seed).spoilt(root).toString();
        try {
          FigureAnswers.Answer answer = FigureAnswers.answer(input.getKey(), json);
          assertThat(answer.json().isEmpty()).isEqualTo(!answer.faults().isEmpty());
          assertThat(answer.json()).doesNotContain("NaN", "Infinity");
          for (String fault : answer.faults()) {
            assertThat(fault.chars().filter(Character::isISOControl)).as(fault).isEmpty();
          }
          answered += answer.faults().isEmpty() ? 1 : 0;
          refused += answer.faults().isEmpty() ? 0 : 1;
        } catch (Exception | StackOverflowError | AssertionError e) {
          escaped.add(input.getKey() + " " + json + ": " + e);
        }
      }
    }
    assertThat(escaped).isEmpty();
    assertThat(answered).isGreaterThan(CASES);
    assertThat(refused).isGreaterThan(CASES);
  }
}
