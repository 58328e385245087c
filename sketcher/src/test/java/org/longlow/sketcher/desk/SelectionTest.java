package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.edit.Several;
import org.longlow.sketcher.edit.Target;

/** What is picked, one or several. */
class SelectionTest {

  @TempDir Path folder;

  @Test
  void oneMoreIsPickedOrLetGoAndTheLastLiesOnTheBench() {
    Selection one = Selection.of("part:tank");
    Selection two = one.toggled("pin:crank");
    assertThat(two.last()).isEqualTo("pin:crank");
    assertThat(two.toggled("pin:crank")).isEqualTo(one);
    assertThat(one.toggled("part:tank")).isEqualTo(Selection.NONE);
    assertThat(Selection.NONE.last()).isEmpty();
    assertThat(Selection.of("")).isEqualTo(Selection.NONE);
    assertThat(two.with(List.of("part:tank", "part:pan")).subjects())
        .containsExactly("part:tank", "pin:crank", "part:pan");
    assertThat(two.entries())
        .containsExactly(new Entry("parts", "tank"), new Entry("pins", "crank"));
  }

  @Test
  void pinsOfPartsArePickedWithThemAndWhatIsGoneIsNotPicked() {
    Layout wren = Wren.layout();
    Selection picked = new Selection(List.of("part:pan", "pin:crank", "part:anvil", "demands:"));
    assertThat(picked.in(wren).subjects()).containsExactly("part:pan", "pin:crank");
    assertThat(picked.allPins(wren)).containsExactlyInAnyOrder("panRear", "panFront", "crank");
  }

  @Test
  void theDeskShowsTheLastPickedAndForgetsWhatIsTakenOut() throws Exception {
    DeskHands hands = new DeskHands(folder.resolve("state"));
    try (Desk desk = hands.desk()) {
      desk.files().openCopy(Wren.layout(), Optional.empty());
      hands.until(() -> desk.shown().isPresent());
      desk.select(new Selection(List.of("part:headlamp", "part:tank")));
      assertThat(desk.options().chosen()).isEqualTo("part:tank");
      assertThat(desk.selection().parts()).containsExactly("headlamp", "tank");
      Entry lamp = new Entry("parts", "headlamp");
      desk.edit(Several.takeOut(List.of(lamp)), new Target.OfEntry(lamp), "");
      hands.until(() -> !desk.session().get().layout().parts().containsKey("headlamp"));
      assertThat(desk.selection().parts()).containsExactly("tank");
      desk.choose("pin:crank");
      assertThat(desk.selection()).isEqualTo(Selection.of("pin:crank"));
      desk.choose("");
      assertThat(desk.selection()).isEqualTo(Selection.NONE);
    }
  }
}
