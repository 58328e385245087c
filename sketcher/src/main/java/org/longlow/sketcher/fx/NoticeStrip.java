package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Locale;
import javafx.geometry.Pos;
import javafx.scene.AccessibleRole;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Notice;

/** Notices in the window itself, with what can be done about them; nothing waits for them. */
final class NoticeStrip extends VBox {

  private final Desk desk;
  private List<Notice> shown = List.of();

  NoticeStrip(Desk desk) {
    this.desk = desk;
    setId("notices");
    getStyleClass().add("notices");
    desk.watch(this::refresh);
  }

  private void refresh() {
    if (desk.notices().equals(shown)) {
      return;
    }
    shown = desk.notices();
    getChildren().clear();
    for (Notice notice : shown) {
      Label text = Bits.wrapped(notice.text(), "notice-text");
      text.setAccessibleRole(AccessibleRole.TEXT);
      text.setId("notice-" + notice.topic());
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
      Button away =
          Bits.words(
              "away-" + notice.topic(),
              "\u00d7",
              "put this notice away",
              () -> desk.dropNotice(notice.topic()));
      line.getChildren().add(away);
      getChildren().add(line);
    }
  }
}
