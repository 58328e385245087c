package org.longlow.constraints.check.road;

import java.util.List;
import java.util.function.UnaryOperator;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.machine.ride.Tori;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Springs;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * A machine on its stand by another way: of all travels of its springs, each with the lean that
 * puts the foot on the road, those at which weight and springs hold the least energy, tyres being
 * tori turned in space. Then levers in space about the three supports.
 */
final class Propped {

  private static final double G = 9.80665;
  private static final double STEP_MM = 0.2;

  private final Wheels wheels;
  private final Standing parked;
  private final MassPoint total;
  private final StandPart stand;
  private final double side;
  private final double footY;

  double frontMm;
  double rearMm;
  double leanRad = 0.2;
  double tipDeg;
  double footN;

  /** The stand in a study, with the masses as they are there, or others. */
  static Propped in(Study study, UnaryOperator<MassPoint> masses) {
    return in(study, masses, true);
  }

  /** The stand in a study, the springs left where they are upright. */
  static Propped stuckIn(Study study) {
    return in(study, m -> m, false);
  }

  private static Propped in(Study study, UnaryOperator<MassPoint> masses, boolean settles) {
    Standing parked = study.standing(Condition.empty(Stance.Kind.PARKED)).orElseThrow();
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    StandPart stand = study.layout().parts(StandPart.class).findFirst().orElseThrow();
    List<MassPoint> all =
        parked.shapes().values().stream()
            .map(p -> new MassPoint(p.massKg(), p.centre(), p.centreYMm()))
            .toList();
    return new Propped(wheels, parked, masses.apply(MassPoint.total(all)), stand, settles);
  }

  private Propped(
      Wheels wheels, Standing parked, MassPoint total, StandPart stand, boolean settles) {
    this.wheels = wheels;
    this.parked = parked;
    this.total = total;
    this.stand = stand;
    double y = parked.places().value(stand.y());
    side = Math.signum(y);
    footY = Math.abs(y);
    frontMm = parked.frontTravelMm();
    rearMm = parked.rearTravelMm();
    if (settles && parked.springs().isPresent()) {
      settle();
    }
    lever(new Placed(frontMm, rearMm));
  }

  /** Downhill by Newton's steps, differences for slopes, held between the stops. */
  private void settle() {
    for (int i = 0; i < 30; i++) {
      double e = energy(frontMm, rearMm);
      double ef = energy(frontMm + STEP_MM, rearMm);
      double fe = energy(frontMm - STEP_MM, rearMm);
      double er = energy(frontMm, rearMm + STEP_MM);
      double re = energy(frontMm, rearMm - STEP_MM);
      double both = energy(frontMm + STEP_MM, rearMm + STEP_MM);
      double gf = (ef - fe) / (2 * STEP_MM);
      double gr = (er - re) / (2 * STEP_MM);
      double ff = Math.max(1, (ef - 2 * e + fe) / (STEP_MM * STEP_MM));
      double rr = Math.max(1, (er - 2 * e + re) / (STEP_MM * STEP_MM));
      double fr = (both - ef - er + e) / (STEP_MM * STEP_MM);
      boolean frontHeld = held(wheels.frontSuspension(), frontMm, gf);
      boolean rearHeld = held(wheels.rearSuspension(), rearMm, gr);
      if (frontHeld || rearHeld) {
        fr = 0;
      }
      double det = ff * rr - fr * fr;
      double df = frontHeld ? 0 : (fr * gr - rr * gf) / det;
      double dr = rearHeld ? 0 : (fr * gf - ff * gr) / det;
      frontMm = between(wheels.frontSuspension(), frontMm + Math.max(-10, Math.min(10, df)));
      rearMm = between(wheels.rearSuspension(), rearMm + Math.max(-10, Math.min(10, dr)));
      if (Math.abs(df) + Math.abs(dr) < 1e-5) {
        return;
      }
    }
    throw new IllegalStateException("no rest found");
  }

  private static boolean held(Suspension s, double travel, double slope) {
    return travel <= -s.droopMm() && slope > 0 || travel >= s.bumpMm() && slope < 0;
  }

  private static double between(Suspension s, double travel) {
    return Math.max(-s.droopMm(), Math.min(s.bumpMm(), travel));
  }

  private double energy(double front, double rear) {
    return total.massKg() * G * new Placed(front, rear).centre[2]
        + spring(wheels.frontSuspension(), front)
        + spring(wheels.rearSuspension(), rear);
  }

  private static double spring(Suspension s, double travel) {
    double in = travel + s.droopMm();
    return s.droopMm() + s.bumpMm() == 0 ? 0 : s.preloadN() * in + s.rateNPerMm() * in * in / 2;
  }

  /** The machine with its wheels at some travel, leaned until the foot is on the road. */
  private final class Placed {
    final Ground ground;
    final PointMm foot;
    final Tori tori;
    final double lean;
    final double[] centre;

    Placed(double front, double rear) {
      PointMm frontAxle = wheels.frontSuspension().path().axle(front);
      PointMm rearAxle = wheels.rearSuspension().path().axle(rear);
      ground =
          Ground.under(
              rearAxle,
              wheels.rearTyre().freeRadiusMm(),
              frontAxle,
              wheels.frontTyre().freeRadiusMm());
      foot = ground.toRoad(wheels.moved(front, rear).pin(stand.foot()));
      double a = leanRad;
      double b = leanRad + 0.01;
      double fa = footHeight(a);
      double fb = footHeight(b);
      for (int i = 0; i < 20 && Math.abs(fb) > 1e-10; i++) {
        double c = b - fb * (b - a) / (fb - fa);
        a = b;
        fa = fb;
        b = c;
        fb = footHeight(b);
      }
      lean = b;
      leanRad = b; // from here the next is near
      tori = tori(lean);
      PointMm at = total.at();
      if (parked.springs().isPresent()) {
        at = at.plus(gone(wheels.frontSuspension(), front, parked.frontTravelMm(), true));
        at = at.plus(gone(wheels.rearSuspension(), rear, parked.rearTravelMm(), false));
      }
      PointMm on = ground.toRoad(at);
      centre = tori.at(on.x(), side * total.yMm(), on.z());
    }

    private PointMm gone(Suspension s, double now, double was, boolean front) {
      Springs springs = parked.springs().orElseThrow();
      double kg = (front ? springs.atFront() : springs.atRear()).massKg();
      return s.path().axle(now).minus(s.path().axle(was)).times(kg / total.massKg());
    }

    private Tori tori(double roll) {
      Tyre front = wheels.frontTyre();
      Tyre rear = wheels.rearTyre();
      return new Tori(
          ground.wheelbaseMm(),
          front.freeRadiusMm(),
          front.sectionRadiusMm(),
          rear.freeRadiusMm(),
          rear.sectionRadiusMm(),
          roll);
    }

    private double footHeight(double roll) {
      return tori(roll).at(foot.x(), footY, foot.z())[2];
    }
  }

  /** Moments about each edge of the three supports, by what lies opposite. */
  private void lever(Placed at) {
    leanRad = at.lean;
    double[][] on = {
      at.tori.frontContact, at.tori.rearContact, at.tori.at(at.foot.x(), footY, at.foot.z())
    };
    double least = Double.POSITIVE_INFINITY;
    for (int i = 0; i < 3; i++) {
      double[] a = on[i];
      double[] b = on[(i + 1) % 3];
      double[] opposite = on[(i + 2) % 3];
      double inside = across(a, b, opposite);
      double mass = across(a, b, at.centre) * Math.signum(inside);
      least = Math.min(least, Math.atan2(mass, at.centre[2]));
      if (i == 0) {
        footN = total.massKg() * G * mass / Math.abs(inside);
      }
    }
    tipDeg = Math.toDegrees(least);
  }

  private static double across(double[] a, double[] b, double[] p) {
    double x = b[0] - a[0];
    double y = b[1] - a[1];
    return (x * (p[1] - a[1]) - y * (p[0] - a[0])) / Math.hypot(x, y);
  }
}
