package org.longlow.sketcher.fx;

import java.io.File;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.FileChooser;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.words.Counted;
import org.longlow.sketcher.desk.Autosave;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.LayoutFile;
import org.longlow.sketcher.desk.UnopenedFile;

/** Where the window begins: machines that come with it, files, work left unsaved, and faults. */
final class StartPage extends StackPane {

  private static final DateTimeFormatter WHEN =
      DateTimeFormatter.ofPattern("d MMM, HH:mm", Locale.ROOT).withZone(ZoneId.systemDefault());

  private final Desk desk;
  private final Supplier<List<Shipped>> shipped;
  private final TextField path = new TextField();
  private final VBox faults = new VBox(4);
  private final Supplier<List<Path>> recent;
  private final FlowPane lately = new FlowPane(6, 6);
  private final VBox found = new VBox(4);
  private final Label opening = Bits.wrapped("", "start-line");
  private Object shownRefusal;
  private final VBox page = new VBox(14);
  private boolean filled;

  /**
   * @param shipped machines that come with it, read when the page is filled
   * @param recent files that were opened or saved lately
   */
  StartPage(Desk desk, Supplier<List<Shipped>> shipped, Supplier<List<Path>> recent) {
    this.desk = desk;
    this.recent = recent;
    this.shipped = shipped;
    Called.by(this, "start");
    getStyleClass().add("start");
    page.getStyleClass().add("start-page");
    page.getChildren().addAll(heading());
    page.getChildren().add(opening);
    Called.by(opening, "opening");
    ScrollPane scroll = new ScrollPane(page);
    scroll.setFitToWidth(true);
    scroll.getStyleClass().add("start-scroll");
    scroll.setFocusTraversable(false);
    setAlignment(scroll, Pos.TOP_CENTER);
    setMargin(scroll, new Insets(56, 0, 24, 0));
    getChildren().add(scroll);
    desk.watch(this::refresh);
  }

  private static List<Node> heading() {
    return List.of(
        new Wordmark(),
        Bits.wrapped(
            "Lay out a one-off machine in side elevation, with a real person on it.",
            "start-line"));
  }

  /** Whoever named a file when starting never sees more than that it is opened. */
  private void fill() {
    filled = true;
    page.getChildren().setAll(heading());
    page.getChildren()
        .addAll(
            Bits.wrapped(
                "How to do each thing is in the guide: open or make a machine, press F1, choose"
                    + " Guide.",
                "bench-note"),
            found,
            Bits.label("A layout file of yours", "start-heading"),
            fileLine(),
            lately,
            opening,
            faults,
            Bits.label("A new machine", "start-heading"),
            new FirstForm(desk),
            Bits.label("Machines that come with it", "start-heading"),
            machines());
    lookForWork();
  }

  private Node machines() {
    VBox list = new VBox(6);
    List<Shipped> all = shipped.get();
    for (Shipped s : all) {
      Layout layout = s.layout();
      Button button =
          Bits.words(
              "machine-" + layout.name(),
              layout.name(),
              "open " + layout.name() + ", " + layout.title(),
              () -> desk.files().openCopy(layout, s.drawings()));
      button.getStyleClass().add("machine-button");
      HBox line = new HBox(12, button, Bits.wrapped(layout.title(), "start-line"));
      line.setAlignment(Pos.CENTER_LEFT);
      list.getChildren().add(line);
    }
    if (all.isEmpty()) {
      list.getChildren().add(Bits.label("none found", "bench-note"));
    }
    return list;
  }

  private Node fileLine() {
    Called.by(path, "open-path");
    path.setPromptText("folder and name of the file");
    path.setAccessibleText("folder and name of the layout file");
    path.setOnAction(e -> open());
    HBox.setHgrow(path, Priority.ALWAYS);
    HBox line =
        new HBox(
            6,
            path,
            Bits.words("open-here", "Open", "open this file", this::open),
            Bits.words("open-look", "Look\u2026", "choose a file", this::look));
    line.setAlignment(Pos.CENTER_LEFT);
    return line;
  }

  private void open() {
    String text = path.getText().strip();
    if (text.isEmpty()) {
      return;
    }
    try {
      desk.files().open(Path.of(text).toAbsolutePath());
    } catch (InvalidPathException e) {
      faults
          .getChildren()
          .setAll(Bits.wrapped("That is no name for a file: " + e.getReason(), "trouble"));
    }
  }

  private void look() {
    FileChooser chooser = FileLook.near("Open a layout", recent.get().stream().findFirst());
    chooser
        .getExtensionFilters()
        .addAll(
            FileLook.ending("layouts", LayoutFile.ENDINGS),
            new FileChooser.ExtensionFilter("all files", "*"));
    File file = chooser.showOpenDialog(getScene().getWindow());
    if (file != null) {
      path.setText(file.getPath());
      open();
    }
  }

  /** Tells of unsaved work on a file; what becomes of it is asked where that is open. */
  private void leadTo(Path file, Autosave.Found work) {
    String words = "Unsaved work on " + file.getFileName() + ", " + WHEN.format(work.at());
    HBox line =
        new HBox(
            8,
            Bits.label(words, "start-line"),
            Bits.gap(),
            Bits.words(
                "unsaved-" + file.getFileName().toString().replaceAll("[^A-Za-z0-9]+", "-"),
                "Open the file",
                "open " + file + " and choose there",
                () -> desk.files().open(file)));
    line.setAlignment(Pos.CENTER_LEFT);
    line.getStyleClass().addAll("notice", "notice-care");
    found.getChildren().add(line);
  }

  /** Offers work that was never saved under a name, and files of late. */
  void lookForWork() {
    lately.getChildren().clear();
    for (Path file : recent.get()) {
      lately
          .getChildren()
          .add(
              Bits.told(
                  Bits.words(
                      "recent-" + file.getFileName().toString().replaceAll("[^A-Za-z0-9]+", "-"),
                      file.getFileName().toString(),
                      "open " + file,
                      () -> desk.files().open(file)),
                  file.toString()));
    }
    show(lately, !lately.getChildren().isEmpty());
    found.getChildren().clear();
    for (Autosave.Found work : desk.autosave().homeless()) {
      String words = "Unsaved: " + work.layout().name() + ", " + WHEN.format(work.at());
      HBox line =
          new HBox(
              8,
              Bits.label(words, "start-line"),
              Bits.gap(),
              Bits.words(
                  "resume-" + work.layout().name(),
                  "Take it up again",
                  "take up " + words,
                  () -> desk.files().openFound(work)),
              Bits.words(
                  "discard-" + work.layout().name(),
                  "Throw it away",
                  "throw away " + words,
                  () -> desk.files().throwAway(work, this::lookForWork)));
      line.setAlignment(Pos.CENTER_LEFT);
      line.getStyleClass().addAll("notice", "notice-care");
      found.getChildren().add(line);
    }
    recent.get().forEach(file -> desk.autosave().unsaved(file).ifPresent(w -> leadTo(file, w)));
    for (Autosave.Broken work : desk.autosave().brokenHomeless()) {
      String words =
          "Unsaved work of "
              + WHEN.format(work.at())
              + " cannot be read: "
              + work.trouble()
              + ". It is kept as "
              + work.copy()
              + ".";
      HBox line = new HBox(8, Bits.wrapped(words, "start-line"));
      line.getStyleClass().addAll("notice", "notice-care");
      found.getChildren().add(line);
    }
  }

  /** Puts the keyboard where it is seen: on the file opened last, or into the field for one. */
  void begin() {
    if (!filled) {
      refresh();
      return;
    }
    lookForWork();
    takeKeyboard();
  }

  private void takeKeyboard() {
    Node first = lately.getChildren().isEmpty() ? path : lately.getChildren().get(0);
    Platform.runLater(first::requestFocus);
  }

  private static void show(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }

  private void refresh() {
    if (!filled && desk.session().isEmpty() && desk.files().opening().isEmpty()) {
      fill();
      takeKeyboard();
    }
    show(opening, desk.files().opening().isPresent());
    show(faults, desk.files().refusal().isPresent() || !faults.getChildren().isEmpty());
    opening.setText(desk.files().opening().map(p -> "Opening " + p + " \u2026").orElse(""));
    page.setDisable(desk.files().opening().isPresent() || desk.first().isMaking());
    UnopenedFile refusal = desk.files().refusal().orElse(null);
    if (refusal == shownRefusal) {
      return;
    }
    shownRefusal = refusal;
    faults.getChildren().clear();
    if (refusal == null) {
      return;
    }
    path.setText(refusal.path().toString());
    Platform.runLater(path::requestFocus);
    int n = refusal.faults().size();
    faults
        .getChildren()
        .add(
            Bits.wrapped(
                refusal.path().getFileName()
                    + " cannot be opened yet: "
                    + Counted.of(n, "fault")
                    + ".",
                "trouble"));
    for (Fault fault : refusal.faults()) {
      VBox one =
          new VBox(
              1,
              Bits.wrapped(
                  fault.path() + (fault.value().isEmpty() ? "" : " = " + fault.value()),
                  "fault-path"),
              Bits.wrapped(fault.message(), "fault-text"));
      if (!fault.remedy().isEmpty()) {
        one.getChildren().add(Bits.wrapped("\u2192 " + fault.remedy(), "fault-remedy"));
      }
      one.getStyleClass().add("fault");
      faults.getChildren().add(one);
    }
  }
}
