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
import java.util.TreeSet;
import java.util.concurrent.Callable;
import org.longlow.constraints.fit.AdjustReport;
import org.longlow.constraints.fit.AdjustRun;
import org.longlow.constraints.fit.BodyJudge;
import org.longlow.constraints.fit.Crowd;
import org.longlow.constraints.fit.CrowdTable;
import org.longlow.constraints.fit.FitMachine;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.SampledCrowd;
import org.longlow.constraints.json.FitJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.body.Gear;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.app.FitPart;
import org.longlow.sketcher.app.FitSet;
import org.longlow.sketcher.app.FitWords;
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

  /** A table of people is refused beyond this. */
  private static final long MOST_BYTES = 200_000_000;

  private static final Set<String> WORN = Set.of("helmet", "boots", "clothes");

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(
      names = "--people",
      paramLabel = "N",
      description = "How many are sampled; 2000 unless said.")
  private Integer people;

  @Option(
      names = "--seed",
      paramLabel = "S",
      description = "A whole number; the same gives the same people. 1 unless said.")
  private Long seed;

  @Option(
      names = "--women",
      paramLabel = "PERCENT",
      description = "How many of a hundred are women; 50 unless said.")
  private Double women;

  @Option(
      names = "--from",
      paramLabel = "soldiers|adults",
      description = {
        "soldiers: stature and mass of the survey, fitter and lighter than others, unless said;",
        "adults: of US adults, from memory."
      })
  private String from;

  @Option(
      names = "--measured",
      paramLabel = "CSV",
      description = {
        "A table of people instead: columns sex, stature, mass, if wanted name and measurements",
        "by their survey names (longlow figure body tells them)."
      })
  private Path measured;

  @Option(
      names = "--wearing",
      split = ",",
      paramLabel = "GEAR",
      description =
          "helmet, boots, clothes, with commas between, or nothing; helmet,boots unless said.")
  private List<String> wearing = List.of("helmet", "boots");

  @Option(
      names = "--without",
      split = ",",
      paramLabel = "KINDS",
      description = "Kinds of findings that do not count, such as hands,load.")
  private List<String> without = List.of();

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
    Crowd crowd = crowd();
    Gear gear = gear();
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
    Wheels wheels = Wheels.of(layout, placed.places());
    if (!wheels.stands()) {
      throw new Refusal(
          wheels.faults().stream().map(f -> file + ": " + f.path() + ": " + f.text()).toList());
    }
    FitMachine machine =
        FitMachine.of(placed)
            .orElseThrow(
                () ->
                    new Refusal(
                        file
                            + ": nobody can sit on it: the rider's seat needs cushions with the"
                            + " roles pan and back, and a peg or footboard"));
    BodyJudge judge = new BodyJudge(machine.checks(), gear, Set.copyOf(kinds()));
    FitReport report;
    Optional<AdjustReport> adjusted;
    try (ProgressLine line = ProgressLine.onTerminal()) {
      report = judged(judge, crowd, on, line);
      adjusted =
          plain
              ? Optional.empty()
              : new AdjustRun(machine, judge, crowd, on, line::show, () -> false).run();
    }
    tell(layout, report, adjusted);
    return ExitCodes.PASS;
  }

  private FitReport judged(BodyJudge judge, Crowd crowd, int on, ProgressLine line)
      throws IOException {
    if (out == null) {
      return FitPart.none(judge, crowd, on, line::show);
    }
    FitPart part = FitPart.in(out, work());
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
          .println("longlow: gone on with " + part.before() + " people judged before");
    }
    return report;
  }

  /** What a run is, so that only the same goes on with its part. */
  private List<byte[]> work() throws IOException {
    List<byte[]> work = new ArrayList<>();
    work.add(Files.readAllBytes(file));
    work.add(measured == null ? new byte[0] : Files.readAllBytes(measured));
    String asked =
        String.join(
            " ",
            Longlow.VERSION,
            String.valueOf(people),
            String.valueOf(seed),
            String.valueOf(women),
            String.valueOf(from),
            new TreeSet<>(wearing).toString(),
            new TreeSet<>(without).toString());
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

  private Crowd crowd() throws IOException {
    if (measured != null) {
      if (people != null || seed != null || women != null || from != null) {
        throw new Refusal(
            "--measured says who they are; leave out --people, --seed, --women and --from");
      }
      return table();
    }
    int size = people == null ? 2000 : people;
    if (size < 1 || size > SampledCrowd.MOST) {
      throw new Refusal("--people is " + size + "; give 1 to " + SampledCrowd.MOST);
    }
    double percent = women == null ? 50 : women;
    if (!(percent >= 0 && percent <= 100)) {
      throw new Refusal("--women is " + percent + "; give 0 to 100 of a hundred");
    }
    SampledCrowd.From whose =
        switch (from == null ? "soldiers" : from.strip()) {
          case "soldiers" -> SampledCrowd.From.SOLDIERS;
          case "adults" -> SampledCrowd.From.ADULTS;
          default -> throw new Refusal("--from is '" + from + "'; use soldiers or adults");
        };
    return new SampledCrowd(whose.of(seed == null ? 1 : seed, percent / 100), whose, size);
  }

  private Crowd table() throws IOException {
    if (!Files.isRegularFile(measured)) {
      throw new Refusal("--measured is " + measured + ", which is no file");
    }
    if (Files.size(measured) > MOST_BYTES) {
      throw new Refusal("--measured is " + measured + ", which is larger than 200 MB; split it");
    }
    CrowdTable.Read read =
        CrowdTable.of(new String(Files.readAllBytes(measured), StandardCharsets.UTF_8));
    return read.crowd()
        .orElseThrow(
            () -> new Refusal(read.faults().stream().map(f -> measured + ": " + f).toList()));
  }

  private Gear gear() {
    List<String> worn = wearing.stream().map(String::strip).toList();
    if (worn.equals(List.of("nothing"))) {
      return Gear.NONE;
    }
    for (String one : worn) {
      if (!WORN.contains(one)) {
        throw new Refusal(
            "--wearing says '" + one + "'; use helmet, boots, clothes or nothing alone");
      }
    }
    return Gear.riding(worn.contains("helmet"), worn.contains("boots"), worn.contains("clothes"));
  }

  private List<String> kinds() {
    List<String> kinds = without.stream().map(String::strip).toList();
    for (String kind : kinds) {
      if (!BodyJudge.KINDS.contains(kind)) {
        throw new Refusal(
            "--without says '"
                + kind
                + "', which is not judged here; kinds are "
                + String.join(", ", BodyJudge.KINDS));
      }
    }
    return kinds;
  }
}
