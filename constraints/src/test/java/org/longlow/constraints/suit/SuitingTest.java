package org.longlow.constraints.suit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.PoseFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.check.road.SagFindings;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

class SuitingTest {

  /** Of the grid of pegs that are tried out, each a study. */
  private static final int CELL_MM = Boolean.getBoolean("longlow.long") ? 10 : 21;

  /** Half the starts and steps of what people get, which is for the long sweeps. */
  private static final SuitSettings SETTINGS =
      Boolean.getBoolean("longlow.long")
          ? SuitSettings.DEFAULT
          : new SuitSettings(3, 8, 150, 3, true, 6000);

  private static final List<String> MOVES = List.of("pan", "pegs", "grips");

  private static Layout trestle;

  /** The trestle suited, which takes seconds. */
  private static SuitReport suited;

  @BeforeAll
  static void read() throws Exception {
    Path file = Path.of(SuitingTest.class.getResource("trestle.json").toURI());
    trestle = ((ReadResult.Read) LayoutReader.read(file)).layout();
    suited = Suiting.of(trestle, MOVES, SETTINGS);
  }

  private static Layout with(Layout layout, String pin, double x, double z) {
    Pin there = layout.pins().get(pin).at(Formula.of(x, Unit.MM), Formula.of(z, Unit.MM));
    return layout.withPins(Map.of(pin, there));
  }

  private static Person person(String name, String stature, String mass) {
    Person was = trestle.crew().get(name);
    return new Person(
        name,
        was.sex(),
        Formula.parse(stature),
        Formula.parse(mass),
        Map.of(),
        was.seats(),
        true,
        true,
        true);
  }

  private static List<String> failing(Study study) {
    return study.findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL)
        .map(Finding::id)
        .toList();
  }

  /** What is an estimate at best, or is not what places are sought by. */
  private static final List<String> AT_BEST_CARE =
      List.of("effort", "vibration", "contact", "board", "footrest", "rise", "foot", "getting-in");

  @Test
  @Tag("long")
  void badPegsAndGripsBecomeOnesWhereBothPassAndAreAtEase() {
    Layout bad = with(with(trestle, "peg", 1640, 440), "grip", 1180, 760);
    SuitReport report = Suiting.of(bad, MOVES, SuitSettings.DEFAULT);
    assertThat(failing(report.before())).contains("reach.Mara.feet", "reach.Mara.hands");
    SuitReport.Alternative best = report.best().orElseThrow();
    assertThat(failing(best.study())).isEmpty();
    // a trestle is no whole machine and steers nothing, and that is all that depends on places
    assertThat(best.study().findings())
        .filteredOn(f -> f.verdict() == Verdict.CAUTION)
        .filteredOn(f -> f.basis().stream().noneMatch(Basis::decidesFromMemory))
        .filteredOn(f -> !AT_BEST_CARE.contains(f.kind().word()))
        .extracting(Finding::id)
        .containsExactlyInAnyOrder("completeness.machine", "lock.steering");
    assertThat(best.comfort()).allSatisfy((who, cost) -> assertThat(cost).isZero());
    assertThat(report.beforeComfort().get("Mara")).isGreaterThan(1);
    assertThat(best.changes())
        .anySatisfy(
            c -> {
              assertThat(c.finding().id()).isEqualTo("reach.Mara.feet");
              assertThat(c.before()).isEqualTo(Verdict.FAIL);
              assertThat(c.after()).isEqualTo(Verdict.PASS);
            });
    assertThat(report.adjustment()).isEmpty();
    assertThat(report.limitedBy())
        .extracting(SuitReport.Limiting::person)
        .containsExactly("Mara", "Tor");
  }

  @Test
  void tiesAndLimitsHoldAtEveryAlternativeAndTheBackComesAlong() {
    SuitReport report = suited;
    assertThat(report.alternatives()).hasSizeBetween(1, SETTINGS.alternatives());
    for (SuitReport.Alternative a : report.alternatives()) {
      Map<String, PointMm> pins = a.study().placed().places().pins();
      assertThat(a.study().placed().holds()).isTrue();
      PointMm pan = pins.get("panFront").minus(pins.get("panRear"));
      assertThat(pan.length()).isCloseTo(380, within(1e-6));
      assertThat(pins.get("backLow").x() - pins.get("panRear").x()).isCloseTo(-20, within(1e-6));
      assertThat(pins.get("panRear").x()).isBetween(460 - 1e-6, 600 + 1e-6);
      assertThat(pins.get("peg").z()).isBetween(380 - 1e-6, 450 + 1e-6);
      for (String fixed : List.of("hood", "ballast", "frontAxle")) {
        assertThat(pins.get(fixed)).isEqualTo(report.before().placed().places().pin(fixed));
      }
    }
  }

  @Test
  @Tag("long")
  void theSameLayoutGivesTheSameAnswerWhateverTheThreads() throws Exception {
    SuitSettings few = new SuitSettings(3, 6, 150, 3, true, 700);
    SuitReport here = Suiting.of(trestle, MOVES, few);
    ForkJoinPool one = new ForkJoinPool(1);
    SuitReport there;
    try {
      there = one.submit(() -> Suiting.of(trestle, MOVES, few)).get();
    } finally {
      one.shutdown();
    }
    assertThat(there.alternatives()).isNotEmpty().hasSameSizeAs(here.alternatives());
    for (int i = 0; i < here.alternatives().size(); i++) {
      assertThat(there.alternatives().get(i).layout())
          .isEqualTo(here.alternatives().get(i).layout());
    }
  }

  @Test
  void aPlaceThatSuitsIsHardlyLeft() {
    Layout good = suited.best().orElseThrow().layout();
    SuitReport again = Suiting.of(good, MOVES, SETTINGS);
    assertThat(again.best().orElseThrow().moves())
        .allSatisfy(m -> assertThat(m.mm()).isLessThan(SuitingTest.HARDLY_MM));
  }

  /** Bands are kept clear by 1°, which is a few millimetres of a peg. */
  private static final double HARDLY_MM = 10;

  /** A hood so placed that the tall one needs the pegs where the short one cannot reach them. */
  private static Layout noPlaceForBoth() {
    return with(trestle, "hood", 1080, 840)
        .withPerson(person("Mara", "1480 mm", "48 kg"))
        .withPerson(person("Tor", "1960 mm", "96 kg"));
  }

  @Test
  @Tag("long")
  void whereNoPlaceSuitsBothTheLeastTravelThatDoesIsFound() {
    SuitReport report = Suiting.of(noPlaceForBoth(), List.of("pegs", "grips"), SETTINGS);
    assertThat(report.best().orElseThrow().study().failing()).isPositive();
    SuitReport.Adjustment adjustment = report.adjustment().orElseThrow();
    assertThat(adjustment.travels()).hasSize(1);
    SuitReport.Travel travel = adjustment.travels().get(0);
    assertThat(travel.name()).isEqualTo("pegs");
    adjustment.places().forEach((who, layout) -> assertThat(passes(layout, who)).isTrue());
    assertThat(passes(adjustment.places().get("Mara"), "Tor")).isFalse();
    assertThat(passes(adjustment.places().get("Tor"), "Mara")).isFalse();

    // tried out: no two pegs of a grid lie nearer together than one cell less
    Layout grips = adjustment.places().get("Mara");
    List<PointMm> mara = new ArrayList<>();
    List<PointMm> tor = new ArrayList<>();
    for (double x = 1390; x <= 1600; x += CELL_MM) {
      for (double z = 380; z <= 450; z += CELL_MM) {
        Study study = Study.of(with(grips, "peg", x, z));
        if (passes(study, "Mara")) {
          mara.add(new PointMm(x, z));
        }
        if (passes(study, "Tor")) {
          tor.add(new PointMm(x, z));
        }
      }
    }
    double least = Double.POSITIVE_INFINITY;
    for (PointMm a : mara) {
      for (PointMm b : tor) {
        least = Math.min(least, a.distance(b));
      }
    }
    assertThat(travel.mm()).isBetween(least - 2 * Math.hypot(CELL_MM, CELL_MM), least + 2);
  }

  /** A woman of 1480 mm and a man of 1980 mm, and only the grips may move. */
  @Test
  @Tag("long")
  void wherePeopleAreTooUnlikeWhatEachStillLacksIsSaid() {
    Layout unlike = noPlaceForBoth().withPerson(person("Tor", "1980 mm", "105 kg"));
    SuitReport report = Suiting.of(unlike, List.of("grips"), SETTINGS);
    SuitReport.Alternative best = report.best().orElseThrow();
    assertThat(best.stops("Mara").size() + best.stops("Tor").size()).isPositive();
    SuitReport.Adjustment adjustment = report.adjustment().orElseThrow();
    assertThat(adjustment.places()).containsOnlyKeys("Mara", "Tor");
    assertThat(adjustment.unmet()).isNotEmpty();
    adjustment
        .unmet()
        .forEach(
            (who, stops) -> {
              assertThat(stops).isNotEmpty().allMatch(f -> f.verdict() == Verdict.FAIL);
              assertThat(passes(adjustment.places().get(who), who)).isFalse();
            });
  }

  @Test
  void noMorePlacesAreMeasuredThanAllowedAndThatIsSaid() {
    SuitSettings few = settings(SETTINGS.adjust(), 100);
    SuitReport report = Suiting.of(noPlaceForBoth(), List.of("pegs", "grips"), few);
    assertThat(report.decided()).isFalse();
    assertThat(report.alternatives()).isNotEmpty();
    SuitReport again = Suiting.of(noPlaceForBoth(), List.of("pegs", "grips"), few);
    assertThat(again.alternatives().get(0).moves()).isEqualTo(report.alternatives().get(0).moves());
  }

  @Test
  void whatItWasNotToldToMoveStaysUnlessItIsTied() {
    SuitReport report = Suiting.of(noPlaceForBoth(), List.of("grips"), settings(false, 600));
    assertThat(report.alternatives()).isNotEmpty();
    for (SuitReport.Alternative alternative : report.alternatives()) {
      alternative
          .study()
          .placed()
          .places()
          .pins()
          .forEach(
              (pin, p) -> {
                double moved = p.distance(report.before().placed().places().pin(pin));
                if (!pin.equals("grip")) {
                  assertThat(moved).as(pin).isLessThan(1e-6);
                }
              });
    }
  }

  private static boolean passes(Layout layout, String person) {
    return passes(Study.of(layout), person);
  }

  private static boolean passes(Study study, String person) {
    return study.findings().stream()
        .noneMatch(f -> f.verdict() == Verdict.FAIL && f.id().contains("." + person));
  }

  @Test
  void unknownNamesAreRefusedWithTheNearestAndWhatCanMove() {
    assertThatThrownBy(
            () -> Suiting.of(trestle, List.of("pegz", "quux", "hood"), SuitSettings.DEFAULT))
        .isInstanceOfSatisfying(
            UnknownNames.class,
            e -> {
              assertThat(e.lines()).hasSize(3);
              assertThat(e.lines().get(0)).contains("pegz", "did you mean pegs?", "what can move");
              assertThat(e.lines().get(1)).contains("quux", "pan, back, pegs, grips");
              assertThat(e.lines().get(2)).contains("hood cannot move");
            });
    assertThatThrownBy(() -> Suiting.of(trestle, List.of(), SuitSettings.DEFAULT))
        .isInstanceOf(UnknownNames.class)
        .hasMessageContaining("name what may move");
  }

  @Test
  void aContradictionHasNoAlternatives() {
    Layout torn =
        trestle.withTie(
            "tooLong",
            new Tie(
                TieKind.DISTANCE,
                List.of("panRear", "panFront"),
                Optional.of(Formula.parse("400 mm")),
                List.of(),
                "",
                0,
                false,
                ""));
    SuitReport report = Suiting.of(torn, MOVES, SETTINGS);
    assertThat(report.before().contradicts()).isTrue();
    assertThat(report.alternatives()).isEmpty();
  }

  @Test
  void gripsAndPegsFarOutOfReachAreReportedNotThrown() {
    Layout away = with(with(trestle, "peg", -900, 420), "grip", 5000, 4000);
    SuitReport report = Suiting.of(away, List.of("grips"), settings(false, 600));
    assertThat(report.alternatives()).isNotEmpty();
    assertThat(report.limitedBy()).isNotEmpty();
  }

  @Test
  void settingsRefuseNonsense() {
    assertThatThrownBy(() -> new SuitSettings(0, 10, 100, 3, true, 6000))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("seeds is 0");
    assertThatThrownBy(() -> new SuitSettings(3, 10, Double.NaN, 3, true, 6000))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("spreadMm");
  }

  private static SuitSettings settings(boolean adjust, int measured) {
    SuitSettings usual = SETTINGS;
    return new SuitSettings(
        usual.seeds(),
        usual.stepsPerSeed(),
        usual.spreadMm(),
        usual.alternatives(),
        adjust,
        measured);
  }

  @Test
  void whomAFindingIsAboutIsNotReadFromItsName() {
    // names of crew that are words of ids too
    Occupant front = new Occupant("front", "rider");
    Occupant tor = new Occupant("Tor", "rider");
    Occupant behind = new Occupant("Tor", "passenger");
    About sag = About.thing("front suspension", "front", "Tor");
    Finding pressed =
        Finding.held(
            SagFindings.SAG,
            sag,
            Optional.of(Condition.laden(List.of(tor))),
            Figures.NONE,
            List.of(),
            Words.NONE);
    assertThat(Concerns.person(pressed, "Tor")).isTrue();
    assertThat(Concerns.person(pressed, "front")).isFalse();
    Finding reach =
        Finding.note(
            PoseFindings.REACH,
            About.person(front, "hands"),
            Verdict.FAIL,
            Basis.model("made up"),
            Words.NONE);
    assertThat(Concerns.person(reach, "front")).isTrue();
    assertThat(Concerns.person(reach, "hands")).isFalse();
    Finding two =
        Finding.held(
            LoadFindings.LOAD,
            About.thing("front and Tor", "front and Tor"),
            Optional.of(Condition.laden(List.of(front, behind))),
            Figures.NONE,
            List.of(),
            Words.NONE);
    assertThat(Concerns.person(two, "front")).isFalse();
  }
}
