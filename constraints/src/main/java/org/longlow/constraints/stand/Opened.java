package org.longlow.constraints.stand;

import java.util.Set;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/**
 * A section that is open, and what it takes with it.
 *
 * @param section its name
 * @param parts the parts that move with it
 * @param motion from shut to where it is, in the axes of the frame
 */
public record Opened(String section, Set<String> parts, RigidMotion motion) {

  /** Returns where a pin is that is at {@code shut} when the section is shut. */
  public PointMm pin(Layout layout, String name, PointMm shut) {
    return layout.pins().get(name).with().equals(section) ? motion.apply(shut) : shut;
  }

  /** Returns where a point of a part is that is at {@code shut} when the section is shut. */
  PointMm point(String part, PointMm shut) {
    return parts.contains(part) ? motion.apply(shut) : shut;
  }
}
