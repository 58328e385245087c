package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.document.ShownQuantity;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.TieKind;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Bench;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** Ties the picked pin to another one; the value offered is what is there now. */
final class TieMaker extends VBox {

  private static final List<TieKind> KINDS =
      Stream.of(TieKind.values()).filter(k -> k.between().isPresent()).toList();

  private static final String NEW = "new tie";

  private final Desk desk;
  private final ComboBox<String> kind = new ComboBox<>();
  private final ComboBox<String> other = new ComboBox<>();
  private final TextField value = new TextField();
  private final Label trouble = Bits.wrapped("", "trouble");
  private String pin = "";
  private BoardState shown;

  TieMaker(Desk desk) {
    super(4);
    this.desk = desk;
    Called.by(this, "tie-maker");
    Called.by(kind, "tie-kind");
    Called.by(other, "tie-other");
    Called.by(value, "tie-value");
    kind.setAccessibleText("kind of the new tie");
    other.setAccessibleText("pin to tie to");
    value.setAccessibleText("what the new tie is held to");
    KINDS.forEach(k -> kind.getItems().add(k.word()));
    kind.getSelectionModel().selectFirst();
    kind.setMaxWidth(Double.MAX_VALUE);
    other.setMaxWidth(Double.MAX_VALUE);
    other.setPromptText("which pin");
    kind.setOnAction(e -> measure());
    other.setOnAction(e -> measure());
    value.setOnAction(e -> tie());
    NameHelp.on(value, desk);
    HBox.setHgrow(value, Priority.ALWAYS);
    HBox.setHgrow(kind, Priority.ALWAYS);
    HBox.setHgrow(other, Priority.ALWAYS);
    kind.setMinWidth(0);
    other.setMinWidth(0);
    getChildren()
        .addAll(
            Bits.label("tie it to another pin", "bench-heading"),
            Bits.line(kind, other),
            Bits.line(value, Bits.words("tie", "tie", "add this tie", this::tie)),
            trouble);
  }

  void show(String name, BoardState now) {
    setVisible(!name.isEmpty());
    setManaged(!name.isEmpty());
    boolean fresh = !name.equals(pin);
    shown = now;
    pin = name;
    if (!name.isEmpty()) {
      offer(now.layout().pins().keySet().stream().filter(p -> !p.equals(name)).toList(), fresh);
    }
    boolean mine = desk.trouble().map(t -> t.target().equals(new Target.OfTie(NEW))).orElse(false);
    trouble.setVisible(mine);
    trouble.setManaged(mine);
    trouble.setText(mine ? desk.trouble().get().refused().words() : "");
  }

  /** Lists the pins there are; what is picked and typed stays while its pin does. */
  private void offer(List<String> pins, boolean fresh) {
    if (!fresh && other.getItems().equals(pins)) {
      return;
    }
    String picked = other.getValue();
    String typed = value.getText();
    boolean stays = !fresh && pins.contains(picked);
    other.getItems().setAll(pins);
    other.setValue(stays ? picked : null);
    value.setText(stays ? typed : "");
  }

  boolean isAbout(Target target) {
    return target.equals(new Target.OfTie(NEW));
  }

  private TieKind picked() {
    return KINDS.get(Math.max(0, kind.getSelectionModel().getSelectedIndex()));
  }

  private void measure() {
    String to = other.getValue();
    if (to == null || shown == null || pin.isEmpty()) {
      return;
    }
    PointMm d =
        shown.study().placed().places().pin(to).minus(shown.study().placed().places().pin(pin));
    double now = picked().between().orElseThrow().applyAsDouble(d.x(), d.z());
    value.setText(Bench.figure(now, picked().dim().orElseThrow(), shown.units()));
  }

  private void tie() {
    if (other.getValue() == null || value.getText().isBlank()) {
      return;
    }
    String typed =
        picked()
            .dim()
            .map(d -> ShownQuantity.typed(value.getText().strip(), d, shown.units()))
            .orElse(value.getText());
    Optional<String> fault = Formula.fault(typed.strip());
    if (fault.isPresent()) {
      trouble.setText("It " + fault.get());
      trouble.setVisible(true);
      trouble.setManaged(true);
      return;
    }
    desk.edit(
        Edits.tie(picked(), List.of(pin, other.getValue()), typed),
        new Target.OfTie(NEW),
        value.getText());
  }
}
