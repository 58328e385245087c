package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Hatch;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Drawings to test and look at. The machine and its parts are invented. */
public final class Samples {

  private Samples() {}

  /** Returns a cowl side: a long rounded outline with a window and a hole, about 1180 x 520 mm. */
  public static Polygon cowlOutline() {
    Polygon low = Planar.polygon(0, 0, 900, -40, 1150, 60, 1180, 180, 820, 420, 420, 480, 120, 300);
    Geometry round = low.buffer(-30).buffer(30);
    Geometry window = Planar.polygon(480, 300, 720, 270, 700, 370, 520, 400).buffer(8);
    return (Polygon) round.difference(window).difference(Planar.disc(200, 120, 12.5));
  }

  /** Returns the cowl as a template: cut line, centre marks, a fold line and words. */
  public static Drawing cowl() {
    Dimensions d = Dimensions.at(1);
    List<Mark> marks = new ArrayList<>();
    marks.addAll(d.horizontal("hole", 187.5, 120, 212.5, 120, 150, "Ø25"));
    marks.add(
        Mark.Words.level("fold line, 30° towards you", 560, 200, 3.5, Anchor.START, Tone.INK));
    return Drawing.of(
        "Cowl side",
        new Layer(
            "cut",
            "Cut line",
            List.of(new Mark.Shape("part:cowl", cowlOutline(), Style.line(Tone.INK, 0.35)))),
        new Layer(
            "fold",
            "Fold lines",
            List.of(
                new Mark.Shape(
                    "fold",
                    Planar.line(60, 130, 1130, 130),
                    Style.narrow(Tone.COWL).withLine(LineType.CHAIN)))),
        new Layer("figures", "Figures", marks));
  }

  /** Returns a bracket that fits on one sheet. */
  public static Drawing bracket() {
    Geometry plate =
        Planar.rectangle(0, 0, 70, 40)
            .buffer(5)
            .difference(Planar.disc(12, 20, 4.2))
            .difference(Planar.disc(58, 20, 4.2));
    Dimensions d = Dimensions.at(1);
    List<Mark> marks = new ArrayList<>();
    marks.addAll(d.horizontal("", 12, 20, 58, 20, -14, null));
    marks.addAll(d.vertical("", 75, -5, 75, 45, 88, null));
    return Drawing.of(
        "Tank bracket",
        new Layer(
            "cut",
            "Cut line",
            List.of(new Mark.Shape("part:bracket", plate, Style.line(Tone.INK, 0.35)))),
        new Layer("figures", "Figures", marks));
  }

  /** Returns an elevation of an invented machine, real mm, with dimensions for the given scale. */
  public static Drawing machine(Scale scale) {
    Dimensions d = Dimensions.at(scale.denominator());
    List<Mark> parts = new ArrayList<>();
    for (double x : new double[] {0, 1620}) {
      double r = x == 0 ? 320 : 290;
      parts.add(
          new Mark.Shape(
              "part:tyre",
              Planar.disc(x, r, r).difference(Planar.disc(x, r, r * 0.7)),
              Style.area(Tone.RUBBER, 0.7).withStroke(Tone.INK, 0.5)));
      parts.add(
          new Mark.Shape(
              "axis",
              Planar.FACTORY.createMultiLineString(
                  new LineString[] {
                    Planar.line(x - r - 40, r, x + r + 40, r), Planar.line(x, -60, x, 2 * r + 40)
                  }),
              Style.narrow(Tone.PENCIL).withLine(LineType.CHAIN)));
    }
    Polygon seat = Planar.polygon(120, 380, 520, 300, 560, 345, 160, 440);
    parts.add(
        new Mark.Shape("part:pan", seat, Style.area(Tone.FOAM_SOFT, 1).withStroke(Tone.INK, 0.5)));
    parts.add(
        new Mark.Shape("", Hatch.lines(seat, 30, Math.PI / 4), Style.line(Tone.FOAM_FIRM, 0.13)));
    parts.add(
        new Mark.Shape(
            "part:engine",
            Planar.rectangle(620, 220, 960, 520).buffer(20),
            Style.area(Tone.ENGINE, 0.5).withStroke(Tone.INK, 0.5)));
    parts.add(
        new Mark.Shape(
            "part:tank",
            Planar.polygon(640, 560, 980, 560, 930, 720, 700, 720).buffer(20),
            Style.area(Tone.TANK, 0.6).withStroke(Tone.INK, 0.5)));
    parts.add(
        new Mark.Shape(
            "person",
            Planar.line(230, 980, 330, 480, 800, 640, 1180, 360),
            Style.narrow(Tone.FIGURE).withLine(LineType.DOUBLE_CHAIN)));
    Mark.Words gap =
        new Mark.Words("finding:gap", "gap 12 mm, care", 700, 530, 2.5, 0, Anchor.START, Tone.CARE);
    List<Mark> figures = new ArrayList<>();
    figures.addAll(d.horizontal("measure:wheelbase", 0, 0, 1620, 0, -140, null));
    figures.addAll(d.vertical("measure:belly", 800, 0, 800, 200, 1100, null));
    figures.addAll(
        d.linear("measure:back", 330, 480, 230, 980, Math.atan2(500, -100), 210, 456, null));
    figures.addAll(
        d.angular("measure:rake", 1620, 290, 620, Math.toRadians(90), Math.toRadians(117), null));
    return Drawing.of(
        "Elevation",
        new Layer(
            "ground",
            "Ground",
            List.of(
                new Mark.Shape("ground", Planar.line(-400, 0, 2000, 0), Style.wide(Tone.GROUND)))),
        new Layer("parts", "Parts", parts),
        new Layer("figures", "Dimensions", figures),
        new Layer("verdicts", "Findings", List.of(gap)));
  }
}
