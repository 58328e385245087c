package org.longlow.constraints.lock;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/**
 * What turns when the bars are turned, and about which axis.
 *
 * @param head the steering axis, which the front wheel turns about
 * @param bars the axis that the bars turn about: the same, or that of a post linked to it
 * @param axisOf the axis of each part that turns, by its name
 */
public record Steered(SteeringAxis head, SteeringAxis bars, Map<String, SteeringAxis> axisOf) {

  /**
   * Returns what turns: the front system and its wheel, what hangs on pins that move with that
   * wheel, and what is said to be steered.
   *
   * @param fork the front system
   * @return empty where the pins of the steering axis lie in one place
   */
  public static Optional<Steered> of(Layout layout, FrontPart fork, Places places) {
    Optional<SteeringAxis> head = axis(places.pin(fork.bottom()), places.pin(fork.top()));
    Optional<SteeringAxis> bars =
        fork.postTop().isEmpty() || fork.postBottom().isEmpty()
            ? head
            : axis(places.pin(fork.postBottom().get()), places.pin(fork.postTop().get()));
    if (head.isEmpty() || bars.isEmpty()) {
      return Optional.empty();
    }
    Map<String, SteeringAxis> axisOf = new LinkedHashMap<>();
    for (Part part : layout.parts().values()) {
      boolean wheel = part instanceof WheelPart w && w.end() == Part.End.FRONT;
      boolean atWheel =
          wheel
              || part.equals(fork) && fork.type().turns()
              || allAtWheel(layout, fork, part.pins());
      if (atWheel) {
        axisOf.put(part.name(), head.get());
      } else if (part.base().steered()) {
        axisOf.put(part.name(), bars.get());
      }
    }
    return Optional.of(new Steered(head.get(), bars.get(), axisOf));
  }

  private static Optional<SteeringAxis> axis(PointMm bottom, PointMm top) {
    return SteeringAxis.isGivenBy(bottom, top)
        ? Optional.of(SteeringAxis.through(bottom, top))
        : Optional.empty();
  }

  private static boolean allAtWheel(Layout layout, FrontPart fork, List<String> pins) {
    for (String pin : pins) {
      if (!atWheel(layout, fork, pin)) {
        return false;
      }
    }
    return true;
  }

  private static boolean atWheel(Layout layout, FrontPart fork, String pin) {
    return pin.equals(fork.axle()) || layout.pins().get(pin).with().equals(Pin.FRONT_WHEEL);
  }

  /** Returns whether a part turns. */
  public boolean turns(String part) {
    return axisOf.containsKey(part);
  }
}
