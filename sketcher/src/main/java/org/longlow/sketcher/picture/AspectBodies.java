package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Lamps;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Parts and people as they are seen from the front or from above, worked out once for any scale.
 */
final class AspectBodies {

  /** Shorter stretches of an edge are not drawn, mm. */
  private static final double LEAST_MM = 2;

  /** Corners of limbs are rounded by this share of their narrower side; judgement. */
  private static final double ROUNDED = 0.42;

  /**
   * What is drawn.
   *
   * @param structure whether its edges are drawn where they are hidden
   */
  record Thing(String subject, SubjectLook look, boolean structure) {}

  /** A thing with what is seen of it. */
  record Body(Thing thing, Sightlines.Seen seen) {}

  private final Scene scene;
  private final Aspect aspect;
  private final Envelope machine = new Envelope();
  private final List<Coordinate> corners = new ArrayList<>();
  private final List<Body> all = new ArrayList<>();

  /**
   * Works out what is seen.
   *
   * @param seated who sits in the scene
   * @param looks how parts look, by subject
   */
  AspectBodies(Scene scene, List<Sitting> seated, Map<String, SubjectLook> looks, Aspect aspect) {
    this.scene = scene;
    this.aspect = aspect;
    Map<String, Thing> things = new LinkedHashMap<>();
    Sightlines sightlines = new Sightlines();
    for (PartShape shape : scene.shapes().values()) {
      String subject = "part:" + shape.part().name();
      List<Aspect.Shadow> shadows = shadows(shape.prisms());
      for (Aspect.Shadow s : shadows) {
        machine.expandToInclude(s.area().getEnvelopeInternal());
        corners.addAll(List.of(s.area().getCoordinates()));
      }
      SubjectLook look = look(shape.part(), Optional.ofNullable(looks.get(subject)));
      things.put(subject, new Thing(subject, look, structure(shape.part())));
      sightlines.add(subject, shadows, !seeThrough(shape.part()));
    }
    SubjectLook cloth =
        new SubjectLook(PictureLayer.PERSON, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.15));
    for (Sitting s : seated) {
      String subject = "person:" + s.person();
      s.fineLimbs()
          .forEach(
              (limb, prisms) -> {
                String name = subject + "/" + limb;
                things.put(name, new Thing(subject, cloth, false));
                sightlines.add(name, limb(prisms), true);
              });
    }
    sightlines.seen(LEAST_MM).forEach((name, seen) -> all.add(new Body(things.get(name), seen)));
  }

  private List<Aspect.Shadow> shadows(List<Prism> prisms) {
    return prisms.stream()
        .flatMap(p -> p.convex().stream())
        .map(piece -> aspect.of(piece, scene.ground()))
        .toList();
  }

  /** A limb is round within the box that gaps are measured to; each side's is one. */
  private List<Aspect.Shadow> limb(List<Prism> prisms) {
    List<Aspect.Shadow> out = new ArrayList<>();
    for (int side = -1; side <= 1; side++) {
      int of = side;
      List<Aspect.Shadow> there = shadows(prisms.stream().filter(p -> side(p) == of).toList());
      if (there.isEmpty()) {
        continue;
      }
      Geometry area = Sightlines.union(there.stream().map(Aspect.Shadow::area).toList());
      double near = there.stream().mapToDouble(Aspect.Shadow::nearMm).max().orElseThrow();
      out.add(new Aspect.Shadow(rounded(area.convexHull()), near));
    }
    return out;
  }

  private static int side(Prism prism) {
    return prism.across().from() >= 0 ? 1 : prism.across().to() <= 0 ? -1 : 0;
  }

  private static Geometry rounded(Geometry area) {
    Envelope box = area.getEnvelopeInternal();
    double r = ROUNDED * Math.min(box.getWidth(), box.getHeight());
    Geometry round = area.buffer(-r).buffer(r);
    return round.isEmpty() ? area : round;
  }

  private static boolean seeThrough(Part part) {
    return part instanceof ShellPart shell && shell.type().seeThrough();
  }

  /** Whether the edges of a part are drawn where it is hidden: what carries the machine. */
  private static boolean structure(Part part) {
    return part instanceof WheelPart
        || part instanceof FrontPart
        || part instanceof SwingarmPart
        || part instanceof StandPart
        || part instanceof TubePart tube && tube.type() != TubePart.Kind.EXHAUST;
  }

  private SubjectLook look(Part part, Optional<SubjectLook> side) {
    if (part instanceof LampPart lamp && aspect == Aspect.FRONT) {
      boolean lit = lamp.type() != LampPart.Kind.SIDE_REFLECTOR && Lamps.facesForward(lamp.type());
      if (lit) {
        Style face = Canvas.edge(Tone.INK).withFill(LampInk.light(lamp), 0.85);
        return new SubjectLook(PictureLayer.LAMPS, face);
      }
    }
    return side.orElse(
        new SubjectLook(PictureLayer.FRAME, Canvas.edge(Tone.INK).withFill(Tone.STEEL, 0.3)));
  }

  /** Returns the box round all parts. */
  Envelope machine() {
    return machine;
  }

  /** Returns all that is drawn. */
  List<Body> all() {
    return List.copyOf(all);
  }

  /** Returns where the edge is that reaches so far across the machine, lowest or rearmost, mm. */
  double at(double y) {
    double best = 0;
    double nearest = Double.POSITIVE_INFINITY;
    boolean front = aspect == Aspect.FRONT;
    for (Coordinate c : corners) {
      double off = Math.abs((front ? c.x : c.y) - y);
      double there = front ? c.y : c.x;
      if (off < nearest - 0.01 || off < nearest + 0.01 && there < best) {
        nearest = Math.min(off, nearest);
        best = there;
      }
    }
    return best;
  }
}
