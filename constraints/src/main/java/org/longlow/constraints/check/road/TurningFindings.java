package org.longlow.constraints.check.road;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.chassis.TurningCircle;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.SteeringOnRoad;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** The circle that the machine turns on at full lock. */
public final class TurningFindings {

  /** How wide a circle it turns on. */
  public static final FindingKind CIRCLE =
      new FindingKind("circle", FindingGroup.STEERING, Rests.ON_DRAWING);

  private static final List<Basis> PLANE =
      List.of(
          Basis.model(
              "rolling wheels of a machine whose frame stays upright: the front tyre, round across"
                  + " its tread, turned about the steering axis and put back on the road, rolls"
                  + " square to a line that meets the rear axle's in the middle of the circle;"
                  + " tyre slip, lean, springs giving and what is outside the contact are left"
                  + " out"));

  private TurningFindings() {}

  public static Optional<Finding> of(Wheels wheels, List<Standing> standings) {
    if (wheels.fork() == null) {
      return Optional.empty();
    }
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.UNLADEN)
        .findFirst()
        .flatMap(s -> of(wheels, s));
  }

  private static Optional<Finding> of(Wheels wheels, Standing s) {
    double lock = wheels.drawn().value(wheels.layout().demands().limit(Demands.Key.LOCK));
    SteeringOnRoad on = SteeringOnRoad.of(wheels, s.places(), s.ground()).orElseThrow();
    if (!on.upright()) {
      return Optional.empty();
    }
    TurningCircle.Straight straight =
        new TurningCircle.Straight(
            on.steering(),
            wheels.frontTyre().sectionRadiusMm(),
            wheels.rearTyre().freeRadiusMm(),
            s.ground().wheelbaseMm());
    return Optional.of(
        TurningCircle.of(straight, lock)
            .map(c -> finding(c, lock, s))
            .orElseGet(() -> none(lock, s)));
  }

  private static Finding none(double lock, Standing s) {
    return new Finding(
        CIRCLE,
        About.thing("turning circle", "turning"),
        Optional.of(s.condition()),
        Verdict.NOT_APPLICABLE,
        Figures.NONE,
        PLANE,
        Say.format(
            "Turned the %s asked, the wheels roll on no circle on which the machine goes round.",
            Say.deg(Math.toDegrees(lock))));
  }

  private static Finding finding(TurningCircle circle, double lock, Standing s) {
    double across = 2 * circle.frontRadiusMm();
    return new Finding(
            CIRCLE,
            About.thing("turning circle", "turning"),
            Optional.of(s.condition()),
            Verdict.PASS,
            Figures.only(across, FigureUnit.MM),
            PLANE,
            Say.format(
                "Turned the %s asked, upright and at a walk, the front wheel turns by %s on the"
                    + " ground and runs on a circle %s across, the rear wheel on one of %s.",
                Say.deg(Math.toDegrees(lock)),
                Say.deg(Math.toDegrees(circle.onGroundRad())),
                Words.figure(across, FigureSort.CIRCLE),
                Words.figure(2 * circle.rearRadiusMm(), FigureSort.CIRCLE)))
        .at(s.ground().frontContact());
  }
}
