package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.longlow.constraints.layout.Vertex;

/**
 * Sheet laid flat as far as they can be without a stretch: strips along an edge, and sides that run
 * straight from the lower edge to the upper and are flat from one such ruling to the next.
 */
final class Patterns {

  /** What runs along the edge. */
  static final String STRIP = "edge strip";

  /** Sides nearer to each other than this are alike, mm. */
  private static final double ALIKE_MM = 0.01;

  private Patterns() {}

  /** Returns the flat strip along the edge. */
  static FlatPiece strip(EdgeStrip strip, int count) {
    List<FlatPiece.Fold> folds = new ArrayList<>();
    for (FlatLine.Fold f : strip.flat().folds()) {
      folds.add(
          new FlatPiece.Fold(
              line(f.alongMm(), strip.right()[f.point()], f.alongMm(), strip.left()[f.point()]),
              f.alongMm(),
              f.rad()));
    }
    return new FlatPiece(
        STRIP, count, strip.outline(), folds, strip.flat().lengthMm(), strip.flat().faults());
  }

  /** Returns the flat sides, the longer first; none where they bend two ways. */
  static List<FlatPiece> sides(Skin skin, Loft loft) {
    if (!skin.sided() || !loft.sides().isStraight()) {
      return List.of();
    }
    Optional<FlatPiece> left = side(skin, loft, true);
    Optional<FlatPiece> right = side(skin, loft, false);
    if (left.isEmpty() || right.isEmpty()) {
      return List.of();
    }
    Geometry one = left.get().outline();
    Geometry other = right.get().outline();
    if (one.symDifference(other).buffer(-ALIKE_MM).isEmpty()) {
      FlatPiece p = left.get();
      return List.of(
          new FlatPiece("side", 2 * skin.bodies(), p.outline(), p.folds(), p.longMm(), p.faults()));
    }
    return left.get().longMm() >= right.get().longMm()
        ? List.of(left.get(), right.get())
        : List.of(right.get(), left.get());
  }

  private static Optional<FlatPiece> side(Skin skin, Loft loft, boolean left) {
    String what = left ? "left side" : "right side";
    boolean upright =
        skin.part().outline().vertices().stream().map(Vertex::reach).allMatch(Optional::isEmpty);
    return upright
        ? Optional.of(upright(skin, loft, left, what))
        : ruled(skin, loft, left).map(flat -> pattern(flat, what, skin.bodies()));
  }

  /** A side that runs straight up everywhere bends along x alone: heights stay. */
  private static FlatPiece upright(Skin skin, Loft loft, boolean left, String what) {
    double t = skin.thicknessMm();
    CutAt cuts = CutAt.of(loft);
    double[] xs = cuts.places();
    List<double[]> line = new ArrayList<>();
    for (double x : xs) {
      Cut cut = cuts.at(x, 1).get(0);
      line.add(new double[] {x, (left ? cut.left() : cut.right()).get(0)[1]});
    }
    // looking along x with y to the left, the inside of the left side lies to the right
    FlatLine flat = FlatLine.of(line, false, !left, t / 2, t, skin.folded());
    List<List<Girth>> rings = new ArrayList<>(List.of(loft.ring()));
    rings.addAll(loft.holes());
    Geometry outline = null;
    for (List<Girth> ring : rings) {
      List<Coordinate> at = new ArrayList<>();
      for (Girth g : ring) {
        at.add(new Coordinate(along(xs, flat.alongMm(), g.x()), g.z()));
      }
      at.add(at.get(0).copy());
      Geometry area = Curves.FACTORY.createPolygon(at.toArray(Coordinate[]::new)).buffer(0);
      outline = outline == null ? area : outline.difference(area);
    }
    List<FlatPiece.Fold> folds = new ArrayList<>();
    Envelope box = outline.getEnvelopeInternal();
    for (FlatLine.Fold f : flat.folds()) {
      Geometry over = line(f.alongMm(), box.getMinY() - 1, f.alongMm(), box.getMaxY() + 1);
      folds.add(new FlatPiece.Fold(over.intersection(outline), f.alongMm(), f.rad()));
    }
    return new FlatPiece(what, skin.bodies(), outline, folds, flat.lengthMm(), flat.faults());
  }

  private static double along(double[] xs, double[] along, double x) {
    int i = Arrays.binarySearch(xs, x);
    if (i >= 0) {
      return along[i];
    }
    int k = Math.max(0, Math.min(xs.length - 2, -i - 2));
    return along[k] + (x - xs[k]) / (xs[k + 1] - xs[k]) * (along[k + 1] - along[k]);
  }

  /** A side that slants up: flat where it does not twist, and in one piece without holes. */
  private static Optional<Flattened> ruled(Skin skin, Loft loft, boolean left) {
    CutAt cuts = CutAt.of(loft);
    List<double[]> low = new ArrayList<>();
    List<double[]> high = new ArrayList<>();
    for (double x : cuts.places()) {
      List<Cut> there = cuts.at(x, 1);
      if (there.size() != 1 || !loft.holes().isEmpty()) {
        return Optional.empty();
      }
      List<double[]> side = left ? there.get(0).left() : there.get(0).right();
      double[] a = side.get(0);
      double[] b = side.get(side.size() - 1);
      low.add(new double[] {x, a[1], a[0]});
      high.add(new double[] {x, b[1], b[0]});
    }
    double[] outward = {0, left ? 1 : -1, 0};
    return Flattened.of(low, high, outward, false, skin.thicknessMm(), skin.folded());
  }

  /** Returns a sheet that was laid flat as a piece. */
  static FlatPiece pattern(Flattened flat, String what, int count) {
    List<Coordinate> edge = new ArrayList<>();
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (double[] p : flat.below()) {
      edge.add(new Coordinate(p[0], p[1]));
    }
    for (int i = flat.above().size() - 1; i >= 0; i--) {
      edge.add(new Coordinate(flat.above().get(i)[0], flat.above().get(i)[1]));
    }
    for (Coordinate c : edge) {
      from = Math.min(from, c.x);
      to = Math.max(to, c.x);
    }
    edge.add(edge.get(0).copy());
    List<FlatPiece.Fold> folds = new ArrayList<>();
    for (Flattened.Fold f : flat.folds()) {
      double[] a = flat.below().get(f.ruling());
      double[] b = flat.above().get(f.ruling());
      folds.add(new FlatPiece.Fold(line(a[0], a[1], b[0], b[1]), a[0] - from, f.rad()));
    }
    Geometry outline = Curves.FACTORY.createPolygon(edge.toArray(Coordinate[]::new)).buffer(0);
    return new FlatPiece(what, count, outline, folds, to - from, flat.faults());
  }

  private static LineString line(double x1, double y1, double x2, double y2) {
    return Curves.FACTORY.createLineString(
        new Coordinate[] {new Coordinate(x1, y1), new Coordinate(x2, y2)});
  }
}
