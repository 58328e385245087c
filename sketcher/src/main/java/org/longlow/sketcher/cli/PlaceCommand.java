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
    description = "Finds seat, peg and grip positions (or any free pins) that suit the whole crew.")
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

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    Layout layout = Loading.layout(file);
    Loading.study(layout, file);
    if (out != null) {
      checkFolder();
    }
    SuitReport report;
    try {
      try (ProgressLine line = ProgressLine.onTerminal()) {
        report =
            Suiting.of(
                layout,
                moves.stream().map(String::strip).toList(),
                SuitSettings.DEFAULT,
                line::show);
      }
    } catch (UnknownNames e) {
      throw new Refusal(e.lines().stream().map(l -> "--move: " + l).toList());
    }
    PrintWriter text = spec.commandLine().getOut();
    if (report.best().isEmpty()) {
      text.println(report.before().summary());
      text.println("no place was looked for: mend the ties first; longlow check names them");
      text.flush();
      return ExitCodes.of(report.before());
    }
    new PlaceText(report, units.of(layout)).lines().forEach(text::println);
    if (out != null) {
      Optional<Path> kept = save(report.best().get().layout());
      text.println("saved with alternative 1: " + out);
      kept.ifPresent(k -> text.println(Outputs.kept(k)));
    }
    text.flush();
    return ExitCodes.of(report.best().get().study());
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
