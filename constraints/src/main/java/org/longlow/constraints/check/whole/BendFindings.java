package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.machine.shop.TubeBend;
import org.longlow.constraints.shape.ByPlaces;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.TubeLine;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Tube that cannot be bent as it is drawn. */
public final class BendFindings {

  /** Bends of tube. */
  public static final FindingKind TUBE =
      new FindingKind("tube", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Pins nearer than this are in one place, mm. */
  private static final double ONE_PLACE_MM = 0.5;

  /** What turns by more than this goes back along itself, rad. */
  private static final double BACK_RAD = Math.toRadians(175);

  /** What turns by less than this is straight, rad. */
  private static final double STRAIGHT_RAD = Math.toRadians(0.5);

  /** A radius cut down by less than this is as asked, mm. */
  private static final double AS_ASKED_MM = 0.1;

  /** Least centre-line radius without a mandrel or heavy wall, diameters; common practice. */
  public static final double LEAST_DIAMETERS = 2;

  /** Tighter than made elbows commonly are, diameters; common practice. */
  private static final double ELBOW_DIAMETERS = 1;

  private static final Basis PRACTICE =
      Basis.practice(
          "common practice, no published source: a radius to the middle of at least twice the"
              + " diameter without a mandrel or a heavy wall, better three times; thin walls by the"
              + " difficulty of a bend as makers of benders publish it, for steel");

  private static final ByPlaces<TubePart, List<Fault>> FAULTS =
      new ByPlaces<>(256, 2, BendFindings::faults);

  /**
   * What is wrong with a tube.
   *
   * @param never whether no tool bends it so
   */
  private record Fault(boolean never, Words words) {}

  private BendFindings() {}

  /** Returns one for each tube at most, and none where all can be bent. */
  public static List<Finding> of(Layout layout, Places places) {
    List<Finding> findings = new ArrayList<>();
    for (TubePart tube : layout.parts(TubePart.class).toList()) {
      List<Fault> faults = FAULTS.of(tube, places);
      if (!faults.isEmpty()) {
        findings.add(
            Finding.note(
                TUBE,
                About.parts(tube.name()),
                faults.stream().anyMatch(Fault::never) ? Verdict.FAIL : Verdict.CAUTION,
                PRACTICE,
                Words.of(
                    "Tube " + tube.name() + ": ",
                    Words.join("; ", faults.stream().map(Fault::words).toList()),
                    ".")));
      }
    }
    return findings;
  }

  private static List<Fault> faults(TubePart tube, Places places) {
    List<PointMm> pins = TubeLine.of(tube, places).laidOut();
    List<Fault> faults = new ArrayList<>();
    for (int i = 1; i < pins.size(); i++) {
      if (pins.get(i - 1).distance(pins.get(i)) < ONE_PLACE_MM) {
        String two = tube.path().get(i - 1) + " and " + tube.path().get(i);
        faults.add(new Fault(true, Words.of(two + " are in one place: move one or leave it out")));
      }
    }
    double radius = places.value(tube.bendRadius());
    double diameter = places.value(tube.diameter());
    double wall = places.value(tube.wall());
    double tightest = Double.POSITIVE_INFINITY;
    int last = faults.isEmpty() ? pins.size() - 1 : 0;
    for (int i = 1; i < last; i++) {
      double turn = Curves.turnRad(pins, i);
      String at = tube.path().get(i);
      if (turn > BACK_RAD) {
        faults.add(new Fault(true, Words.of("at " + at + " it turns back along itself")));
      }
      if (turn <= STRAIGHT_RAD || turn > BACK_RAD) {
        continue;
      }
      double fits = Curves.fittingRadius(pins, i, radius);
      tightest = Math.min(tightest, fits);
      if (fits < radius - AS_ASKED_MM) {
        faults.add(
            new Fault(
                fits < diameter / 2,
                Words.of(
                    "at " + at + " there is room for a radius of ",
                    Say.mm(fits),
                    " only, and ",
                    Say.mm(radius),
                    " are asked: move its pins apart, or ask for less")));
      }
      boolean wide = fits >= LEAST_DIAMETERS * diameter; // tighter ones are told of below
      if (wide && fits < new TubeBend(fits, turn).simpleRadiusMm(diameter, wall)) {
        faults.add(thin(at, new TubeBend(fits, turn), diameter, wall));
      }
    }
    if (tightest < LEAST_DIAMETERS * diameter) {
      faults.add(tight(tightest, diameter));
    }
    return faults;
  }

  /** What is said of a bend that is wide enough for its tube and too tight for its thin wall. */
  private static Fault thin(String at, TubeBend bend, double diameter, double wall) {
    return new Fault(
        false,
        Words.of(
            "at " + at + " a wall of ",
            Say.mm(wall),
            " is thin for a radius of ",
            Say.mm(bend.radiusMm()),
            " and thins outside by ",
            Say.percent(bend.outerThinning(diameter)),
            ": at least ",
            Say.mm(bend.simpleRadiusMm(diameter, wall)),
            " are usual without a mandrel, or a thicker wall"));
  }

  /** What is said of a bend tighter than usual. */
  private static Fault tight(double radius, double diameter) {
    boolean never = radius < diameter / 2;
    return new Fault(
        never,
        Words.of(
            "a radius of ",
            Say.mm(radius),
            never
                ? " is less than half its diameter of "
                : radius < ELBOW_DIAMETERS * diameter
                    ? " is tighter than a tube is commonly bent, which is to its diameter of "
                    : " may kink a tube of ",
            Say.mm(diameter),
            never
                ? ", so that no tool bends it"
                : radius < ELBOW_DIAMETERS * diameter
                    ? " over a mandrel"
                    : " unless it is bent over a mandrel or its wall is heavy",
            "; at least ",
            Say.mm(LEAST_DIAMETERS * diameter),
            " are usual"));
  }
}
