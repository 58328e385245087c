package org.longlow.sketcher.fx;

import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.util.Duration;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;

/**
 * Whether it is to be said that findings are of the machine as it was before: at once where there
 * are none to be read, else once it lasts longer than anybody reads, so that no edit flickers. What
 * shows them has the style {@code working} then.
 */
final class StillWorking {

  /** What is said of them. */
  static final String WORDS = "working\u2026";

  private static final PseudoClass STYLE = PseudoClass.getPseudoClass("working");
  private static final Duration UNREAD = Duration.millis(80);

  private final PauseTransition pause = new PauseTransition(UNREAD);
  private final Desk desk;
  private final Node shows;
  private boolean said;

  /**
   * @param shows what shows findings
   * @param changed called when what is said of them is another
   */
  StillWorking(Desk desk, Node shows, Runnable changed) {
    this.desk = desk;
    this.shows = shows;
    pause.setOnFinished(
        e -> {
          say(isWorking());
          changed.run();
        });
  }

  /** Looks anew; returns whether it is to be said. */
  boolean look() {
    if (!isWorking()) {
      pause.stop();
      say(false);
    } else if (desk.shown().orElseThrow().findings().isEmpty()) {
      say(true);
    } else if (!said && pause.getStatus() != Animation.Status.RUNNING) {
      pause.playFromStart();
    }
    return said;
  }

  boolean isSaid() {
    return said;
  }

  private boolean isWorking() {
    return desk.shown().map(BoardState::working).orElse(false);
  }

  private void say(boolean on) {
    said = on;
    shows.pseudoClassStateChanged(STYLE, on);
  }
}
