package org.longlow.sketcher.template;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.machine.shop.TubeCope;
import org.longlow.constraints.machine.shop.TubeEndCut;
import org.longlow.constraints.machine.shop.TubeMitre;
import org.longlow.svg.drawing.Dimensions;

/**
 * What an end of a rail meets and how it is cut there.
 *
 * @param pin the pin of that end
 * @param to names of what it meets
 * @param how in words
 * @param cut to be wrapped round it; empty where it is sawn square or no template can tell
 * @param zeroMm how far up the tube from its pin the cut is measured from, mm; where there is none,
 *     how much is left past the pin for what is done by hand, less than 0
 * @param sideWord which side of the machine a cope's offset is counted to
 */
record TubeEnd(
    String pin,
    List<String> to,
    String how,
    Optional<TubeEndCut> cut,
    double zeroMm,
    String sideWord) {

  /** Judgement: what leans less onto a tube or plate is not cut by a template. */
  static final double LEAST_RAD = Math.toRadians(15);

  /** Judgement: what is as near to square is sawn square. */
  private static final double SQUARE_RAD = Math.toRadians(0.5);

  TubeEnd {
    to = List.copyOf(to);
  }

  /** An end that is sawn off square, or by hand as the words say. */
  static TubeEnd plain(String pin, List<String> to, String how) {
    return new TubeEnd(pin, to, how, Optional.empty(), 0, "");
  }

  /** Returns the same with so much left past the pin for what is done by hand. */
  TubeEnd withSpare(double mm) {
    return new TubeEnd(pin, to, how, cut, -mm, sideWord);
  }

  /** Returns how far its longest point lies past its pin, mm; less than 0 short of it. */
  double pastPinMm() {
    return -zeroMm - cut.map(TubeEndCut::lowestMm).orElse(0.0);
  }

  /** Returns whether it is cut to the side of a round tube. */
  boolean isCope() {
    return cut.filter(TubeCope.class::isInstance).isPresent();
  }

  /** Returns what it is, for a card: pin and what is done there. */
  String line() {
    return pin + ": " + how;
  }

  /** An end that is sawn flat, square where that is as good. */
  static TubeEnd flat(String pin, List<String> to, String how, double angleRad, double radiusMm) {
    return Math.PI / 2 - angleRad < SQUARE_RAD
        ? plain(pin, to, how + ", square")
        : new TubeEnd(
            pin,
            to,
            how + ", sawn flat at " + degrees(angleRad) + " to the tube",
            Optional.of(new TubeMitre(radiusMm, angleRad)),
            0,
            "");
  }

  static boolean isTemplated(double angleRad) {
    return angleRad >= LEAST_RAD;
  }

  static String degrees(double rad) {
    return Dimensions.figure(Math.toDegrees(rad)) + "°";
  }
}
