package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.control.Button;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.DrawnKind;

/** Points of the part picked, on its ticket and by key: begins the hands that edit and draw. */
final class OutlineTools extends VBox {

  private final Desk desk;
  private final Board board;
  private final BoardHands hands;
  private final Consumer<Boolean> aside;
  private final DrawHand.Kinds kinds;
  private String last = DrawnKind.FIRST;
  private final Button points =
      Bits.words("points", "Points", "take the points of its outline, key E", this::points);

  /**
   * @param aside takes off the card what lies in the way of a hand, or lays it back
   * @param kinds the list of what can be drawn
   */
  OutlineTools(
      Desk desk, Board board, BoardHands hands, Consumer<Boolean> aside, DrawHand.Kinds kinds) {
    this.desk = desk;
    this.board = board;
    this.hands = hands;
    this.aside = aside;
    this.kinds = kinds;
    getChildren().add(points);
    desk.watch(this::refresh);
    refresh();
  }

  private Optional<Part> part() {
    String chosen = desk.options().chosen();
    return chosen.startsWith("part:")
        ? desk.shown()
            .map(s -> s.layout().parts().get(chosen.substring("part:".length())))
            .filter(p -> p instanceof TubePart || p instanceof Part.Outlined)
        : Optional.empty();
  }

  private void refresh() {
    boolean has = desk.shown().isPresent() && part().isPresent();
    setVisible(has);
    setManaged(has);
    points.setText(part().filter(TubePart.class::isInstance).isPresent() ? "Bends" : "Points");
  }

  /** Takes the points of the part picked. */
  void points() {
    part().ifPresent(p -> take(new OutlineHand(board, desk, p.name(), this::done, this::away)));
  }

  /** Adds a point after the one picked; takes the points first where no hand has them. */
  private void addPoint() {
    if (hands.hand() instanceof OutlineHand hand) {
      hand.points().addAfter();
    } else {
      points();
    }
  }

  /** Draws a new part, of the kind drawn last unless another is picked. */
  void draw() {
    if (desk.shown().isEmpty()) {
      return;
    }
    DrawHand pen = new DrawHand(board, desk, last, kinds, this::drawn, this::away);
    take(pen);
    kinds.open(pen);
  }

  private void drawn(String name) {
    last = ((DrawHand) hands.hand()).kind();
    desk.choose("part:" + name);
    done();
  }

  private void take(Hand hand) {
    hands.take(hand);
    aside.accept(true);
  }

  private void away() {
    aside.accept(false);
  }

  private void done() {
    hands.takeNothing();
  }

  /** Returns what can be done, for the list of keys. */
  List<Deed> deeds() {
    return List.of(
        new Deed("points of the outline or bends of the tube picked", "E", this::points),
        new Deed("add a point or bend half way after the one picked", "J", this::addPoint),
        new Deed("draw a new part point by point", "P", this::draw));
  }
}
