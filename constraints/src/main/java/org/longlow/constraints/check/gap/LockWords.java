package org.longlow.constraints.check.gap;

import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.lock.LockWay;
import org.longlow.rider.words.Words;

/** What is said of two that come too close while the steering turns. */
final class LockWords {

  /** What turns by less rounds to nothing, rad. */
  private static final double STRAIGHT_RAD = Math.toRadians(0.5);

  private LockWords() {}

  /**
   * Returns them.
   *
   * @param what the two, in words
   * @param limitMm the gap asked of them, mm
   * @param farRad how far the steering is looked at, rad
   * @param askedRad how far it is to turn, rad
   */
  static Words of(LockWay.Met met, String what, double limitMm, double farRad, double askedRad) {
    Words far =
        Words.of(
            Say.deg(Math.toDegrees(farRad)), farRad < askedRad ? " looked at" : " of lock asked");
    if (!met.meets() && met.gapMm() >= limitMm) {
      return Say.format(
          "%s, %s are %s apart; %s are asked.",
          turned(met.turnRad()), what, Say.mm(met.gapMm()), Words.atLeast(limitMm));
    }
    if (!met.meets()) {
      return Say.format(
          "%s, %s are %s apart, and %s are asked; they come too close from %s on. Make that"
              + " much more room there, or stop the steering before it.",
          turned(met.turnRad()),
          what,
          Say.mm(met.gapMm()),
          Words.atLeast(limitMm),
          Say.deg(Math.toDegrees(Math.abs(met.from()))));
    }
    return Say.format(
        "%s, %s meet; to the %s there are %s more to turn, measured along the"
            + " way of the place that meets. Make room for that, and the %s asked between them, or"
            + " stop the steering before it and ask for less lock.",
        meeting(met), what, far, Words.atLeast(-met.gapMm()), Words.atLeast(limitMm));
  }

  private static Words meeting(LockWay.Met met) {
    return met.left() == null || met.right() == null || isStraight(met.turnRad())
        ? turned(met.turnRad())
        : Words.of(
            "Turned ",
            degrees(met.left().turnRad(), true),
            " or ",
            degrees(met.right().turnRad(), false));
  }

  private static Words turned(double rad) {
    return isStraight(rad) ? Words.of("Straight ahead") : Words.of("Turned ", degrees(rad));
  }

  /** Whether a turn would be said to be none. */
  static boolean isStraight(double rad) {
    return Math.abs(rad) < STRAIGHT_RAD;
  }

  /** Returns a turn and to which side, in words. */
  static Words degrees(double rad) {
    return degrees(rad, rad > 0);
  }

  private static Words degrees(double rad, boolean left) {
    return Words.of(
        Say.deg(Math.toDegrees(Math.abs(rad))), left ? " to the left" : " to the right");
  }
}
