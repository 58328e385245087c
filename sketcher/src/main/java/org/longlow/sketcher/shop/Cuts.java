package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.FormerCut;
import org.longlow.constraints.shape.FormerCuts;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.template.TubeBends;
import org.longlow.sketcher.template.TubeLength;

/**
 * All that is cut, in net sizes: the one list that report, cutting plans and lists go by.
 *
 * @param tubes rails and exhausts
 * @param boards of cushions
 * @param foam layer by layer
 * @param sheet of cowls and screens
 * @param formers that are asked for
 */
public record Cuts(
    List<TubeCut> tubes,
    List<FlatCut> boards,
    List<FlatCut> foam,
    List<FlatCut> sheet,
    List<Former> formers) {

  /** A former of a part. */
  public record Former(Part part, FormerCut cut) {

    /** Returns how many there are. */
    public int pieces() {
      return part.paired() ? 2 : 1;
    }

    /** One with a rim is of sheet metal, which one nobody says; any other is of plywood. */
    private FlatCut flat() {
      Envelope box = cut.board().getEnvelopeInternal();
      return new FlatCut(
          part.name(),
          cut.name(),
          pieces(),
          cut.flange().isPresent() ? "" : Material.PLYWOOD.word(),
          "",
          cut.thicknessMm(),
          box.getWidth(),
          box.getHeight(),
          cut.board().getArea(),
          false,
          true,
          Optional.of(cut.board()),
          List.of(),
          List.of());
    }
  }

  public Cuts {
    tubes = List.copyOf(tubes);
    boards = List.copyOf(boards);
    foam = List.copyOf(foam);
    sheet = List.copyOf(sheet);
    formers = List.copyOf(formers);
  }

  /** Returns all that is cut for a machine. */
  public static Cuts of(Study study) {
    Places places = study.placed().places();
    List<TubeCut> tubes = new ArrayList<>();
    for (TubePart tube :
        study.layout().parts(TubePart.class).filter(tube -> !tube.bought()).toList()) {
      TubeBends bends = TubeBends.of(tube, places);
      tubes.add(
          new TubeCut(
              tube,
              tube.both() ? 2 : 1,
              places.value(tube.diameter()),
              places.value(tube.wall()),
              bends,
              TubeLength.blankMm(tube, bends, study)));
    }
    List<FlatCut> boards = new ArrayList<>();
    List<FlatCut> foam = new ArrayList<>();
    for (CushionPart c : study.layout().parts(CushionPart.class).toList()) {
      cushion(study, c, boards, foam);
    }
    List<Former> formers = new ArrayList<>();
    for (Part part : study.layout().parts().values()) {
      FormerCuts.of(part, places).forEach(cut -> formers.add(new Former(part, cut)));
    }
    return new Cuts(tubes, boards, foam, SheetCuts.of(study), formers);
  }

  private static void cushion(
      Study study, CushionPart c, List<FlatCut> boards, List<FlatCut> foam) {
    Places places = study.placed().places();
    FlatCut board = board(study, c);
    boards.add(board);
    int number = 0;
    for (FoamSpec layer : c.layers()) {
      number++;
      foam.add(
          FlatCut.rectangle(
              c.name(),
              "layer "
                  + number
                  + (number == 1 ? " (top)" : "")
                  + (layer.closedCell() ? ", closed cell" : ""),
              board.pieces(),
              Material.FOAM.word(),
              layer.name(),
              places.value(layer.thickness()),
              board.longMm(),
              board.wideMm(),
              false));
    }
  }

  /** Returns the board of a cushion, as large as its foam. */
  static FlatCut board(Study study, CushionPart c) {
    Places places = study.placed().places();
    List<Interval> across =
        study.shapes().get(c.name()).prisms().stream().map(Prism::across).distinct().toList();
    return FlatCut.rectangle(
        c.name(),
        "board",
        Math.max(1, across.size()),
        Material.PLYWOOD.word(),
        "",
        places.value(c.board()),
        places.pin(c.from()).distance(places.pin(c.to())),
        across.stream().mapToDouble(Interval::length).max().orElse(0),
        true);
  }

  /** Returns whether there is nothing to cut. */
  public boolean isEmpty() {
    return tubes.isEmpty()
        && boards.isEmpty()
        && foam.isEmpty()
        && sheet.isEmpty()
        && formers.isEmpty();
  }

  /** Returns all that is cut from sheet: boards, formers, cowls and screens. */
  List<FlatCut> flat() {
    List<FlatCut> all = new ArrayList<>(boards);
    formers.forEach(f -> all.add(f.flat()));
    all.addAll(sheet);
    return all;
  }

  /** Returns the length of all tubes, mm. */
  public double tubeMm() {
    return tubes.stream().mapToDouble(t -> t.pieces() * t.lengthMm()).sum();
  }
}
