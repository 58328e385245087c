package org.longlow.constraints.stand;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.machine.linkage.FourBar;
import org.longlow.constraints.machine.linkage.Hinge;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.OutOfRange;

/** Sections of the machine on their way from shut to open. */
public final class Sections {

  private Sections() {}

  /**
   * Returns how a section moves.
   *
   * @throws OutOfRange if its linkage cannot be made as drawn; the message says why
   */
  public static SectionMotion motion(Section section, Places drawn) {
    return motion(section, drawn.value(section.angle()), drawn);
  }

  /**
   * Returns how a section would move with another angle.
   *
   * @param angle rad, counter-clockwise positive
   * @throws OutOfRange if its linkage cannot be made as drawn; the message says why
   */
  public static SectionMotion motion(Section section, double angle, Places drawn) {
    if (section.pivot().isPresent()) {
      return new Hinge(drawn.pin(section.pivot().get()), angle);
    }
    FourBar linkage =
        new FourBar(
            drawn.pin(section.frameArms().get(0)),
            drawn.pin(section.frameArms().get(1)),
            drawn.pin(section.sectionArms().get(0)),
            drawn.pin(section.sectionArms().get(1)),
            angle);
    if (!linkage.opens()) {
      FourBar.Range range = linkage.range();
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "its linkage jams before it is open: the driving arm can turn from %.1f to %.1f deg,"
                  + " not %.1f",
              Math.toDegrees(range.leastRad()),
              Math.toDegrees(range.mostRad()),
              Math.toDegrees(angle)));
    }
    return linkage;
  }

  /**
   * Returns how the sections move that a drive moves together with one, by name; not what cannot be
   * made, which is said of that section itself.
   */
  public static Map<String, SectionMotion> drivenWith(String name, Layout layout, Places drawn) {
    Map<String, SectionMotion> motions = new LinkedHashMap<>();
    for (String other : layout.drivenWith(name)) {
      try {
        motions.put(other, motion(layout.sections().get(other), drawn));
      } catch (OutOfRange e) {
        continue;
      }
    }
    return motions;
  }

  /** Returns the shapes of what opens with a section, and with what its drive moves too. */
  public static Map<String, PartShape> opened(
      String name, Layout layout, Places drawn, double opening, Map<String, PartShape> all) {
    Map<String, PartShape> shapes = new LinkedHashMap<>();
    drivenWith(name, layout, drawn)
        .forEach(
            (other, motion) ->
                shapes.putAll(shapes(layout.sections().get(other), motion, opening, all)));
    Section section = layout.sections().get(name);
    shapes.putAll(shapes(section, motion(section, drawn), opening, all));
    return shapes;
  }

  /** Returns the shapes of the section's parts at {@code opening}, 0 shut to 1 open. */
  static Map<String, PartShape> shapes(
      Section section, SectionMotion motion, double opening, Map<String, PartShape> all) {
    RigidMotion to = motion.at(opening);
    Map<String, PartShape> shapes = new LinkedHashMap<>();
    for (String part : section.parts()) {
      PartShape shape = all.get(part);
      if (shape != null) {
        shapes.put(part, shape.moved(to));
      }
    }
    return shapes;
  }
}
