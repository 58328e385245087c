/**
 * The desk that a layout lies on while it is worked at, without any window.
 *
 * <p>In: layout files and edits. Out: immutable layouts with a named history ({@link
 * org.longlow.sketcher.desk.Session}), files that are whole or untouched ({@link
 * org.longlow.sketcher.desk.LayoutFile}), copies that survive a kill ({@link
 * org.longlow.sketcher.desk.Autosave}). A session belongs to one thread; everything it hands out is
 * immutable. Nothing here knows the window toolkit.
 */
package org.longlow.sketcher.desk;
