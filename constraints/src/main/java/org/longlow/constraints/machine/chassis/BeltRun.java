package org.longlow.constraints.machine.chassis;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.machine.Values;
import org.longlow.rider.geom.PointMm;

/**
 * A belt or chain laid taut round wheels in their order: arcs and tangents over the pitch circles.
 *
 * @param wheels at least two, none within another
 * @param left whether it turns to the left
 */
public record BeltRun(List<Wheel> wheels, boolean left) {

  /** A hair less than no wrap is rounding, not a whole turn, rad. */
  private static final double ROUNDING_RAD = 1e-9;

  /** A wheel wrapped by more is not touched where it only guides: the run passes beside it. */
  private static final double UNTOUCHED_RAD = 1.5 * Math.PI;

  /**
   * A wheel.
   *
   * @param at its centre
   * @param radiusMm of its pitch circle, mm, &gt; 0
   * @param back whether it presses on the run from outside
   */
  public record Wheel(PointMm at, double radiusMm, boolean back) {
    public Wheel {
      Values.positive("pitch radius mm", radiusMm);
    }
  }

  /** A straight stretch, from where it leaves one wheel to where it meets the next. */
  public record Straight(PointMm from, PointMm to) {

    public double lengthMm() {
      return from.distance(to);
    }

    /** Returns how far a point is from it, mm. */
    double distance(PointMm point) {
      PointMm along = to.minus(from);
      double share = point.minus(from).dot(along) / along.dot(along);
      return from.towards(to, Math.max(0, Math.min(1, share))).distance(point);
    }
  }

  public BeltRun {
    wheels = List.copyOf(wheels);
    Values.within("wheels of a run", wheels.size(), 2, Integer.MAX_VALUE);
  }

  /** A run that turns as the centres of its wheels do. */
  public BeltRun(List<Wheel> wheels) {
    this(wheels, turnsLeft(wheels.stream().map(Wheel::at).toList()));
  }

  /** Returns a run round two wheels, uncrossed. */
  public static BeltRun round(PointMm one, double oneMm, PointMm other, double otherMm) {
    return new BeltRun(List.of(new Wheel(one, oneMm, false), new Wheel(other, otherMm, false)));
  }

  /** Returns whether a run over these centres, in this order, turns to the left. */
  public static boolean turnsLeft(List<PointMm> centres) {
    double turn = 0;
    for (int i = 0; i < centres.size(); i++) {
      turn += centres.get(i).cross(centres.get((i + 1) % centres.size()));
    }
    return turn >= 0;
  }

  /** Returns on which side of the run each wheel lies: 1 on its left, -1 on its right. */
  private double[] sides() {
    double within = left ? 1 : -1;
    return wheels.stream().mapToDouble(w -> w.back() ? -within : within).toArray();
  }

  /**
   * Two wheels, the second after the first, that no straight stretch leads between.
   *
   * @param needMm more than this must be between their centres, mm
   */
  public record Nested(int first, int second, double apartMm, double needMm) {}

  /**
   * From one wheel to the next.
   *
   * @param acrossMm how far the stretch gets across the line of their middles, left positive
   */
  private record Step(int to, double apartMm, double acrossMm) {
    boolean leads() {
      return apartMm > Math.abs(acrossMm);
    }
  }

  private Step from(int i, double[] side) {
    int next = (i + 1) % side.length;
    Wheel a = wheels.get(i);
    Wheel b = wheels.get(next);
    return new Step(
        next, a.at().distance(b.at()), side[next] * b.radiusMm() - side[i] * a.radiusMm());
  }

  /** Returns the first two between which it cannot run. */
  public Optional<Nested> nested() {
    double[] side = sides();
    for (int i = 0; i < side.length; i++) {
      Step step = from(i, side);
      if (!step.leads()) {
        return Optional.of(new Nested(i, step.to, step.apartMm, Math.abs(step.acrossMm)));
      }
    }
    return Optional.empty();
  }

  /** Returns its straight stretches: from each wheel to the next, from the last to the first. */
  public List<Straight> straights() {
    double[] side = sides();
    List<Straight> all = new ArrayList<>();
    for (int i = 0; i < side.length; i++) {
      Step step = from(i, side);
      if (!step.leads()) {
        throw Values.refused(
            "centre distance mm",
            step.apartMm,
            "more than " + Math.abs(step.acrossMm) + " between two wheels of one run");
      }
      Wheel a = wheels.get(i);
      Wheel b = wheels.get(step.to);
      double heading = b.at().minus(a.at()).angleRad() - Math.asin(step.acrossMm / step.apartMm);
      PointMm out = PointMm.unit(heading).left();
      all.add(
          new Straight(
              a.at().minus(out.times(side[i] * a.radiusMm())),
              b.at().minus(out.times(side[step.to] * b.radiusMm()))));
    }
    return all;
  }

  /** Returns by how much it is wrapped round each wheel, rad in [0, 2π). */
  public List<Double> wrapsRad() {
    return wrapsRad(straights());
  }

  private List<Double> wrapsRad(List<Straight> straights) {
    double[] side = sides();
    List<Double> all = new ArrayList<>();
    for (int i = 0; i < side.length; i++) {
      Straight in = straights.get((i + side.length - 1) % side.length);
      Straight out = straights.get(i);
      double turn =
          side[i]
              * (out.to().minus(out.from()).angleRad() - in.to().minus(in.from()).angleRad())
              % (2 * Math.PI);
      all.add(
          turn < -ROUNDING_RAD
              ? turn + 2 * Math.PI
              : turn > 2 * Math.PI - ROUNDING_RAD ? 0 : Math.max(0, turn));
    }
    return all;
  }

  /** Returns whether it touches a wheel that only guides it, wrapped so far. */
  public static boolean touches(double wrapRad) {
    return wrapRad < UNTOUCHED_RAD;
  }

  /** Returns which way a wheel goes to press on it: along its middle radius, one mm long. */
  public PointMm pressing(int wheel) {
    Straight in = straights().get((wheel + wheels.size() - 1) % wheels.size());
    double side = sides()[wheel];
    double heading = in.to().minus(in.from()).angleRad() + side * wrapsRad().get(wheel) / 2;
    return PointMm.unit(heading).left().times(-side);
  }

  /** Returns it with one of its wheels elsewhere, turning as before. */
  public BeltRun with(int wheel, PointMm at) {
    List<Wheel> moved = new ArrayList<>(wheels);
    Wheel was = moved.get(wheel);
    moved.set(wheel, new Wheel(at, was.radiusMm(), was.back()));
    return new BeltRun(moved, left);
  }

  /** Returns it off one of its wheels, of which it has more than two. */
  public BeltRun without(int wheel) {
    List<Wheel> others = new ArrayList<>(wheels);
    others.remove(wheel);
    return new BeltRun(others, left);
  }

  /** Returns its length, mm. */
  public double lengthMm() {
    List<Straight> straights = straights();
    List<Double> wraps = wrapsRad(straights);
    double sum = 0;
    for (int i = 0; i < wheels.size(); i++) {
      sum += straights.get(i).lengthMm() + wheels.get(i).radiusMm() * wraps.get(i);
    }
    return sum;
  }

  /**
   * Returns its way once round, beginning where it leaves the first wheel; arcs as chords.
   *
   * @param stepRad of an arc for each chord at most, rad, &gt; 0
   */
  public List<PointMm> way(double stepRad) {
    double[] side = sides();
    List<Straight> straights = straights();
    List<Double> wraps = wrapsRad(straights);
    List<PointMm> way = new ArrayList<>();
    for (int i = 0; i < side.length; i++) {
      int next = (i + 1) % side.length;
      way.add(straights.get(i).from());
      int chords = (int) Math.ceil(wraps.get(next) / stepRad);
      for (int k = 0; k < chords; k++) {
        way.add(
            straights
                .get(i)
                .to()
                .turnedAbout(wheels.get(next).at(), side[next] * wraps.get(next) * k / chords));
      }
    }
    return way;
  }

  /**
   * Returns how far a stretch can be moved up and down in its middle, all in all, with so much
   * length to spare while the others are taut, mm: it hangs as two straight lines.
   *
   * @param straightMm mm, &gt;= 0
   * @param spareMm mm, &gt;= 0
   */
  public static double freePlayMm(double straightMm, double spareMm) {
    double half = Values.notNegative("straight stretch mm", straightMm) / 2;
    double leg = half + Values.notNegative("spare mm", spareMm) / 2;
    return 2 * Math.sqrt(Math.max(0, leg * leg - half * half));
  }
}
