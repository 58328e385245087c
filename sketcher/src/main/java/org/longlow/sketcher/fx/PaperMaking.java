package org.longlow.sketcher.fx;

import java.io.File;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Executor;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.stage.DirectoryChooser;
import org.longlow.constraints.words.Counted;
import org.longlow.sketcher.desk.MakeJob;
import org.longlow.sketcher.desk.PaperWork;

/**
 * Where paper is written to, how far that is, what has to be agreed to first, and what came of it.
 */
final class PaperMaking extends VBox {

  /** What came of it takes so much of the slip at most, px. */
  private static final double SAID_PX = 96;

  private final PaperWork work;
  private final Executor owner;
  private final MakeJob job;
  private final TextField folder = new TextField();
  private final ProgressBar bar = new ProgressBar(0);
  private final Label words = Bits.wrapped("", "bench-note");
  private final Label asks = Bits.wrapped("", "bench-note");
  private final VBox question = new VBox(6);
  private final Button start;
  private final Button stop;
  private final Button open;
  private final Button refuse;
  private Path into;

  /** The folder offered last. */
  private String offered = "";

  /** Where the sheets go that are being laid out; null if nobody asked for them yet. */
  private Path waiting;

  PaperMaking(PaperWork work, Executor owner) {
    super(6);
    this.work = work;
    this.owner = owner;
    this.job = new MakeJob(owner, this::refresh);
    Called.by(folder, "make-folder");
    folder.setAccessibleText("folder for what is written");
    HBox.setHgrow(folder, Priority.ALWAYS);
    bar.setMaxWidth(Double.MAX_VALUE);
    Called.by(bar, "make-bar");
    bar.setAccessibleText("how far it is");
    Called.by(words, "make-words");
    start = Bits.words("make-start", "Write", "write these sheets into the folder", this::start);
    folder.setOnAction(e -> start());
    stop = Bits.words("make-cancel", "Give up", "give up writing", job::cancel);
    open = Bits.words("make-open", "Open the folder", "open the folder", this::open);
    refuse = Bits.words("make-refuse", "Not now", "replace nothing", job::refuse);
    Called.by(asks, "make-asks");
    ScrollPane names = new ScrollPane(asks);
    names.setFitToWidth(true);
    names.setPrefHeight(120);
    names.setMinHeight(120);
    names.getStyleClass().add("slip-scroll");
    question.getStyleClass().add("notice-question");
    question
        .getChildren()
        .addAll(
            names,
            Bits.line(
                Bits.words("make-agree", "Replace", "replace these files", job::agree), refuse));
    ScrollPane said = new ScrollPane(words);
    said.setFitToWidth(true);
    // as high as what is said, and what is longer than a few lines scrolls
    words
        .heightProperty()
        .addListener(
            o -> {
              double high = Math.min(SAID_PX * TextSize.of(this), words.getHeight() + 2);
              said.setMinHeight(high);
              said.setMaxHeight(high);
            });
    said.getStyleClass().add("slip-scroll");
    getChildren()
        .addAll(
            Bits.line(
                Bits.label("into", "bench-label"),
                folder,
                Bits.words("make-choose", "Choose\u2026", "choose a folder", this::choose)),
            Bits.line(start, stop, open),
            bar,
            question,
            said);
    refresh();
  }

  /** Offers a folder, unless one was chosen before; that of another machine is none. */
  void offer(Path beside) {
    waiting = null; // what was asked of the slip before is not meant for this one
    if (folder.getText().isBlank() || folder.getText().equals(offered)) {
      folder.setText(beside.toString());
    }
    offered = beside.toString();
  }

  /** Returns whether there was something to give up or to refuse. */
  boolean giveUp() {
    if (waiting != null) {
      waiting = null;
      refresh();
      return true;
    }
    if (job.isRunning()) {
      job.cancel();
      return true;
    }
    if (job.question().isPresent()) {
      job.refuse();
      start.requestFocus();
      return true;
    }
    return false;
  }

  private void choose() {
    DirectoryChooser chooser = new DirectoryChooser();
    chooser.setTitle("Folder for what is written");
    place().map(Path::toFile).filter(File::isDirectory).ifPresent(chooser::setInitialDirectory);
    File chosen = chooser.showDialog(getScene().getWindow());
    if (chosen != null) {
      folder.setText(chosen.getPath());
    }
  }

  private Optional<Path> place() {
    try {
      String text = folder.getText().strip();
      return text.isEmpty() ? Optional.empty() : Optional.of(Path.of(text).toAbsolutePath());
    } catch (InvalidPathException e) {
      return Optional.empty();
    }
  }

  private void start() {
    Optional<Path> place = place();
    if (place.isEmpty()) {
      words.setText("That is no name for a folder.");
    } else if (work.isWorking()) {
      // they are written as soon as they are there
      waiting = place.get();
      refresh();
    } else if (!work.pages().isEmpty() && !isBusy()) {
      into = place.get();
      job.start(work.ready().get(), into);
    }
  }

  private boolean isBusy() {
    return job.isRunning() || job.question().isPresent();
  }

  /** The sheets that were waited for are there, or cannot be made. */
  private void goOn() {
    Path to = waiting;
    if (to != null && !work.isWorking() && !isBusy()) {
      waiting = null;
      if (!work.pages().isEmpty()) {
        into = to;
        job.start(work.ready().get(), into);
      }
    }
  }

  private void open() {
    Path there = into;
    FolderOpener.open(
        there, owner, () -> words.setText("It cannot be opened from here; it is " + there));
  }

  void refresh() {
    goOn();
    boolean running = job.isRunning();
    boolean asked = job.question().isPresent();
    start.setDisable(running || asked || work.pages().isEmpty());
    int sheets = work.pages().size();
    start.setText(sheets > 1 ? "Write " + Counted.of(sheets, "sheet") : "Write");
    shown(stop, running);
    shown(bar, running);
    bar.setProgress(job.share());
    shown(open, !job.made().isEmpty() && Files.isDirectory(into));
    boolean wasAsked = question.isVisible();
    shown(question, asked);
    job.question().ifPresent(q -> asks.setText(asked(q)));
    if (asked && !wasAsked) {
      refuse.requestFocus();
    }
    if (waiting != null) {
      words.setText("They are written as soon as they are laid out. Escape: not yet.");
      return;
    }
    StringBuilder text = new StringBuilder(running ? job.words() : job.trouble());
    for (String line : job.made()) {
      text.append(text.length() == 0 ? "" : "\n").append(line);
    }
    if (!job.made().isEmpty()) {
      text.append("\nin ").append(into);
    }
    words.setText(text.toString());
  }

  private static String asked(MakeJob.Question q) {
    StringBuilder text = new StringBuilder("In " + q.folder() + " are already:\n");
    if (!q.there().ours().isEmpty()) {
      text.append(names(q.there().ours()))
          .append(
              "\nas Longlow wrote them; they are replaced, or taken away where fewer sheets are")
          .append(" needed now.");
    }
    if (!q.there().others().isEmpty()) {
      text.append(q.there().ours().isEmpty() ? "" : "\n")
          .append(names(q.there().others()))
          .append("\nnot by Longlow, or changed since; they are kept beside under other names.");
    }
    return text.toString();
  }

  private static String names(List<Path> files) {
    return files.stream().map(f -> f.getFileName().toString()).collect(Collectors.joining(", "));
  }

  private static void shown(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }
}
