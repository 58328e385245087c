package org.longlow.constraints.layout;

import java.util.Optional;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.words.Names;

/**
 * The kinds of ties: how many pins and radii each needs and what its target is.
 *
 * <p>Points are written P, Q …; a line is given by two pins.
 */
public enum TieKind {
  TOGETHER(2, 2, 0, null, "P and Q are one place"),
  /** P stays where it is drawn, or at its own x and z. */
  NAILED(1, 1, 0, null, "P stays where it is drawn"),
  DISTANCE(2, 2, 0, Dim.LENGTH, "|PQ| = is"),
  AHEAD(2, 2, 0, Dim.LENGTH, "Q.x - P.x = is"),
  ABOVE(2, 2, 0, Dim.LENGTH, "Q.z - P.z = is"),
  HEIGHT(1, 1, 0, Dim.LENGTH, "height of P above the ground = is"),
  ANGLE(2, 2, 0, Dim.ANGLE, "angle of P to Q from forward, counter-clockwise = is"),
  RAKE(2, 2, 0, Dim.ANGLE, "angle of P to Q from vertical, leaning back positive = is"),
  ANGLE_BETWEEN(4, 4, 0, Dim.ANGLE, "angle from PQ to RS, counter-clockwise = is"),
  PARALLEL(4, 4, 0, null, "PQ parallel to RS"),
  SQUARE_TO(4, 4, 0, null, "PQ square to RS"),
  IN_LINE(3, 3, 0, null, "P on the line QR"),
  BESIDE(3, 3, 0, Dim.LENGTH, "distance of P to the left of Q to R = is"),
  ON_CIRCLE(2, 2, 1, null, "P on the circle about Q, 1 radius"),
  ON_ARC(4, 4, 1, null, "P on the arc about Q from R counter-clockwise to S, 1 radius"),
  /** P on an edge of a part's outline, between its ends; a smooth edge counts by its chord. */
  ON_EDGE(1, 1, 0, null, "P on an edge of a part's outline"),
  TANGENT_LINE(3, 3, 1, null, "PQ touches the circle about R, 1 radius"),
  /** Circles about P and Q with the two given radii touch, outside or inside. */
  TANGENT_CIRCLES(2, 2, 2, null, "circles about P and Q touch, 2 radii"),
  AS_LONG_AS(4, 4, 0, null, "|PQ| = |RS|"),
  AS_ROUND_AS(4, 4, 0, null, "|PQ| = |RS| as radii about P and R"),
  PART_WAY(3, 3, 0, Dim.NUMBER, "P lies the share is of the way from Q to R"),
  HALFWAY(3, 3, 0, null, "P is the middle of QR"),
  MIRRORED(4, 4, 0, null, "P and Q are mirror images in RS"),
  SAME_CENTRE(2, 2, 0, null, "circles about P and Q have one centre"),
  PATH_LENGTH(
      2, 50, 1, Dim.LENGTH, "length along the pins with the given bend radius = is, 1 radius"),
  BELT_LENGTH(
      2,
      50,
      2,
      Dim.LENGTH,
      "length of a belt round wheels about the pins = is, a radius for each pin"),
  ONE_PIECE(2, 50, 0, null, "all pins keep their places relative to each other"),
  FORMULA(0, 0, 0, null, "is = 0 by choice of the free measures in it, no pins");

  private final int fewestPins;
  private final int mostPins;
  private final int radii;
  private final Dim target;
  private final String help;

  TieKind(int fewestPins, int mostPins, int radii, Dim target, String help) {
    this.fewestPins = fewestPins;
    this.mostPins = mostPins;
    this.radii = radii;
    this.target = target;
    this.help = help;
  }

  public int fewestPins() {
    return fewestPins;
  }

  public int mostPins() {
    return mostPins;
  }

  /** How many radii are needed; a belt needs one for each pin, at least this many. */
  public int radii() {
    return radii;
  }

  /** The dimension of {@code is}, if the kind has a target. */
  public Optional<Dim> target() {
    return Optional.ofNullable(target);
  }

  /** What must hold, over pins P, Q, R, S in their order. */
  public String help() {
    return help;
  }

  /** The word in files, such as {@code angle-between}. */
  public String word() {
    return Names.word(this);
  }
}
