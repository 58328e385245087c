package org.longlow.constraints.stand;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.LeanClearance;
import org.longlow.constraints.machine.ride.OnTyres;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Tyres;
import org.longlow.rider.geom.PointMm;

/**
 * The machine in steady turns to one side: as it rolls, the load on its springs grows with the
 * turn, and it sinks.
 *
 * <p>At a roll φ the centre of mass lies over the contact line at the angle φi from the vertical,
 * which is the angle of the turn's force ({@link OnTyres}); springs carry cos(φ − φi)/cos φi of
 * their static load (Cossalter, Motorcycle Dynamics, ch. 4: steady turning, no tyre slip, no
 * gyroscopic moment). Not for several threads: what was worked out is kept.
 */
public final class Turning {

  /** Rolls at which the springs are put in balance; between them travel is interpolated, rad. */
  public static final double STEP_RAD = Math.toRadians(2);

  /**
   * The centre of mass sinks a little with the springs; the second round settles that to 0.01 mm.
   */
  private static final int ROUNDS = 2;

  /** With a force farther round than this springs are pressed home at any roll, rad. */
  private static final double MOST_IDEAL_RAD = Math.toRadians(85);

  private final Wheels wheels;
  private final Standing standing;
  private final int side;
  private final LeanClearance.Wheel front;
  private final LeanClearance.Wheel rear;
  private final State[] steps;
  private final Map<State, Places> places = new IdentityHashMap<>();

  /**
   * The machine at one roll.
   *
   * @param rollRad roll, rad
   * @param idealRad angle of the turn's force, rad; the sideways pull is its tangent, in g; 0 where
   *     it takes no turn to lean so far, π/2 or more where no turn holds the machine there
   * @param frontTravelMm front wheel travel from the drawn position, bump positive
   * @param rearTravelMm rear wheel travel, likewise
   * @param ground the line under the upright machine on those springs, in the axes of the frame
   * @param along its forward direction
   * @param road the road at this roll, for points in the axes of {@code ground}
   */
  public record State(
      double rollRad,
      double idealRad,
      double frontTravelMm,
      double rearTravelMm,
      Ground ground,
      PointMm along,
      LeanClearance.Road road) {

    /** Returns how high a point is above the road, mm; y to the side leaned to. */
    public double heightMm(double x, double yMm, double z) {
      PointMm from = ground.rearContact();
      double dx = x - from.x();
      double dz = z - from.z();
      return road.heightMm(along.x() * dx + along.z() * dz, yMm, along.x() * dz - along.z() * dx);
    }

    /**
     * Returns the least height over the road that anything in a box of the elevation can have, mm:
     * it is linear in x and z, so that a corner is lowest, and which one its slopes tell.
     *
     * @param yMm to the side leaned to; what is nearer to the middle is higher
     */
    public double leastMm(Envelope box, double yMm) {
      double byX = byX();
      double byZ = byZ();
      return heightMm(
          byX > 0 ? box.getMinX() : box.getMaxX(), yMm, byZ > 0 ? box.getMinY() : box.getMaxY());
    }

    /**
     * Returns where a point is over the road at this roll: forward of where the rear tyre stood
     * upright, to the side leaned to, and up; mm.
     *
     * @param yMm to the side leaned to, mm
     */
    public double[] onRoad(double x, double yMm, double z) {
      PointMm from = ground.rearContact();
      double dx = x - from.x();
      double dz = z - from.z();
      double ahead = along.x() * dx + along.z() * dz;
      double up = along.x() * dz - along.z() * dx;
      double sinPitch = Math.sin(road.pitchRad());
      double cosPitch = Math.cos(road.pitchRad());
      // what the pitch has raised leans over by the roll, whose sine is the fall to that side
      double side =
          yMm * Math.cos(road.rollRad()) - (ahead * sinPitch + up * cosPitch) * road.byY();
      return new double[] {ahead * cosPitch - up * sinPitch, side, heightMm(x, yMm, z)};
    }

    /** Returns the direction straight down on the road: forward, to the side leaned to, up. */
    public double[] down() {
      return new double[] {-byX(), -road.byY(), -byZ()};
    }

    private double byX() {
      return road.byX() * along.x() - road.byZ() * along.z();
    }

    private double byZ() {
      return road.byX() * along.z() + road.byZ() * along.x();
    }
  }

  /**
   * @param standing a stance whose springs are in balance upright
   * @param side 1 for turns to the left, -1 to the right
   */
  public Turning(Wheels wheels, Standing standing, int side) {
    this.wheels = wheels;
    this.standing = standing;
    this.side = side;
    Tyre frontTyre = Tyres.of(wheels.front(), standing.places());
    Tyre rearTyre = Tyres.of(wheels.rear(), standing.places());
    front = new LeanClearance.Wheel(frontTyre.freeRadiusMm(), frontTyre.sectionRadiusMm());
    rear = new LeanClearance.Wheel(rearTyre.freeRadiusMm(), rearTyre.sectionRadiusMm());
    double steepest = LeanClearance.steepestRollRad(standing.ground().wheelbaseMm(), front, rear);
    steps = new State[(int) Math.ceil(steepest / STEP_RAD)];
  }

  /** Returns how many steps of {@link #STEP_RAD} there are from upright. */
  public int steps() {
    return steps.length;
  }

  /** Returns the machine at {@code step} times {@link #STEP_RAD}. */
  public State step(int step) {
    if (steps[step] == null) {
      steps[step] = balanced(step * STEP_RAD);
    }
    return steps[step];
  }

  /** Returns the machine at a roll, its travels interpolated between the steps around it. */
  public State at(double rollRad) {
    int below = Math.min((int) (rollRad / STEP_RAD), steps.length - 1);
    if (below == 0 || below + 1 >= steps.length) {
      return balanced(rollRad);
    }
    double t = rollRad / STEP_RAD - below;
    State a = step(below - 1);
    State b = step(below);
    State c = step(below + 1);
    return state(
        rollRad,
        through(a.frontTravelMm(), b.frontTravelMm(), c.frontTravelMm(), t),
        through(a.rearTravelMm(), b.rearTravelMm(), c.rearTravelMm(), t));
  }

  /** The parabola through values at -1, 0 and 1. */
  private static double through(double a, double b, double c, double t) {
    return b + t * (c - a) / 2 + t * t * (a - 2 * b + c) / 2;
  }

  private State balanced(double rollRad) {
    State now = state(rollRad, standing.frontTravelMm(), standing.rearTravelMm());
    if (standing.springs().isEmpty() || standing.load() == null) {
      return now;
    }
    for (int round = 0; round < ROUNDS; round++) {
      double ideal = Math.min(now.idealRad(), MOST_IDEAL_RAD);
      double factor = Math.cos(rollRad - ideal) / Math.cos(ideal);
      StaticSag sag = standing.springs().get().rest(wheels, Math.max(factor, 1e-3));
      now = state(rollRad, sag.front().travelMm(), sag.rear().travelMm());
    }
    return now;
  }

  private State state(double rollRad, double frontMm, double rearMm) {
    Ground ground =
        Ground.under(
            wheels.rearSuspension().path().axle(rearMm),
            wheels.rearTyre().freeRadiusMm(),
            wheels.frontSuspension().path().axle(frontMm),
            wheels.frontTyre().freeRadiusMm());
    OnTyres on = OnTyres.of(ground.wheelbaseMm(), front, rear, rollRad);
    return new State(
        rollRad, ideal(ground, on), frontMm, rearMm, ground, ground.along(), on.road());
  }

  private double ideal(Ground ground, OnTyres on) {
    double roll = on.road().rollRad();
    if (standing.load() == null) {
      return roll;
    }
    PointMm centre = ground.toRoad(standing.load().total().at());
    double share = centre.x() / ground.wheelbaseMm();
    double crown =
        rear.sectionRadiusMm() + share * (front.sectionRadiusMm() - rear.sectionRadiusMm());
    double y = side * standing.load().total().yMm();
    return centre.z() <= 2 * crown ? roll : Math.max(0, on.idealRollRad(centre.x(), y, centre.z()));
  }

  /** Returns whether a part goes with a wheel; else the frame carries it. */
  public boolean goesWithWheel(PartShape shape) {
    for (String pin : shape.pins()) {
      if (wheels.carries(pin)) {
        return true;
      }
    }
    return false;
  }

  /** Returns where the pins are in the stance that it begins with. */
  public Places placesBefore() {
    return standing.places();
  }

  /** Returns how far a pin is in {@code state} from where it is in the stance, mm. */
  public PointMm shift(String pin, State state) {
    return at(pin, state).minus(standing.places().pin(pin));
  }

  /** Returns the box of the pins of a part where the wheels are in {@code state}. */
  public Envelope pins(PartShape shape, State state) {
    Envelope box = new Envelope();
    for (String pin : shape.pins()) {
      PointMm at = at(pin, state);
      box.expandToInclude(at.x(), at.z());
    }
    return box;
  }

  private PointMm at(String pin, State state) {
    return wheels.pin(pin, state.frontTravelMm(), state.rearTravelMm());
  }

  /** Returns the body of a part of the stance where the wheels are in {@code state}. */
  public List<Prism> body(PartShape shape, State state) {
    if (!goesWithWheel(shape)) {
      return shape.prisms(); // carried by the frame
    }
    Places there =
        places.computeIfAbsent(state, s -> wheels.moved(s.frontTravelMm(), s.rearTravelMm()));
    return Stances.movedBody(shape, standing.places(), there);
  }
}
