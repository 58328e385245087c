package org.longlow.constraints.document;

/** How the user may call the entries of a group. */
public enum Naming {
  NAMES,
  /** As formulas can use them. */
  MEASURE_NAMES,
  /** Not the user's own. */
  KEYS,
  /** Those of entries that the layout has elsewhere. */
  REFERENCES;

  /** Whether an entry is something of its own, called by its key. */
  public boolean named() {
    return this != KEYS;
  }

  /** Whether names are given here, so that others may refer to them. */
  public boolean given() {
    return this == NAMES || this == MEASURE_NAMES;
  }
}
