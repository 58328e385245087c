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
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.chassis.TyreSizeReader;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Tyres;
import org.longlow.rider.words.Words;

/**
 * Whether each axle is drawn as high as its tyre's radius. Every stance stands the machine on its
 * tyres, so where the two differ rake, trail, clearance and what is level are not those drawn.
 */
public final class AxleFindings {

  /** Whether an axle is drawn as high as its tyre's radius. */
  private static final FindingKind AXLE =
      new FindingKind("axle", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** So much is lost where a radius is rounded to a whole mm or to 1/16 in, mm; judgement. */
  static final double CLOSE_MM = 1;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("radius of the tyre"),
          Basis.judgement(
              Say.format(
                  "judgement: drawn within %s of it; more than the tyre's section is another"
                      + " wheel",
                  Say.wholeMm(CLOSE_MM))));

  private AxleFindings() {}

  public static List<Finding> of(Placed placed) {
    return placed.layout().parts(WheelPart.class).map(w -> of(w, placed.places())).toList();
  }

  private static Finding of(WheelPart wheel, Places places) {
    Tyre tyre = Tyres.of(wheel, places);
    double radius = tyre.freeRadiusMm();
    double drawn = places.pin(wheel.axle()).z();
    double off = Math.abs(drawn - radius);
    Verdict verdict =
        off <= CLOSE_MM
            ? Verdict.PASS
            : off > sectionMm(wheel, tyre) ? Verdict.FAIL : Verdict.CAUTION;
    Words said =
        Say.format(
            "%s: its axle, %s, is drawn %s above the ground, and its tyre has a radius of %s",
            wheel.name(), wheel.axle(), Say.mm(drawn), Say.mm(radius));
    Words cure =
        Say.format(
            ": on the road this end stands %s %s than drawn, and rake, trail, clearance and slopes"
                + " change with it. Draw the axle at %s, or give the wheel the tyre or the radius"
                + " of %s that is meant.",
            Say.mm(off), drawn < radius ? "higher" : "lower", Say.mm(radius), Say.mm(drawn));
    return new Finding(
            AXLE,
            About.parts(wheel.name()),
            Optional.empty(),
            verdict,
            Figures.atMost(off, CLOSE_MM, FigureUnit.MM),
            BASIS,
            Words.of(said, (verdict == Verdict.PASS ? "." : cure)))
        .at(places.pin(wheel.axle()));
  }

  /** Height of the tyre's section; without a size, that of a tyre as high as it is wide. */
  private static double sectionMm(WheelPart wheel, Tyre tyre) {
    return wheel.tyre().isEmpty()
        ? tyre.widthMm()
        : TyreSizeReader.read(wheel.tyre()).size().sectionHeightMm();
  }
}
