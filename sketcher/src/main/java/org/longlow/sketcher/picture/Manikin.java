package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Set;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Flesh;
import org.longlow.rider.pose.Posture;

/**
 * A seated person as something to draw, in the axes of the frame: the same flesh that gaps are
 * measured to.
 *
 * @param name whose
 * @param seat which seat
 * @param joints where the joints are
 * @param body outline of everything but the near arm
 * @param head outline of the head, or of the helmet round it
 * @param arm outline of the near arm
 * @param headRadiusMm half the head's length, helmet included
 * @param helmet whether a helmet is worn
 */
record Manikin(
    String name,
    String seat,
    Posture joints,
    Geometry body,
    Geometry head,
    Geometry arm,
    double headRadiusMm,
    boolean helmet) {

  private static final Set<String> ARM = Set.of("upperArm", "forearm");

  static Manikin of(Sitting sitting, Posture posture, boolean helmet) {
    List<Flesh> flesh = sitting.flesh();
    return new Manikin(
        sitting.person(),
        sitting.seat(),
        posture,
        Figure.silhouette(flesh.stream().filter(f -> !ARM.contains(f.name())).toList()),
        flesh.stream().filter(f -> f.name().equals("head")).findFirst().orElseThrow().outline(),
        Figure.silhouette(flesh.stream().filter(f -> ARM.contains(f.name())).toList()),
        sitting.body().head().radiusMm(),
        helmet);
  }

  /** Returns the unit vector the face looks along. */
  PointMm gaze() {
    return PointMm.unit(joints.angles().headPitch());
  }
}
