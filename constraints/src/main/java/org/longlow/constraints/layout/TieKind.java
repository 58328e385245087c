package org.longlow.constraints.layout;

import java.util.Optional;
import java.util.function.DoubleBinaryOperator;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.words.Names;

/**
 * The kinds of ties: how many pins and radii each needs and what its target is.
 *
 * <p>Points are written P, Q …; a line is given by two pins.
 */
public enum TieKind {
  TOGETHER(2, 2, 0, Is.NONE, "P and Q are one place"),
  /** P stays where it is drawn, or at its own x and z. */
  NAILED(1, 1, 0, Is.NONE, "P stays where it is drawn"),
  DISTANCE(Math::hypot, Is.LENGTH, "|PQ| = is"),
  AHEAD((x, z) -> x, Is.OFFSET, "Q.x - P.x = is"),
  ABOVE((x, z) -> z, Is.OFFSET, "Q.z - P.z = is"),
  HEIGHT(1, 1, 0, Is.OFFSET, "height of P above the ground = is"),
  ANGLE(
      (x, z) -> Math.atan2(z, x), Is.ANGLE, "angle of P to Q from forward, counter-clockwise = is"),
  RAKE(
      (x, z) -> Math.atan2(-x, z),
      Is.ANGLE,
      "angle of P to Q from vertical, leaning back positive = is"),
  ANGLE_BETWEEN(4, 4, 0, Is.ANGLE, "angle from PQ to RS, counter-clockwise = is"),
  PARALLEL(4, 4, 0, Is.NONE, "PQ parallel to RS"),
  SQUARE_TO(4, 4, 0, Is.NONE, "PQ square to RS"),
  IN_LINE(3, 3, 0, Is.NONE, "P on the line QR"),
  BESIDE(3, 3, 0, Is.OFFSET, "distance of P to the left of Q to R = is"),
  ON_CIRCLE(2, 2, 1, Is.NONE, "P on the circle about Q, 1 radius"),
  ON_ARC(4, 4, 1, Is.NONE, "P on the arc about Q from R counter-clockwise to S, 1 radius"),
  /** P on an edge of a part's outline, between its ends; a smooth edge counts by its chord. */
  ON_EDGE(1, 1, 0, Is.NONE, "P on an edge of a part's outline"),
  TANGENT_LINE(3, 3, 1, Is.NONE, "PQ touches the circle about R, 1 radius"),
  /** Circles about P and Q with the two given radii touch, outside or inside. */
  TANGENT_CIRCLES(2, 2, 2, Is.NONE, "circles about P and Q touch, 2 radii"),
  AS_LONG_AS(4, 4, 0, Is.NONE, "|PQ| = |RS|"),
  AS_ROUND_AS(4, 4, 0, Is.NONE, "|PQ| = |RS| as radii about P and R"),
  PART_WAY(3, 3, 0, Is.SHARE, "P lies the share is of the way from Q to R"),
  HALFWAY(3, 3, 0, Is.NONE, "P is the middle of QR"),
  MIRRORED(4, 4, 0, Is.NONE, "P and Q are mirror images in RS"),
  SAME_CENTRE(2, 2, 0, Is.NONE, "circles about P and Q have one centre"),
  PATH_LENGTH(
      2, 50, 1, Is.LENGTH, "length along the pins with the given bend radius = is, 1 radius"),
  BELT_LENGTH(
      2,
      50,
      2,
      Is.LENGTH,
      "length of a belt round wheels about the pins = is, a radius for each pin"),
  ONE_PIECE(2, 50, 0, Is.NONE, "all pins keep their places relative to each other"),
  FORMULA(0, 0, 0, Is.ANY, "is = 0 by choice of the free measures in it, no pins");

  /** What the target of a tie, its {@code is}, measures. */
  public enum Is {
    /** There is none. */
    NONE(null),
    /** How long something is, never less than nothing. */
    LENGTH(Dim.LENGTH),
    /** How far one thing is from another along a direction, or against it. */
    OFFSET(Dim.LENGTH),
    ANGLE(Dim.ANGLE),
    /** A share of 1. */
    SHARE(Dim.NUMBER),
    /** Whatever its formula gives. */
    ANY(null);

    private final Dim dim;

    Is(Dim dim) {
      this.dim = dim;
    }
  }

  private final int fewestPins;
  private final int mostPins;
  private final int radii;
  private final Is is;
  private final String help;
  private final DoubleBinaryOperator between;

  /** A target for what is {@code between} two pins, from how far Q is ahead of P and above it. */
  TieKind(DoubleBinaryOperator between, Is is, String help) {
    this(2, 2, 0, is, help, between);
  }

  TieKind(int fewestPins, int mostPins, int radii, Is is, String help) {
    this(fewestPins, mostPins, radii, is, help, null);
  }

  TieKind(
      int fewestPins, int mostPins, int radii, Is is, String help, DoubleBinaryOperator between) {
    this.fewestPins = fewestPins;
    this.mostPins = mostPins;
    this.radii = radii;
    this.is = is;
    this.help = help;
    this.between = between;
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

  /** What its target measures. */
  public Is is() {
    return is;
  }

  /** The dimension of {@code is}, where the kind decides it. */
  public Optional<Dim> dim() {
    return Optional.ofNullable(is.dim);
  }

  /**
   * What there is of it between two pins, in mm or rad, from how far Q is ahead of P and above it;
   * empty for kinds that are no quantity of two pins.
   */
  public Optional<DoubleBinaryOperator> between() {
    return Optional.ofNullable(between);
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
