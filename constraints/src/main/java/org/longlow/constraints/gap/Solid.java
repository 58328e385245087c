package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** A named body with the index of its outlines, made once and asked many times. Immutable. */
public final class Solid {

  private final String name;
  private final List<Face> faces;
  private final Envelope envelope = new Envelope();
  private final Solid before;
  private final RigidMotion motion;
  private volatile List<Face> coarse;

  /** The bodies of parts that were asked for lately. */
  private static final ByThing<PartShape, Solid> PARTS =
      new ByThing<>(256, shape -> new Solid(shape.part().name(), shape.prisms()));

  /** Returns the body of a part; asked again, the same object. */
  public static Solid of(PartShape shape) {
    return PARTS.of(shape);
  }

  public Solid(String name, List<Prism> prisms) {
    this(Face.of(prisms), name);
  }

  Solid(List<Face> faces, String name) {
    this(faces, name, null, null);
  }

  /**
   * @param before the body that was moved; null for none
   */
  private Solid(List<Face> faces, String name, Solid before, RigidMotion motion) {
    this.name = name;
    this.faces = faces;
    this.before = before;
    this.motion = motion;
    faces.forEach(f -> envelope.expandToInclude(f.edges().envelope()));
  }

  /** Returns several bodies as one; their indexes are kept. */
  public static Solid of(String name, List<Solid> parts) {
    return new Solid(parts.stream().flatMap(p -> p.faces.stream()).toList(), name);
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

  /**
   * Returns fewer faces that hold this body, for what takes long: what is in pieces is taken as
   * hulls of a few of them, over the breadth of all of these.
   */
  List<Face> coarse() {
    List<Face> known = coarse;
    if (known == null) {
      known = before == null ? Face.coarse(faces) : coarseBefore();
      coarse = known;
    }
    return known;
  }

  private List<Face> coarseBefore() {
    List<Face> known = before.coarse();
    return known == before.faces ? faces : Face.moved(known, motion);
  }

  Envelope envelope() {
    return envelope;
  }

  /** Returns the farthest that a corner of it is from a point, mm. */
  public double reachMm(PointMm from) {
    double most = 0;
    for (Face face : faces) {
      most = Math.max(most, face.edges().reachMm(from));
    }
    return most;
  }

  /** Returns whether the boxes round both in the elevation are nearer than a distance, mm. */
  boolean near(Solid other, double byMm) {
    Envelope a = envelope;
    Envelope b = other.envelope;
    return a.getMinX() - b.getMaxX() < byMm
        && b.getMinX() - a.getMaxX() < byMm
        && a.getMinY() - b.getMaxY() < byMm
        && b.getMinY() - a.getMaxY() < byMm
        && !a.isNull()
        && !b.isNull();
  }

  boolean hasFaces() {
    return !envelope.isNull();
  }

  /** Returns how far it reaches towards a direction, mm from the origin. */
  double mostMm(PointMm towards) {
    double most = Double.NEGATIVE_INFINITY;
    for (Face face : faces) {
      most = Math.max(most, face.edges().mostMm(towards));
    }
    return most;
  }

  /** Returns by what angle the same body in another place is turned, rad; 0 if it has changed. */
  public double turnRad(Solid there) {
    if (faces.isEmpty() || there.faces.size() != faces.size()) {
      return 0;
    }
    double[] from = faces.get(0).edges().ends;
    double[] to = there.faces.get(0).edges().ends;
    if (from.length != to.length) {
      return 0;
    }
    int longest = 0;
    for (int k = 0; k < from.length; k += 4) {
      if (along(from, k).length() > along(from, longest).length()) {
        longest = k;
      }
    }
    PointMm u = along(from, longest);
    PointMm v = along(to, longest);
    return Math.abs(u.length() - v.length()) < 1e-6 ? Math.atan2(u.cross(v), u.dot(v)) : 0;
  }

  private static PointMm along(double[] ends, int k) {
    return new PointMm(ends[k + 2] - ends[k], ends[k + 3] - ends[k + 1]);
  }

  /** Returns a motion that only shifts. */
  public static RigidMotion by(PointMm shift) {
    return new RigidMotion(0, shift);
  }

  /** Returns what of this body lies farther than a radius from all of some points. */
  public Solid beyond(List<PointMm> points, double radiusMm) {
    List<Face> kept = new ArrayList<>();
    for (Face face : faces) {
      Geometry outline = null;
      for (PointMm p : points) {
        if (face.edges().envelope().distance(new Envelope(p.x(), p.x(), p.z(), p.z())) < radiusMm) {
          outline = outline == null ? face.edges().outline() : outline;
          outline = outline.difference(Curves.disc(p, radiusMm));
        }
      }
      if (outline == null) {
        kept.add(face);
      } else if (!outline.isEmpty()) {
        // of what does not fill its outline, all of that which is left of it is taken
        kept.add(new Face(Edges.of(outline), face.across()));
      }
    }
    return new Solid(kept, name);
  }

  /** Returns this body shifted across the machine, left positive. */
  public Solid across(double mm) {
    return new Solid(faces.stream().map(f -> f.across(mm)).toList(), name);
  }

  /**
   * Returns this body with both sides farther out; what lies across the middle plane grows with
   * them, and is taken to fill its outline over its breadth.
   */
  public Solid apart(double mm) {
    List<Face> changed = new ArrayList<>();
    for (Face face : faces) {
      List<Interval> across = face.across().stream().flatMap(i -> apart(i, mm)).toList();
      if (!across.isEmpty()) {
        changed.add(new Face(face.edges(), across));
      }
    }
    return new Solid(changed, name);
  }

  private static Stream<Interval> apart(Interval i, double mm) {
    double from = i.from() + (i.from() < 0 && i.to() > 0 || i.middle() < 0 ? -mm : mm);
    double to = i.to() + (i.from() < 0 && i.to() > 0 || i.middle() > 0 ? mm : -mm);
    return from <= to ? Stream.of(new Interval(from, to)) : Stream.empty();
  }

  /** Returns this body after {@code motion}; its index is kept, not built again. */
  public Solid moved(RigidMotion motion) {
    return new Solid(Face.moved(faces, motion), name, this, motion);
  }

  /**
   * Returns the gap to {@code other}, or null if it is not less than {@code cutMm}.
   *
   * @param cutMm only gaps below this matter, mm; may be negative where an overlap is known
   */
  public Gap to(Solid other, double cutMm) {
    Gap best = null;
    double cut = cutMm;
    for (Face a : faces) {
      for (Face b : other.faces) {
        Gap gap = FaceGap.of(a, b, name, other.name, Math.max(cut, Nearest.TOUCH_MM));
        if (gap == null) {
          continue;
        }
        if (gap.gapMm() < 0) {
          return overlap(other, cutMm);
        }
        if (gap.gapMm() < cut) {
          best = gap;
          cut = gap.gapMm();
        }
      }
    }
    return best;
  }

  /**
   * Returns the distance to {@code other}, mm, without working out how deep an overlap is: -1 for
   * any; infinite if it is not less than {@code cutMm}.
   */
  public double apartMm(Solid other, double cutMm) {
    double least = Double.POSITIVE_INFINITY;
    double far = Math.max(cutMm, Nearest.TOUCH_MM);
    if (near(other, far)) {
      for (Face a : faces) {
        if (a.edges().envelope().distance(other.envelope) >= far) {
          continue;
        }
        for (Face b : other.faces) {
          Gap gap =
              FaceGap.of(
                  a, b, name, other.name, Math.max(Math.min(cutMm, least), Nearest.TOUCH_MM));
          if (gap != null && gap.gapMm() < 0) {
            return -1;
          }
          if (gap != null && gap.gapMm() < cutMm) {
            least = Math.min(least, gap.gapMm());
          }
        }
      }
    }
    return least;
  }

  /** Returns the smallest gap of any of their outlines across the machine, mm. */
  double leastAcrossMm(Solid other) {
    double least = Double.POSITIVE_INFINITY;
    for (Face a : faces) {
      for (Face b : other.faces) {
        least = Math.min(least, a.acrossMm(b));
      }
    }
    return least;
  }

  /**
   * Returns how far from all of some points two bodies still overlap: the farthest corner of what
   * they share from the point nearest to it, mm; 0 if they do not.
   */
  public double overlapsAwayMm(Solid other, List<PointMm> from) {
    double most = 0;
    for (Face a : faces) {
      for (Face b : other.faces) {
        if (a.acrossMm(b) < 0 && a.apartMm(b) == 0 && FaceGap.overlapInSpace(a, b)) {
          Overlap shared = new Overlap(a.edges(), b.edges());
          if (!shared.touchesOnly()) {
            for (Coordinate c : shared.corners()) {
              most = Math.max(most, nearestMm(c, from));
            }
          }
        }
      }
    }
    return most;
  }

  private static double nearestMm(Coordinate corner, List<PointMm> points) {
    double least = Double.POSITIVE_INFINITY;
    for (PointMm p : points) {
      least = Math.min(least, PointMm.norm(corner.x - p.x(), corner.y - p.z()));
    }
    return least;
  }

  /** Returns whether two bodies have more in common than a touch. */
  public boolean overlaps(Solid other) {
    for (Face a : faces) {
      for (Face b : other.faces) {
        if (FaceGap.overlap(a, b)) {
          return true;
        }
      }
    }
    return false;
  }

  /** How deep bodies are in each other is a matter of all their outlines together. */
  private Gap overlap(Solid other, double cutMm) {
    double gap = -Shifts.depthMm(coarse(), other.coarse(), -cutMm);
    if (!(gap < cutMm)) {
      return null;
    }
    return new Gap(name, other.name, gap, () -> mostShared(other));
  }

  /** Returns the middle of what the two outlines share that share most. */
  private PointMm mostShared(Solid other) {
    Overlap most = null;
    for (Face a : faces) {
      for (Face b : other.faces) {
        if (FaceGap.overlap(a, b)) {
          Overlap shared = new Overlap(a.edges(), b.edges());
          if (most == null || shared.areaMm2() > most.areaMm2()) {
            most = shared;
          }
        }
      }
    }
    return most.middle();
  }
}
