package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.concurrent.Callable;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.app.StepWatch;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;
import org.longlow.svg.page.TemplateSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow templates}: full-size sheets for cardboard. */
@Command(name = "templates", description = "Makes full-size template sheets, SVG and PDF.")
final class TemplatesCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(paramLabel = "FILE", description = "The layout file.")
  private Path file;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "DIR",
      description = "The folder to put the sheets in.")
  private Path out;

  @Option(
      names = "--paper",
      defaultValue = "a4",
      converter = PaperOption.class,
      description = "a4, letter, a3, tabloid, a0 or WxH in mm; ${DEFAULT-VALUE} unless said.")
  private Paper paper;

  @Option(
      names = "--part",
      paramLabel = "NAME",
      description = "Only this part; may be given more than once.")
  private Set<String> parts = Set.of();

  @Option(
      names = "--measured-across",
      paramLabel = "MM",
      defaultValue = "100",
      converter = MillimetreOption.class,
      description = "What the 100 mm bar across your last print measures; corrects the next.")
  private double across;

  @Option(
      names = "--measured-along",
      paramLabel = "MM",
      defaultValue = "100",
      converter = MillimetreOption.class,
      description = "What the 100 mm bar along your last print measures; corrects the next.")
  private double along;

  /** Each bar alone, so that the message can name the option. */
  private static void measured(String option, double mm) {
    PrintCorrection.refusal(mm)
        .ifPresent(
            why -> {
              throw new Refusal(option + " is " + why);
            });
  }

  @Override
  public Integer call() throws IOException {
    Outputs.folder(out);
    measured("--measured-across", across);
    measured("--measured-along", along);
    Study study = Loading.study(Loading.layout(file), file);
    List<String> known = Making.partsWithTemplates(study);
    List<String> unknown = parts.stream().filter(p -> !known.contains(p)).sorted().toList();
    if (!unknown.isEmpty()) {
      throw new Refusal(
          unknown.stream()
              .map(
                  p -> "--part is " + p + "; parts with a template are " + String.join(", ", known))
              .toList());
    }
    TemplateSettings.refusal(paper)
        .ifPresent(
            why -> {
              throw new Refusal("--paper: " + why);
            });
    TemplateSettings settings =
        TemplateSettings.on(paper).withCorrection(PrintCorrection.measured(across, along));
    Making.TemplatesMade made;
    try {
      made = Making.templates(study, out, settings, parts, StepWatch.NONE);
    } catch (OutOfRange e) {
      throw new Refusal(e.getMessage());
    }
    PrintWriter text = spec.commandLine().getOut();
    text.println(
        made.parts()
            + " templates on "
            + made.sheets()
            + " sheets of "
            + paper.name()
            + ": "
            + out);
    made.remarks().forEach(text::println);
    text.println("Print at 100 % (actual size) and measure the 100 mm bars before you cut.");
    text.flush();
    return ExitCodes.of(study);
  }
}
