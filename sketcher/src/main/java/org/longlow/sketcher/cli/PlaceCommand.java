package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.suit.CrowdReport;
import org.longlow.constraints.suit.CrowdSettings;
import org.longlow.constraints.suit.CrowdSuiting;
import org.longlow.constraints.suit.SuitReport;
import org.longlow.constraints.suit.SuitSettings;
import org.longlow.constraints.suit.Suiting;
import org.longlow.constraints.suit.UnknownNames;
import org.longlow.sketcher.desk.TracedFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow place}: positions that suit the whole crew. */
@Command(
    name = "place",
    description = {
      "Finds seat, peg and grip positions (or any free pins) that suit the whole crew.",
      "With --people or --measured: those at which most of a crowd fit the rider's seat."
    })
final class PlaceCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(
      names = "--move",
      required = true,
      split = ",",
      paramLabel = "NAMES",
      description =
          "What may move, with commas between: pins, parts, or pan, back, head, pegs, grips of the"
              + " rider's seat.")
  private List<String> moves = new ArrayList<>();

  @Option(
      names = "--out",
      paramLabel = "FILE2",
      description = {
        "Where to save the layout with the best positions; as it is, and it says so, where no better"
            + " place was found. Nothing is saved where the layout contradicts itself."
      })
  private Path out;

  @Mixin private CrowdOptions crowds;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    Optional<CrowdSuiting.People> people =
        crowds.areAsked() ? Optional.of(people()) : Optional.empty();
    if (out != null) {
      checkFolder();
    }
    Layout layout = Loading.layout(file);
    if (out != null) {
      TracedFiles.check(layout, folder(file), folder(out));
    }
    Placed placed = Placer.place(layout);
    Loading.checkStands(placed, file);
    PrintWriter text = spec.commandLine().getOut();
    Study best;
    try {
      if (placed.holds()) {
        Suiting.checkMoves(placed, moves());
      }
      best =
          people.isPresent()
              ? forMany(Loading.study(placed, file), people.get(), text)
              : forCrew(layout, text);
    } catch (UnknownNames e) {
      throw new Refusal(e.lines().stream().map(l -> "--move: " + l).toList());
    }
    text.flush();
    return ExitCodes.of(best);
  }

  private List<String> moves() {
    return moves.stream().map(String::strip).toList();
  }

  private Study forCrew(Layout layout, PrintWriter text) throws IOException {
    SuitReport report;
    try (ProgressLine line = ProgressLine.ofLongWork()) {
      report = Suiting.of(layout, moves(), SuitSettings.DEFAULT, line::show);
    }
    if (report.best().isEmpty()) {
      return contradicts(report.before(), text);
    }
    new PlaceText(report, units.of(layout)).lines().forEach(text::println);
    save(report.best().get(), text);
    return report.best().get().study();
  }

  private CrowdSuiting.People people() throws IOException {
    return new CrowdSuiting.People(
        crowds.crowd(),
        crowds.gear(),
        crowds.without(),
        Runtime.getRuntime().availableProcessors());
  }

  private Study forMany(Study before, CrowdSuiting.People people, PrintWriter text)
      throws IOException {
    if (before.contradicts()) {
      return contradicts(before, text);
    }
    Optional<CrowdReport> report;
    try (ProgressLine line = ProgressLine.ofLongWork()) {
      report = CrowdSuiting.of(before, moves(), people, CrowdSettings.DEFAULT, line::show);
    }
    if (report.isEmpty()) {
      throw new Refusal(file + ": " + CrowdOptions.NOBODY_SITS);
    }
    new PlaceForMany(report.get(), units.of(before.layout())).lines().forEach(text::println);
    Optional<SuitReport.Alternative> best =
        report.get().places().stream().findFirst().map(CrowdReport.Place::alternative);
    if (best.isPresent()) {
      save(best.get(), text);
    } else {
      save(before.layout(), "saved as it is, with nothing moved: ", text);
    }
    return best.map(SuitReport.Alternative::study).orElse(before);
  }

  private static Study contradicts(Study before, PrintWriter text) {
    text.println(before.summary());
    text.println("no place was looked for: mend the ties first; longlow check names them");
    return before;
  }

  private void save(SuitReport.Alternative best, PrintWriter text) throws IOException {
    save(best.layout(), "saved with alternative 1: ", text);
  }

  private void save(Layout layout, String says, PrintWriter text) throws IOException {
    if (out != null) {
      Optional<Path> kept = save(layout);
      text.println(says + out);
      kept.ifPresent(k -> text.println(Outputs.kept(k)));
    }
  }

  /** The search takes a while; say at once what would only come out at the end. */
  private void checkFolder() throws IOException {
    Path folder = out.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(out)) {
      throw new Refusal("--out is " + out + "; give a file in a folder that exists");
    }
    Outputs.file(out, file);
  }

  /**
   * Drawings that outlines are traced from go where the layout goes.
   *
   * @return where the layout is kept that was there
   */
  private Optional<Path> save(Layout best) throws IOException {
    TracedFiles.copy(best, folder(file), folder(out));
    return LayoutWriter.saveAndKeep(best, out);
  }

  private static Path folder(Path file) {
    return file.toAbsolutePath().getParent();
  }
}
