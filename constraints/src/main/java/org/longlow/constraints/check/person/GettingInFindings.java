package org.longlow.constraints.check.person;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
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
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * Whether the poses of somebody who gets in keep clear of the machine. That a pose does not is no
 * proof that nobody gets in, since people bend in more ways: such a one needs care. What proves it
 * are the ways of {@link AccessFindings}.
 */
public final class GettingInFindings {

  /** How near the limbs come to the machine on the way in. */
  public static final FindingKind GETTING_IN =
      new FindingKind("getting-in", FindingGroup.ACCESS, Rests.ON_MASSES);

  /** Poses are known to this, mm: half the breadth of a cell, and some flesh; judgement. */
  private static final double CARE_MM = 20;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model(
              "six poses of the jointed body, limbs as round bars, every section open, gaps in"
                  + " space"),
          Basis.judgement("where one stands, and 20 mm of air, are judgements"));

  private final Layout layout;
  private final Places places;
  private final AccessFindings ways;

  public GettingInFindings(Layout layout, Places places, AccessFindings ways) {
    this.layout = layout;
    this.places = places;
    this.ways = ways;
  }

  /**
   * Returns how somebody gets in, from the side of the lower step, the right where both are alike;
   * empty where they do not sit, or no way is known.
   */
  public Optional<GettingIn> poses(Sitting sitting, List<Standing> standings) {
    Optional<Standing> under = Standing.carrying(sitting.occupant(), standings);
    if (sitting.posture().isEmpty() || under.isEmpty()) {
      return Optional.empty();
    }
    return ways.open(sitting.parts())
        .flatMap(
            access -> {
              Optional<PointMm> atLeft = access.sill(true);
              Optional<PointMm> atRight = access.sill(false);
              boolean left =
                  atLeft.isPresent() && (atRight.isEmpty() || atLeft.get().z() < atRight.get().z());
              return (left ? atLeft : atRight)
                  .map(
                      over ->
                          GettingIn.of(
                              sitting,
                              under.get(),
                              places,
                              new Handholds(layout, places),
                              new GettingIn.Sills(over, access.nearSill(left).orElse(over), left),
                              ways.opened().values()));
            });
  }

  /** Returns it for somebody. */
  public Optional<Finding> of(Sitting sitting, List<Standing> standings) {
    return poses(sitting, standings).map(in -> finding(sitting, standings, in));
  }

  private static Finding finding(Sitting sitting, List<Standing> standings, GettingIn in) {
    String who = sitting.occupant().words();
    double mm = in.gap().map(Gap::gapMm).orElse(TriedPose.HORIZON_MM);
    boolean clear = in.reached() && mm >= CARE_MM;
    Words near =
        in.gap()
            .map(
                gap ->
                    Words.of(
                        "; " + in.tight().words() + ", the " + gap.first(),
                        mm < 0
                            ? Words.of(" is ", Say.mm(-mm), " into " + gap.second())
                            : Words.of(" keeps ", Say.mm(mm), " off " + gap.second())))
            .orElse(Words.of("; nothing is nearer than ", Say.mm(TriedPose.HORIZON_MM)));
    Words help =
        clear
            ? Words.of(".")
            : in.reached()
                ? Words.of(
                    ". These are six poses of many: try it on the real machine, open a section"
                        + " there, or make it lower or narrower.")
                : Words.of(
                    ". Stepping over, no leg gets there from the road: climb"
                        + " by something that bears, or make it lower there.");
    Finding found =
        new Finding(
            GETTING_IN,
            About.person(sitting.occupant(), "getting in", "in"),
            Optional.of(Standing.under(sitting.occupant(), standings)),
            clear ? Verdict.PASS : Verdict.CAUTION,
            Figures.atLeast(mm, CARE_MM, FigureUnit.MM),
            BASIS,
            Words.of(
                who
                    + " gets in from the "
                    + (in.poses().get(0).left() ? "left" : "right")
                    + " by standing beside, stepping over, going down, sitting and lifting the legs in",
                near,
                help));
    return found.at(joint(in));
  }

  /** The joint of the tightest pose that is nearest to where it is tight, so a mark is on them. */
  private static PointMm joint(GettingIn in) {
    GettingInPose pose = in.pose(in.tight());
    PointMm at = in.gap().map(Gap::where).orElse(pose.inner().ankle());
    return Stream.of(pose.outer(), pose.inner())
        .flatMap(p -> Stream.of(p.hip(), p.knee(), p.ankle(), p.spine().thoracolumbar()))
        .min(Comparator.comparingDouble(at::distance))
        .orElseThrow();
  }
}
