package org.longlow.constraints.check.person;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.GapRules;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;

/** Findings about people: odd bodies, worn foam, sources, and no two that read the same. */
class PeopleFindingsTest {

  private static final String MARA =
      "\"sex\": \"female\", \"stature\": \"1600 mm\", \"mass\": \"58 kg\"";

  private static String trestle() throws Exception {
    return Files.readString(
        Path.of(
            PeopleFindingsTest.class
                .getResource("/org/longlow/constraints/suit/trestle.json")
                .toURI()));
  }

  private static List<Finding> findings(String text) {
    return Study.of(((ReadResult.Read) LayoutReader.read(text, null)).layout()).findings();
  }

  private static List<Finding> about(List<Finding> findings, String person) {
    return findings.stream()
        .filter(f -> f.who().filter(w -> w.person().equals(person)).isPresent())
        .filter(f -> !f.id().startsWith("gap."))
        .toList();
  }

  private static boolean rides(Condition condition, String person) {
    return condition.aboard().stream().anyMatch(who -> who.person().equals(person));
  }

  private static Finding byId(List<Finding> findings, String id) {
    return findings.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  @Test
  void nothingAboutABodyOutsideTheSurveyPasses() throws Exception {
    String text = trestle();
    List<Finding> usual = findings(text);
    assertThat(usual).noneMatch(f -> f.id().startsWith("body."));
    assertThat(about(usual, "Mara")).anyMatch(f -> f.verdict() == Verdict.PASS);
    List<Finding> odd =
        findings(text.replace(MARA, MARA.replace("1600 mm", "1380 mm").replace("58 kg", "45 kg")));
    assertThat(byId(odd, "body.Mara").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(byId(odd, "body.Mara").text()).contains("outside the survey");
    assertThat(about(odd, "Mara")).isNotEmpty().noneMatch(f -> f.verdict() == Verdict.PASS);
    assertThat(about(odd, "Mara"))
        .filteredOn(f -> !f.id().startsWith("body."))
        .allMatch(f -> f.text().contains("extrapolation"));
    assertThat(about(odd, "Tor")).anyMatch(f -> f.verdict() == Verdict.PASS);
    // nor does anything about the machine with them on it
    List<Finding> ridden =
        odd.stream().filter(f -> f.stance().filter(c -> rides(c, "Mara")).isPresent()).toList();
    assertThat(ridden).anyMatch(f -> f.who().isEmpty()).noneMatch(f -> f.verdict() == Verdict.PASS);
  }

  @Test
  void aHeadRestIsWantedFromThirtyDegreesOfRecline() throws Exception {
    // no head rest; the torso leans as the back's board, which is fixed, and the foam let it
    double highest = 0;
    double lowest = 90;
    for (String rake : List.of("24 deg", "27 deg", "29 deg", "31 deg", "34 deg", "45 deg")) {
      Study study =
          Study.of(
              ((ReadResult.Read)
                      LayoutReader.read(
                          trestle().replace("\"is\": \"30 deg\"", "\"is\": \"" + rake + "\""),
                          null))
                  .layout());
      double leansDeg = Math.toDegrees(study.sittings().get(0).seated().orElseThrow().reclineRad());
      List<Finding> head =
          study.findings().stream().filter(f -> f.id().equals("head.Mara")).toList();
      if (leansDeg > 30) {
        lowest = Math.min(lowest, leansDeg);
        assertThat(head)
            .singleElement()
            .satisfies(f -> assertThat(f.verdict()).isEqualTo(Verdict.CAUTION));
        assertThat(head.get(0).text()).contains("from about 30°");
      } else {
        highest = Math.max(highest, leansDeg);
        assertThat(head).isEmpty();
      }
    }
    assertThat(highest).isGreaterThan(26);
    assertThat(lowest).isLessThan(34);
  }

  @Test
  void measuresThatDoNotGoTogetherNeedCare() throws Exception {
    List<Finding> odd =
        findings(
            trestle()
                .replace(
                    MARA,
                    MARA
                        + ", \"measured\": {\"sittingheight\": \"890 mm\","
                        + " \"eyeheightsitting\": \"690 mm\"}"));
    assertThat(byId(odd, "body.Mara").text()).contains("together");
  }

  @Test
  void foamThatHoldsOnlyWhileItIsNewNeedsCare() throws Exception {
    Set<String> seen = new HashSet<>();
    for (int firmer = 60; firmer <= 400; firmer += 10) {
      String text =
          trestle()
              .replace("\"ifd25\": \"245 N\"", "\"ifd25\": \"" + firmer + " N\"")
              .replace("\"ifd25\": \"320 N\"", "\"ifd25\": \"" + firmer + " N\"");
      Finding pan = byId(findings(text), "sink.Tor.pan");
      String how =
          pan.text().contains("bottoms: so little") && pan.verdict() == Verdict.FAIL
              ? "fails"
              : pan.text().contains("while the foam is new") ? "worn" : "other";
      if (pan.text().contains("also when the foam is worn")) {
        how = "sound";
      }
      seen.add(how);
      switch (how) {
        case "fails" -> assertThat(pan.verdict()).isEqualTo(Verdict.FAIL);
        case "worn" -> {
          assertThat(pan.verdict()).isEqualTo(Verdict.CAUTION);
          assertThat(pan.text()).contains("Worn foam, 15 % softer, has a design sink of");
        }
        case "sound" -> assertThat(pan.verdict()).isEqualTo(Verdict.PASS);
        default -> assertThat(pan.verdict()).isEqualTo(Verdict.CAUTION);
      }
    }
    assertThat(seen).contains("fails", "worn", "sound");
  }

  @Test
  void sourcesQuotedFromMemorySaySo() throws Exception {
    for (Finding f : findings(trestle())) {
      if (f.id().startsWith("posture.")) {
        assertThat(f.source()).containsAnyOf("from memory", "Youdas", "no published source");
      }
      if (f.id().startsWith("sink.")) {
        assertThat(f.source()).contains("from memory");
      }
    }
  }

  @Test
  void noTwoFindingsReadTheSame() throws Exception {
    String text = trestle();
    // Tor's dotted name reads like a passenger seat of somebody called A
    text = text.replace("\"Tor\"", "\"A.rider\"").replace("\"Mara\"", "\"A\"");
    List<Finding> findings = findings(text);
    Map<String, Finding> byWords = new HashMap<>();
    Set<String> ids = new HashSet<>();
    for (Finding f : findings) {
      assertThat(ids.add(f.id())).as(f.id()).isTrue();
      Finding before = byWords.put(f.text(), f);
      assertThat(before).as("%s", f).isNull();
    }
  }

  /** Returns trestle without some of its parts, or its crew. */
  private static List<Finding> without(String group, String... names) throws Exception {
    ObjectNode root = (ObjectNode) new ObjectMapper().readTree(trestle());
    for (String name : names) {
      assertThat(((ObjectNode) root.get(group)).remove(name)).as(name).isNotNull();
    }
    root.putObject("limits");
    return findings(root.toString());
  }

  @Test
  void whoHasNoGripsReachesNone() throws Exception {
    List<Finding> findings = without("parts", "grips");
    for (String who : List.of("Mara", "Tor")) {
      Finding hands = byId(findings, "reach." + who + ".hands");
      assertThat(hands.verdict()).isEqualTo(Verdict.FAIL);
      assertThat(hands.text()).contains("no grips to steer by");
      assertThat(byId(findings, "reach." + who + ".feet").verdict()).isEqualTo(Verdict.PASS);
    }
  }

  @Test
  void whoHasNoSeatHasNowhereToSit() throws Exception {
    List<Finding> findings = without("parts", "pan");
    for (String who : List.of("Mara", "Tor")) {
      assertThat(byId(findings, "seat." + who).verdict()).isEqualTo(Verdict.FAIL);
      assertThat(byId(findings, "seat." + who).text()).contains("nowhere to sit");
    }
    assertThat(findings(trestle())).noneMatch(f -> f.text().contains("nowhere to sit"));
  }

  @Test
  void aMachineWithoutCrewIsNotPassedInSilence() throws Exception {
    assertThat(byId(without("crew", "Mara", "Tor"), "crew").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(findings(trestle())).noneMatch(f -> f.id().equals("crew"));
  }

  /** Heat is kept from what suffers from it, and from people, farther than other things. */
  @Test
  void whatIsHotAsksForItsOwnGap() throws Exception {
    for (boolean hot : new boolean[] {true, false}) {
      ObjectNode root = (ObjectNode) new ObjectMapper().readTree(trestle());
      ((ObjectNode) root.get("parts").get("hoodPlate")).put("hot", hot);
      Study study = Study.of(((ReadResult.Read) LayoutReader.read(root.toString(), null)).layout());
      GapRules rules = new GapRules(study.layout(), study.placed().places());
      Demands.Key asked = hot ? Demands.Key.HOT_GAP : Demands.Key.GAP;
      assertThat(rules.demand("hoodPlate", "pan")).isEqualTo(asked);
      assertThat(rules.demand("pan", "hoodPlate")).isEqualTo(asked);
      assertThat(rules.demand("hoodPlate", "frontWheel"))
          .as("rubber suffers too")
          .isEqualTo(hot ? Demands.Key.HOT_GAP : Demands.Key.TYRE_GAP);
      assertThat(rules.demandOfPeople("hoodPlate"))
          .isEqualTo(hot ? Demands.Key.HOT_GAP : Demands.Key.PERSON_GAP);
    }
  }

  /** To say that a pipe and a leg are meant to meet cools neither. */
  @Test
  void whatIsHotKeepsItsGapThoughItIsSaidToTouch() throws Exception {
    for (boolean hot : new boolean[] {true, false}) {
      ObjectNode root = (ObjectNode) new ObjectMapper().readTree(trestle());
      ObjectNode plate = (ObjectNode) root.get("parts").get("hoodPlate");
      plate
          .put("hot", hot)
          .putArray("touches")
          .add("rider")
          .add("pan")
          .add("frontWheel")
          .add("engine");
      Study study = Study.of(((ReadResult.Read) LayoutReader.read(root.toString(), null)).layout());
      GapRules rules = new GapRules(study.layout(), study.placed().places());
      assertThat(rules.clearOfPeople("hoodPlate")).isEqualTo(hot);
      assertThat(rules.mayNotTouch("pan", "hoodPlate")).isEqualTo(hot);
      assertThat(rules.mayNotTouch("hoodPlate", "frontWheel")).as("rubber").isEqualTo(hot);
      assertThat(rules.mayNotTouch("hoodPlate", "engine")).as("no harm there").isFalse();
    }
  }
}
