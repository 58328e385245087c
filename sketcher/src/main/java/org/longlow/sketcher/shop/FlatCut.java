package org.longlow.sketcher.shop;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.shape.FlatPiece;
import org.longlow.constraints.shape.Unrolled;

/**
 * Flat pieces to be cut for a part.
 *
 * @param part its name
 * @param what which piece of it
 * @param pieces how many
 * @param material in the word of the layout, empty where none is said
 * @param grade of foam; empty of all else
 * @param thicknessMm mm
 * @param longMm of the rectangle round it, along its grain if it has one, mm
 * @param wideMm of that rectangle, mm
 * @param areaMm2 of one, mm²
 * @param grained whether its grain must run along its length
 * @param flat false for what is bent two ways or cannot be folded as drawn, so that its sizes are
 *     not those of a blank, and for what nobody says the thickness of
 * @param outline what is cut, its length to the right; absent for a rectangle
 * @param widths of a strip that is not as wide everywhere
 * @param folds of a strip that is folded
 */
public record FlatCut(
    String part,
    String what,
    int pieces,
    String material,
    String grade,
    double thicknessMm,
    double longMm,
    double wideMm,
    double areaMm2,
    boolean grained,
    boolean flat,
    Optional<Geometry> outline,
    List<Unrolled.Width> widths,
    List<FlatPiece.Fold> folds) {

  public FlatCut {
    widths = List.copyOf(widths);
    folds = List.copyOf(folds);
  }

  private FlatCut with(
      boolean nowFlat,
      Optional<Geometry> nowOutline,
      List<Unrolled.Width> nowWidths,
      List<FlatPiece.Fold> nowFolds) {
    return new FlatCut(
        part,
        what,
        pieces,
        material,
        grade,
        thicknessMm,
        longMm,
        wideMm,
        areaMm2,
        grained,
        nowFlat,
        nowOutline,
        nowWidths,
        nowFolds);
  }

  /** Returns this as what is cut to an outline. */
  FlatCut shaped(Geometry cut) {
    return with(flat, Optional.of(cut), widths, folds);
  }

  /** Returns this as something whose sizes are not those of a blank. */
  FlatCut notFlat() {
    return with(false, outline, widths, folds);
  }

  /** Returns this with the widths that it has along it. */
  FlatCut wide(List<Unrolled.Width> along) {
    return with(flat, outline, along, folds);
  }

  /** Returns this with the folds that it has along it. */
  FlatCut folded(List<FlatPiece.Fold> along) {
    return with(flat, outline, widths, along);
  }

  /** A rectangle of some sheet. */
  static FlatCut rectangle(
      String part,
      String what,
      int pieces,
      String material,
      String grade,
      double thicknessMm,
      double longMm,
      double wideMm,
      boolean grained) {
    return new FlatCut(
        part,
        what,
        pieces,
        material,
        grade,
        thicknessMm,
        longMm,
        wideMm,
        longMm * wideMm,
        grained,
        true,
        Optional.empty(),
        List.of(),
        List.of());
  }

  /** Returns whether there is something to cut. */
  boolean isSomething() {
    return longMm > 0 && wideMm > 0 && areaMm2 > 0 && Double.isFinite(longMm * wideMm + areaMm2);
  }

  /** Returns what it is called on a plan. */
  String label() {
    return what.isEmpty() ? part : part + " " + what;
  }
}
