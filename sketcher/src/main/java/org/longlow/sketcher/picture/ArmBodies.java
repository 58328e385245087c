package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.lock.HandsTurned;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.space.Convex;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Arms;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Posture;

/** The arms of somebody seated, in space; whoever steers has them at the grips as these turn. */
final class ArmBodies {

  /** Names of what this stands for among the limbs of a {@link Sitting}. */
  static final List<String> LIMBS = List.of("upperArm", "forearm");

  private final Sitting sitting;
  private final Posture posture;
  private final Arms.Thick rounds;
  private final Optional<HandsTurned> hands;
  private final double turnRad;

  /**
   * @param steered what turns with the steering; empty where nothing does
   * @param turnRad how far it is turned, left positive, rad
   */
  ArmBodies(Sitting sitting, Scene scene, Optional<Steered> steered, double turnRad) {
    this.sitting = sitting;
    this.turnRad = turnRad;
    posture = sitting.posture().orElseThrow();
    rounds = new Figure(sitting.body(), posture).arms().thick();
    Optional<RestPart> grips = sitting.parts().hands().filter(g -> sitting.occupant().rides());
    hands =
        turnRad == 0
            ? Optional.empty()
            : grips.flatMap(
                g -> steered.map(s -> s.axisOf().get(g.name())).map(a -> on(g, a, scene)));
  }

  private HandsTurned on(RestPart grips, SteeringAxis axis, Scene scene) {
    return new HandsTurned(
        sitting.body(),
        posture,
        axis,
        scene.places().pin(grips.at()),
        scene.places().value(grips.y()));
  }

  /** Returns the pieces of a limb, both sides. */
  List<Convex> of(String limb) {
    return List.of(piece(limb, true), piece(limb, false)).stream().flatMap(List::stream).toList();
  }

  private List<Convex> piece(String limb, boolean left) {
    double side = left ? 1 : -1;
    HandsTurned.Arm arm =
        hands
            .map(h -> h.turned(left, turnRad))
            .orElseGet(
                () ->
                    new HandsTurned.Arm(
                        joint(posture.shoulder(), side * posture.across().shoulderMm()),
                        joint(posture.elbow(), side * posture.across().elbowMm()),
                        joint(posture.grip(), side * posture.across().gripMm()),
                        true));
    if (limb.equals("upperArm")) {
      return List.of(cone(arm.shoulder(), rounds.shoulderMm(), arm.elbow(), rounds.elbowMm()));
    }
    HandsTurned.Joint wrist = wrist(arm);
    return List.of(
        cone(arm.elbow(), rounds.forearmMm(), wrist, rounds.wristMm()),
        cone(wrist, rounds.wristMm(), arm.hand(), rounds.handMm()));
  }

  /** Upright it is where the posture has it; turned, as far along the forearm. */
  private HandsTurned.Joint wrist(HandsTurned.Arm arm) {
    double toWrist = posture.elbow().distance(posture.wrist());
    double share = toWrist / Math.max(1, toWrist + posture.wrist().distance(posture.grip()));
    PointMm at =
        hands.isEmpty() ? posture.wrist() : arm.elbow().at().towards(arm.hand().at(), share);
    return joint(at, arm.elbow().yMm() + share * (arm.hand().yMm() - arm.elbow().yMm()));
  }

  private static HandsTurned.Joint joint(PointMm at, double y) {
    return new HandsTurned.Joint(at, y);
  }

  /** Two balls and all between them. */
  private static Convex cone(HandsTurned.Joint a, double ra, HandsTurned.Joint b, double rb) {
    return (d, out) -> {
      double length = Math.sqrt(d[0] * d[0] + d[1] * d[1] + d[2] * d[2]);
      boolean first = reach(a, d) + ra * length >= reach(b, d) + rb * length;
      HandsTurned.Joint end = first ? a : b;
      double r = (first ? ra : rb) / length;
      double dx = d[0];
      double dz = d[2];
      out[1] = end.yMm() + r * d[1];
      out[0] = end.at().x() + r * dx;
      out[2] = end.at().z() + r * dz;
    };
  }

  private static double reach(HandsTurned.Joint j, double[] d) {
    return d[0] * j.at().x() + d[1] * j.yMm() + d[2] * j.at().z();
  }
}
