package org.longlow.constraints.place;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.gap.Contacts;
import org.longlow.constraints.gap.SideBySide;
import org.longlow.constraints.solve.problem.Quantity;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.constraints.solve.relation.Relations;

/**
 * The gap between two bodies as rows of a limit, one for each place where they come close.
 *
 * <p>Pins move in the elevation only, so a row is the room there: the distance in side view less
 * what leaves the gap asked for with the distance across the machine as it is. It is zero where the
 * gap is just kept, falls with the depth where the outlines overlap, and so shows the way out.
 */
final class GapRows {

  /** Places looked after at once. */
  static final int PLACES = 6;

  /** Room beyond which a place has no part in the step, mm. */
  private static final double REACH_MM = 120;

  private final MovingBody first;
  private final MovingBody second;
  private final Quantity gap;

  /** Whether the gap is the most allowed, which the nearest place alone decides; else the least. */
  private final boolean most;

  /** Outlines that lie side by side: no move in the elevation is asked of them. */
  private final List<SideBySide.Pair> aside;

  /** The room where one of the bodies is not there, since nobody can be seated so. */
  private final double nobodyMm;

  private final int[] variables;
  private volatile Reading last;

  private GapRows(
      MovingBody first,
      MovingBody second,
      Quantity gap,
      boolean most,
      List<SideBySide.Pair> aside,
      double[] seen) {
    this.first = first;
    this.second = second;
    this.gap = gap;
    this.most = most;
    this.aside = aside;
    // who sits as drawn may not be thrown off to keep a gap; who does not, keeps none
    nobodyMm = areThere(first, second, seen) ? Double.NaN : REACH_MM;
    variables =
        Stream.of(first.variables(), second.variables(), gap.variables())
            .flatMapToInt(IntStream::of)
            .distinct()
            .sorted()
            .toArray();
  }

  private static boolean areThere(MovingBody first, MovingBody second, double[] x) {
    return first.at(x).body() != null && second.at(x).body() != null;
  }

  /** Returns where the bodies lie side by side with less than this gap, at {@code x}. */
  static List<SideBySide.Pair> aside(
      MovingBody first, MovingBody second, Quantity gap, double[] x) {
    return areThere(first, second, x)
        ? SideBySide.of(first.at(x).body(), second.at(x).body(), gap.value(x, null))
        : List.of();
  }

  /**
   * Returns rows that are zero or more while the bodies keep at least this gap.
   *
   * @param aside outlines that lie side by side; what is short across is a row that does not move
   * @param seen values of all variables where it is seen who can be seated
   */
  static List<Relation> atLeast(
      MovingBody first,
      MovingBody second,
      Quantity gap,
      List<SideBySide.Pair> aside,
      double[] seen) {
    GapRows rows = new GapRows(first, second, gap, false, aside, seen);
    List<Relation> relations = new ArrayList<>();
    double most = aside.stream().mapToDouble(SideBySide.Pair::shortMm).max().orElse(0);
    if (most > 0) {
      relations.add(Relations.equal(Quantity.of(-most), Quantity.of(0)));
    }
    for (int k = 0; k < PLACES; k++) {
      relations.add(rows.new Row(k));
    }
    return relations;
  }

  /** Returns a row that is zero or more while the bodies keep at most this gap. */
  static List<Relation> atMost(MovingBody first, MovingBody second, Quantity gap, double[] seen) {
    return List.of(new GapRows(first, second, gap, true, List.of(), seen).new Row(0));
  }

  private Reading reading(double[] x) {
    Reading known = last;
    if (known == null || !MovingBody.same(known.values, x, variables)) {
      known = new Reading(x);
      last = known;
    }
    return known;
  }

  /** Distances at the contacts of one outline, were it another. */
  private interface Sides {
    void at(int face, Geometry outline, double[] sides);
  }

  /** The places at one point, with their slopes once asked for. */
  private final class Reading {
    private final double[] values;
    private final double gapMm;
    private final double[] gapSlopes;
    private final MovingBody.At a;
    private final MovingBody.At b;
    private final Contacts contacts;
    private double[][] gradients;

    Reading(double[] x) {
      values = MovingBody.take(x, variables);
      gapSlopes = new double[gap.variables().length];
      gapMm = gap.value(x, gapSlopes);
      a = first.at(x);
      b = second.at(x);
      contacts =
          a.body() == null || b.body() == null
              ? null
              : Contacts.of(
                  a.body(),
                  b.body(),
                  gapMm,
                  most ? Double.POSITIVE_INFINITY : REACH_MM,
                  most ? 1 : PLACES,
                  aside);
    }

    int count() {
      return contacts == null ? 0 : contacts.count();
    }

    double roomMm(int place) {
      if (contacts == null) {
        return nobodyMm;
      }
      return place < count() ? contacts.roomMm(place, gapMm) : REACH_MM;
    }

    synchronized double[] gradient(int place) {
      if (gradients == null) {
        double[][] all = new double[count()][variables.length];
        for (MovingBody.Beside way : a.besides()) {
          add(way, first, contacts.facesOfFirst(), contacts::sidesOfFirst, all);
        }
        for (MovingBody.Beside way : b.besides()) {
          add(way, second, contacts.facesOfSecond(), contacts::sidesOfSecond, all);
        }
        for (int k = 0; k < all.length; k++) {
          double needed = contacts.neededSlope(k, gapMm);
          for (int i = 0; i < gapSlopes.length; i++) {
            all[k][at(gap.variables()[i])] -= needed * gapSlopes[i];
          }
        }
        gradients = all;
      }
      return gradients[place];
    }

    private void add(
        MovingBody.Beside way, MovingBody body, int[] faces, Sides measure, double[][] all) {
      double[] less = sides(way.less(), faces, measure);
      double[] more = sides(way.more(), faces, measure);
      for (int k = 0; k < all.length; k++) {
        double slope = (more[k] - less[k]) / way.apart();
        // where an outline gains or loses a corner just here, there is none
        for (int i = 0; i < way.slopes().length && Double.isFinite(slope); i++) {
          all[k][at(body.variables()[i])] += slope * way.slopes()[i];
        }
      }
    }

    private double[] sides(IntFunction<Geometry> outlines, int[] faces, Sides measure) {
      double[] sides = new double[count()];
      Arrays.fill(sides, Double.NaN);
      for (int face : faces) {
        Geometry outline = outlines.apply(face);
        if (outline != null) {
          measure.at(face, outline, sides);
        }
      }
      return sides;
    }

    private int at(int variable) {
      return Arrays.binarySearch(variables, variable);
    }
  }

  private final class Row implements Relation {
    private final int place;

    Row(int place) {
      this.place = place;
    }

    @Override
    public int[] variables() {
      return variables;
    }

    @Override
    public boolean costly() {
      return true;
    }

    @Override
    public double evaluate(double[] x, double[] gradient) {
      Reading reading = reading(x);
      int sign = most ? -1 : 1;
      if (gradient != null) {
        Arrays.fill(gradient, 0, variables.length, 0);
        if (place < reading.count()) {
          double[] g = reading.gradient(place);
          for (int i = 0; i < g.length; i++) {
            gradient[i] = sign * g[i];
          }
        }
      }
      return sign * reading.roomMm(place);
    }
  }
}
