package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.VBox;

/** The list of keys, as a slip over the drawing. */
final class KeysPane extends VBox {

  KeysPane(Runnable close) {
    setId("keys-slip");
    getStyleClass().addAll("slip", "over");
    setMaxSize(USE_PREF_SIZE, USE_PREF_SIZE);
    GridPane grid = new GridPane();
    grid.setHgap(18);
    grid.setVgap(4);
    List<String[]> keys =
        new ArrayList<>(
            List.of(
                new String[] {"Ctrl S, Ctrl Shift S", "save, save as"},
                new String[] {"Ctrl Z, Ctrl Y", "take back, do again"},
                new String[] {"Ctrl O", "list of machines"},
                new String[] {"Ctrl M", "make templates, drawing, report"},
                new String[] {"Ctrl 1, 2, 3", "to the bench, the drawing, the findings"},
                new String[] {"[  and  ]", "last, next stance"},
                new String[] {",  and  .", "last, next person"},
                new String[] {"D, U, L", "dimensions, rulers in mm or inches, day or night"}));
    keys.addAll(BoardHands.keys());
    for (int i = 0; i < keys.size(); i++) {
      grid.add(Bits.label(keys.get(i)[0], "key"), 0, i);
      grid.add(Bits.label(keys.get(i)[1], "bench-label"), 1, i);
    }
    getChildren()
        .addAll(
            Bits.label("KEYS", "slip-title"),
            grid,
            Bits.words("keys-away", "Put away", "put the list of keys away", close));
  }
}
