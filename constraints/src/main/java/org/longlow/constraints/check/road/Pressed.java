package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Control;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;

/**
 * Pedals on their way, as far as they go: pressed ahead or down, for that is where soles face;
 * those of the toes either way.
 *
 * @param shape of one, there
 */
record Pressed(PartShape shape) {

  /** Places of the way that are looked at; a pedal turns little. */
  private static final int STEPS = 4;

  /** Returns all of a stance, nearest to where they are drawn first. */
  static List<Pressed> of(Standing standing) {
    List<Pressed> all = new ArrayList<>();
    for (PartShape shape : standing.shapes().values()) {
      if (shape.part() instanceof SolidPart solid) {
        solid
            .worked()
            .filter(w -> w.by().pedal() && w.pivot().isPresent() && w.travel().isPresent())
            .ifPresent(w -> way(all, shape, w, standing.places()));
      }
    }
    return all;
  }

  private static void way(List<Pressed> all, PartShape shape, Control worked, Places places) {
    PointMm pivot = places.pin(worked.pivot().orElseThrow());
    PointMm arm = places.pin(worked.pad()).minus(pivot);
    double turn = places.value(worked.travel().orElseThrow()) / arm.length();
    if (!(turn > 0 && turn <= 1)) {
      return; // said of the pedal itself
    }
    PointMm left = arm.left();
    double pressed = left.x() - left.z() > 0 ? turn : -turn;
    for (int k = 1; k <= STEPS; k++) {
      RigidMotion motion = RigidMotion.about(pivot, pressed * k / STEPS);
      all.add(new Pressed(shape.moved(motion)));
      if (worked.by() == Control.By.TOES) {
        all.add(new Pressed(shape.moved(motion.inverse())));
      }
    }
  }
}
