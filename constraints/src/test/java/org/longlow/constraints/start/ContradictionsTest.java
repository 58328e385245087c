package org.longlow.constraints.start;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.person.StopFindings;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.constraints.start.Answers.Drive;
import org.longlow.constraints.start.Answers.Place;
import org.longlow.rider.body.Sex;

/** What is refused, on both sides of each bound, in words that say what to do. */
class ContradictionsTest {

  private static Answers.Builder say() {
    return new Answers.Builder();
  }

  private static List<Fault> of(Answers.Builder said) {
    return Contradictions.of(said.answers());
  }

  @Test
  void boundsAreAllowedAndWhatIsBeyondIsNot() {
    double off = 0.01;
    for (double at : new double[] {18, 60}) {
      assertThat(of(say().reclineDeg(at))).isEmpty();
    }
    assertThat(of(say().reclineDeg(18 - off))).hasSize(1);
    assertThat(of(say().reclineDeg(60 + off))).hasSize(1);
    assertThat(of(say().wheelbaseMm(1300))).isEmpty();
    assertThat(of(say().wheelbaseMm(1300 - off))).hasSize(1);
    assertThat(of(say().wheelbaseMm(2500))).isEmpty();
    assertThat(of(say().wheelbaseMm(2500 + off))).hasSize(1);
    assertThat(of(say().wheelbaseMm(Double.NaN))).hasSize(1);
    assertThat(of(say().seats(1))).isEmpty();
    assertThat(of(say().seats(0))).hasSize(1);
    assertThat(of(say().seats(3))).hasSize(1);
    assertThat(of(say().seats(2).reclineDeg(35))).isEmpty();
    assertThat(of(say().seats(2).reclineDeg(35 + off)).get(0).message()).contains("at most 35 deg");
    Box most = new Box(560, 380, 420, 110);
    assertThat(of(say().box(most))).isEmpty();
    assertThat(of(say().box(new Box(560 + off, 380 + off, 420 + off, 110 + off)))).hasSize(4);
    assertThat(of(say().box(new Box(100, 100, 60, 3)))).isEmpty();
    assertThat(of(say().box(new Box(100 - off, 100 - off, 60 - off, 3 - off)))).hasSize(4);
  }

  @Test
  void aHubHoldsARoundMotorThatFitsItsRim() {
    assertThat(of(say().place(Place.HUB).drive(Drive.MOTOR))).isEmpty();
    assertThat(of(say().place(Place.HUB).drive(Drive.ENGINE))).hasSize(1);
    // the rim of a 16 inch tyre by ISO 5751 measures 405.6 mm across its bead
    assertThat(of(say().place(Place.HUB).box(new Box(340, 340, 120, 14)))).isEmpty();
    assertThat(of(say().place(Place.HUB).box(new Box(360, 360, 120, 14))).get(0).message())
        .contains("does not go into the rim");
    assertThat(of(say().place(Place.HUB).box(new Box(200, 220, 120, 14)))).hasSize(1);
    assertThat(of(say().place(Place.HUB).box(new Box(220, 220, 171, 14)))).hasSize(1);
  }

  @Test
  void tyresAndPeopleAreThoseThatAreKnown() {
    assertThat(of(say().frontTyre("110/80-16").rearTyre("180/55 R17"))).isEmpty();
    assertThat(of(say().frontTyre("110/80"))).isNotEmpty();
    assertThat(of(say().rearTyre("90/90-10"))).hasSize(1);
    assertThat(of(say().rearTyre("240/40 R18"))).isNotEmpty();
    assertThat(of(say().rider(Who.of(Sex.MALE, 2201, 80)))).hasSize(1);
    assertThat(of(say().rider(Who.of(Sex.MALE, 2200, 80)))).isEmpty();
    assertThat(of(say().second(new Who(Sex.FEMALE, 1650, 60, Map.of("armlenght", 600.0)))))
        .hasSize(1);
    assertThat(of(say().law(List.of("us", "de")))).hasSize(1);
  }

  @Test
  void allFaultsComeAtOnce() {
    List<Fault> faults =
        of(
            say()
                .reclineDeg(75)
                .seats(4)
                .wheelbaseMm(900)
                .place(Place.HUB)
                .drive(Drive.ENGINE)
                .law(List.of("de")));
    assertThat(faults)
        .extracting(Fault::path)
        .containsExactlyInAnyOrder("recline", "seats", "wheelbase", "place", "law");
    FirstMachine.Outcome outcome = FirstMachine.of(say().reclineDeg(75).seats(4).answers());
    assertThat(((FirstMachine.Refused) outcome).faults()).hasSize(2);
  }

  /** The least that is said to be needed is: with a millimetre less it is refused, with it not. */
  @Test
  void aWheelbaseIsRefusedUpToWhatIsNeeded() {
    String shorter = refused(1500);
    assertThat(shorter).contains("wheelbase").contains("put the drive elsewhere");
    Matcher said = Pattern.compile("at least (\\d+) mm are needed").matcher(shorter);
    assertThat(said.find()).as(shorter).isTrue();
    double needed = Double.parseDouble(said.group(1));
    assertThat(refused(needed - 1)).contains(said.group());
    assertThat(FirstMachine.of(say().wheelbaseMm(needed).answers()))
        .isInstanceOf(FirstMachine.Made.class);
  }

  private static String refused(double wheelbaseMm) {
    FirstMachine.Outcome outcome = FirstMachine.of(say().wheelbaseMm(wheelbaseMm).answers());
    return ((FirstMachine.Refused) outcome).faults().get(0).line();
  }

  /** What a box as broad as this one takes off legs, and a short rider off the bars. */
  private static final List<FindingKind> BESIDE_A_BOX =
      List.of(HandFindings.HANDS, SightFindings.FOOT, StopFindings.FEET_DOWN, StopFindings.HOLD_UP);

  /** Under the seat a drive is no higher than lets the shortest leg down; what is said does. */
  @Test
  void aDriveThatLiftsFeetOffTheGroundIsRefused() {
    Answers.Builder said = say().rider(Who.percentile(Sex.FEMALE, 1)).place(Place.UNDER);
    Fault fault =
        ((FirstMachine.Refused) FirstMachine.of(said.box(new Box(300, 380, 200, 40)).answers()))
            .faults()
            .get(0);
    assertThat(fault.path()).isEqualTo("box");
    assertThat(fault.message()).contains("no foot comes to the ground");
    Answers both = said.box(new Box(300, 380, 200, 40)).wheelbaseMm(1310).answers();
    assertThat(((FirstMachine.Refused) FirstMachine.of(both)).faults())
        .extracting(Fault::path)
        .containsExactly("box", "wheelbase");
    said.wheelbaseMm(1900);
    double would = Double.parseDouble(fault.message().replaceAll(".*about (\\d+) mm.*", "$1"));
    FirstMachine.Outcome lower = FirstMachine.of(said.box(new Box(300, would, 200, 40)).answers());
    // both feet at once, either side of it, are asked more: that is said with the machine
    FirstMachine.Made made = (FirstMachine.Made) lower;
    assertThat(made.study().findings())
        .filteredOn(f -> f.verdict() == Verdict.FAIL)
        .allMatch(f -> BESIDE_A_BOX.contains(f.kind()))
        .allSatisfy(f -> assertThat(made.yours()).contains(f.text()));
  }

  /** What is told of an answer goes by the word of its question: its option, and its field. */
  @Test
  void theMassOfTheDriveIsToldOfTheQuestionThatAsksForIt() {
    assertThat(of(say().box(new Box(300, 300, 200, 500))))
        .singleElement()
        .satisfies(f -> assertThat(Question.of(f.path())).contains(Question.BOX))
        .satisfies(f -> assertThat(f.line()).contains("500 kg", "3 to 110 kg"));
  }

  @Test
  void eachMeasurementOfABodyHasALineOfItsOwn() {
    Answers mixed = new Answers.Builder().rider(new Who(Sex.FEMALE, 62, 1640, Map.of())).answers();
    assertThat(Contradictions.of(mixed))
        .hasSize(2)
        .allSatisfy(f -> assertThat(f.line()).doesNotContain("statureMm", "massKg", "\\u000a"));
  }
}
