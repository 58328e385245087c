package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import javafx.event.EventHandler;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Completion;

/**
 * Names offered under a field while a formula is typed: arrows choose, Enter or Tab puts in, Escape
 * puts them away. The keyboard stays in the field.
 */
final class NameHelp extends VBox {

  private final TextField field;
  private final BiFunction<String, Integer, Optional<Completion>> at;
  private final EventHandler<KeyEvent> keys = this::key;
  private Scene scene;
  private Completion offered;
  private int picked;
  private boolean putting;

  private NameHelp(TextField field, BiFunction<String, Integer, Optional<Completion>> at) {
    this.field = field;
    this.at = at;
    Called.by(this, "name-help");
    getStyleClass().add("name-help");
    setManaged(false);
    field.textProperty().addListener((o, was, is) -> typed());
    field.caretPositionProperty().addListener((o, was, is) -> moved(is.intValue()));
    field
        .focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is) {
                close();
              }
            });
  }

  /** Lets a field for formulas offer the names of the machine on the desk. */
  static void on(TextField field, Desk desk) {
    new NameHelp(
        field,
        (text, caret) ->
            desk.shown()
                .flatMap(s -> Completion.at(s.layout(), s.study().placed().places(), text, caret)));
  }

  /** The caret follows the text; where it is then is known a little later. */
  private void typed() {
    if (field.isFocused() && !putting) {
      javafx.application.Platform.runLater(this::offer);
    }
  }

  private void moved(int caret) {
    if (offered != null && (caret < offered.from() || caret > offered.to() + 1)) {
      close();
    }
  }

  private void offer() {
    String text = field.getText();
    int caret = Math.min(field.getCaretPosition(), text.length());
    Optional<Completion> now =
        field.isFocused() && field.getSelection().getLength() == 0
            ? at.apply(text, caret)
            : Optional.empty();
    if (now.isEmpty()) {
      close();
    } else if (!now.get().equals(offered)) {
      offered = now.get();
      picked = 0;
      open();
    }
  }

  private void open() {
    getChildren().clear();
    for (Completion.Name name : offered.names()) {
      Label says = Bits.label(name.says(), "found-kind");
      says.setMinWidth(USE_PREF_SIZE);
      HBox line = new HBox(12, Bits.label(name.text(), "found-name"), Bits.gap(), says);
      line.getStyleClass().add("name-line");
      line.setOnMousePressed(
          e -> {
            if (e.getButton() == MouseButton.PRIMARY) {
              put(name);
            }
            e.consume();
          });
      getChildren().add(line);
    }
    mark();
    if (scene == null) {
      scene = field.getScene();
      scene.addEventFilter(KeyEvent.KEY_PRESSED, keys);
      ((Pane) scene.getRoot()).getChildren().add(this);
    }
    applyCss();
    lay();
  }

  /** Under the field, or over it where there is no room. */
  private void lay() {
    Pane root = (Pane) scene.getRoot();
    double high = prefHeight(-1);
    double wide = Math.min(root.getWidth(), Math.max(field.getWidth(), prefWidth(-1)));
    Bounds box = field.localToScene(field.getBoundsInLocal());
    Point2D under = root.sceneToLocal(box.getMinX(), box.getMaxY());
    boolean fits = under.getY() + high <= root.getHeight();
    double y = fits ? under.getY() : under.getY() - box.getHeight() - high;
    double x = Math.max(0, Math.min(under.getX(), root.getWidth() - wide));
    resizeRelocate(x, Math.max(0, y), wide, high);
  }

  private void mark() {
    for (int i = 0; i < getChildren().size(); i++) {
      getChildren()
          .get(i)
          .pseudoClassStateChanged(javafx.css.PseudoClass.getPseudoClass("picked"), i == picked);
    }
    field.setAccessibleHelp("offered: " + offered.names().get(picked).text());
  }

  private void close() {
    if (scene != null) {
      scene.removeEventFilter(KeyEvent.KEY_PRESSED, keys);
      ((Pane) scene.getRoot()).getChildren().remove(this);
      scene = null;
    }
    offered = null;
    field.setAccessibleHelp(Tip.of(field));
  }

  private void key(KeyEvent e) {
    List<Completion.Name> names = offered.names();
    switch (e.getCode()) {
      case DOWN -> picked = Math.floorMod(picked + 1, names.size());
      case UP -> picked = Math.floorMod(picked - 1, names.size());
      case ENTER, TAB -> {
        put(names.get(picked));
        e.consume();
        return;
      }
      case ESCAPE -> {
        close();
        e.consume();
        return;
      }
      default -> {
        return;
      }
    }
    mark();
    e.consume();
  }

  private void put(Completion.Name name) {
    Completion now = offered;
    putting = true;
    field.setText(now.taken(field.getText(), name));
    field.positionCaret(now.caret(name));
    putting = false;
    close();
  }
}
