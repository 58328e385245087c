package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.scene.control.Button;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;

/** Opens the cushion picked from the side, beside the machine, and puts it away. */
final class CushionBench extends VBox {

  private static final String TOPIC = "cushion-bench";

  private final Desk desk;
  private final Card card;
  private final CushionPane pane;
  private final Ticket ticket;
  private final Button open =
      Bits.words("cushion-open", "Cushion bench", "open the cushion from the side", this::open);
  private boolean isOpen;

  CushionBench(Desk desk, Card card) {
    this.desk = desk;
    this.card = card;
    pane = new CushionPane(desk);
    ticket = new Ticket("cushion", pane.head(), scrolled(pane), card::requestLayout, this::close);
    Bits.told(open, "layers, sink and verdict of each person, key B");
    getChildren().add(open);
    desk.watch(this::refresh);
    refresh();
  }

  /** As high as its ticket, and where letters are too large for that, as high as it needs. */
  private static ScrollPane scrolled(CushionPane pane) {
    ScrollPane scroll = new ScrollPane(pane);
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.getStyleClass().add("slip-scroll");
    scroll.setFocusTraversable(false);
    scroll.setMinHeight(0);
    scroll
        .viewportBoundsProperty()
        .addListener((o, was, is) -> Platform.runLater(() -> pane.seen(is.getHeight())));
    return scroll;
  }

  /** What is on the bench, for who looks at it. */
  CushionPane pane() {
    return pane;
  }

  void use(Look look) {
    pane.use(look);
  }

  private Optional<String> picked() {
    String chosen = desk.options().chosen();
    return chosen.startsWith("part:")
        ? desk.shown()
            .map(s -> s.layout().parts().get(chosen.substring("part:".length())))
            .filter(CushionPart.class::isInstance)
            .map(p -> p.name())
        : Optional.empty();
  }

  /** Opens the cushion picked. */
  void open() {
    if (desk.shown().isEmpty()) {
      return;
    }
    if (picked().isEmpty()) {
      desk.say(Notice.Mood.CARE, TOPIC, "Pick a pan, back or head rest first, then press B.");
      return;
    }
    desk.dropNotice(TOPIC);
    isOpen = true;
    card.layBeside(ticket, this::closeOne, this::close);
    ticket.applyCss(); // what scrolls is on no card, and can have no keyboard, before it has a skin
    pane.lay(picked().get());
  }

  /** Escape puts back what is being typed, then lets go of what is only shown, then closes. */
  private boolean closeOne() {
    if (pane.isTyping()) {
      return false;
    }
    if (!pane.letGo()) {
      close();
    }
    return true;
  }

  private void close() {
    isOpen = false;
    pane.letGo();
    card.takeBeside();
  }

  private void refresh() {
    boolean has = picked().isPresent() && !isOpen;
    setVisible(has);
    setManaged(has);
    if (!isOpen) {
      return;
    }
    if (picked().filter(c -> !c.equals(pane.cushion())).isPresent()) {
      pane.letGo();
      pane.lay(picked().get());
    } else if (!pane.refresh()) {
      close();
    }
  }

  /** Returns what can be done, for the list of keys. */
  List<Deed> deeds() {
    return List.of(
        new Deed("cushion bench: open the cushion picked from the side", "B", this::open));
  }
}
