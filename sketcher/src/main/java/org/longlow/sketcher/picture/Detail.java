package org.longlow.sketcher.picture;

/** How much is dimensioned on a view, the most first. */
enum Detail {
  /** Seat, pegs, grips, axles and H-point too. */
  FULL,
  /** What a machine is known by: wheelbase, trail, rake, clearance, seat height. */
  MAIN,
  /** How long, high and broad it is, and its wheelbase. */
  OVERALL
}
