package org.longlow.sketcher.app;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.BalanceChart;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.ViewSheets;
import org.longlow.sketcher.report.Report;
import org.longlow.sketcher.report.ReportOptions;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.TemplateSettings;

/** Makes drawings, templates and reports of a study. Every file appears whole or not at all. */
public final class Making {

  /** Round a chart, mm. */
  private static final double CHART_MARGIN_MM = 8;

  private Making() {}

  /**
   * A drawing that was written.
   *
   * @param scale such as 1:10
   * @param kept where a file is kept that stood there and that was not Longlow's as it wrote it
   */
  public record Drawn(String scale, Optional<Path> kept) {}

  /**
   * Writes the dimensioned elevation with the first rider to {@code file}, as large as fits.
   *
   * @throws IllegalArgumentException if the ending is neither .svg nor .pdf
   */
  public static Drawn drawing(Study study, Path file, Paper paper, String date) throws IOException {
    return drawing(
        study,
        ViewSheets.elevation(study, PictureOptions.PLAIN, paper, date),
        file,
        InTheWay.Consent.GIVEN);
  }

  /**
   * Writes a sheet with views to {@code file}, SVG or PDF by its ending.
   *
   * @throws IllegalArgumentException if the ending is neither .svg nor .pdf
   * @throws InTheWay.NotAgreed if something is there that may not be replaced
   */
  public static Drawn drawing(
      Study study, DimensionedElevation.Sheet sheet, Path file, InTheWay.Consent consent)
      throws IOException {
    consent.ask(List.of(file));
    return new Drawn(
        sheet.scale().toString(), drawing(study, sheet.page(), sheet.ink().palette(), file));
  }

  /**
   * Writes the chart of balance, SVG or PDF by its ending.
   *
   * @return where a file is kept that stood there and that was not Longlow's as it wrote it
   */
  public static Optional<Path> chart(Study study, BalanceChart chart, Path file)
      throws IOException {
    return drawing(study, Page.round(chart.drawing(), CHART_MARGIN_MM), Palette.CARD, file);
  }

  private static Optional<Path> drawing(Study study, Page page, Palette palette, Path file)
      throws IOException {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    if (name.endsWith(".svg")) {
      return Output.svg(page, palette, file);
    }
    if (name.endsWith(".pdf")) {
      return Output.pdf(List.of(page), palette, study.layout().title(), file);
    }
    throw new IllegalArgumentException("the drawing " + file + " must end in .svg or .pdf");
  }

  /**
   * What making templates gave.
   *
   * @param parts how many templates
   * @param sheets how many sheets of paper
   * @param finished false if it was stopped
   * @param remarks what is to be said of plain pieces and of other files in the folder, one
   *     sentence each
   * @param list how many sheets are in which file
   */
  public record TemplatesMade(
      int parts, int sheets, boolean finished, List<String> remarks, String list) {
    static final TemplatesMade NONE = new TemplatesMade(0, 0, false, List.of(), "");
  }

  /**
   * Writes full-size sheets of the parts called {@code parts}, or of all that get one, into {@code
   * folder}, as {@link #templates(TemplateSet, Path, InTheWay.Consent, StepWatch)}.
   *
   * @throws IllegalArgumentException if a template needs far too many sheets; nothing is written
   */
  public static TemplatesMade templates(
      Study study, Path folder, TemplateSettings settings, Set<String> parts, StepWatch progress)
      throws IOException {
    Optional<TemplateSet> set = TemplateSet.of(study, parts, settings, progress);
    return set.isEmpty()
        ? TemplatesMade.NONE
        : templates(set.get(), folder, InTheWay.Consent.GIVEN, progress);
  }

  /**
   * Writes a set of templates into {@code folder}: a PDF for each template or for those that share
   * sheets, and each sheet as SVG. Whoever else puts templates there is waited for. If it is
   * stopped nothing is there that was not there before.
   *
   * @param progress told before each sheet
   * @throws InTheWay.NotAgreed if something is there that may not be replaced; all is as it was
   *     then
   */
  public static TemplatesMade templates(
      TemplateSet set, Path folder, InTheWay.Consent consent, StepWatch progress)
      throws IOException {
    int all = set.pages().size();
    try (SheetFolder there = SheetFolder.begin(folder, set.settings().paper())) {
      List<Supplier<Path>> files = new ArrayList<>();
      set.bundles()
          .forEach(
              b -> files.addAll(there.make(b.stem(), set.layout() + ": " + b.name(), b.sheets())));
      try (Together<Path> making = new Together<>(files)) {
        int taken = 0;
        int done = 0;
        for (TemplateSet.Bundle bundle : set.bundles()) {
          making.take(taken++);
          for (int i = 0; i < bundle.sheets().size(); i++) {
            if (!progress.step(bundle.name(), done++, all)) {
              return TemplatesMade.NONE;
            }
            making.take(taken++);
          }
        }
      } catch (UncheckedIOException e) {
        throw e.getCause();
      }
      List<String> remarks = new ArrayList<>(SetWords.plain(set));
      remarks.addAll(there.finish(set.stems(), consent));
      return new TemplatesMade(
          set.templates().size(), all, true, List.copyOf(remarks), SetWords.sheets(set));
    }
  }

  /** Writes the self-contained report page; see {@link #report(Study, PictureOptions, Path)}. */
  public static Optional<Path> report(Study study, Path file) throws IOException {
    return report(study, PictureOptions.PLAIN, file);
  }

  /**
   * Writes the self-contained report page.
   *
   * @param first who is shown in its first elevation, and in which stance
   * @return where a file is kept that stood there and that was not Longlow's as it wrote it
   */
  public static Optional<Path> report(Study study, PictureOptions first, Path file)
      throws IOException {
    return report(study, first, file, InTheWay.Consent.GIVEN);
  }

  /** As {@link #report(Study, PictureOptions, Path)}, of a machine in one of its states. */
  public static Optional<Path> report(MachineState state, PictureOptions first, Path file)
      throws IOException {
    ReportOptions options = ReportOptions.PLAIN.withFirst(first);
    return Output.html(
        Report.html(
            state.study(), state.built().map(b -> options.withBuilt(b.rows())).orElse(options)),
        file);
  }

  /** As {@link #report(Study, PictureOptions, Path)}, where somebody is to be asked. */
  public static Optional<Path> report(
      Study study, PictureOptions first, Path file, InTheWay.Consent consent) throws IOException {
    consent.ask(List.of(file));
    return Output.html(Report.html(study, ReportOptions.PLAIN.withFirst(first)), file);
  }

  /**
   * Writes the page by which a printer is measured to {@code file}, SVG or PDF by its ending.
   *
   * @throws IllegalArgumentException if the paper is too small
   * @throws InTheWay.NotAgreed if something is there that may not be replaced
   */
  public static Optional<Path> calibration(Page page, Path file, InTheWay.Consent consent)
      throws IOException {
    consent.ask(List.of(file));
    return file.toString().toLowerCase(Locale.ROOT).endsWith(".svg")
        ? Output.svg(page, file)
        : Output.pdf(List.of(page), page.title(), file);
  }

  /** Writes the findings as JSON, which has no seal: whatever else is there is kept beside. */
  public static Optional<Path> findings(Study study, Path file) throws IOException {
    byte[] text = StudyJson.of(study).getBytes(StandardCharsets.UTF_8);
    Output.folder(file);
    return WholeFile.replace(
        file,
        out -> out.write(text),
        there -> Files.exists(there) && !Arrays.equals(Files.readAllBytes(there), text));
  }

  /** Returns whether a part may be asked for by name: what is bought has a dummy. */
  public static boolean canBeOnPaper(Study study, String part) {
    PartShape shape = study.shapes().get(part);
    return shape != null && !shape.outline().isEmpty();
  }

  /** Returns the names of the parts of {@code study} that get a template. */
  public static List<String> partsWithTemplates(Study study) {
    List<String> names = new ArrayList<>();
    study
        .layout()
        .parts()
        .forEach(
            (name, part) -> {
              if (Templates.made(part) && canBeOnPaper(study, name)) {
                names.add(name);
              }
            });
    return names;
  }
}
