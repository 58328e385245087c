package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.shape.Places;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.picture.Shipped;

/** The bench row by row, as the file of the machine has it. */
class BenchRowsTest {

  private final Layout layout = Wren.layout();
  private final Places places = BenchTest.drawn(layout);

  private Bench bench(String subject) {
    return OnBench.of(layout, places, subject);
  }

  private static Bench.Row row(Bench bench, String heading, String label) {
    return bench.groups().stream()
        .filter(g -> g.heading().equals(heading))
        .flatMap(g -> g.rows().stream())
        .filter(r -> r.label().equals(label))
        .findFirst()
        .orElseThrow(() -> new AssertionError(heading + " / " + label + " in " + bench));
  }

  @Test
  void aPartShowsItsOwnAndWhereItHangs() {
    Bench bench = bench("part:pan");
    assertThat(bench.subject()).isEqualTo("part:pan");
    assertThat(bench.title()).isEqualTo("pan");
    assertThat(bench.kind()).isEqualTo("cushion");
    assertThat(bench.groups())
        .extracting(Bench.Group::heading)
        .containsExactly(
            "its own", "where it hangs", "as built", "measures it rests on", "more to say");
    Bench.Row layer = row(bench, "its own", "layer 2 thickness");
    assertThat(layer.text()).isEqualTo("40 mm");
    assertThat(layer.value()).as("it says that itself").isEmpty();
    assertThat(layer.target().path()).containsExactly("parts", "pan", "layers", "1", "thickness");
    assertThat(layer.target().name()).isEqualTo("pan layer 2 thickness");
    assertThat(row(bench, "its own", "layer 1 support factor").text()).isEqualTo("2.4");
    Bench.Row z = row(bench, "where it hangs", "panFront z");
    assertThat(z.text()).isEqualTo("boardTop + 40 mm");
    assertThat(z.value()).isEqualTo("470 mm");
    assertThat(z.target()).isEqualTo(new Target.OfPin("panFront", false));
    assertThat(row(bench, "where it hangs", "panRear x").value()).isEqualTo("330 mm");
    assertThat(row(bench, "measures it rests on", "boardTop").text()).isEqualTo("430 mm");
    assertThat(bench("part:engine").note()).isEqualTo("measured with a tape");
    // no measure behind it, so no such group
    assertThat(bench("part:tank").groups())
        .extracting(Bench.Group::heading)
        .containsExactly("its own", "where it hangs", "as built", "more to say");
  }

  /**
   * What names no measure is read in inches, on every ticket; formulas stay as they are written.
   */
  @Test
  void noPlainQuantityStaysInMillimetresWhereInchesAreShown() {
    Layout heron = Demos.layout("heron").withUnits(Units.IN);
    Places at = Shipped.study("heron").placed().places();
    int seen = 0;
    for (String group : List.of("parts", "crew", "pins")) {
      for (String name : Entries.of(heron, group).keySet()) {
        Bench bench = OnBench.of(heron, at, Subjects.of(new Entries.Entry(group, name)));
        for (Bench.Row row : bench.groups().stream().flatMap(g -> g.rows().stream()).toList()) {
          if (row.input() == Form.Input.QUANTITY
              && !row.text().isEmpty()
              && Formula.parse(row.text()).names().isEmpty()) {
            seen++;
            assertThat(row.text()).as(name + " " + row.label()).doesNotContainPattern("mm|kg");
          } else if (row.input() == Form.Input.QUANTITY && !row.text().isEmpty()) {
            assertThat(row.value()).as(name + " " + row.label()).isNotEmpty();
          }
        }
      }
    }
    assertThat(seen).isGreaterThan(500);
  }

  @Test
  void aPinShowsBothEndsOfALimitAndTheTiesOnIt() {
    Bench bench = bench("pin:backTop");
    assertThat(bench.kind()).isEqualTo("pin");
    assertThat(bench("pin:crank").kind()).isEqualTo("pin, nailed");
    assertThat(row(bench, "place", "x").value()).isEqualTo("60 mm");
    assertThat(row(bench, "place", "z").value()).isEqualTo("940 mm");
    assertThat(row(bench, "limits", "backLean from").text()).isEqualTo("15 deg");
    assertThat(row(bench, "limits", "backLean to").text()).isEqualTo("60 deg");
    assertThat(row(bench, "limits", "backLean to").note()).isEqualTo("rake: backLow, backTop");
    assertThat(row(bench, "limits", "backLean to").target())
        .isEqualTo(new Target.OfLimit("backLean", false));
    Bench.Row tie = row(bench, "ties", "backLong");
    assertThat(tie.note()).isEqualTo("distance: backLow, backTop");
    assertThat(
            bench.groups().stream()
                .filter(g -> g.heading().equals("ties"))
                .findFirst()
                .get()
                .rows())
        .hasSize(1);
    Bench rear = bench("pin:rearAxle");
    assertThat(row(rear, "ties", "baseline").value()).isEqualTo("1640 mm");
    assertThat(row(rear, "ties", "panPlace").value()).isEmpty();
    assertThat(rear.groups()).extracting(Bench.Group::heading).doesNotContain("limits");
  }

  @Test
  void aTieWithoutAQuantityAndNotesAreShown() {
    Layout more =
        layout.withTie(
            "joined",
            new Tie(
                TieKind.TOGETHER,
                List.of("lowA", "backLow"),
                Optional.empty(),
                List.of(),
                "",
                0,
                false,
                "by a bolt"));
    Bench.Row row = row(OnBench.of(more, places, "pin:lowA"), "ties", "joined");
    assertThat(row.text()).isEmpty();
    assertThat(row.value()).isEmpty();
    assertThat(row.note()).isEqualTo("together: lowA, backLow; by a bolt");
  }

  @Test
  void aPersonShowsBodyAndSex() {
    Bench bench = bench("person:Mara");
    assertThat(bench.title()).isEqualTo("Mara");
    assertThat(bench.kind()).isEqualTo("crew, " + layout.crew().get("Mara").sex());
    assertThat(row(bench, "body", "stature").text()).isEqualTo("1620 mm");
    assertThat(row(bench, "body", "mass").text()).isEqualTo("61 kg");
    assertThat(row(bench, "body", "mass").target()).isEqualTo(new Target.OfPerson("Mara", false));
  }

  @Test
  void aMeasureShowsItsRangeItsNoteAndWhatItIsWorth() {
    Bench bench = bench("");
    assertThat(bench.title()).isEqualTo("wren");
    assertThat(bench.kind()).isEqualTo("the whole machine");
    Bench.Row reach = row(bench, "measures", "pegReach");
    assertThat(reach.note()).isEqualTo("from 700 mm to 900 mm; pan to pegs");
    assertThat(reach.free()).isTrue();
    assertThat(reach.measure()).isTrue();
    assertThat(reach.value()).as("what the solver finds is said").isEqualTo("820 mm");
    Bench.Row span = row(bench, "measures", "panSpan");
    assertThat(span.value()).isEqualTo("398 mm");
    assertThat(span.note()).isEqualTo("measured level");
    assertThat(span.free()).isFalse();
    Bench.Row plain = row(bench, "measures", "wheelbase");
    assertThat(plain.value()).isEmpty();
    assertThat(plain.note()).isEmpty();
    assertThat(plain.target().path()).containsExactly("measures", "wheelbase", "is");
    for (String gone : List.of("part:gone", "pin:gone", "person:gone", "gone", "other:pan")) {
      assertThat(bench(gone)).isEqualTo(bench);
    }
  }

  @ParameterizedTest(name = "{0} {1} is {2}")
  @CsvSource({
    "1640.04, mm, 1640 mm", "1640.06, mm, 1640.1 mm", "-12.34, mm, -12.3 mm", "100, mm, 100 mm",
    "0.5, number, 0.5", "0.1236, number, 0.124", "10, number, 10", "-0.0001, number, 0"
  })
  void figures(double value, String unit, String text) {
    assertThat(Bench.figure(value, unit.equals("mm") ? Dim.LENGTH : Dim.NUMBER, Units.MM))
        .isEqualTo(text);
  }

  @Test
  void figuresOfAnglesHaveTwoDigits() {
    assertThat(Bench.figure(Math.toRadians(12.345678), Dim.ANGLE, Units.MM)).isEqualTo("12.35 deg");
    assertThat(Bench.figure(Math.toRadians(90), Dim.ANGLE, Units.MM)).isEqualTo("90 deg");
  }

  @Test
  void targetsSayWhereTheyStand() {
    assertThat(new Target.OfPin("a", true).path()).containsExactly("pins", "a", "at", "0");
    assertThat(new Target.OfPin("a", false).path()).containsExactly("pins", "a", "at", "1");
    assertThat(new Target.OfPin("a", true).name()).isEqualTo("a x");
    assertThat(new Target.OfPin("a", false).name()).isEqualTo("a z");
    assertThat(new Target.OfTie("t").path()).containsExactly("ties", "t", "is");
    assertThat(new Target.OfTie("t").name()).isEqualTo("tie t");
    assertThat(new Target.OfLimit("l", true).path()).containsExactly("limits", "l", "from");
    assertThat(new Target.OfLimit("l", false).path()).containsExactly("limits", "l", "to");
    assertThat(new Target.OfLimit("l", true).name()).isEqualTo("limit l from");
    assertThat(new Target.OfLimit("l", false).name()).isEqualTo("limit l to");
    assertThat(new Target.OfPerson("P", true).path()).containsExactly("crew", "P", "stature");
    assertThat(new Target.OfPerson("P", false).path()).containsExactly("crew", "P", "mass");
    assertThat(new Target.OfPerson("P", true).name()).isEqualTo("P stature");
    assertThat(new Target.OfPerson("P", false).name()).isEqualTo("P mass");
    assertThat(new Target.OfMeasure("m").name()).isEqualTo("m");
  }

  @Test
  void fieldsOfAPartHavePlainLabels() {
    // the outline is drawn, not typed
    assertThat(labels("engine", "its own")).containsExactlyInAnyOrder("left", "right", "mass");
    assertThat(labels("engine", "more to say"))
        .contains("origin", "material", "steered", "hot", "note")
        .contains("profile shape", "another profile point", "another body", "another station")
        .noneMatch(label -> label.contains("vertex") || label.matches("(another )?point.*"));
    assertThat(labels("back", "its own"))
        .contains("board", "layer 1 thickness", "layer 1 density")
        .doesNotContain("layer 2 thickness", "layer 0 thickness");
  }

  private List<String> labels(String part, String heading) {
    return bench("part:" + part).groups().stream()
        .filter(g -> g.heading().equals(heading))
        .flatMap(g -> g.rows().stream())
        .map(Bench.Row::label)
        .toList();
  }

  /** What is not said yet, a choice and a switch are filled in like a quantity. */
  @Test
  void whateverCanBeSaidCanBeTypedAndClearedAgain() {
    Bench.Row axle = row(bench("part:rearWheel"), "more to say", "axle");
    assertThat(axle.input()).isEqualTo(Form.Input.CHOICE);
    assertThat(axle.choices()).containsExactlyElementsOf(layout.pins().keySet());
    Bench.Row tyre = row(bench("part:rearWheel"), "more to say", "tyre");
    assertThat(tyre.text()).isEmpty();
    Layout typed = Edits.set(tyre.target(), "140/70-17").applied(layout);
    assertThat(row(OnBench.of(typed, places, "part:rearWheel"), "more to say", "tyre").text())
        .isEqualTo("140/70-17");
    Edit clear = Edits.set(tyre.target(), " ");
    assertThat(clear.name()).isEqualTo("clear rearWheel tyre");
    assertThat(clear.applied(typed)).isEqualTo(layout);
    Bench.Row crown = row(bench("part:rearWheel"), "its own", "crown");
    Layout without = Edits.set(crown.target(), "").applied(layout);
    assertThat(row(OnBench.of(without, places, "part:rearWheel"), "more to say", "crown").text())
        .isEmpty();
    assertThat(Edits.set(crown.target(), crown.text()).applied(without)).isEqualTo(layout);
    Bench.Row helmet = row(bench("person:Mara"), "more to say", "helmet");
    assertThat(helmet.input()).isEqualTo(Form.Input.SWITCH);
    Layout bare = Edits.set(helmet.target(), "false").applied(layout);
    assertThat(bare.crew().get("Mara").helmet()).isFalse();
    assertThat(row(bench("pin:backTop"), "more to say", "with").choices())
        .contains("frame", "front-wheel", "rear-wheel");
  }

  /** backLength is said by another measure here: that one is shown behind it. */
  @Test
  void measuresBehindTheMeasuresOfATieAreShown() {
    Layout more =
        Edits.set(new Target.OfMeasure("backLength"), "panLength + 120 mm").applied(layout);
    Bench bench = OnBench.of(more, BenchTest.drawn(more), "pin:backTop");
    assertThat(row(bench, "ties", "backLong").value()).isEqualTo("520 mm");
    assertThat(row(bench, "measures it rests on", "backLength").value()).isEqualTo("520 mm");
    assertThat(row(bench, "measures it rests on", "panLength").text()).isEqualTo("400 mm");
    assertThat(bench.groups().get(bench.groups().size() - 2).rows()).hasSize(2);
  }

  @Test
  void aRangeWithoutANoteStandsAlone() {
    Layout plain = changed("\"to\": \"900 mm\", \"note\": \"pan to pegs\"", "\"to\": \"900 mm\"");
    assertThat(row(OnBench.of(plain, places, ""), "measures", "pegReach").note())
        .isEqualTo("from 700 mm to 900 mm");
  }

  @Test
  void theAngleOfAFrameCanBeTyped() {
    Layout turned =
        changed(
            "\"frame\": \"tankPin\"", "\"frame\": {\"origin\": \"tankPin\", \"angle\": \"5 deg\"}");
    assertThat(OnBench.of(turned, places, "part:tank").groups().get(0).rows())
        .filteredOn(r -> r.target().path().equals(List.of("parts", "tank", "frame", "angle")))
        .singleElement()
        .satisfies(r -> assertThat(r.text()).isEqualTo("5 deg"));
  }

  private static Layout changed(String piece, String other) {
    assertThat(Wren.text()).contains(piece);
    return ((ReadResult.Read) LayoutReader.read(Wren.text().replace(piece, other), null)).layout();
  }

  /** A tie is named by its pins and its kind, and numbered where that name is taken. */
  @Test
  void tiesGetAFreeName() {
    Edit edit =
        Edits.tie(TieKind.ANGLE_BETWEEN, List.of("lowA", "lowB", "crank", "pegPin"), "9 deg");
    assertThat(edit.name()).isEqualTo("tie lowA and lowB and crank and pegPin");
    Layout one = edit.applied(layout);
    assertThat(one.ties().get("lowALowBCrankPegPinAngleBetween").is().orElseThrow().text())
        .isEqualTo("9 deg");
    Layout two = edit.applied(one);
    assertThat(two.ties()).containsKey("lowALowBCrankPegPinAngleBetween2");
    assertThat(edit.applied(two).ties()).containsKey("lowALowBCrankPegPinAngleBetween3");
    Layout same = Edits.tie(TieKind.TOGETHER, List.of("lowA", "crank"), "").applied(layout);
    assertThat(same.ties().get("lowACrankTogether").is()).isEmpty();
    Layout less = Edits.untie("backLong").applied(layout);
    assertThat(less.ties()).hasSize(layout.ties().size() - 1).doesNotContainKey("backLong");
    assertThat(Edits.untie("backLong").name()).isEqualTo("let go of tie backLong");
  }

  @Test
  void editsAreNamedAfterWhatTheyDo() {
    assertThat(Edits.free("rake", true).name()).isEqualTo("free rake");
    assertThat(Edits.free("rake", false).name()).isEqualTo("hold rake");
    assertThat(Edits.nail("crank", true).name()).isEqualTo("nail crank");
    assertThat(Edits.nail("crank", false).name()).isEqualTo("loosen crank");
    assertThat(Edits.nail("crank", false).applied(layout).pins().get("crank").nailed()).isFalse();
    assertThat(Edits.set(new Target.OfPin("crank", false), " 9 mm ").name())
        .isEqualTo("set crank z to 9 mm");
    Layout higher = Edits.set(new Target.OfPin("crank", false), "9 mm").applied(layout);
    assertThat(higher.pins().get("crank").z().text()).isEqualTo("9 mm");
    assertThat(higher.pins().get("crank").x().text()).isEqualTo("860 mm");
  }
}
