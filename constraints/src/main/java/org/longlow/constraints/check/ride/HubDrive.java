package org.longlow.constraints.check.ride;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.machine.ride.AntiSquat;
import org.longlow.constraints.shape.Drives;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What pulling away does to the rear springs where no chain or belt drives the wheel. */
final class HubDrive {

  private HubDrive() {}

  /** What drives the wheel from its axle turns the arm as the road does. */
  static Optional<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    boolean inHub = Drives.isByMotor(layout, wheels.rear());
    if (inHub) {
      return standings.stream()
          .filter(PullingAway::isLaden)
          .max(Comparator.comparingDouble(s -> Math.abs(share(wheels, s) - 1)))
          .map(s -> squat(wheels, s));
    }
    return layout.parts().values().stream().anyMatch(p -> p.traits().duty() == Duty.DRIVE)
        ? Optional.of(
            Finding.note(
                PullingAway.SQUAT,
                About.parts(wheels.rear().name()),
                Verdict.NOT_APPLICABLE,
                PullingAway.STATICS,
                Words.of(
                    "What pulling away does to the rear springs is not told: no chain or belt to "
                        + wheels.rear().name()
                        + " is said, and no motor is on its axle.")))
        : Optional.empty();
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

  private static Finding squat(Wheels wheels, Standing s) {
    double share = share(wheels, s);
    String answer =
        share < PullingAway.LEAST_SHARE
            ? "; the rear sinks as it pulls: a pivot farther up"
            : share > PullingAway.MOST_SHARE
                ? "; the rear is pushed up hard as it pulls: a pivot farther down"
                : share < 1 ? "; the rear sinks" : "; the rear rises";
    return PullingAway.said(
        About.parts(wheels.rear().name()), s, share, "the arm bears ", answer, wheels);
  }
}
