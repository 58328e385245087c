package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Stock;
import org.longlow.constraints.layout.Stock.Form;
import org.longlow.constraints.shape.Places;

/**
 * What pieces are to be cut from: all of one plan want the same.
 *
 * @param form what it is
 * @param material in the word of the layout, empty where none is said
 * @param grade of foam; empty of all else
 * @param diameterMm of tube, mm; else 0
 * @param thicknessMm of sheet, or the wall of tube, mm; 0 where nobody says it
 */
public record Wanted(
    Form form, String material, String grade, double diameterMm, double thicknessMm) {

  /** Sizes this near to each other are the same, mm. */
  private static final double SAME_MM = 0.05;

  static Wanted tube(TubeCut cut) {
    return new Wanted(
        Form.TUBE, cut.material(), "", rounded(cut.diameterMm()), rounded(cut.wallMm()));
  }

  static Wanted flat(FlatCut cut) {
    boolean foam = cut.material().equals(Material.FOAM.word());
    return new Wanted(
        foam ? Form.FOAM : Form.SHEET, cut.material(), cut.grade(), 0, rounded(cut.thicknessMm()));
  }

  /** What was solved is never the same to the last digit. */
  private static double rounded(double mm) {
    return Math.rint(mm * 1000) / 1000;
  }

  /** Returns its material, {@link Material#MIXED} where none is said. */
  Material of() {
    return Material.named(material).orElse(Material.MIXED);
  }

  /** Returns what it is, such as {@code steel tube Ø28 × 2 mm}. */
  public String words(SizeWords sizes) {
    String of = material.isEmpty() ? "" : material + " ";
    return switch (form) {
      case TUBE -> of + "tube Ø" + sizes.tube(diameterMm, thicknessMm);
      case SHEET -> sheet(of) + (thick() ? sizes.mm(thicknessMm) : "thickness not said");
      case FOAM -> "foam" + (grade.isEmpty() ? "" : " " + grade) + ", " + sizes.mm(thicknessMm);
    };
  }

  private String sheet(String of) {
    return material.isEmpty()
        ? "sheet, material not said, "
        : of + (wood() ? "" : thick() ? "sheet " : "sheet, ");
  }

  /** Returns whether anybody says how thick it is. */
  boolean thick() {
    return thicknessMm > 0;
  }

  private boolean wood() {
    return of() == Material.PLYWOOD;
  }

  /**
   * Returns the stock of a layout that says most of what is wanted: all that say as much; what is
   * usual where there is none.
   */
  List<Bought> stock(Layout layout, Places places) {
    List<Bought> best = new ArrayList<>();
    int most = -1;
    for (Map.Entry<String, Stock> e : layout.stock().entrySet()) {
      int says = says(e.getValue(), places);
      if (says > most) {
        best.clear();
        most = says;
      }
      if (says >= 0 && says == most) {
        best.add(Bought.of(e.getKey(), e.getValue(), of(), layout.units(), places));
      }
    }
    return best.isEmpty() ? List.of(Bought.usual(form, of(), layout.units())) : best;
  }

  /** Returns how much of what is wanted some stock says; less than 0 where it says otherwise. */
  private int says(Stock stock, Places places) {
    if (stock.form() != form) {
      return -1;
    }
    int says = 0;
    for (int one :
        new int[] {
          said(form == Form.FOAM ? "" : stock.material(), material),
          said(stock.grade(), grade),
          said(stock.diameter(), diameterMm, places),
          said(stock.wall(), thicknessMm, places),
          said(stock.thickness(), thicknessMm, places)
        }) {
      if (one < 0) {
        return -1;
      }
      says += one;
    }
    return says;
  }

  private static int said(String word, String wanted) {
    return word.isEmpty() ? 0 : word.equals(wanted) ? 1 : -1;
  }

  private static int said(Optional<Formula> size, double wantedMm, Places places) {
    return size.map(s -> Math.abs(places.value(s) - wantedMm) <= SAME_MM ? 1 : -1).orElse(0);
  }
}
