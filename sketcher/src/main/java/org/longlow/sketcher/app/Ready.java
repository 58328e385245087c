package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Counted;
import org.longlow.sketcher.picture.DimensionedElevation;
import org.longlow.sketcher.picture.ElevationPicture;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.sketcher.picture.View;
import org.longlow.sketcher.picture.ViewSheets;
import org.longlow.sketcher.picture.Views;
import org.longlow.sketcher.shop.Shop;
import org.longlow.svg.page.CalibrationSheet;
import org.longlow.svg.page.Page;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;
import org.longlow.svg.page.Scale;

/**
 * Paper that is worked out and only needs to be written: what is shown of it is what is written.
 */
public interface Ready {

  /** Returns the sheets as they are printed. */
  List<Page> pages();

  /** Returns what it is, in a sentence. */
  String words();

  /** Returns the files that it changes in a folder, whether they are there or not. */
  List<Path> places(Path folder) throws IOException;

  /**
   * Writes it. Stopped, it leaves the folder as it was.
   *
   * @param progress told before each sheet
   * @return what is there now, one line for each thing; empty if it was stopped
   * @throws InTheWay.NotAgreed if something is there that may not be replaced; all is as it was
   *     then
   */
  Optional<List<String>> write(Path folder, InTheWay.Consent consent, StepWatch progress)
      throws IOException;

  /** Templates at full size. */
  record Templates(TemplateSet set) implements Ready {
    @Override
    public List<Page> pages() {
      return set.pages();
    }

    @Override
    public String words() {
      int templates = set.templates().size();
      int sheets = pages().size();
      String figures =
          set.plain().isEmpty()
              ? ""
              : " "
                  + Counted.of(set.plain().size(), "plain piece")
                  + " by figures in the report's cut list; tick one alone for its sheet.";
      return templates == 0
          ? set.plain().isEmpty() ? "Tick a part." : "No sheet needed:" + figures
          : Counted.of(templates, "template")
              + " on "
              + Counted.of(sheets, "sheet")
              + " of "
              + set.settings().paper().name()
              + "; "
              + set.settings().correction().words()
              + "."
              + figures;
    }

    @Override
    public List<Path> places(Path folder) throws IOException {
      return set.files(folder);
    }

    @Override
    public Optional<List<String>> write(Path folder, InTheWay.Consent consent, StepWatch progress)
        throws IOException {
      Making.TemplatesMade made = Making.templates(set, folder, consent, progress);
      if (!made.finished()) {
        return Optional.empty();
      }
      List<String> lines = new ArrayList<>();
      lines.add(Counted.of(made.parts(), "template") + " on " + Counted.of(made.sheets(), "sheet"));
      lines.addAll(made.remarks());
      return Optional.of(lines);
    }
  }

  /**
   * The dimensioned elevation.
   *
   * @param shows who is aboard and in which stance, in words
   * @param file its name, ending in .svg or .pdf
   */
  record Drawing(Study study, DimensionedElevation.Sheet sheet, String shows, String file)
      implements Ready {

    /**
     * Works it out.
     *
     * @param views which views of the machine
     * @param scale the largest preferred one that fits unless given
     * @throws org.longlow.rider.geom.OutOfRange if it does not fit
     */
    public static Drawing of(
        Study study,
        PictureOptions options,
        Views views,
        Optional<Scale> scale,
        Paper paper,
        String date,
        boolean svg) {
      return new Drawing(
          study,
          ViewSheets.sheet(study, options, views, scale, paper, date),
          View.shown(study, options).words(),
          views.kind().words().replace(' ', '-') + (svg ? ".svg" : ".pdf"));
    }

    /** Returns one in colour as it is printed in some ink. */
    public Drawing in(SheetInk ink) {
      return new Drawing(study, sheet.in(ink), shows, file);
    }

    @Override
    public List<Page> pages() {
      return List.of(sheet.page());
    }

    @Override
    public String words() {
      return "At " + sheet.scale() + " on " + sheet.page().paper().label() + ": " + shows + ".";
    }

    @Override
    public List<Path> places(Path folder) {
      return List.of(folder.resolve(file));
    }

    @Override
    public Optional<List<String>> write(Path folder, InTheWay.Consent consent, StepWatch progress)
        throws IOException {
      return progress.step("the drawing", 0, 1)
          ? Optional.of(
              told(file, Making.drawing(study, sheet, folder.resolve(file), consent).kept()))
          : Optional.empty();
    }
  }

  /**
   * The report.
   *
   * @param first who is shown in its first elevation, and in which stance
   * @param pages the first elevation
   */
  record Report(Study study, PictureOptions first, List<Page> pages) implements Ready {
    private static final String FILE = "report.html";
    private static final double MARGIN_MM = 4;

    /** Works out what its first elevation shows. */
    public static Report of(Study study, PictureOptions first) {
      var drawing = ElevationPicture.of(study, first).scaled(1 / first.denominator());
      return new Report(study, first, List.of(Page.round(drawing, MARGIN_MM)));
    }

    @Override
    public String words() {
      return "One page for a browser, with everything found. Its first picture shows "
          + View.shown(study, first).words()
          + ".";
    }

    @Override
    public List<Path> places(Path folder) {
      return List.of(folder.resolve(FILE));
    }

    @Override
    public Optional<List<String>> write(Path folder, InTheWay.Consent consent, StepWatch progress)
        throws IOException {
      return progress.step("the report", 0, 1)
          ? Optional.of(told(FILE, Making.report(study, first, folder.resolve(FILE), consent)))
          : Optional.empty();
    }
  }

  /** Lists and cutting plans for the shop. */
  record Lists(ListSet set) implements Ready {

    /** Works them out. */
    public static Lists of(Study study, Paper paper) {
      return new Lists(ListSet.of(Shop.of(study), paper));
    }

    @Override
    public List<Page> pages() {
      return set.pages();
    }

    @Override
    public String words() {
      return Counted.of(set.plans().size(), "page")
          + " of cutting plans, "
          + Counted.of(set.weighing().size(), "page")
          + " to fill in at the scales, and "
          + Counted.of(set.shop().tables().size(), "list")
          + " for a spreadsheet, the shopping list among them.";
    }

    @Override
    public List<Path> places(Path folder) {
      return set.names().stream().map(folder::resolve).toList();
    }

    @Override
    public Optional<List<String>> write(Path folder, InTheWay.Consent consent, StepWatch progress)
        throws IOException {
      return set.write(folder, consent, progress)
          .map(
              remarks -> {
                List<String> lines = new ArrayList<>();
                lines.add(Counted.of(set.names().size() - 1, "file") + " of lists and plans");
                lines.addAll(remarks);
                return lines;
              });
    }
  }

  /** The page by which a printer is measured. */
  record Calibration(Page page) implements Ready {

    /** Works it out; {@code correction} is none, or that of the printer that is to be tried. */
    public static Calibration of(Paper paper, PrintCorrection correction) {
      return new Calibration(CalibrationSheet.of(paper, correction));
    }

    private String file() {
      return "calibration-" + page.paper().name().toLowerCase(Locale.ROOT) + ".pdf";
    }

    @Override
    public List<Page> pages() {
      return List.of(page);
    }

    @Override
    public String words() {
      return page.title() + " on " + page.paper().label() + ".";
    }

    @Override
    public List<Path> places(Path folder) {
      return List.of(folder.resolve(file()));
    }

    @Override
    public Optional<List<String>> write(Path folder, InTheWay.Consent consent, StepWatch progress)
        throws IOException {
      return progress.step("the calibration page", 0, 1)
          ? Optional.of(told(file(), Making.calibration(page, folder.resolve(file()), consent)))
          : Optional.empty();
    }
  }

  private static List<String> told(String file, Optional<Path> kept) {
    List<String> lines = new ArrayList<>(List.of(file));
    kept.ifPresent(k -> lines.add("the file that was there is kept as " + k.getFileName()));
    return lines;
  }
}
