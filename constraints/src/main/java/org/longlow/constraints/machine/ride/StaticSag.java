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

  /** Rests that have not been found by then are sought. */
  private static final int QUICK_ROUNDS = 60;

  /** Two steps tell where the next ones lead where each is at most this share of the one before. */
  private static final double MOST_SHARE = 0.5;

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
     * What a wheel carries.
     *
     * @param roadN on the road
     * @param brakeN with what force the road slows this wheel
     */
    private record Load(
        double roadN, RigidMotion placement, double factor, Braking braking, double brakeN) {}

    /** Returns where the wheel rests by the direction of its way where the axle is. */
    private Suspension.Rest rest(Load load, PointMm axle) {
      return suspension.restUnder(alongPathN(load, axle));
    }

    private double alongPathN(Load load, PointMm axle) {
      PointMm way = load.placement.turn(suspension.path().directionAt(axle));
      double unsprungN = unsprung.massKg() * Values.STANDARD_GRAVITY_MS2;
      double turn = load.braking.swings ? suspension.path().turnPerMm(axle) : 0;
      double contact = way.x() + freeRadiusMm * turn;
      return (load.roadN - unsprungN) * load.factor * way.z()
          - load.brakeN * contact
          + load.braking.g * unsprungN * way.x();
    }

    /**
     * Returns where the wheel rests, sought between its stops: where a force turns with a link
     * faster than the spring gives, going from rest to rest swings for ever.
     */
    private Suspension.Rest sought(Load load) {
      if (!suspension.known() || suspension.droopMm() + suspension.bumpMm() == 0) {
        return rest(load, suspension.path().axle(0));
      }
      double from = -suspension.droopMm();
      double to = suspension.bumpMm();
      if (excessN(load, from) <= 0) {
        return new Suspension.Rest(from, Suspension.State.TOPPED_OUT);
      }
      if (excessN(load, to) >= 0) {
        return new Suspension.Rest(to, Suspension.State.BOTTOMED);
      }
      while (to - from > SETTLED_MM) {
        double middle = (from + to) / 2;
        if (middle == from || middle == to) {
          break;
        }
        if (excessN(load, middle) > 0) {
          from = middle;
        } else {
          to = middle;
        }
      }
      return new Suspension.Rest((from + to) / 2, Suspension.State.RIDING);
    }

    /** Returns by how much the load along the way is more than the spring bears there. */
    private double excessN(Load load, double travelMm) {
      return alongPathN(load, suspension.path().axle(travelMm)) - suspension.forceN(travelMm);
    }

    /**
     * Returns where steps lead that shrink as the last two do (Aitken's delta-squared process), if
     * that is between the stops.
     */
    private double ahead(Suspension.Rest rest, double stepMm, double lastMm) {
      double share = stepMm / lastMm;
      double there = rest.travelMm() + stepMm * share / (1 - share);
      boolean shrinks = Math.abs(share) < MOST_SHARE;
      return shrinks && there > -suspension.droopMm() && there < suspension.bumpMm()
          ? there
          : rest.travelMm();
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
   * Returns the balance of a machine that the front wheel slows down steadily, upright; what its
   * tyre does not hold, the rear wheel does.
   *
   * @param braking how much, and what holds the brake
   */
  public static StaticSag braking(End front, End rear, MassPoint.Sum sprung, Braking braking) {
    return of(front, rear, sprung, 1, braking);
  }

  /**
   * Braking by the front wheel as far as its tyre holds, and by the rear wheel beyond.
   *
   * @param g how fast all slows down, in that of gravity, &gt;= 0
   * @param swings whether the front brake is held by what holds the axle, and so turns with a link;
   *     else a rod beside that holds it; the rear one is taken to be on what holds its axle
   * @param grip friction at which the front tyre slides, &gt; 0; infinite where it never does
   */
  public record Braking(double g, boolean swings, double grip) {

    private static final Braking NONE = new Braking(0, false);

    public Braking {
      Values.notNegative("braking g", g);
    }

    /** Braking by a front wheel that does not slide. */
    public Braking(double g, boolean swings) {
      this(g, swings, Double.POSITIVE_INFINITY);
    }

    /** Returns what a front tyre holds under a load, which may be less than nothing; N. */
    private double heldN(double frontN) {
      return Double.isInfinite(grip) ? grip : grip * Math.max(0, frontN);
    }

    private Braking atRear() {
      return new Braking(g, true, grip);
    }
  }

  private static StaticSag of(
      End front, End rear, MassPoint.Sum sprung, double loadFactor, Braking braking) {
    Values.positive("load factor", loadFactor);
    double frontTravel = 0;
    double rearTravel = 0;
    double frontLast = 0;
    double rearLast = 0;
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
      boolean search = round >= QUICK_ROUNDS;
      double slowsN = braking.g * loads.weightN();
      double byFrontN = Math.min(slowsN, braking.heldN(frontN));
      End.Load onFront = new End.Load(frontN, placement, loadFactor, braking, byFrontN);
      End.Load onRear =
          new End.Load(rearN, placement, loadFactor, braking.atRear(), slowsN - byFrontN);
      Suspension.Rest frontRest = search ? front.sought(onFront) : front.rest(onFront, frontAxle);
      Suspension.Rest rearRest = search ? rear.sought(onRear) : rear.rest(onRear, rearAxle);
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
      boolean ahead = round % 2 == 1 && !search;
      double frontStep = frontRest.travelMm() - frontTravel;
      double rearStep = rearRest.travelMm() - rearTravel;
      frontTravel = ahead ? front.ahead(frontRest, frontStep, frontLast) : frontRest.travelMm();
      rearTravel = ahead ? rear.ahead(rearRest, rearStep, rearLast) : rearRest.travelMm();
      frontLast = frontStep;
      rearLast = rearStep;
      frontRadius = newFront;
      rearRadius = newRear;
    }
  }
}
