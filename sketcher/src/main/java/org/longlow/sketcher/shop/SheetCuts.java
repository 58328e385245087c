package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shells;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.constraints.study.Study;

/** Pieces of cowls and screens. */
final class SheetCuts {

  private SheetCuts() {}

  static List<FlatCut> of(Study study) {
    Places places = study.placed().places();
    List<FlatCut> cuts = new ArrayList<>();
    for (ShellPart shell : study.layout().parts(ShellPart.class).toList()) {
      Shells.Pieces pieces = Shells.pieces(shell, places);
      Optional<Unrolled> unrolled = Unrolled.of(shell, places);
      if (unrolled.isPresent()) {
        unrolled(cuts, shell, pieces, unrolled.get());
        continue;
      }
      if (pieces.sides() > 0) {
        Geometry side = pieces.side().orElseThrow();
        Envelope box = side.getEnvelopeInternal();
        cuts.add(
            piece(
                shell,
                pieces,
                pieces.sides(),
                "side, half of them turned over",
                box.getWidth(),
                box.getHeight(),
                side.getArea(),
                Optional.of(side)));
      }
      for (double width : pieces.stripWidthsMm()) {
        double length = pieces.stripLengthMm();
        cuts.add(
            piece(shell, pieces, 1, "edge strip", length, width, length * width, Optional.empty()));
      }
    }
    return cuts;
  }

  /** A shell whose breadth varies: what bends one way by its true size, else its formers. */
  private static void unrolled(
      List<FlatCut> cuts, ShellPart shell, Shells.Pieces pieces, Unrolled u) {
    Envelope box = pieces.side().map(Geometry::getEnvelopeInternal).orElse(new Envelope());
    if (u.needsFormers()) {
      double area = u.sheetAreaMm2() - u.strips() * u.stripAreaMm2();
      String what = u.strip().isEmpty() ? "sides and edge" : "sides";
      cuts.add(
          new FlatCut(
              shell.name(),
              what + ", bent two ways over formers; lengths are those of the elevation",
              u.strips(),
              shell.base().material(),
              "",
              pieces.thicknessMm(),
              box.getWidth(),
              box.getHeight(),
              area / u.strips(),
              false,
              false,
              Optional.empty(),
              List.of()));
    } else if (u.sides() > 0) {
      cuts.add(
          piece(
              shell,
              pieces,
              u.sides(),
              "side, bent along, half of them turned over",
              u.sideLongMm(),
              box.getHeight(),
              u.sideAreaMm2(),
              Optional.empty()));
    }
    if (!u.strip().isEmpty()) {
      cuts.add(
          new FlatCut(
              shell.name(),
              "edge strip",
              u.strips(),
              shell.base().material(),
              "",
              pieces.thicknessMm(),
              u.stripLongMm(),
              u.stripWideMm(),
              u.stripAreaMm2(),
              false,
              true,
              Optional.empty(),
              u.strip()));
    }
  }

  private static FlatCut piece(
      ShellPart shell,
      Shells.Pieces pieces,
      int count,
      String what,
      double longMm,
      double wideMm,
      double areaMm2,
      Optional<Geometry> outline) {
    return new FlatCut(
        shell.name(),
        what,
        count,
        shell.base().material(),
        "",
        pieces.thicknessMm(),
        longMm,
        wideMm,
        areaMm2,
        false,
        true,
        outline,
        List.of());
  }
}
