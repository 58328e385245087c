package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.TieKind;
import org.longlow.sketcher.desk.Wren;

/** What each edit of the bench changes, what it is called, and steps taken back and done again. */
class EditsTest {

  private static final Layout WREN = Wren.layout();

  @Test
  void listsTakeOneMoreAndLetItGo() {
    Target layers = new Target.OfPart("pan", List.of("layers"), "layers");
    Edit more = Edits.more(layers, "");
    assertThat(more.name()).isEqualTo("add pan layers");
    Layout three = more.applied(WREN);
    assertThat(((CushionPart) three.parts().get("pan")).layers()).hasSize(3);
    Edit drop = Edits.drop(new Target.OfPart("pan", List.of("layers", "2"), "layer 3"));
    assertThat(drop.name()).isEqualTo("drop pan layer 3");
    assertThat(drop.applied(three)).isEqualTo(WREN);
    Target touches = new Target.OfPart("pan", List.of("touches"), "touches");
    Edit named = Edits.more(touches, "tank");
    assertThat(named.name()).isEqualTo("add tank to pan");
    assertThat(named.applied(WREN).parts().get("pan").base().touches()).containsExactly("tank");
  }

  @Test
  void aFieldThatIsAWordOfASentenceIsSaidApart() {
    Target end = new Target.OfPart("pan", List.of("to"), "to");
    assertThat(Edits.set(end, "panFront").name()).isEqualTo("set pan \u201cto\u201d to panFront");
    assertThat(Edits.set(new Target.OfLimit("room", true), "9 mm").name())
        .isEqualTo("set limit room \u201cfrom\u201d to 9 mm");
    assertThat(Edits.set(end, "").name()).isEqualTo("clear pan \u201cto\u201d");
    assertThat(Edits.set(new Target.OfPart("pan", List.of("board"), "board"), "9 mm").name())
        .isEqualTo("set pan board to 9 mm");
  }

  @Test
  void aMeasureIsFreedHeldAndBounded() {
    Layout free = Edits.free("rake", true).applied(WREN);
    assertThat(free.measures().get("rake").free()).isTrue();
    assertThat(Edits.free("rake", false).applied(free)).isEqualTo(WREN);
    Edit within = Edits.freeWithin("rake", "24 deg", "30");
    assertThat(within.name()).isEqualTo("free rake");
    Measure rake = within.applied(WREN).measures().get("rake");
    assertThat(rake.free()).isTrue();
    assertThat(rake.from().orElseThrow().evaluate(n -> 0)).isEqualTo(Math.toRadians(24));
    assertThat(rake.to().orElseThrow().text()).startsWith("30");
    Measure open = Edits.freeWithin("rake", "", "30 deg").applied(WREN).measures().get("rake");
    assertThat(open.from()).isEmpty();
    // a value typed over a free measure holds it
    Layout typed = Edits.set(new Target.OfMeasure("rake"), "26 deg").applied(free);
    assertThat(typed.measures().get("rake").free()).isFalse();
  }

  @Test
  void whatStandsInTheWayIsLetGoOf() {
    Edit tie = Edits.tie(TieKind.AHEAD, List.of("rearAxle", "panRear"), "350 mm");
    Edit instead = Edits.lettingGo(tie, new Entry("ties", "panPlace"));
    assertThat(instead.name()).isEqualTo("tie rearAxle and panRear, letting go of panPlace");
    Layout after = instead.applied(WREN);
    assertThat(after.ties())
        .containsKey("rearAxlePanRearAhead")
        .doesNotContainKey("panPlace")
        .hasSameSizeAs(WREN.ties());
  }

  @Test
  void whatNamesAThingFollowsItsNewName() {
    Edit rename = Edits.rename(new Entry("pins", "backTop"), " crest ");
    assertThat(rename.name()).isEqualTo("rename backTop to crest");
    Layout after = rename.applied(WREN);
    assertThat(after.pins()).containsKey("crest").doesNotContainKey("backTop");
    assertThat(((CushionPart) after.parts().get("back")).to()).isEqualTo("crest");
    assertThat(after.ties().get("backLong").pins()).containsExactly("backLow", "crest");
  }

  @Test
  void targetsSayWhereTheyStandAndWhatTheyAreCalled() {
    Target tank = new Target.OfEntry(new Entry("parts", "tank"));
    assertThat(tank.name()).isEqualTo("tank");
    assertThat(tank.path()).containsExactly("parts", "tank");
    assertThat(new Target.OfField(List.of("sections", "lid", "angle"), "angle").name())
        .isEqualTo("lid angle");
    assertThat(new Target.OfField(List.of("demands", "gap"), "gap").name()).isEqualTo("gap");
  }

  @Test
  void stepsAreDoneAgainInTheirOrder() {
    Layout one = Edits.nail("backTop", true).applied(WREN);
    Layout two = Edits.nail("pegPin", true).applied(one);
    History history = new History(WREN);
    history.add("one", one);
    history.add("two", two);
    assertThat(history.back()).isTrue();
    assertThat(history.back()).isTrue();
    assertThat(history.back()).isFalse();
    assertThat(history.forward()).isTrue();
    assertThat(history.layout()).isSameAs(one);
    assertThat(history.forwardName()).contains("two");
    assertThat(history.backName()).contains("one");
    assertThat(history.forward()).isTrue();
    assertThat(history.layout()).isSameAs(two);
    assertThat(history.forward()).isFalse();
  }
}
