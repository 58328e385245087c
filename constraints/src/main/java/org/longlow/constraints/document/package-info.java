/**
 * The document described once: each kind with its fields, their types, units, ranges, usual values
 * and help, and the rules between them. Whoever reads, writes, checks or explains documents loops
 * over these descriptions.
 */
package org.longlow.constraints.document;
