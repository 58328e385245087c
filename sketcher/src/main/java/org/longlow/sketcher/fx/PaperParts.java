package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.app.PartPaper;
import org.longlow.sketcher.desk.PaperWork;

/** The parts that get a template, each with a tick and what paper it takes. */
final class PaperParts extends VBox {

  private final PaperWork work;
  private final TextField words = new TextField();
  private final VBox rows = new VBox(3);
  private final Map<String, Row> built = new LinkedHashMap<>();

  PaperParts(PaperWork work) {
    super(6);
    this.work = work;
    Called.by(words, "paper-find");
    words.setPromptText("find a part");
    words.setAccessibleText("show parts with these words");
    words.textProperty().addListener((o, was, is) -> filter());
    HBox.setHgrow(words, Priority.ALWAYS);
    ScrollPane scroll = new ScrollPane(rows);
    Called.by(scroll, "paper-parts");
    scroll.setFitToWidth(true);
    scroll.setMinHeight(90);
    scroll.getStyleClass().add("slip-scroll");
    VBox.setVgrow(scroll, Priority.ALWAYS);
    getChildren()
        .addAll(
            Bits.line(
                words,
                Bits.words("paper-all", "All", "tick all parts shown", () -> tick(true)),
                Bits.words(
                    "paper-none", "None", "tick none of the parts shown", () -> tick(false))),
            scroll);
    VBox.setVgrow(this, Priority.ALWAYS);
  }

  void begin() {
    words.requestFocus();
    words.selectAll();
  }

  private List<String> found() {
    List<String> found = new ArrayList<>();
    String[] typed = words.getText().strip().toLowerCase(Locale.ROOT).split("\\s+");
    for (String part : built.keySet()) {
      boolean all = true;
      for (String word : typed) {
        all &= part.toLowerCase(Locale.ROOT).contains(word);
      }
      if (all) {
        found.add(part);
      }
    }
    return found;
  }

  private void filter() {
    rows.getChildren().setAll(found().stream().map(built::get).toList());
  }

  private void tick(boolean on) {
    work.choose(c -> c.ticking(found(), on));
  }

  void refresh() {
    Map<String, Optional<PartPaper>> parts = work.parts();
    if (!List.copyOf(parts.keySet()).equals(List.copyOf(built.keySet()))) {
      built.clear();
      parts.keySet().forEach(part -> built.put(part, new Row(part)));
      filter();
    }
    parts.forEach((part, sheets) -> built.get(part).show(sheets));
  }

  private final class Row extends HBox {
    private final String part;
    private final CheckBox box = new CheckBox();
    private final Label sheets = Bits.label("", "found-kind");

    Row(String part) {
      super(8);
      this.part = part;
      Called.by(box, "paper-part-" + part);
      Bits.verbatim(box).setText(part);
      box.setMinWidth(0);
      box.setOnAction(e -> work.choose(c -> c.ticking(List.of(part), box.isSelected())));
      sheets.setMinWidth(USE_PREF_SIZE);
      getChildren().addAll(box, Bits.gap(), sheets);
    }

    void show(Optional<PartPaper> paper) {
      box.setSelected(work.choice().ticked().contains(part));
      String count = paper.map(PartPaper::words).orElse("");
      sheets.setText(count);
      box.setAccessibleText("template of " + part + (count.isEmpty() ? "" : ", " + count));
    }
  }
}
