package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;

/** What a part offers to whatever is hung on it. */
class HangTest {

  private static final Layout WREN = Tried.wren();

  private static List<String> words(Layout layout, String part) {
    return Hang.offered(layout, List.of(part)).stream().map(Hang::words).toList();
  }

  @Test
  void eachPartCarriesAsItMoves() {
    assertThat(words(WREN, "rearWheel"))
        .containsExactly("rearWheel (goes up and down with the rear wheel)", "the frame");
    assertThat(words(WREN, "frontWheel"))
        .containsExactly(
            "frontWheel (goes up and down with the front wheel, turns with the bars)", "the frame");
    assertThat(words(WREN, "fork"))
        .containsExactly(
            "fork (turns with the bars)",
            "fork (goes up and down with the front wheel, turns with the bars)",
            "the frame");
    assertThat(words(WREN, "swingarm"))
        .containsExactly(
            "swingarm (goes up and down with the rear wheel)", "swingarm", "the frame");
    assertThat(words(WREN, "grips")).containsExactly("grips (turns with the bars)", "the frame");
    assertThat(words(WREN, "tank")).containsExactly("tank", "the frame");
    assertThat(words(WREN, "anvil")).containsExactly("the frame");
  }

  /** Its pivot stays on the frame, but what hangs on a lid opens with it. */
  @Test
  void whatOpensTakesAlongWhatHangsOnIt() {
    Additions.Picked hinge =
        new Additions.Picked(List.of("tankPin"), List.of("tank"), Drawn.places(WREN));
    Layout opens = Additions.section(hinge).applied(WREN);
    assertThat(opens.pins().get("tankPin").with()).isEqualTo(Pin.FRAME);
    assertThat(words(opens, "tank")).containsExactly("tank (opens with section)", "the frame");
    assertThat(words(opens, "engine")).containsExactly("engine", "the frame");
  }
}
