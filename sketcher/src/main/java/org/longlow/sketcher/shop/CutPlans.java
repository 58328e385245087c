package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.machine.shop.BarPlan;
import org.longlow.constraints.machine.shop.SheetPlan;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;

/**
 * Cutting plans of a machine.
 *
 * @param plans one for each material and size, tube first * @param shaped what no plan is made for,
 *     since it is laid up, bent two ways or cannot be folded as drawn, or nobody says how thick it
 *     is
 * @param nothing pieces that leave nothing to cut as they are drawn, by name
 */
public record CutPlans(List<CutPlan> plans, List<Shaped> shaped, List<String> nothing) {

  /** Densities are kg/mm³ inside. */
  private static final double MM3_PER_M3 = 1e9;

  /**
   * What is bought by area.
   *
   * @param wanted material and thickness
   * @param stock of the layout, for its price
   * @param areaMm2 net, all pieces together, mm²
   * @param parts of which it is
   * @param massKg NaN where density or thickness is not known
   */
  public record Shaped(
      Wanted wanted, Bought stock, double areaMm2, List<String> parts, double massKg) {
    public Shaped {
      parts = List.copyOf(parts);
    }

    /** Returns what it costs; NaN where that is not known. */
    public double cost() {
      return stock.cost(0, areaMm2, massKg);
    }
  }

  public CutPlans {
    plans = List.copyOf(plans);
    shaped = List.copyOf(shaped);
    nothing = List.copyOf(nothing);
  }

  /** Returns the plans for all that is cut. */
  public static CutPlans of(Study study, Cuts cuts) {
    Layout layout = study.layout();
    Places places = study.placed().places();
    List<CutPlan> plans = new ArrayList<>();
    Map<Wanted, List<CutPlan.Length>> tubes = new LinkedHashMap<>();
    List<String> nothing = new ArrayList<>();
    for (TubeCut cut : cuts.tubes()) {
      if (!(cut.lengthMm() > 0 && Double.isFinite(cut.lengthMm()))) {
        nothing.add(cut.part().name());
        continue;
      }
      List<CutPlan.Length> of = tubes.computeIfAbsent(Wanted.tube(cut), w -> new ArrayList<>());
      for (int i = 0; i < cut.pieces(); i++) {
        of.add(new CutPlan.Length(cut.part().name(), cut.lengthMm()));
      }
    }
    tubes.forEach(
        (wanted, pieces) ->
            plans.add(
                best(
                    wanted.stock(layout, places).stream()
                        .map(stock -> bars(wanted, stock, pieces))
                        .toList())));
    Map<Wanted, List<FlatCut>> flat = new LinkedHashMap<>();
    for (FlatCut c : Stream.concat(cuts.flat().stream(), cuts.foam().stream()).toList()) {
      if (c.isSomething()) {
        flat.computeIfAbsent(Wanted.flat(c), w -> new ArrayList<>()).add(c);
      } else {
        nothing.add(c.label());
      }
    }
    List<Shaped> shaped = new ArrayList<>();
    flat.forEach(
        (wanted, all) -> {
          List<Bought> stock = wanted.stock(layout, places);
          boolean laidUp =
              wanted.of() == Material.LAMINATE && stock.stream().noneMatch(Bought::sized);
          List<FlatCut> nested = all.stream().filter(c -> c.flat() && !laidUp).toList();
          List<FlatCut> rest = all.stream().filter(c -> !nested.contains(c)).toList();
          double density = density(study, wanted);
          if (!nested.isEmpty()) {
            plans.add(best(stock.stream().map(s -> sheets(wanted, s, nested, density)).toList()));
          }
          if (!rest.isEmpty()) {
            double area = rest.stream().mapToDouble(c -> c.pieces() * c.areaMm2()).sum();
            shaped.add(
                new Shaped(
                    wanted,
                    stock.get(0),
                    area,
                    rest.stream().map(FlatCut::part).distinct().toList(),
                    wanted.thick() ? area * wanted.thicknessMm() * density * 1e-9 : Double.NaN));
          }
        });
    return new CutPlans(plans, shaped, nothing);
  }

  /** The plan that leaves least out, then is cheapest, then buys least. */
  private static CutPlan best(List<CutPlan> plans) {
    boolean priced = plans.stream().noneMatch(p -> Double.isNaN(p.cost()));
    return plans.stream()
        .min(
            Comparator.comparingInt((CutPlan p) -> p.tooLarge().size())
                .thenComparingDouble(p -> priced ? p.cost() : 0)
                .thenComparingDouble(CutPlan::bought))
        .orElseThrow();
  }

  private static CutPlan bars(Wanted wanted, Bought stock, List<CutPlan.Length> pieces) {
    BarPlan plan =
        BarPlan.of(
            pieces.stream().map(p -> p.lengthMm() + stock.extraMm()).toList(),
            stock.longMm(),
            stock.kerfMm());
    double inner = wanted.diameterMm() - 2 * wanted.thicknessMm();
    double section = Math.PI / 4 * (wanted.diameterMm() * wanted.diameterMm() - inner * inner);
    double kg = plan.bars().size() * stock.longMm() * section * wanted.of().densityKgM3() * 1e-9;
    return new CutPlan.Bars(wanted, stock, pieces, plan, kg);
  }

  private static CutPlan sheets(
      Wanted wanted, Bought stock, List<FlatCut> cuts, double densityKgM3) {
    List<CutPlan.Area> pieces = new ArrayList<>();
    for (FlatCut cut : cuts) {
      for (int i = 0; i < cut.pieces(); i++) {
        pieces.add(
            new CutPlan.Area(
                cut.label(),
                cut.longMm() + 2 * stock.extraMm(),
                cut.wideMm() + 2 * stock.extraMm(),
                cut.grained(),
                cut.areaMm2(),
                cut.outline()));
      }
    }
    SheetPlan plan =
        SheetPlan.of(
            pieces.stream()
                .map(
                    p ->
                        new SheetPlan.Piece(
                            p.longMm(), p.wideMm(), !(p.grained() && stock.grained())))
                .toList(),
            stock.longMm(),
            stock.wideMm(),
            stock.kerfMm());
    double kg = plan.sheets().size() * stock.size() * wanted.thicknessMm() * densityKgM3 * 1e-9;
    return new CutPlan.Sheets(wanted, stock, pieces, plan, kg);
  }

  /** Foam has the density of its layer, if all of that grade have the same. */
  private static double density(Study study, Wanted wanted) {
    if (wanted.of() != Material.FOAM) {
      return wanted.of().densityKgM3();
    }
    Places places = study.placed().places();
    List<Double> said =
        study
            .layout()
            .parts(CushionPart.class)
            .flatMap(c -> c.layers().stream())
            .filter(l -> l.name().equals(wanted.grade()))
            .map(FoamSpec::density)
            .map(density -> places.value(density) * MM3_PER_M3)
            .distinct()
            .toList();
    return said.size() == 1 ? said.get(0) : Double.NaN;
  }
}
