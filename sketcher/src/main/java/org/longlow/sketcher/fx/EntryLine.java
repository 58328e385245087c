package org.longlow.sketcher.fx;

import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Bench;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.OnBench;
import org.longlow.sketcher.edit.Target;

/** The name of what lies on the bench, to be typed over, and the button that takes it out. */
final class EntryLine extends VBox {

  private final Desk desk;
  private final TextField name = new TextField();
  private final Label trouble = Bits.wrapped("", "trouble");
  private Bench bench;
  private String renamed = "";
  private String becoming = "";

  EntryLine(Desk desk) {
    this.desk = desk;
    Called.by(name, "entry-name");
    name.setAccessibleText("name; type another to rename it everywhere");
    Bits.told(name, "type another name: all that refers to it follows");
    HBox.setHgrow(name, Priority.ALWAYS);
    name.setOnAction(e -> rename());
    name.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            name.setText(bench.title());
            desk.forgetTrouble();
            e.consume();
          }
        });
    name.focusedProperty()
        .addListener(
            (o, was, is) -> {
              if (!is && bench != null && !isRefused()) {
                rename();
              }
            });
    Called.by(trouble, "trouble-entry");
    HBox line =
        Bits.line(
            name,
            Bits.words(
                "take-out", "take out", "take it out of the machine", new Handling(desk)::takeOut));
    Bits.keyed((Button) line.getChildren().get(1), "Delete");
    getChildren().addAll(line, trouble);
  }

  private Optional<Entries.Entry> entry() {
    return bench == null ? Optional.empty() : bench.entry();
  }

  private void rename() {
    String to = name.getText().strip();
    entry()
        .filter(e -> !to.equals(e.name()))
        .ifPresent(
            e -> {
              renamed = bench.subject();
              becoming = renamed.replaceFirst(":.*", ":") + to;
              desk.edit(Edits.rename(e, to), new Target.OfEntry(e), to);
              desk.inTurn(() -> becoming = desk.trouble().isPresent() ? "" : becoming);
            });
  }

  private boolean isRefused() {
    return desk.trouble().isPresent() && isAbout(desk.trouble().get().target());
  }

  boolean isAbout(Target target) {
    return entry().map(e -> target.equals(new Target.OfEntry(e))).orElse(false);
  }

  /** Shows the bench as it is now; a name that is being typed is left alone. */
  void show(Bench now, Layout layout) {
    if (!desk.options().chosen().equals(renamed)) {
      becoming = ""; // something else was picked since
    }
    if (!becoming.isEmpty() && now.entry().isEmpty() && !OnBench.isWhole(layout, becoming)) {
      String subject = becoming;
      becoming = "";
      Platform.runLater(() -> desk.choose(subject));
      return;
    }
    boolean another = bench == null || !bench.subject().equals(now.subject());
    bench = now;
    boolean refused = isRefused();
    if (another || !name.isFocused() && !refused) {
      name.setText(now.title());
    }
    trouble.setText(refused ? desk.trouble().get().refused().words() : "");
    trouble.setVisible(refused);
    trouble.setManaged(refused);
    boolean there = now.entry().isPresent();
    setVisible(there);
    setManaged(there);
  }
}
