package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Slider;
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
    return ticket.intersects(box.x(), box.y(), box.width(), box.height());
  }

  @Test
  void itStaysForWhatItDoesNotHideAndGoesFromWhatItDoes() throws Exception {
    begin(Wren.layout());
    pick("part:engine");
    List<String> parts =
        hands.layout().parts().keySet().stream().map(name -> "part:" + name).toList();
    List<String> stayed = new ArrayList<>();
    for (String part : parts) {
      Bounds before = ticket();
      boolean over = isOver(before, box(part));
      pick(part);
      Bounds now = ticket();
      assertThat(isOver(now, box(part))).as(part).isFalse();
      boolean same = now.getMinX() == before.getMinX() && now.getMinY() == before.getMinY();
      if (over) {
        assertThat(same).as(part).isFalse();
      } else if (same) {
        stayed.add(part);
        assertThat(now.getWidth()).isEqualTo(before.getWidth());
      }
    }
    assertThat(stayed).hasSizeGreaterThan(parts.size() / 2);
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
