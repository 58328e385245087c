package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/**
 * Full-size template sheets of one part.
 *
 * <p>Every sheet has a 100 mm bar each way, register crosses in the corners of the overlap, glue
 * strips and edges to trim, arrows to its neighbours, and a block with part, sheet number, place in
 * the grid and which way it lies. Bars and block go where they cover least of the drawing; where
 * they must cover something, the drawing's lines are drawn over their paper backing and the bars
 * over the lines. Words of the drawing stand on the one sheet on which nothing is glued over them.
 * The map of a template of several sheets, with how to put them together, stands in free room of
 * the first sheet that has some, else on a sheet of its own before them.
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
   * Returns the sheets of a part: the used ones row by row, before them a sheet map if it has found
   * no room on one of them.
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
    Blocked best = Blocked.of(TemplatePlan.of(part, laid, settings));
    if (best.coveredMm() > 0) {
      for (Supplier<TemplatePlan> other : best.plan().shifted(laid)) {
        Blocked moved = Blocked.of(other.get());
        if (moved.plan().sheets().size() <= best.plan().sheets().size()
            && moved.coveredMm() < best.coveredMm()) {
          best = moved;
        }
        if (best.coveredMm() == 0) {
          break;
        }
      }
    }
    return pages(best);
  }

  /** Sheets with the places of bars and notes on each. */
  private record Blocked(TemplatePlan plan, List<Drawing> drawn, List<SheetBlocks> blocks) {

    static Blocked of(TemplatePlan plan) {
      List<Drawing> drawn = new ArrayList<>();
      List<SheetBlocks> blocks = new ArrayList<>();
      double o = plan.settings().overlapMm();
      Envelope region = new Envelope(o + 1, plan.width() - o - 1, o + 1, plan.height() - o - 1);
      for (TemplatePlan.Sheet sheet : plan.sheets()) {
        Affine toPage = plan.drawingToPage(sheet);
        Drawing onPage = Clip.words(plan.drawing().transformed(toPage.toJts()), plan.open(sheet));
        drawn.add(onPage);
        blocks.add(SheetBlocks.in(onPage.transformed(plan.toSheet().toJts()), region));
      }
      return new Blocked(plan, drawn, blocks);
    }

    /** How much of the drawing lies under bars and notes, mm of line. */
    double coveredMm() {
      return blocks.stream().mapToDouble(SheetBlocks::coveredMm).sum();
    }
  }

  private static List<Page> pages(Blocked best) {
    TemplatePlan plan = best.plan();
    List<TemplatePlan.Sheet> sheets = plan.sheets();
    List<Drawing> drawn = best.drawn();
    List<SheetBlocks> blocks = best.blocks();
    Optional<CoverBlock> cover = sheets.size() == 1 ? Optional.empty() : cover(plan, blocks);
    List<Page> out = new ArrayList<>();
    if (sheets.size() > 1 && cover.isEmpty()) {
      out.add(CoverSheet.page(plan));
    }
    for (int i = 0; i < sheets.size(); i++) {
      FreeRoom room = blocks.get(i).room();
      out.add(
          sheet(plan, sheets.get(i), drawn.get(i), blocks.get(i), cover.filter(c -> c.in(room))));
    }
    return List.copyOf(out);
  }

  /** Finds room for the map on the first sheet that has some, for fewer words if need be. */
  private static Optional<CoverBlock> cover(TemplatePlan plan, List<SheetBlocks> blocks) {
    for (List<String> notes : List.of(SheetGuide.notes(plan), SheetGuide.brief(plan))) {
      for (SheetBlocks b : blocks) {
        Optional<CoverBlock> found = CoverBlock.in(b.room(), plan, notes);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static Page sheet(
      TemplatePlan plan,
      TemplatePlan.Sheet sheet,
      Drawing onPage,
      SheetBlocks blocks,
      Optional<CoverBlock> cover) {
    boolean first = plan.sheets().size() == 1 || cover.isPresent();
    SheetEdges edges = new SheetEdges(plan, sheet);
    List<Mark> backing = new ArrayList<>(edges.crossBacking());
    backing.addAll(edges.arrowBacking());
    backing.addAll(blocks.backing());
    Affine toPage = plan.toPage();
    Envelope notes = blocks.notes();
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
            new Layer("sheet-bars", "Scale bars", blocks.bars(plan.settings(), first)),
            new Layer(
                "sheet-notes",
                "Notes",
                SheetNotes.block(plan, sheet, notes.getMinX(), notes.getMinY())));
    List<Page.Piece> pieces = new ArrayList<>();
    pieces.add(new Page.Piece(under, toPage, null));
    pieces.add(new Page.Piece(onPage, Affine.IDENTITY, plan.printable()));
    cover.ifPresent(c -> pieces.addAll(c.pieces(toPage)));
    pieces.add(new Page.Piece(over, toPage, null));
    return new Page(plan.part() + ": sheet " + sheet.label(), plan.settings().paper(), pieces);
  }
}
