package org.longlow.sketcher.fx;

import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Circle;
import javafx.scene.shape.Polygon;
import javafx.scene.shape.Rectangle;
import javafx.scene.shape.Shape;
import org.longlow.constraints.check.finding.Verdict;

/** Small pieces that the views share. */
final class Bits {

  private Bits() {}

  static Label label(String text, String... styles) {
    Label label = new Label(text);
    label.getStyleClass().addAll(styles);
    return label;
  }

  /** What gives way to it in a narrow line is what can: its words are not cut short. */
  static <T extends Region> T whole(T words) {
    words.setMinWidth(Region.USE_PREF_SIZE);
    return words;
  }

  static Label wrapped(String text, String... styles) {
    Label label = label(unbroken(text), styles);
    label.setWrapText(true);
    label.setMinHeight(Region.USE_PREF_SIZE);
    return label;
  }

  /** No line ends within a figure such as 8 5/8 in. */
  static String unbroken(String text) {
    return text.replaceAll("(\\d) (\\d+/\\d+) (?=in\\b)", "$1\u00a0$2\u00a0");
  }

  /** Whoever names things may write _ in names: it is shown, and marks no letter as a key. */
  static <T extends Labeled> T verbatim(T words) {
    words.setMnemonicParsing(false);
    return words;
  }

  /** Returns a button of words. */
  static Button words(String id, String text, String spoken, Runnable action) {
    Button button = verbatim(new Button(text));
    Called.by(button, id);
    button.getStyleClass().add("words");
    button.setAccessibleText(spoken);
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setOnAction(e -> action.run());
    return told(button, spoken);
  }

  static <T extends javafx.scene.control.Control> T told(T control, String tip) {
    Tip.tell(control, tip);
    return control;
  }

  /** Adds to what a control tells by which key the same is done. */
  static <T extends javafx.scene.control.Control> T keyed(T control, String key) {
    String said = Tip.of(control);
    return told(control, (said.isEmpty() ? "" : said + ", ") + "key " + key);
  }

  static Node gap() {
    Region gap = new Region();
    HBox.setHgrow(gap, Priority.ALWAYS);
    return gap;
  }

  /**
   * Returns the sign of a verdict, as on the drawing: a square fails, a triangle needs care, a ring
   * passes. Shape tells it without colour.
   */
  static Shape sign(Verdict verdict, boolean numbered) {
    double s = numbered ? 1.5 : 1;
    Shape sign =
        switch (verdict) {
          case FAIL -> new Rectangle(11 * s, 11 * s);
          case CAUTION -> new Polygon(0, 11 * s, 6.5 * s, 0, 13 * s, 11 * s);
          case PASS -> new Circle(5 * s);
          case NOT_APPLICABLE -> new Rectangle(10, 2);
        };
    sign.getStyleClass().addAll("sign", "sign-" + verdict.word());
    return sign;
  }

  /** Returns things side by side, in the middle of their line. */
  static HBox line(javafx.scene.Node... nodes) {
    HBox box = new HBox(6, nodes);
    box.setFillHeight(false);
    box.setAlignment(javafx.geometry.Pos.CENTER_LEFT);
    return box;
  }

  /** A small button that stays down while something is on. */
  static ToggleButton toggle(String id, String words, String key) {
    ToggleButton button = verbatim(new ToggleButton(words));
    Called.by(button, id);
    button.getStyleClass().add("step");
    button.setMinWidth(Region.USE_PREF_SIZE);
    button.setAccessibleText(words);
    return told(button, words + ", key " + key);
  }

  /** Returns what is read from top to bottom on a slip over the card; it takes the room left. */
  static ScrollPane pages(String name, String spoken, Region held) {
    ScrollPane scroll = new Scrolled(held);
    Called.by(scroll, name);
    scroll.getStyleClass().add("guide-scroll");
    scroll.setFocusTraversable(true);
    scroll.setAccessibleText(spoken);
    VBox.setVgrow(scroll, Priority.ALWAYS);
    return scroll;
  }
}
