package org.longlow.constraints.disk;

import java.io.File;
import java.util.regex.Pattern;

/**
 * What is otherwise on Windows: an open file can be neither replaced nor deleted, and some names
 * are those of devices.
 */
public final class Windows {

  static final boolean IS = File.separatorChar == '\\';

  /** Names of devices, with any ending and in whatever case (from memory). */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|(com|lpt)[0-9\u00b9\u00b2\u00b3])[ ]*([.:].*)?");

  private Windows() {}

  /**
   * Returns whether Windows has no file of this name: a device, one that ends in . or blank, or one
   * with a character that is none to be seen, such as a line break.
   */
  public static boolean refuses(String name) {
    return DEVICE.matcher(name).matches()
        || name.endsWith(".")
        || name.endsWith(" ")
        || name.chars().anyMatch(Character::isISOControl);
  }
}
