/**
 * The editing session: what a builder does to a layout, without any window.
 *
 * <p>In: layout files, named edits, a pointer that drags a pin. Out: immutable layouts with a named
 * history ({@link org.longlow.sketcher.edit.Session}), files that are whole or untouched ({@link
 * org.longlow.sketcher.edit.LayoutFile}), copies that survive a kill ({@link
 * org.longlow.sketcher.edit.Autosave}). A session belongs to one thread; everything it hands out is
 * immutable. Nothing here knows the window toolkit.
 */
package org.longlow.sketcher.edit;
