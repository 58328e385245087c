package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.shape.TubeLine;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.SheetLengths;

/**
 * The card that goes to the bender with a bent tube: its bends in order as they are made from one
 * straight length, with a field for the springback that is found on a scrap.
 */
final class BendCard {

  private static final double WIDE_MM = 140;
  private static final double EDGE_MM = 4;
  private static final double NAME_MM = 5;
  private static final double TEXT_MM = 2.4;
  private static final double LINE_MM = 4;
  private static final double ROW_MM = 5.4;
  private static final double SKETCH_HIGH_MM = 22;
  private static final double SKETCH_WIDE_MM = 36;

  /** Round a sketch for the names at its ends. */
  private static final double SKETCH_AIR_MM = 12;

  /** Half of what the sketch of a turn takes. */
  private static final double TURN_MM = 7;

  /** Where its arrow ends, from the right, counter-clockwise. */
  private static final double TURN_TO_RAD = Math.toRadians(250);

  private static final List<String> HEADINGS =
      List.of(
          "no.", "bend at", "straight", "starts", "angle", "turn", "radius", "takes", "springback");

  /** Shares of the width; the last is to be written in. */
  private static final double[] COLUMNS = {0.06, 0.16, 0.12, 0.12, 0.1, 0.08, 0.1, 0.1, 0.16};

  /** The column with the name of a pin. */
  private static final int PIN = 1;

  private final String subject;
  private final TubePart tube;
  private final TubeBends bends;
  private final Places places;
  private final TemplateFigures figures;
  private final List<Mark> lines = new ArrayList<>();
  private final List<Mark> words = new ArrayList<>();
  private double y;

  private BendCard(TubePart tube, TubeBends bends, Places places, TemplateFigures figures) {
    this.subject = "part:" + tube.name();
    this.tube = tube;
    this.bends = bends;
    this.places = places;
    this.figures = figures;
  }

  /** Returns the card of a tube; empty for a straight one, of which its length says all. */
  static Optional<NamedDrawing> of(
      TubePart tube, TubeBends bends, List<TubeEnd> ends, Places places, TemplateFigures figures) {
    if (bends.bends().isEmpty()) {
      return Optional.empty();
    }
    String title = tube.name() + ", bend card";
    Drawing drawing = new BendCard(tube, bends, places, figures).drawn(title, ends);
    return Optional.of(
        new NamedDrawing(
            TemplateWords.fileName(tube.name()) + "-bends",
            title,
            tube.name(),
            "up",
            "forward",
            sheets -> drawing,
            SheetLengths.MM,
            Optional.empty()));
  }

  private Drawing drawn(String title, List<TubeEnd> ends) {
    double beside = WIDE_MM - 2 * EDGE_MM - SKETCH_WIDE_MM - SKETCH_AIR_MM - 3;
    double over = sketch();
    y = -EDGE_MM;
    for (String line : Lettering.wrapped(title, NAME_MM, beside)) {
      y -= NAME_MM;
      words.add(words(line, EDGE_MM, y, NAME_MM, Anchor.START));
      y -= 1.5;
    }
    String material = tube.base().material();
    say(
        (material.isEmpty() ? "" : material + " ")
            + "tube "
            + figures.tube(mm(tube.diameter()), mm(tube.wall()))
            + ", make "
            + (tube.both() ? 2 : 1),
        beside);
    TubeLength.lines(bends, ends, figures).forEach(l -> say(l, beside));
    y = Math.min(y, over);
    table();
    say(
        "straight: before the bend; starts: from "
            + tube.path().get(0)
            + (bends.leans() ? "" : "; turn: of the tube about its axis since the bend before")
            + "; takes: on the centre line");
    if (bends.leans()) {
      turning();
      say(
          "it is bent in space"
              + (tube.both()
                  ? ": this is the "
                      + TubeLine.of(tube, places).sideWord()
                      + " one; for the other one turn it the other way each time"
                  : ""));
    }
    say("springback: of a scrap (2 to 5° on 90°, common practice); bend by so much more");
    if (bends.bends().stream().anyMatch(TubeBends.Bend::reduced)) {
      say(TubeLength.reduced(figures.mm(mm(tube.bendRadius()))));
    }
    Mark edge =
        new Mark.Shape(subject, Planar.rectangle(0, y - EDGE_MM, WIDE_MM, 0), Style.wide(Tone.INK));
    return new Drawing(
        title,
        List.of(
            new Layer("outline", "Line to cut", List.of(edge)),
            new Layer("inside", "Inside lines", lines),
            new Layer("words", "Words", words)));
  }

  private double mm(Formula f) {
    return places.value(f);
  }

  private void say(String text) {
    say(text, WIDE_MM - 2 * EDGE_MM);
  }

  private void say(String text, double wide) {
    say(text, EDGE_MM, wide);
  }

  private void say(String text, double x, double wide) {
    for (String line : Lettering.wrapped(text, TEXT_MM, wide)) {
      y -= LINE_MM;
      words.add(words(line, x, y, TEXT_MM, Anchor.START));
    }
  }

  /** Says which way round what is turned between bends, beside the tube's end and an arrow. */
  private void turning() {
    double x = EDGE_MM + TURN_MM;
    double z = y - 1 - TURN_MM;
    double ring = TURN_MM / 2;
    lines.add(new Mark.Shape(subject, Planar.disc(x, z, ring), Style.wide(Tone.INK)));
    lines.add(
        new Mark.Shape(
            subject, Planar.arc(x, z, 0.8 * TURN_MM, 0, TURN_TO_RAD), Style.narrow(Tone.INK)));
    PointMm tip = PointMm.unit(TURN_TO_RAD).times(0.8 * TURN_MM).plus(new PointMm(x, z));
    for (double side : new double[] {-0.5, 0.5}) {
      // back along the way it came
      PointMm barb = tip.plus(PointMm.unit(TURN_TO_RAD - Math.PI / 2 + side).times(2));
      lines.add(
          new Mark.Shape(
              subject, Planar.line(tip.x(), tip.z(), barb.x(), barb.z()), Style.narrow(Tone.INK)));
    }
    words.add(words("+", x, z - 1, TEXT_MM, Anchor.CENTRE));
    say(
        "turn: of the tube itself in the bender, whose plane stays, since the bend before. Look along"
            + " the tube from its first end, "
            + tube.path().get(0)
            + ": + counter-clockwise, - clockwise. Where the tube stays and the bend plane is turned,"
            + " each goes the other way round, or the mirror image comes out.",
        x + 1.5 * TURN_MM,
        WIDE_MM - 2 * EDGE_MM - 2.5 * TURN_MM);
    y = Math.min(y, z - TURN_MM);
  }

  private Mark words(String text, double x, double at, double size, Anchor anchor) {
    return new Mark.Words(subject, text, x, at, size, 0, anchor, Tone.INK);
  }

  private void table() {
    y -= 3;
    double top = y;
    rule(y);
    row(HEADINGS);
    int number = 0;
    for (TubeBends.Bend b : bends.bends()) {
      number++;
      row(
          List.of(
              Integer.toString(number),
              b.pin(),
              figures.bare(b.straightMm()),
              figures.bare(b.startMm()),
              Dimensions.figure(Math.abs(Math.toDegrees(b.angleRad()))) + "°",
              number == 1 ? "-" : Dimensions.figure(Math.toDegrees(b.turnRad())) + "°",
              figures.bare(b.radiusMm()) + (b.reduced() ? " *" : ""),
              figures.bare(b.arcMm()),
              ""));
    }
    double x = EDGE_MM;
    for (double share : COLUMNS) {
      upright(x, top);
      x += share * (WIDE_MM - 2 * EDGE_MM);
    }
    upright(x, top);
    y -= 1;
  }

  private void row(List<String> cells) {
    double wide = WIDE_MM - 2 * EDGE_MM;
    double x = EDGE_MM;
    for (int i = 0; i < COLUMNS.length; i++) {
      double room = COLUMNS[i] * wide - 2.5;
      // a name may be cut short, a figure may not: it is written smaller
      String cell = i == PIN ? Lettering.fitted(cells.get(i), TEXT_MM, room) : cells.get(i);
      if (!cell.isEmpty()) {
        double high = TEXT_MM * Math.min(1, room / Lettering.widthMm(cell, TEXT_MM));
        words.add(words(cell, x + 1.5, y - ROW_MM / 2 - high / 2, high, Anchor.START));
      }
      x += COLUMNS[i] * wide;
    }
    y -= ROW_MM;
    rule(y);
  }

  private void rule(double at) {
    lines.add(
        new Mark.Shape(
            subject, Planar.line(EDGE_MM, at, WIDE_MM - EDGE_MM, at), Style.narrow(Tone.PENCIL)));
  }

  private void upright(double x, double top) {
    lines.add(new Mark.Shape(subject, Planar.line(x, y, x, top), Style.narrow(Tone.PENCIL)));
  }

  /** The tube as it lies in the elevation, made small, its bends numbered; tells how low it is. */
  private double sketch() {
    List<PointMm> line = Shapes.centreLine(tube, places);
    Envelope box = Curves.line(line).getEnvelopeInternal();
    double s =
        Math.min(
            SKETCH_WIDE_MM / Math.max(1, box.getWidth()),
            SKETCH_HIGH_MM / Math.max(1, box.getHeight()));
    double top = -EDGE_MM - 4;
    double left = WIDE_MM - EDGE_MM - SKETCH_AIR_MM - SKETCH_WIDE_MM;
    UnaryOperator<PointMm> put =
        p -> new PointMm(left + s * (p.x() - box.getMinX()), top + s * (p.z() - box.getMaxY()));
    lines.add(
        new Mark.Shape(
            subject,
            Curves.line(line.stream().map(put).toList()),
            Style.narrow(Tone.INK).withLine(LineType.CHAIN)));
    PointMm middle = put.apply(new PointMm(box.centre().x, box.centre().y));
    int number = 0;
    for (TubeBends.Bend b : bends.bends()) {
      number++;
      named(Integer.toString(number), put.apply(b.start().towards(b.end(), 0.5)), middle);
    }
    named("1st end", put.apply(line.get(0)), middle);
    double low = top - s * box.getHeight() - 7;
    words.add(words("not to scale", WIDE_MM - EDGE_MM, low, 2, Anchor.END));
    return low;
  }

  /** A name outward from the middle of the sketch. */
  private void named(String text, PointMm at, PointMm middle) {
    PointMm out = at.minus(middle);
    PointMm by = out.length() > 1e-6 ? out.times(3.5 / out.length()) : new PointMm(0, 3.5);
    Anchor anchor = Math.abs(by.x()) < 1.5 ? Anchor.CENTRE : by.x() > 0 ? Anchor.START : Anchor.END;
    words.add(words(text, at.x() + by.x(), at.z() + by.z() - 1, 2.2, anchor));
  }
}
