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
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.lock.Turned;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Lamps;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Convex;
import org.longlow.constraints.space.Piece;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Parts and people as they are seen from the front or from above, worked out once for any scale.
 */
final class AspectBodies {

  /** Shorter stretches of an edge are not drawn, mm. */
  private static final double LEAST_MM = 2;

  private static final SubjectLook PLAIN =
      new SubjectLook(PictureLayer.FRAME, Canvas.edge(Tone.INK).withFill(Tone.STEEL, 0.3));

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
  private final Eye eye;
  private final Optional<Steered> steered;
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
    eye = Eye.of(aspect, scene.ground(), scene.leaned());
    steered =
        scene.steerRad() == 0
            ? Optional.empty()
            : scene.front().flatMap(f -> Steered.of(scene.layout(), f, scene.places()));
    Map<String, Thing> things = new LinkedHashMap<>();
    Sightlines sightlines = new Sightlines();
    for (PartShape shape : scene.shapes().values()) {
      String subject = "part:" + shape.part().name();
      List<Shadow> shadows = shadows(shape);
      reach(shadows);
      SubjectLook look = look(shape.part(), Optional.ofNullable(looks.get(subject)));
      things.put(subject, new Thing(subject, look, structure(shape.part())));
      sightlines.add(subject, shadows, !seeThrough(shape.part()));
    }
    RunInk.bodies(
        scene,
        (subject, pieces) -> {
          List<Shadow> shadows =
              pieces.stream().flatMap(p -> p.convex().stream()).map(eye::shadow).toList();
          things.put(subject, new Thing(subject, looks.getOrDefault(subject, PLAIN), true));
          sightlines.add(subject, shadows, true);
        });
    SubjectLook cloth =
        new SubjectLook(PictureLayer.PERSON, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.15));
    for (Sitting s : seated) {
      String subject = "person:" + s.person();
      limbs(s)
          .forEach(
              (limb, shadows) -> {
                String name = subject + "/" + limb;
                things.put(name, new Thing(subject, cloth, false));
                sightlines.add(name, shadows, true);
              });
    }
    sightlines
        .seen(LEAST_MM)
        .forEach((name, seen) -> all.add(new Body(things.get(name), seen.as(eye::onPage))));
  }

  private void reach(List<Shadow> shadows) {
    for (Shadow s : shadows) {
      for (Coordinate c : eye.onPage(s.area()).getCoordinates()) {
        machine.expandToInclude(c);
        corners.add(c);
      }
    }
  }

  /** Returns how a part is seen, turned if it turns with the steering. */
  private List<Shadow> shadows(PartShape shape) {
    Optional<SteeringAxis> axis = steered.map(s -> s.axisOf().get(shape.part().name()));
    return shape.prisms().stream()
        .flatMap(p -> p.convex().stream())
        .map(p -> eye.shadow(axis.<Convex>map(a -> Turned.of(p, a, scene.steerRad())).orElse(p)))
        .toList();
  }

  private Map<String, List<Shadow>> limbs(Sitting sitting) {
    Map<String, List<Shadow>> limbs = new LinkedHashMap<>();
    if (sitting.posture().isEmpty()) {
      return limbs;
    }
    ArmBodies arms = new ArmBodies(sitting, scene, steered, scene.steerRad());
    sitting
        .fineLimbs()
        .forEach(
            (limb, prisms) ->
                limbs.put(
                    limb,
                    ArmBodies.LIMBS.contains(limb)
                        ? arms.of(limb).stream().map(eye::shadow).toList()
                        : limb(prisms)));
    return limbs;
  }

  /** A limb is round within the box that gaps are measured to; each side's is one. */
  private List<Shadow> limb(List<Prism> prisms) {
    List<Shadow> out = new ArrayList<>();
    for (int side = -1; side <= 1; side++) {
      int of = side;
      List<Piece> there =
          prisms.stream().filter(p -> side(p) == of).flatMap(p -> p.convex().stream()).toList();
      if (!there.isEmpty()) {
        Shadow square = eye.shadow(Convex.hullOf(there));
        out.add(Shadow.of(rounded(square.area()), square.body()));
      }
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
    if (part instanceof LampPart lamp && eye.aspect() == Aspect.FRONT) {
      boolean lit = lamp.type() != LampPart.Kind.SIDE_REFLECTOR && Lamps.facesForward(lamp.type());
      if (lit) {
        Style face = Canvas.edge(Tone.INK).withFill(LampInk.light(lamp), 0.85);
        return new SubjectLook(PictureLayer.LAMPS, face);
      }
    }
    return side.orElse(PLAIN);
  }

  /** Returns from where they are seen. */
  Eye eye() {
    return eye;
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
    boolean front = eye.aspect() == Aspect.FRONT;
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
