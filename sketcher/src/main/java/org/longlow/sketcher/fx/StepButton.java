package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.text.Text;

/**
 * A button that takes a step back or does it again, and names the step: in full where there is
 * room, else as far as whole words go, else not at all. Its tip and the screen reader tell all.
 */
final class StepButton extends Button {

  /** The longest words that it says, characters. */
  private static final int LONGEST = 44;

  private final String does;
  private final String key;
  private final String room;
  private String step = "";

  /**
   * @param room what is said besides what it does where it is as wide as it likes: it likes that
   *     whatever the step is called, so that a second click where the first was takes the next step
   *     and not the neighbour's
   */
  StepButton(String id, String does, String room, String key, Runnable action) {
    this.does = does;
    this.room = room;
    this.key = key;
    Called.by(this, id);
    Bits.verbatim(this);
    getStyleClass().addAll("words", "step-button");
    setOnAction(e -> action.run());
    widthProperty().addListener(o -> fit());
    fontProperty().addListener(o -> requestLayout());
    name(Optional.empty());
  }

  /** Names the step that it takes; without one there is nothing to do. */
  void name(Optional<String> next) {
    setDisable(next.isEmpty());
    step = next.orElse("");
    String full = step.isEmpty() ? does : does + ": " + step;
    setAccessibleText(full);
    Bits.told(this, full + ", key " + key);
    fit();
    requestLayout();
  }

  @Override
  protected double computePrefWidth(double height) {
    return snappedLeftInset() + wide(does + room) + snappedRightInset();
  }

  private void fit() {
    double room = getWidth() - snappedLeftInset() - snappedRightInset();
    int longest = LONGEST;
    while (longest > 0 && wide(said(longest)) > room) {
      longest--;
    }
    setText(said(longest));
  }

  /** Returns what it says in so many characters; that it does it at least. */
  private String said(int longest) {
    if (step.isEmpty()) {
      return does;
    }
    StringBuilder said = new StringBuilder(does + ":");
    for (String word : List.of(step.split(" "))) {
      boolean last = said.length() + 1 + word.length() == does.length() + 2 + step.length();
      if (said.length() + 1 + word.length() + (last ? 0 : 1) > longest) {
        return said.toString().endsWith(":") ? does : said + "\u2026";
      }
      said.append(' ').append(word);
    }
    return said.toString();
  }

  private double wide(String words) {
    Text text = new Text(words);
    text.setFont(getFont());
    return Math.ceil(text.getLayoutBounds().getWidth()) + 1;
  }
}
