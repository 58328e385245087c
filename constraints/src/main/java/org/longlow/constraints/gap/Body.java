package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.machine.RigidMotion;
import org.longlow.constraints.shape.Prism;

/** A named body with the index of its outlines, made once and asked many times. Immutable. */
public final class Body {

  private final String name;
  private final List<Face> faces;
  private final Envelope envelope = new Envelope();

  public Body(String name, List<Prism> prisms) {
    this(Face.of(prisms), name);
  }

  private Body(List<Face> faces, String name) {
    this.name = name;
    this.faces = faces;
    faces.forEach(f -> envelope.expandToInclude(f.edges().envelope()));
  }

  public String name() {
    return name;
  }

  /** Returns the outlines of {@code prisms}, each once, in the order of a body's faces. */
  public static List<Geometry> outlines(List<Prism> prisms) {
    Map<Geometry, Boolean> seen = new IdentityHashMap<>();
    List<Geometry> outlines = new ArrayList<>();
    for (Prism prism : prisms) {
      if (!prism.outline().isEmpty() && seen.put(prism.outline(), true) == null) {
        outlines.add(prism.outline());
      }
    }
    return outlines;
  }

  List<Face> faces() {
    return faces;
  }

  Envelope envelope() {
    return envelope;
  }

  /** Returns this body after {@code motion}; its index is kept, not built again. */
  public Body moved(RigidMotion motion) {
    Map<Edges, Edges> done = new IdentityHashMap<>();
    List<Face> moved = new ArrayList<>(faces.size());
    for (Face face : faces) {
      Edges edges = done.computeIfAbsent(face.edges(), e -> e.moved(motion));
      moved.add(new Face(edges, face.across()));
    }
    return new Body(moved, name);
  }

  /**
   * Returns the gap to {@code other}, or null if it is not less than {@code cutMm}.
   *
   * @param cutMm only gaps below this matter, mm; may be negative where an overlap is known
   */
  public Gap to(Body other, double cutMm) {
    Gap best = null;
    double cut = cutMm;
    for (Face a : faces) {
      for (Face b : other.faces) {
        Gap gap = between(a, b, other, cut);
        if (gap != null) {
          best = gap;
          cut = gap.gapMm();
        }
      }
    }
    return best;
  }

  private Gap between(Face a, Face b, Body other, double cut) {
    double across = a.acrossMm(b);
    if (across >= cut) {
      return null;
    }
    double apart = a.apartMm(b);
    if (apart > 0 && apart >= cut) {
      return null;
    }
    Nearest near = null;
    if (apart > 0 || !a.holdsCornerOf(b)) {
      double aside = across > 0 ? Math.sqrt(cut * cut - across * across) : Math.max(cut, 0);
      // where the overlap known is deeper already, only whether they touch is of interest
      near = Nearest.of(a.edges(), b.edges(), Math.max(aside, Nearest.TOUCH_MM));
      if (near == null) {
        return null;
      }
    }
    double side = near == null ? 0 : near.distanceMm();
    double gap;
    if (across > 0) {
      gap = side == 0 ? across : Math.sqrt(across * across + side * side);
    } else if (side > 0) {
      gap = side;
    } else {
      double depth = across < 0 && across < cut ? new Overlap(a.edges(), b.edges()).depthMm() : 0;
      gap = 0.0 - Math.min(depth, -across);
    }
    if (!(gap < cut)) {
      return null;
    }
    return side > 0
        ? new Gap(name, other.name, gap, near.middle(), null, null)
        : new Gap(name, other.name, gap, null, a.edges(), b.edges());
  }
}
