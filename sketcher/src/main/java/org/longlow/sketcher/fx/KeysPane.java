package org.longlow.sketcher.fx;

import java.util.List;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The list of keys, as a slip over the drawing. */
final class KeysPane extends VBox {

  private final GridPane grid = new GridPane();

  /**
   * @param guide opens the guide
   * @param close puts the pane away
   */
  KeysPane(Runnable guide, Runnable close) {
    Called.by(this, "keys-slip");
    getStyleClass().addAll("slip", "over");
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    grid.setHgap(18);
    grid.setVgap(4);
    ScrollPane scroll = new ScrollPane(grid);
    scroll.getStyleClass().add("slip-scroll");
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    getChildren()
        .addAll(
            Bits.label("KEYS", "slip-title"),
            scroll,
            Bits.line(
                Bits.words("keys-guide", "Guide", "how to do each thing", guide),
                Bits.words("keys-away", "Put away", "put the list of keys away", close)));
  }

  /** Lists what can be done by keys. */
  void show(List<Deed> deeds) {
    grid.getChildren().clear();
    int row = 0;
    for (Deed deed : deeds) {
      if (!deed.keys().isEmpty()) {
        grid.add(Bits.label(deed.keys(), "key"), 0, row);
        grid.add(Bits.label(deed.words(), "bench-label"), 1, row++);
      }
    }
    for (String[] key : BoardHands.keys()) {
      grid.add(Bits.label(key[0], "key"), 0, row);
      grid.add(Bits.label(key[1], "bench-label"), 1, row++);
    }
  }
}
