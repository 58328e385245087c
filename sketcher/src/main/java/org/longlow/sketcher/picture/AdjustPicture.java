package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.fit.AdjustReport;
import org.longlow.constraints.fit.Share;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * The share that fits over the settings of each adjuster, one panel each: points with their 95 %
 * intervals, a cross where the machine cannot be set so, a chain line where it is set now, a bar
 * over what the least hardware found goes through. Paper mm, y up.
 */
public final class AdjustPicture {

  /** What the signs say. */
  static final String KEY =
      "upright chain line: as it is; upright strokes: where the share lies, 95 %; crosses: barred;"
          + " bar below the axis: the least that takes them in";

  private static final double WIDE = 62;
  private static final double HIGH = 36;
  private static final double ACROSS = 88;
  private static final double DOWN = 58;
  private static final int IN_A_ROW = 2;
  private static final double LETTERS = 2.5;
  private static final double SMALL = 2.1;
  private static final double POINT = 0.8;

  private final Units units;
  private final AdjustReport report;
  private final List<Mark> axes = new ArrayList<>();
  private final List<Mark> shares = new ArrayList<>();

  private AdjustPicture(AdjustReport report, Units units) {
    this.report = report;
    this.units = units;
  }

  /** Draws all panels. */
  public static Drawing of(String title, AdjustReport report, Units units) {
    AdjustPicture picture = new AdjustPicture(report, units);
    picture.axes.add(Mark.Words.level(title, 0, HIGH + 16, LETTERS, Anchor.START, Tone.INK));
    picture.axes.add(Mark.Words.level(KEY, 0, HIGH + 11, SMALL, Anchor.START, Tone.INK));
    for (int i = 0; i < report.curves().size(); i++) {
      picture.panel(report.curves().get(i), i % IN_A_ROW * ACROSS, -(double) (i / IN_A_ROW) * DOWN);
    }
    return new Drawing(
        title,
        List.of(
            new Layer("axes", "Axes", picture.axes),
            new Layer("shares", "Shares", picture.shares)));
  }

  private void panel(AdjustReport.Curve curve, double left, double low) {
    List<AdjustReport.Point> points = curve.points();
    double from = points.get(0).setting();
    double to = points.get(points.size() - 1).setting();
    axes.add(
        new Mark.Shape(
            "", Planar.rectangle(left, low, left + WIDE, low + HIGH), Style.line(Tone.INK, 0.25)));
    axes.add(
        Mark.Words.level(
            curve.adjuster().words(), left, low + HIGH + 2, LETTERS, Anchor.START, Tone.INK));
    for (int k = 0; k <= 4; k++) {
      double at = low + HIGH * k / 4;
      axes.add(line(Style.line(Tone.FAINT, 0.13), left, at, left + WIDE, at));
      axes.add(Mark.Words.level(25 * k + " %", left - 1.5, at, SMALL, Anchor.CENTRE_END, Tone.INK));
    }
    for (int k = 0; k < points.size(); k += 2) {
      double setting = points.get(k).setting();
      axes.add(
          Mark.Words.level(
              figure(curve, setting),
              x(setting, from, to, left),
              low - 3.4,
              SMALL,
              Anchor.TOP_MIDDLE,
              Tone.INK));
    }
    double now = curve.adjuster().now();
    if (now >= from && now <= to) {
      double at = x(now, from, to, left);
      axes.add(
          line(Style.line(Tone.PENCIL, 0.18).withLine(LineType.CHAIN), at, low, at, low + HIGH));
    }
    range(curve)
        .ifPresent(
            r ->
                axes.add(
                    new Mark.Shape(
                        "",
                        Planar.rectangle(
                            x(r.from(), from, to, left) - 0.6,
                            low - 2.2,
                            x(r.to(), from, to, left) + 0.6,
                            low - 1),
                        Style.area(Tone.CHOSEN, 1))));
    shares(points, from, to, left, low);
  }

  private void shares(
      List<AdjustReport.Point> points, double from, double to, double left, double low) {
    double lastX = Double.NaN;
    double lastY = Double.NaN;
    for (AdjustReport.Point point : points) {
      double at = x(point.setting(), from, to, left);
      if (point.share().filter(s -> s.of() > 0).isEmpty()) {
        double r = POINT;
        shares.add(line(Style.line(Tone.BAD, 0.25), at - r, low + 2 - r, at + r, low + 2 + r));
        shares.add(line(Style.line(Tone.BAD, 0.25), at - r, low + 2 + r, at + r, low + 2 - r));
        lastX = Double.NaN;
        continue;
      }
      Share share = point.share().get();
      double up = low + HIGH * share.value();
      shares.add(
          line(
              Style.line(Tone.PENCIL, 0.18),
              at,
              low + HIGH * share.low(),
              at,
              low + HIGH * share.high()));
      if (!Double.isNaN(lastX)) {
        shares.add(line(Style.line(Tone.INK, 0.35), lastX, lastY, at, up));
      }
      shares.add(new Mark.Shape("", Planar.disc(at, up, POINT, 16), Style.area(Tone.INK, 1)));
      lastX = at;
      lastY = up;
    }
  }

  private Optional<AdjustReport.Range> range(AdjustReport.Curve curve) {
    return report.least().stream()
        .flatMap(l -> l.ranges().stream())
        .filter(r -> r.adjuster().equals(curve.adjuster()))
        .findFirst();
  }

  private static double x(double setting, double from, double to, double left) {
    return left + (to > from ? (setting - from) / (to - from) : 0.5) * WIDE;
  }

  private String figure(AdjustReport.Curve curve, double setting) {
    FigureSort sort = curve.adjuster().turns() ? FigureSort.ANGLE : FigureSort.WHOLE_LENGTH;
    return Words.figure(setting, sort).in(units);
  }

  private static Mark line(Style style, double... xy) {
    return new Mark.Shape("", Planar.line(xy), style);
  }
}
