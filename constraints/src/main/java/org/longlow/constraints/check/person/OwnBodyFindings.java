package org.longlow.constraints.check.person;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/** How much of the road the rider's own knees, feet and hands hide. */
final class OwnBodyFindings {

  /** The farthest road that they hide. */
  static final FindingKind OWN_BODY =
      new FindingKind("own-body", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  private static final Map<String, String> LIMBS =
      Map.of(
          "thigh",
          "knees",
          "shank",
          "shins",
          "foot",
          "feet",
          "forearm",
          "hands",
          "upperArm",
          "elbows");

  private OwnBodyFindings() {}

  /** A corner of a limb and what it hides. */
  private record Hides(String limb, double roadMm, PointMm corner, double yMm) {}

  /**
   * Returns what hides most. What a convex limb hides of the road ends at the shadow of one of its
   * corners, as if the eye were a lamp. Where riders look is half a right angle to each side.
   */
  static Optional<Finding> of(Layout layout, Sitting sitting, Posture posture, Standing standing) {
    Ground ground = standing.ground();
    PointMm eye = ground.toRoad(posture.eye());
    if (!(eye.z() > 0)) {
      return Optional.empty();
    }
    Hides worst = null;
    for (Map.Entry<String, List<Prism>> limb : sitting.fineLimbs().entrySet()) {
      if (!LIMBS.containsKey(limb.getKey())) {
        continue;
      }
      for (Prism prism : limb.getValue()) {
        if (prism.across().to() > 0) { // the right side is its image
          worst = farther(worst, hides(limb.getKey(), prism, eye, ground));
        }
      }
    }
    Hides most = worst;
    return Optional.ofNullable(most).map(h -> finding(layout, sitting, standing, eye, h));
  }

  private static Hides farther(Hides a, Hides b) {
    return a == null || b != null && b.roadMm() > a.roadMm() ? b : a;
  }

  private static Hides hides(String limb, Prism prism, PointMm eye, Ground ground) {
    PointMm along = ground.along();
    PointMm from = ground.rearContact();
    double inner = Math.max(0, prism.across().from());
    double most = 0;
    double side = 0;
    Coordinate at = null;
    for (Coordinate c : prism.outline().getCoordinates()) {
      double dx = along.x() * (c.x - from.x()) + along.z() * (c.y - from.z()) - eye.x();
      double down = eye.z() - (along.x() * (c.y - from.z()) - along.z() * (c.x - from.x()));
      if (dx > inner) {
        double y = Math.min(prism.across().to(), dx);
        double road = down > 0 ? eye.z() * Math.hypot(dx, y) / down : Double.POSITIVE_INFINITY;
        if (road > most) {
          most = road;
          side = y;
          at = c;
        }
      }
    }
    return at == null ? null : new Hides(limb, most, new PointMm(at.x, at.y), side);
  }

  private static Finding finding(
      Layout layout, Sitting sitting, Standing standing, PointMm eye, Hides h) {
    double limit = standing.places().value(layout.demands().limit(Demands.Key.SIGHT));
    PointMm corner = standing.ground().toRoad(h.corner());
    double side = Math.toDegrees(Math.atan2(h.yMm(), corner.x() - eye.x()));
    boolean sees = h.roadMm() <= limit;
    return new Finding(
            OWN_BODY,
            About.person(sitting.occupant(), "own knees, feet and hands", "own-body"),
            Optional.of(standing.condition()),
            sees ? Verdict.PASS : Verdict.CAUTION,
            Figures.atMost(
                Double.isFinite(h.roadMm()) ? h.roadMm() : Double.NaN, limit, FigureUnit.MM),
            List.of(
                Basis.model("straight lines from the eye past flesh and boots"),
                Sources.of(layout, Demands.Key.SIGHT)),
            Words.of(
                Say.format(
                    "The %s of %s stand farthest before the road, some %s to each side: it is hidden"
                        + " there ",
                    LIMBS.get(h.limb()), sitting.person(), Say.deg(side)),
                Double.isFinite(h.roadMm())
                    ? Words.of("up to ", LookingAhead.metres(h.roadMm()), " away")
                    : Words.of("as far as the horizon"),
                sees ? "." : "; lower or spread the feet, or raise the eye."))
        .at(h.corner(), h.yMm());
  }
}
