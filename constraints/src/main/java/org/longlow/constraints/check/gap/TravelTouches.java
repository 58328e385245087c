package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Lowest;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.TravelWay;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/**
 * What first touches what while the wheels go up or down: parts that move with them and all that
 * they may not touch, people aboard, and the road under all of it.
 *
 * <p>Nothing is missed between positions: a gap changes by no more than both bodies move, and a
 * piece of the way is halved until the gap in its middle is more than that, or nothing moves
 * farther than {@link #BOUND_MM}. The road is looked at every {@link #ROAD_MM} of travel. Not for
 * several threads.
 */
public final class TravelTouches {

  /** A touch is found to within this, mm. */
  public static final double BOUND_MM = 0.05;

  /** How far apart the road is looked at, mm of travel. */
  private static final double ROAD_MM = 1;

  /** Points between two positions lie no farther off the straight way than this share of it. */
  private static final double BULGE = 1.2;

  /** What is shaped anew has points that cannot be followed; none is as quick as this, in pins. */
  private static final double SHAPED_ANEW = 3;

  private final Layout layout;
  private final Wheels wheels;
  private final Map<String, PartShape> drawn;
  private final List<PersonBody> people;
  private final Condition condition;
  private final GapRules rules;
  private final Stances stances;
  private final Map<String, Solid> still = new HashMap<>();
  private TravelWay way;
  private double from;
  private double to;
  private final Map<Double, Standing> standings = new HashMap<>();
  private final Map<Double, Map<String, Solid>> solids = new HashMap<>();

  /**
   * The first touch of a way.
   *
   * @param share of the way at which it is, 0 full droop to 1 full bump
   * @param words the two that touch, such as {@code guard and tank}
   * @param where in the axes of the frame
   */
  public record Touch(double share, String words, PointMm where) {}

  private record Pair(String moved, String other, Solid person) {}

  /**
   * @param drawn parts as drawn
   * @param condition with what people; nobody else is looked at
   */
  public TravelTouches(
      Layout layout,
      Wheels wheels,
      Map<String, PartShape> drawn,
      Condition condition,
      List<Sitting> sittings) {
    this.layout = layout;
    this.wheels = wheels;
    this.drawn = drawn;
    this.condition = condition;
    this.people =
        PersonBody.of(
            sittings.stream().filter(s -> condition.aboard().contains(s.occupant())).toList());
    rules = new GapRules(layout, wheels.drawn());
    stances = new Stances(wheels, drawn);
    drawn.forEach((name, shape) -> still.put(name, Solid.of(shape)));
  }

  /**
   * Returns what touches first on a way; empty if nothing does.
   *
   * @param begin share of the way to begin at
   * @param end share of the way to end at; before {@code begin} on the way down
   */
  public Optional<Touch> first(TravelWay along, double begin, double end) {
    way = along;
    from = begin;
    to = end;
    standings.clear();
    solids.clear();
    if (!wheels.stands() || !way.moves() || begin == end) {
      return Optional.empty();
    }
    double best = 1;
    Pair met = null;
    for (Pair pair : pairs()) {
      double at = first(pair, best);
      if (!Double.isNaN(at) && (met == null || at < best)) {
        best = at;
        met = pair;
      }
    }
    double road = road(best);
    if (!Double.isNaN(road) && (met == null || road < best)) {
      Lowest low = low(road).orElseThrow();
      return Optional.of(new Touch(share(road), low.part() + " and the road", low.at()));
    }
    return met == null ? Optional.empty() : Optional.of(touch(met, best));
  }

  private double share(double t) {
    return from + t * (to - from);
  }

  private Standing at(double t) {
    return standings.computeIfAbsent(
        t, u -> stances.moved(condition, Rider.NOBODY, way.at(share(u))));
  }

  private Solid solid(String part, double t) {
    PartShape there = at(t).moved().get(part);
    return there == null
        ? still.get(part)
        : solids
            .computeIfAbsent(t, u -> new HashMap<>())
            .computeIfAbsent(part, p -> Solid.of(there));
  }

  private List<Pair> pairs() {
    List<String> moved =
        drawn.keySet().stream()
            .filter(p -> at(0).moved().containsKey(p) || at(1).moved().containsKey(p))
            .toList();
    List<Pair> pairs = new ArrayList<>();
    for (String part : moved) {
      for (String other : drawn.keySet()) {
        boolean twice = moved.contains(other) && other.compareTo(part) <= 0;
        if (!part.equals(other) && !twice && rules.mayNotTouch(part, other)) {
          pairs.add(new Pair(part, other, null));
        }
      }
      for (PersonBody person : people) {
        if (rules.clearOfPeople(part)
            && !Resting.ownCushion(person.sitting(), layout.parts().get(part))) {
          Solid body = person.clearOf(layout.parts().get(part), rules);
          pairs.add(new Pair(part, person.sitting().occupant().words(), body));
        }
      }
    }
    return pairs;
  }

  private Solid other(Pair pair, double t) {
    return pair.person() != null ? pair.person() : solid(pair.other(), t);
  }

  private double first(Pair pair, double until) {
    if (meet(pair, 0)) {
      return 0;
    }
    double found = first(pair, 0, until);
    return Double.isNaN(found) && meet(pair, until) ? until : found;
  }

  private boolean meet(Pair pair, double t) {
    return solid(pair.moved(), t).apartMm(other(pair, t), 0) < 0;
  }

  private double first(Pair pair, double a, double b) {
    double middle = (a + b) / 2;
    double most =
        Math.max(
            goesMm(pair.moved(), a, middle) + goes(pair, a, middle),
            goesMm(pair.moved(), middle, b) + goes(pair, middle, b));
    if (most <= BOUND_MM) {
      return meet(pair, middle) ? middle : Double.NaN;
    }
    double apart = solid(pair.moved(), middle).apartMm(other(pair, middle), most);
    if (apart >= most) {
      return Double.NaN;
    }
    double before = first(pair, a, middle);
    if (!Double.isNaN(before)) {
      return before;
    }
    return apart < 0 ? middle : first(pair, middle, b);
  }

  private double goes(Pair pair, double a, double b) {
    return pair.person() != null ? 0 : goesMm(pair.other(), a, b);
  }

  /** How far at most a point of a part goes between two places of the way, mm. */
  private double goesMm(String part, double a, double b) {
    Map<String, PartShape> before = at(a).moved();
    Map<String, PartShape> after = at(b).moved();
    if (!before.containsKey(part) && !after.containsKey(part)) {
      return 0;
    }
    List<Prism> one = before.getOrDefault(part, drawn.get(part)).prisms();
    List<Prism> two = after.getOrDefault(part, drawn.get(part)).prisms();
    double most = 0;
    for (int i = 0; i < one.size(); i++) {
      Coordinate[] p = one.get(i).outline().getCoordinates();
      Coordinate[] q = i < two.size() ? two.get(i).outline().getCoordinates() : new Coordinate[0];
      if (p.length != q.length) {
        return SHAPED_ANEW * pinsGoMm(part, a, b);
      }
      for (int k = 0; k < p.length; k++) {
        most = Math.max(most, p[k].distance(q[k]));
      }
    }
    return BULGE * most;
  }

  private double pinsGoMm(String part, double a, double b) {
    return layout.parts().get(part).pins().stream()
        .mapToDouble(pin -> at(a).places().pin(pin).distance(at(b).places().pin(pin)))
        .max()
        .orElse(0);
  }

  private Touch touch(Pair pair, double t) {
    Solid body = solid(pair.moved(), t);
    Gap gap = body.to(other(pair, t), Double.MAX_VALUE);
    boolean swap = pair.person() == null && pair.other().compareTo(pair.moved()) < 0;
    String one = swap ? pair.other() : pair.moved();
    String two = swap ? pair.moved() : pair.other();
    return new Touch(share(t), one + " and " + two, gap.where());
  }

  private Optional<Lowest> low(double t) {
    Standing there = at(t);
    return Lowest.of(there);
  }

  private boolean grounds(double t) {
    return low(t).filter(l -> l.heightMm() <= 0).isPresent();
  }

  /** Where on the way something is first on the road, or NaN. */
  private double road(double until) {
    int steps =
        (int) Math.max(1, Math.ceil(way.lengthMm() * Math.abs(to - from) * until / ROAD_MM));
    double clear = 0;
    for (int i = 0; i <= steps; i++) {
      double t = until * i / steps;
      if (grounds(t)) {
        return i == 0 ? 0 : between(clear, t);
      }
      clear = t;
    }
    return Double.NaN;
  }

  private double between(double clear, double down) {
    double low = clear;
    double high = down;
    while ((high - low) * way.lengthMm() * Math.abs(to - from) > BOUND_MM / 10) {
      double middle = (low + high) / 2;
      if (grounds(middle)) {
        high = middle;
      } else {
        low = middle;
      }
    }
    return high;
  }
}
