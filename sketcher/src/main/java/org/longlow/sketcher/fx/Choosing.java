package org.longlow.sketcher.fx;

import java.util.function.Consumer;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.skin.ComboBoxListViewSkin;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;

/**
 * A list of choices of which one is taken by Enter, by a click or by leaving it. Arrows only look:
 * what each of them passes is neither a step nor refused.
 */
final class Choosing {

  private final ComboBox<String> box;
  private final Consumer<String> take;
  private String now = "";

  /** Whether what closed the list meant what is picked in it. */
  private boolean meant;

  /**
   * @param take told once of a choice other than what is said
   */
  Choosing(ComboBox<String> box, Consumer<String> take) {
    this.box = box;
    this.take = take;
    box.skinProperty()
        .addListener(
            (o, was, skin) -> {
              if (skin instanceof ComboBoxListViewSkin<?> list) {
                listen(list.getPopupContent());
              }
            });
    box.setOnShowing(e -> meant = false);
    // the list closes itself before it is known here what closed it
    box.setOnHidden(
        e ->
            Platform.runLater(
                () -> {
                  if (meant) {
                    take();
                  }
                }));
    box.addEventFilter(KeyEvent.KEY_PRESSED, this::key);
    box.focusedProperty()
        .addListener(
            (o, was, is) -> {
              // a list that was taken away is not one that somebody left
              if (!is && !box.isShowing() && box.getScene() != null) {
                take();
              }
            });
  }

  private void listen(Node list) {
    list.addEventFilter(MouseEvent.MOUSE_PRESSED, e -> meant = true);
    list.addEventFilter(KeyEvent.KEY_PRESSED, this::keyOfList);
  }

  private void keyOfList(KeyEvent e) {
    if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.ESCAPE) {
      meant = e.getCode() == KeyCode.ENTER;
    }
  }

  private void key(KeyEvent e) {
    if (box.isShowing()) {
      keyOfList(e);
    } else if (isPending() && e.getCode() == KeyCode.ENTER) {
      take();
      e.consume();
    } else if (isPending() && e.getCode() == KeyCode.ESCAPE) {
      putBack();
      e.consume();
    }
  }

  private boolean isPending() {
    return box.getValue() != null && !box.getValue().equals(now);
  }

  private void take() {
    if (isPending()) {
      String chosen = box.getValue();
      take.accept(chosen);
    }
  }

  private void putBack() {
    box.setValue(now.isEmpty() ? null : now);
  }

  /**
   * Shows what is said; while somebody looks through the list that stays as it is.
   *
   * @param said empty for nothing
   */
  void show(String said) {
    boolean other = !said.equals(now);
    now = said;
    if (other || !box.isFocused() && !box.isShowing()) {
      putBack();
    }
  }
}
