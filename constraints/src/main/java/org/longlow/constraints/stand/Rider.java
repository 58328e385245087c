package org.longlow.constraints.stand;

import java.util.List;
import org.longlow.constraints.machine.MassPoint;

/**
 * Who sits on the machine in a stance, as masses.
 *
 * @param names the crew on it, such as {@code Mara} or {@code Mara and Tor}; empty for nobody
 * @param masses where their masses are, in the axes of the frame
 */
public record Rider(String names, List<MassPoint> masses) {

  /** Nobody. */
  public static final Rider NOBODY = new Rider("", List.of());

  public Rider {
    masses = List.copyOf(masses);
  }
}
