package org.longlow.sketcher.fx;

import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.desk.PaperWork;

/** Where a printer gets a name and what the bars of its calibration page measure. */
final class PaperPrinter extends VBox {

  private final PaperWork work;
  private final TextField name = field("name", "a name for this printer, such as attic");
  private final TextField across = field("across", "bar across, mm");
  private final TextField along = field("along", "bar along, mm");
  private final Label said = Bits.wrapped("", "trouble");
  private final Label known = Bits.wrapped("", "bench-note");

  PaperPrinter(PaperWork work) {
    super(6);
    this.work = work;
    Called.by(said, "printer-said");
    Called.by(known, "printers");
    ScrollPane all = new ScrollPane(known);
    all.setFitToWidth(true);
    all.setMaxHeight(96);
    all.setMinHeight(0);
    all.getStyleClass().add("slip-scroll");
    getChildren()
        .addAll(
            Bits.wrapped(
                "Write this page without correction, print it at 100 % (actual size), and measure"
                    + " the long bars with a steel rule; where an end is missing, the short ones.",
                "bench-note"),
            name,
            Bits.line(whole("across"), across, whole("along"), along),
            Bits.words("printer-keep", "Keep", "keep what was measured", this::keep),
            said,
            all);
    name.setOnAction(e -> across.requestFocus());
    across.setOnAction(e -> along.requestFocus());
    along.setOnAction(e -> keep());
    refresh();
  }

  private static Label whole(String words) {
    Label label = Bits.label(words, "bench-label");
    label.setMinWidth(USE_PREF_SIZE);
    return label;
  }

  private static TextField field(String id, String words) {
    TextField field = new TextField();
    Called.by(field, "printer-" + id);
    field.setPromptText(words);
    field.setAccessibleText(words);
    HBox.setHgrow(field, Priority.ALWAYS);
    return field;
  }

  private void keep() {
    Optional<String> refused = work.measure(name.getText(), across.getText(), along.getText());
    said.setText(refused.map(why -> "Not kept: " + why + ".").orElse(""));
    if (refused.isEmpty()) {
      across.clear();
      along.clear();
    }
  }

  void refresh() {
    StringBuilder all = new StringBuilder();
    work.printers()
        .byName()
        .values()
        .forEach(c -> all.append(all.length() == 0 ? "" : "\n").append(c.words()).append('.'));
    known.setText(all.toString());
  }
}
