package org.longlow.sketcher.fx;

import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Measure;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/**
 * Asks within what range a measure may be found before it is let free, and changes nothing until it
 * is told.
 */
final class FreeLine extends VBox {

  private final Desk desk;
  private final String measure;
  private final TextField from = new TextField();
  private final TextField to = new TextField();
  private final Label trouble = Bits.wrapped("", "trouble");

  FreeLine(Desk desk, String measure) {
    super(2);
    this.desk = desk;
    this.measure = measure;
    addEventHandler(
        KeyEvent.KEY_PRESSED,
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            put(false);
            e.consume();
          }
        });
    put(false);
  }

  /** Few of a long ticket's measures are ever asked about. */
  private void fill() {
    field(from, "from", "the smallest value that the solver may find");
    field(to, "to", "the largest value that the solver may find");
    HBox line =
        new HBox(
            6,
            from,
            Bits.label("to", "bench-label"),
            to,
            Bits.words(
                "free-in-" + measure,
                "free it",
                "let the solver find it in this range",
                this::free));
    line.setAlignment(Pos.CENTER_LEFT);
    Called.by(trouble, "trouble-free-" + measure);
    getChildren()
        .addAll(Bits.wrapped("Within what range may it be found?", "bench-label"), line, trouble);
  }

  private void field(TextField field, String word, String says) {
    Called.by(field, "free-" + word + "-" + measure);
    field.setPromptText(word);
    field.setAccessibleText(says);
    field.setPrefColumnCount(6);
    field.setMinWidth(0);
    Bits.told(field, says);
    HBox.setHgrow(field, Priority.ALWAYS);
    field.setOnAction(e -> free());
    NameHelp.on(field, desk);
  }

  /** Asks, if the measure has no range yet; returns whether it had to. */
  boolean asks() {
    Optional<Measure> now = desk.session().map(s -> s.layout().measures().get(measure));
    boolean known = now.filter(m -> m.from().isPresent() || m.to().isPresent()).isPresent();
    if (!known) {
      if (getChildren().isEmpty()) {
        fill();
      }
      put(true);
      from.requestFocus();
    }
    return !known;
  }

  /** Takes the question away once it is answered or nobody wants to know. */
  void show(boolean isFree) {
    if (isFree && isVisible()) {
      put(false);
    }
  }

  private void put(boolean asked) {
    setVisible(asked);
    setManaged(asked);
    say("");
  }

  private void say(String words) {
    trouble.setText(words);
    trouble.setVisible(!words.isEmpty());
    trouble.setManaged(!words.isEmpty());
  }

  private void free() {
    String least = from.getText().strip();
    String most = to.getText().strip();
    if (least.isEmpty() && most.isEmpty()) {
      say("Give one end of the range at least, such as 1500 mm.");
      return;
    }
    say("");
    desk.edit(Edits.freeWithin(measure, least, most), new Target.OfMeasure(measure), "");
  }
}
