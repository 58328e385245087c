package org.longlow.sketcher.fx;

import java.util.List;
import java.util.function.Consumer;
import org.longlow.sketcher.desk.Desk;

/** Begins to measure, and ends it. */
final class MeasureTools {

  private final Desk desk;
  private final Board board;
  private final BoardHands hands;
  private final Consumer<Boolean> aside;

  /**
   * @param aside takes off the card what lies in the way of a hand, or lays it back
   */
  MeasureTools(Desk desk, Board board, BoardHands hands, Consumer<Boolean> aside) {
    this.desk = desk;
    this.board = board;
    this.hands = hands;
    this.aside = aside;
  }

  /** Takes the hand that measures. */
  void begin() {
    if (desk.shown().isPresent()) {
      hands.take(new MeasureHand(board, desk, hands::takeNothing, () -> aside.accept(false)));
      aside.accept(true);
    }
  }

  /** Returns what can be done, for the list of keys. */
  List<Deed> deeds() {
    return List.of(new Deed("measure a length or an angle", "G", this::begin));
  }
}
