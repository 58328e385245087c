package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Counted;
import org.longlow.demo.Demos;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.app.StepWatch;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow demo}: the whole main job on a shipped layout. */
@Command(
    name = "demo",
    description = {
      "Does the whole job on a shipped layout: solve, seat, check, draw, report, templates.",
      "Ends with the code of its findings; heron ships with a fault, so with 3."
    })
final class DemoCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "NAME",
      arity = "0..1",
      defaultValue = "heron",
      description = "Which machine; ${DEFAULT-VALUE} unless said.")
  private String name;

  @Option(
      names = "--out",
      paramLabel = "DIR",
      description = "The folder for what it makes; longlow-out/NAME unless said.")
  private Path out;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    if (!Demos.names().contains(name)) {
      throw new Refusal(
          "there is no shipped machine "
              + name
              + "; there are "
              + String.join(", ", Demos.names()));
    }
    Path folder = out == null ? Path.of("longlow-out", name) : out;
    Outputs.folder(folder);
    Layout layout = units.on(Demos.layout(name));
    Study study = Study.of(layout);
    Demos.copy(name, folder);
    List<Path> kept = new ArrayList<>();
    Making.findings(study, folder.resolve("findings.json")).ifPresent(kept::add);
    String today = LocalDate.now().toString();
    Making.Drawn svg = Making.drawing(study, folder.resolve("elevation.svg"), Paper.A3, today);
    svg.kept().ifPresent(kept::add);
    Making.drawing(study, folder.resolve("elevation.pdf"), Paper.A3, today)
        .kept()
        .ifPresent(kept::add);
    Making.report(study, folder.resolve("report.html")).ifPresent(kept::add);
    Making.TemplatesMade made =
        Making.templates(
            study,
            folder.resolve("templates"),
            TemplateSettings.on(Paper.A4),
            Set.of(),
            StepWatch.NONE);
    summary(study, folder, svg.scale(), made);
    kept.forEach(k -> spec.commandLine().getOut().println(Outputs.kept(k)));
    made.remarks().forEach(spec.commandLine().getOut()::println);
    spec.commandLine().getOut().flush();
    return ExitCodes.of(study);
  }

  private void summary(Study study, Path folder, String scale, Making.TemplatesMade made) {
    PrintWriter text = spec.commandLine().getOut();
    text.println(study.layout().title());
    study.layout().notes().forEach(n -> text.println("  " + n));
    text.println();
    text.println(study.summary());
    study.findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL)
        .forEach(
            f -> text.println("  " + f.verdict().says() + ": " + f.text(study.layout().units())));
    text.println();
    text.println("In " + folder + ":");
    text.println("  elevation.svg, elevation.pdf  dimensioned elevation at " + scale);
    text.println("  report.html                   everything on one page");
    text.println("  findings.json                 every finding, for scripts");
    text.println(
        "  "
            + name
            + ".json"
            + " ".repeat(Math.max(1, 25 - name.length()))
            + "the layout itself, to change");
    text.println(
        "  templates/                    "
            + Counted.of(made.parts(), "full-size template")
            + " on "
            + Counted.of(made.sheets(), "A4 sheet"));
    text.println("Print them at 100 % (actual size) and measure the 100 mm bars before you cut.");
    text.println();
    text.println("A sketch, not a certificate: local codes and licensed inspection decide.");
    text.flush();
  }
}
