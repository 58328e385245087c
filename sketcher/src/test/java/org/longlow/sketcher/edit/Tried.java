package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.nio.file.Path;
import java.util.Map;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.desk.Wren;

/** Edits tried as the desk tries them, without looking at what is found. */
final class Tried {

  private Tried() {}

  /**
   * Returns the small machine with its pins where its ties want them, without limits and wishes.
   */
  static Layout wren() {
    Layout bare = Change.set(Change.set(Wren.layout(), Map.of(), "limits"), Map.of(), "wishes");
    return settled(Placer.place(bare));
  }

  /** Returns what an accepted edit gives, which a file of it gives as well. */
  static Layout of(Layout layout, Edit edit) {
    ReadResult checked = LayoutReader.checked(edit.applied(layout), null);
    assertThat(checked)
        .as(() -> edit.name() + ": " + ((ReadResult.Refused) checked).faults())
        .isInstanceOf(ReadResult.Read.class);
    Placed placed = Placer.place(((ReadResult.Read) checked).layout());
    assertThat(placed.holds()).as(edit.name()).isTrue();
    Layout after = settled(placed);
    ReadResult read = LayoutReader.read(LayoutWriter.toJson(after), null);
    assertThat(read).as(edit.name()).isInstanceOf(ReadResult.Read.class);
    assertThat(((ReadResult.Read) read).layout().equals(after)).as(edit.name()).isTrue();
    return after;
  }

  /** Tries an edit of a layout of which nothing but its file was solved. */
  static Trial of(Study study, Edit edit, Path folder) {
    return Trial.of(study.layout(), study, edit, folder);
  }

  /** Returns why an edit cannot be applied, which is what its refusal says. */
  static String refusal(Layout layout, Edit edit) {
    return catchThrowableOfType(OutOfRange.class, () -> edit.applied(layout)).getMessage();
  }

  /** Pins where the solver put them. */
  private static Layout settled(Placed placed) {
    return placed.holds() ? placed.problem().withPlaces(placed.report().x()) : placed.layout();
  }
}
