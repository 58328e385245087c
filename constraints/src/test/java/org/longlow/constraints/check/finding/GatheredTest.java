package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;

/** What is alike is told once, what fails never is, and nothing gets lost. */
class GatheredTest {

  private static final FindingKind HEAT = kind("heat", FindingGroup.GAPS, Rests.ON_DRAWING);
  private static final FindingKind POSE = kind("pose", FindingGroup.POSTURE, Rests.ON_DRAWING);
  private static final FindingKind LAW = kind("law", FindingGroup.LAW, Rests.ON_DRAWING);
  private static final FindingKind MEMORY = kind("law", FindingGroup.LAW, Rests.ON_MEMORY);
  private static final FindingKind NOT_COVERED = kind("law", FindingGroup.LAW, Rests.ON_NOTHING);
  private static final Occupant ANN = new Occupant("Ann", "rider");
  private static final Occupant BOB = new Occupant("Bob", "rider");

  private static FindingKind kind(String word, FindingGroup group, Rests rests) {
    return new FindingKind(word, group, rests);
  }

  private static Finding care(FindingKind kind, About about, double mm) {
    return finding(kind, about, Verdict.CAUTION, mm, List.of());
  }

  private static Finding finding(
      FindingKind kind, About about, Verdict verdict, double mm, List<Basis> basis) {
    return new Finding(
        kind,
        about,
        Optional.empty(),
        verdict,
        Figures.atLeast(mm, 50, FigureUnit.MM),
        basis,
        Words.of("Text."));
  }

  @Test
  void partsAndPeopleOfOneQuestionAreToldByTheirWorst() {
    Finding tank = care(HEAT, About.parts("tank", "header"), 30);
    Finding rider = care(HEAT, About.beside("engine", ANN), 20);
    Finding arm = care(POSE, About.person(ANN, "arm", "arm"), 40);
    Finding other = care(POSE, About.person(BOB, "arm", "arm"), 35);
    Finding knee = care(POSE, About.person(ANN, "knee", "knee"), 45);
    assertThat(Gathered.open(List.of(tank, rider, arm, knee, other)))
        .containsExactly(
            new Gathered(rider, List.of(tank)),
            new Gathered(other, List.of(arm)),
            new Gathered(knee, List.of()));
    Gathered heat = new Gathered(rider, List.of(tank));
    assertThat(heat.count()).isEqualTo(" and 1 more");
    assertThat(heat.others()).isEqualTo(" Also 1 more: tank and header.");
    assertThat(new Gathered(knee, List.of()).others()).isEmpty();
    assertThat(Gathered.others(List.of(tank, rider, knee)))
        .containsOnlyKeys(rider.id())
        .containsValue(heat.others());
    assertThat(Gathered.order(List.of(tank, rider, arm, knee, other)))
        .containsExactly(rider, other, knee, tank, arm);
  }

  @Test
  void namesOfManyAreCut() {
    List<Finding> five = new ArrayList<>();
    for (int k = 0; k < 5; k++) {
      five.add(care(HEAT, About.parts("p" + k), 10 + k));
    }
    Gathered all = Gathered.open(five).get(0);
    assertThat(all.others()).isEqualTo(" Also 4 more: p1; p2; p3; p4.");
    five.add(care(HEAT, About.parts("p5"), 15));
    assertThat(Gathered.open(five).get(0).others())
        .isEqualTo(" Also 5 more: p1; p2; p3; p4 and others.");
  }

  @Test
  void whatFailsAndRulesOfLawStandAlone() {
    List<Finding> each =
        List.of(
            finding(HEAT, About.parts("a"), Verdict.FAIL, 10, List.of()),
            finding(HEAT, About.parts("b"), Verdict.FAIL, 11, List.of()),
            care(LAW, About.parts("lamp").named("height"), 12),
            care(LAW, About.parts("lamp").named("colour"), 13));
    assertThat(Gathered.open(each)).extracting(Gathered::worst).containsExactlyElementsOf(each);
  }

  @Test
  void whatOnlyWantsATextReadStandsAsideInAsManySentencesAsThereAreSorts() {
    Basis memory = Basis.published(Known.FROM_MEMORY, "a table");
    Finding inside = finding(POSE, About.thing("rake"), Verdict.PASS, 60, List.of(memory));
    Finding outside = finding(POSE, About.thing("trail"), Verdict.CAUTION, 40, List.of(memory));
    Finding checked = finding(POSE, About.thing("flop"), Verdict.PASS, 60, List.of());
    assertThat(inside.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(inside.aside()).isTrue();
    assertThat(inside.withText(Words.of("Else.")).aside()).isTrue();
    assertThat(inside.withVerdict(Verdict.CAUTION).aside()).as("for its own reason").isFalse();
    assertThat(outside.aside()).isFalse();
    assertThat(outside.open()).isTrue();
    assertThat(checked.open() || checked.aside()).isFalse();
    List<Finding> all =
        List.of(
            checked,
            care(MEMORY, About.parts("lamp"), 51),
            care(MEMORY, About.parts("stop lamp"), 52),
            care(NOT_COVERED, About.thing("horn"), 53),
            inside,
            outside);
    assertThat(Gathered.open(all)).containsExactly(new Gathered(outside, List.of()));
    assertThat(Gathered.asides(all, Units.MM))
        .containsExactly(
            "Inside limits that are known from memory only, so look up their sources before you"
                + " rely on them: pose 60 mm.",
            "1 question of law not covered here: ask whoever inspects the machine.",
            "2 rules of law are met as far as their texts are known from memory: read the texts"
                + " before you rely on them.");
  }

  /** Nothing of a whole machine gets lost, and what is to be done is a fraction of its cares. */
  @Test
  void nothingIsLost() {
    Study study = TestMachine.asFiled("tourer");
    List<Finding> findings = study.findings();
    assertThat(Gathered.order(findings)).containsExactlyInAnyOrderElementsOf(findings);
    List<Finding> told = new ArrayList<>();
    List<Gathered> open = Gathered.open(findings);
    open.forEach(g -> told.add(g.worst()));
    open.forEach(g -> told.addAll(g.more()));
    Gathered.aside(findings).forEach(g -> told.add(g.worst()));
    Gathered.aside(findings).forEach(g -> told.addAll(g.more()));
    assertThat(told)
        .doesNotHaveDuplicates()
        .hasSize((int) (study.count(Verdict.FAIL) + study.count(Verdict.CAUTION)));
    assertThat(open).hasSizeLessThan(told.size() / 2);
  }
}
