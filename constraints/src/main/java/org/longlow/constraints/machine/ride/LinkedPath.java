package org.longlow.constraints.machine.ride;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.linkage.FourBar;
import org.longlow.constraints.machine.linkage.MotionRate;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/**
 * The path of an axle in an upright that two links hold: a point of the coupler of a four-bar
 * linkage.
 *
 * <p>Stations a degree of the lower link apart say how far along its path the axle is (Simpson's
 * rule over its speed, good to 1e-9 mm); between them Newton's rule finds the turn. It ends where
 * the axle no longer rises, at a dead point, or a quarter turn off.
 */
public final class LinkedPath implements WheelPath {

  private static final double STEP_RAD = Math.toRadians(1);

  /** No front works so far from where it is drawn. */
  private static final int MOST_STATIONS = 90;

  private static final int ROUNDS = 20;
  private static final double FOUND_RAD = 1e-13;

  private final FourBar bar;
  private final PointMm drawn;

  /** +1 if a counter-clockwise turn of the lower link raises the axle. */
  private final double sense;

  private final List<Station> stations;

  /** A place of the linkage: bump positive. */
  private record Station(double turnRad, double travelMm, double riseMm) {}

  /**
   * @param pivot where the lower link turns
   * @param joint where it holds the upright, as drawn
   * @param rodPivot where the upper link turns
   * @param rodJoint where that holds the upright, as drawn
   * @param axle as drawn, fixed to the upright
   */
  public LinkedPath(
      PointMm pivot, PointMm joint, PointMm rodPivot, PointMm rodJoint, PointMm axle) {
    bar = new FourBar(pivot, rodPivot, joint, rodJoint, 1);
    drawn = axle;
    double up = bar.rate(0).of(axle).z();
    if (!(Math.abs(up) > 1e-6)) {
      throw Values.refused("rise of the axle for each radian of its lower link mm", up, "not 0");
    }
    sense = Math.signum(up);
    List<Station> all = new ArrayList<>(walked(-1));
    Collections.reverse(all);
    all.add(new Station(0, 0, 0));
    all.addAll(walked(1));
    stations = List.copyOf(all);
  }

  private List<Station> walked(int way) {
    List<Station> all = new ArrayList<>();
    FourBar.Range range = bar.range();
    Station at = new Station(0, 0, 0);
    for (int k = 1; k < MOST_STATIONS; k++) {
      double turn = way * k * STEP_RAD;
      double of = sense * turn;
      if (of < range.leastRad() || of > range.mostRad() || rate(turn).of(axleAt(turn)).z() <= 0) {
        break;
      }
      double travel = at.travelMm() + lengthMm(at.turnRad(), turn);
      at = new Station(turn, travel, axleAt(turn).z() - drawn.z());
      all.add(at);
    }
    return all;
  }

  /** Turns are counted so that bump is positive. */
  private RigidMotion motion(double turnRad) {
    return bar.pose(sense * turnRad).motion();
  }

  private PointMm axleAt(double turnRad) {
    return motion(turnRad).apply(drawn);
  }

  /** Per radian of such a turn. */
  private MotionRate rate(double turnRad) {
    MotionRate rate = bar.rate(sense * turnRad);
    return new MotionRate(sense * rate.turnRad(), rate.origin().times(sense));
  }

  private double speedMm(double turnRad) {
    return rate(turnRad).of(axleAt(turnRad)).length();
  }

  /** How far the axle goes from one turn to another, mm. */
  private double lengthMm(double from, double to) {
    return (to - from) / 6 * (speedMm(from) + 4 * speedMm((from + to) / 2) + speedMm(to));
  }

  private double turnForTravel(double travelMm) {
    within("travel mm", travelMm, leastTravelMm(), mostTravelMm());
    Station from = before(travelMm, true);
    double turn = from.turnRad();
    for (int k = 0; k < ROUNDS; k++) {
      double off = from.travelMm() + lengthMm(from.turnRad(), turn) - travelMm;
      double step = off / speedMm(turn);
      turn -= step;
      if (Math.abs(step) < FOUND_RAD) {
        break;
      }
    }
    return turn;
  }

  private double turnForRise(double riseMm) {
    within("rise mm", riseMm, stations.get(0).riseMm(), stations.get(stations.size() - 1).riseMm());
    double turn = before(riseMm, false).turnRad();
    for (int k = 0; k < ROUNDS; k++) {
      PointMm at = axleAt(turn);
      double step = (at.z() - drawn.z() - riseMm) / rate(turn).of(at).z();
      turn -= step;
      if (Math.abs(step) < FOUND_RAD) {
        break;
      }
    }
    return turn;
  }

  private static void within(String what, double mm, double least, double most) {
    if (!(mm >= least - 1e-9 && mm <= most + 1e-9)) {
      throw Values.refused(what, mm, "within the reach of the links, " + least + " to " + most);
    }
  }

  /** The last station that is not beyond so much travel or rise. */
  private Station before(double mm, boolean travel) {
    Station found = stations.get(0);
    for (Station s : stations) {
      if ((travel ? s.travelMm() : s.riseMm()) > mm) {
        break;
      }
      found = s;
    }
    return found;
  }

  @Override
  public PointMm axle(double travelMm) {
    return carried(drawn, travelMm);
  }

  @Override
  public double travelForRiseMm(double riseMm) {
    if (riseMm == 0) {
      return 0; // exactly, where rounding would leave the drawn place
    }
    double turn = turnForRise(riseMm);
    Station from = before(riseMm, false);
    return from.travelMm() + lengthMm(from.turnRad(), turn);
  }

  @Override
  public PointMm directionAt(PointMm axle) {
    PointMm velocity = rate(turnForRise(axle.z() - drawn.z())).of(axle);
    return velocity.times(1 / velocity.length());
  }

  @Override
  public double turnPerMm(PointMm axle) {
    MotionRate rate = rate(turnForRise(axle.z() - drawn.z()));
    return rate.turnRad() / rate.of(axle).length();
  }

  @Override
  public PointMm carried(PointMm point, double travelMm) {
    // exactly as drawn at no travel, where rounding would leave the drawn place
    return travelMm == 0 ? point : motion(turnForTravel(travelMm)).apply(point);
  }

  @Override
  public double leastTravelMm() {
    return stations.get(0).travelMm();
  }

  @Override
  public double mostTravelMm() {
    return stations.get(stations.size() - 1).travelMm();
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof LinkedPath o && o.bar.equals(bar) && o.drawn.equals(drawn);
  }

  @Override
  public int hashCode() {
    return 31 * bar.hashCode() + drawn.hashCode();
  }

  @Override
  public String toString() {
    return "LinkedPath[" + bar + ", axle " + drawn + "]";
  }
}
