package org.longlow.sketcher.cli;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.app.InTheWay;
import org.longlow.sketcher.app.Making;
import org.longlow.sketcher.app.StepWatch;
import org.longlow.sketcher.app.TemplateSet;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.Views;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.WholeView;
import org.longlow.svg.page.CalibrationSheet;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;
import org.longlow.svg.page.TemplateSettings;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** {@code longlow templates}: full-size sheets for cardboard. */
@Command(name = "templates", description = "Makes full-size template sheets, SVG and PDF.")
final class TemplatesCommand implements Callable<Integer> {

  @Spec private CommandSpec spec;

  @Parameters(
      paramLabel = "FILE",
      arity = "0..1",
      description = "The layout file; --calibration needs none.")
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
      description = {
        "a4, letter, a3, tabloid, a0 or WxH in mm; \"roll 610\" for a roll 610 mm wide, cut as",
        "long as each template needs; ${DEFAULT-VALUE} unless said."
      })
  private Paper paper;

  @Option(
      names = "--part",
      paramLabel = "NAME",
      description = {"Only this part, also where figures would do; may be given more than once."})
  private Set<String> parts = Set.of();

  @Option(
      names = "--whole",
      paramLabel = "side|front|plan",
      converter = ViewKindOption.class,
      description = {
        "Instead of parts the whole machine, seen from there, at full size on as many sheets as it",
        "takes, with whom and in which stance you say."
      })
  private Views.Kind whole;

  @Mixin private ViewOption view;

  @Mixin private PrinterOption printer;

  @Option(
      names = "--calibration",
      description = {
        "Only the page by which a printer is measured: bars of 100 and 200 mm both ways; corrected",
        "already where --printer is given."
      })
  private boolean calibration;

  @Mixin private VariantOption variant;

  @Mixin private UnitsOption units;

  @Override
  public Integer call() throws IOException {
    Outputs.folder(out);
    if (file == null && !calibration) {
      throw new Refusal("FILE is missing: name the layout file, or write --calibration");
    }
    TemplateSettings.refusal(paper)
        .ifPresent(
            why -> {
              throw new Refusal("--paper: " + why);
            });
    return calibration ? calibration() : templates();
  }

  private int calibration() throws IOException {
    new Unused()
        .see(file != null, "FILE")
        .see(!parts.isEmpty(), "--part")
        .see(whole != null, "--whole")
        .see(view.isGiven(), "--who and --stance")
        .see(variant.isAsked(), "the state of the machine")
        .refuse("--calibration makes one page, alike for all machines");
    if (printer.forgets()) {
      throw new Refusal(
          "--measured-across and --measured-along are kept under the name of a printer, and none is"
              + " named: add --printer NAME, or leave --calibration out");
    }
    PrintCorrection correction = printer.ofThisUser();
    Path page = out.resolve("calibration-" + paper.name().toLowerCase(Locale.ROOT) + ".pdf");
    Optional<Path> kept =
        Making.calibration(CalibrationSheet.of(paper, correction), page, InTheWay.Consent.GIVEN);
    PrintWriter text = spec.commandLine().getOut();
    text.println("written: " + page);
    kept.ifPresent(k -> text.println(Outputs.kept(k)));
    text.println(
        "Print it at 100 % (actual size), measure its bars with a steel rule, and give what you"
            + " measured with --printer NAME --measured-across MM --measured-along MM.");
    text.flush();
    return ExitCodes.PASS;
  }

  private int templates() throws IOException {
    Study study = variant.of(units.on(Loading.layout(file)), file).study();
    PrintCorrection correction = printer.ofThisUser();
    TemplateSettings settings = TemplateSettings.on(paper).withCorrection(correction);
    Making.TemplatesMade made;
    try {
      made = whole == null ? parts(study, settings) : whole(study, settings);
    } catch (OutOfRange e) {
      throw new Refusal(e.getMessage());
    }
    PrintWriter text = spec.commandLine().getOut();
    text.println(
        Counted.of(made.parts(), "template")
            + " on "
            + Counted.of(made.sheets(), "sheet")
            + " of "
            + paper.name()
            + ": "
            + out);
    if (made.sheets() > 0) {
      text.println("Sheets: " + made.list() + ".");
    }
    made.remarks().forEach(text::println);
    if (!correction.printer().isEmpty()) {
      text.println(correction.words() + ".");
    }
    text.println("Print at 100 % (actual size) and measure the 100 mm bars before you cut.");
    text.flush();
    return ExitCodes.of(study);
  }

  private Making.TemplatesMade parts(Study study, TemplateSettings settings) throws IOException {
    if (view.isGiven()) {
      throw new Refusal("--who and --stance are for --whole; templates of parts are as drawn");
    }
    List<String> known = Making.partsWithTemplates(study);
    List<String> unknown =
        parts.stream().filter(p -> !Making.canBeOnPaper(study, p)).sorted().toList();
    if (!unknown.isEmpty()) {
      throw new Refusal(
          unknown.stream()
              .map(
                  p ->
                      "--part is "
                          + p
                          + (study.shapes().containsKey(p)
                              ? ", of which there is nothing to cut as it is drawn: it has no length"
                                  + " or no area"
                              : "")
                          + "; parts with a template are "
                          + String.join(", ", known)
                          + "; of what is bought, named alone, there is a dummy")
              .toList());
    }
    return Making.templates(study, out, settings, parts, StepWatch.NONE);
  }

  private Making.TemplatesMade whole(Study study, TemplateSettings settings) throws IOException {
    if (!parts.isEmpty()) {
      throw new Refusal("--whole and --part are both given; leave one of them out");
    }
    Aspect aspect =
        switch (whole) {
          case SIDE -> Aspect.SIDE;
          case FRONT -> Aspect.FRONT;
          case PLAN -> Aspect.PLAN;
          case ALL ->
              throw new Refusal("--whole is all; write side, front or plan, one after the other");
        };
    NamedDrawing drawing = WholeView.of(study, view.of(study).withAspect(aspect), settings);
    return Making.templates(
        TemplateSet.of(study, drawing, settings), out, InTheWay.Consent.GIVEN, StepWatch.NONE);
  }
}
