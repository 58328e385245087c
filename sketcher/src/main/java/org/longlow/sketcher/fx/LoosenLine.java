package org.longlow.sketcher.fx;

import java.util.Optional;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Trouble;

/**
 * Under what was refused because it contradicts something: what to let go of so that it can be. An
 * offer is shown on the card while the pointer or the keyboard is on it, and taken as one step.
 */
final class LoosenLine extends VBox {

  private final Desk desk;
  private Trouble told;
  private boolean looking;

  LoosenLine(Desk desk) {
    super(3);
    this.desk = desk;
    getStyleClass().add("loosen");
    show(Optional.empty());
  }

  /** Shows what can be let go of for what was refused; nothing for nothing. */
  void show(Optional<Trouble> trouble) {
    Trouble now = trouble.filter(t -> !t.text().isEmpty()).orElse(null);
    if (now == null || !now.equals(told)) {
      told = now;
      getChildren().clear();
      if (looking) {
        looking = false;
        Platform.runLater(desk::dropPreview);
      }
      if (now != null) {
        now.refused().names().stream().flatMap(this::entry).forEach(e -> add(now, e));
      }
    }
    setVisible(!getChildren().isEmpty());
    setManaged(isVisible());
  }

  private Stream<Entry> entry(String name) {
    return desk.session().stream()
        .flatMap(
            s ->
                s.layout().ties().containsKey(name)
                    ? Stream.of(new Entry("ties", name))
                    : s.layout().limits().containsKey(name)
                        ? Stream.of(new Entry("limits", name))
                        : Stream.empty());
  }

  private void add(Trouble trouble, Entry entry) {
    String what = (entry.group().equals("ties") ? "tie " : "limit ") + entry.name();
    Edit edit = Edits.lettingGo(Edits.set(trouble.target(), trouble.text()), entry);
    Button button =
        Bits.words(
            "loosen-" + entry.name(),
            "let go of " + what,
            edit.name(),
            () -> desk.settle(edit, trouble.target()));
    button.getStyleClass().add("offer");
    button.setWrapText(true);
    button.setMinWidth(0);
    button.setMinHeight(USE_PREF_SIZE);
    button.setMaxWidth(Double.MAX_VALUE);
    button.setUserData(edit);
    button.hoverProperty().addListener((o, was, is) -> look(trouble));
    button.focusedProperty().addListener((o, was, is) -> look(trouble));
    getChildren().add(button);
  }

  /** Shows an offer while it is looked at; what is taken away while it is looked at is none. */
  private void look(Trouble about) {
    if (!about.equals(told)) {
      return;
    }
    Optional<Node> at =
        getChildren().stream()
            .filter(Node::isHover)
            .findFirst()
            .or(() -> getChildren().stream().filter(Node::isFocused).findFirst());
    looking = at.isPresent();
    at.ifPresentOrElse(n -> desk.preview((Edit) n.getUserData()), desk::dropPreview);
  }
}
