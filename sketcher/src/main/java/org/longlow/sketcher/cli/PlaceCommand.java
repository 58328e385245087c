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
      "Finds seat, peg and grip positions (or any free pins) that suit the whole crew, or with",
      "--people or --measured those at which most of a crowd fit the rider's seat."
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
      description = "Where to save the layout with the best positions.")
  private Path out;

  @Mixin private CrowdOptions crowds;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    boolean many = crowds.areAsked();
    Layout layout = Loading.layout(file);
    Study before = Loading.study(layout, file);
    if (out != null) {
      checkFolder();
    }
    PrintWriter text = spec.commandLine().getOut();
    Study best;
    try {
      best = many ? forMany(before, text) : forCrew(layout, text);
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

  private Study forMany(Study before, PrintWriter text) throws IOException {
    if (before.contradicts()) {
      return contradicts(before, text);
    }
    CrowdSuiting.People people =
        new CrowdSuiting.People(
            crowds.crowd(),
            crowds.gear(),
            crowds.without(),
            Runtime.getRuntime().availableProcessors());
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
    } else if (out != null) {
      text.println("nothing was saved");
    }
    return best.map(SuitReport.Alternative::study).orElse(before);
  }

  private static Study contradicts(Study before, PrintWriter text) {
    text.println(before.summary());
    text.println("no place was looked for: mend the ties first; longlow check names them");
    return before;
  }

  private void save(SuitReport.Alternative best, PrintWriter text) throws IOException {
    if (out != null) {
      Optional<Path> kept = save(best.layout());
      text.println("saved with alternative 1: " + out);
      kept.ifPresent(k -> text.println(Outputs.kept(k)));
    }
  }

  /** The search takes a while; say at once what would only come out at the end. */
  private void checkFolder() {
    Path folder = out.toAbsolutePath().getParent();
    if (folder == null || !Files.isDirectory(folder) || Files.isDirectory(out)) {
      throw new Refusal("--out is " + out + "; give a file in a folder that exists");
    }
    Outputs.file(out);
  }

  /**
   * Drawings that outlines are traced from go where the layout goes.
   *
   * @return where the layout is kept that was there
   */
  private Optional<Path> save(Layout best) throws IOException {
    TracedFiles.copy(best, file.toAbsolutePath().getParent(), out.toAbsolutePath().getParent());
    return LayoutWriter.saveAndKeep(best, out);
  }
}
