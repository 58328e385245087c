package org.longlow.sketcher.fx;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.DragEvent;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.locationtech.jts.geom.Envelope;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.PhotoIntake;
import org.longlow.sketcher.desk.Session;
import org.longlow.sketcher.edit.PhotoEdits;
import org.longlow.sketcher.edit.Subjects;

/** A slip over the card: which photo to lay under the drawing, or which file to trace from. */
final class TracePane extends VBox {

  /** Where there is no machine yet to be as broad as, mm. */
  private static final Envelope ANYWHERE = new Envelope(0, 1600, 0, 1000);

  private static final List<String> ENDINGS = List.of(".png", ".jpg", ".jpeg", ".svg");

  private final Desk desk;
  private final Board board;
  private final Runnable open;
  private final Runnable close;
  private final PhotoIntake intake;
  private final TextField file = new TextField();
  private final Label trouble = Bits.wrapped("", "trouble");
  private final OutlineList outlines;
  private final FlowPane photos = new FlowPane(5, 5);
  private final VBox unsaved;
  private final Button save;
  private List<String> listed = List.of();

  /**
   * @param open shows the pane
   * @param close puts it away
   * @param saver saves the layout, or asks under what name
   */
  TracePane(Desk desk, Board board, Runnable open, Runnable close, Runnable saver) {
    super(8);
    this.desk = desk;
    this.board = board;
    this.open = open;
    this.close = close;
    intake = new PhotoIntake(desk);
    outlines = new OutlineList(desk, board, close);
    Called.by(this, "trace-slip");
    getStyleClass().addAll("slip", "over", "trace-slip");
    setMaxHeight(USE_PREF_SIZE);
    Called.by(file, "trace-file");
    file.setPromptText("a photo (PNG, JPEG) or a drawing (SVG)");
    file.setAccessibleText("file to trace from");
    file.setOnAction(e -> putIn());
    HBox.setHgrow(file, Priority.ALWAYS);
    save = Bits.words("trace-save", "Save it\u2026", "save the layout under a name", saver);
    Bits.keyed(save, "Ctrl S");
    unsaved = new VBox(5, Bits.wrapped(PhotoIntake.NEEDS_A_FILE, "bench-note"), save);
    Called.by(unsaved, "trace-unsaved");
    getChildren()
        .addAll(
            Bits.label("TRACE", "slip-title"),
            unsaved,
            Bits.line(
                file,
                Bits.words("trace-look", "Look\u2026", "choose a file", this::look),
                Bits.words("trace-put", "Put in", "put this file in", this::putIn)),
            trouble,
            outlines,
            Bits.wrapped(
                "It can be dropped on the drawing too. A photo lies under the drawing, nothing is"
                    + " worked out from it; of an SVG file a path becomes the outline of a part.",
                "bench-label"),
            photos,
            Bits.words("trace-away", "Put away", "put this slip away", close));
    say("");
    board.setOnDragOver(this::hover);
    board.setOnDragDropped(this::dropped);
    desk.watch(this::refresh);
  }

  /** Begins to ask for a file. */
  void begin() {
    say("");
    outlines.away();
    askToSave();
    focusFirst();
  }

  private boolean isSaved() {
    return desk.session().flatMap(Session::file).isPresent();
  }

  /** Says before anything is typed that the layout needs a file. */
  private void askToSave() {
    unsaved.setVisible(!isSaved());
    unsaved.setManaged(!isSaved());
  }

  private void focusFirst() {
    if (isSaved()) {
      file.requestFocus();
      file.selectAll();
    } else {
      save.requestFocus();
    }
  }

  private void say(String words) {
    trouble.setText(words);
    trouble.setVisible(!words.isEmpty());
    trouble.setManaged(!words.isEmpty());
  }

  private void look() {
    FileChooser chooser = FileLook.near("Trace from", FileLook.of(desk));
    chooser.getExtensionFilters().add(FileLook.ending("photos, drawings", ENDINGS));
    File chosen = chooser.showOpenDialog(getScene().getWindow());
    if (chosen != null) {
      file.setText(chosen.getPath());
      putIn();
    }
  }

  private void putIn() {
    try {
      if (file.getText().isBlank()) {
        say("Say which file, or look for it.");
        return;
      }
      take(Path.of(file.getText().strip()).toAbsolutePath());
    } catch (InvalidPathException e) {
      say("That is no name for a file: " + e.getReason() + ".");
    }
  }

  private void take(Path path) {
    if (!isSaved()) {
      // it waits in the field until there is a folder for it
      file.setText(path.toString());
      focusFirst();
      return;
    }
    if (path.toString().toLowerCase(Locale.ROOT).endsWith(".svg")) {
      outlines.list(path);
      return;
    }
    close.run();
    intake.take(path, board.machineBox().orElse(ANYWHERE));
  }

  private static boolean isTraced(File file) {
    return file.getName().toLowerCase(Locale.ROOT).matches(".*\\.(png|jpe?g|svg)");
  }

  private void hover(DragEvent e) {
    if (desk.shown().isPresent()
        && e.getDragboard().hasFiles()
        && e.getDragboard().getFiles().stream().anyMatch(TracePane::isTraced)) {
      e.acceptTransferModes(TransferMode.COPY);
    }
    e.consume();
  }

  private void dropped(DragEvent e) {
    List<File> files = e.getDragboard().getFiles().stream().filter(TracePane::isTraced).toList();
    // one after another: each may ask whether to copy it
    if (!files.isEmpty()) {
      open.run();
      take(files.get(0).toPath().toAbsolutePath());
    }
    e.setDropCompleted(!files.isEmpty());
    e.consume();
  }

  private void refresh() {
    if (isVisible() && unsaved.isVisible() && isSaved()) {
      askToSave();
      focusFirst();
    }
    List<String> names =
        desk.shown()
            .map(BoardState::layout)
            .map(l -> List.copyOf(l.photos().keySet()))
            .orElse(List.of());
    if (names.equals(listed)) {
      return;
    }
    listed = names;
    photos.getChildren().clear();
    for (String name : names) {
      photos
          .getChildren()
          .add(
              Bits.words(
                  "trace-photo-" + name,
                  name,
                  "pick photo " + name,
                  () -> {
                    close.run();
                    desk.choose(Subjects.of(PhotoEdits.entry(name)));
                  }));
    }
  }
}
