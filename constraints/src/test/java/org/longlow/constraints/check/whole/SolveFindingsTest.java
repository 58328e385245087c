package org.longlow.constraints.check.whole;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.solve.Conflict;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.solve.LimitFailure;
import org.longlow.constraints.solve.Redundancy;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.problem.SolveStatus;

/** What is said of a solve, for each way in which it can end. */
class SolveFindingsTest {

  private static Placed placed(String ties, String limits) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "a": [500, 500], "b": [900, 520]},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "p1": {"kind": "rail", "path": ["rear", "a"], "diameter": 20, "wall": 2, "bendRadius": 60, "y": 0},
           "p2": {"kind": "rail", "path": ["front", "b"], "diameter": 20, "wall": 2, "bendRadius": 60, "y": 0}},
         "ties": {%s}, "limits": {%s}}
        """
            .formatted(ties, limits);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    Layout layout = ((ReadResult.Read) result).layout();
    return Placer.place(layout);
  }

  private static final String TIES =
      "\"long\": {\"tie\": \"distance\", \"pins\": [\"a\", \"b\"], \"is\": 400},"
          + "\"level\": {\"tie\": \"height\", \"pins\": [\"a\"], \"is\": 500}";

  private static final String LIMITS =
      "\"near\": {\"limit\": \"distance\", \"pins\": [\"rear\", \"a\"], \"to\": 900},"
          + "\"slope\": {\"limit\": \"angle-between\", \"pins\": [\"rear\", \"a\", \"front\", \"b\"],"
          + " \"from\": \"10 deg\"}";

  private static Finding of(List<Finding> findings, String id) {
    return findings.stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  /** The same layout as if its solve had ended in this way. */
  private static List<Finding> ended(
      SolveStatus status,
      double residual,
      List<LimitFailure> limits,
      List<String> ties,
      Diagnosis diagnosis) {
    Placed real = placed(TIES, LIMITS);
    SolveReport report =
        new SolveReport(
            status,
            real.report().x(),
            1,
            1,
            residual,
            limits,
            List.of(),
            ties,
            List.of(),
            List.of(),
            Optional.ofNullable(diagnosis));
    return SolveFindings.of(new Placed(real.problem(), report, real.places()));
  }

  private static Diagnosis diagnosis(Conflict conflict, boolean decided) {
    return new Diagnosis(
        2, 2, List.of(), List.of(), Optional.ofNullable(conflict), decided, List.of(), 1);
  }

  private static Diagnosis saying(List<Redundancy> redundant, List<String> dead) {
    return new Diagnosis(2, 2, List.of(), redundant, Optional.empty(), true, dead, 37);
  }

  // four coordinates of a and b are free, two ties hold them
  @Test
  void whatHoldsIsCounted() {
    List<Finding> findings = SolveFindings.of(placed(TIES, LIMITS));
    assertThat(findings).hasSize(1);
    Finding f = findings.get(0);
    assertThat(f.id()).isEqualTo("ties");
    assertThat(f.verdict()).isEqualTo(Verdict.PASS);
    assertThat(f.text()).isEqualTo("All 2 ties hold; 2 ways to move are left free.");
    assertThat(f.value()).isCloseTo(0, within(1e-6));
    Finding rough =
        of(ended(SolveStatus.SOLVED_ROUGHLY, 0.001, List.of(), List.of(), null), "ties");
    assertThat(rough.verdict()).isEqualTo(Verdict.PASS);
    assertThat(rough.value()).isEqualTo(0.001);
    assertThat(rough.text()).contains("0 ways to move");
  }

  /** A millimetre between them is half of one for each; neither is at a dead point. */
  @ParameterizedTest
  @CsvSource({"ahead, 400, 401", "above, 20, 21", "ahead, 400, 407"})
  void tiesThatContradictAreOffByTheirOwnMillimetres(String tie, double one, double other) {
    String both =
        Stream.of(one, other)
            .map(
                is ->
                    "\"is"
                        + Math.round(is)
                        + "\": {\"tie\": \""
                        + tie
                        + "\", \"pins\": [\"a\", \"b\"], \"is\": "
                        + is
                        + "}")
            .collect(Collectors.joining(", "));
    List<Finding> findings = SolveFindings.of(placed(both, ""));
    Finding f = findings.get(0);
    double off = (other - one) / 2;
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isCloseTo(off, within(1e-3));
    assertThat(f.text()).contains("off by " + Say.mm(off) + ".");
    assertThat(findings).hasSize(1);
  }

  /** It ties the same directions as another, but what it asks does not follow from that. */
  @Test
  void aTieThatContradictsAnotherDoesNotFollowFromIt() {
    List<Finding> findings =
        SolveFindings.of(
            placed(
                TIES
                    + ", \"longer\": {\"tie\": \"distance\", \"pins\": [\"a\", \"b\"], \"is\": 410}",
                LIMITS));
    assertThat(of(findings, "ties").verdict()).isEqualTo(Verdict.FAIL);
    assertThat(findings).noneMatch(f -> f.id().startsWith("redundant"));
  }

  @Test
  void freedomsThatWereNotWorkedOutNeedCare() {
    List<Finding> open = ended(SolveStatus.SOLVED, 0, List.of(), List.of(), diagnosis(null, false));
    assertThat(of(open, "freedoms").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(of(open, "freedoms").text()).startsWith("Not decided: what the ties leave free");
    assertThat(ended(SolveStatus.SOLVED, 0, List.of(), List.of(), diagnosis(null, true)))
        .noneMatch(f -> f.id().equals("freedoms"));
    assertThat(ended(SolveStatus.SOLVED, 0, List.of(), List.of(), null))
        .noneMatch(f -> f.id().equals("freedoms"));
    // of ties that contradict each other that is not asked
    assertThat(
            ended(SolveStatus.CONTRADICTS, 5, List.of(), List.of("long"), diagnosis(null, false)))
        .noneMatch(f -> f.id().equals("freedoms"));
  }

  @Test
  void tiesThatCannotHoldAreNamed() {
    Conflict conflict = new Conflict(List.of("long", "level"), "level", 12.34);
    Finding f =
        of(
            ended(
                SolveStatus.CONTRADICTS,
                12.34,
                List.of(),
                List.of("long"),
                diagnosis(conflict, true)),
            "ties");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.subject()).isEqualTo("long, level");
    assertThat(f.text())
        .isEqualTo(
            "These ties cannot all hold: long, level; change or drop one of them. The drawing shows"
                + " the nearest compromise, off by 12.3 mm.");
    assertThat(f.value()).isEqualTo(12.34);
    assertThat(f.margin()).isEqualTo(-12.34);
    Finding open =
        of(ended(SolveStatus.CONTRADICTS, 0.04, List.of(), List.of("long"), null), "ties");
    assertThat(open.text())
        .startsWith(
            "These ties cannot all hold, and which of them to blame was not worked out to the end:"
                + " long;")
        .contains("off by less than ");
  }

  @Test
  void ofRealTiesTheSmallestSetIsNamed() {
    String more = ",\"low\": {\"tie\": \"height\", \"pins\": [\"a\"], \"is\": 480}";
    List<Finding> findings = SolveFindings.of(placed(TIES + more, LIMITS));
    Finding f = of(findings, "ties");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.subject()).isEqualTo("level, low");
  }

  @Test
  void aLimitSaysWhatItCannotHoldTogetherWith() {
    List<LimitFailure> missed = List.of(new LimitFailure("near", 7.5));
    Conflict own = new Conflict(List.of("long", "level", "near"), "near", 6.25);
    Finding f = limit(missed, diagnosis(own, true), "near");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isEqualTo(-7.5);
    assertThat(f.margin()).isEqualTo(-7.5);
    assertThat(f.limit()).isZero();
    assertThat(f.unit()).isEqualTo(FigureUnit.MM);
    assertThat(f.text())
        .isEqualTo(
            "Limit near cannot hold together with long, level; it is missed by 7.5 mm. Without any"
                + " one of these the rest can hold; where the others hold, it is short by 6.3 mm at"
                + " best.");
    Conflict others = new Conflict(List.of("near", "slope"), "slope", 6.25);
    assertThat(limit(missed, diagnosis(others, true), "near").text())
        .isEqualTo(
            "Limit near cannot hold together with slope; it is missed by 7.5 mm. Without any one of"
                + " these the rest can hold.");
    Conflict alone = new Conflict(List.of("near"), "near", 7.5);
    assertThat(limit(missed, diagnosis(alone, true), "near").text())
        .isEqualTo("Limit near cannot hold wherever things are moved; it is missed by 7.5 mm.");
    Conflict elsewhere = new Conflict(List.of("slope"), "slope", 7.5);
    assertThat(limit(missed, diagnosis(elsewhere, true), "near").text())
        .isEqualTo(
            "Limit near cannot hold together with the ties and other limits; it is missed by 7.5"
                + " mm.");
    assertThat(limit(missed, diagnosis(null, false), "near").text())
        .endsWith("it is missed by 7.5 mm. Which of them to blame was not worked out to the end.");
    assertThat(limit(missed, null, "near").text()).endsWith("it is missed by 7.5 mm.");
  }

  private static Finding limit(List<LimitFailure> missed, Diagnosis d, String name) {
    return of(ended(SolveStatus.LIMIT_FAILS, 0, missed, List.of(), d), "limit." + name);
  }

  // an angle is missed by an arc at one metre: 1000 mm are a radian
  @Test
  void anAngleIsMissedByDegrees() {
    double arc = 1000 * Math.toRadians(3.5);
    Conflict own = new Conflict(List.of("level", "slope"), "slope", 1000 * Math.toRadians(2));
    Finding f = limit(List.of(new LimitFailure("slope", arc)), diagnosis(own, true), "slope");
    assertThat(f.unit()).isEqualTo(FigureUnit.DEG);
    assertThat(f.value()).isCloseTo(-3.5, within(1e-9));
    assertThat(f.text()).contains("it is missed by 3.5°").contains("short by 2° at best");
  }

  /** What is missed by nothing that can be said is told of only where there is nothing else. */
  @ParameterizedTest
  @CsvSource({"0.04, 3, 1", "0.05, 3, 2", "0.04, 0.03, 2"})
  void whatIsMissedByNothingIsLeftOutBesideMore(double one, double other, int said) {
    List<LimitFailure> missed =
        List.of(new LimitFailure("near", one), new LimitFailure("slope", other));
    assertThat(ended(SolveStatus.LIMIT_FAILS, 0, missed, List.of(), null))
        .filteredOn(f -> f.id().startsWith("limit."))
        .hasSize(said);
  }

  @Test
  void tiesThatSayNothingNewAreNamed() {
    List<Finding> findings =
        ended(
            SolveStatus.SOLVED,
            0,
            List.of(),
            List.of(),
            saying(
                List.of(
                    new Redundancy("long", List.of("level", "low"), true),
                    new Redundancy("level", List.of(), true)),
                List.of("long")));
    Finding follows = of(findings, "redundant.long");
    assertThat(follows.verdict()).isEqualTo(Verdict.PASS);
    assertThat(follows.text()).isEqualTo("Tie long says nothing new: it follows from level, low.");
    Finding idle = of(findings, "redundant.level");
    assertThat(idle.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(idle.text()).startsWith("Tie level holds whatever moves, so it ties nothing;");
    Finding dead = of(findings, "dead-point.long");
    assertThat(dead.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(dead.value()).isEqualTo(37);
    assertThat(dead.text()).contains("near a dead point");
  }

  @Test
  void whatWasNotDecidedIsNamed() {
    Finding f =
        of(
            ended(
                SolveStatus.NOT_DECIDED,
                1.5,
                List.of(new LimitFailure("near", 7.5)),
                List.of("long"),
                null),
            "undecided");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.subject()).isEqualTo("long, near");
    assertThat(f.value()).isEqualTo(1.5);
    Finding nothing =
        of(ended(SolveStatus.NOT_DECIDED, 0, List.of(), List.of(), null), "undecided");
    assertThat(nothing.subject()).isEqualTo("the ties and limits");
  }

  @Test
  void aLimitFromAThingToItselfIsIdleUnlessItFails() {
    String self =
        "\"pinSelf\": {\"limit\": \"distance\", \"pins\": [\"a\", \"a\"], \"to\": 5},"
            + "\"never\": {\"limit\": \"distance\", \"pins\": [\"a\", \"a\"], \"from\": 5},"
            + "\"high\": {\"limit\": \"height\", \"pins\": [\"a\"], \"from\": 100},"
            + "\"corner\": {\"limit\": \"angle-between\", \"pins\": [\"rear\", \"a\", \"a\", \"b\"],"
            + " \"from\": \"1 deg\"}";
    List<Finding> findings = SolveFindings.of(placed(TIES, self));
    assertThat(of(findings, "redundant.pinSelf").verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(of(findings, "redundant.pinSelf").text())
        .startsWith("Limit pinSelf is from a thing to itself and holds whatever moves");
    assertThat(findings)
        .noneMatch(
            f -> List.of("redundant.never", "redundant.high", "redundant.corner").contains(f.id()));
    assertThat(of(findings, "limit.never").verdict()).isEqualTo(Verdict.FAIL);
  }
}
