package org.longlow.constraints.seat;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;

/**
 * A grade of foam as traded: figures to begin with until the data sheet of the foam is at hand.
 *
 * @param name what it is called
 * @param foam its figures, with a thickness to begin with
 * @param use what it is commonly used for, in words
 * @param status how well its least known figure is known
 * @param source where the figures come from, in words
 */
public record FoamGrade(String name, FoamSpec foam, String use, Status status, String source) {

  /** How well the figures of a grade are known, best first. */
  public enum Status {
    /** Each figure stands on a trade page that was read. */
    PUBLISHED("published"),
    /** Commonly used; at least one figure has no source. */
    PRACTICE("common practice"),
    /** At least one figure is from memory of handbooks. */
    MEMORY("from memory");

    private final String words;

    Status(String words) {
      this.words = words;
    }

    /** Returns the status in words. */
    public String words() {
      return words;
    }

    static Status named(String word) {
      return valueOf(word.toUpperCase(Locale.ROOT));
    }
  }

  /** A grade that is used thin is no thicker than this, mm; judgement. */
  static final double THIN_MM = 20;

  /**
   * Returns whether its use lets it lie there; whoever sits on a single layer sits on its top.
   *
   * @param at 0 at the top
   * @param layers how many the cushion has
   */
  public boolean belongs(CushionPart.Role role, int at, int layers, double thickMm) {
    List<String> uses = List.of(use.split(",\\s*"));
    if (uses.contains("thin") && thickMm > THIN_MM) {
      return false;
    }
    String where = at == 0 ? "top" : at == layers - 1 ? "base" : "middle";
    String of = role == CushionPart.Role.PAN ? "pan" : "back";
    return uses.contains(of)
        || uses.contains(where + " of a " + of)
        || where.equals("base") && uses.contains("base")
        || role == CushionPart.Role.HEAD && uses.contains("head rest");
  }

  /** Returns a layer of this grade, as thick as said. */
  public FoamSpec layer(Formula thickness) {
    return foam.thick(thickness);
  }

  /** Returns its figures in words, such as {@code 45 kg/m³, 170 N, factor 2.5}. */
  public String figures(Units units) {
    return figures(foam, units);
  }

  /** Returns the figures of any foam as its document writes them, in the same words. */
  public static String figures(FoamSpec foam, Units units) {
    List<String> said = new ArrayList<>();
    said.add(said(foam.density(), Unit.KG_PER_M3, FigureSort.DENSITY, units));
    foam.ifd25().ifPresent(i -> said.add(said(i, Unit.NEWTON, FigureSort.FORCE, units)));
    foam.cv40().ifPresent(c -> said.add("CV40 " + pressure(c, units)));
    foam.supportFactor().ifPresent(f -> said.add("factor " + f.text()));
    foam.wallStress().ifPresent(w -> said.add("cell walls " + pressure(w, units)));
    foam.stress25().ifPresent(d -> said.add(pressure(d, units) + " at 25 %"));
    if (foam.test().isThere()) {
      said.add("own test of " + foam.test().presses().size() + " presses");
    }
    return String.join(", ", said);
  }

  private static String pressure(Formula stress, Units units) {
    return said(stress, Unit.KILOPASCAL, FigureSort.PRESSURE, units);
  }

  /** A data sheet's figure as it is written, or turned where it stands in other units. */
  private static String said(Formula formula, Unit metric, FigureSort shown, Units units) {
    boolean turned = units == Units.IN && formula.names().isEmpty();
    String said =
        turned ? units.says(metric.fromInternal(formula.evaluate(n -> 0)), shown) : formula.text();
    return said.replace("^3", "\u00b3");
  }

  /** Returns whether a layer has the figures of this grade, however thick it is and called. */
  public boolean isOf(FoamSpec layer) {
    return meaning(layer).equals(meaning(foam));
  }

  private static List<Object> meaning(FoamSpec foam) {
    return List.of(
        foam.closedCell(),
        foam.density().expr(),
        foam.ifd25().map(Formula::expr),
        foam.supportFactor().map(Formula::expr),
        foam.wallStress().map(Formula::expr),
        foam.cv40().map(Formula::expr),
        foam.stress25().map(Formula::expr),
        foam.test(),
        foam.polymerDensity().map(Formula::expr));
  }
}
