package org.longlow.sketcher.shop;

import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Stock;
import org.longlow.constraints.layout.Stock.Form;
import org.longlow.constraints.layout.UsualStock;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/**
 * Stock as it is bought: what the layout says of it, and what is usual where it says nothing.
 *
 * @param name in the layout; empty where it has none that fits
 * @param form what it is
 * @param longMm length of a bar or sheet, mm
 * @param wideMm width of a sheet, mm; 0 of a bar
 * @param kerfMm what one cut takes away, mm
 * @param extraMm added to a length of tube, or all round a piece of sheet, mm
 * @param grained whether pieces with a grain keep it along the sheet
 * @param sized whether the layout says how long it is
 * @param price for one unit of {@code per}
 * @param per what the price is for
 */
public record Bought(
    String name,
    Form form,
    double longMm,
    double wideMm,
    double kerfMm,
    double extraMm,
    boolean grained,
    boolean sized,
    OptionalDouble price,
    Stock.Per per) {

  private static final double FOOT_MM = 12 * Units.INCH_MM;

  static Bought usual(Form form, Material material, Units units) {
    UsualStock usual = UsualStock.of(form, material, units);
    return new Bought(
        "",
        form,
        usual.longMm(),
        usual.wideMm(),
        usual.kerfMm(),
        usual.extraMm(),
        usual.grained(),
        false,
        OptionalDouble.empty(),
        Stock.Per.PIECE);
  }

  static Bought of(String name, Stock said, Material material, Units units, Places places) {
    UsualStock usual = UsualStock.of(said.form(), material, units);
    return new Bought(
        name,
        said.form(),
        value(said.length(), places, usual.longMm()),
        said.form() == Form.TUBE ? 0 : value(said.width(), places, usual.wideMm()),
        value(said.kerf(), places, usual.kerfMm()),
        value(said.extra(), places, usual.extraMm()),
        said.grain().map(g -> g == Stock.Grain.ALONG).orElse(usual.grained()),
        said.length().isPresent(),
        said.price().isPresent()
            ? OptionalDouble.of(places.value(said.price().get()))
            : OptionalDouble.empty(),
        said.per());
  }

  private static double value(Optional<Formula> said, Places places, double usual) {
    return said.map(places::value).orElse(usual);
  }

  /** Returns how much of it one bar or sheet is: mm of tube, mm² of sheet. */
  double size() {
    return form == Form.TUBE ? longMm : longMm * wideMm;
  }

  /**
   * Returns what so much of it costs, NaN where that is not known.
   *
   * @param pieces bars or sheets; 0 of what is not bought in such
   * @param size mm of tube, mm² of sheet, all together
   * @param massKg all together, NaN where not known
   */
  double cost(int pieces, double size, double massKg) {
    if (price.isEmpty()) {
      return Double.NaN;
    }
    boolean tube = form == Form.TUBE;
    double much =
        switch (per) {
          case PIECE -> pieces > 0 ? pieces : Double.NaN;
          case METRE -> tube ? size / 1000 : Double.NaN;
          case FOOT -> tube ? size / FOOT_MM : Double.NaN;
          case SQUARE_METRE -> tube ? Double.NaN : size / 1e6;
          case SQUARE_FOOT -> tube ? Double.NaN : size / (FOOT_MM * FOOT_MM);
          case KILOGRAM -> massKg;
          case POUND -> massKg * Units.IN.factor(FigureSort.MASS);
        };
    return much * price.getAsDouble();
  }
}
