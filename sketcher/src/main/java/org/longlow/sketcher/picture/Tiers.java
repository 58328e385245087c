package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Lays dimension lines out in tiers beside a picture: short ones near it, long ones outside, no two
 * in one another's way, no words on an extension line where that can be had.
 */
final class Tiers {

  /** Where the tiers are. */
  enum Side {
    BELOW,
    LEFT,
    RIGHT
  }

  /**
   * One dimension.
   *
   * @param a first place along the tier, drawing mm
   * @param b second place along the tier, drawing mm
   * @param acrossA where the measured point at a is, across the tier
   * @param acrossB where the measured point at b is, across the tier
   * @param text what is written
   */
  record Span(String subject, double a, double b, double acrossA, double acrossB, String text) {
    double low() {
      return Math.min(a, b);
    }

    double high() {
      return Math.max(a, b);
    }
  }

  /** Distance between tiers over letter height. */
  private static final double STEP = 2.3;

  /** The same where words stand upright and stick out of their arrows, one beside the other. */
  private static final double UPRIGHT_STEP = 3.4;

  /** What words cost on an extension line, outside their arrows, and one tier farther out. */
  private static final double CROSSING_COST = 10;

  private static final double ON_WORDS_COST = 1000;
  private static final double OUTSIDE_COST = 7;
  private static final double TIER_COST = 3;

  /** What words cost that reach beyond the picture, where a card has no room to spare. */
  private static final double BEYOND_COST = 30;

  /** How much of a broken extension line shows where it begins, paper mm. */
  private static final double BEGUN_MM = 2;

  private final Dimensions dims;
  private final Side side;
  private final double base;
  private final double end;
  private final List<Envelope> words;
  private final BodyEdges bodies;
  private final List<Mark> onTop = new ArrayList<>();
  private final List<List<double[]>> taken = new ArrayList<>();
  private double step = STEP;

  /**
   * Sets up tiers.
   *
   * @param dims sizes of lines and letters
   * @param base edge of the picture on that side, drawing mm
   * @param end how far along the tiers words better reach at most, drawing mm
   * @param words boxes of words that are on the drawing already; added to
   * @param bodies what extension lines do not run through
   */
  Tiers(
      Dimensions dims, Side side, double base, double end, List<Envelope> words, BodyEdges bodies) {
    this.words = words;
    this.bodies = bodies;
    this.dims = dims;
    this.side = side;
    this.base = base;
    this.end = end;
  }

  /** Returns the marks of all spans. */
  List<Mark> lay(List<Span> spans) {
    List<Span> order = new ArrayList<>(spans);
    order.removeIf(s -> s.high() - s.low() < 1e-6);
    order.sort(Comparator.comparingDouble(s -> s.high() - s.low()));
    long stickOut = order.stream().filter(s -> wide(s) > s.high() - s.low()).count();
    step = side != Side.BELOW && stickOut > 1 ? UPRIGHT_STEP : STEP;
    List<Mark> marks = new ArrayList<>();
    for (Span span : order) {
      place(span, order, marks);
    }
    marks.addAll(onTop);
    return marks;
  }

  private double step() {
    return step * dims.textMm() * dims.denominator();
  }

  /** Returns how long its words are, drawing mm. */
  private double wide(Span span) {
    return (Lettering.widthMm(span.text(), dims.textMm()) + 1.6) * dims.denominator();
  }

  private void place(Span span, List<Span> all, List<Mark> marks) {
    double n = dims.denominator();
    double wide = wide(span);
    double head = dims.arrowMm() * n;
    double length = span.high() - span.low();
    double outside = length > 2.5 * head ? 0 : 2 * head;
    double[] best = null;
    int bestTier = 0;
    double bestCost = Double.POSITIVE_INFINITY;
    for (int tier = 0; tier < taken.size() + 2; tier++) {
      for (double at : candidates(span, wide, head)) {
        double[] reach = {at - wide / 2, at + wide / 2};
        double[] whole = {
          Math.min(span.low() - outside, reach[0]) - n,
          Math.max(span.high() + outside, reach[1]) + n
        };
        if (tier < taken.size() && clashes(whole, taken.get(tier))) {
          continue;
        }
        boolean inside = reach[0] >= span.low() && reach[1] <= span.high();
        Envelope box = Labels.box(words(span, tier, at), n);
        double cost =
            CROSSING_COST * crossings(reach, span, all)
                + (Labels.free(box, words) ? 0 : ON_WORDS_COST)
                + TIER_COST * tier
                + (inside ? 0 : OUTSIDE_COST)
                + (reach[1] > end ? BEYOND_COST : 0)
                + Math.abs(at - (span.low() + span.high()) / 2) / Math.max(wide, length);
        if (cost < bestCost) {
          bestCost = cost;
          best = new double[] {at, whole[0], whole[1]};
          bestTier = tier;
        }
      }
    }
    while (taken.size() <= bestTier) {
      taken.add(new ArrayList<>());
    }
    taken.get(bestTier).add(new double[] {best[1], best[2]});
    draw(span, bestTier, best[0], wide, marks);
  }

  /** Returns where the middle of the words may be. */
  private List<Double> candidates(Span span, double wide, double head) {
    List<Double> at = new ArrayList<>();
    double length = span.high() - span.low();
    double slack = (length - wide) / 2 - head;
    double middle = (span.low() + span.high()) / 2;
    if (slack >= 0) {
      for (int k = 0; k <= 12; k++) {
        double off = slack * ((k + 1) / 2) / 6.0 * (k % 2 == 0 ? 1 : -1);
        at.add(middle + off);
      }
    }
    at.add(span.high() + 2 * head + wide / 2);
    if (slack < 0 && side != Side.BELOW) {
      at.add(span.low() + wide / 2); // from one end past the other
    }
    double lower = span.low() - 2 * head - wide / 2;
    boolean underRoad = side != Side.BELOW && span.low() >= 0 && lower - wide / 2 < 0;
    if (!underRoad) {
      at.add(lower);
    }
    return at;
  }

  private static boolean clashes(double[] whole, List<double[]> tier) {
    return tier.stream().anyMatch(t -> t[0] < whole[1] && whole[0] < t[1]);
  }

  private int crossings(double[] words, Span own, List<Span> all) {
    int count = 0;
    for (Span s : all) {
      for (double end : new double[] {s.a(), s.b()}) {
        if (end > words[0] && end < words[1] && (s == own || s.high() - s.low() > 1e-6)) {
          count++;
        }
      }
    }
    return count;
  }

  private void draw(Span span, int tier, double at, double wide, List<Mark> marks) {
    double line = line(tier);
    List<Mark> drawn =
        side == Side.BELOW
            ? dims.horizontal(span.subject(), span.a(), line, span.b(), line, line, "")
            : dims.vertical(span.subject(), line, span.a(), line, span.b(), line, "");
    extension(span.subject(), span.a(), span.acrossA(), line, marks);
    extension(span.subject(), span.b(), span.acrossB(), line, marks);
    for (Mark m : drawn) {
      if (!(m instanceof Mark.Words)) {
        marks.add(m);
      }
    }
    double far = at > span.high() ? at + wide / 2 : at < span.low() ? at - wide / 2 : Double.NaN;
    double near = at > span.high() ? span.high() : span.low();
    Style narrow = Style.narrow(dims.tone());
    if (!Double.isNaN(far)) {
      boolean level = side == Side.BELOW;
      marks.add(
          new Mark.Shape(
              span.subject(),
              level ? Planar.line(near, line, far, line) : Planar.line(line, near, line, far),
              narrow));
    }
    Mark.Words mark = words(span, tier, at);
    Envelope box = Labels.box(mark, dims.denominator());
    words.add(box);
    // extension lines, its own and those of others, break behind its words
    onTop.add(new Mark.Shape(span.subject(), Planar.rectangle(box), Style.area(Tone.PAPER, 1)));
    onTop.add(mark);
  }

  /**
   * A hairline from the thing measured past the dimension line. Through what lies between it is
   * broken (ISO 129-1 lets it be, from memory): it begins, and goes on where it is clear of it.
   */
  private void extension(String subject, double at, double across, double line, List<Mark> marks) {
    double n = dims.denominator();
    double way = Math.signum(line - across);
    double from = across + way * Dimensions.GAP_MM * n;
    double to = line + way * Dimensions.OVERSHOOT_MM * n;
    if (way * (to - from) <= 0) {
      return;
    }
    double out = bodies.left(side != Side.BELOW, at, from, line);
    double clear = out + way * Dimensions.GAP_MM * n;
    double begun = from + way * BEGUN_MM * n;
    if (way * (clear - begun) <= BEGUN_MM * n) {
      hairline(subject, at, from, to, marks);
    } else {
      hairline(subject, at, from, begun, marks);
      hairline(subject, at, clear, to, marks);
    }
  }

  private void hairline(String subject, double at, double from, double to, List<Mark> marks) {
    marks.add(
        new Mark.Shape(
            subject,
            side == Side.BELOW ? Planar.line(at, from, at, to) : Planar.line(from, at, to, at),
            Style.line(dims.tone(), Canvas.HAIR_MM)));
  }

  /** Returns where the dimension line of a tier runs. */
  private double line(int tier) {
    return base + (side == Side.RIGHT ? 1 : -1) * (tier + 1) * step();
  }

  /** Returns the words of a span with their middle at {@code at}, above their line. */
  private Mark.Words words(Span span, int tier, double at) {
    boolean level = side == Side.BELOW;
    double off = line(tier) + (level ? 1 : -1) * dims.denominator();
    return new Mark.Words(
        span.subject(),
        span.text(),
        level ? at : off,
        level ? off : at,
        dims.textMm(),
        level ? 0 : 90,
        Anchor.MIDDLE,
        dims.tone());
  }
}
