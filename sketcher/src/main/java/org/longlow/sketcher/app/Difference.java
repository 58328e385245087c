package org.longlow.sketcher.app;

/**
 * One change.
 *
 * @param kind what sort of thing, such as {@code part}
 * @param name its name
 * @param what which field or figure of it; empty for all of it
 * @param before what it was, or {@code -}
 * @param after what it is, or {@code -}
 */
public record Difference(String kind, String name, String what, String before, String after) {}
