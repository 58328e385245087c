package org.longlow.sketcher.fx;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Selection;
import org.longlow.sketcher.edit.Several;

/** What is picked besides what lies on the bench, and what can be done with all of it. */
final class SeveralLine extends VBox {

  private final Desk desk;
  private final Handling handling;
  private final Label picked = Bits.wrapped("", "bench-note");
  private final Button nail;
  private final FlowPane buttons = new FlowPane(6, 4);

  SeveralLine(Desk desk) {
    super(4);
    this.desk = desk;
    handling = new Handling(desk);
    Called.by(this, "several");
    Called.by(picked, "picked");
    nail = Bits.words("nail-all", "", "nail every pin of it, or loosen them", handling::nail);
    Button more = Bits.words("copy", "one more", "lay one more beside it", handling::copy);
    Button turn =
        Bits.words("turn-round", "turn round", "turn it round, front to rear", handling::turnRound);
    Button other =
        Bits.words("other-side", "other side", "bring it to the other side", handling::otherSide);
    Bits.keyed(more, "C");
    Bits.keyed(turn, "T");
    Bits.keyed(other, "O");
    Bits.keyed(nail, "K");
    buttons.getChildren().addAll(more, turn, other, nail);
    getChildren().addAll(picked, buttons);
  }

  /** Shows what is picked now. */
  void refresh() {
    Selection now = desk.selection();
    boolean several = now.subjects().size() > 1;
    picked.setText(
        several
            ? "picked: "
                + Several.called(
                    now.subjects().stream().map(s -> s.substring(s.indexOf(':') + 1)).toList())
            : "");
    show(picked, several);
    show(buttons, !now.parts().isEmpty());
    nail.setText(handling.isNailed() ? "loosen" : "nail");
    setVisible(several || !now.parts().isEmpty());
    setManaged(isVisible());
  }

  private static void show(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }
}
