package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Wren;

/** The keyboard stays where somebody works, whatever is built anew there or goes. */
@Windowed
class KeyboardStaysWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    begin(Wren.layout());
  }

  private boolean isWithin(String id) {
    return Hands.onFx(
        () -> {
          Node at = hands.window().getScene().getFocusOwner();
          while (at != null && !id.equals(Called.of(at))) {
            at = at.getParent();
          }
          return at != null;
        });
  }

  @Test
  void aTicketBuiltAnewKeepsTheKeyboardInItsField() {
    pick("part:headlamp");
    hands.choose("field-headlamp-at", "gripPin");
    assertThat(hands.layout().parts().get("headlamp").pins()).containsExactly("gripPin");
    assertThat(Called.of(focused())).isEqualTo("field-headlamp-at");
    pick("part:engine");
    hands.choose("more-engine-another-touch", "tank");
    assertThat(hands.layout().parts().get("engine").base().touches())
        .containsExactly("lowRail", "tank");
    assertThat(Called.of(focused())).isEqualTo("more-engine-another-touch");
    hands.click("drop-engine-touch-2");
    assertThat(isWithin("bench")).as("in the same ticket").isTrue();
    assertThat(Called.of(focused()))
        .as("what stands there now")
        .isEqualTo("more-engine-another-touch");
  }

  @Test
  @Tag("long")
  void whatGoesLeavesTheKeyboardToTheRestOfItsSlipOrToTheCard() {
    pick("part:headlamp");
    hands.click("take-out");
    assertThat(hands.layout().parts()).doesNotContainKey("headlamp");
    assertThat(Called.of(focused())).isNotEqualTo("open").isNotEmpty();
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding("gap.engine.Mara");
          return null;
        });
    hands.settle().press(KeyCode.SHORTCUT, KeyCode.DIGIT2).press(KeyCode.M);
    hands.until(
        "all offers", () -> hands.desk().mending().mends().filter(m -> !m.looking()).isPresent());
    hands.settle();
    assertThat(Called.of(focused())).isEqualTo("offer-0");
    hands.press(KeyCode.ENTER);
    assertThat(hands.find("offer-0")).isEmpty();
    assertThat(isWithin("findings")).as("the mend was taken there").isTrue();
  }

  @Test
  @Tag("long")
  void arrowsLookThroughAListAndEnterOrLeavingTakes() {
    pick("part:engine");
    Layout before = hands.layout();
    ComboBox<?> more = hands.node("more-engine-another-touch", ComboBox.class);
    Hands.onFx(
        () -> {
          more.requestFocus();
          return null;
        });
    hands.press(KeyCode.DOWN).press(KeyCode.DOWN);
    assertThat(more.getValue()).isEqualTo(more.getItems().get(1));
    assertThat(hands.layout()).as("only looked at").isSameAs(before);
    hands.press(KeyCode.ESCAPE);
    assertThat(more.getValue()).isNull();
    String second = String.valueOf(more.getItems().get(1));
    hands.press(KeyCode.DOWN).press(KeyCode.DOWN).press(KeyCode.ENTER);
    assertThat(hands.layout().parts().get("engine").base().touches())
        .containsExactly("lowRail", second);
    assertThat(Called.of(focused())).isEqualTo("more-engine-another-touch");
    hands.press(KeyCode.DOWN);
    String first = hands.node("more-engine-another-touch", ComboBox.class).getValue().toString();
    hands.press(KeyCode.TAB);
    assertThat(hands.layout().parts().get("engine").base().touches())
        .as("leaving takes, each once")
        .containsExactly("lowRail", second, first);
    // in the list that is open
    hands.click("more-engine-another-touch").press(KeyCode.DOWN).press(KeyCode.ENTER);
    assertThat(hands.layout().parts().get("engine").base().touches()).hasSize(4);
    Layout four = hands.layout();
    hands.click("more-engine-another-touch").press(KeyCode.DOWN).press(KeyCode.ESCAPE);
    assertThat(hands.layout()).isSameAs(four);
  }
}
