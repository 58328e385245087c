package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Allowance;
import org.longlow.constraints.shape.AngleFlat;
import org.longlow.constraints.shape.FlatPiece;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shells;
import org.longlow.constraints.shape.Skin;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.constraints.study.Study;

/** What parts of sheet are cut from: true sizes where it lies flat, else what formers are for. */
final class SheetCuts {

  private final Study study;
  private final Places places;
  private final List<FlatCut> cuts = new ArrayList<>();

  private SheetCuts(Study study) {
    this.study = study;
    places = study.placed().places();
  }

  /** Returns all pieces, in the order of the layout. */
  static List<FlatCut> of(Study study) {
    SheetCuts all = new SheetCuts(study);
    for (Part part : study.layout().parts().values()) {
      Skin.of(part, all.places)
          .ifPresent(s -> all.add(s, Unrolled.of(part, all.places).orElseThrow()));
      AngleFlat.of(part, all.places).ifPresent(all::add);
    }
    return List.copyOf(all.cuts);
  }

  private void add(AngleFlat flat) {
    Geometry cut = Allowance.of(flat.part(), places).cut(flat.outline());
    Envelope box = cut.getEnvelopeInternal();
    cuts.add(
        held(
            flat.faults().isEmpty(),
            new FlatCut(
                flat.part().name(),
                "angle flat" + asDrawn(flat.faults().isEmpty()),
                flat.part().paired() ? 2 : 1,
                flat.part().base().material(),
                "",
                flat.sheetMm(),
                box.getWidth(),
                box.getHeight(),
                cut.getArea(),
                false,
                true,
                Optional.of(cut),
                List.of(),
                List.of())));
  }

  private void add(Skin skin, Unrolled u) {
    Allowance allowance = Allowance.of(skin.part(), places);
    Geometry side = allowance.cut(side(skin));
    Envelope box = side.getEnvelopeInternal();
    if (u.wrapped()) {
      for (FlatPiece p : u.patterns()) {
        Geometry cut = allowance.cut(p.outline());
        Envelope flat = cut.getEnvelopeInternal();
        String what =
            p.what()
                + (p.what().startsWith("wrap") ? ", by its flat pattern" : ", fits into the wrap");
        cuts.add(
            held(
                p.isFoldable(),
                piece(
                        skin,
                        p.count(),
                        what + asDrawn(p.isFoldable()),
                        flat.getWidth(),
                        flat.getHeight(),
                        cut.getArea())
                    .shaped(cut)));
      }
    } else if (u.needsFormers()) {
      double area = u.sheetAreaMm2() - u.strips() * u.stripAreaMm2();
      String what =
          (u.strip().isEmpty() ? "sides and edge" : "sides")
              + ", bent two ways over formers; lengths are those of the elevation";
      cuts.add(
          piece(skin, u.strips(), what, box.getWidth(), box.getHeight(), area / u.strips())
              .notFlat());
    } else if (u.even() && u.sides() > 0) {
      String what = u.panel() ? "flat panel" : "side, half of them turned over";
      cuts.add(
          piece(skin, u.sides(), what, box.getWidth(), box.getHeight(), side.getArea())
              .shaped(side));
    } else if (u.sides() > 0) {
      boolean foldable = u.isFoldable(false);
      String what = "side, bent along, half of them turned over" + asDrawn(foldable);
      cuts.add(
          held(
              foldable,
              piece(skin, u.sides(), what, u.sideLongMm(), box.getHeight(), u.sideAreaMm2())));
    }
    if (!u.strip().isEmpty()) {
      boolean foldable = u.isFoldable(true);
      FlatCut strip =
          held(
              foldable,
              piece(
                  skin,
                  u.strips(),
                  "edge strip" + asDrawn(foldable),
                  u.stripLongMm(),
                  u.stripWideMm(),
                  u.stripAreaMm2()));
      cuts.add(u.even() ? strip.folded(u.stripFolds()) : strip.wide(u.strip()));
    }
  }

  /** What is said of a piece whose folds its legs have no room for. */
  private static String asDrawn(boolean foldable) {
    return foldable ? "" : ", CANNOT BE FOLDED SO: as drawn, without what folds take";
  }

  /** No blank is planned for what cannot be folded. */
  private static FlatCut held(boolean foldable, FlatCut cut) {
    return foldable ? cut : cut.notFlat();
  }

  /** The outline of a side in the elevation. */
  private Geometry side(Skin skin) {
    Geometry all = study.shapes().get(skin.part().name()).outline();
    return skin.part() instanceof ShellPart shell ? Shells.side(shell, places).orElse(all) : all;
  }

  /** A piece; of a sheet of which nobody says how thick it is, no blank can be planned. */
  private static FlatCut piece(
      Skin skin, int count, String what, double longMm, double wideMm, double areaMm2) {
    return new FlatCut(
        skin.part().name(),
        what,
        count,
        skin.part().base().material(),
        "",
        skin.thicknessMm(),
        longMm,
        wideMm,
        areaMm2,
        false,
        skin.thicknessMm() > 0,
        Optional.empty(),
        List.of(),
        List.of());
  }
}
