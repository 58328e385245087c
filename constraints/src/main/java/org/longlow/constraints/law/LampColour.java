package org.longlow.constraints.law;

import java.util.Locale;

/** Colour of the light given or sent back. */
public enum LampColour {
  WHITE,
  AMBER,
  RED;

  /** Returns the name used in files and reports. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }
}
