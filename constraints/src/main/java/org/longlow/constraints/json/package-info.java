/**
 * The layout file, version 1, and the JSON objects of single calculations.
 *
 * <p>In: text or a file. Out: a {@link org.longlow.constraints.layout.Layout}, or every fault of
 * the file at once, each with its JSON path, the value, what is allowed and what to do. Nothing
 * here throws because of what a file says. {@link org.longlow.constraints.json.LayoutWriter} writes
 * a layout back so that reading it again gives an equal layout, formulas as the user wrote them.
 *
 * <p>The structure of a layout file is published as {@code layout-1.schema.json} (JSON Schema,
 * draft 2020-12) beside these classes and enforced by the readers themselves; names, units, ranges
 * and shapes are checked on top of it. A test holds reader and schema to each other. {@link
 * org.longlow.constraints.json.FigureJson} binds records to JSON objects by the names of their
 * components. Only this package knows the JSON library.
 */
package org.longlow.constraints.json;
