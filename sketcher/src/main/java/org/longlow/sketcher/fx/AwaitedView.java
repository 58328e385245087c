package org.longlow.sketcher.fx;

import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.scene.control.Label;
import javafx.util.Duration;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.picture.Aspect;

/** Says on the card that a view is still worked out, once that takes longer than a blink. */
final class AwaitedView extends Label {

  private static final Duration BLINK = Duration.millis(250);

  private final Desk desk;
  private final PauseTransition blink = new PauseTransition(BLINK);

  AwaitedView(Desk desk) {
    this.desk = desk;
    Called.by(this, "view-awaited");
    getStyleClass().add("awaited");
    setMouseTransparent(true);
    setVisible(false);
    blink.setOnFinished(e -> setVisible(awaited().isPresent()));
    desk.watch(this::refresh);
  }

  private void refresh() {
    Optional<String> words = awaited();
    words.ifPresent(this::setText);
    if (words.isEmpty()) {
      blink.stop();
      setVisible(false);
    } else if (!isVisible() && blink.getStatus() != Animation.Status.RUNNING) {
      blink.playFromStart();
    }
  }

  private Optional<String> awaited() {
    return desk.shown().flatMap(s -> words(s.options().aspect(), desk.options().aspect()));
  }

  /** Returns what is said while one view is shown and another is asked for. */
  static Optional<String> words(Aspect shown, Aspect asked) {
    return shown == asked
        ? Optional.empty()
        : Optional.of("The " + asked.says() + " is being worked out \u2026");
  }
}
