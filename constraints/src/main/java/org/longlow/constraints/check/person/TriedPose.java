package org.longlow.constraints.check.person;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.rider.body.Body;
import org.longlow.rider.pose.PoseResult;

/**
 * A pose held against the machine.
 *
 * @param limb what comes nearest to something; null where nothing is near
 * @param other what that is
 * @param mm how near, -1 where it meets it, {@link #HORIZON_MM} where nothing is nearer
 * @param reached whether legs are long and hips wide enough
 */
record TriedPose(GettingInPose pose, Solid limb, Solid other, double mm, boolean reached) {

  /** Nothing farther off is told, mm. */
  static final double HORIZON_MM = 60;

  /** A thigh goes no farther behind the trunk than this; judgement. */
  private static final double HIP_MOST = Math.toRadians(195);

  /** A limb that misses its place by less is there, mm. */
  private static final double THERE_MM = 1;

  /**
   * Returns the freer of two poses, the first where both are as free, with what comes nearest in
   * it, or the first thing met: how deep takes long. The second is left as soon as it is no freer.
   *
   * @param best tried before; null for none
   */
  static TriedPose freer(
      TriedPose best, GettingInPose pose, Body body, List<Solid> others, boolean reached) {
    boolean freest = best != null && best.mm >= HORIZON_MM;
    if (best != null && best.reached && (!reached || freest)) {
      return best;
    }
    boolean alike = best != null && best.reached == reached;
    double floor = alike ? best.mm : Double.NEGATIVE_INFINITY;
    List<GettingInPose.Limb> limbs = pose.limbs(body);
    // what was met before is most likely met again
    if (alike && best.other != null && best.limbIsNoFartherOff(limbs)) {
      return best;
    }
    TriedPose least = new TriedPose(pose, null, null, HORIZON_MM, reached);
    for (GettingInPose.Limb part : limbs) {
      Solid limb = part.body();
      for (Solid other : others) {
        double mm = limb.apartMm(other, least.mm);
        if (mm <= floor) {
          return best;
        }
        if (mm < least.mm) {
          least = new TriedPose(pose, limb, other, mm, reached);
          if (mm < 0) {
            return least;
          }
        }
      }
    }
    return least.mm > floor ? least : best;
  }

  /** Whether the limb that comes nearest here comes as near to the same thing in another pose. */
  private boolean limbIsNoFartherOff(List<GettingInPose.Limb> limbs) {
    for (GettingInPose.Limb there : limbs) {
      if (there.name().equals(limb.name()) && there.body().apartMm(other, Math.nextUp(mm)) <= mm) {
        return true;
      }
    }
    return false;
  }

  /** Whether a leg gets where it is sent, in front of the trunk. */
  static boolean reaches(PoseResult leg) {
    return leg.posture().angles().trunkThigh() <= HIP_MOST
        && leg.shortfalls().stream()
            .noneMatch(
                s ->
                    s.limb() == PoseResult.Limb.LEG
                        && s.side() == PoseResult.Side.TOO_FAR
                        && s.mm() > THERE_MM);
  }

  /** Returns the gap, worked out when it is asked for; bodies of poses are not kept. */
  Optional<Gap> gap() {
    return Optional.ofNullable(limb).map(l -> l.to(other, HORIZON_MM));
  }
}
