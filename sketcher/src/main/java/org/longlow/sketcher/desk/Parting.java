package org.longlow.sketcher.desk;

/**
 * What to say before unsaved work is left.
 *
 * @param unsaved whether there is something to save; if not, only found work waits
 * @param kept whether the work is safe
 */
public record Parting(boolean unsaved, boolean kept, String words) {

  /** Says what becomes of unsaved work. */
  static String unsaved(String doing, Keeper.Kept kept) {
    return kept.copy()
        .map(
            c ->
                "There is unsaved work. If you "
                    + doing
                    + ", it is kept as "
                    + c
                    + " and offered the next time.")
        .orElse(
            "There is unsaved work and it cannot be kept: "
                + kept.trouble()
                + ". If you "
                + doing
                + " now it is lost; save it somewhere else first.");
  }
}
