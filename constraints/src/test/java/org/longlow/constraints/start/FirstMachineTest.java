package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.constraints.start.FirstMachines.anew;
import static org.longlow.constraints.start.FirstMachines.made;
import static org.longlow.constraints.start.FirstMachines.say;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.finding.WorstFirst;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.constraints.study.Study;
import org.longlow.rider.body.Sex;
import org.longlow.rider.words.Units;

/** What a first machine is made of, and that each answer is in it. */
class FirstMachineTest {

  @Test
  void withNoAnswersAtAllThereIsAWholeMachine() {
    Study study = made(Answers.NONE).study();
    Layout layout = study.layout();
    assertThat(study.failing()).isZero();
    assertThat(study.placed().report().status()).isEqualTo(SolveStatus.SOLVED);
    Map<String, Long> kinds =
        layout.parts().values().stream()
            .collect(Collectors.groupingBy(Part::kind, Collectors.counting()));
    assertThat(kinds)
        .containsKeys(
            "wheel",
            "front",
            "swingarm",
            "rail",
            "engine",
            "tank",
            "battery",
            "exhaust",
            "silencer",
            "cushion",
            "grip",
            "footboard",
            "lamp",
            "stand",
            "cowl",
            "bracket");
    assertThat(kinds).containsEntry("wheel", 2L).containsEntry("cushion", 3L);
    assertThat(layout.parts(CushionPart.class)).allMatch(c -> c.layers().size() == 3);
    assertThat(layout.parts(LampPart.class).map(LampPart::type))
        .contains(
            LampPart.Kind.HEADLAMP,
            LampPart.Kind.TAIL,
            LampPart.Kind.STOP,
            LampPart.Kind.FRONT_SIGNAL,
            LampPart.Kind.REAR_SIGNAL,
            LampPart.Kind.REAR_REFLECTOR,
            LampPart.Kind.PLATE,
            LampPart.Kind.PLATE_LAMP);
    assertThat(layout.measures())
        .containsKeys("wheelbase", "reach", "seatHeight", "seatPlace", "recline", "gripReach");
    assertThat(layout.demands().rules()).containsExactly("us", "un-r53", "uk");
    assertThat(layout.stances()).hasSize(5);
    assertThat(layout.crew()).hasSize(1);
  }

  /** Its foot is on the road at the lean that is written, springs moving or stuck. */
  @Test
  void itStandsOnItsStandAsWritten() {
    for (Answers answers :
        List.of(
            Answers.NONE,
            say().seats(2).answers(),
            say().front(FrontPart.Kind.LEADING_LINK).answers())) {
      assertThat(made(answers).study().findings())
          .filteredOn(f -> f.id().equals("stand.sideStand"))
          .singleElement()
          .satisfies(f -> assertThat(f.verdict()).as(f.text()).isEqualTo(Verdict.PASS))
          .satisfies(f -> assertThat(f.text()).doesNotContain("written"));
    }
  }

  @Test
  void itIsReadBackAsItWasWritten() {
    for (Answers answers :
        List.of(Answers.NONE, say().seats(2).front(FrontPart.Kind.LEADING_LINK).answers())) {
      Layout layout = made(answers).layout();
      ReadResult read = LayoutReader.read(LayoutWriter.toJson(layout), null);
      assertThat(read).isInstanceOf(ReadResult.Read.class);
      assertThat(((ReadResult.Read) read).layout()).isEqualTo(layout);
      assertThat(((ReadResult.Read) read).notes()).isEmpty();
      assertThat(LayoutFaults.of(layout)).isEmpty();
    }
  }

  @Test
  void theSameAnswersMakeTheSameMachine() {
    Answers answers = say().reclineDeg(40).drive(Drive.MOTOR).answers();
    assertThat(anew(answers).layout()).isEqualTo(anew(answers).layout());
  }

  /** Drawn places agree with the ties, so that nothing jumps when it is opened. */
  @Test
  void nothingMovesWhenItIsSolved() {
    for (Answers answers : List.of(Answers.NONE, say().seats(2).answers())) {
      Study study = made(answers).study();
      Places solved = study.placed().places();
      study
          .layout()
          .pins()
          .forEach(
              (name, pin) -> {
                assertThat(solved.value(pin.x()))
                    .as(name)
                    .isCloseTo(solved.pin(name).x(), within(1.0));
                assertThat(solved.value(pin.z()))
                    .as(name)
                    .isCloseTo(solved.pin(name).z(), within(1.0));
              });
    }
  }

  /** Measures that one would turn first: each is changed, and the machine still holds together. */
  @Test
  void itsMeasuresCanBeTurned() {
    Layout layout = made(Answers.NONE).layout();
    Places before = Study.of(layout).placed().places();
    turned(layout, before, "wheelbase", 40, "frontAxle", "headTop", "floorFront");
    turned(layout, before, "seatHeight", 15, "panRear", "backTop", "seatBend", "headHigh");
    turned(layout, before, "reach", 20, "boardRear", "boardFront", "boardMiddle");
    turned(layout, before, "gripReach", 20, "grip");
    turned(layout, before, "seatPlace", 15, "panRear", "panFront", "backLow");
    turned(layout, before, "tailHeight", 10, "tailEnd", "strutTop", "platePin");
    turned(layout, before, "tailReach", 20, "tailEnd", "platePin", "tailPin");
    turned(layout, before, "engineAhead", -10, "engineLow");
  }

  private static void turned(
      Layout layout, Places before, String name, double mm, String... follow) {
    Measure measure = layout.measures().get(name);
    double was = before.measures().get(name);
    Layout changed =
        layout.withMeasure(
            name,
            new Measure(
                Formula.parse(was + mm + " mm"),
                measure.dim(),
                false,
                Optional.empty(),
                Optional.empty(),
                measure.note()));
    Study study = Study.of(changed);
    assertThat(study.placed().report().status()).as(name).isEqualTo(SolveStatus.SOLVED);
    for (String pin : follow) {
      assertThat(study.placed().places().pin(pin).distance(before.pin(pin)))
          .as(name + " moves " + pin)
          .isBetween(0.5 * Math.abs(mm), 2 * Math.abs(mm));
    }
  }

  @Test
  void eachAnswerIsInTheMachine() {
    Who tall = Who.of(Sex.MALE, 1880, 95);
    Answers answers =
        say()
            .rider(tall)
            .second(Who.percentile(Sex.FEMALE, 25))
            .wheelbaseMm(1820)
            .frontTyre("100/90-18")
            .rearTyre("120/80-18")
            .reclineDeg(35)
            .drive(Drive.ENGINE)
            .place(Place.UNDER)
            .box(new Box(370, 240, 300, 41))
            .front(FrontPart.Kind.TRAILING_LINK)
            .law(List.of("uk"))
            .answers();
    Study study = made(answers).study();
    Layout layout = study.layout();
    Places places = study.placed().places();
    assertThat(places.pin("frontAxle").x()).isCloseTo(1820, within(0.01));
    assertThat(layout.parts(WheelPart.class).map(WheelPart::tyre))
        .containsExactly("100/90-18", "120/80-18");
    assertThat(Math.toDegrees(places.measures().get("recline"))).isCloseTo(35, within(0.01));
    assertThat(layout.parts(FrontPart.class).findFirst().orElseThrow().type())
        .isEqualTo(FrontPart.Kind.TRAILING_LINK);
    assertThat(layout.demands().rules()).containsExactly("uk");
    assertThat(layout.crew().values())
        .allMatch(p -> p.seats().equals(List.of("rider")))
        .extracting(p -> places.value(p.stature()))
        .contains(1880.0);
    var engine = study.shapes().get("engine").outline().getEnvelopeInternal();
    assertThat(engine.getWidth()).isCloseTo(370, within(1.0));
    assertThat(engine.getHeight()).isCloseTo(240, within(1.0));
    assertThat(study.shapes().get("engine").leftMm()).isCloseTo(150, within(0.1));
    assertThat(study.shapes().get("engine").massKg()).isCloseTo(41, within(0.01));
    double pan = places.pin("panRear").x();
    assertThat(engine.getMinX()).isBetween(pan - 150, pan + 100);
  }

  @Test
  void aSecondSeatIsForWhoSitsBehind() {
    FirstMachine.Made made = made(say().seats(2).answers());
    assertThat(made.layout().crew().values())
        .extracting(p -> p.seats().get(0))
        .containsExactly("rider", "passenger");
    assertThat(made.layout().parts(CushionPart.class).map(CushionPart::seat)).contains("passenger");
    assertThat(made.study().sittings()).hasSize(2).allMatch(s -> s.posture().isPresent());
    Places at = made.study().placed().places();
    assertThat(at.pin("pillionRear").x()).isLessThan(at.pin("panRear").x() - 300);
  }

  @Test
  void whatIsYoursIsShortAndTrue() {
    FirstMachine.Made guessed = made(Answers.NONE);
    assertThat(guessed.yours()).hasSizeBetween(1, 3).anyMatch(y -> y.contains("guess"));
    Answers weighed = say().box(new Box(390, 310, 320, 48)).answers();
    assertThat(made(weighed).yours()).noneMatch(y -> y.contains("guess"));
    assertThat(guessed.study().findings()).noneMatch(f -> f.verdict() == Verdict.FAIL);
  }

  /** By hand: 390, 310 and 320 mm are 15.354, 12.205 and 12.598 in; 48 kg are 105.8 lb. */
  @Test
  void whatIsGuessedIsSaidInTheUnitsShown() {
    FirstMachine.Made made =
        (FirstMachine.Made) FirstMachine.of(Answers.NONE, Optional.empty(), Units.IN);
    assertThat(made.layout().units()).isEqualTo(Units.IN);
    String guess = made.yours().stream().filter(y -> y.contains("guess")).findFirst().get();
    assertThat(guess)
        .isEqualTo(
            "The engine is a guess of 15 3/8 x 12 3/16 x 12 5/8 in and 106 lb: measure and weigh"
                + " yours.");
    assertThat(made.layout().notes()).contains(guess);
    assertThat(made(Answers.NONE).yours())
        .contains(
            "The engine is a guess of 390 x 310 x 320 mm and 48 kg: measure and weigh yours.");
  }

  /** A body outside the survey may not be suited; then what fails is said first. */
  @Test
  void whatFailsIsNamed() {
    Answers odd =
        say().rider(Who.of(Sex.MALE, 1463, 131)).reclineDeg(42).place(Place.HUB).answers();
    FirstMachine.Made made = made(odd);
    List<String> fails =
        made.study().findings().stream()
            .filter(f -> f.verdict() == Verdict.FAIL)
            .map(Finding::text)
            .toList();
    assertThat(fails).isNotEmpty();
    assertThat(made.yours()).startsWith(fails.toArray(String[]::new));
  }

  /** Known answers: ANSUR II, women 5th and men 95th percentile of stature. */
  @Test
  void percentilesAreThoseOfTheSurvey() {
    assertThat(Who.percentile(Sex.FEMALE, 5).statureMm()).isCloseTo(1527, within(3.0));
    assertThat(Who.percentile(Sex.MALE, 95).statureMm()).isCloseTo(1869, within(4.0));
    double last = 0;
    for (double percent = 1; percent <= 99; percent++) {
      double mm = Who.percentile(Sex.MALE, percent).statureMm();
      assertThat(mm).isGreaterThanOrEqualTo(last);
      last = mm;
    }
  }

  @Test
  void anEmptyCardHasTwoWheelsOnTheGround() {
    Study bare =
        ((FirstMachine.Made) FirstMachine.wheels(Answers.NONE, Optional.empty(), Units.MM)).study();
    assertThat(bare.layout().parts()).containsOnlyKeys("frontWheel", "rearWheel");
    assertThat(bare.layout().crew()).isEmpty();
    assertThat(bare.placed().places().pin("frontAxle").x()).isCloseTo(1600, within(1e-9));
    // 110/80-16: half of 16 in and a sidewall of 88 mm
    assertThat(bare.placed().places().pin("frontAxle").z()).isCloseTo(291.2, within(1e-9));

    Answers said =
        AnswerReader.read(
                Map.of(
                    Question.WHEELBASE, "70 in",
                    Question.RIDER, "woman 1640 mm, 62 kg",
                    Question.SECOND, "man 1810 mm, 90 kg",
                    Question.SEATS, "2",
                    Question.LAW, "us",
                    Question.RECLINE, "28 deg"))
            .answers();
    FirstMachine.Made made =
        (FirstMachine.Made) FirstMachine.wheels(said, Optional.of("wagtail"), Units.MM);
    assertThat(made.layout().name()).isEqualTo("wagtail");
    assertThat(made.study().placed().places().pin("frontAxle").x()).isCloseTo(1778, within(1e-9));
    assertThat(made.layout().crew().values())
        .extracting(p -> made.study().placed().places().value(p.stature()) + " " + p.seats())
        .containsExactly("1640.0 [rider]", "1810.0 [passenger]");
    assertThat(made.yours()).singleElement().asString().contains("recline of the back is not used");
    assertThat(made.study().findings())
        .filteredOn(f -> f.text().contains("has nowhere to sit"))
        .extracting(Finding::verdict)
        .containsExactly(Verdict.FAIL, Verdict.FAIL);
    assertThat(WorstFirst.of(made.study().findings()).get(0).text())
        .startsWith("This machine cannot be ridden yet");
    assertThat(made.layout().demands().rules()).containsExactly("us");

    FirstMachine.Outcome no =
        FirstMachine.wheels(
            AnswerReader.read(Map.of(Question.WHEELBASE, "9 m")).answers(),
            Optional.empty(),
            Units.MM);
    assertThat(((FirstMachine.Refused) no).faults())
        .extracting(Fault::path)
        .containsExactly("wheelbase");
  }
}
