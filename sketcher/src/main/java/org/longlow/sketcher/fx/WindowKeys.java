package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import org.longlow.sketcher.desk.Desk;

/** What a key does, wherever in the window it is pressed. */
final class WindowKeys {

  private final Node root;
  private final Desk desk;
  private final Board board;
  private final BoardHands hands;
  private final TextSize text;
  private final Supplier<List<Deed>> everywhere;
  private final List<BooleanSupplier> closers;
  private final BooleanSupplier covered;

  /**
   * @param everywhere what can be done from anywhere in the window
   * @param closers what Escape closes, what was opened last first; the first that tells that there
   *     was something is the last that is asked
   * @param covered whether something lies over the card
   */
  WindowKeys(
      Node root,
      Desk desk,
      Board board,
      BoardHands hands,
      TextSize text,
      Supplier<List<Deed>> everywhere,
      List<BooleanSupplier> closers,
      BooleanSupplier covered) {
    this.root = root;
    this.desk = desk;
    this.board = board;
    this.hands = hands;
    this.text = text;
    this.everywhere = everywhere;
    this.closers = closers;
    this.covered = covered;
    root.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    root.addEventHandler(KeyEvent.KEY_PRESSED, this::keyOfCard);
  }

  private void key(KeyEvent e) {
    if (text.key(e) || desk.session().isPresent() && (closes(e) || does(e))) {
      e.consume();
    }
  }

  /** Escape closes what was opened last, before it lets go of what is picked. */
  private boolean closes(KeyEvent e) {
    return e.getCode() == KeyCode.ESCAPE
        && closers.stream().anyMatch(BooleanSupplier::getAsBoolean);
  }

  private boolean isTyping() {
    Node at = root.getScene().getFocusOwner();
    return at instanceof TextInputControl || at instanceof ComboBox<?> box && box.isEditable();
  }

  /** Does what a key is for; one that writes a sign is left to fields and to the hand at work. */
  private boolean does(KeyEvent e) {
    boolean taken = isTyping() || board.isFocused() && hands.hand().wants(e);
    if (taken && Keys.writes(e)) {
      return false;
    }
    Optional<Deed> meant =
        everywhere.get().stream().filter(d -> Keys.isOne(d.keys(), e)).findFirst();
    meant.ifPresent(d -> desk.onceSeen(d.run()));
    return meant.isPresent();
  }

  /** The other keys of the card are good wherever the keyboard is, if nothing there takes them. */
  private void keyOfCard(KeyEvent e) {
    boolean meant =
        desk.session().isPresent()
            && !isTyping()
            && !covered.getAsBoolean()
            && Keys.writes(e)
            && !e.isAltDown()
            && (e.getCode().isLetterKey() || e.getCode() == KeyCode.DELETE);
    if (meant && desk.isBehind()) {
      desk.onceSeen(() -> hands.hand().key(e));
      e.consume();
    } else if (meant && hands.hand().key(e)) {
      e.consume();
    }
  }
}
