package org.longlow.constraints.stand;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.machine.ride.ParkedStability.PlanMm;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * A machine upright on both feet of its centre stand and on one wheel, the other hanging from its
 * spring. The springs carry what the wheel on the road carries; the feet are taken to hang on the
 * frame.
 *
 * @param off the end whose wheel is off the road
 * @param offMm how high that wheel is over the road, mm; less than 0 where the feet lift none
 * @param feetShare share of the weight on both feet
 * @param ground the road in the axes of the frame, through feet and tyre
 * @param foot in the axes of that road
 * @param pivot likewise
 * @param asideMm how far either foot is from the middle
 * @param mass of the machine so, in the axes of the frame
 * @param statics about the tyre (front), the right foot (rear) and the left foot (foot), y left
 */
public record OnFeet(
    Part.End off,
    double offMm,
    double feetShare,
    Ground ground,
    PointMm foot,
    PointMm pivot,
    double asideMm,
    MassPoint mass,
    ParkedStability statics) {

  /** A foot as the smallest of wheels, mm. */
  private static final double FOOT_RADIUS_MM = 1e-6;

  private static final int ROUNDS = 200;

  /** Springs move less than this in the last round, mm. */
  private static final double SETTLED_MM = 1e-6;

  /** Returns how it stands; empty where it stands on its feet with either wheel no more. */
  public static Optional<OnFeet> of(Wheels wheels, Standing parked, StandPart stand) {
    return Stream.of(Part.End.REAR, Part.End.FRONT)
        .flatMap(off -> new Trial(wheels, parked, stand, off).settled().stream())
        .findFirst();
  }

  /** Returns how far the legs lean past upright, away from where they are stowed, rad. */
  public double pastUprightRad(double stowedX) {
    double past = foot.x() - pivot.x();
    return Math.atan2(stowedX < pivot.x() ? past : -past, pivot.z());
  }

  /**
   * Returns the statics with more mass on it, the springs as they are without; empty in the road.
   */
  public Optional<ParkedStability> with(MassPoint more) {
    MassPoint all = MassPoint.Sum.of(List.of(mass, more)).total();
    return ground.toRoad(all.at()).z() > 0
        ? Optional.of(statics(off, ground, foot, asideMm, all))
        : Optional.empty();
  }

  private static ParkedStability statics(
      Part.End off, Ground ground, PointMm foot, double asideMm, MassPoint mass) {
    PointMm centre = ground.toRoad(mass.at());
    return ParkedStability.on(
        new PlanMm(off == Part.End.REAR ? ground.wheelbaseMm() : 0, 0),
        new PlanMm(foot.x(), -asideMm),
        new PlanMm(foot.x(), asideMm),
        new PlanMm(centre.x(), mass.yMm()),
        centre.z());
  }

  private record Trial(Wheels wheels, Standing parked, StandPart stand, Part.End off) {

    Optional<OnFeet> settled() {
      PointMm travel = new PointMm(parked.frontTravelMm(), parked.rearTravelMm());
      try {
        for (int round = 0; round < ROUNDS; round++) {
          PointMm next = next(travel);
          if (next.distance(travel) < SETTLED_MM) {
            break;
          }
          travel = next;
        }
        return stood(travel);
      } catch (OutOfRange e) {
        return Optional.empty(); // the foot lies within the wheel that it would stand with
      }
    }

    private Ground ground(PointMm travel) {
      PointMm foot = wheels.pin(stand.foot(), travel.x(), travel.z());
      return off == Part.End.REAR
          ? Ground.under(foot, FOOT_RADIUS_MM, axle(Part.End.FRONT, travel), radius(Part.End.FRONT))
          : Ground.under(axle(Part.End.REAR, travel), radius(Part.End.REAR), foot, FOOT_RADIUS_MM);
    }

    private PointMm axle(Part.End end, PointMm travel) {
      return suspension(end).path().axle(end == Part.End.FRONT ? travel.x() : travel.z());
    }

    private Suspension suspension(Part.End end) {
      return end == Part.End.FRONT ? wheels.frontSuspension() : wheels.rearSuspension();
    }

    private double radius(Part.End end) {
      return (end == Part.End.FRONT ? wheels.frontTyre() : wheels.rearTyre()).freeRadiusMm();
    }

    private MassPoint mass(PointMm travel) {
      MassPoint total = parked.load().total();
      if (parked.springs().isEmpty()) {
        return total;
      }
      PointMm was = new PointMm(parked.frontTravelMm(), parked.rearTravelMm());
      return parked
          .springs()
          .get()
          .moved(
              MassPoint.Sum.of(List.of(total)),
              axle(Part.End.FRONT, travel).minus(axle(Part.End.FRONT, was)),
              axle(Part.End.REAR, travel).minus(axle(Part.End.REAR, was)))
          .total();
    }

    /** The share of the weight on the wheel that stays on the road. */
    private double wheelShare(Ground ground, PointMm travel) {
      double along = ground.toRoad(mass(travel).at()).x() / ground.wheelbaseMm();
      return off == Part.End.REAR ? along : 1 - along;
    }

    private PointMm next(PointMm travel) {
      if (parked.springs().isEmpty()) {
        return travel;
      }
      Ground ground = ground(travel);
      double share = wheelShare(ground, travel);
      return new PointMm(
          rest(Part.End.FRONT, ground, share, travel.x()),
          rest(Part.End.REAR, ground, share, travel.z()));
    }

    private double rest(Part.End end, Ground ground, double share, double travelMm) {
      Springs springs = parked.springs().orElseThrow();
      double unsprung = (end == Part.End.FRONT ? springs.atFront() : springs.atRear()).massKg();
      double onRoad = end == off ? 0 : parked.load().total().massKg() * share;
      double rise = ground.along().cross(suspension(end).path().direction(travelMm));
      return suspension(end)
          .restUnder((onRoad - unsprung) * Values.STANDARD_GRAVITY_MS2 * rise)
          .travelMm();
    }

    private Optional<OnFeet> stood(PointMm travel) {
      Ground ground = ground(travel);
      double share = wheelShare(ground, travel);
      MassPoint mass = mass(travel);
      PointMm centre = ground.toRoad(mass.at());
      if (!(share > 0 && share < 1 && centre.z() > 0)) {
        return Optional.empty();
      }
      double y = Math.abs(parked.places().value(stand.y()));
      PointMm foot = ground.toRoad(wheels.pin(stand.foot(), travel.x(), travel.z()));
      return Optional.of(
          new OnFeet(
              off,
              ground.heightMm(axle(off, travel)) - radius(off),
              1 - share,
              ground,
              foot,
              ground.toRoad(wheels.pin(stand.pivot(), travel.x(), travel.z())),
              y,
              mass,
              statics(off, ground, foot, y, mass)));
    }
  }
}
