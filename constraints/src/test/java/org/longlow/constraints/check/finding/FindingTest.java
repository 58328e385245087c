package org.longlow.constraints.check.finding;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.check.road.SagFindings;
import org.longlow.constraints.check.road.SpringCare;
import org.longlow.constraints.check.road.Weights;
import org.longlow.constraints.check.rule.Rulings;
import org.longlow.constraints.check.whole.SolveFindings;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;

/** What a finding carries through its changes, and how it is counted, named and put in order. */
class FindingTest {

  private static final Condition LADEN = Condition.laden(List.of(new Occupant("Ann", "rider")));

  private static Finding finding(Verdict verdict, Figures figures, String text) {
    return new Finding(
        SagFindings.SAG,
        About.thing("rear", "rear", "Ann"),
        Optional.of(LADEN),
        verdict,
        figures,
        List.of(Basis.model("springs"), Basis.practice("habit")),
        Words.of(text));
  }

  private static Finding plain(Verdict verdict, double margin, FigureUnit unit) {
    return finding(verdict, new Figures(1, 1, margin, unit), "Text.");
  }

  @Test
  void itsPartsStayAsTheyAre() {
    Finding f = finding(Verdict.PASS, Figures.atMost(3, 5, FigureUnit.MM), "Text.");
    assertThat(f.id()).isEqualTo("sag.rear.Ann");
    assertThat(f.source()).isEqualTo("springs; habit");
    assertThat(f.stanceWords()).isEqualTo("laden, Ann");
    assertThat(f.margin()).isEqualTo(2);
    assertThat(f.limit()).isEqualTo(5);
    assertThat(f.value()).isEqualTo(3);
    PointMm at = new PointMm(1, 2);
    Finding changed =
        f.at(at)
            .openBy(0.25)
            .withText(Words.of("Other."))
            .withVerdict(Verdict.FAIL)
            .measured(Figures.NONE);
    assertThat(changed.where()).contains(at);
    assertThat(changed.opening().getAsDouble()).isEqualTo(0.25);
    assertThat(changed.text()).isEqualTo("Other.");
    assertThat(changed.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(changed.value()).isNaN();
    assertThat(changed.basis()).isEqualTo(f.basis());
    Finding open = f.at(at).in(Condition.open("lid"));
    assertThat(open.stanceWords()).isEqualTo("open, lid");
    assertThat(open.where()).contains(at);
  }

  /** The rule of the whole house: what decides a verdict lets nothing pass if it is from memory. */
  @Test
  void whatIsDecidedFromMemoryNeverPasses() {
    for (Basis memory :
        List.of(
            Basis.published(Known.FROM_MEMORY, "a book"), Basis.practice("habit").fromMemory())) {
      Finding f = on(Verdict.PASS, memory);
      assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
      assertThat(f.text()).startsWith("Text. ").contains("from memory");
      assertThat(f.in(LADEN).text()).isEqualTo(f.text());
      assertThat(on(Verdict.FAIL, memory).verdict()).isEqualTo(Verdict.FAIL);
      assertThat(on(Verdict.FAIL, memory).text()).isEqualTo("Text.");
      assertThat(on(Verdict.PASS, memory.aside()).verdict()).isEqualTo(Verdict.PASS);
    }
    assertThat(on(Verdict.PASS, Basis.published(Known.TRANSCRIBED, "a copy")).verdict())
        .isEqualTo(Verdict.PASS);
  }

  private static Finding on(Verdict verdict, Basis basis) {
    return Finding.note(SagFindings.SAG, About.thing("rear"), verdict, basis, Words.of("Text."));
  }

  /** Bare numbers of a pattern are figures too: 0.3998 of 0.4 does not read as 0.40 of 0.40. */
  @Test
  void numbersOfAPatternAreSaidFinerTooNearTheirLimit() {
    double value = 0.3998;
    Finding f =
        finding(Verdict.PASS, Figures.atMost(value, 0.4, FigureUnit.NONE), "")
            .withText(
                Words.format(
                    "needs %.2f of %d%% %s, and %.2f can be counted on; %.1f else",
                    value, 7, "x", 0.4, 0.25));
    assertThat(f.text()).isEqualTo("needs 0.3998 of 7% x, and 0.4000 can be counted on; 0.3 else");
    assertThat(f.measured(Figures.atMost(0.31, 0.4, FigureUnit.NONE)).text())
        .startsWith("needs 0.40 of");
  }

  @Test
  void whatIsHeldFailsOutsideItsLimitOnly() {
    for (double value : new double[] {5, 5.1}) {
      Finding f =
          Finding.held(
              SagFindings.SAG,
              About.thing("x"),
              Optional.empty(),
              Figures.atMost(value, 5, FigureUnit.MM),
              List.of(),
              Words.NONE);
      assertThat(f.verdict()).isEqualTo(value > 5 ? Verdict.FAIL : Verdict.PASS);
    }
    assertThat(Figures.atLeast(5, 5, FigureUnit.MM).verdict()).isEqualTo(Verdict.PASS);
    assertThat(Figures.atLeast(4.9, 5, FigureUnit.MM).verdict()).isEqualTo(Verdict.FAIL);
    // a figure that is none keeps to nothing
    assertThat(Figures.atLeast(Double.NaN, 5, FigureUnit.MM).verdict()).isEqualTo(Verdict.FAIL);
    // sums of inches are on the limit though their last digits are not
    assertThat(Figures.atLeast(5 - 0.9e-6, 5, FigureUnit.MM).inside()).isTrue();
    assertThat(Figures.atLeast(5 - 1.1e-6, 5, FigureUnit.MM).inside()).isFalse();
    // between two limits the nearer one is told
    assertThat(Figures.within(4, 3, 9, FigureUnit.MM))
        .isEqualTo(Figures.atLeast(4, 3, FigureUnit.MM));
    assertThat(Figures.within(8, 3, 9, FigureUnit.MM))
        .isEqualTo(Figures.atMost(8, 9, FigureUnit.MM));
  }

  @Test
  void theStateIsSaidWhereTheSentenceDoesNot() {
    Finding f = finding(Verdict.PASS, Figures.NONE, "Text.");
    assertThat(f.when()).isEqualTo(", laden, Ann");
    assertThat(f.withText(Words.of("With Ann it sags.")).when()).isEmpty();
    assertThat(f.in(Condition.empty(Stance.Kind.FULL_DROOP)).when()).isEqualTo(", at full droop");
    assertThat(f.in(Condition.empty(Stance.Kind.PARKED)).when()).isEqualTo(", parked");
    // unladen says nobody, and nobody is in every sentence
    assertThat(f.in(Condition.empty(Stance.Kind.UNLADEN)).when()).isEqualTo(", unladen");
    assertThat(f.in(Condition.open("lid")).withText(Words.of("The lid, open, lid.")).when())
        .isEmpty();
  }

  // as bad as 10 mm of a gap
  @ParameterizedTest
  @CsvSource({
    "MM, 10",
    "MM2, 1000",
    "NEWTON, 50",
    "KG, 5",
    "KPA, 5",
    "DEG, 5",
    "G, 0.05",
    "SHARE, 0.05",
    "NONE, 0.05",
    "COUNT, 1",
    "LINKS, 1"
  })
  void unitsAreComparedByWhatIsMuchOfThem(FigureUnit unit, double much) {
    Finding gap = plain(Verdict.FAIL, -10, FigureUnit.MM);
    Finding worse = plain(Verdict.FAIL, -1.01 * much, unit);
    Finding better = plain(Verdict.FAIL, -0.99 * much, unit);
    assertThat(WorstFirst.of(List.of(better, gap, worse))).containsExactly(worse, gap, better);
  }

  @Test
  void lawFromMemoryComesLastOfItsVerdict() {
    Finding memory =
        new Finding(
            Rulings.LAW_FROM_MEMORY,
            About.thing("lamp", "lamp"),
            Optional.empty(),
            Verdict.CAUTION,
            Figures.NONE,
            List.of(),
            Words.NONE);
    Finding mild = plain(Verdict.CAUTION, 5, FigureUnit.MM);
    Finding said = finding(Verdict.CAUTION, Figures.NONE, "");
    Finding fails = finding(Verdict.FAIL, Figures.NONE, "");
    Finding passes = plain(Verdict.PASS, 1, FigureUnit.MM);
    assertThat(WorstFirst.of(List.of(memory, passes, said, mild, fails)))
        .containsExactly(fails, mild, said, memory, passes);
  }

  @Test
  void verdictsAreSaidOfOneAndOfMany() {
    assertThat(Arrays.stream(Verdict.values()).map(v -> v.says(1)))
        .containsExactly("1 fails", "1 needs care", "1 passes", "1 does not apply");
    assertThat(Arrays.stream(Verdict.values()).map(v -> v.says(2)))
        .containsExactly("2 fail", "2 need care", "2 pass", "2 do not apply");
    assertThat(Arrays.stream(Verdict.values()).map(v -> v.says(0)))
        .containsExactly("0 fail", "0 need care", "0 pass", "0 do not apply");
    assertThat(Arrays.stream(Verdict.values()).map(Verdict::says))
        .containsExactly("fails", "needs care", "passes", "does not apply");
    assertThat(Verdict.NOT_APPLICABLE.word()).isEqualTo("not-applicable");
  }

  @Test
  void cautionsAreThoseOfGroupsThatAreThere() {
    Finding sag = plain(Verdict.PASS, 1, FigureUnit.MM);
    Finding ties =
        Finding.note(
            SolveFindings.TIES, About.thing("t"), Verdict.PASS, Basis.model(""), Words.NONE);
    Finding lean =
        Finding.note(
            LeanFindings.LEAN, About.thing("t"), Verdict.PASS, Basis.model(""), Words.NONE);
    assertThat(Finding.groupsWithCaution(List.of(lean, ties, sag)))
        .containsExactly(FindingGroup.SAG, FindingGroup.LEAN);
    assertThat(FindingGroup.SAG.caution()).contains("measure the real sag");
    assertThat(FindingGroup.SAG.title()).isEqualTo("springs");
    assertThat(FindingGroup.LAYOUT.caution()).isEmpty();
  }

  @Test
  void whatRestsOnAnUnknownMassNeedsCare() {
    Weights two = new Weights(List.of("a", "b"));
    Finding pass = plain(Verdict.PASS, 1, FigureUnit.MM);
    assertThat(two.held(pass).verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(two.held(pass).text())
        .isEqualTo("Text. Incomplete: the mass of 2 parts is not known.");
    assertThat(new Weights(List.of("a")).held(pass).text())
        .isEqualTo("Text. Incomplete: the mass of a is not known.");
    assertThat(two.held(pass.withVerdict(Verdict.FAIL)).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(two.held(pass.withVerdict(Verdict.NOT_APPLICABLE)).text()).isEqualTo("Text.");
    assertThat(new Weights(List.of()).held(pass)).isEqualTo(pass);
    assertThat(new Weights(List.of()).finding()).isEmpty();
    assertThat(two.finding().orElseThrow().value()).isEqualTo(2);
    assertThat(two.finding().orElseThrow().text()).startsWith("Mass not known: a, b. Each counts");
  }

  @Test
  void withoutARateNothingAtRestPasses() {
    SpringCare care = new SpringCare(List.of("front", "swingarm"));
    Finding lean =
        new Finding(
            LeanFindings.LEAN,
            About.thing("l"),
            Optional.of(LADEN),
            Verdict.PASS,
            Figures.NONE,
            List.of(),
            Words.of("Text."));
    assertThat(care.held(lean).verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(care.held(lean).text())
        .isEqualTo("Text. Rough: the rate of front and swingarm is not known.");
    assertThat(care.held(lean.withVerdict(Verdict.FAIL)).verdict()).isEqualTo(Verdict.FAIL);
    assertThat(care.held(lean.withVerdict(Verdict.NOT_APPLICABLE)).text()).isEqualTo("Text.");
    for (Stance.Kind stop : List.of(Stance.Kind.FULL_BUMP, Stance.Kind.FULL_DROOP)) {
      Finding there = lean.in(Condition.empty(stop));
      assertThat(care.held(there)).isEqualTo(there);
    }
    Finding sag = finding(Verdict.PASS, Figures.NONE, "Text.");
    assertThat(care.held(sag)).isEqualTo(sag);
    Finding ties =
        Finding.note(
            SolveFindings.TIES, About.thing("t"), Verdict.PASS, Basis.model(""), Words.NONE);
    assertThat(care.held(ties)).isEqualTo(ties);
    assertThat(new SpringCare(List.of()).held(lean)).isEqualTo(lean);
    assertThat(new SpringCare(List.of()).finding()).isEmpty();
    assertThat(care.finding().orElseThrow().text())
        .startsWith("How far the springs of front and swingarm");
  }

  @Test
  void thingsPartsAndPeopleAreNamed() {
    Occupant ann = new Occupant("Ann", "passenger");
    assertThat(About.parts("a", "b").words()).isEqualTo("a and b");
    assertThat(About.parts("a", "b").path()).containsExactly("a", "b");
    assertThat(About.lamps(List.of("a", "b")).words()).isEqualTo("a, b");
    assertThat(About.lamps(List.of("a", "b")).path()).isEmpty();
    assertThat(About.person(ann, "hands", "x").words()).isEqualTo("Ann as passenger, hands");
    assertThat(About.person(ann, "", "x").words()).isEqualTo("Ann as passenger");
    assertThat(About.person(ann, "", "x").path()).containsExactly("Ann.passenger", "x");
    assertThat(About.beside("a", ann).path()).containsExactly("a", "Ann.passenger");
    assertThat(About.beside("a", ann).words()).isEqualTo("a and Ann as passenger");
    assertThat(About.beside("a", ann).parts()).containsExactly("a");
    About all = About.parts("a").on("c").said("it").under("first").with(ann);
    assertThat(all)
        .isEqualTo(new About("it", List.of("c"), Optional.of(ann), List.of("first", "a")));
    assertThat(all.named("n").path()).containsExactly("n");
  }

  @Test
  void aCountThatStandsAloneSaysOfHowMany() {
    assertThat(count(Figures.atLeast(0, 2, FigureUnit.COUNT))).isEqualTo("0 of 2");
    assertThat(count(Figures.atMost(2, 2, FigureUnit.COUNT))).isEqualTo("2 of 2");
    assertThat(count(Figures.atMost(3, 2, FigureUnit.COUNT))).isEqualTo("3, at most 2");
    assertThat(count(Figures.atMost(3, 0, FigureUnit.COUNT))).isEqualTo("3");
    assertThat(count(Figures.only(3, FigureUnit.COUNT))).isEqualTo("3");
    assertThat(count(Figures.atLeast(3, 4, FigureUnit.MM))).isEqualTo("3 mm");
  }

  private static String count(Figures figures) {
    return finding(Verdict.FAIL, figures, "it.").figure(Units.MM);
  }
}
