package org.longlow.constraints.shape;

import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.ride.DrivenWheels;

/** Which wheels a layout drives. */
public final class Drives {

  private Drives() {}

  /**
   * Returns them: by a motor in the hub or on the axle, or by a chain or belt; the rear one where
   * none of these is said, as by a shaft.
   */
  public static DrivenWheels of(Layout layout) {
    boolean front = drives(layout, Part.End.FRONT);
    boolean rear = drives(layout, Part.End.REAR);
    return front ? rear ? DrivenWheels.BOTH : DrivenWheels.FRONT : DrivenWheels.REAR;
  }

  private static boolean drives(Layout layout, Part.End end) {
    return layout
        .parts(WheelPart.class)
        .filter(wheel -> wheel.end() == end)
        .anyMatch(
            wheel ->
                isByMotor(layout, wheel)
                    || Runs.of(layout).stream()
                        .anyMatch(run -> Runs.sprockets(run.getValue()).contains(wheel.axle())));
  }

  /** Returns whether a motor sits in the hub of a wheel or on its axle. */
  public static boolean isByMotor(Layout layout, WheelPart wheel) {
    return wheel.driven()
        || layout
            .parts(SolidPart.class)
            .anyMatch(p -> p.type() == SolidPart.Kind.MOTOR && p.pins().contains(wheel.axle()));
  }
}
