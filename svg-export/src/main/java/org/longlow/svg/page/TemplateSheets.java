package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/**
 * Full-size template sheets of one part.
 *
 * <p>Every sheet has a 100 mm bar each way, register crosses in the corners of the overlap, glue
 * strips and edges to trim, arrows to its neighbours, and a block with part, sheet number, place in
 * the grid and which way it lies. Bars, block and words of the edges go where they cover least of
 * the drawing; where they must cover something, lines that are not cut leave them out. Words of the
 * drawing stand on the one sheet on which nothing is glued over them. The map of a template of
 * several sheets, with how to put them together, stands in free room of the first sheet that has
 * some, else on a sheet of its own before them.
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
    Sheets best = Sheets.of(TemplatePlan.of(part, laid, settings));
    List<Supplier<TemplatePlan>> others = best.isGood() ? List.of() : best.plan().shifted(laid);
    for (Supplier<TemplatePlan> other : others) {
      Sheets moved = Sheets.of(other.get());
      if (moved.plan().sheets().size() <= best.plan().sheets().size() && moved.isBetter(best)) {
        best = moved;
      }
      if (best.isGood()) {
        break;
      }
    }
    return pages(best);
  }

  /** A sheet with the drawing on it, what stands along its edges, and bars and notes. */
  private record Blocked(
      Drawing drawn, SheetEdges edges, SheetBlocks blocks, List<Envelope> onStrips) {

    static Blocked of(TemplatePlan plan, TemplatePlan.Sheet sheet) {
      Drawing onPage =
          Clip.words(
              plan.drawing().transformed(plan.drawingToPage(sheet).toJts()), plan.open(sheet));
      Envelope tile = new Envelope(0, plan.width(), 0, plan.height());
      FreeRoom room = new FreeRoom(onPage.transformed(plan.toSheet().toJts()), tile);
      Blocked usual = of(plan, sheet, onPage, room.again(), SheetBlocks.Bars.NONE);
      SheetBlocks.Bars strips = usual.edges().onStrips(usual.blocks(), room);
      return strips.all().isEmpty() ? usual : of(plan, sheet, onPage, room, strips);
    }

    private static Blocked of(
        TemplatePlan plan,
        TemplatePlan.Sheet sheet,
        Drawing onPage,
        FreeRoom room,
        SheetBlocks.Bars strips) {
      SheetEdges edges = new SheetEdges(plan, sheet, room, strips);
      Envelope inner = new Envelope(0, plan.width(), 0, plan.height());
      inner.expandBy(-plan.settings().overlapMm() - 1);
      FreeRoom left = room.within(edges.free());
      boolean inches = plan.settings().lengths().inchBar();
      return new Blocked(onPage, edges, SheetBlocks.in(left, strips, inner, inches), strips.all());
    }

    /** How much of the drawing lies under bars and notes that are on no strip. */
    double coveredMm() {
      return blocks.all().stream()
          .filter(at -> !onStrips.contains(at))
          .mapToDouble(blocks.room()::covered)
          .sum();
    }
  }

  /**
   * All sheets of a template.
   *
   * @param map on one of them; empty where none has room, or there is only one
   */
  private record Sheets(TemplatePlan plan, List<Blocked> all, Optional<CoverBlock> map) {

    static Sheets of(TemplatePlan plan) {
      List<Blocked> all = plan.sheets().stream().map(s -> Blocked.of(plan, s)).toList();
      return new Sheets(plan, all, all.size() == 1 ? Optional.empty() : cover(plan, all));
    }

    /** Whether the map needs no sheet of its own. */
    boolean isMapped() {
      return all.size() == 1 || map.isPresent();
    }

    boolean isGood() {
      return coveredMm() == 0 && isMapped();
    }

    boolean isBetter(Sheets other) {
      int less = Double.compare(other.coveredMm(), coveredMm());
      return less > 0 || less == 0 && isMapped() && !other.isMapped();
    }

    /** How much of the drawing lies under bars and notes, as {@link FreeRoom} counts it. */
    double coveredMm() {
      return all.stream().mapToDouble(Blocked::coveredMm).sum();
    }
  }

  private static List<Page> pages(Sheets best) {
    TemplatePlan plan = best.plan();
    List<TemplatePlan.Sheet> sheets = plan.sheets();
    List<Page> out = new ArrayList<>();
    if (!best.isMapped()) {
      out.add(CoverSheet.page(plan));
    }
    for (int i = 0; i < sheets.size(); i++) {
      Blocked on = best.all().get(i);
      out.add(sheet(plan, sheets.get(i), on, best.map().filter(c -> c.in(on.blocks().room()))));
    }
    return List.copyOf(out);
  }

  /** Finds room for the map on the first sheet that has some, for fewer words if need be. */
  private static Optional<CoverBlock> cover(TemplatePlan plan, List<Blocked> sheets) {
    for (List<String> notes : List.of(SheetGuide.notes(plan), SheetGuide.brief(plan))) {
      for (Blocked b : sheets) {
        Optional<CoverBlock> found = CoverBlock.in(b.blocks().room(), plan, notes);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  private static Page sheet(
      TemplatePlan plan, TemplatePlan.Sheet sheet, Blocked on, Optional<CoverBlock> cover) {
    boolean first = plan.sheets().size() == 1 || cover.isPresent();
    SheetEdges edges = on.edges();
    SheetBlocks blocks = on.blocks();
    List<Mark> backing = new ArrayList<>(edges.crosses().backing());
    backing.addAll(edges.arrowBacking());
    backing.addAll(blocks.backing());
    Affine toPage = plan.toPage();
    Drawing onPage =
        Clip.round(
            on.drawn(),
            Stream.of(blocks.all(), edges.captioned(false))
                .flatMap(List::stream)
                .map(toPage::of)
                .toList(),
            Stream.of(on.onStrips(), edges.captioned(true))
                .flatMap(List::stream)
                .map(toPage::of)
                .toList());
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
            new Layer("sheet-register", "Register crosses", edges.crosses().marks()),
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
