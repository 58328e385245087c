package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.shape.Allowance;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Cushions;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Planar;

/** Boards of a cushion in plan, with the brackets and bolts that hold them, and their covers. */
final class BoardTemplates {

  /** Nearer than this to the board a bracket is fixed to it, mm; judgement. */
  private static final double TOUCH_MM = 6;

  /** What differs by less is one, mm. */
  private static final double ALIKE_MM = 0.1;

  /** Sharper corners cut the cover, mm; judgement. */
  private static final double CORNER_MM = 20;

  private static final int ARC_STEPS = 16;

  private final CushionPart cushion;
  private final PartShape shape;
  private final Places places;
  private final TemplateFigures figures;
  private final double lengthMm;

  BoardTemplates(CushionPart cushion, PartShape shape, Places places, TemplateFigures figures) {
    this.cushion = cushion;
    this.shape = shape;
    this.places = places;
    this.figures = figures;
    this.lengthMm = places.pin(cushion.from()).distance(places.pin(cushion.to()));
  }

  /**
   * Returns each board in plan, with its cover after it: forward (or up, for a back) to the right,
   * the machine's left up.
   */
  List<NamedDrawing> of(Map<String, PartShape> shapes) {
    List<Interval> across = shape.prisms().stream().map(Prism::across).distinct().toList();
    boolean pair =
        across.size() == 2
            && across.get(0).mirrored().isNear(across.get(1), ALIKE_MM)
            && feet(shapes, across.get(0))
                .equals(feet(shapes, across.get(1)).stream().map(Foot::mirrored).sorted().toList());
    List<NamedDrawing> out = new ArrayList<>();
    for (int k = 0; k < (pair ? 1 : across.size()); k++) {
      String suffix = across.size() > 1 && !pair ? "-" + (k + 1) : "";
      out.add(board(across.get(k), shapes, suffix, pair));
      out.add(
          new CushionCover(cushion, places, figures)
              .of(across.get(k).length(), suffix, pair ? 2 : 1));
    }
    return out;
  }

  /** Where a bracket stands across a board, to a tenth of a millimetre. */
  private record Foot(String bracket, long from, long to) implements Comparable<Foot> {
    Foot mirrored() {
      return new Foot(bracket, -to, -from);
    }

    @Override
    public int compareTo(Foot o) {
      return Comparator.comparing(Foot::bracket)
          .thenComparing(Foot::from)
          .thenComparing(Foot::to)
          .compare(this, o);
    }
  }

  /** Returns where brackets stand across a board, in order. */
  private static List<Foot> feet(Map<String, PartShape> shapes, Interval across) {
    List<Foot> feet = new ArrayList<>();
    for (PartShape other : shapes.values()) {
      if (other.part() instanceof Part.Flat flat && flat.traits().duty() == Duty.FRAME) {
        for (Prism p : other.prisms()) {
          double a = Math.max(across.from(), p.across().from());
          double b = Math.min(across.to(), p.across().to());
          if (b - a > ALIKE_MM) {
            feet.add(new Foot(flat.name(), Math.round(10 * a), Math.round(10 * b)));
          }
        }
      }
    }
    return feet.stream().sorted().toList();
  }

  private NamedDrawing board(
      Interval across, Map<String, PartShape> shapes, String suffix, boolean pair) {
    Geometry plan = Planar.rectangle(0, across.from(), lengthMm, across.to());
    boolean pan = cushion.role() == CushionPart.Role.PAN;
    Allowance allowance = Allowance.of(cushion, places);
    TemplateSheet sheet =
        new TemplateSheet(
            cushion.name(),
            cushion.name() + ", board in plan",
            allowance.cut(plan),
            "left side",
            pan ? "forward" : "up");
    CutWords.mark(allowance, sheet, plan);
    if (across.from() < 0 && across.to() > 0) {
      sheet.mark(Planar.line(-5, 0, lengthMm + 5, 0), TemplateLine.CENTRE);
    }
    corners(sheet, plan.getEnvelopeInternal());
    sheet.datum(new DatumLine(levels(across), "the board", figures));
    List<String> lines = new ArrayList<>();
    lines.add(
        String.format(
            Locale.ROOT,
            "plywood %s, %s long, %s wide%s",
            figures.mm(places.value(cushion.board())),
            figures.bare(lengthMm),
            figures.bare(across.length()),
            pair ? "; make 2, the second one turned over" : ""));
    lines.add(
        "round its corners to the lines, "
            + figures.mm(Math.min(CORNER_MM, Math.min(lengthMm, across.length()) / 4))
            + ", so that they spare the cover");
    lines.add(cushion.from() + " is at the left edge, " + cushion.to() + " at the right");
    for (PartShape other : shapes.values()) {
      if (other.part() instanceof Part.Flat flat && flat.traits().duty() == Duty.FRAME) {
        bracket(sheet, other, across, plan.getEnvelopeInternal(), lines);
      }
    }
    if (allowance.mm() != 0) {
      lines.add(CutWords.line(allowance, figures));
    }
    lines.addAll(CutWords.side(allowance, figures));
    return named("board" + suffix, sheet, lines);
  }

  /** The middle of the machine, or a station beside it where a seam runs along the middle. */
  private List<DatumLine.Level> levels(Interval across) {
    double step = figures.stationMm();
    List<DatumLine.Level> levels = new ArrayList<>();
    for (double y : new double[] {0, step, -step}) {
      if (y >= across.from() && y <= across.to()) {
        String beside = figures.mm(step) + (y > 0 ? " left" : " right") + " of the middle";
        levels.add(new DatumLine.Level(y, y == 0 ? "middle of the machine" : beside));
      }
    }
    double middle = (across.from() + across.to()) / 2;
    return levels.isEmpty()
        ? List.of(new DatumLine.Level(middle, figures.mm(middle) + " left of the middle"))
        : levels;
  }

  /** Marks where a bracket lies against the board. */
  private void bracket(
      TemplateSheet sheet, PartShape bracket, Interval across, Envelope plan, List<String> lines) {
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
    int bolts = 0;
    boolean tight = false;
    for (Prism p : bracket.prisms()) {
      double a = Math.max(across.from(), p.across().from());
      double b = Math.min(across.to(), p.across().to());
      if (b - a > 0.1) {
        sheet.mark(Planar.rectangle(low, a, high, b), TemplateLine.BESIDE);
        sheet.note(bracket.part().name(), low, (a + b) / 2);
        List<PointMm> middles = BoardBolts.of(new Envelope(low, high, a, b), plan);
        for (PointMm middle : middles) {
          bolts++;
          sheet.drill(bracket.part().name() + " bolt " + bolts, middle);
        }
        tight |= middles.isEmpty();
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
    if (bolts > 0) {
      lines.add(
          "its bolts M6 or 1/4 in, with a T-nut or a large washer: common practice, from memory");
    }
    if (tight) {
      lines.addAll(
          TemplateWords.wrapped(
              "TAKE CARE, "
                  + bracket.part().name()
                  + " has no room for a bolt "
                  + figures.mm(BoardBolts.EDGE_MM)
                  + " from the edge of the board"));
    }
  }

  /** Arcs at the corners; the line to cut stays a rectangle, which a saw makes first. */
  private void corners(TemplateSheet sheet, Envelope box) {
    double r = Math.min(CORNER_MM, Math.min(box.getWidth(), box.getHeight()) / 4);
    for (int k = 0; k < 4; k++) {
      boolean right = k == 0 || k == 3;
      boolean upper = k < 2;
      PointMm middle =
          new PointMm(
              right ? box.getMaxX() - r : box.getMinX() + r,
              upper ? box.getMaxY() - r : box.getMinY() + r);
      List<PointMm> arc = new ArrayList<>();
      for (int i = 0; i <= ARC_STEPS; i++) {
        double turn = Math.PI / 2 * (k + (double) i / ARC_STEPS);
        arc.add(middle.plus(PointMm.unit(turn).times(r)));
      }
      sheet.mark(Curves.line(arc), TemplateLine.CORNER);
    }
  }

  private NamedDrawing named(String what, TemplateSheet sheet, List<String> lines) {
    return sheet.with(
        TemplateWords.fileName(cushion.name()) + "-" + what, cushion.name(), lines, List.of());
  }
}
