package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.EffortFindings;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.person.StopFindings;
import org.longlow.constraints.check.ride.DiveFindings;
import org.longlow.constraints.check.road.SagFindings;
import org.longlow.constraints.check.whole.BendFindings;
import org.longlow.constraints.check.whole.CompletenessFindings;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.study.Study;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.PointMm;

/**
 * Whatever is answered, there is a machine that solves, seats everybody and fails at nothing; or
 * the wheelbase that was asked for is too short, and the one that is said to do does.
 */
class AnswerGridTest {

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  private static final double PERSON_GAP_MM = 10;

  /** About a grip there is a hand, mm. */
  private static final double HAND_MM = 90;

  private static final Pattern NEEDED =
      Pattern.compile("(\\d+(?:\\.\\d)?) mm (?:are needed|would)");

  @Test
  void everyAnswerMakesAMachineOrSaysWhyNot() {
    List<Map<Question, String>> grid = AnswerGrid.every(LONG ? 1 : 89);
    int made = 0;
    int turning = 0;
    for (Map<Question, String> said : grid) {
      FirstMachine.Outcome outcome = FirstMachine.of(AnswerGrid.read(said));
      if (outcome instanceof FirstMachine.Refused refused) {
        outcome = asAdvised(said, refused.faults());
      } else {
        made++;
      }
      sound(said, (FirstMachine.Made) outcome);
      turning += full((FirstMachine.Made) outcome) ? 1 : 0;
    }
    // of few of them fewer are of one sort
    int part = LONG ? 2 : 3;
    assertThat(made).as("of " + grid.size()).isGreaterThan(grid.size() / part);
    assertThat(turning).as("of " + grid.size()).isGreaterThanOrEqualTo(grid.size() / part);
  }

  /** Whether nothing is met, and no hand lost, on the way to full lock. */
  private static boolean full(FirstMachine.Made made) {
    return made.study().failing() == 0;
  }

  private static void sound(Map<Question, String> said, FirstMachine.Made made) {
    Study study = made.study();
    assertThat(study.placed().report().status()).as(said.toString()).isEqualTo(SolveStatus.SOLVED);
    assertThat(study.sittings()).as(said.toString()).isNotEmpty();
    assertThat(study.sittings()).allMatch(s -> s.posture().isPresent());
    // people ride dressed, and nothing is met on the way to the lock that is asked
    assertThat(study.layout().crew().values())
        .allMatch(p -> p.helmet() && p.boots() && p.clothes());
    List<Finding> fails =
        study.findings().stream().filter(f -> f.verdict() == Verdict.FAIL).toList();
    assertThat(fails)
        .as(said.toString())
        .allMatch(f -> f.kind() == HandFindings.HANDS || heavyBehind(f) || leftByTheRest(study, f));
    // a back far down takes hands off at full lock: what fails is then the first that is said
    assertThat(made.yours().subList(0, fails.size()))
        .as(said.toString())
        .isEqualTo(fails.stream().map(Finding::text).toList());
    assertThat(study.findings().stream().filter(f -> f.kind() == CompletenessFindings.COMPLETENESS))
        .as(said.toString())
        .allMatch(f -> f.verdict() == Verdict.PASS);
    bendable(said.toString(), made);
    assertThat(study.findings())
        .filteredOn(f -> f.verdict() == Verdict.PASS)
        .noneMatch(f -> f.basis().stream().anyMatch(Basis::decidesFromMemory));
    study.sittings().forEach(sitting -> clearOfWhatIsExcused(said, study, sitting));
    sprung(said, study);
  }

  private static void bendable(String said, FirstMachine.Made made) {
    assertThat(made.study().findings().stream().filter(f -> f.kind() == BendFindings.TUBE))
        .extracting(Finding::text)
        .as(said)
        .isEmpty();
  }

  /** The exhaust of the lowest and the highest engine that may be answered, wherever it is. */
  @Test
  void exhaustsOfLowAndHighEnginesCanBeBent() {
    for (Answers.Place place :
        List.of(Answers.Place.BEFORE, Answers.Place.UNDER, Answers.Place.BEHIND)) {
      for (double high : LONG ? new double[] {100, 170, 240} : new double[] {100, 240}) {
        Answers.Box box = new Answers.Box(1.2 * high, high, high, 0.15 * high);
        Answers said = new Answers.Builder().place(place).box(box).answers();
        bendable(place + " " + high, (FirstMachine.Made) FirstMachine.of(said));
      }
    }
  }

  /** A small rider's leg does not hold the machine with somebody heavy behind on a slope. */
  private static boolean heavyBehind(Finding f) {
    return f.kind() == StopFindings.HOLD_UP && f.stance().orElseThrow().aboard().size() == 2;
  }

  /** One rest cannot hold two unlike heads on a back far down: the other is bent forward. */
  private static boolean leftByTheRest(Study study, Finding f) {
    return f.kind() == EffortFindings.EFFORT
        && f.about().path().contains("neck")
        && f.value() > 30
        && study.sittings().stream().anyMatch(s -> s.seated().orElseThrow().headOnRest());
  }

  /**
   * The front keeps off its stop to 0.6 g or until the rear wheel lifts, and the heaviest load uses
   * about a third of the travel of each wheel.
   */
  private static void sprung(Map<Question, String> said, Study study) {
    double lift =
        study.standings().stream()
            .filter(s -> s.kind() == Stance.Kind.LADEN)
            .mapToDouble(s -> s.load().axles().brakeLiftG())
            .min()
            .orElseThrow();
    assertThat(study.findings().stream().filter(f -> f.kind() == DiveFindings.DIVE).toList())
        .as(said.toString())
        .singleElement()
        // where the front tyre alone slides first, a grip that is only remembered decides
        .satisfies(
            f -> assertThat(f.verdict() == Verdict.PASS || f.unchecked()).as(f.text()).isTrue())
        .satisfies(
            f ->
                assertThat(f.figures().value())
                    .as(f.text())
                    .isGreaterThanOrEqualTo(Math.min(0.6, lift)));
    for (String end : List.of("front", "rear")) {
      assertThat(
              study.findings().stream()
                  .filter(f -> f.kind() == SagFindings.SAG)
                  .filter(f -> f.about().path().get(0).equals(end))
                  .filter(f -> f.stance().orElseThrow().kind() == Stance.Kind.LADEN)
                  .mapToDouble(f -> f.figures().value() / f.figures().limit())
                  .max()
                  .orElseThrow())
          .as(end + " " + said)
          .isBetween(0.28, 0.35);
    }
  }

  /**
   * Bars, and rails with a leg on either side, are said to touch people since a limb is judged as
   * wide as it is anywhere; looked at closely, none comes nearer than people ask.
   */
  private static void clearOfWhatIsExcused(
      Map<Question, String> said, Study study, Sitting sitting) {
    Solid person = new Solid("person", sitting.finePrisms());
    for (Part part : study.layout().parts().values()) {
      if (!part.base().touches().contains("rider")) {
        continue;
      }
      String what = part.name() + ", " + sitting.person() + ": " + said;
      PartShape shape = study.shapes().get(part.name());
      if (part.name().equals("bars")) {
        // hands and forearms are at the grips, and the grips are judged by themselves
        PointMm grip = study.placed().places().pin("grip");
        Geometry bars = shape.outline().difference(Curves.disc(grip, HAND_MM));
        assertThat(
                sitting.flesh().stream()
                    .filter(f -> Set.of("thigh", "shank", "foot", "head").contains(f.name()))
                    .mapToDouble(f -> f.outline().distance(bars)))
            .as(what)
            .allMatch(mm -> mm > PERSON_GAP_MM);
      } else {
        assertThat(new Solid(part.name(), shape.prisms()).to(person, PERSON_GAP_MM))
            .as(what)
            .isNull();
      }
    }
  }

  /** Only a wheelbase that was given is refused, and with the one that is said instead it goes. */
  private static FirstMachine.Outcome asAdvised(Map<Question, String> said, List<Fault> faults) {
    assertThat(faults).as(said.toString()).hasSize(1);
    assertThat(faults.get(0).path()).as(said.toString()).isEqualTo("wheelbase");
    assertThat(said.get(Question.WHEELBASE)).as(said.toString()).isNotEqualTo("choose");
    Matcher needed = NEEDED.matcher(faults.get(0).message());
    assertThat(needed.find()).as(said + " " + faults).isTrue();
    Map<Question, String> advised = new EnumMap<>(said);
    advised.put(Question.WHEELBASE, needed.group(1) + " mm");
    FirstMachine.Outcome outcome = FirstMachine.of(AnswerGrid.read(advised));
    if (outcome instanceof FirstMachine.Refused again) {
      // long enough for what lies between the wheels, and then too short to carry two
      assertThat(again.faults().get(0).message()).as(said.toString()).contains("front wheel");
      advised.put(Question.WHEELBASE, "choose");
      outcome = FirstMachine.of(AnswerGrid.read(advised));
    }
    return outcome;
  }

  /** One that somebody has measured is as it is: then the machine says who cannot stand. */
  @Test
  void anEngineNobodyMeasuredIsGuessedSoLowThatFeetComeDown() {
    Answers.Builder small =
        new Answers.Builder()
            .rider(Who.percentile(Sex.FEMALE, 5))
            .drive(Answers.Drive.ENGINE)
            .place(Answers.Place.UNDER)
            .reclineDeg(60);
    FirstMachine.Made guessed = (FirstMachine.Made) FirstMachine.of(small.answers());
    assertThat(failing(guessed)).doesNotContain("foot", "feet-down", "hold-up");
    double high =
        guessed.study().shapes().get("engine").outline().getEnvelopeInternal().getHeight();
    assertThat(high).isBetween(200.0, 249.0);
    assertThat(guessed.yours())
        .anyMatch(y -> y.contains("guess of 400 x %.0f x 320".formatted(high)));
    FirstMachine.Made measured =
        (FirstMachine.Made)
            FirstMachine.of(small.box(new Answers.Box(400, 250, 320, 46)).answers());
    assertThat(failing(measured)).contains("foot");
    assertThat(measured.yours().get(0)).contains("cannot reach the ground");
  }

  private static Set<String> failing(FirstMachine.Made made) {
    return made.study().findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL)
        .map(f -> f.kind().word())
        .collect(Collectors.toSet());
  }
}
