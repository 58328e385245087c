package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.disk.WholeFile;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.report.Report;
import org.longlow.sketcher.report.ReportOptions;
import org.longlow.sketcher.template.NamedDrawing;
import org.longlow.sketcher.template.TemplateSizes;
import org.longlow.sketcher.template.Templates;
import org.longlow.svg.drawing.Palette;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.write.PdfInfo;
import org.longlow.svg.write.PdfWriter;
import org.longlow.svg.write.SvgWriter;

/** Makes drawings, templates and reports of a study. Every file appears whole or not at all. */
public final class Making {

  private static final Palette PALETTE = Palette.CARD;

  /** Stands in a folder of templates until all of them are in it. */
  static final String UNFINISHED = "not-finished.txt";

  private static final String UNFINISHED_WORDS =
      "These templates are not complete: making them goes on, or was stopped. Sheets may be missing\n"
          + "or of an older layout. Make them again before you cut.\n";

  private Making() {}

  /**
   * Writes the dimensioned elevation with the first rider to {@code file}, as large as fits.
   *
   * @return the scale, such as 1:10
   * @throws IllegalArgumentException if the ending is neither .svg nor .pdf
   */
  public static String drawing(Study study, Path file, Paper paper, String date)
      throws IOException {
    return drawing(study, PictureOptions.PLAIN, Optional.empty(), file, paper, date);
  }

  /**
   * Writes the dimensioned elevation to {@code file}, SVG or PDF by its ending.
   *
   * @param options who is shown, and in which stance
   * @param scale the scale; the largest preferred one that fits unless given
   * @param paper the sheet; turned to landscape if that shows the machine larger
   * @param date date of issue for the title block, such as 2026-11-25
   * @return the scale, such as 1:10
   * @throws IllegalArgumentException if the ending is neither .svg nor .pdf, or it does not fit
   */
  public static String drawing(
      Study study,
      PictureOptions options,
      Optional<Scale> scale,
      Path file,
      Paper paper,
      String date)
      throws IOException {
    String name = file.getFileName().toString().toLowerCase(Locale.ROOT);
    DimensionedElevation.Sheet sheet =
        scale.isPresent()
            ? DimensionedElevation.sheet(study, options, paper, scale.get(), date)
            : DimensionedElevation.sheet(study, options, paper, date);
    folder(file);
    if (name.endsWith(".svg")) {
      svg(sheet.page(), file);
    } else if (name.endsWith(".pdf")) {
      pdf(List.of(sheet.page()), study.layout().title(), file);
    } else {
      throw new IllegalArgumentException("the drawing " + file + " must end in .svg or .pdf");
    }
    return sheet.scale().toString();
  }

  /**
   * What making templates gave.
   *
   * @param parts how many templates
   * @param sheets how many sheets of paper
   * @param finished false if it was stopped
   */
  public record TemplatesMade(int parts, int sheets, boolean finished) {}

  /**
   * Writes full-size sheets of the parts called {@code parts}, or of all that get one, into {@code
   * folder}: a PDF for each template, and each of its sheets as SVG.
   *
   * @throws IllegalArgumentException if a template needs far too many sheets; nothing is written
   */
  public static TemplatesMade templates(
      Study study, Path folder, TemplateSettings settings, Set<String> parts, StepWatch progress)
      throws IOException {
    TemplateSizes.check(study, parts, settings);
    List<NamedDrawing> drawings = Templates.of(study, parts);
    int sheets = 0;
    int done = 0;
    Files.createDirectories(folder);
    Path mark = folder.resolve(UNFINISHED);
    text(UNFINISHED_WORDS, mark);
    String paper = settings.paper().name().toLowerCase(Locale.ROOT);
    for (NamedDrawing drawing : drawings) {
      if (!progress.step(drawing.name(), done, drawings.size())) {
        return new TemplatesMade(done, sheets, false);
      }
      List<Page> pages = drawing.sheets(settings);
      pdf(
          pages,
          study.layout().name() + ": " + drawing.name(),
          folder.resolve(drawing.fileName() + "-" + paper + ".pdf"));
      for (int i = 0; i < pages.size(); i++) {
        svg(
            pages.get(i),
            folder.resolve(
                String.format(Locale.ROOT, "%s-%s-%02d.svg", drawing.fileName(), paper, i + 1)));
      }
      clearStale(folder, drawing.fileName() + "-" + paper, pages.size());
      sheets += pages.size();
      done++;
    }
    Files.delete(mark);
    return new TemplatesMade(done, sheets, true);
  }

  /** Takes away sheets left from a run that needed more; they would be glued on by mistake. */
  private static void clearStale(Path folder, String stem, int sheets) throws IOException {
    int next = sheets + 1;
    while (Files.deleteIfExists(
        folder.resolve(String.format(Locale.ROOT, "%s-%02d.svg", stem, next)))) {
      next++;
    }
  }

  /** Writes the self-contained report page. */
  public static void report(Study study, Path file) throws IOException {
    report(study, PictureOptions.PLAIN, file);
  }

  /**
   * Writes the self-contained report page.
   *
   * @param first who is shown in its first elevation, and in which stance
   */
  public static void report(Study study, PictureOptions first, Path file) throws IOException {
    text(Report.html(study, ReportOptions.PLAIN.withFirst(first)), file);
  }

  /** Writes the findings as JSON. */
  public static void findings(Study study, Path file) throws IOException {
    text(StudyJson.of(study), file);
  }

  /** Writes {@code text} to {@code file}, beside it first. */
  public static void text(String text, Path file) throws IOException {
    folder(file);
    byte[] bytes = text.getBytes(StandardCharsets.UTF_8);
    WholeFile.write(file, out -> out.write(bytes));
  }

  private static void svg(Page page, Path file) throws IOException {
    WholeFile.write(file, out -> SvgWriter.write(page, PALETTE, out));
  }

  private static void pdf(List<Page> pages, String title, Path file) throws IOException {
    WholeFile.write(file, out -> PdfWriter.write(pages, PALETTE, PdfInfo.titled(title), out));
  }

  private static void folder(Path file) throws IOException {
    Path parent = file.toAbsolutePath().getParent();
    if (parent != null) {
      Files.createDirectories(parent);
    }
  }

  /** Returns the names of the parts of {@code study} that get a template. */
  public static List<String> partsWithTemplates(Study study) {
    List<String> names = new ArrayList<>();
    study
        .layout()
        .parts()
        .forEach(
            (name, part) -> {
              if (Templates.made(part)) {
                names.add(name);
              }
            });
    return names;
  }
}
