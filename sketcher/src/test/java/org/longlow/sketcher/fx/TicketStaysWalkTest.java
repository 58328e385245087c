package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Slider;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.desk.Wren;

/** The ticket keeps its place as long as that is a good one. */
@Windowed
class TicketStaysWalkTest extends Walk {

  private Bounds ticket() {
    return Hands.onFx(() -> hands.node("bench-ticket", Node.class).getBoundsInParent());
  }

  private Spots.Box box(String subject) {
    return Hands.onFx(() -> hands.window().board().boxOf(hands.desk().shown().get(), subject));
  }

  private static boolean isOver(Bounds ticket, Spots.Box box) {
    // what only touches is not hidden
    return ticket.intersects(box.x() + 1, box.y() + 1, box.width() - 2, box.height() - 2);
  }

  @Test
  @Tag("long")
  void itStaysForWhatItDoesNotHide() throws Exception {
    begin(Wren.layout());
    pick("part:engine");
    List<String> parts =
        hands.layout().parts().keySet().stream().map(name -> "part:" + name).toList();
    List<String> stayed = new ArrayList<>();
    for (String part : parts) {
      Bounds before = ticket();
      pick(part);
      Bounds now = ticket();
      assertThat(isOver(now, box(part))).as(part).isFalse();
      if (now.getMinX() == before.getMinX() && now.getMinY() == before.getMinY()) {
        stayed.add(part);
        assertThat(now.getWidth()).isEqualTo(before.getWidth());
      }
    }
    assertThat(stayed).hasSizeGreaterThan(parts.size() / 2);
  }

  /** The card is pushed until a pin lies under the ticket, and that pin is picked. */
  @Test
  void itGoesFromWhatItHides() throws Exception {
    begin(Wren.layout());
    pick("part:engine");
    for (String pin : List.of("backTop", "frontAxle")) {
      Bounds lay = ticket();
      Hands.onFx(
          () -> {
            Board board = hands.window().board();
            Spots.Box at = board.boxOf(hands.desk().shown().get(), "pin:" + pin);
            board.setFrame(
                board
                    .frame()
                    .panned(lay.getCenterX() - at.centreX(), lay.getCenterY() - at.centreY()));
            return null;
          });
      hands.settle();
      assertThat(isOver(ticket(), box("pin:" + pin))).as("under the ticket: " + pin).isTrue();
      pick("pin:" + pin);
      assertThat(isOver(ticket(), box("pin:" + pin))).as(pin).isFalse();
    }
  }

  @Test
  void slidersOfABodyWaitForTheCrew() throws Exception {
    openOn(Wren.layout());
    for (String id : List.of("stature", "mass")) {
      assertThat(((Slider) Hands.called(hands.window(), id).get()).isVisible()).as(id).isFalse();
    }
    hands.click("machine-" + Wren.layout().name());
    for (String id : List.of("stature", "mass")) {
      assertThat(hands.node(id, Slider.class).isVisible()).as(id).isTrue();
    }
  }
}
