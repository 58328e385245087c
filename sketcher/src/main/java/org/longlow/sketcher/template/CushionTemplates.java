package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.shape.Cushions;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Scene;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Templates of a cushion: from the side, the board in plan, each layer of foam. */
final class CushionTemplates {

  /** Nearer than this to the board a bracket is fixed to it, mm; judgement. */
  private static final double TOUCH_MM = 6;

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
    lines.add("glue firm to soft from the board up; bevel lower edges");
    lines.addAll(TemplateWords.cutLines(figures));
    return named("layer-" + (i + 1), sheet, lines);
  }

  /** Returns the board in plan: forward (or up, for a back) to the right, the machine's left up. */
  List<NamedDrawing> boards(Map<String, PartShape> shapes) {
    List<Interval> across = shape.prisms().stream().map(Prism::across).distinct().toList();
    List<NamedDrawing> out = new ArrayList<>();
    for (int k = 0; k < across.size(); k++) {
      out.add(board(across.get(k), shapes, across.size() > 1 ? "-" + (k + 1) : ""));
    }
    return out;
  }

  private NamedDrawing board(Interval across, Map<String, PartShape> shapes, String suffix) {
    Geometry plan = Planar.rectangle(0, across.from(), lengthMm, across.to());
    boolean pan = cushion.role() == CushionPart.Role.PAN;
    TemplateSheet sheet =
        new TemplateSheet(
            cushion.name(),
            cushion.name() + ", board in plan",
            plan,
            "left side",
            pan ? "forward" : "up");
    if (across.from() < 0 && across.to() > 0) {
      sheet.mark(
          Planar.line(-5, 0, lengthMm + 5, 0), Style.narrow(Tone.INK).withLine(LineType.CHAIN));
    }
    sheet.datum(
        Math.max(across.from(), Math.min(across.to(), 0)),
        "middle of the machine",
        "the board",
        figures);
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "plywood %s, %s long, %s wide",
            figures.mm(places.value(cushion.board())),
            figures.bare(lengthMm),
            figures.bare(across.length())));
    lines.add(cushion.from() + " is at the left edge, " + cushion.to() + " at the right");
    for (PartShape other : shapes.values()) {
      if (other.part() instanceof Part.Flat flat && flat.traits().duty() == Duty.FRAME) {
        bracket(sheet, other, across, lines);
      }
    }
    lines.addAll(TemplateWords.cutLines(figures));
    return named("board" + suffix, sheet, lines);
  }

  /** Marks where a bracket lies against the board. */
  private void bracket(
      TemplateSheet sheet, PartShape bracket, Interval across, List<String> lines) {
    Geometry board = Cushions.bands(cushion, places).get(0);
    Geometry near = bracket.outline().intersection(board.buffer(TOUCH_MM));
    if (near.isEmpty()) {
      return;
    }
    PointMm from = places.pin(cushion.from());
    PointMm along = places.pin(cushion.to()).minus(from).times(1 / lengthMm);
    double low = Double.POSITIVE_INFINITY;
    double high = Double.NEGATIVE_INFINITY;
    for (Coordinate c : near.getCoordinates()) {
      double s = new PointMm(c.x, c.y).minus(from).dot(along);
      low = Math.min(low, s);
      high = Math.max(high, s);
    }
    low = Math.max(0, low);
    high = Math.min(lengthMm, high);
    if (high - low < 0.1) {
      return;
    }
    List<String> widths = new ArrayList<>();
    for (Prism p : bracket.prisms()) {
      double a = Math.max(across.from(), p.across().from());
      double b = Math.min(across.to(), p.across().to());
      if (b - a > 0.1) {
        sheet.mark(
            Planar.rectangle(low, a, high, b), Style.narrow(Tone.INK).withLine(LineType.DASHED));
        sheet.note(bracket.part().name(), low, (a + b) / 2);
        widths.add(figures.bare(a) + " to " + figures.mm(b));
      }
    }
    lines.add(
        "bracket "
            + bracket.part().name()
            + " from "
            + figures.bare(low)
            + " to "
            + figures.mm(high)
            + " along"
            + (widths.isEmpty()
                ? ""
                : ", " + String.join(" and ", widths) + " to the left of the middle"));
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
