package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.PrecisionModel;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.UnaryUnionNG;
import org.longlow.svg.drawing.Planar;

/**
 * What is seen of things that stand before each other, and where their outlines are hidden. A thing
 * is made of convex pieces, each of which hides what has no point as near to the viewer.
 */
final class Sightlines {

  /** A hundredth of a millimetre: overlays on a grid cannot fail. */
  private static final PrecisionModel GRID = new PrecisionModel(100);

  /** An edge within this of what is seen is seen, mm. */
  private static final double SLACK_MM = 0.2;

  /**
   * A thing seen.
   *
   * @param outline all of it
   * @param area what is seen of it
   * @param edge its outline as far as it is seen
   * @param hidden the rest of its outline
   */
  record Seen(Geometry outline, Geometry area, Geometry edge, Geometry hidden) {}

  private final Map<String, List<Aspect.Shadow>> things = new LinkedHashMap<>();
  private final List<Placed> pieces = new ArrayList<>();

  private record Placed(String thing, Aspect.Shadow shadow, boolean hides) {}

  /**
   * Adds a thing.
   *
   * @param name its name, used once
   * @param hides whether it hides what lies behind it
   */
  void add(String name, List<Aspect.Shadow> shadows, boolean hides) {
    things.put(name, List.copyOf(shadows));
    shadows.forEach(s -> pieces.add(new Placed(name, s, hides)));
  }

  /**
   * Returns each thing as it is seen, in the order they were added.
   *
   * @param leastMm shorter stretches of an edge are left out, mm
   */
  Map<String, Seen> seen(double leastMm) {
    Map<String, List<Geometry>> areas = new LinkedHashMap<>();
    pieces.sort(Comparator.comparingDouble((Placed p) -> p.shadow().nearMm()).reversed());
    Geometry before = Planar.FACTORY.createPolygon();
    for (Placed piece : pieces) {
      Geometry area = piece.shadow().area();
      if (area.getDimension() < 2) {
        continue;
      }
      Geometry open = overlay(area, before, OverlayNG.DIFFERENCE);
      areas.computeIfAbsent(piece.thing(), t -> new ArrayList<>()).add(open);
      if (piece.hides() && !open.isEmpty()) {
        before = overlay(before, area, OverlayNG.UNION);
      }
    }
    Map<String, Seen> seen = new LinkedHashMap<>();
    things.forEach(
        (name, shadows) -> {
          Geometry outline = union(shadows.stream().map(Aspect.Shadow::area).toList());
          Geometry area = union(areas.getOrDefault(name, List.of()));
          Geometry edge = outline.getBoundary();
          Geometry near = area.buffer(SLACK_MM);
          seen.put(
              name,
              new Seen(
                  outline,
                  area,
                  lines(overlay(edge, near, OverlayNG.INTERSECTION), leastMm),
                  lines(overlay(edge, near, OverlayNG.DIFFERENCE), leastMm)));
        });
    return seen;
  }

  private static Geometry overlay(Geometry a, Geometry b, int operation) {
    return OverlayNG.overlay(a, b, operation, GRID);
  }

  /** Returns the areas in one. */
  static Geometry union(List<Geometry> areas) {
    GeometryFactory factory = Planar.FACTORY;
    List<Geometry> full = areas.stream().filter(a -> a instanceof Polygonal).toList();
    return full.isEmpty() ? factory.createPolygon() : UnaryUnionNG.union(full, factory, GRID);
  }

  /** Returns lines joined end to end, without the shortest. */
  private static Geometry lines(Geometry pieces, double leastMm) {
    LineMerger merger = new LineMerger();
    for (int i = 0; i < pieces.getNumGeometries(); i++) {
      if (pieces.getGeometryN(i) instanceof Lineal) {
        merger.add(pieces.getGeometryN(i));
      }
    }
    List<LineString> kept = new ArrayList<>();
    for (Object line : merger.getMergedLineStrings()) {
      if (((LineString) line).getLength() >= leastMm) {
        kept.add((LineString) line);
      }
    }
    return Planar.FACTORY.createMultiLineString(kept.toArray(LineString[]::new));
  }
}
