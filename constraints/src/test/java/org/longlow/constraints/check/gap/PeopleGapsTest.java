package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** People keep clear of what they do not rest on, of each other too. */
class PeopleGapsTest {

  private static final String SQUARE =
      "'outline': {'points': [['-12 mm', '-12 mm'], ['12 mm', '-12 mm'], ['12 mm', '12 mm'],"
          + " ['-12 mm', '12 mm']]}";

  private static final String LAYERS =
      "'layers': [{'thickness': '40 mm', 'density': '45 kg/m^3', 'ifd25': '225 N',"
          + " 'supportFactor': '2.7'}]";

  /** The runabout with a thing at the rider's thighs. */
  private static TestMachine thing(String json) {
    return TestMachine.runabout()
        .with("parts", "thing", "{" + json + "}")
        .pin("q1", 620, 690)
        .pin("q2", 660, 695);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "'kind': 'peg', 'seat': 'passenger', 'at': 'q1', 'diameter': '25 mm', 'y': '100 mm',"
            + " 'length': '200 mm'",
        "'kind': 'grip', 'seat': 'passenger', 'at': 'q1', 'diameter': '25 mm', 'y': '100 mm',"
            + " 'length': '200 mm'",
        "'kind': 'footboard', 'seat': 'passenger', 'at': 'q1', 'to': 'q2', 'diameter': '12 mm',"
            + " 'y': '100 mm', 'length': '200 mm'",
        "'kind': 'peg', 'at': 'q1', 'diameter': '25 mm', 'y': '100 mm', 'length': '200 mm'",
        "'kind': 'lever', 'frame': 'q1', 'left': '150 mm', 'right': '150 mm', " + SQUARE,
        "'kind': 'cushion', 'role': 'head', 'from': 'q1', 'to': 'q2', 'board': '12 mm', 'left': '90"
            + " mm', 'right': '90 mm', "
            + LAYERS,
        "'kind': 'cushion', 'role': 'pan', 'seat': 'passenger', 'from': 'q1', 'to': 'q2', 'board':"
            + " '12 mm', 'left': '90 mm', 'right': '90 mm', "
            + LAYERS
      })
  void nothingGoesThroughThighs(String json) {
    Finding f = thing(json).finding("gap.thing.Nell").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isNegative();
  }

  /**
   * A hand on a grip lies round the bar that ends there, unasked; all else of somebody does not.
   */
  @Test
  void barsMayMeetTheArmThatHoldsThemAndNoLeg() {
    TestMachine bare = TestMachine.runabout().part("bars", "touches", "[]");
    assertThat(bare.finding("gap.bars.Nell").stream()).allMatch(f -> f.verdict() == Verdict.PASS);
    String through =
        "'kind': 'rail', 'path': ['q1', 'grip'], 'diameter': '22 mm', 'wall': '2 mm',"
            + " 'bendRadius': '70 mm', 'y': '150 mm', 'both': true, 'mass': '1 kg'";
    Finding f = thing(through).finding("gap.thing.Nell").orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(f.value()).isNegative();
  }

  /**
   * A block on the rear axle rises towards whoever sits over it by the travel left in each stance;
   * nothing else about it changes, so the gap is least at full bump, by that much.
   */
  @ParameterizedTest
  @ValueSource(ints = {1, -1})
  void whatGoesWithAWheelIsHeldOffPeopleAtFullBump(int side) {
    String box =
        "'kind': 'block', 'frame': 'rearAxle', 'mass': '1 kg', 'left': '%d mm', 'right': '%d mm',"
            + " 'outline': {'points': [['%s mm', '%s mm'], ['%s mm', '%s mm'], ['%s mm', '%s"
            + " mm']]}";
    Study bare = TestMachine.asFiled("runabout");
    Sitting nell = bare.sittings().get(0);
    var axle = bare.placed().places().pin("rearAxle");
    var thigh = nell.limbs().get("thigh").get(0);
    double y = 100 * side;
    var under = thigh.outline().getEnvelopeInternal();
    double x = under.centre().x - axle.x();
    double top = under.getMinY() - 20 - axle.z();
    TestMachine machine =
        TestMachine.runabout()
            .with(
                "parts",
                "hump",
                "{"
                    + box.formatted(
                        (int) y + 10, 10 - (int) y, x - 10, top - 30, x + 10, top - 30, x, top)
                    + "}");
    Finding f = machine.finding("gap.hump.Nell").orElseThrow();
    assertThat(f.stance().orElseThrow().kind()).isEqualTo(Stance.Kind.FULL_BUMP);
    Study study = machine.study();
    Solid person = PersonBody.all(nell).orElseThrow();
    Standing bump = study.standing(Condition.empty(Stance.Kind.FULL_BUMP)).orElseThrow();
    double rise = bump.shapes().get("hump").centre().z() - study.shapes().get("hump").centre().z();
    assertThat(rise).isGreaterThan(30);
    Solid raised = Solid.of(study.shapes().get("hump")).moved(Solid.by(new PointMm(0, rise)));
    assertThat(f.value())
        .isCloseTo(person.to(raised, 100).gapMm(), within(1.5)); // it goes in an arc
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
  }

  // the thighs reach 282 mm to the side at most
  @Test
  void pegBesideTheThighsIsClear() {
    String peg =
        "'kind': 'peg', 'seat': 'passenger', 'at': 'q1', 'diameter': '25 mm', 'y': '400 mm',"
            + " 'length': '90 mm'";
    assertThat(thing(peg).finding("gap.thing.Nell")).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(strings = {"pan", "back", "boards", "grips"})
  void whatSomebodyRestsOnIsNoFault(String part) {
    assertThat(TestMachine.runabout().findings())
        .filteredOn(f -> f.id().startsWith("gap." + part + "."))
        .allMatch(f -> f.verdict() == Verdict.PASS);
  }

  // each side of 10 mm; farther out, the passenger's knees pass beside the rider
  @ParameterizedTest
  @CsvSource({"240, FAIL", "280, CAUTION", "320, PASS"})
  void peopleKeepClearOfEachOther(int pegMm, Verdict verdict) {
    Finding f =
        TestMachine.tourer()
            .part("pillionPegs", "y", "'" + pegMm + " mm'")
            .finding("gap.people.Runa.passenger.Bram")
            .orElseThrow();
    assertThat(f.verdict()).as(f.text()).isEqualTo(verdict);
    assertThat(f.limit()).isEqualTo(10);
    assertThat(f.stanceWords()).isEqualTo("laden, Bram and Runa");
    if (verdict != Verdict.PASS) {
      assertThat(f.text()).contains("move the passenger's seat back, by ");
    }
    assertThat(f.source()).contains("judgement");
  }

  @Test
  void aPassengerInTheRidersBackRestFails() {
    Finding f =
        TestMachine.tourer()
            .part("back", "left", "'250 mm'")
            .finding("gap.back.Runa.passenger")
            .orElseThrow();
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
  }

  /** As far back as is said the two are 10 mm apart, a millimetre less and they are not. */
  @ParameterizedTest
  @ValueSource(ints = {240, 280})
  void theSeatGoesAsFarBackAsIsSaid(int pegMm) {
    Study study = TestMachine.tourer().part("pillionPegs", "y", "'" + pegMm + " mm'").study();
    Finding f = only(study, "gap.people.Runa.passenger.Bram");
    Matcher m = Pattern.compile("by ([0-9]+) mm if pegs and grips go with it").matcher(f.text());
    assertThat(m.find()).as(f.text()).isTrue();
    int mm = Integer.parseInt(m.group(1));
    assertThat(apartMm(study, 0)).isLessThan(10);
    assertThat(apartMm(study, mm)).isGreaterThanOrEqualTo(10);
    assertThat(apartMm(study, mm - 1)).isLessThan(10);
  }

  /** Somebody who sits in the rider's own seat is not told how far: 300 mm would not do. */
  @Test
  void whoeverSitsInSomebodyIsToldOnlyWhereTo() {
    Study study =
        TestMachine.tourer()
            .part("pillionPan", "from", "'panRear'")
            .part("pillionPan", "to", "'panFront'")
            .part("pillionBack", "from", "'backLow'")
            .part("pillionBack", "to", "'backTop'")
            .study();
    Finding f = only(study, "gap.people.Runa.passenger.Bram");
    assertThat(f.verdict()).isEqualTo(Verdict.FAIL);
    assertThat(apartMm(study, 300)).isLessThan(10);
    assertThat(f.text()).contains("move the passenger's seat back").doesNotContain("if pegs");
  }

  /** The passenger moved back: of all pairs of what two bodies are made of, the least distance. */
  private static double apartMm(Study study, double backMm) {
    Sitting rider = study.sitting("Bram", Occupant.RIDER).orElseThrow();
    Sitting behind = study.sitting("Runa", "passenger").orElseThrow();
    AffineTransformation back = AffineTransformation.translationInstance(-backMm, 0);
    double least = Double.POSITIVE_INFINITY;
    for (Prism one : behind.finePrisms()) {
      for (Prism other : rider.finePrisms()) {
        double aside =
            Math.max(
                0,
                Math.max(
                    one.across().from() - other.across().to(),
                    other.across().from() - one.across().to()));
        double flat = back.transform(one.outline()).distance(other.outline());
        least = Math.min(least, Math.hypot(aside, flat));
      }
    }
    return least;
  }

  private static Finding only(Study study, String id) {
    return study.findings().stream().filter(f -> f.id().equals(id)).findFirst().orElseThrow();
  }

  /** What one sits on is touched; only one that is sat into is told of. */
  @Test
  void nobodyIsToldHowNearTheirOwnCushionsAre() {
    for (String name : List.of("tourer", "runabout")) {
      Study study = TestMachine.asFiled(name);
      assertThat(study.findings())
          .filteredOn(f -> f.id().matches("gap\\.(pan|back|headRest)\\.(Nell|Joss|Bram|Runa)"))
          .allMatch(f -> f.value() <= 0);
      // while of what is not sat on a clear gap is told too
      assertThat(study.findings())
          .anyMatch(f -> f.id().matches("gap\\..*\\.(Nell|Bram)") && f.value() > 0);
    }
  }

  /** Of each person the closest part comes first. */
  @Test
  void theNearestIsToldOfFirst() {
    for (String name : List.of("tourer", "runabout")) {
      Map<String, List<Double>> ofPerson =
          TestMachine.asFiled(name).findings().stream()
              .filter(f -> f.kind() == GapFindings.GAP && f.who().isPresent())
              .filter(f -> !f.id().startsWith("gap.people"))
              .collect(
                  Collectors.groupingBy(
                      f -> f.who().orElseThrow().toString(),
                      Collectors.mapping(Finding::value, Collectors.toList())));
      assertThat(ofPerson.values()).anyMatch(gaps -> gaps.size() > 2);
      ofPerson.values().forEach(gaps -> assertThat(gaps).isSorted());
    }
  }

  /** A bar moved as it is told to is clear of the thighs. */
  @Test
  void aMoveThatIsSaidClearsThePerson() {
    String bar = "'kind': 'lever', 'frame': 'q1', 'left': '150 mm', 'right': '150 mm', " + SQUARE;
    Finding f = thing(bar).finding("gap.thing.Nell").orElseThrow();
    Matcher m =
        Pattern.compile(
                "move thing(?: ([0-9.]+) mm (forward|back))?(?: and)?(?: ([0-9.]+) mm (up|down))?")
            .matcher(f.text());
    assertThat(m.find()).as(f.text()).isTrue();
    double along = m.group(1) == null ? 0 : Double.parseDouble(m.group(1));
    double up = m.group(3) == null ? 0 : Double.parseDouble(m.group(3));
    assertThat(along + up).isPositive();
    TestMachine moved =
        thing(bar)
            .pin(
                "q1",
                620 + ("back".equals(m.group(2)) ? -along : along),
                690 + ("down".equals(m.group(4)) ? -up : up));
    assertThat(moved.finding("gap.thing.Nell").map(Finding::verdict))
        .isNotEqualTo(Optional.of(Verdict.FAIL));
  }

  /** Whoever waits for a crew of dozens is told of each stance, from none done on. */
  @Test
  void progressIsToldStanceByStance() {
    Study study = TestMachine.asFiled("tourer");
    List<Integer> done = new CopyOnWriteArrayList<>();
    Set<Integer> of = ConcurrentHashMap.newKeySet();
    Study.of(
        study.placed(),
        (what, n, all) -> {
          if (what.startsWith("gaps between people")) {
            done.add(n);
            of.add(all);
          }
        });
    int stances = study.standings().size();
    assertThat(of).containsExactly(stances);
    assertThat(done).containsExactlyElementsOf(IntStream.range(0, stances).boxed().toList());
  }
}
