package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Words;
import org.longlow.sketcher.photo.PhotoFile;

/** Reads layout files for commands. */
final class Loading {

  /** Most machines are answered sooner, and nothing flickers. */
  private static final Duration QUIET = Duration.ofSeconds(1);

  /** A file that says nothing, read: so all that a file may say is described, which takes long. */
  private static final FutureTask<ReadResult> DESCRIBED =
      new FutureTask<>(() -> LayoutReader.read("{}", null));

  private Loading() {}

  /** Describes what a file may say on a core of its own, while the words of a command are read. */
  static void begin() {
    Thread thread = new Thread(DESCRIBED, "description");
    thread.setDaemon(true);
    thread.start();
  }

  /**
   * Returns the layout in {@code file}, after saying on {@code err} what in it has no effect.
   *
   * @throws Refusal with one line a fault if the file is not a sound layout
   */
  static Layout layout(Path file, PrintWriter err) {
    ReadResult.Read read = read(file);
    List<String> notes = new ArrayList<>(read.notes());
    notes.addAll(PhotoFile.notices(read.layout(), file.toAbsolutePath().getParent()));
    notes.forEach(n -> err.println("longlow: " + file + ": note: " + n));
    err.flush();
    return read.layout();
  }

  /**
   * Returns the layout in {@code file}.
   *
   * @throws Refusal with one line a fault if the file is not a sound layout
   */
  static Layout layout(Path file) {
    return read(file).layout();
  }

  /**
   * Returns the study of {@code layout}, which was read from {@code file}.
   *
   * @throws Refusal if its ties leave no machine that could stand on two wheels
   */
  static Study study(Layout layout, Path file) {
    return study(Placer.place(layout), file);
  }

  /** As {@link #study(Layout, Path)}, of a layout that is solved already. */
  static Study study(Placed placed, Path file) {
    checkStands(placed, file);
    try (ProgressLine line = ProgressLine.onTerminal().after(QUIET)) {
      return Study.of(placed, line::show);
    }
  }

  /** Says of each free measure that it is not worth what the file says. */
  static void sayWhatGaveWay(Placed placed, Path file, PrintWriter err) {
    if (!placed.holds()) {
      return; // the findings say more
    }
    placed
        .gaveWay()
        .forEach(
            (name, now) -> {
              Measure measure = placed.layout().measures().get(name);
              Unit unit = Unit.of(measure.dim());
              Words note =
                  Words.of(
                      "measure "
                          + name
                          + " is "
                          + measure.is().text()
                          + " in the file and comes to ",
                      measure.dim().equals(Dim.ANGLE)
                          ? Say.deg(unit.fromInternal(now))
                          : measure.dim().equals(Dim.LENGTH)
                              ? Say.mm(now)
                              : Words.of(unit.fromInternal(now) + " " + unit),
                      ", since its range, the ties and the limits hold only so");
              err.println("longlow: " + file + ": note: " + note.in(placed.layout().units()));
            });
    err.flush();
  }

  /**
   * Lets a layout that is solved pass.
   *
   * @throws Refusal if its ties leave no machine that could stand on two wheels
   */
  static void checkStands(Placed placed, Path file) {
    Wheels wheels = Wheels.of(placed.layout(), placed.places());
    if (!wheels.stands()) {
      throw new Refusal(
          wheels.faults().stream().map(f -> file + ": " + f.path() + ": " + f.text()).toList());
    }
  }

  private static ReadResult.Read read(Path file) {
    // two threads that meet in one description could wait for each other
    DESCRIBED.run();
    try {
      DESCRIBED.get();
    } catch (InterruptedException | ExecutionException e) {
      throw new IllegalStateException(e);
    }
    ReadResult result = LayoutReader.read(file);
    if (result instanceof ReadResult.Refused refused) {
      throw new Refusal(
          refused.faults().stream().map(Fault::line).map(l -> file + ": " + l).toList());
    }
    return (ReadResult.Read) result;
  }
}
