package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.picture.Shipped;

/** What becomes of an edit: taken with pins where they went, or refused in the user's names. */
class TrialTest {

  private static final Study WREN = Study.of(Wren.layout());

  private static Trial trial(Edit edit) {
    return Tried.of(WREN, edit, null);
  }

  private static Trial.Refused refused(Edit edit) {
    assertThat(trial(edit)).isInstanceOf(Trial.Refused.class);
    return (Trial.Refused) trial(edit);
  }

  @Test
  void anEditIsTakenWithItsPinsWhereTheTiesPutThem() {
    Trial trial = trial(Edits.set(new Target.OfMeasure("wheelbase"), "1700 mm"));
    assertThat(trial).isInstanceOf(Trial.Accepted.class);
    Trial.Accepted taken = (Trial.Accepted) trial;
    assertThat(taken.layout().measures().get("wheelbase").is().text()).isEqualTo("1700 mm");
    // 215 mm behind the axle by its tie, and written there
    assertThat(taken.layout().pins().get("headBottom").x().evaluate(n -> 0))
        .isCloseTo(1485, within(1e-6));
    assertThat(taken.study().placed().places().pin("frontAxle").x()).isCloseTo(1700, within(1e-6));
    assertThat(taken.layout().pins().get("gripPin")).isEqualTo(WREN.layout().pins().get("gripPin"));
  }

  /** Its pins are drawn to tenths, off their ties by hundredths. */
  @Test
  void whatAnEditDoesNotMoveStaysAsItIsWritten() {
    Study heron = Shipped.study("heron");
    Edit stiffer =
        new Edit("rate", l -> Change.set(l, Formula.parse("21 N/mm"), "parts", "front", "rate"));
    Trial.Accepted taken = (Trial.Accepted) Tried.of(heron, stiffer, null);
    assertThat(taken.layout().pins()).isEqualTo(heron.layout().pins());
    assertThat(taken.layout().measures()).isEqualTo(heron.layout().measures());
    Trial.Accepted moved =
        (Trial.Accepted)
            Tried.of(heron, Edits.set(new Target.OfMeasure("headHeight"), "645 mm"), null);
    assertThat(moved.layout().pins().get("headTop"))
        .isNotEqualTo(heron.layout().pins().get("headTop"));
    assertThat(moved.layout().pins().get("panFront"))
        .isEqualTo(heron.layout().pins().get("panFront"));
  }

  /** The study of the edit before was asked for with its pins where they were before that. */
  @Test
  void aSecondEditLeavesPinsWhereTheFirstPutThem() {
    Trial.Accepted first =
        (Trial.Accepted) trial(Edits.set(new Target.OfMeasure("panLength"), "380 mm"));
    // by its ties 378 mm ahead of panRear at 330 mm, the pan being 380 mm long
    assertThat(first.layout().pins().get("panFront").x().evaluate(n -> 0))
        .isCloseTo(708, within(1e-6));
    Edit steeper =
        new Edit(
            "steeper",
            layout -> {
              assertThat(layout).isSameAs(first.layout());
              return Edits.set(new Target.OfMeasure("rake"), "28 deg").applied(layout);
            });
    Trial.Accepted second = (Trial.Accepted) Trial.of(first.layout(), first.study(), steeper, null);
    assertThat(second.layout().pins().get("panFront"))
        .isEqualTo(first.layout().pins().get("panFront"));
    assertThat(second.layout().pins().get("headTop"))
        .isNotEqualTo(first.layout().pins().get("headTop"));
  }

  @Test
  void oneFaultIsSaidWithoutItsPlaceSeveralWithThem() {
    Trial.Refused one = refused(Edits.set(new Target.OfMeasure("rake"), "27 kg"));
    assertThat(one.words()).startsWith("It ").endsWith(".").doesNotContain("$.");
    assertThat(one.names()).isEmpty();
    Edit two =
        new Edit(
            "spoil",
            l ->
                Edits.set(new Target.OfPerson("Mara", true), "9 mm")
                    .applied(Edits.set(new Target.OfPerson("Tor", true), "8 mm").applied(l)));
    ReadResult.Refused read =
        (ReadResult.Refused) LayoutReader.checked(two.applied(WREN.layout()), null);
    assertThat(read.faults()).hasSizeGreaterThan(1);
    assertThat(refused(two).words().lines())
        .containsExactly(
            "Mara, stature = \"9 mm\": " + rest(read.faults().get(0)),
            "Tor, stature = \"8 mm\": " + rest(read.faults().get(1)));
  }

  private static String rest(Fault fault) {
    return fault.message() + "; " + fault.remedy();
  }

  @Test
  void faultsElsewhereAreSaidByThingAndField() {
    Trial.Refused measure = refused(Edits.set(new Target.OfMeasure("wheelbase"), "27 kg"));
    assertThat(measure.words()).contains("wheelbase: pin frontAxle, x is a mass");
    Layout layout = WREN.layout();
    assertThat(
            List.of(
                FaultWords.line(layout, new Fault("$.pins.frontAxle.at[0]", "1.7", "is wrong", "")),
                FaultWords.line(layout, new Fault("$.parts.pan.layers[0].ifd25", "", "no", "do")),
                FaultWords.line(layout, new Fault("$.parts.nothing", "", "is not there", "")),
                FaultWords.line(layout, new Fault("$.demands.lean", "9", "is odd", ""))))
        .containsExactly(
            "pin frontAxle, x = 1.7: is wrong",
            "part pan, layer 1 ifd 25: no; do",
            "the machine: is not there",
            "demands, lean = 9: is odd");
  }

  @Test
  void aContradictionNamesEachOfItsMembers() {
    // panRear is 330 mm ahead of the axle by a tie
    Trial.Refused refused =
        refused(Edits.tie(TieKind.AHEAD, List.of("rearAxle", "panRear"), "350 mm"));
    assertThat(refused.names()).containsExactlyInAnyOrder("panPlace", "rearAxlePanRearAhead");
    assertThat(refused.words().lines().toList())
        .startsWith("These cannot all hold:")
        .contains(
            "\u2022 tie panPlace: ahead rearAxle, panRear = 330 mm",
            "\u2022 tie rearAxlePanRearAhead: ahead rearAxle, panRear = 350 mm")
        .endsWith("Change or let go of one of them.");
  }

  @Test
  void aLimitThatCannotHoldIsNamedWithoutItsEnd() {
    // the back would have to lean 61 degrees
    Trial.Refused refused =
        refused(Edits.tie(TieKind.RAKE, List.of("backLow", "backTop"), "61 deg"));
    assertThat(refused.names()).contains("backLean").noneMatch(n -> n.contains("("));
    assertThat(refused.words())
        .contains("limit backLean: rake backLow, backTop from 15 deg to 60 deg");
  }

  /** One that contradicts itself may be edited, even if that does not mend it. */
  @Test
  void aLayoutThatDoesNotHoldCanBeEdited() {
    Layout broken =
        Edits.tie(TieKind.AHEAD, List.of("rearAxle", "panRear"), "350 mm").applied(WREN.layout());
    Study before = Study.of(broken);
    Trial still = Tried.of(before, Edits.nail("backTop", true), null);
    assertThat(still).isInstanceOf(Trial.Accepted.class);
    // nothing is written where the solver has no answer
    assertThat(((Trial.Accepted) still).layout())
        .isEqualTo(Edits.nail("backTop", true).applied(broken));
    Trial mended = Tried.of(before, Edits.untie("panPlace"), null);
    assertThat(((Trial.Accepted) mended).study().placed().holds()).isTrue();
    assertThat(((Trial.Accepted) mended).layout().pins().get("panRear").x().evaluate(n -> 0))
        .isCloseTo(350, within(1e-6));
  }

  @ParameterizedTest(name = "{0}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          backLean (at least) ~ backLean ~ backLean ~ limit backLean: rake backLow, backTop from 15 deg to 60 deg
          backLean (at most)  ~ backLean ~ backLean ~ limit backLean: rake backLow, backTop from 15 deg to 60 deg
          backLean (Tor)      ~ backLean ~ backLean (Tor) ~ limit backLean (Tor): rake backLow, backTop from 15 deg to 60 deg
          backLean (Tor) (at least) ~ backLean ~ backLean (Tor) ~ limit backLean (Tor): rake backLow, backTop from 15 deg to 60 deg
          panLong             ~ panLong  ~ panLong ~ tie panLong: distance panRear, panFront = panLength
          pegReach (at most)  ~ pegReach ~ pegReach ~ range of measure pegReach
          unknown             ~ unknown  ~ unknown ~ unknown
          """)
  void namesOfReportsInTheUsersWords(String name, String plain, String shown, String said) {
    assertThat(Trial.plain(WREN.layout(), name)).isEqualTo(plain);
    assertThat(Trial.shown(name)).isEqualTo(shown);
    assertThat(Trial.said(WREN.layout(), name)).isEqualTo(said);
  }

  /** Parentheses that the user wrote belong to the name. */
  @Test
  void aNameMayHaveParentheses() {
    Layout layout =
        WREN.layout()
            .withTie("seat (new)", Tie.of(TieKind.TOGETHER, List.of("panRear", "backLow"), null));
    assertThat(Trial.plain(layout, "seat (new)")).isEqualTo("seat (new)");
    assertThat(Trial.said(layout, "seat (new)"))
        .isEqualTo("tie seat (new): together panRear, backLow");
  }
}
