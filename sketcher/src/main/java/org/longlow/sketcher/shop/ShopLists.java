package org.longlow.sketcher.shop;

import static org.longlow.sketcher.shop.ShopTable.Column.area;
import static org.longlow.sketcher.shop.ShopTable.Column.count;
import static org.longlow.sketcher.shop.ShopTable.Column.length;
import static org.longlow.sketcher.shop.ShopTable.Column.mass;
import static org.longlow.sketcher.shop.ShopTable.Column.money;
import static org.longlow.sketcher.shop.ShopTable.Column.words;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.shop.BarPlan;
import org.longlow.constraints.machine.shop.SheetPlan;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.shop.ShopTable.Cell;

/** The lists of a machine: parts, materials, pieces, plans, foam. */
final class ShopLists {

  private ShopLists() {}

  private static Cell w(String words) {
    return Cell.of(words);
  }

  private static Cell f(double figure) {
    return Cell.of(figure);
  }

  static ShopTable parts(Study study) {
    Places places = study.placed().places();
    List<List<Cell>> rows = new ArrayList<>();
    for (PartShape shape : study.shapes().values()) {
      Part part = shape.part();
      rows.add(
          List.of(
              w(part.name()),
              w(part.kind()),
              w(part.base().material()),
              f(part.paired() ? 2 : 1),
              f(known(shape.massKg())),
              w(made(part)),
              f(part.base().purchase().price().map(places::value).orElse(Double.NaN)),
              w(part.base().note())));
    }
    return new ShopTable(
        "parts",
        "Parts",
        List.of(
            words("Part"),
            words("Kind"),
            words("Material"),
            count("Pieces"),
            mass("Mass of all"),
            words("Made"),
            money("Price of all"),
            words("Note")),
        rows);
  }

  /** Mass and thickness are more than nothing where anybody says them. */
  private static double known(double figure) {
    return figure > 0 ? figure : Double.NaN;
  }

  private static String made(Part part) {
    if (part instanceof FrontPart front && front.linked()) {
      return "bought, or legs and links by template";
    }
    return switch (part.traits().make()) {
      case BOUGHT -> "bought";
      case MADE -> "by template";
      case FITTED -> "by template, fitted";
      case TUBE -> "bent from tube";
      case FOAM -> "foam on a board";
      case SHEET -> "from sheet";
    };
  }

  /** What weighs how much by material; a part of several counts where its material says. */
  static ShopTable materials(Study study) {
    Map<String, double[]> of = new LinkedHashMap<>();
    for (PartShape shape : study.shapes().values()) {
      double[] sum =
          of.computeIfAbsent(shape.part().base().material(), m -> new double[] {0, 0, 0});
      sum[0]++;
      sum[1] += shape.massKg();
      sum[2] += shape.massKg() > 0 ? 0 : 1;
    }
    List<List<Cell>> rows = new ArrayList<>();
    of.forEach(
        (material, sum) ->
            rows.add(
                List.of(
                    w(material.isEmpty() ? "not said" : material),
                    f(sum[0]),
                    f(known(sum[1])),
                    f(sum[2]))));
    return new ShopTable(
        "materials",
        "Materials",
        List.of(
            words("Material"), count("Parts"), mass("Known mass"), count("Parts of unknown mass")),
        rows);
  }

  static ShopTable tubes(Cuts cuts) {
    List<List<Cell>> rows = new ArrayList<>();
    for (TubeCut cut : cuts.tubes()) {
      rows.add(
          List.of(
              w(cut.part().name()),
              f(cut.pieces()),
              f(cut.diameterMm()),
              f(cut.wallMm()),
              f(cut.lengthMm()),
              f(cut.bends().bends().size()),
              w(cut.material())));
    }
    return new ShopTable(
        "tubes",
        "Tubes",
        List.of(
            words("Tube"),
            count("Pieces"),
            length("Diameter"),
            length("Wall"),
            length("Cut length"),
            count("Bends"),
            words("Material")),
        rows);
  }

  static ShopTable barPlan(CutPlans plans, SizeWords sizes) {
    List<List<Cell>> rows = new ArrayList<>();
    for (CutPlan plan : plans.plans()) {
      if (plan instanceof CutPlan.Bars bars) {
        int number = 0;
        for (BarPlan.Bar bar : bars.plan().bars()) {
          number++;
          int cut = 0;
          for (int piece : bar.pieces()) {
            cut++;
            rows.add(
                List.of(
                    w(plan.wanted().words(sizes)),
                    f(plan.stock().longMm()),
                    f(number),
                    f(cut),
                    w(bars.pieces().get(piece).part()),
                    f(bars.pieces().get(piece).lengthMm() + plan.stock().extraMm()),
                    cut == bar.pieces().size() ? f(bar.leftMm()) : ShopTable.NONE));
          }
        }
      }
    }
    return new ShopTable(
        "bar-plan",
        "Which tube from which bar",
        List.of(
            words("Stock"),
            length("Bar"),
            count("Bar number"),
            count("Cut"),
            words("Part"),
            length("Length"),
            length("Left over")),
        rows);
  }

  static ShopTable sheetPieces(Cuts cuts) {
    List<List<Cell>> rows = new ArrayList<>();
    for (FlatCut cut : cuts.flat()) {
      rows.add(
          List.of(
              w(cut.part()),
              w(cut.what()),
              f(cut.pieces()),
              w(cut.material()),
              f(known(cut.thicknessMm())),
              f(cut.longMm()),
              f(cut.wideMm()),
              f(cut.areaMm2()),
              w(cut.grained() ? "along the length" : "")));
    }
    return new ShopTable(
        "sheet-pieces",
        "Pieces of sheet and plywood",
        List.of(
            words("Part"),
            words("Piece"),
            count("Pieces"),
            words("Material"),
            length("Thick"),
            length("Long"),
            length("Wide"),
            area("Area of one"),
            words("Grain")),
        rows);
  }

  static ShopTable sheetPlan(CutPlans plans, SizeWords sizes) {
    List<List<Cell>> rows = new ArrayList<>();
    for (CutPlan plan : plans.plans()) {
      if (plan instanceof CutPlan.Sheets sheets) {
        int number = 0;
        for (SheetPlan.Sheet sheet : sheets.plan().sheets()) {
          number++;
          for (SheetPlan.Laid laid : sheet.laid()) {
            CutPlan.Area piece = sheets.pieces().get(laid.piece());
            rows.add(
                List.of(
                    w(plan.wanted().words(sizes)),
                    f(number),
                    w(piece.part()),
                    f(laid.alongMm()),
                    f(laid.acrossMm()),
                    f(piece.longMm()),
                    f(piece.wideMm()),
                    w(laid.turned() ? "turned" : "")));
          }
        }
      }
    }
    return new ShopTable(
        "sheet-plan",
        "Which piece from which sheet",
        List.of(
            words("Stock"),
            count("Sheet number"),
            words("Piece"),
            length("Corner along"),
            length("Corner across"),
            length("Long"),
            length("Wide"),
            words("Lies")),
        rows);
  }

  /** Foam by grade and thickness. */
  static ShopTable foam(Cuts cuts, SizeWords sizes) {
    Map<Wanted, List<FlatCut>> grades = new LinkedHashMap<>();
    cuts.foam().forEach(c -> grades.computeIfAbsent(Wanted.flat(c), g -> new ArrayList<>()).add(c));
    List<List<Cell>> rows = new ArrayList<>();
    grades.forEach(
        (grade, of) ->
            rows.add(
                List.of(
                    w(grade.grade().isEmpty() ? "not said" : grade.grade()),
                    f(grade.thicknessMm()),
                    f(of.stream().mapToInt(FlatCut::pieces).sum()),
                    f(of.stream().mapToDouble(c -> c.pieces() * c.areaMm2()).sum()),
                    w(names(of.stream().map(FlatCut::part).toList())))));
    return new ShopTable(
        "foam",
        "Foam by grade",
        List.of(words("Grade"), length("Thick"), count("Pieces"), area("Net area"), words("For")),
        rows);
  }

  /** Returns each name once. */
  static String names(List<String> names) {
    Set<String> once = new LinkedHashSet<>(names);
    return String.join(", ", once);
  }

  /** Returns each name once, in order of letters. */
  static String sorted(List<String> names) {
    return String.join(", ", new TreeSet<>(names));
  }
}
