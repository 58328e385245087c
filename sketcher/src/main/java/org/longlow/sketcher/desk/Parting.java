package org.longlow.sketcher.desk;

/**
 * What to say before unsaved work is left.
 *
 * @param unsaved whether there is something to save; if not, only found work waits
 * @param kept whether the work is safe
 */
public record Parting(boolean unsaved, boolean kept, String words) {}
