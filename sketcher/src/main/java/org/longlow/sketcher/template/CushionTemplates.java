package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.shape.Cushions;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Scene;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Templates of a cushion from the side: all of it, and each layer of foam. */
final class CushionTemplates {

  /** How far the lower edges of the lowest layer are bevelled, mm; judgement. */
  private static final double BEVEL_MM = 10;

  private final CushionPart cushion;
  private final PartShape shape;
  private final Places places;
  private final TemplateFigures figures;
  private final Map<String, Scene.Sunk> pressed;
  private final double lengthMm;

  /**
   * Prepares the templates of one cushion.
   *
   * @param pressed how far its layers give, by person
   */
  CushionTemplates(
      CushionPart cushion,
      PartShape shape,
      Places places,
      TemplateFigures figures,
      Map<String, Scene.Sunk> pressed) {
    this.cushion = cushion;
    this.shape = shape;
    this.places = places;
    this.figures = figures;
    this.pressed = pressed;
    this.lengthMm = places.pin(cushion.from()).distance(places.pin(cushion.to()));
  }

  /** Returns the whole cushion from the side. */
  NamedDrawing side() {
    List<Geometry> bands = Cushions.bands(cushion, places);
    TemplateSheet sheet =
        new TemplateSheet(
            cushion.name(), cushion.name() + ", from the side", shape.outline(), "up", "forward");
    for (Geometry band : bands) {
      sheet.mark(band, Style.narrow(Tone.INK));
    }
    sheet.drill(cushion.from(), places.pin(cushion.from()));
    sheet.drill(cushion.to(), places.pin(cushion.to()));
    List<String> lines = new ArrayList<>();
    lines.add("layers are numbered from the top, next to the person, down to the board:");
    for (int i = 0; i < cushion.layers().size(); i++) {
      lines.addAll(layerLines(i));
    }
    lines.add("board " + figures.mm(places.value(cushion.board())) + ", its face through the pins");
    lines.add("line is the foam surface free, nobody on it");
    lines.add(TemplateWords.massLine(shape, figures));
    lines.addAll(TemplateWords.cutLines(figures));
    return named("side", sheet, lines);
  }

  /** Returns layer {@code i} from the top, counted from 0, as free foam from the side. */
  NamedDrawing layer(int i) {
    Geometry band = Cushions.bands(cushion, places).get(cushion.layers().size() - i);
    String title =
        cushion.name() + ", " + (numbered(i) + " " + cushion.layers().get(i).name()).strip();
    TemplateSheet sheet = new TemplateSheet(cushion.name(), title, band, "up", "forward");
    List<String> lines = new ArrayList<>();
    lines.addAll(layerLines(i));
    lines.add(
        "length "
            + figures.mm(lengthMm)
            + figures.own(
                "; in plan as the board, 5 to 10 mm larger all round so that the cover pulls it"
                    + " in"));
    long boards = shape.prisms().stream().map(Prism::across).distinct().count();
    if (boards > 1) {
      lines.add("make " + boards + ", one for each board");
    }
    boolean lowest = i == cushion.layers().size() - 1;
    lines.add("glue firm to soft from the board up");
    if (lowest) {
      lines.add("bevel its lower edges all round to the line, so that the cover lies on the board");
      bevels(sheet, band, Cushions.bands(cushion, places).get(0));
    }
    lines.addAll(TemplateWords.cutLines(figures));
    return named("layer-" + (i + 1), sheet, lines);
  }

  /** Bevels at both ends of the lower edge of a band of foam that lies on a board. */
  private void bevels(TemplateSheet sheet, Geometry band, Geometry board) {
    PointMm from = places.pin(cushion.from());
    PointMm u = places.pin(cushion.to()).minus(from).times(1 / lengthMm);
    Point foam = band.getCentroid();
    Point wood = board.getCentroid();
    PointMm away = new PointMm(foam.getX() - wood.getX(), foam.getY() - wood.getY());
    PointMm n = u.left().times(u.left().dot(away) < 0 ? -1 : 1);
    double thick = places.value(cushion.layers().get(cushion.layers().size() - 1).thickness());
    double cut = Math.min(BEVEL_MM, Math.min(thick, lengthMm / 2) / 2);
    for (int end : new int[] {0, 1}) {
      PointMm corner = from.plus(u.times(end * lengthMm));
      PointMm in = corner.plus(u.times(end == 0 ? cut : -cut));
      PointMm up = corner.plus(n.times(cut));
      sheet.mark(Planar.line(in.x(), in.z(), up.x(), up.z()), Style.narrow(Tone.INK));
    }
  }

  /** Says which layer it is, and which end is counted from. */
  private String numbered(int fromTop) {
    return "layer " + (fromTop + 1) + (fromTop == 0 ? " (top)" : "");
  }

  private List<String> layerLines(int fromTop) {
    FoamSpec spec = cushion.layers().get(fromTop);
    int fromBoard = cushion.layers().size() - 1 - fromTop;
    double free = places.value(spec.thickness());
    List<String> lines = new ArrayList<>();
    lines.add(numbered(fromTop) + ": " + spec.name() + ", " + figures.mm(free) + " free");
    pressed.forEach(
        (person, sunk) ->
            lines.add(
                "    pressed to "
                    + figures.mm(free - sunk.layerSinksMm().get(fromBoard))
                    + " under "
                    + person
                    + " (±20 %)"));
    return lines;
  }

  private NamedDrawing named(String what, TemplateSheet sheet, List<String> lines) {
    return sheet.with(
        TemplateWords.fileName(cushion.name()) + "-" + what, cushion.name(), lines, List.of());
  }
}
