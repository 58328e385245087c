package org.longlow.sketcher.fx;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.Map;
import java.util.Set;
import java.util.concurrent.Executor;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.MakeJob;
import org.longlow.sketcher.desk.Maker;
import org.longlow.svg.page.Paper;

/** A slip over the card: what to make of what is on the board, where, and how far it is. */
final class MakePane extends VBox {

  private final Desk desk;
  private final MakeJob job;
  private final Map<Maker.Kind, CheckBox> kinds = new EnumMap<>(Maker.Kind.class);
  private final ComboBox<String> paper = new ComboBox<>();
  private final TextField folder = new TextField();
  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = Bits.wrapped("", "bench-note");
  private final Button start;
  private final Button cancel;

  MakePane(Desk desk, Executor owner, Maker maker, Runnable close) {
    super(8);
    this.desk = desk;
    this.job = new MakeJob(owner, maker, this::refresh);
    setId("make-slip");
    getStyleClass().addAll("slip", "over");
    setMaxHeight(USE_PREF_SIZE);
    getChildren().add(Bits.label("MAKE", "slip-title"));
    for (Maker.Kind kind : Maker.Kind.values()) {
      CheckBox box = new CheckBox(kind.words());
      box.setId("make-" + kind.name().toLowerCase(java.util.Locale.ROOT));
      box.setSelected(true);
      Bits.told(box, "make " + kind.words());
      kinds.put(kind, box);
      getChildren().add(box);
    }
    Paper.NAMED.forEach(p -> paper.getItems().add(p.name()));
    paper.setValue(Paper.A4.name());
    paper.setId("make-paper");
    paper.setAccessibleText("paper");
    folder.setId("make-folder");
    folder.setAccessibleText("folder for what is made");
    HBox.setHgrow(folder, Priority.ALWAYS);
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setId("make-bar");
    bar.setAccessibleText("how far it is");
    words.setId("make-words");
    start = Bits.words("make-start", "Make", "make what is ticked", this::start);
    cancel = Bits.words("make-cancel", "Stop", "stop making", job::cancel);
    getChildren()
        .addAll(
            Bits.line(Bits.label("on", "bench-label"), paper),
            Bits.line(Bits.label("into", "bench-label"), folder),
            bar,
            words,
            Bits.line(
                start,
                cancel,
                Bits.gap(),
                Bits.words("make-away", "Put away", "put this slip away", close)));
    refresh();
  }

  /** Offers a folder beside the file. */
  void offerFolder() {
    desk.session()
        .ifPresent(
            s -> {
              Path beside = s.folder().orElse(Path.of(System.getProperty("user.dir")));
              folder.setText(beside.resolve(s.layout().name() + "-made").toString());
            });
    start.requestFocus();
  }

  private void start() {
    Set<Maker.Kind> wanted = EnumSet.noneOf(Maker.Kind.class);
    kinds.forEach(
        (kind, box) -> {
          if (box.isSelected()) {
            wanted.add(kind);
          }
        });
    if (desk.shown().isEmpty() || wanted.isEmpty() || folder.getText().isBlank()) {
      words.setText("Tick what to make, and say where.");
      return;
    }
    try {
      Path into = Path.of(folder.getText().strip()).toAbsolutePath();
      job.start(
          desk.shown().get().study(), new Maker.Order(wanted, Paper.parse(paper.getValue()), into));
    } catch (InvalidPathException e) {
      words.setText("That is no name for a folder: " + e.getReason());
    }
  }

  private void refresh() {
    start.setDisable(job.isRunning());
    cancel.setDisable(!job.isRunning());
    bar.setVisible(job.isRunning());
    bar.setProgress(job.share());
    StringBuilder text = new StringBuilder(job.isRunning() ? job.words() : job.trouble());
    for (String line : job.made()) {
      text.append(text.length() == 0 ? "" : "\n").append(line);
    }
    words.setText(text.toString());
  }
}
