package org.longlow.sketcher.fx;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Function;
import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.util.Duration;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;

/**
 * Notices that lie over the lower edge of the card, with what can be done about them. Nothing waits
 * for them and nothing moves for them; what asks for nothing goes away by itself.
 */
final class NoticeStrip extends VBox {

  /** A notice is there so long at least; and so much longer for each letter that is to be read. */
  private static final Duration LEAST = Duration.seconds(4);

  private static final Duration LETTER = Duration.millis(70);

  private final Desk desk;
  private final Function<Notice, Duration> lingers;
  private Map<Notice, Node> lines = new LinkedHashMap<>();

  NoticeStrip(Desk desk) {
    this(desk, NoticeStrip::lingers);
  }

  /**
   * @param lingers how long a notice is shown that nobody looks at; indefinite for until answered
   */
  NoticeStrip(Desk desk, Function<Notice, Duration> lingers) {
    this.desk = desk;
    this.lingers = lingers;
    Called.by(this, "notices");
    getStyleClass().add("notices");
    setPickOnBounds(false);
    setMaxHeight(USE_PREF_SIZE);
    setAlignment(Pos.BOTTOM_LEFT);
    desk.watch(this::refresh);
  }

  /** What asks something, or tells that something went wrong, stays until it is answered. */
  static Duration lingers(Notice notice) {
    return notice.mood() == Notice.Mood.BAD || !notice.answers().isEmpty()
        ? Duration.INDEFINITE
        : LEAST.add(LETTER.multiply(notice.text().length()));
  }

  /** Lies clear of the rules of the card, which grow with its letters. */
  void keepClear(Board board) {
    StackPane.setMargin(this, Rule.clear(board.letters()));
  }

  /** Puts the last notice away, as Escape does; returns whether there was one. */
  boolean closeOne() {
    List<Notice> all = desk.notices();
    if (all.isEmpty()) {
      return false;
    }
    desk.dropNotice(all.get(all.size() - 1).topic());
    return true;
  }

  private void refresh() {
    List<Notice> now = desk.notices();
    if (now.equals(List.copyOf(lines.keySet()))) {
      return;
    }
    Map<Notice, Node> next = new LinkedHashMap<>();
    // what is shown already stays as it is, with the keyboard and the time it has left
    now.forEach(n -> next.put(n, lines.containsKey(n) ? lines.get(n) : line(n)));
    lines = next;
    getChildren().setAll(lines.values());
  }

  private Node line(Notice notice) {
    Label text = Bits.wrapped(notice.text(), "notice-text");
    text.setAccessibleRole(AccessibleRole.TEXT);
    Called.by(text, "notice-" + notice.topic());
    HBox.setHgrow(text, Priority.ALWAYS);
    text.setMaxWidth(Double.MAX_VALUE);
    HBox line = new HBox(8, text);
    line.setAlignment(Pos.CENTER_LEFT);
    line.getStyleClass()
        .addAll("notice", "notice-" + notice.mood().name().toLowerCase(Locale.ROOT));
    for (Notice.Answer answer : notice.answers()) {
      String id = "answer-" + answer.words().toLowerCase(Locale.ROOT).replace(' ', '-');
      line.getChildren()
          .add(Bits.words(id, answer.words(), answer.words(), () -> desk.answer(notice, answer)));
    }
    line.getChildren()
        .add(
            Bits.words(
                "away-" + notice.topic(),
                "\u00d7",
                "put this notice away, Escape",
                () -> desk.dropNotice(notice.topic())));
    goesBy(notice, line);
    return line;
  }

  /** Its time does not run while the pointer or the keyboard is on it. */
  private void goesBy(Notice notice, HBox line) {
    Duration time = lingers.apply(notice);
    if (time.isIndefinite()) {
      return;
    }
    PauseTransition left = new PauseTransition(time);
    left.setOnFinished(
        e -> {
          if (desk.notices().contains(notice)) {
            desk.dropNotice(notice.topic());
          }
        });
    Runnable run =
        () -> {
          if (line.isHover() || line.isFocusWithin()) {
            left.stop();
          } else {
            left.playFromStart();
          }
        };
    line.hoverProperty().addListener((o, was, is) -> run.run());
    line.focusWithinProperty().addListener((o, was, is) -> run.run());
    left.playFromStart();
  }
}
