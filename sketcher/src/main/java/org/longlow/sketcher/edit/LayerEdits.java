package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.UnaryOperator;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.FoamGrade;
import org.longlow.constraints.seat.FoamGrades;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.Units;

/**
 * Edits of the foam layers of a cushion, counted from 0 at the top. People count them from 1. What
 * a measure gives is not written over by hand; it can be typed over.
 */
public final class LayerEdits {

  /** Thinnest layer that a hand makes, mm; thinner ones can be typed. */
  public static final double THINNEST_MM = 1;

  private LayerEdits() {}

  /** Returns the edit that makes a layer as thick as asked, at least {@link #THINNEST_MM}. */
  public static Edit thick(String cushion, int layer, double mm, Units units) {
    return layers(
        "make " + name(cushion, layer) + " " + units.given(Math.max(THINNEST_MM, mm)) + " thick",
        cushion,
        layers -> with(layers, cushion, layer, f -> thickness(f, cushion, layer, mm)));
  }

  /** Returns the edit that makes a layer thicker by so much, or thinner. */
  public static Edit thicker(String cushion, int layer, double byMm) {
    return layers(
        (byMm < 0 ? "thin " : "thicken ") + name(cushion, layer),
        cushion,
        layers ->
            with(
                layers,
                cushion,
                layer,
                f -> {
                  held(f, cushion, layer);
                  return thickness(f, cushion, layer, f.thickness().evaluate(n -> 0) + byMm);
                }));
  }

  /** Returns the edit that puts a layer in at a place, those from there on below it. */
  public static Edit add(String cushion, int at, FoamSpec foam) {
    return layers(
        "add layer to " + cushion,
        cushion,
        layers -> {
          if (at < 0 || at > layers.size()) {
            throw new OutOfRange(cushion + " has no place " + (at + 1) + " for a layer");
          }
          layers.add(at, foam);
          return layers;
        });
  }

  /** Returns the edit that takes a layer out; the last one stays. */
  public static Edit takeOut(String cushion, int layer) {
    return layers(
        "take out " + name(cushion, layer),
        cushion,
        layers -> {
          there(layers, cushion, layer);
          if (layers.size() == 1) {
            throw new OutOfRange(
                cushion + " needs a layer of foam; add another before you take this one out");
          }
          layers.remove(layer);
          return layers;
        });
  }

  /** Returns the edit that puts two layers each in the place of the other. */
  public static Edit swap(String cushion, int a, int b) {
    return layers(
        "swap layers " + (Math.min(a, b) + 1) + " and " + (Math.max(a, b) + 1) + " of " + cushion,
        cushion,
        layers -> {
          there(layers, cushion, a);
          there(layers, cushion, b);
          Collections.swap(layers, a, b);
          return layers;
        });
  }

  /** Returns the edit that makes a layer of another grade, as thick as it is. */
  public static Edit grade(String cushion, int layer, FoamGrade grade) {
    return layers(
        "make " + name(cushion, layer) + " " + grade.name(),
        cushion,
        layers -> with(layers, cushion, layer, f -> grade.layer(f.thickness())));
  }

  /** Returns the edit that gives a cushion all of its foam. */
  public static Edit foam(String cushion, String change, List<FoamSpec> foam) {
    return layers(change + " of " + cushion, cushion, layers -> foam);
  }

  /**
   * Returns the edit that makes a layer of closed or of open cells, with figures to begin with: the
   * two are said by unlike figures, so one field alone cannot change it.
   */
  public static Edit cells(String cushion, int layer, boolean closed) {
    return layers(
        "make " + name(cushion, layer) + " of " + (closed ? "closed" : "open") + " cells",
        cushion,
        layers ->
            with(
                layers,
                cushion,
                layer,
                f -> f.closedCell() == closed ? f : FoamGrades.first(closed).layer(f.thickness())));
  }

  /** Says which measures give the thickness of a layer, so that no hand can change it, or "". */
  public static String heldBy(FoamSpec foam) {
    return String.join(" and ", foam.thickness().names());
  }

  private static FoamSpec thickness(FoamSpec foam, String cushion, int layer, double mm) {
    held(foam, cushion, layer);
    return foam.thick(written(mm));
  }

  private static void held(FoamSpec foam, String cushion, int layer) {
    if (!heldBy(foam).isEmpty()) {
      throw new OutOfRange(
          "the thickness of "
              + name(cushion, layer)
              + " is worked out by "
              + foam.thickness().text()
              + "; change "
              + heldBy(foam)
              + " or type a thickness over it");
    }
  }

  /** A thickness without the last digits of sums; 1/16 in is 1.5875 mm. */
  private static Formula written(double mm) {
    return Formula.of(Math.rint(Math.max(THINNEST_MM, mm) * 1e4) / 1e4, Unit.MM);
  }

  private static List<FoamSpec> with(
      List<FoamSpec> layers, String cushion, int layer, UnaryOperator<FoamSpec> change) {
    there(layers, cushion, layer);
    layers.set(layer, change.apply(layers.get(layer)));
    return layers;
  }

  private static void there(List<FoamSpec> layers, String cushion, int layer) {
    if (layer < 0 || layer >= layers.size()) {
      throw new OutOfRange(cushion + " has no layer " + (layer + 1) + "; it has " + layers.size());
    }
  }

  private static Edit layers(String name, String cushion, UnaryOperator<List<FoamSpec>> change) {
    return new Edit(
        name,
        layout ->
            Change.set(
                layout,
                List.copyOf(change.apply(new ArrayList<>(cushion(layout, cushion).layers()))),
                "parts",
                cushion,
                "layers"));
  }

  private static CushionPart cushion(Layout layout, String name) {
    if (layout.parts().get(name) instanceof CushionPart cushion) {
      return cushion;
    }
    throw new OutOfRange(name + " is no cushion");
  }

  private static String name(String cushion, int layer) {
    return "layer " + (layer + 1) + " of " + cushion;
  }
}
