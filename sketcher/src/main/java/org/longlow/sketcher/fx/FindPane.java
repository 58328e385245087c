package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import javafx.scene.control.Label;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Things;

/** Where anything is looked up by words: what the machine has, what was found, what can be done. */
final class FindPane extends VBox {

  private final Desk desk;
  private final Board board;
  private final Supplier<List<Deed>> deeds;
  private final Runnable close;
  private final TextField words = new TextField();
  private final ListView<Line> list = new ListView<>();
  private List<Things.Thing> things = List.of();
  private BoardState listed;

  /** A line of the list: a thing, or something to do. */
  private record Line(Things.Thing thing, Deed deed) {}

  /**
   * @param deeds what can be done
   * @param close puts the pane away
   */
  FindPane(Desk desk, Board board, Supplier<List<Deed>> deeds, Runnable close) {
    super(6);
    this.desk = desk;
    this.board = board;
    this.deeds = deeds;
    this.close = close;
    Called.by(this, "find-slip");
    getStyleClass().addAll("slip", "over", "find-slip");
    Called.by(words, "find-words");
    words.setPromptText("part, pin, measure, person, finding, or what to do");
    words.setAccessibleText("words to look for");
    words.textProperty().addListener((o, was, is) -> fill());
    words.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    Called.by(list, "find-list");
    list.setAccessibleText("what was found");
    list.setCellFactory(l -> new Cell());
    list.setOnMouseClicked(e -> take(list.getSelectionModel().getSelectedItem()));
    list.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ENTER) {
            take(list.getSelectionModel().getSelectedItem());
            e.consume();
          }
        });
    VBox.setVgrow(list, Priority.ALWAYS);
    getChildren().addAll(words, list);
  }

  /** Begins to look, from the words that were typed last. */
  void begin() {
    listed = null;
    fill();
    // at once, for what is typed next is meant for it; the key that opened it is held back
    words.requestFocus();
    words.selectAll();
  }

  private void key(KeyEvent e) {
    int now = list.getSelectionModel().getSelectedIndex();
    switch (e.getCode()) {
      case DOWN -> pick(now + 1);
      case UP -> pick(now - 1);
      case ENTER -> take(list.getSelectionModel().getSelectedItem());
      default -> {
        return;
      }
    }
    e.consume();
  }

  private void pick(int i) {
    if (i >= 0 && i < list.getItems().size()) {
      list.getSelectionModel().select(i);
      list.scrollTo(Math.max(0, i - 3));
    }
  }

  private void fill() {
    BoardState shown = desk.shown().orElse(null);
    if (shown == null) {
      return;
    }
    if (listed != shown) {
      listed = shown;
      things = Things.of(shown.layout(), shown.findings());
    }
    List<Line> lines = new ArrayList<>();
    Things.matching(things, words.getText()).forEach(t -> lines.add(new Line(t, null)));
    List<Line> doing =
        deeds.get().stream()
            .filter(d -> d.matches(words.getText()))
            .map(d -> new Line(null, d))
            .toList();
    // what can be done comes after the first few things, so that both are seen
    lines.addAll(words.getText().isBlank() ? lines.size() : Math.min(lines.size(), 6), doing);
    list.getItems().setAll(lines);
    pick(0);
  }

  private void take(Line line) {
    if (line == null) {
      return;
    }
    close.run();
    if (line.deed() != null) {
      line.deed().run().run();
      return;
    }
    Things.Thing thing = line.thing();
    if (thing.finding().isEmpty()) {
      desk.choose(thing.subject());
      board.centre(thing.subject());
    } else {
      desk.chooseFinding(thing.finding());
    }
  }

  private static final class Cell extends ListCell<Line> {
    Cell() {
      setPrefWidth(0);
      getStyleClass().add("found");
    }

    @Override
    protected void updateItem(Line line, boolean empty) {
      super.updateItem(line, empty);
      if (empty || line == null) {
        setGraphic(null);
        setAccessibleText(null);
        return;
      }
      boolean deed = line.deed() != null;
      Label name = Bits.label(deed ? line.deed().words() : line.thing().name(), "found-name");
      Label kind = Bits.label(deed ? line.deed().keys() : line.thing().kind(), "found-kind");
      HBox box = new HBox(10, name, kind);
      HBox.setHgrow(kind, Priority.ALWAYS);
      kind.setMinWidth(0);
      kind.setPrefWidth(0);
      kind.setMaxWidth(Double.MAX_VALUE); // it takes what the name leaves
      setGraphic(box);
      setAccessibleText(name.getText() + ", " + kind.getText());
    }
  }
}
