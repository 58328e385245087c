package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Lays small templates beside each other on sheets: the largest first, each where it finds room
 * lowest, on the first sheet that has some, in whichever of its turns lies lowest.
 */
final class Nest {

  /** Room for the saw between two lines to cut, mm; judgement. */
  static final double CUTTING_MM = 6;

  /** Room kept round words, mm. */
  private static final double WORDS_MM = 2;

  /** Side of a square of the raster on sheets for home printers and on larger ones, mm. */
  private static final double FINE_MM = 2;

  private static final double COARSE_MM = 4;

  /** A sheet larger than A3 is laid on the coarse raster, mm². */
  private static final double LARGE_MM2 = 297 * 420;

  /** A line may brush less than this of a square without filling it, as a part of its side. */
  private static final double BRUSH = 0.25;

  private final double wide;
  private final double high;
  private final double step;
  private final List<Envelope> kept;
  private final List<Sheet> sheets = new ArrayList<>();

  /**
   * @param wide of a sheet, mm
   * @param high of a sheet, mm
   * @param kept what is kept free on each, sheet mm
   */
  Nest(double wide, double high, List<Envelope> kept) {
    this.wide = wide;
    this.high = high;
    this.step = wide * high > LARGE_MM2 ? COARSE_MM : FINE_MM;
    this.kept = kept;
  }

  /** A piece as it may lie: its drawing moved so that the raster's corner is the origin. */
  private record Way(
      Drawing drawing, Squares cut, Squares all, Squares cutGrown, Squares allGrown) {
    static Way of(Drawing drawn, double step) {
      List<Geometry> cut = new ArrayList<>();
      List<Geometry> all = new ArrayList<>();
      for (Layer layer : drawn.layers()) {
        for (Mark m : layer.marks()) {
          Geometry g =
              m instanceof Mark.Shape s ? s.geometry() : Planar.rectangle(((Mark.Words) m).boxMm());
          all.add(g);
          if (isCut(m)) {
            cut.add(g);
          }
        }
      }
      Envelope box = drawn.paperBoundsMm();
      double room = CUTTING_MM + BRUSH * step;
      box.expandBy(room);
      Geometry line = Planar.FACTORY.buildGeometry(cut);
      Geometry marks = Planar.FACTORY.createGeometryCollection(all.toArray(new Geometry[0]));
      return new Way(
          drawn.moved(-box.getMinX(), -box.getMinY()),
          bits(line, box, step),
          bits(marks, box, step),
          bits(grown(cut, room), box, step),
          bits(grown(all, WORDS_MM), box, step));
    }

    private static boolean isCut(Mark m) {
      return m instanceof Mark.Shape s
          && s.style().stroke() != null
          && s.style().strokeMm() >= Style.wide(Tone.INK).strokeMm();
    }

    private static Geometry grown(List<Geometry> all, double mm) {
      return Planar.FACTORY.createGeometryCollection(
          all.stream().map(g -> g.buffer(mm, 4)).toArray(Geometry[]::new));
    }

    private static Squares bits(Geometry g, Envelope box, double step) {
      return Squares.of(InkRaster.of(g, box, step));
    }

    int squares() {
      return cut.columns() * cut.rows();
    }
  }

  /** A sheet while it is filled. */
  private final class Sheet {
    private final Squares cut = new Squares(squares(wide), squares(high));
    private final Squares all = new Squares(squares(wide), squares(high));
    private final List<Integer> pieces = new ArrayList<>();
    private final List<Drawing> drawings = new ArrayList<>();

    Sheet() {
      for (Envelope e : kept) {
        int x = (int) Math.floor(e.getMinX() / step);
        int y = (int) Math.floor(e.getMinY() / step);
        all.fill(x, y, squares(e.getMaxX()) - x + 1, squares(e.getMaxY()) - y + 1);
      }
    }

    /** Puts a piece where it lies lowest; false if it finds no room. */
    boolean take(int piece, List<Way> ways) {
      Way best = null;
      int x = 0;
      int y = Integer.MAX_VALUE;
      for (Way way : ways) {
        int last = Math.min(y - 1, cut.rows() - way.cut().rows());
        search:
        for (int row = 0; row <= last; row++) {
          for (int column = 0; column <= cut.columns() - way.cut().columns(); column++) {
            if (!cut.meets(way.cutGrown(), column, row)
                && !all.meets(way.allGrown(), column, row)) {
              best = way;
              x = column;
              y = row;
              break search;
            }
          }
        }
      }
      if (best == null) {
        return false;
      }
      cut.add(best.cut(), x, y);
      all.add(best.all(), x, y);
      pieces.add(piece);
      drawings.add(best.drawing().moved(x * step, y * step));
      return true;
    }
  }

  private int squares(double mm) {
    return (int) Math.floor(mm / step);
  }

  /**
   * A sheet that is laid.
   *
   * @param pieces which of those that were given lie on it
   * @param drawings these, sheet mm
   * @param highMm how far up the sheet they reach, mm
   */
  record Laid(List<Integer> pieces, List<Drawing> drawings, double highMm) {}

  /**
   * Lays pieces; those that fit on no sheet are on none.
   *
   * @param ways of each piece, its drawing as it may lie
   */
  List<Laid> lay(List<List<Drawing>> ways) {
    List<List<Way>> all =
        ways.stream().map(w -> w.stream().map(d -> Way.of(d, step)).toList()).toList();
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      order.add(i);
    }
    order.sort(Comparator.comparingInt((Integer i) -> -all.get(i).get(0).squares()));
    for (int piece : order) {
      List<Way> its = all.get(piece);
      if (sheets.stream().noneMatch(s -> s.take(piece, its))) {
        Sheet next = new Sheet();
        if (next.take(piece, its)) {
          sheets.add(next);
        }
      }
    }
    return sheets.stream()
        .map(s -> new Laid(s.pieces, s.drawings, s.all.top() * step + WORDS_MM))
        .toList();
  }
}
