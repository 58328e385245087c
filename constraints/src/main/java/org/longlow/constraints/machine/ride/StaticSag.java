package org.longlow.constraints.machine.ride;

import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.AxleLoads;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/**
 * The machine at rest on its springs: travels, pitch and axle loads that agree with each other.
 *
 * <p>Virtual work at each end: the wheel load less the unsprung weight, times the rise of the axle
 * along its path, is the spring force along the path. Frictionless, linear springs, level ground.
 * While the front wheel brakes, the road's force backwards and the mass of the wheel work as well,
 * as far as what holds the brake swings. Wheel loads come from the masses where they really are, so
 * the answer is a fixed point; it is found by repeating, each round gaining about a digit.
 *
 * @param front where the front wheel rests
 * @param rear where the rear wheel rests
 * @param placement body axes as drawn to ground axes; its turn is the pitch, nose up positive,
 *     which takes that much off the rake when negative (nose down)
 * @param loads static wheel loads and common centre in ground axes
 * @param frontRadiusMm front axle height, after tyre deflection
 * @param rearRadiusMm rear axle height, after tyre deflection
 * @param settled false if the springs are too soft to find a rest
 */
public record StaticSag(
    Suspension.Rest front,
    Suspension.Rest rear,
    RigidMotion placement,
    AxleLoads loads,
    double frontRadiusMm,
    double rearRadiusMm,
    boolean settled) {

  private static final int ROUNDS = 500;

  /** Rounds end when travels and radii move less than this, mm. */
  private static final double SETTLED_MM = 1e-11;

  /**
   * One end.
   *
   * @param suspension path and spring
   * @param unsprung masses that move with the axle, at their drawn places; each as far as it rises
   *     with the axle, so that one on the far side of a pivot takes away
   * @param freeRadiusMm tyre, mm, &gt; 0
   * @param tyreNPerMm radial stiffness of the tyre, N/mm, &gt; 0; infinite for a stiff one
   */
  public record End(
      Suspension suspension, MassPoint.Sum unsprung, double freeRadiusMm, double tyreNPerMm) {
    public End {
      if (suspension == null || unsprung == null) {
        throw new IllegalArgumentException("an end needs a suspension and an unsprung mass");
      }
      Values.positive("tyre radius mm", freeRadiusMm);
      if (!(tyreNPerMm > 0)) {
        throw Values.refused("tyre stiffness N/mm", tyreNPerMm, "above 0, infinite if stiff");
      }
    }

    /** An end with a stiff tyre. */
    public End(Suspension suspension, MassPoint.Sum unsprung, double freeRadiusMm) {
      this(suspension, unsprung, freeRadiusMm, Double.POSITIVE_INFINITY);
    }

    private MassPoint.Sum unsprungAt(PointMm axle, PointMm axleAsDrawn) {
      return unsprung.shifted(unsprung.massKg(), axle.minus(axleAsDrawn));
    }

    /**
     * Returns where the wheel rests.
     *
     * @param loadN on the road
     * @param braking how all slows down
     * @param brakeN with what force the road slows this wheel
     */
    private Suspension.Rest rest(
        double loadN,
        PointMm axle,
        RigidMotion placement,
        double factor,
        Braking braking,
        double brakeN) {
      PointMm way = placement.turn(suspension.path().directionAt(axle));
      double unsprungN = unsprung.massKg() * Values.STANDARD_GRAVITY_MS2;
      double turn = braking.swings ? suspension.path().turnPerMm() : 0;
      double contact = way.x() + freeRadiusMm * turn;
      double alongPathN =
          (loadN - unsprungN) * factor * way.z()
              - brakeN * contact
              + braking.g * unsprungN * way.x();
      return suspension.restUnder(alongPathN);
    }

    private double radius(double loadN) {
      double squash = Math.max(0, loadN) / tyreNPerMm;
      // A tyre flat on the ground is past every use of the figure; keep the geometry alive.
      return Math.max(freeRadiusMm / 2, freeRadiusMm - squash);
    }
  }

  /**
   * Returns the rest of a machine.
   *
   * @param sprung masses carried by the springs, with people and load, body axes as drawn
   * @param loadFactor spring load over the static one, &gt; 0: 1 upright; in a turn cos Δφ / cos φi
   *     of {@link TurnLean}
   */
  public static StaticSag of(End front, End rear, MassPoint.Sum sprung, double loadFactor) {
    return of(front, rear, sprung, loadFactor, Braking.NONE);
  }

  /**
   * Returns the balance of a machine that the front wheel alone slows down steadily, upright.
   *
   * @param braking how much, and what holds the brake
   */
  public static StaticSag braking(End front, End rear, MassPoint.Sum sprung, Braking braking) {
    return of(front, rear, sprung, 1, braking);
  }

  /**
   * Braking by the front wheel alone.
   *
   * @param g how fast all slows down, in that of gravity, &gt;= 0
   * @param swings whether the brake is held by what holds the axle, and so turns with a link; else
   *     a rod beside that holds it
   */
  public record Braking(double g, boolean swings) {

    private static final Braking NONE = new Braking(0, false);

    public Braking {
      Values.notNegative("braking g", g);
    }
  }

  private static StaticSag of(
      End front, End rear, MassPoint.Sum sprung, double loadFactor, Braking braking) {
    Values.positive("load factor", loadFactor);
    double frontTravel = 0;
    double rearTravel = 0;
    double frontRadius = front.freeRadiusMm();
    double rearRadius = rear.freeRadiusMm();
    PointMm frontDrawn = front.suspension().path().axle(0);
    PointMm rearDrawn = rear.suspension().path().axle(0);
    for (int round = 0; ; round++) {
      PointMm frontAxle = front.suspension().path().axle(frontTravel);
      PointMm rearAxle = rear.suspension().path().axle(rearTravel);
      RigidMotion placement = GroundPlane.stand(rearAxle, rearRadius, frontAxle, frontRadius);
      MassPoint total =
          sprung
              .plus(front.unsprungAt(frontAxle, frontDrawn))
              .plus(rear.unsprungAt(rearAxle, rearDrawn))
              .total();
      AxleLoads loads =
          new AxleLoads(
              placement.apply(frontAxle).x(),
              new MassPoint(total.massKg(), placement.apply(total.at()), total.yMm()));
      double shifted = braking.g * loads.weightN() * loads.total().at().z() / loads.wheelbaseMm();
      double frontN = loads.frontN() + shifted;
      double rearN = loads.rearN() - shifted;
      Suspension.Rest frontRest =
          front.rest(
              frontN, frontAxle, placement, loadFactor, braking, braking.g * loads.weightN());
      Suspension.Rest rearRest = rear.rest(rearN, rearAxle, placement, loadFactor, braking, 0);
      double newFront = front.radius(frontN * loadFactor);
      double newRear = rear.radius(rearN * loadFactor);
      double moved =
          Math.abs(frontRest.travelMm() - frontTravel)
              + Math.abs(rearRest.travelMm() - rearTravel)
              + Math.abs(newFront - frontRadius)
              + Math.abs(newRear - rearRadius);
      if (moved < SETTLED_MM || round == ROUNDS) {
        return new StaticSag(
            frontRest, rearRest, placement, loads, frontRadius, rearRadius, moved < 1e-6);
      }
      frontTravel = frontRest.travelMm();
      rearTravel = rearRest.travelMm();
      frontRadius = newFront;
      rearRadius = newRear;
    }
  }
}
