package org.longlow.constraints.layout;

import org.longlow.rider.words.Units;

/**
 * What stock is like where the layout does not say: common practice, from memory; dealers differ.
 * Where inches are shown it is what is sold there.
 *
 * @param longMm length of a bar or sheet, mm
 * @param wideMm width of a sheet, mm; 0 of a bar
 * @param kerfMm what one cut takes away, mm
 * @param extraMm added to a length of tube, or all round a piece of sheet, mm
 * @param grained whether it has a grain that pieces keep
 */
public record UsualStock(
    double longMm, double wideMm, double kerfMm, double extraMm, boolean grained) {

  /** Bars of round tube, mm: 6 m; 20 ft where inches are shown. */
  private static final double BAR_MM = 6000;

  private static final double BAR_FT_MM = 20 * 12 * Units.INCH_MM;

  /** A sheet of 8 x 4 ft, mm. */
  private static final double SHEET_FT_LONG_MM = 96 * Units.INCH_MM;

  private static final double SHEET_FT_WIDE_MM = 48 * Units.INCH_MM;

  /** An abrasive cutting-off wheel or a cold saw takes 2 to 3 mm. */
  private static final double TUBE_KERF_MM = 3;

  /** A circular saw in plywood takes 2.5 to 3 mm. */
  private static final double WOOD_KERF_MM = 3;

  /** A jigsaw or a thin wheel in sheet metal and plastics takes 1.5 to 2 mm. */
  private static final double SHEET_KERF_MM = 2;

  /** Foam is cut larger, so that the cover pulls it in: 5 to 10 mm all round. */
  public static final double FOAM_EXTRA_MM = 10;

  /** Returns what is usual for tube. */
  public static UsualStock tube(Units units) {
    return new UsualStock(units == Units.IN ? BAR_FT_MM : BAR_MM, 0, TUBE_KERF_MM, 0, false);
  }

  /** Returns what is usual for sheet of a material. */
  public static UsualStock sheet(Material material, Units units) {
    boolean wood = material == Material.PLYWOOD;
    double kerf = wood ? WOOD_KERF_MM : SHEET_KERF_MM;
    if (units == Units.IN) {
      return new UsualStock(SHEET_FT_LONG_MM, SHEET_FT_WIDE_MM, kerf, 0, wood);
    }
    return switch (material) {
      case PLYWOOD -> new UsualStock(2440, 1220, kerf, 0, true);
      case POLYCARBONATE -> new UsualStock(3050, 2050, kerf, 0, false);
      default -> new UsualStock(2000, 1000, kerf, 0, false);
    };
  }

  /** Returns what is usual for foam, which a knife cuts. */
  public static UsualStock foam(Units units) {
    return units == Units.IN
        ? new UsualStock(72 * Units.INCH_MM, 36 * Units.INCH_MM, 0, FOAM_EXTRA_MM, false)
        : new UsualStock(2000, 1000, 0, FOAM_EXTRA_MM, false);
  }

  /** Returns what is usual for stock of a form. */
  public static UsualStock of(Stock.Form form, Material material, Units units) {
    return switch (form) {
      case TUBE -> tube(units);
      case SHEET -> sheet(material, units);
      case FOAM -> foam(units);
    };
  }
}
