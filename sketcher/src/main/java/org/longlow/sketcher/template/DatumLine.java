package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.Canvas;
import org.longlow.sketcher.picture.Labels;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * A datum line, level on the machine, with a tick and its figure at each station. Of several
 * heights that would do it takes the one on which most stations can be read; a station that would
 * fall on a seam or on other words is left out.
 *
 * @param levels where it may run, the one that is liked best first
 * @param axis what the ticks count, such as {@code x}
 */
record DatumLine(List<Level> levels, String axis, TemplateFigures figures) {

  private static final double LETTER_MM = 2;
  private static final double AIR_MM = 8;
  private static final double TICK_MM = 2.5;
  private static final double AIR_ROUND_MM = 0.3;

  /** A height near its middle, or one of those next to it where seams would hide its stations. */
  static DatumLine of(PartShape shape, TemplateFigures figures) {
    Envelope box = shape.outline().getEnvelopeInternal();
    double middle = (box.getMinY() + box.getMaxY()) / 2;
    double step = figures.stationMm();
    double z = Math.round(middle / step) * step;
    List<Level> levels = new ArrayList<>();
    for (double off : new double[] {0, -step, step, -2 * step, 2 * step}) {
      if (z + off >= box.getMinY() && z + off <= box.getMaxY()) {
        levels.add(new Level(z + off, "z " + figures.bare(z + off)));
      }
    }
    if (levels.isEmpty()) {
      levels.add(new Level(middle, "z " + figures.bare(middle)));
    }
    return new DatumLine(levels, "x", figures);
  }

  DatumLine {
    levels = List.copyOf(levels);
  }

  /**
   * A height of the line.
   *
   * @param mm where it runs
   * @param name what the line is there, such as {@code z 400}
   */
  record Level(double mm, String name) {}

  /** Marks with the boxes that they take. */
  private record Laid(List<Mark> marks, List<Envelope> boxes, int stations) {}

  /**
   * Returns its marks, and takes their places.
   *
   * @param unturned the template in the axes of the machine
   * @param turn how it lies
   */
  List<Mark> on(
      WordPlaces places,
      String subject,
      Envelope unturned,
      UnaryOperator<Geometry> turn,
      UnaryOperator<PointMm> at) {
    Laid best = null;
    for (Level level : levels) {
      Laid laid = new Laying(places, subject, unturned, turn, at).laid(level);
      if (best == null || laid.stations() > best.stations()) {
        best = laid;
      }
    }
    places.take(best.boxes());
    return best.marks();
  }

  /** One height tried. */
  private final class Laying {
    private final WordPlaces places;
    private final String subject;
    private final Envelope unturned;
    private final UnaryOperator<Geometry> turn;
    private final UnaryOperator<PointMm> at;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Envelope> boxes = new ArrayList<>();
    private final Style line = Style.line(Tone.PENCIL, Canvas.FINE_MM);
    private final PointMm up;
    private final PointMm ahead;

    Laying(
        WordPlaces places,
        String subject,
        Envelope unturned,
        UnaryOperator<Geometry> turn,
        UnaryOperator<PointMm> at) {
      this.places = places;
      this.subject = subject;
      this.unturned = unturned;
      this.turn = turn;
      this.at = at;
      PointMm origin = at.apply(PointMm.ORIGIN);
      this.up = at.apply(new PointMm(0, 1)).minus(origin);
      this.ahead = at.apply(new PointMm(1, 0)).minus(origin);
    }

    Laid laid(Level level) {
      double y = level.mm();
      Geometry run = Planar.line(unturned.getMinX() - AIR_MM, y, unturned.getMaxX() + AIR_MM, y);
      marks.add(new Mark.Shape(subject, turn.apply(run), line.withLine(LineType.CHAIN)));
      double step = figures.stationMm();
      int stations = 0;
      double first = Math.ceil(unturned.getMinX() / step - 1e-9) * step;
      for (double x = first; x <= unturned.getMaxX() + 1e-9; x += step) {
        stations += station(x, y) ? 1 : 0;
      }
      name(level);
      return new Laid(marks, boxes, stations);
    }

    /** Puts a tick with its figure, above the line or below it; false where none is clear. */
    private boolean station(double x, double y) {
      Geometry tick = turn.apply(Planar.line(x, y - TICK_MM, x, y + TICK_MM));
      PointMm foot = at.apply(new PointMm(x, y));
      for (int k = 0; k < 4; k++) {
        Mark.Words figure = figure(x, foot, k % 2 == 0 ? 1 : -1, k < 2 ? 1 : -1);
        Envelope box = Labels.box(figure, 1);
        boolean read = places.isOnPaper(figure) && places.isFree(box);
        box.expandToInclude(tick.getEnvelopeInternal());
        box.expandBy(AIR_ROUND_MM);
        if (read && places.isClear(box) && Labels.free(box, boxes)) {
          marks.add(new Mark.Shape(subject, tick, line));
          marks.add(figure);
          boxes.add(box);
          return true;
        }
      }
      return false;
    }

    /** A figure past its tick or before it, out of the line whichever way it runs. */
    private Mark.Words figure(double x, PointMm foot, int side, int way) {
      Mark.Words w = centred(figures.station(x), foot);
      double half = w.widthMm() / 2;
      double out = 0.9 + Math.abs(up.x()) * half + Math.abs(up.z()) * LETTER_MM / 2;
      double past = 0.8 + Math.abs(ahead.x()) * half + Math.abs(ahead.z()) * LETTER_MM / 2;
      return moved(w, up.times(side * out).plus(ahead.times(way * past)));
    }

    /** The name of the line, once, where it lies on nothing; shorter where it must be. */
    private void name(Level level) {
      String ticks = ", ticks every " + figures.mm(figures.stationMm()) + " of " + axis;
      String brief = "datum " + level.name();
      Mark.Words name = null;
      for (boolean lines : new boolean[] {true, false}) {
        for (String words : List.of(brief + ticks, brief)) {
          for (int side : new int[] {-1, 1}) {
            name = name == null ? free(words, level, side, lines) : name;
          }
        }
      }
      if (name != null) {
        marks.add(name);
        boxes.add(Labels.box(name, 1));
      }
    }

    /** Words along the line, beside it, off lines too if asked; null where there is no room. */
    private Mark.Words free(String words, Level level, int side, boolean lines) {
      double wide = centred(words, PointMm.ORIGIN).widthMm();
      double last = unturned.getMaxX() + AIR_MM - wide / 2;
      for (double x = unturned.getMinX() - AIR_MM + wide / 2; x <= last; x += 5) {
        Mark.Words w = centred(words, at.apply(new PointMm(x, level.mm())));
        double out = 3.2 + Math.abs(up.x()) * wide / 2 + Math.abs(up.z()) * LETTER_MM / 2;
        w = moved(w, up.times(side * out));
        Envelope box = Labels.box(w, 1);
        if ((lines ? places.isFree(box) : places.isClear(box)) && Labels.free(box, boxes)) {
          return w;
        }
      }
      return null;
    }

    private Mark.Words centred(String words, PointMm p) {
      return new Mark.Words(subject, words, p.x(), p.z(), LETTER_MM, 0, Anchor.CENTRE, Tone.PENCIL);
    }

    private static Mark.Words moved(Mark.Words w, PointMm by) {
      return w.transformed(AffineTransformation.translationInstance(by.x(), by.z()));
    }
  }
}
