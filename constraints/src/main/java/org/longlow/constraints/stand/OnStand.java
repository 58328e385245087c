package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.LeanClearance;
import org.longlow.constraints.machine.ride.OnTyres;
import org.longlow.constraints.machine.ride.ParkedStability;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.rider.geom.Bracket;
import org.longlow.rider.geom.PointMm;

/**
 * A machine leaned onto the foot of its stand, lean, springs and loads in balance with each other.
 *
 * <p>Both contacts and the foot carry the weight as three points do. What the foot carries the
 * springs do not, so the frame rises on them and leans farther, which loads the foot more. The
 * springs carry the wheel loads across the leaned road: by virtual work, the load less the unsprung
 * weight, times the rise of the axle over the road along its path. Stiff tyres that do not hold the
 * road sideways, no friction in the springs, no steering.
 *
 * <p>At each lean the springs are put in balance first; the machine rests where the foot then comes
 * to the road. Soft springs may rest at more than one lean, and a push moves such a machine from
 * one to the other: then the one that tips sooner counts.
 */
public final class OnStand {

  /** Leans are looked at in such steps, rad. */
  private static final double STEP_RAD = Math.toRadians(4.5);

  /** A machine farther over does not stand, rad; no farther lean can be written. */
  private static final double MOST_LEAN_RAD = Math.toRadians(45);

  /** Springs move less than this in the last round, mm. */
  private static final double SETTLED_MM = 1e-5;

  private static final int ROUNDS = 200;

  private static final double FOUND_RAD = 1e-8;

  /** So little further shows which way the foot goes. */
  private static final double SLIGHTLY_RAD = 1e-4;

  /** To how near the lowest place of the foot between two looks is found. */
  private static final double DIP_RAD = 1e-4;

  /** A foot nearer to the line of the contacts holds nothing, mm; a judgement. */
  public static final double LEAST_ASIDE_MM = 1;

  /** Travel over which the way of a foot on an arm is taken, mm. */
  private static final double WAY_MM = 1e-2;

  private final Wheels wheels;
  private final Standing parked;
  private final Optional<Springs> springs;
  private final MassPoint.Sum total;
  private final StandPart stand;
  private final double side;
  private final LeanClearance.Wheel front;
  private final LeanClearance.Wheel rear;
  private final double steepestRad;

  /**
   * The machine held at a lean, its springs in balance.
   *
   * @param leanRad to the side of the stand, rad
   * @param frontTravelMm front wheel travel from the drawn position, bump positive
   * @param rearTravelMm rear wheel travel, likewise
   * @param footOffMm how high the foot is over the road, mm; negative under it
   * @param massHeightMm how high the centre of mass is over the road, mm
   * @param statics loads and margins as if the foot were on the road; empty where the centre of
   *     mass lies in the road or the foot not out beyond the contacts
   */
  public record Held(
      double leanRad,
      double frontTravelMm,
      double rearTravelMm,
      double footOffMm,
      double massHeightMm,
      Optional<ParkedStability> statics) {

    private boolean isOverRoad() {
      return footOffMm > 0;
    }

    private double tipRad() {
      return statics.orElseThrow().leastTipRad();
    }
  }

  /**
   * @param parked the machine upright, its stand down
   * @param total all of its mass in that stance, in the axes of the frame
   */
  public OnStand(Wheels wheels, Standing parked, MassPoint.Sum total, StandPart stand) {
    this(wheels, parked, total, stand, Math.signum(parked.places().value(stand.y())));
  }

  /**
   * @param side of the foot it leans on: 1 left, -1 right
   */
  public OnStand(
      Wheels wheels, Standing parked, MassPoint.Sum total, StandPart stand, double side) {
    this(wheels, parked, parked.springs(), total, stand, side);
  }

  private OnStand(
      Wheels wheels,
      Standing parked,
      Optional<Springs> springs,
      MassPoint.Sum total,
      StandPart stand,
      double side) {
    this.wheels = wheels;
    this.parked = parked;
    this.springs = springs;
    this.total = total;
    this.stand = stand;
    this.side = side;
    front = wheel(wheels.frontTyre());
    rear = wheel(wheels.rearTyre());
    double wheelbase = parked.ground().wheelbaseMm();
    steepestRad = Math.min(MOST_LEAN_RAD, LeanClearance.steepestRollRad(wheelbase, front, rear));
  }

  private static LeanClearance.Wheel wheel(Tyre tyre) {
    return new LeanClearance.Wheel(tyre.freeRadiusMm(), tyre.sectionRadiusMm());
  }

  /** Returns the same machine with its springs stuck where they are upright. */
  public OnStand stuck() {
    return new OnStand(wheels, parked, Optional.empty(), total, stand, side);
  }

  /** Returns how far the foot is out, mm, &gt;= 0. */
  public double yMm() {
    return Math.abs(parked.places().value(stand.y()));
  }

  /** Returns where the machine rests on its foot; empty if that never comes to the road. */
  public Optional<Held> rest() {
    return rests().stream()
        .filter(held -> held.statics().isPresent())
        .min(Comparator.comparingDouble(Held::tipRad));
  }

  /** Returns every lean at which the foot comes to the road as the machine leans over. */
  List<Held> rests() {
    List<Held> rests = new ArrayList<>();
    Held last = at(0);
    if (!last.isOverRoad()) {
      rests.add(last);
    }
    int steps = (int) Math.ceil(steepestRad / STEP_RAD);
    for (int i = 1; i <= steps; i++) {
      Held now = near(last, Math.min(i * STEP_RAD, steepestRad));
      if (last.isOverRoad()) {
        Held down = now.isOverRoad() ? lowest(last, now) : now;
        if (!down.isOverRoad()) {
          rests.add(crossing(last, down));
        }
      }
      last = now;
    }
    return rests;
  }

  /** How much the foot rises as the machine leans slightly further, mm. */
  private double riseMm(Held near, double leanRad) {
    return near(near, leanRad + SLIGHTLY_RAD).footOffMm() - near(near, leanRad).footOffMm();
  }

  /**
   * Where the foot is lowest between two leans if it sinks from the one and rises to the other,
   * else at the other.
   */
  private Held lowest(Held from, Held to) {
    double end = to.leanRad() - SLIGHTLY_RAD;
    if (riseMm(from, from.leanRad()) >= 0 || riseMm(from, end) <= 0) {
      return to;
    }
    return near(from, Bracket.root(rad -> riseMm(from, rad), from.leanRad(), end, DIP_RAD));
  }

  /** The lean at which the foot comes to the road, over it at one and under it at the other. */
  private Held crossing(Held over, Held under) {
    double lean =
        Bracket.root(
            rad -> near(over, rad).footOffMm(), over.leanRad(), under.leanRad(), FOUND_RAD);
    return near(over, lean);
  }

  /** Returns the road under the machine as it is held, in the axes of the frame. */
  public RoadPlane road(Held held) {
    Loaded now = loaded(held.leanRad(), held.frontTravelMm(), held.rearTravelMm());
    Ground ground = now.ground;
    LeanClearance.Road road = now.road;
    PointMm up = ground.along().times(road.byX()).plus(ground.along().left().times(road.byZ()));
    return new RoadPlane(road.startMm() - up.dot(ground.rearContact()), up, side * road.byY());
  }

  /** Returns the machine held at a lean of 0 to 45 degrees. */
  public Held at(double leanRad) {
    return held(Math.min(leanRad, steepestRad), parked.frontTravelMm(), parked.rearTravelMm());
  }

  /** The machine held at another lean, its springs sought from where they are. */
  private Held near(Held other, double leanRad) {
    return held(leanRad, other.frontTravelMm(), other.rearTravelMm());
  }

  private Held held(double leanRad, double nearFrontMm, double nearRearMm) {
    Loaded now = loaded(leanRad, nearFrontMm, nearRearMm);
    for (int round = 0; round < ROUNDS && now.held.statics().isPresent(); round++) {
      double frontMm = travelMm(now, Part.End.FRONT);
      double rearMm = travelMm(now, Part.End.REAR);
      PointMm were = new PointMm(now.held.frontTravelMm(), now.held.rearTravelMm());
      if (were.distance(new PointMm(frontMm, rearMm)) < SETTLED_MM) {
        break;
      }
      now = loaded(leanRad, frontMm, rearMm);
    }
    return now.held;
  }

  /** The machine at a lean with its wheels at some travel, in balance or not. */
  private record Loaded(Held held, Ground ground, LeanClearance.Road road) {

    /** Returns how far a way in the axes of the frame leads up from the leaned road, mm. */
    double riseMm(PointMm way) {
      return road.byX() * ground.along().dot(way) + road.byZ() * ground.along().cross(way);
    }
  }

  private Loaded loaded(double leanRad, double frontMm, double rearMm) {
    PointMm frontAxle = wheels.frontSuspension().path().axle(frontMm);
    PointMm rearAxle = wheels.rearSuspension().path().axle(rearMm);
    Ground ground = Ground.under(rearAxle, rear.radiusMm(), frontAxle, front.radiusMm());
    OnTyres on = OnTyres.of(ground.wheelbaseMm(), front, rear, leanRad);
    PointMm foot = ground.toRoad(footAt(frontMm, rearMm));
    MassPoint mass = massWith(frontAxle, rearAxle);
    PointMm centre = ground.toRoad(mass.at());
    double height = on.road().heightMm(centre.x(), side * mass.yMm(), centre.z());
    Optional<ParkedStability> statics =
        height > 0 && on.asideMm(foot.x(), yMm(), foot.z()) >= LEAST_ASIDE_MM
            ? Optional.of(
                ParkedStability.on(
                    on.front(),
                    on.rear(),
                    on.plan(foot.x(), yMm(), foot.z()),
                    on.plan(centre.x(), side * mass.yMm(), centre.z()),
                    height))
            : Optional.empty();
    double off = on.road().heightMm(foot.x(), yMm(), foot.z());
    return new Loaded(new Held(leanRad, frontMm, rearMm, off, height, statics), ground, on.road());
  }

  private PointMm footAt(double frontMm, double rearMm) {
    return wheels.pin(stand.foot(), frontMm, rearMm);
  }

  /** All of the mass, what is on the wheels gone with them. */
  private MassPoint massWith(PointMm frontAxle, PointMm rearAxle) {
    if (springs.isEmpty()) {
      return total.total();
    }
    PointMm frontWas = wheels.frontSuspension().path().axle(parked.frontTravelMm());
    PointMm rearWas = wheels.rearSuspension().path().axle(parked.rearTravelMm());
    return springs.get().moved(total, frontAxle.minus(frontWas), rearAxle.minus(rearWas)).total();
  }

  /** Returns the way of a foot that goes with a wheel, for each mm of its travel. */
  private PointMm footWay(Part.End end, Held held) {
    double front = end == Part.End.FRONT ? WAY_MM / 2 : 0;
    double rear = WAY_MM / 2 - front;
    PointMm below = footAt(held.frontTravelMm() - front, held.rearTravelMm() - rear);
    PointMm above = footAt(held.frontTravelMm() + front, held.rearTravelMm() + rear);
    return above.minus(below).times(1 / WAY_MM);
  }

  /** Returns where a spring rests under the loads of a machine. */
  private double travelMm(Loaded now, Part.End end) {
    boolean atFront = end == Part.End.FRONT;
    Held held = now.held;
    double travel = atFront ? held.frontTravelMm() : held.rearTravelMm();
    if (springs.isEmpty()) {
      return travel;
    }
    ParkedStability statics = held.statics().orElseThrow();
    double weightN = total.massKg() * Values.STANDARD_GRAVITY_MS2;
    double unsprungKg = (atFront ? springs.get().atFront() : springs.get().atRear()).massKg();
    double wheelN = weightN * (atFront ? statics.frontShare() : statics.rearShare());
    Suspension suspension = atFront ? wheels.frontSuspension() : wheels.rearSuspension();
    double rise = now.riseMm(suspension.path().direction(travel));
    double pressN = (wheelN - unsprungKg * Values.STANDARD_GRAVITY_MS2) * rise;
    if (wheels.carries(end, stand.foot())) {
      PointMm way = footWay(end, held);
      pressN += weightN * statics.footShare() * now.riseMm(way);
    }
    return suspension.restUnder(pressN).travelMm();
  }
}
