package org.longlow.constraints.check.ride;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.ride.AntiSquat;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What pulling away does to the rear springs where no chain or belt drives the wheel. */
final class HubDrive {

  private static final Basis HUB =
      Basis.model("statics of an arm that holds the motor in its wheel from turning; no damping");

  private static final String REAR = "rear";

  private HubDrive() {}

  /** Returns one at most: a note where nothing is seen to drive the rear wheel. */
  static Optional<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    if (!inHub(layout, wheels.rear())) {
      return Optional.of(
          Finding.note(
              DriveFindings.SQUAT,
              About.thing(REAR, REAR),
              Verdict.NOT_APPLICABLE,
              HUB,
              Words.of(
                  "What pulling away does to the rear springs is not known: no chain or belt goes"
                      + " to the rear wheel and no motor is on its axle. Give the tie belt-length, or a"
                      + " motor on the axle.")));
    }
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN && s.load() != null)
        .filter(s -> s.load().axles().total().at().z() > 0)
        .max(Comparator.comparingDouble(s -> Math.abs(share(wheels, s) - 1)))
        .map(s -> hub(wheels, s));
  }

  private static double share(Wheels wheels, Standing s) {
    return AntiSquat.withoutChain(
                PointMm.ORIGIN,
                s.ground().toRoad(s.places().pin(wheels.arm().pivot())),
                s.load().axles().total().at().z(),
                s.ground().wheelbaseMm())
            .antiSquatPercent()
        / 100;
  }

  private static Finding hub(Wheels wheels, Standing s) {
    double share = share(wheels, s);
    Figures figures =
        Figures.within(
            share, DriveFindings.LEAST_SHARE, DriveFindings.MOST_SHARE, FigureUnit.SHARE);
    String answer =
        share < DriveFindings.LEAST_SHARE
            ? "; the rear sinks as it pulls: a pivot farther up, or a shorter arm"
            : share > DriveFindings.MOST_SHARE
                ? "; the rear is pushed up hard as it pulls: a pivot farther down, or a longer arm"
                : share < 1 ? "; the rear sinks" : "; the rear rises";
    return new Finding(
            DriveFindings.SQUAT,
            About.thing(REAR, REAR),
            Optional.of(s.condition()),
            figures.margin() < 0 ? Verdict.CAUTION : Verdict.PASS,
            figures,
            List.of(HUB, DriveFindings.SHARE),
            Words.of(
                "With " + s.condition().people() + " pulling away, the arm bears ",
                Say.percent(share),
                " of the load that moves to the rear" + answer + "."))
        .at(wheels.drawn().pin(wheels.arm().pivot()));
  }

  /** Whether a motor turns about the axle of a wheel, in it or drawn beside it. */
  private static boolean inHub(Layout layout, WheelPart wheel) {
    return wheel.inside().stream().anyMatch(b -> b.what() == HubBody.What.MOTOR)
        || layout.parts().values().stream()
            .anyMatch(p -> p.traits().duty() == Duty.DRIVE && p.pins().contains(wheel.axle()));
  }
}
