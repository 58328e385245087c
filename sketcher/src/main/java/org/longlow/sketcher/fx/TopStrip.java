package org.longlow.sketcher.fx;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.Optional;
import javafx.animation.Animation;
import javafx.animation.PauseTransition;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import javafx.util.Duration;
import org.longlow.constraints.disk.Beside;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.LayoutFile;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Session;

/** The title line: which machine, whether it is saved, and what can be done with it, in words. */
final class TopStrip extends VBox {

  /** Work that takes no longer is not told of, or the word would flicker at every step. */
  private static final Duration UNTOLD = Duration.millis(400);

  private final Desk desk;
  private final PauseTransition patience = new PauseTransition(UNTOLD);
  private final Label name = Bits.label("", "machine");
  private final Label state = Bits.label("", "stamp", "state");
  private final Label working = Bits.label("", "working");
  private final Button save;
  private final StepButton undo;
  private final StepButton redo;
  private final HBox saveLine = new HBox(6);
  private final TextField path = new TextField();

  /** What the buttons of the strip do that is done elsewhere. */
  record Doing(
      Runnable leave, Runnable make, Runnable keys, Runnable find, Runnable add, Runnable trace) {}

  TopStrip(Desk desk, Doing doing) {
    this.desk = desk;
    getStyleClass().add("top");
    save = Bits.words("save", "Save", "save", this::save);
    Button saveAs = Bits.words("save-as", "Save as\u2026", "save under a name", this::askName);
    undo = new StepButton("undo", "Take back", ": move pin head", "Ctrl Z", desk::undo);
    redo = new StepButton("redo", "Do again", ": move pin", "Ctrl Y", desk::redo);
    Bits.keyed(save, "Ctrl S");
    Bits.keyed(saveAs, "Ctrl Shift S");
    Called.by(working, "working");
    patience.setOnFinished(e -> working.setText(StillWorking.WORDS));
    Called.by(name, "machine");
    Called.by(state, "state");
    Strip line =
        new Strip(
            8,
            Bits.keyed(
                Bits.words("open", "Machines", "back to the list of machines", doing.leave()),
                "Ctrl O"),
            name,
            state,
            Bits.gap(),
            working,
            undo,
            redo,
            save,
            saveAs,
            Bits.keyed(
                Bits.words(
                    "trace", "Trace\u2026", "trace from a photo or an SVG file", doing.trace()),
                "I"),
            Bits.keyed(Bits.words("add", "Add\u2026", "add something", doing.add()), "A"),
            Bits.keyed(
                Bits.words("find", "Find\u2026", "find anything by words", doing.find()),
                "Ctrl F, /"),
            Bits.keyed(
                Bits.words(
                    "make",
                    "Paper\u2026",
                    "put templates, drawing or report on paper",
                    doing.make()),
                "Ctrl M"),
            Bits.keyed(Bits.words("keys", "Keys", "list of keys", doing.keys()), "F1"));
    Strip.givesWayFirst(name);
    line.getStyleClass().add("top-line");
    Called.by(path, "save-path");
    path.setPromptText("folder and name of the file");
    path.setAccessibleText("folder and name of the file");
    path.setOnAction(e -> saveUnder());
    path.setOnKeyPressed(
        e -> {
          if (e.getCode() == KeyCode.ESCAPE) {
            showLine(false);
            e.consume();
          }
        });
    HBox.setHgrow(path, Priority.ALWAYS);
    saveLine
        .getChildren()
        .addAll(
            Bits.label("save as", "bench-label"),
            path,
            Bits.words("save-here", "Save", "save here", this::saveUnder),
            Bits.words("save-look", "Look\u2026", "choose a file", this::look),
            Bits.words("save-not", "Not now", "do not save", () -> showLine(false)));
    saveLine.setAlignment(Pos.CENTER_LEFT);
    saveLine.getStyleClass().add("save-line");
    saveLine.setManaged(false);
    setViewOrder(-1);
    showLine(false);
    getChildren().addAll(line, OnceSeen.of(saveLine));
    desk.watch(this::refresh);
  }

  private void showLine(boolean on) {
    saveLine.setVisible(on);
    requestLayout();
  }

  /** What asks for a name lies over the card, whose machine keeps its place. */
  @Override
  protected void layoutChildren() {
    super.layoutChildren();
    if (saveLine.isVisible()) {
      saveLine.resizeRelocate(0, getHeight(), getWidth(), saveLine.prefHeight(getWidth()));
    }
  }

  void save() {
    if (desk.session().isPresent() && !desk.files().save()) {
      askName();
    }
  }

  void askName() {
    if (desk.session().isEmpty()) {
      return;
    }
    Session session = desk.session().get();
    path.setText(
        session
            .file()
            .map(f -> f.path().toString())
            .orElseGet(
                () ->
                    Beside.free(
                            Path.of(
                                System.getProperty("user.dir"),
                                session.layout().name() + LayoutFile.ENDING))
                        .toString()));
    showLine(true);
    path.requestFocus();
    path.selectAll(); // whoever types means another name
  }

  private void saveUnder() {
    try {
      String text = path.getText().strip();
      if (!text.isEmpty()) {
        desk.files().saveAs(Path.of(text).toAbsolutePath());
        showLine(false);
      }
    } catch (InvalidPathException e) {
      desk.say(Notice.Mood.BAD, "saved", "That is no name for a file: " + e.getReason() + ".");
    }
  }

  private void look() {
    FileChooser chooser = FileLook.near("Save the layout as", FileLook.of(desk));
    chooser.setInitialFileName(desk.session().get().layout().name() + LayoutFile.ENDING);
    File file = chooser.showSaveDialog(getScene().getWindow());
    if (file != null) {
      path.setText(file.getPath());
      saveUnder();
    }
  }

  private static String kept(Session session) {
    return session.file().isPresent() ? "saved" : "shipped";
  }

  /**
   * Says that something is being worked out: a machine just opened at once, an edit if it lasts.
   */
  private void tellWork() {
    if (desk.isBeginning()) {
      working.setText(StillWorking.WORDS);
    } else if (desk.isIdle()) {
      patience.stop();
      working.setText("");
    } else if (working.getText().isEmpty() && patience.getStatus() != Animation.Status.RUNNING) {
      patience.playFromStart();
    }
  }

  private void refresh() {
    tellWork();
    Optional<Session> session = desk.session();
    if (session.isEmpty()) {
      showLine(false);
      return;
    }
    Session s = session.get();
    name.setText(s.layout().title().isEmpty() ? s.layout().name() : s.layout().title());
    Bits.told(
        name, name.getText() + "\n" + s.file().map(f -> f.path().toString()).orElse("no file yet"));
    boolean waits = !desk.files().found().isEmpty();
    state.setText(s.isChanged() ? "not saved" : waits ? "found work waits" : kept(s));
    state.pseudoClassStateChanged(
        javafx.css.PseudoClass.getPseudoClass("unsaved"), s.isChanged() || waits);
    undo.name(s.undoName());
    redo.name(s.redoName());
    save.setDisable(!s.isChanged() && s.file().isPresent());
  }
}
