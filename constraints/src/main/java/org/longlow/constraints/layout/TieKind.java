package org.longlow.constraints.layout;

import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;

/**
 * The kinds of ties: how many pins and radii each needs and what its target is.
 *
 * <p>Points are written P, Q …; a line is given by two pins.
 */
public enum TieKind {
  /** P and Q are one place. */
  TOGETHER(2, 2, 0, null),
  /** P stays where it is drawn, or at its own x and z. */
  NAILED(1, 1, 0, null),
  /** |PQ| = is. */
  DISTANCE(2, 2, 0, Dim.LENGTH),
  /** Q.x − P.x = is. */
  AHEAD(2, 2, 0, Dim.LENGTH),
  /** Q.z − P.z = is. */
  ABOVE(2, 2, 0, Dim.LENGTH),
  /** Height of P above the ground = is. */
  HEIGHT(1, 1, 0, Dim.LENGTH),
  /** Angle of P→Q from +x, counter-clockwise = is. */
  ANGLE(2, 2, 0, Dim.ANGLE),
  /** Angle of P→Q from vertical, leaning back positive = is (rake, torso angle). */
  RAKE(2, 2, 0, Dim.ANGLE),
  /** Angle from line PQ to line RS, counter-clockwise = is. */
  ANGLE_BETWEEN(4, 4, 0, Dim.ANGLE),
  /** PQ ∥ RS. */
  PARALLEL(4, 4, 0, null),
  /** PQ ⟂ RS. */
  SQUARE_TO(4, 4, 0, null),
  /** P on the line QR. */
  IN_LINE(3, 3, 0, null),
  /** Signed distance of P to the left of the line Q→R = is. */
  BESIDE(3, 3, 0, Dim.LENGTH),
  /** P on the circle about Q with the given radius. */
  ON_CIRCLE(2, 2, 1, null),
  /** P on the arc about Q, from R counter-clockwise to S, with the given radius. */
  ON_ARC(4, 4, 1, null),
  /** P on an edge of a part's outline, between its ends; a smooth edge counts by its chord. */
  ON_EDGE(1, 1, 0, null),
  /** Line PQ touches the circle about R with the given radius. */
  TANGENT_LINE(3, 3, 1, null),
  /** Circles about P and Q with the two given radii touch, outside or inside. */
  TANGENT_CIRCLES(2, 2, 2, null),
  /** |PQ| = |RS|. */
  AS_LONG_AS(4, 4, 0, null),
  /** |PQ| = |RS| as radii of two circles about P and R. */
  AS_ROUND_AS(4, 4, 0, null),
  /** P lies the share is of the way from Q to R. */
  PART_WAY(3, 3, 0, Dim.NUMBER),
  /** P is the middle of QR. */
  HALFWAY(3, 3, 0, null),
  /** P and Q are mirror images in the line RS. */
  MIRRORED(4, 4, 0, null),
  /** Circles about P and Q have one centre. */
  SAME_CENTRE(2, 2, 0, null),
  /** Length along the pins with the given bend radius at the inner ones = is. */
  PATH_LENGTH(2, 50, 1, Dim.LENGTH),
  /** Length of a belt or chain round wheels about the pins with the given radii = is. */
  BELT_LENGTH(2, 50, 2, Dim.LENGTH),
  /** All pins keep their places relative to each other, as drawn. */
  ONE_PIECE(2, 50, 0, null),
  /** The free measures in {@code is} make it zero: {@code is} = 0. */
  FORMULA(0, 0, 0, null);

  private final int fewestPins;
  private final int mostPins;
  private final int radii;
  private final Dim target;

  TieKind(int fewestPins, int mostPins, int radii, Dim target) {
    this.fewestPins = fewestPins;
    this.mostPins = mostPins;
    this.radii = radii;
    this.target = target;
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

  /** The word in files, such as {@code angle-between}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
