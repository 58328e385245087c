package org.longlow.constraints.machine.shop;

/** How sheet is folded where nobody says more. */
public final class SheetFold {

  /**
   * Where the length of a folded sheet stays what it was, from the inside, as a share of its
   * thickness: common practice for air bending at about one thickness of radius, from memory; 0.33
   * tight to 0.5 wide. Fold a strip of scrap and measure.
   */
  public static final double NEUTRAL_FACTOR = 0.44;

  /** Judgement: farther round than this a fold closes on the tool; it is opened, or joined. */
  public static final double MOST_RAD = Math.toRadians(140);

  private SheetFold() {}

  /** Returns the usual inside radius of a fold, mm: one thickness, common practice from memory. */
  public static double insideRadiusMm(double thicknessMm) {
    return thicknessMm;
  }

  /** Returns the flat length of a fold, mm. */
  public static double allowanceMm(double thicknessMm, double angleRad) {
    return TubeBend.sheetAllowanceMm(
        insideRadiusMm(thicknessMm), thicknessMm, NEUTRAL_FACTOR, angleRad);
  }

  /**
   * Returns how far a fold reaches back along each leg, from where their outsides would meet, mm.
   */
  public static double setBackMm(double thicknessMm, double angleRad) {
    return (insideRadiusMm(thicknessMm) + thicknessMm) * Math.tan(angleRad / 2);
  }

  /** Returns how far it reaches back along the middle of the sheet, mm. */
  public static double middleSetBackMm(double thicknessMm, double angleRad) {
    return (insideRadiusMm(thicknessMm) + thicknessMm / 2) * Math.tan(angleRad / 2);
  }

  /** Returns what to take off the outside lengths of the legs of a fold, mm. */
  public static double deductionMm(double thicknessMm, double angleRad) {
    return TubeBend.sheetDeductionMm(
        insideRadiusMm(thicknessMm), thicknessMm, NEUTRAL_FACTOR, angleRad);
  }
}
