package org.longlow.constraints.machine.chassis;

import java.util.List;
import java.util.OptionalInt;
import org.longlow.constraints.machine.Values;

/**
 * A tyre size designation and the nominal dimensions that follow from it.
 *
 * <p>Metric sizes (ISO 5751, ETRTO section M): section height is width times aspect ratio, rim
 * diameter is exactly 25.4 mm per code unit. A real tyre may differ by about +4/−3 % of the section
 * height in radius and +4 to +10 % in width (UN R75, from memory): prefer a measured figure.
 *
 * <p>Alphabetic and inch sizes carry {@link #nearEquivalent()}: their tabulated dimensions were not
 * at hand and the figures are conversions, good to about 5 mm.
 *
 * @param designation the size in its usual spelling, such as {@code 120/70 R17}
 * @param series which way of writing sizes it follows
 * @param construction radial, bias-belted or diagonal
 * @param widthMm nominal section width, mm
 * @param sectionHeightMm nominal section height, mm
 * @param rimCode rim diameter code (inches by name)
 * @param loadIndex the number behind the size, such as 58 of 58W, if it was written; {@link
 *     LoadIndex} says what it carries
 */
public record TyreSize(
    String designation,
    Series series,
    Construction construction,
    double widthMm,
    double sectionHeightMm,
    int rimCode,
    OptionalInt loadIndex) {

  /** Millimetres of rim diameter per code unit. */
  public static final double MM_PER_CODE = 25.4;

  /** The three ways of writing a motorcycle tyre size. */
  public enum Series {
    /** Width in mm, aspect ratio, rim code: 180/55 R17. */
    METRIC,
    /** Width letter, aspect ratio, rim code: MT90-16. */
    ALPHABETIC,
    /** Width in inches, rim code: 3.50-18. */
    INCH
  }

  /** How the carcass is built, as the letter before the rim code tells. */
  public enum Construction {
    RADIAL,
    BIAS_BELTED,
    DIAGONAL
  }

  /**
   * What a text was read as: a size, or every reason why not.
   *
   * @param size the size, null if there are faults
   * @param faults one line a fault, empty if the size was understood
   */
  public record Reading(TyreSize size, List<String> faults) {
    public Reading {
      faults = List.copyOf(faults);
      if ((size == null) == faults.isEmpty()) {
        throw new IllegalArgumentException("a reading has either a size or faults");
      }
    }
  }

  public TyreSize {
    Values.positive("tyre width mm", widthMm);
    Values.positive("section height mm", sectionHeightMm);
    Values.positive("rim code", rimCode);
  }

  TyreSize withLoadIndex(OptionalInt index) {
    return new TyreSize(
        designation, series, construction, widthMm, sectionHeightMm, rimCode, index);
  }

  /** Returns the nominal rim diameter, 25.4 mm per code unit. */
  public double rimDiameterMm() {
    return MM_PER_CODE * rimCode;
  }

  /** Returns the nominal overall diameter: rim plus two section heights. */
  public double diameterMm() {
    return rimDiameterMm() + 2 * sectionHeightMm;
  }

  /** Returns half of {@link #diameterMm()}. */
  public double freeRadiusMm() {
    return diameterMm() / 2;
  }

  /** Returns the first estimate of the crown radius, half the width (a round profile). */
  public double sectionRadiusMm() {
    return widthMm / 2;
  }

  /** Returns true if the dimensions are a conversion and not the size's own. */
  public boolean nearEquivalent() {
    return series != Series.METRIC;
  }

  /** Returns the tyre with these nominal dimensions. */
  public Tyre tyre() {
    return new Tyre(freeRadiusMm(), widthMm, sectionRadiusMm(), nearEquivalent());
  }
}
