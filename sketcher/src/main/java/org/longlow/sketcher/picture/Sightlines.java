package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Lineal;
import org.locationtech.jts.geom.Polygonal;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;
import org.locationtech.jts.operation.linemerge.LineMerger;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.longlow.svg.drawing.Planar;

/**
 * What is seen of things that stand before each other, and where their outlines are hidden. A thing
 * is made of convex pieces; each is held against every piece of the others that covers it on the
 * page.
 */
final class Sightlines {

  private static final Comparator<Geometry> BY_SIZE =
      Comparator.comparingDouble((Geometry g) -> -g.getEnvelopeInternal().getArea());

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
  record Seen(Geometry outline, Geometry area, Geometry edge, Geometry hidden) {

    /** Returns it moved on the page. */
    Seen as(UnaryOperator<Geometry> move) {
      return new Seen(move.apply(outline), move.apply(area), move.apply(edge), move.apply(hidden));
    }
  }

  private final Map<String, Thing> things = new LinkedHashMap<>();
  private final InFront inFront = new InFront();
  private final Map<Geometry, PreparedGeometry> prepared = new IdentityHashMap<>();

  /** Pieces that cover something on the page, with all of them together. */
  private static final class Thing {
    private final List<Shadow> pieces;
    private final boolean hides;
    private final Geometry outline;
    private final double nearMm;
    private final double farMm;

    Thing(List<Shadow> shadows, boolean hides) {
      this.pieces = shadows.stream().filter(s -> s.area().getDimension() == 2).toList();
      this.hides = hides;
      this.outline = union(pieces.stream().map(Shadow::area).toList());
      nearMm = pieces.stream().mapToDouble(Shadow::nearMm).max().orElse(0);
      farMm = pieces.stream().mapToDouble(Shadow::farMm).min().orElse(0);
    }
  }

  /**
   * Adds a thing.
   *
   * @param name its name, used once
   * @param hides whether it hides what lies behind it
   */
  void add(String name, List<Shadow> shadows, boolean hides) {
    things.put(name, new Thing(shadows, hides));
  }

  /**
   * Returns each thing as it is seen, in the order they were added.
   *
   * @param leastMm shorter stretches of an edge are left out, mm
   */
  Map<String, Seen> seen(double leastMm) {
    Map<String, Seen> seen = new LinkedHashMap<>();
    things.forEach(
        (name, thing) -> {
          Geometry area = open(thing);
          Geometry edge = thing.outline.getBoundary();
          Geometry none = Planar.FACTORY.createMultiLineString();
          Geometry open = none;
          Geometry hidden = none;
          if (area == thing.outline) {
            open = edge;
          } else if (area.isEmpty()) {
            hidden = edge;
          } else {
            Geometry near = area.buffer(SLACK_MM);
            open = overlay(edge, near, OverlayNG.INTERSECTION);
            hidden = overlay(edge, near, OverlayNG.DIFFERENCE);
          }
          seen.put(
              name, new Seen(thing.outline, area, lines(open, leastMm), lines(hidden, leastMm)));
        });
    return seen;
  }

  /** What of a thing no other covers. */
  private Geometry open(Thing thing) {
    List<Geometry> before = new ArrayList<>();
    List<Thing> among = new ArrayList<>();
    for (Thing other : things.values()) {
      boolean meets =
          other != thing
              && other.hides
              && other.outline.getEnvelopeInternal().intersects(thing.outline.getEnvelopeInternal())
              && thing.farMm < other.nearMm;
      if (meets && other.farMm >= thing.nearMm) {
        before.add(other.outline);
      } else if (meets) {
        among.add(other);
      }
    }
    List<List<Geometry>> covers = new ArrayList<>();
    thing.pieces.forEach(p -> covers.add(new ArrayList<>()));
    boolean mixed = false;
    for (Thing other : among) {
      List<Cover> by = thing.pieces.stream().map(p -> cover(p, other)).toList();
      if (by.stream().noneMatch(Cover::behind)) {
        before.add(other.outline);
        continue;
      }
      for (int i = 0; i < by.size(); i++) {
        Cover c = by.get(i);
        if (c.behind()) {
          covers.get(i).addAll(c.before());
        } else if (!c.before().isEmpty()) {
          covers.get(i).add(other.outline);
        }
        mixed |= !c.before().isEmpty();
      }
    }
    Geometry left = less(thing.outline, before);
    if (left.isEmpty() || !mixed) {
      return left;
    }
    Map<List<Geometry>, List<Geometry>> byCover = new LinkedHashMap<>();
    for (int i = 0; i < covers.size(); i++) {
      Geometry area = thing.pieces.get(i).area();
      byCover.computeIfAbsent(covers.get(i), c -> new ArrayList<>()).add(area);
    }
    if (byCover.size() == 1) {
      return less(left, covers.get(0));
    }
    List<Geometry> open = new ArrayList<>();
    byCover.forEach((cover, areas) -> open.add(less(union(areas), cover)));
    return less(union(open), before);
  }

  /**
   * Takes areas away from one, the largest first, for often nothing is left soon. Half of them lie
   * beside it, which is found sooner than nothing is taken away.
   */
  private Geometry less(Geometry area, List<Geometry> cover) {
    Geometry left = area;
    for (Geometry c : cover.stream().sorted(BY_SIZE).toList()) {
      if (left.isEmpty()) {
        return left;
      }
      if (c.getEnvelopeInternal().intersects(left.getEnvelopeInternal())
          && prepared.computeIfAbsent(c, PreparedGeometryFactory::prepare).intersects(left)) {
        left = overlay(left, c, OverlayNG.DIFFERENCE);
      }
    }
    return left;
  }

  /**
   * What of a thing covers a piece of another on the page.
   *
   * @param before areas of those of its pieces that hide it
   * @param behind whether some of its pieces are behind
   */
  private record Cover(List<Geometry> before, boolean behind) {}

  private Cover cover(Shadow piece, Thing other) {
    List<Geometry> before = new ArrayList<>();
    boolean behind = false;
    for (Shadow past : other.pieces) {
      if (past.box().intersects(piece.box())) {
        if (inFront.hides(past, piece)) {
          before.add(past.area());
        } else {
          behind = true;
        }
      }
    }
    return new Cover(before, behind);
  }

  private static Geometry overlay(Geometry a, Geometry b, int operation) {
    return OverlayNGRobust.overlay(a, b, operation);
  }

  /** Returns the areas in one. */
  static Geometry union(List<Geometry> areas) {
    GeometryFactory factory = Planar.FACTORY;
    List<Geometry> full = areas.stream().filter(a -> a instanceof Polygonal).toList();
    return full.isEmpty() ? factory.createPolygon() : OverlayNGRobust.union(full, factory);
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
