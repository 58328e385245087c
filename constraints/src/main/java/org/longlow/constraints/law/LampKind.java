package org.longlow.constraints.law;

/** What a lamp or reflector is there for. */
public enum LampKind {
  /** Lower beam, with or without the upper beam in the same lamp. */
  HEADLAMP("headlamp"),
  /** A separate lamp with only the upper beam. */
  DRIVING_BEAM("driving-beam"),
  FRONT_POSITION("front-position"),
  DAYTIME("daytime"),
  FRONT_FOG("front-fog"),
  FRONT_SIGNAL("front-signal"),
  /** Rear position lamp. */
  TAIL("tail"),
  STOP("stop"),
  REAR_FOG("rear-fog"),
  REAR_SIGNAL("rear-signal"),
  REAR_REFLECTOR("rear-reflector"),
  /** On a side, as far forward as practicable. */
  FRONT_SIDE_REFLECTOR("front-side-reflector"),
  /** On a side, as far rearward as practicable. */
  REAR_SIDE_REFLECTOR("rear-side-reflector"),
  PLATE("plate");

  private final String id;

  LampKind(String id) {
    this.id = id;
  }

  /** Returns the short name used in files and in finding ids. */
  public String id() {
    return id;
  }

  /** Returns the name for reports. */
  public String words() {
    return id.replace('-', ' ');
  }
}
