package org.longlow.constraints.document;

/** How the user may call the entries of a group. */
public enum Naming {
  NAMES,
  /** As formulas can use them. */
  MEASURE_NAMES,
  /** Not the user's own. */
  KEYS,
  /** Those of entries that the layout has elsewhere. */
  REFERENCES
}
