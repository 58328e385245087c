package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;

/**
 * A sheet of paper with pieces of drawings on it. Page millimetres start at the lower left corner,
 * y up.
 *
 * @param title what the sheet is called, for file properties and titles
 */
public record Page(String title, Paper paper, List<Piece> pieces) {

  /**
   * A drawing placed on a page.
   *
   * @param placement drawing mm to page mm; stroke widths and letter heights are not scaled
   * @param clip rectangle in page mm to which the piece is cut, or null; copied
   */
  public record Piece(Drawing drawing, Affine placement, Envelope clip) {
    public Piece {
      Objects.requireNonNull(drawing, "drawing of a piece");
      Objects.requireNonNull(placement, "placement of a piece");
      clip = clip == null ? null : new Envelope(clip);
      if (clip != null && clip.isNull()) {
        throw new IllegalArgumentException("clip rectangle of a piece is empty");
      }
    }

    /** Returns the piece in page millimetres, cut to its clip rectangle. */
    public Drawing onPage() {
      Drawing placed =
          placement.equals(Affine.IDENTITY) ? drawing : drawing.transformed(placement.toJts());
      return clip == null ? placed : Clip.drawing(placed, clip);
    }
  }

  public Page {
    Objects.requireNonNull(title, "title of a page (may be empty)");
    Objects.requireNonNull(paper, "paper of a page");
    pieces = List.copyOf(pieces);
  }

  /** Returns a page with one drawing already in page millimetres. */
  public static Page of(String title, Paper paper, Drawing drawing) {
    return new Page(title, paper, List.of(new Piece(drawing, Affine.IDENTITY, null)));
  }

  /**
   * Returns a page that just holds a drawing that is at paper scale, with a margin all round; for
   * embedding in a web page. What lies in the same place in two drawings is written with the same
   * decimals: it is moved by whole thousandths.
   *
   * @throws IllegalArgumentException if the drawing is empty or the page would not be a possible
   *     {@link Paper}
   */
  public static Page round(Drawing drawing, double marginMm) {
    Envelope box = drawing.paperBoundsMm();
    if (box.isNull()) {
      throw new IllegalArgumentException("drawing '" + drawing.title() + "' is empty");
    }
    double w = Math.max(Paper.SHORTEST_MM, whole(box.getWidth() + 2 * marginMm));
    double h = Math.max(Paper.SHORTEST_MM, whole(box.getHeight() + 2 * marginMm));
    Affine centre =
        Affine.move(
            whole(w / 2 - (box.getMinX() + box.getMaxX()) / 2),
            whole(h / 2 - (box.getMinY() + box.getMaxY()) / 2));
    return new Page(
        drawing.title(), new Paper("round", w, h), List.of(new Piece(drawing, centre, null)));
  }

  private static double whole(double mm) {
    return Math.round(mm * 1000) / 1000.0;
  }

  /**
   * Turns a height above the lower edge into a depth below the upper edge, mm: the only such turn
   * there is.
   */
  public double down(double y) {
    return paper.heightMm() - y;
  }

  /**
   * Returns everything on the page in page millimetres, in drawing order. Empty layers are dropped;
   * where two pieces share a layer id, the later one gets a number after it.
   */
  public List<Layer> layers() {
    List<Layer> out = new ArrayList<>();
    Map<String, Integer> used = new HashMap<>();
    for (Piece piece : pieces) {
      for (Layer layer : piece.onPage().layers()) {
        if (layer.marks().isEmpty()) {
          continue;
        }
        int n = used.merge(layer.id(), 1, Integer::sum);
        String id = layer.id();
        while (n > 1 && used.putIfAbsent(id = layer.id() + "-" + n, 1) != null) {
          n++;
        }
        out.add(new Layer(id, layer.title(), layer.marks()));
      }
    }
    return List.copyOf(out);
  }
}
