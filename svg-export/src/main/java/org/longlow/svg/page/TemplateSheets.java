package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Full-size template sheets of one part.
 *
 * <p>Every sheet has a 100 mm bar each way, register crosses in the corners of the overlap, glue
 * strips and edges to trim, arrows to its neighbours, and a block with part, sheet number, place in
 * the grid and which way it lies. Bars and block go where they cover least of the drawing; where
 * they must cover something, the drawing's lines are drawn over their paper backing and the bars
 * over the lines. Words of the drawing stand on the one sheet on which nothing is glued over them.
 * A template of several sheets starts with a sheet map.
 *
 * <p>Layers of a sheet whose id starts with {@code sheet-} are of the sheet, all others are of the
 * drawing.
 */
public final class TemplateSheets {

  private TemplateSheets() {}

  /**
   * Returns why a part of this size would take more than {@link Tiling#MOST_TILES}; empty if not.
   *
   * @param box the part at 1:1, mm
   */
  public static Optional<String> refusal(String part, Envelope box, TemplateSettings settings) {
    return TemplatePlan.refusal(box, settings).map(why -> part + ": " + why);
  }

  /**
   * Returns how many sheets a part of this size needs at most, without making them.
   *
   * @param box the part at 1:1, mm, that nothing refuses
   */
  public static int count(Envelope box, TemplateSettings settings) {
    Tiling tiling = TemplatePlan.tiling(box, settings);
    return tiling.rows() * tiling.columns();
  }

  /**
   * Returns the sheets of a part: a sheet map first if there is more than one, then the used sheets
   * row by row.
   *
   * @param part what the part is called; any text, shortened where it does not fit
   * @param drawing the part at 1:1, mm
   * @throws IllegalArgumentException if the drawing is empty or needs more than {@link
   *     Tiling#MOST_TILES} sheets
   */
  public static List<Page> of(String part, Drawing drawing, TemplateSettings settings) {
    if (drawing.boundsMm().isNull()) {
      throw new IllegalArgumentException(
          "part '" + part + "' has nothing to print: its drawing is empty; give it an outline");
    }
    return of(part, sheets -> drawing, settings);
  }

  /**
   * As {@link #of(String, Drawing, TemplateSettings)}, of a template that keeps its words off the
   * seams.
   */
  public static List<Page> of(String part, LaidOut laid, TemplateSettings settings) {
    TemplatePlan plan = TemplatePlan.of(part, laid, settings);
    List<TemplatePlan.Sheet> sheets = plan.sheets();
    List<Page> out = new ArrayList<>();
    if (sheets.size() > 1) {
      out.add(CoverSheet.page(plan));
    }
    for (TemplatePlan.Sheet sheet : sheets) {
      out.add(sheet(plan, sheet));
    }
    return List.copyOf(out);
  }

  private static Page sheet(TemplatePlan plan, TemplatePlan.Sheet sheet) {
    double w = plan.width();
    double h = plan.height();
    double o = plan.settings().overlapMm();
    Drawing onPage =
        Clip.words(plan.drawing().transformed(plan.drawingToPage(sheet).toJts()), plan.open(sheet));
    Drawing local = onPage.transformed(plan.toSheet().toJts());
    Envelope region = new Envelope(o + 1, w - o - 1, o + 1, h - o - 1);
    FreeRoom room = new FreeRoom(local, region);
    Envelope across = room.take(ScaleBar.BLOCK_LONG_MM, ScaleBar.BLOCK_SHORT_MM, 0, 0, false);
    Envelope along = room.take(ScaleBar.BLOCK_SHORT_MM, ScaleBar.BLOCK_LONG_MM, 1, 0, false);
    Envelope notes = room.take(SheetNotes.WIDTH_MM, TemplateSettings.NOTES_HEIGHT_MM, 0, 1, false);
    if (notes != null && room.covered(notes) > 0) {
      // The largest block first may find room that the bars, which fit in many places, took.
      FreeRoom again = new FreeRoom(local, region);
      Envelope notes2 =
          again.take(SheetNotes.WIDTH_MM, TemplateSettings.NOTES_HEIGHT_MM, 0, 1, false);
      Envelope along2 = again.take(ScaleBar.BLOCK_SHORT_MM, ScaleBar.BLOCK_LONG_MM, 1, 0, false);
      Envelope across2 = again.take(ScaleBar.BLOCK_LONG_MM, ScaleBar.BLOCK_SHORT_MM, 0, 0, false);
      if (notes2 != null
          && along2 != null
          && across2 != null
          && again.covered(notes2) + again.covered(along2) + again.covered(across2)
              < room.covered(notes) + room.covered(along) + room.covered(across)) {
        room = again;
        notes = notes2;
        along = along2;
        across = across2;
      }
    }
    if (across == null || along == null || notes == null) {
      // One block stands in the way of the next: fall back on the corners, where all three always
      // fit.
      across = corner(region, ScaleBar.BLOCK_LONG_MM, ScaleBar.BLOCK_SHORT_MM, 0, 0);
      along = corner(region, ScaleBar.BLOCK_SHORT_MM, ScaleBar.BLOCK_LONG_MM, 1, 0);
      notes = corner(region, SheetNotes.WIDTH_MM, TemplateSettings.NOTES_HEIGHT_MM, 0, 1);
    }
    boolean inches = plan.settings().lengths().inchBar();
    String measure = ScaleBar.measure(plan.settings().correction());
    List<Mark> bars =
        new ArrayList<>(ScaleBar.across(across.getMinX(), across.getMinY(), measure, inches));
    bars.addAll(ScaleBar.along(along.getMinX(), along.getMinY(), measure, inches));
    if (plan.sheets().size() == 1) {
      double side = ScaleBar.SQUARE_MM + 4;
      Envelope square = room.take(side, side, 1, 1, true);
      if (square != null) {
        bars.addAll(ScaleBar.square(square.getMinX() + 2, square.getMinY() + 2));
      }
    }

    SheetEdges edges = new SheetEdges(plan, sheet);
    List<Mark> backing = new ArrayList<>(edges.crossBacking());
    backing.addAll(edges.arrowBacking());
    for (Envelope block : List.of(across, along, notes)) {
      backing.add(new Mark.Shape("", Planar.rectangle(block), Style.area(Tone.PAPER, 1)));
    }
    Affine toPage = plan.toPage();
    Drawing under =
        Drawing.of(
            "",
            new Layer("sheet-strips", "Glue strips", edges.strips()),
            new Layer("sheet-backing", "Backing", backing));
    Drawing over =
        Drawing.of(
            "",
            new Layer("sheet-frame", "Printable area", edges.frame()),
            new Layer("sheet-arrows", "To the next sheet", edges.arrows()),
            new Layer("sheet-register", "Register crosses", edges.crosses()),
            new Layer("sheet-bars", "Scale bars", bars),
            new Layer(
                "sheet-notes",
                "Notes",
                SheetNotes.block(plan, sheet, notes.getMinX(), notes.getMinY())));
    return new Page(
        plan.part() + ": sheet " + sheet.label(),
        plan.settings().paper(),
        List.of(
            new Page.Piece(under, toPage, null),
            new Page.Piece(onPage, Affine.IDENTITY, plan.printable()),
            new Page.Piece(over, toPage, null)));
  }

  private static Envelope corner(Envelope region, double width, double height, int right, int top) {
    double x = right == 1 ? region.getMaxX() - width : region.getMinX();
    double y = top == 1 ? region.getMaxY() - height : region.getMinY();
    return new Envelope(x, x + width, y, y + height);
  }
}
