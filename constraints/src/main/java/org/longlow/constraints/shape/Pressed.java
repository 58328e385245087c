package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Control;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/**
 * A pedal on its way, as far as it goes: pressed ahead or down, for that is where soles face; those
 * of the toes either way.
 *
 * @param shape the pedal there
 */
public record Pressed(PartShape shape) {

  /** Places of the way that are looked at; a pedal turns little. */
  private static final int STEPS = 4;

  /** Returns what works a part, if that is a foot and it is said how far it goes. */
  public static Optional<Control> pedal(Part part) {
    return part instanceof SolidPart solid
        ? solid
            .worked()
            .filter(w -> w.by().pedal() && w.pivot().isPresent() && w.travel().isPresent())
        : Optional.empty();
  }

  /**
   * Returns all places of all pedals among some parts, of each nearest to where it is first.
   *
   * @param places where the pins of these parts are
   */
  public static List<Pressed> of(Collection<PartShape> shapes, Places places) {
    List<Pressed> all = new ArrayList<>();
    for (PartShape shape : shapes) {
      pedal(shape.part()).ifPresent(w -> way(all, shape, w, places));
    }
    return all;
  }

  /** Returns where pedals are at the ends of their ways, by name: pressed, then lifted. */
  public static List<Map<String, PartShape>> ends(Collection<PartShape> shapes, Places places) {
    Map<String, PartShape> pressed = new LinkedHashMap<>();
    Map<String, PartShape> lifted = new LinkedHashMap<>();
    for (PartShape shape : shapes) {
      for (Control worked : pedal(shape.part()).stream().toList()) {
        List<Pressed> way = new ArrayList<>();
        way(way, shape, worked, places);
        int n = way.size();
        if (n > 0) {
          boolean lifts = worked.by() == Control.By.TOES;
          pressed.put(shape.part().name(), way.get(lifts ? n - 2 : n - 1).shape);
          lifted.put(shape.part().name(), way.get(n - 1).shape);
        }
      }
    }
    return pressed.isEmpty()
        ? List.of()
        : lifted.equals(pressed) ? List.of(pressed) : List.of(pressed, lifted);
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
