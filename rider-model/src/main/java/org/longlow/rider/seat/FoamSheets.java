package org.longlow.rider.seat;

import java.util.Locale;
import org.longlow.rider.geom.OutOfRange;

/** Foam from figures that data sheets give in place of IFD and cell-wall stress. */
public final class FoamSheets {

  /**
   * What is left of compression stress at 40 % (CV40, ISO 3386-1) once it is held, 1: CV40 is read
   * while the plate moves, 10 to 15 % less after half a minute. From memory.
   */
  public static final double HELD_SHARE = 0.87;

  private static final double GAUGE_25 = 0.25;
  private static final double GAUGE_40 = 0.40;

  /** Any IFD, N: only the shape of the curve is taken from foam that has it. */
  private static final double UNIT_IFD_N = 100;

  private FoamSheets() {}

  /**
   * Returns open-cell foam by its compression stress: {@link #HELD_SHARE} of it at 40 % strain, and
   * 65 % over 25 % stress as the support factor says.
   *
   * @param densityKgM3 as {@link Foam#openCell}
   * @param cv40KPa compression stress at 40 % (CV40, ISO 3386-1), kPa, in (0, 100]
   * @param supportFactor as {@link Foam#openCell}
   * @throws OutOfRange if a figure is out of range
   */
  public static Foam openCellByCv40(double densityKgM3, double cv40KPa, double supportFactor) {
    check("cv40KPa", cv40KPa, cv40KPa > 0 && cv40KPa <= 100, "above 0 to 100 kPa");
    Foam like = Foam.openCell(densityKgM3, UNIT_IFD_N, supportFactor);
    return scaled(like, HELD_SHARE * cv40KPa * 1000 / like.stressPa(GAUGE_40));
  }

  /**
   * Returns closed-cell foam by its stress at 25 % deflection, which ASTM D1056 grades it by: what
   * the gas in the cells does not carry their walls do. Where the gas alone would carry more, cells
   * are taken as partly open and the gas as that much less; judgement.
   *
   * @param densityKgM3 as {@link Foam#closedCell}
   * @param stress25KPa stress at 25 % deflection, kPa, in (0, 1000]; D1056 grade 2x1 14 to 34, 2x2
   *     34 to 62, 2x3 62 to 90, 2x4 90 to 117, 2x5 117 to 172
   * @param polymerDensityKgM3 as {@link Foam#closedCell}
   * @throws OutOfRange if a figure is out of range
   */
  public static Foam closedCellByStress25(
      double densityKgM3, double stress25KPa, double polymerDensityKgM3) {
    check(
        "stress25KPa", stress25KPa, stress25KPa > 0 && stress25KPa <= 1000, "above 0 to 1000 kPa");
    Foam gas = Foam.closedCell(densityKgM3, 0, polymerDensityKgM3);
    if (!(gas.lockStrain() > GAUGE_25)) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "closed-cell foam of this density is solid at %.0f %% strain and is not graded at"
                  + " 25 %%; give a lower densityKgM3",
              100 * gas.lockStrain()));
    }
    double stress = stress25KPa * 1000;
    double carried = gas.stressPa(GAUGE_25);
    if (carried >= stress) {
      return scaled(gas, stress / carried);
    }
    double walls = (stress - carried) / (1 - Math.exp(-GAUGE_25 / gas.kneeStrain()));
    return Foam.closedCell(densityKgM3, walls / 1000, polymerDensityKgM3);
  }

  /** Returns the IFD at 25 % of 100 mm of a foam, N. */
  public static double ifd25N(Foam foam) {
    return indentN(foam.stressPa(GAUGE_25), Foam.SPECIMEN_MM);
  }

  /** Returns the compression stress at 40 % (CV40) of a foam, kPa. */
  public static double cv40KPa(Foam foam) {
    return foam.stressPa(GAUGE_40) / HELD_SHARE / 1000;
  }

  /** Returns the force on the disc of the IFD test over a slab on a board, N. */
  static double indentN(double stressPa, double thicknessMm) {
    return stressPa * Foam.INDENTOR_AREA_MM2 * 1e-6 * edge(thicknessMm);
  }

  /** By how much foam beside the disc adds to its force, 1. */
  private static double edge(double thicknessMm) {
    return 1 + Foam.EDGE_SLOPE * thicknessMm / Foam.INDENTOR_DIAMETER_MM;
  }

  private static Foam scaled(Foam foam, double by) {
    return new Foam(
        foam.kind(), by * foam.aPa(), by * foam.bPa(), foam.kneeStrain(), foam.lockStrain());
  }

  static void check(String name, double value, boolean fits, String allowed) {
    if (!fits || !Double.isFinite(value)) {
      throw new OutOfRange(name + " must be " + allowed + ", got " + value);
    }
  }
}
