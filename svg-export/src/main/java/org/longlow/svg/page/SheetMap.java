package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * The map that shows how the sheets lie together; sheets that stay empty are shown crossed out and
 * without a name.
 */
final class SheetMap {

  private static final double HAIR_MM = 0.13;

  private final TemplatePlan plan;
  private final Affine placement;
  private final double factor;

  /** Fits the whole grid into a box, in the middle. */
  SheetMap(TemplatePlan plan, Envelope box) {
    this.plan = plan;
    Tiling t = plan.tiling();
    Envelope all = t.tile(0, 0);
    all.expandToInclude(t.tile(t.rows() - 1, t.columns() - 1));
    factor = Math.min(box.getWidth() / all.getWidth(), box.getHeight() / all.getHeight());
    placement =
        Affine.move(-all.centre().x, -all.centre().y)
            .then(Affine.scale(factor, factor))
            .then(Affine.move(box.centre().x, box.centre().y));
  }

  /** Returns the placement from drawing millimetres to those of the box. */
  Affine placement() {
    return placement;
  }

  /** Returns the fields of used sheets, with the given one marked (null for none). */
  List<Mark> fields(TemplatePlan.Sheet here) {
    List<Mark> out = new ArrayList<>();
    for (int r = 0; r < plan.used().length; r++) {
      for (int c = 0; c < plan.used()[r].length; c++) {
        Envelope e = cell(r, c);
        boolean isHere = here != null && here.row() == r && here.column() == c;
        if (!plan.isUsed(r, c)) {
          out.add(
              new Mark.Shape(
                  "",
                  Planar.FACTORY.createMultiLineString(
                      new LineString[] {
                        Planar.rectangle(e).getExteriorRing(),
                        Planar.line(e.getMinX(), e.getMinY(), e.getMaxX(), e.getMaxY())
                      }),
                  Style.line(Tone.FAINT, HAIR_MM)));
        }
        if (isHere) {
          out.add(new Mark.Shape("", Planar.rectangle(e), Style.area(Tone.PENCIL, 1)));
        }
      }
    }
    for (TemplatePlan.Sheet s : plan.sheets()) {
      out.add(
          new Mark.Shape(
              "map:" + s.label(),
              Planar.rectangle(cell(s.row(), s.column())),
              Style.line(Tone.PENCIL, 0.18)));
    }
    return out;
  }

  /** Returns the names of the used sheets, as large as fits but at most the given height, mm. */
  List<Mark> names(double largestMm) {
    List<Mark> out = new ArrayList<>();
    for (TemplatePlan.Sheet s : plan.sheets()) {
      Envelope e = cell(s.row(), s.column());
      double size = Math.min(largestMm, e.getHeight() * 0.45);
      double width = Lettering.widthMm(s.label(), 1) * 1.2;
      size = Math.min(size, e.getWidth() * 0.8 / width);
      double half = Lettering.widthMm(s.label(), size) * 0.6 + 0.6;
      double tall = size / 2 + 0.8;
      out.add(
          new Mark.Shape(
              "",
              Planar.rectangle(
                  e.centre().x - half,
                  e.centre().y - tall,
                  e.centre().x + half,
                  e.centre().y + tall),
              Style.area(Tone.PAPER, 0.85)));
      out.add(
          new Mark.Words(
              "map:" + s.label(),
              s.label(),
              e.centre().x,
              e.centre().y,
              size,
              0,
              Anchor.CENTRE,
              Tone.INK));
    }
    return out;
  }

  private Envelope cell(int row, int column) {
    return placement.of(plan.tiling().cell(row, column));
  }
}
