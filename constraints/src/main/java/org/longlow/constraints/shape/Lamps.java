package org.longlow.constraints.shape;

import org.longlow.constraints.layout.LampPart;

/** Which way lamps face. */
public final class Lamps {
  private Lamps() {}

  /** Returns whether a lamp of this kind shines forward; side reflectors count as forward. */
  public static boolean facesForward(LampPart.Kind kind) {
    return switch (kind) {
      case HEADLAMP,
          DRIVING_BEAM,
          DAYTIME,
          FRONT_FOG,
          FRONT_SIGNAL,
          FRONT_POSITION,
          SIDE_REFLECTOR ->
          true;
      case TAIL, STOP, REAR_FOG, REAR_SIGNAL, PLATE_LAMP, REAR_REFLECTOR, PLATE -> false;
    };
  }
}
