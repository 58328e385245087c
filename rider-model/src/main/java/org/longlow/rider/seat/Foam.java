package org.longlow.rider.seat;

import java.util.Locale;
import org.longlow.rider.geom.OutOfRange;

/**
 * A foam as a one-dimensional material: compressive stress against strain.
 *
 * <p>One law for every foam, strain ε = compression / free thickness in [0, εD):
 *
 * <pre>
 * σ(ε)  = A (1 − exp(−ε/εc)) + B ε / (εD − ε)
 * σ'(ε) = (A/εc) exp(−ε/εc) + B εD / (εD − ε)²
 * </pre>
 *
 * <p>Strictly increasing for A, B ≥ 0 with A + B &gt; 0. The form joins the collapse plateau and
 * the densification of Gibson and Ashby, <i>Cellular Solids</i>, 2nd ed. 1997, ch. 5 (from memory)
 * with the gas term of closed cells (Mills, <i>Polymer Foams Handbook</i>, 2007, from memory).
 *
 * @param kind what the foam is; a {@link Kind#MEMORY} foam counts as fully collapsed under load
 * @param aPa plateau term A, Pa, ≥ 0
 * @param bPa hardening term B, Pa, ≥ 0
 * @param kneeStrain εc, strain at which the plateau is reached, &gt; 0
 * @param lockStrain εD, strain at which the foam is solid, in (0, 1)
 */
public record Foam(Kind kind, double aPa, double bPa, double kneeStrain, double lockStrain) {

  /** What sort of foam a layer is. */
  public enum Kind {
    /** Open-cell polyurethane and its like. */
    OPEN_CELL,
    /** Closed-cell polyethylene, EVA, neoprene: firm, hardly any travel at seat pressures. */
    CLOSED_CELL,
    /** Slow-recovery foam: yields under a held load, so no support is counted on. */
    MEMORY
  }

  /** Density of solid polyurethane, kg/m³; Gibson and Ashby 1997, from memory. */
  public static final double SOLID_POLYURETHANE_KG_M3 = 1200;

  /** Density of solid polyethylene and EVA, kg/m³; from memory. */
  public static final double SOLID_POLYETHYLENE_KG_M3 = 930;

  /** Knee strain εc of open-cell foam, 1; own fit, changes sink by about 1.5 % per 0.05. */
  public static final double OPEN_KNEE = 0.10;

  /** Knee strain εc of closed-cell foam, 1; own fit. */
  public static final double CLOSED_KNEE = 0.05;

  /** Pressure of the gas in closed cells, Pa: one standard atmosphere. */
  public static final double ATMOSPHERE_PA = 101_325;

  /** Diameter of the indentor of the IFD test, mm; ASTM D3574 test B1 (8 in). */
  public static final double INDENTOR_DIAMETER_MM = 203.2;

  /**
   * Area of that indentor, mm²: 32429.28. Sheets print 323 cm² (50 in²), which is 0.4 % less than
   * the disc.
   */
  public static final double INDENTOR_AREA_MM2 =
      Math.PI / 4 * INDENTOR_DIAMETER_MM * INDENTOR_DIAMETER_MM;

  /** Thickness of the IFD specimen, mm; ASTM D3574 (100 mm nominal). */
  public static final double SPECIMEN_MM = 100;

  /**
   * Share by which foam beside the plate adds to its load, per thickness / diameter, 1; own
   * axisymmetric finite-element run of the IFD test. The largest uncertainty of the chain: k may be
   * 1.2 to 1.6 where this gives 1.44.
   */
  public static final double EDGE_SLOPE = 0.9;

  /**
   * What worn or long-sat foam still carries of its stress, 1: fatigue of 15 %, common practice;
   * classes of fatigue in BS 3379 let hardness fall by 12 to 45 % (from memory).
   */
  public static final double WORN_SHARE = 0.85;

  private static final double KNOWN_OPEN = 0.75;
  private static final double KNOWN_CLOSED = 0.50;

  /** Strain counted for a memory layer under a rider, 1; common practice, no source. */
  public static final double MEMORY_STRAIN = 0.8;

  private static final double RELATIVE_LOCK = 1.4;
  private static final double GAUGE_25 = 0.25;
  private static final double GAUGE_65 = 0.65;

  public Foam {
    if (kind == null) {
      throw new IllegalArgumentException("foam needs a kind, got none");
    }
    check("foam plateau A", aPa, aPa >= 0, "≥ 0 Pa");
    check("foam hardening B", bPa, bPa >= 0, "≥ 0 Pa");
    check("foam A + B", aPa + bPa, aPa + bPa > 0, "> 0 Pa");
    check("foam knee strain", kneeStrain, kneeStrain > 0, "> 0");
    check("foam lock-up strain", lockStrain, lockStrain > 0 && lockStrain < 1, "in (0, 1)");
  }

  /**
   * Returns open-cell foam from the figures on a supplier's sheet.
   *
   * @param densityKgM3 density, kg/m³, in [10, 300]
   * @param ifd25N indentation force at 25 % of a 100 mm sample (ASTM D3574 B1), N, &gt; 0
   * @param supportFactor IFD at 65 % over IFD at 25 %, 1, &gt; 1; load-bearing foam 1.8 to 3.5
   * @throws IllegalArgumentException if a figure is out of range, or if no foam of this law has
   *     that support factor (A or B would be negative)
   */
  public static Foam openCell(double densityKgM3, double ifd25N, double supportFactor) {
    return fromIfd(Kind.OPEN_CELL, densityKgM3, ifd25N, supportFactor);
  }

  /**
   * Returns slow-recovery foam; its curve is that of its sheet, but {@link FoamStack} counts it as
   * compressed to {@link #MEMORY_STRAIN} under any rider.
   */
  public static Foam memory(double densityKgM3, double ifd25N, double supportFactor) {
    return fromIfd(Kind.MEMORY, densityKgM3, ifd25N, supportFactor);
  }

  private static Foam fromIfd(Kind kind, double densityKgM3, double ifd25N, double supportFactor) {
    check("densityKgM3", densityKgM3, densityKgM3 >= 10 && densityKgM3 <= 300, "10 to 300 kg/m³");
    check("ifd25N", ifd25N, ifd25N > 0 && ifd25N <= 20_000, "above 0 to 20000 N");
    check(
        "supportFactor", supportFactor, supportFactor > 1 && supportFactor <= 10, "above 1 to 10");
    double k = 1 + EDGE_SLOPE * SPECIMEN_MM / INDENTOR_DIAMETER_MM;
    double stress25 = ifd25N / (INDENTOR_AREA_MM2 * 1e-6 * k);
    double lock = 1 - RELATIVE_LOCK * densityKgM3 / SOLID_POLYURETHANE_KG_M3;
    return anchored(kind, stress25, supportFactor * stress25, OPEN_KNEE, lock, supportFactor);
  }

  private static Foam anchored(
      Kind kind, double s25, double s65, double knee, double lock, double supportFactor) {
    double f25 = 1 - Math.exp(-GAUGE_25 / knee);
    double f65 = 1 - Math.exp(-GAUGE_65 / knee);
    double g25 = GAUGE_25 / (lock - GAUGE_25);
    double g65 = GAUGE_65 / (lock - GAUGE_65);
    if (!(lock > GAUGE_65)) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "foam of this density is solid at %.0f %% strain and cannot reach the 65 %% gauge"
                  + " point; give a lower densityKgM3",
              100 * lock));
    }
    double determinant = f25 * g65 - f65 * g25;
    double a = (s25 * g65 - s65 * g25) / determinant;
    double b = (f25 * s65 - f65 * s25) / determinant;
    if (a < 0 || b < 0) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "supportFactor %s does not fit this density: allowed %.3f to %.3f;"
                  + " check it against the supplier's sheet",
              Double.toString(supportFactor),
              f65 / f25,
              g65 / g25));
    }
    return new Foam(kind, a, b, knee, lock);
  }

  /**
   * Returns closed-cell foam: cell-wall stress plus the gas in the cells.
   *
   * @param densityKgM3 density, kg/m³, in [10, polymer density)
   * @param wallStressKPa cell-wall term σ0, kPa, ≥ 0 (cross-linked PE, from memory: 5 at 30 kg/m³,
   *     8 at 45, 14 at 70, 25 at 100)
   * @param polymerDensityKgM3 density of the solid polymer, kg/m³, in [500, 2500] (930 PE and EVA,
   *     1200 to 1250 neoprene)
   * @throws IllegalArgumentException if a figure is out of range
   */
  public static Foam closedCell(
      double densityKgM3, double wallStressKPa, double polymerDensityKgM3) {
    check(
        "polymerDensityKgM3",
        polymerDensityKgM3,
        polymerDensityKgM3 >= 500 && polymerDensityKgM3 <= 2500,
        "500 to 2500 kg/m³");
    check(
        "densityKgM3",
        densityKgM3,
        densityKgM3 >= 10 && densityKgM3 < polymerDensityKgM3,
        "10 kg/m³ to below polymerDensityKgM3");
    check(
        "wallStressKPa",
        wallStressKPa,
        wallStressKPa >= 0 && wallStressKPa <= 10_000,
        "0 to 10000 kPa");
    return new Foam(
        Kind.CLOSED_CELL,
        wallStressKPa * 1000,
        ATMOSPHERE_PA,
        CLOSED_KNEE,
        1 - densityKgM3 / polymerDensityKgM3);
  }

  /**
   * Returns the strain up to which the law is known, 1: 0.75 for open cells, the deepest stroke of
   * the standard tests (pre-flex of ASTM D3574), 0.50 for closed cells; common practice.
   */
  public double knownStrain() {
    return kind == Kind.CLOSED_CELL ? KNOWN_CLOSED : KNOWN_OPEN;
  }

  /** Returns this foam after hard use: A and B times {@link #WORN_SHARE}. */
  public Foam worn() {
    return new Foam(kind, WORN_SHARE * aPa, WORN_SHARE * bPa, kneeStrain, lockStrain);
  }

  /**
   * Returns the stress at a strain.
   *
   * @param strain in [0, lockStrain)
   * @return Pa, ≥ 0
   */
  public double stressPa(double strain) {
    if (!(strain >= 0 && strain < lockStrain)) {
      throw new OutOfRange("strain must be in [0, " + lockStrain + "), got " + strain);
    }
    return rawStress(strain);
  }

  /** Returns dσ/dε at a strain in [0, lockStrain), Pa. */
  public double slopePa(double strain) {
    double gap = lockStrain - strain;
    return aPa / kneeStrain * Math.exp(-strain / kneeStrain) + bPa * lockStrain / (gap * gap);
  }

  /**
   * Returns the strain at a stress, the inverse of {@link #stressPa}.
   *
   * @param stressPa Pa, ≥ 0, finite
   * @return strain in [0, lockStrain), to the last digits of a double
   */
  public double strainAt(double stressPa) {
    return strainAt(stressPa, firstGuess(stressPa));
  }

  /** As {@link #strainAt(double)}, starting from a strain that is already near. */
  double strainAt(double stressPa, double guess) {
    if (!(stressPa >= 0) || stressPa == Double.POSITIVE_INFINITY) {
      throw new OutOfRange("stress must be finite and ≥ 0 Pa, got " + stressPa);
    }
    if (stressPa == 0) {
      return 0;
    }
    double low = 0;
    double high = lockStrain;
    double e = guess > 0 && guess < lockStrain ? guess : 0.5 * lockStrain;
    for (int i = 0; i < 200; i++) {
      double gap = lockStrain - e;
      double decay = Math.exp(-e / kneeStrain);
      double miss = aPa * (1 - decay) + bPa * e / gap - stressPa;
      if (miss > 0) {
        high = e;
      } else {
        low = e;
      }
      double next = e - miss / (aPa / kneeStrain * decay + bPa * lockStrain / (gap * gap));
      if (!(next > low && next < high)) {
        next = 0.5 * (low + high);
      }
      if (Math.abs(next - e) <= 4e-16 * lockStrain || next == low || next == high) {
        return Math.min(next, Math.nextDown(lockStrain));
      }
      e = next;
    }
    return e;
  }

  private double firstGuess(double stressPa) {
    double above = stressPa - aPa;
    if (above > 0 && bPa > 0) {
      return lockStrain * above / (above + bPa);
    }
    return Math.min(0.5 * lockStrain, stressPa / slopePa(0));
  }

  private double rawStress(double strain) {
    return aPa * (1 - Math.exp(-strain / kneeStrain)) + bPa * strain / (lockStrain - strain);
  }

  private static void check(String name, double value, boolean fits, String allowed) {
    if (!fits || !Double.isFinite(value)) {
      throw new OutOfRange(name + " must be " + allowed + ", got " + value);
    }
  }
}
