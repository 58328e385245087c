package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Full-size sheets that several small templates share, with room for the saw between them. */
public final class SharedSheets {

  /** Kept free along the edges of a sheet and beside bars and notes, mm. */
  private static final double EDGE_MM = 1;

  /**
   * A piece of a roll that is shared is no longer than this, and what is longer has one for itself,
   * mm: an arm's reach; judgement.
   */
  private static final double ROLL_PIECE_MM = 1200;

  private SharedSheets() {}

  /**
   * What was laid.
   *
   * @param pages the sheets
   * @param pieces which of the templates lie on each
   */
  public record Shared(List<Page> pages, List<List<Integer>> pieces) {

    /** Returns the templates that lie on none. */
    public Set<Integer> left(int all) {
      Set<Integer> left = new TreeSet<>();
      for (int i = 0; i < all; i++) {
        left.add(i);
      }
      pieces.forEach(left::removeAll);
      return left;
    }
  }

  /**
   * Lays templates that each fit on one sheet beside each other. One that would have a sheet for
   * itself is left out, and on a roll one that is longer than a piece to share.
   *
   * @param title what the sheets are called
   */
  public static Shared of(String title, List<LaidOut> templates, TemplateSettings settings) {
    TemplateSettings s = TemplatePlan.fed(settings);
    double wide = UsableSheet.wideMm(s);
    double high = UsableSheet.highMm(s);
    if (s.paper().roll()) {
      high = Math.min(high, ROLL_PIECE_MM);
    }
    SheetBlocks blocks = blocks(s.lengths().inchBar());
    Nest nest = new Nest(wide, high, blocks.all());
    List<Integer> small = new ArrayList<>();
    List<List<Drawing>> ways = new ArrayList<>();
    for (int i = 0; i < templates.size(); i++) {
      LaidOut template = templates.get(i);
      if (!s.paper().roll() || template.ink().map(g -> longMm(g) <= ROLL_PIECE_MM).orElse(true)) {
        small.add(i);
        ways.add(ways(template, wide, high));
      }
    }
    List<Nest.Laid> laid = nest.lay(ways).stream().filter(l -> l.pieces().size() > 1).toList();
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < laid.size(); i++) {
      pages.add(page(title, i + 1, laid.size(), laid.get(i), s, blocks));
    }
    return new Shared(
        List.copyOf(pages),
        laid.stream().map(l -> l.pieces().stream().map(small::get).toList()).toList());
  }

  /** How far the two points of it that lie farthest apart are from each other. */
  private static double longMm(Geometry ink) {
    Coordinate[] corners = ink.convexHull().getCoordinates();
    double most = 0;
    for (Coordinate a : corners) {
      for (Coordinate b : corners) {
        most = Math.max(most, a.distance(b));
      }
    }
    return most;
  }

  /** Bars and notes fill the lower left corner, so that all the rest is in one piece. */
  private static SheetBlocks blocks(boolean inches) {
    ScaleBar.Block bar = ScaleBar.Block.full(inches);
    double long1 = bar.longMm();
    double short1 = bar.shortMm();
    double e = EDGE_MM;
    double y = 2 * e + short1;
    return new SheetBlocks(
        new SheetBlocks.Bar(bar, new Envelope(e, e + long1, e, e + short1)),
        new SheetBlocks.Bar(bar, new Envelope(2 * e + long1, 2 * e + long1 + short1, e, e + long1)),
        new Envelope(e, e + SheetNotes.WIDTH_MM, y, y + TemplateSettings.NOTES_HEIGHT_MM),
        null);
  }

  /** Ways to lie that fit a sheet: as on the machine, or with its longest side level. */
  private static List<Drawing> ways(LaidOut template, double wide, double high) {
    Set<Double> turns = new LinkedHashSet<>();
    List<Double> level = template.ink().map(LeastPaper::turns).orElse(List.of(0.0));
    for (double turn : level.subList(0, Math.min(2, level.size()))) {
      for (int quarter : new int[] {0, 1, 3, 2}) {
        turns.add(turn + quarter * Math.PI / 2);
      }
    }
    return turns.stream()
        .map(t -> template.brief().turned(t).on(box -> new Tiling(box, wide, high, 0)))
        .toList();
  }

  private static Page page(
      String title, int number, int of, Nest.Laid laid, TemplateSettings s, SheetBlocks blocks) {
    TemplateSettings cut =
        s.paper().roll()
            ? s.withPaper(
                s.paper()
                    .piece(
                        Math.max(TemplateSettings.LEAST_USABLE_MM, laid.highMm())
                                * s.correction().sy()
                            + 2 * s.marginMm()),
                false)
            : s;
    double wide = UsableSheet.wideMm(cut);
    double high = UsableSheet.highMm(cut);
    Affine toPage = TemplatePlan.toPage(cut);
    Drawing over =
        Drawing.of(
            "",
            new Layer(
                "sheet-frame",
                "Printable area",
                List.of(
                    new Mark.Shape(
                        "", Planar.rectangle(0, 0, wide, high), Style.line(Tone.FAINT, 0.13)))),
            new Layer("sheet-bars", "Scale bars", blocks.bars(cut, false)),
            new Layer(
                "sheet-notes",
                "Notes",
                SheetNotes.shared(
                    title,
                    number,
                    of,
                    laid.pieces().size(),
                    cut,
                    blocks.notes().getMinX(),
                    blocks.notes().getMinY())));
    return new Page(
        title + ": sheet " + number,
        cut.paper(),
        List.of(
            new Page.Piece(
                together(laid.drawings()), toPage, toPage.of(new Envelope(0, wide, 0, high))),
            new Page.Piece(over, toPage, null)));
  }

  /** Returns one drawing with the marks of all, layer by layer. */
  private static Drawing together(List<Drawing> drawings) {
    Map<String, List<Layer>> byId =
        drawings.stream()
            .flatMap(d -> d.layers().stream())
            .collect(Collectors.groupingBy(Layer::id, LinkedHashMap::new, Collectors.toList()));
    return new Drawing(
        "",
        byId.values().stream()
            .map(
                same ->
                    new Layer(
                        same.get(0).id(),
                        same.get(0).title(),
                        same.stream().flatMap(l -> l.marks().stream()).toList()))
            .toList());
  }
}
