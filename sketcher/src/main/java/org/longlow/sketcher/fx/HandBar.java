package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Button;

/**
 * What the hand that works can do, as buttons along the upper edge of the card: all of it has a key
 * too, and the keyboard stays with the card.
 */
final class HandBar extends Strip {

  private static final double GAP_PX = 6;

  private final BoardHands hands;

  HandBar(BoardHands hands) {
    super(GAP_PX);
    this.hands = hands;
    Called.by(this, "hand-bar");
    setVisible(false);
    setManaged(false);
    setPickOnBounds(false);
    hands.onTake(this::refresh);
  }

  private void refresh() {
    setVisible(hands.works());
    List<Node> buttons = new ArrayList<>();
    if (hands.works()) {
      hands.hand().deeds().forEach(deed -> buttons.add(button(deed)));
      buttons.add(button(new Deed(hands.hand().ends(), "Escape", hands::takeNothing)));
    }
    getChildren().setAll(buttons);
    if (getParent() != null) {
      getParent().requestLayout();
    }
  }

  private static Node button(Deed deed) {
    String id = "hand-" + deed.words().replaceAll("[^A-Za-z0-9]+", "-");
    Button button = Bits.words(id, deed.words(), deed.words(), deed.run());
    button.setFocusTraversable(false);
    return Bits.keyed(button, deed.keys());
  }
}
