package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
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
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;

/** Pins that lie where no part of a motorcycle is: mostly a slip of the unit or of a digit. */
public final class PlaceFindings {

  /** A pin where no part of a motorcycle is. */
  static final FindingKind PLACE = new FindingKind("place", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Highest and lowest place that is believed, mm above the ground as drawn; judgement. */
  static final double HIGHEST_MM = 2500;

  /**
   * See {@link #HIGHEST_MM}; a pin may lie in the road, such as where the steering axis meets it.
   */
  static final double LOWEST_MM = -500;

  /** How far beyond either axle a pin is believed, in wheelbases; judgement. */
  static final double BEYOND_WHEELBASES = 1;

  private PlaceFindings() {}

  public static List<Finding> of(Placed placed, Wheels wheels) {
    List<Finding> findings = new ArrayList<>();
    if (!wheels.stands()) {
      return findings;
    }
    double rear = placed.places().pin(wheels.rear().axle()).x();
    double front = placed.places().pin(wheels.front().axle()).x();
    double room = BEYOND_WHEELBASES * (front - rear);
    for (Map.Entry<String, PointMm> e : placed.places().pins().entrySet()) {
      PointMm p = e.getValue();
      double beyond =
          Math.max(
              Math.max(rear - room - p.x(), p.x() - front - room),
              Math.max(p.z() - HIGHEST_MM, LOWEST_MM - p.z()));
      if (beyond > 0) {
        findings.add(
            Finding.held(
                    PLACE,
                    About.thing(e.getKey(), e.getKey()),
                    Optional.empty(),
                    Figures.atMost(beyond, 0, FigureUnit.MM),
                    List.of(
                        Basis.judgement(
                            Say.format(
                                "judgement: within %.0f wheelbase beyond the axles, %s below to %s"
                                    + " above the ground",
                                BEYOND_WHEELBASES,
                                Say.wholeMm(-LOWEST_MM),
                                Say.wholeMm(HIGHEST_MM)))),
                    Say.format(
                        "Pin %s lies at %s, %s beyond where parts of a motorcycle are;"
                            + " look at its units, its formula and its ties.",
                        e.getKey(), Say.place(p), Say.mm(beyond)))
                .at(p));
      }
    }
    return findings;
  }
}
