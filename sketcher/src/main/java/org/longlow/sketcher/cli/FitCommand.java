package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.longlow.constraints.fit.AdjustReport;
import org.longlow.constraints.fit.AdjustRun;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.Crowd;
import org.longlow.constraints.fit.FitMachine;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.json.FitJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.body.Gear;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.app.FitPart;
import org.longlow.sketcher.app.FitSet;
import org.longlow.sketcher.app.FitWords;
import org.longlow.sketcher.desk.TracedFiles;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow fit}: how a whole population fits. */
@Command(
    name = "fit",
    description = {
      "Seats thousands of people in the machine, sampled from the survey or measured by you: what"
          + " share fits, what stops the rest, what adjustment would take them in.",
      "Ends with 0 whoever fits."
    })
final class FitCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Mixin private CrowdOptions crowds;

  @Option(names = "--no-adjust", description = "Do not look at what adjustment would take in.")
  private boolean plain;

  @Option(
      names = "--threads",
      paramLabel = "N",
      description =
          "On how many threads; as many as the machine has unless said. Changes nothing else.")
  private Integer threads;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = {
        "A folder for tables (CSV) and pictures (SVG). A run that was stopped goes on there."
      })
  private Path out;

  @Option(names = "--json", description = "Print JSON instead of sentences.")
  private boolean json;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    Crowd crowd = crowds.crowd();
    Gear gear = crowds.gear();
    Set<String> without = crowds.without();
    int on = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
    if (on < 1 || on > 256) {
      throw new Refusal("--threads is " + on + "; give 1 to 256");
    }
    if (out != null) {
      Outputs.folder(out);
    }
    Layout layout = units.on(Loading.layout(file));
    Placed placed = Placer.place(layout);
    if (!placed.holds()) {
      throw new Refusal(
          file + ": the layout contradicts itself, so nobody is judged: longlow check says how");
    }
    Loading.checkStands(placed, file);
    FitMachine machine =
        FitMachine.of(placed)
            .orElseThrow(() -> new Refusal(file + ": " + CrowdOptions.NOBODY_SITS));
    BodyJudge judge = new BodyJudge(machine.checks(), gear, without);
    FitReport report;
    Optional<AdjustReport> adjusted;
    try (ProgressLine line = ProgressLine.ofLongWork()) {
      report = judged(layout, judge, crowd, on, line);
      adjusted =
          plain
              ? Optional.empty()
              : new AdjustRun(machine, judge, crowd, on, line::show, () -> false).run();
    }
    tell(layout, report, adjusted);
    return ExitCodes.PASS;
  }

  private FitReport judged(Layout layout, BodyJudge judge, Crowd crowd, int on, ProgressLine line)
      throws IOException {
    if (out == null) {
      return FitPart.none(judge, crowd, on, line::show);
    }
    FitPart part = FitPart.in(out, work(layout));
    FitReport report = part.run(judge, crowd, on, line::show);
    part.aside()
        .ifPresent(
            kept ->
                spec.commandLine()
                    .getErr()
                    .println(
                        "longlow: "
                            + out.resolve(FitSet.PEOPLE)
                            + ".part is of another run that was stopped, of other people, another"
                            + " state of the machine or another version; it is kept as "
                            + kept
                            + ": call it as before to go on with that run, or delete it"));
    if (part.before() > 0) {
      spec.commandLine()
          .getErr()
          .println(
              "longlow: gone on with " + Counted.of(part.before(), "person") + " judged before");
    }
    return report;
  }

  /** What a run is, so that only the same goes on with its part. */
  private List<byte[]> work(Layout layout) throws IOException {
    List<byte[]> work = new ArrayList<>();
    work.add(Files.readAllBytes(file));
    for (String drawing : TracedFiles.of(layout)) {
      Path traced = file.toAbsolutePath().resolveSibling(drawing);
      work.add(Files.isRegularFile(traced) ? Files.readAllBytes(traced) : new byte[0]);
    }
    work.add(crowds.table());
    String asked = Version.NUMBER + " " + crowds.says();
    work.add(asked.getBytes(StandardCharsets.UTF_8));
    return work;
  }

  private void tell(Layout layout, FitReport report, Optional<AdjustReport> adjusted)
      throws IOException {
    PrintWriter text = spec.commandLine().getOut();
    Units said = layout.units();
    if (json) {
      text.println(FitJson.of(layout.name(), report, adjusted));
    } else {
      FitWords.shares(report, said).forEach(text::println);
      FitWords.reasons(report, said).forEach(text::println);
      adjusted.ifPresent(a -> FitWords.adjustments(a, said).forEach(text::println));
      text.println(FitWords.CAUTION);
    }
    if (out != null) {
      List<String> remarks = new FitSet(layout.name(), report, adjusted, said).write(out);
      FitPart.done(out);
      if (!json) {
        text.println("written: " + out);
        remarks.forEach(text::println);
      }
    }
    text.flush();
  }
}
