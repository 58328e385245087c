package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.FlatPiece;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shells;
import org.longlow.constraints.shape.Skin;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.constraints.study.Study;

/** What parts of sheet are cut from: true sizes where it lies flat, else what formers are for. */
final class SheetRows {

  static final List<String> HEADINGS =
      List.of("Sheet", "Pieces", "What", "Thick", "Long", "Wide", "Area of one", "Material");

  private final Study study;
  private final Places places;
  private final FigureWords figures;
  private final List<List<String>> rows = new ArrayList<>();

  SheetRows(Study study) {
    this.study = study;
    this.places = study.placed().places();
    this.figures = FigureWords.of(study);
  }

  /** Returns a row for each piece, in the order of the layout. */
  List<List<String>> all() {
    for (Part part : study.layout().parts().values()) {
      Skin.of(part, places).ifPresent(s -> add(s, Unrolled.of(part, places).orElseThrow()));
    }
    return List.copyOf(rows);
  }

  private void add(Skin skin, Unrolled u) {
    Geometry side = side(skin);
    Envelope box = side.getEnvelopeInternal();
    if (u.wrapped()) {
      for (FlatPiece p : u.patterns()) {
        Envelope flat = p.outline().getEnvelopeInternal();
        String what =
            p.what().startsWith("wrap") ? ", by its flat pattern" : ", fits into the wrap";
        double area = p.outline().getArea();
        row(skin, p.count(), p.what() + what, flat.getWidth(), flat.getHeight(), area);
      }
    } else if (u.needsFormers()) {
      double area = u.sheetAreaMm2() - u.strips() * u.stripAreaMm2();
      String what = u.strip().isEmpty() ? "sides and edge" : "sides";
      row(
          skin,
          u.strips(),
          what + ", bent two ways over formers; lengths are those of the elevation",
          box.getWidth(),
          box.getHeight(),
          area / u.strips());
    } else if (u.even() && u.sides() > 0) {
      String what = "side, half of them turned over";
      row(skin, u.sides(), what, box.getWidth(), box.getHeight(), side.getArea());
    } else if (u.sides() > 0) {
      String what = "side, bent along, half of them turned over";
      row(skin, u.sides(), what, u.sideLongMm(), box.getHeight(), u.sideAreaMm2());
    }
    if (!u.strip().isEmpty()) {
      row(skin, u.strips(), strip(u), u.stripLongMm(), u.stripWideMm(), u.stripAreaMm2());
    }
  }

  /** The outline of a side in the elevation. */
  private Geometry side(Skin skin) {
    Geometry all = study.shapes().get(skin.part().name()).outline();
    return skin.part() instanceof ShellPart shell ? Shells.side(shell, places).orElse(all) : all;
  }

  private String strip(Unrolled u) {
    if (!u.even()) {
      return u.strip().stream()
          .map(
              w ->
                  figures.bareMm(w.wideMm())
                      + " at "
                      + figures.bareMm(w.alongMm())
                      + " ("
                      + w.where()
                      + ")")
          .collect(Collectors.joining(", ", "edge strip, wide ", ""));
    }
    return u.stripFolds().stream()
        .map(
            f ->
                FigureWords.deg(Math.abs(f.rad()))
                    + (f.rad() > 0 ? " inward at " : " outward at ")
                    + figures.bareMm(f.alongMm()))
        .collect(
            Collectors.joining(
                ", ", u.stripFolds().isEmpty() ? "edge strip" : "edge strip, folded ", ""));
  }

  private void row(
      Skin skin, int count, String what, double longMm, double wideMm, double areaMm2) {
    rows.add(
        List.of(
            skin.part().name(),
            Integer.toString(count),
            what,
            skin.thicknessMm() > 0 ? figures.mm(skin.thicknessMm()) : "not said",
            figures.mm(longMm),
            figures.mm(wideMm),
            figures.sheet(areaMm2),
            skin.part().base().material()));
  }
}
