package org.longlow.sketcher.desk;

import java.nio.file.Path;
import java.util.Locale;
import java.util.function.UnaryOperator;

/**
 * The folder of the user's own in which programs keep what should last from one start to another.
 */
final class StateFolder {

  private StateFolder() {}

  /** Returns the folder; it need not be there. */
  static Path ofThisUser() {
    return of(
        System.getProperty("os.name", ""), System.getProperty("user.home", "."), System::getenv);
  }

  /**
   * Returns the folder. Linux and others: XDG Base Directory Specification 0.8, XDG_STATE_HOME;
   * Windows: LOCALAPPDATA; macOS: the Library's Application Support (the last two from memory).
   *
   * @param environment null for what is not set
   */
  static Path of(String system, String home, UnaryOperator<String> environment) {
    String name = system.toLowerCase(Locale.ROOT);
    if (name.startsWith("windows")) {
      return or(environment.apply("LOCALAPPDATA"), Path.of(home, "AppData", "Local"))
          .resolve("Longlow");
    }
    if (name.startsWith("mac")) {
      return Path.of(home, "Library", "Application Support", "Longlow");
    }
    return or(environment.apply("XDG_STATE_HOME"), Path.of(home, ".local", "state"))
        .resolve("longlow");
  }

  /** The specification has relative paths ignored. */
  private static Path or(String set, Path usual) {
    return set != null && !set.isEmpty() && Path.of(set).isAbsolute() ? Path.of(set) : usual;
  }
}
