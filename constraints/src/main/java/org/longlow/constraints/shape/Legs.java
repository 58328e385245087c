package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.machine.shop.SheetFold;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * The legs between corners of a bent sheet, each held against what the corners at its ends take of
 * it. Two that share a leg share it.
 */
final class Legs {

  /** Lengths nearer than this are the same, mm. */
  private static final double SAME_MM = 1e-6;

  /** More than this is no figure that tells anybody anything, mm. */
  private static final double MOST_TOLD_MM = 1e5;

  private final double thicknessMm;
  private final List<Words> faults = new ArrayList<>();
  private int number = 1;
  private int folds;
  private double drawnMm;
  private double takenMm;

  Legs(double thicknessMm) {
    this.thicknessMm = thicknessMm;
  }

  /**
   * Goes on along a leg.
   *
   * @param lengthMm as drawn
   * @param mitredMm how much shorter it is along the middle of the sheet, corners left sharp
   */
  void on(double lengthMm, double mitredMm) {
    drawnMm += lengthMm;
    takenMm += mitredMm;
  }

  /** A fold ends a leg and begins another. */
  void fold(double rad) {
    folds++;
    double turn = Math.abs(rad);
    boolean sharp = turn > SheetFold.MOST_RAD + 1e-9;
    // one that is told as too sharp is not told again of its legs
    double takes = sharp ? 0 : SheetFold.middleSetBackMm(thicknessMm, turn);
    takenMm += takes;
    if (sharp) {
      faults.add(
          Words.of(
              "fold " + folds + " of ",
              angle(turn),
              " is too sharp to be folded so, sheet is folded by up to ",
              angle(SheetFold.MOST_RAD),
              "; open it, or join two pieces there"));
    }
    corner();
    takenMm += takes;
  }

  /** A leg ends, and another begins; where the sheet is not folded it is mitred. */
  void corner() {
    if (takenMm > drawnMm + SAME_MM) {
      faults.add(
          Words.of(
              "leg " + number + " of ",
              mm(drawnMm),
              " is too short to be folded so, the corners at its ends take ",
              takenMm < MOST_TOLD_MM ? mm(takenMm) : Words.of("more than any sheet has"),
              " of it; make it longer, its sheet thinner, or join it instead"));
    }
    number++;
    drawnMm = 0;
    takenMm = 0;
  }

  /** Returns what cannot be made as it is drawn. */
  List<Words> faults() {
    return List.copyOf(faults);
  }

  private static Words mm(double value) {
    return Words.figure(value, FigureSort.LENGTH);
  }

  private static Words angle(double rad) {
    return Words.figure(Math.toDegrees(rad), FigureSort.ANGLE);
  }
}
