package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Predicate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.fit.BodyTrait;
import org.longlow.constraints.fit.FitReport;
import org.longlow.constraints.fit.Judged;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * A crowd as points, stature over sitting height, told apart by shape as well as tone: discs pass,
 * rings need care, crosses fail; a square stands round who is outside the survey. Paper mm, y up.
 */
public final class CrowdPicture {

  /** More points than these are a blot. */
  public static final int MOST = 2000;

  private static final double WIDE = 150;
  private static final double HIGH = 110;
  private static final double LETTERS = 2.5;
  private static final double POINT = 0.7;
  private static final double LEAST_SPAN_MM = 100;

  private final Units units;
  private final List<Judged> people;
  private final double[] x;
  private final double[] y;
  private final List<Mark> lines = new ArrayList<>();
  private final List<Mark> points = new ArrayList<>();

  private CrowdPicture(FitReport report, Units units) {
    this.units = units;
    people = report.people().subList(0, Math.min(MOST, report.people().size()));
    x = span(people.stream().mapToDouble(p -> p.of(BodyTrait.SITTING)).toArray(), 880);
    y = span(people.stream().mapToDouble(p -> p.of(BodyTrait.STATURE)).toArray(), 1690);
  }

  /** Draws a crowd; of a large one the first {@link #MOST}. */
  public static Drawing of(String title, FitReport report, Units units) {
    return new CrowdPicture(report, units).drawing(title, report.people().size());
  }

  /** From least to most with a little air; of nobody about a usual value. */
  private static double[] span(double[] values, double usual) {
    double low = usual - LEAST_SPAN_MM;
    double high = usual + LEAST_SPAN_MM;
    if (values.length > 0) {
      low = Double.POSITIVE_INFINITY;
      high = Double.NEGATIVE_INFINITY;
      for (double v : values) {
        low = Math.min(low, v);
        high = Math.max(high, v);
      }
    }
    double air = Math.max(LEAST_SPAN_MM - (high - low), 0.06 * (high - low)) / 2;
    return new double[] {low - air, high + air};
  }

  private Drawing drawing(String title, int all) {
    axes();
    points(p -> p.verdict() == Verdict.PASS, this::disc, Style.area(Tone.GOOD, 1));
    points(p -> p.verdict() == Verdict.CAUTION, this::disc, Style.line(Tone.CARE, 0.25));
    points(p -> p.verdict() == Verdict.FAIL, this::cross, Style.line(Tone.BAD, 0.25));
    points(Judged::outside, this::square, Style.line(Tone.PENCIL, 0.13));
    String shown =
        people.size() < all
            ? String.format(Locale.ROOT, "%s, the first %d of %d", title, people.size(), all)
            : title;
    words(shown, 0, HIGH + 9, Anchor.START, Tone.INK);
    key();
    return new Drawing(
        title, List.of(new Layer("axes", "Axes", lines), new Layer("people", "People", points)));
  }

  private void key() {
    double top = HIGH + 4;
    double at = 2;
    at = key(at, top, disc(at, top), Style.area(Tone.GOOD, 1), "passes");
    at = key(at, top, disc(at, top), Style.line(Tone.CARE, 0.25), "needs care");
    at = key(at, top, cross(at, top), Style.line(Tone.BAD, 0.25), "fails");
    key(at, top, square(at, top), Style.line(Tone.PENCIL, 0.13), "outside the survey");
  }

  private double key(double at, double top, Geometry sign, Style style, String says) {
    lines.add(new Mark.Shape("", sign, style));
    Mark.Words words = Mark.Words.level(says, at + 2, top, LETTERS, Anchor.CENTRE_START, Tone.INK);
    lines.add(words);
    return at + 2 + words.widthMm() + 6;
  }

  private void points(
      Predicate<Judged> which, BiFunction<Double, Double, Geometry> sign, Style style) {
    List<Geometry> all = new ArrayList<>();
    for (Judged person : people) {
      if (which.test(person)) {
        all.add(
            sign.apply(
                at(person.of(BodyTrait.SITTING), x, WIDE),
                at(person.of(BodyTrait.STATURE), y, HIGH)));
      }
    }
    if (!all.isEmpty()) {
      points.add(new Mark.Shape("", Planar.FACTORY.buildGeometry(flat(all)), style));
    }
  }

  /** Pieces of one kind, so that what they are put together to is of that kind too. */
  private static List<Geometry> flat(List<Geometry> all) {
    List<Geometry> pieces = new ArrayList<>();
    for (Geometry g : all) {
      for (int i = 0; i < g.getNumGeometries(); i++) {
        pieces.add(g.getGeometryN(i));
      }
    }
    return pieces;
  }

  private Geometry disc(double px, double py) {
    return Planar.disc(px, py, POINT, 12);
  }

  private Geometry cross(double px, double py) {
    return Planar.FACTORY.createMultiLineString(
        new LineString[] {
          Planar.line(px - POINT, py - POINT, px + POINT, py + POINT),
          Planar.line(px - POINT, py + POINT, px + POINT, py - POINT)
        });
  }

  private Geometry square(double px, double py) {
    double r = 1.6 * POINT;
    return Planar.rectangle(px - r, py - r, px + r, py + r);
  }

  private static double at(double value, double[] span, double wide) {
    return (value - span[0]) / (span[1] - span[0]) * wide;
  }

  private void axes() {
    lines.add(new Mark.Shape("", Planar.rectangle(0, 0, WIDE, HIGH), Style.line(Tone.INK, 0.25)));
    for (double v : ticks(x)) {
      double at = at(v, x, WIDE);
      lines.add(new Mark.Shape("", Planar.line(at, 0, at, HIGH), Style.line(Tone.FAINT, 0.13)));
      words(figure(v), at, -2, Anchor.TOP_MIDDLE, Tone.INK);
    }
    for (double v : ticks(y)) {
      double at = at(v, y, HIGH);
      lines.add(new Mark.Shape("", Planar.line(0, at, WIDE, at), Style.line(Tone.FAINT, 0.13)));
      words(figure(v), -2, at, Anchor.CENTRE_END, Tone.INK);
    }
    words("sitting height", WIDE / 2, -6.5, Anchor.TOP_MIDDLE, Tone.INK);
    lines.add(new Mark.Words("", "stature", -23, HIGH / 2, LETTERS, 90, Anchor.MIDDLE, Tone.INK));
  }

  /** Round figures in the units shown, four to nine of them. */
  private List<Double> ticks(double[] span) {
    double unit = units == Units.MM ? 1 : 25.4;
    double[] steps =
        units == Units.MM ? new double[] {20, 50, 100, 200} : new double[] {1, 2, 4, 8};
    double step = steps[steps.length - 1] * unit;
    for (int k = steps.length - 1; k >= 0; k--) {
      if ((span[1] - span[0]) / (steps[k] * unit) <= 9) {
        step = steps[k] * unit;
      }
    }
    List<Double> at = new ArrayList<>();
    for (double v = Math.ceil(span[0] / step) * step; v <= span[1]; v += step) {
      at.add(v);
    }
    return at;
  }

  private String figure(double mm) {
    return units.bare(mm, FigureSort.WHOLE_LENGTH) + " " + units.word();
  }

  private void words(String text, double px, double py, Anchor anchor, Tone tone) {
    lines.add(Mark.Words.level(text, px, py, LETTERS, anchor, tone));
  }
}
