package org.longlow.constraints.machine.ride;

import java.util.List;
import org.longlow.constraints.machine.Values;

/**
 * One end's suspension: a path, stops and a spring seen at the wheel, linear or by its forces.
 *
 * <p>Force and rate are along the wheel's path: for a fork both springs together, for a swingarm
 * the spring rate times the motion ratio squared.
 *
 * @param path of the axle; its drawn position is travel 0
 * @param droopMm travel from drawn down to the top-out stop, mm, &gt;= 0
 * @param bumpMm travel from drawn up to the bump stop, mm, &gt;= 0
 * @param rateNPerMm wheel rate along the path, N/mm, &gt; 0; NaN if nobody knows it; any value if
 *     there is no travel
 * @param preloadN force at the wheel at full droop, N, &gt;= 0
 * @param forcesN force along the path at equal steps from full droop to full bump, rising, straight
 *     between them; empty for a linear spring
 */
public record Suspension(
    WheelPath path,
    double droopMm,
    double bumpMm,
    double rateNPerMm,
    double preloadN,
    List<Double> forcesN) {

  /** Where the wheel rests between its stops. */
  public enum State {
    RIDING,
    TOPPED_OUT,
    BOTTOMED,
    /** No travel at all. */
    RIGID,
    /** Somewhere between the stops: the rate is not known. */
    UNKNOWN
  }

  /**
   * A resting place.
   *
   * @param travelMm from drawn, bump positive
   */
  public record Rest(double travelMm, State state) {}

  /** An end with a linear spring. */
  public Suspension(
      WheelPath path, double droopMm, double bumpMm, double rateNPerMm, double preloadN) {
    this(path, droopMm, bumpMm, rateNPerMm, preloadN, List.of());
  }

  public Suspension {
    forcesN = List.copyOf(forcesN);
    for (int i = 1; i < forcesN.size(); i++) {
      if (!(forcesN.get(i) > forcesN.get(i - 1))) {
        throw Values.refused("force N", forcesN.get(i), "more than that below it");
      }
    }
    if (path == null) {
      throw new IllegalArgumentException("a suspension needs the path of its axle");
    }
    Values.notNegative("droop mm", droopMm);
    Values.notNegative("bump mm", bumpMm);
    Values.notNegative("preload N", preloadN);
    if (droopMm + bumpMm > 0 && !Double.isNaN(rateNPerMm)) {
      Values.positive("wheel rate N/mm", rateNPerMm);
    }
    if (-droopMm < path.leastTravelMm()) {
      throw Values.refused("droop mm", droopMm, "up to where the link hangs straight down");
    }
    if (bumpMm > path.mostTravelMm()) {
      throw Values.refused("bump mm", bumpMm, "up to where the link stands straight up");
    }
  }

  /** Returns an end without springs, such as a rigid rear end. */
  public static Suspension rigid(WheelPath path) {
    return new Suspension(path, 0, 0, 0, 0);
  }

  /** Returns the same end with a spring of these forces instead. */
  public Suspension withForces(List<Double> newForcesN) {
    double first = newForcesN.get(0);
    double mean = (newForcesN.get(newForcesN.size() - 1) - first) / (droopMm + bumpMm);
    return new Suspension(path, droopMm, bumpMm, mean, first, newForcesN);
  }

  /** Returns the force of the spring along the path, N. */
  public double forceN(double travelMm) {
    if (forcesN.isEmpty()) {
      return preloadN + rateNPerMm * (travelMm + droopMm);
    }
    double at = (travelMm + droopMm) / stepMm();
    int i = Math.max(0, Math.min(forcesN.size() - 2, (int) at));
    return forcesN.get(i) + (at - i) * (forcesN.get(i + 1) - forcesN.get(i));
  }

  private double stepMm() {
    return (droopMm + bumpMm) / (forcesN.size() - 1);
  }

  /** Returns at which travel the spring bears a force, N, which is more than it does at droop. */
  private double travelMm(double forceN) {
    if (forcesN.isEmpty()) {
      return (forceN - preloadN) / rateNPerMm - droopMm;
    }
    int i = 0;
    while (i < forcesN.size() - 2 && forcesN.get(i + 1) < forceN) {
      i++;
    }
    double low = forcesN.get(i);
    return (i + (forceN - low) / (forcesN.get(i + 1) - low)) * stepMm() - droopMm;
  }

  /** Returns whether it can be said where the wheel rests. */
  public boolean known() {
    return droopMm + bumpMm == 0 || !Double.isNaN(rateNPerMm);
  }

  /**
   * Returns where the wheel rests under a force along the path, N of any sign; as drawn where the
   * rate is not known.
   */
  public Rest restUnder(double alongPathN) {
    if (droopMm + bumpMm == 0) {
      return new Rest(0, State.RIGID);
    }
    if (!known()) {
      return new Rest(0, State.UNKNOWN);
    }
    if (alongPathN <= preloadN) {
      return new Rest(-droopMm, State.TOPPED_OUT);
    }
    double travel = travelMm(alongPathN);
    return travel >= bumpMm ? new Rest(bumpMm, State.BOTTOMED) : new Rest(travel, State.RIDING);
  }
}
