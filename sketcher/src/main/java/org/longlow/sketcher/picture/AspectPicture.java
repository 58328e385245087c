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
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Lamps;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Draws the machine with its people from the front or from above, in the ink of the elevation:
 * silhouettes of its bodies, visible edges continuous, hidden ones of what carries it narrow and
 * dashed (ISO 128).
 */
final class AspectPicture {

  /** How far ground and middle plane run past the machine, paper mm. */
  private static final double PAST_MM = 6;

  /** Shorter stretches of an edge are not drawn, paper mm. */
  private static final double LEAST_MM = 0.15;

  /** Corners of limbs are rounded by this share of their narrower side; judgement. */
  private static final double ROUNDED = 0.42;

  private final Scene scene;
  private final Aspect aspect;
  private final double n;
  private final Canvas canvas;
  private final Envelope machine = new Envelope();

  private AspectPicture(Scene scene, Aspect aspect, double denominator) {
    this.scene = scene;
    this.aspect = aspect;
    this.n = denominator;
    this.canvas = new Canvas(denominator);
  }

  /** Which overall dimensions are written. */
  enum Overall {
    WIDTH,
    BOTH,
    NONE
  }

  /**
   * Returns a view at real size.
   *
   * @param seated who sits in the scene
   * @param elevation the elevation of the same scene, whose looks are taken
   */
  static Drawing of(
      Scene scene,
      List<Sitting> seated,
      Drawing elevation,
      Aspect aspect,
      Overall overall,
      double denominator) {
    AspectPicture picture = new AspectPicture(scene, aspect, denominator);
    picture.bodies(seated, Look.of(elevation));
    picture.ground();
    picture.middle();
    Drawing drawing = picture.canvas.drawing(scene.title());
    List<Mark> dimensions = picture.dimensions(overall);
    return dimensions.isEmpty()
        ? drawing
        : drawing.plus(
            new Layer(PictureLayer.DIMENSIONS.id(), PictureLayer.DIMENSIONS.title(), dimensions));
  }

  private record Thing(String subject, Look look, boolean structure) {}

  private void bodies(List<Sitting> seated, Map<String, Look> looks) {
    Map<String, Thing> things = new LinkedHashMap<>();
    Sightlines sightlines = new Sightlines();
    for (PartShape shape : scene.shapes().values()) {
      String subject = "part:" + shape.part().name();
      List<Aspect.Shadow> shadows = shadows(shape.prisms());
      shadows.forEach(s -> machine.expandToInclude(s.area().getEnvelopeInternal()));
      Look look = look(shape.part(), Optional.ofNullable(looks.get(subject)));
      things.put(subject, new Thing(subject, look, structure(shape.part())));
      sightlines.add(subject, shadows, !seeThrough(shape.part()));
    }
    Look cloth =
        new Look(PictureLayer.PERSON, Canvas.edge(Tone.FIGURE).withFill(Tone.FIGURE, 0.15));
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
    sightlines.seen(canvas.paper(LEAST_MM)).forEach((name, seen) -> draw(things.get(name), seen));
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
      out.add(new Aspect.Shadow(rounded(area), near));
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

  private Look look(Part part, Optional<Look> side) {
    if (part instanceof LampPart lamp && aspect == Aspect.FRONT) {
      boolean lit = lamp.type() != LampPart.Kind.SIDE_REFLECTOR && Lamps.facesForward(lamp.type());
      if (lit) {
        Style face = Canvas.edge(Tone.INK).withFill(LampInk.light(lamp), 0.85);
        return new Look(PictureLayer.LAMPS, face);
      }
    }
    return side.orElse(
        new Look(PictureLayer.FRAME, Canvas.edge(Tone.INK).withFill(Tone.STEEL, 0.3)));
  }

  private void draw(Thing thing, Sightlines.Seen seen) {
    PictureLayer layer = thing.look().layer();
    Style style = thing.look().style();
    Tone ink = style.stroke() == null ? Tone.INK : style.stroke();
    double wide = style.stroke() == null ? Canvas.EDGE_MM : style.strokeMm();
    if (!seen.area().isEmpty()) {
      canvas.shape(layer, thing.subject(), seen.area(), Style.area(Tone.PAPER, 0.5));
      canvas.shape(
          layer, thing.subject(), seen.area(), Style.area(style.fill(), style.fillOpacity()));
    }
    canvas.shape(layer, thing.subject(), seen.edge(), Style.line(ink, wide));
    if (thing.structure()) {
      Style dashed = Canvas.fine(Tone.INK).withLine(LineType.DASHED);
      canvas.shape(PictureLayer.HIDDEN, thing.subject(), seen.hidden(), dashed);
    }
  }

  /** The road, seen along it. */
  private void ground() {
    if (aspect == Aspect.FRONT && !machine.isNull()) {
      double past = canvas.paper(PAST_MM);
      MachineInk.road(
          canvas,
          new PointMm(machine.getMinX() - past, 0),
          new PointMm(machine.getMaxX() + past, 0));
    }
  }

  /** The middle plane, a chain line. */
  private void middle() {
    if (machine.isNull()) {
      return;
    }
    double past = canvas.paper(PAST_MM);
    Style chain = Canvas.chain(Tone.DIMENSION);
    if (aspect == Aspect.FRONT) {
      PointMm top = new PointMm(0, machine.getMaxY() + past);
      canvas.line(PictureLayer.AXES, "middle", chain, new PointMm(0, -past / 2), top);
    } else {
      PointMm rear = new PointMm(machine.getMinX() - past, 0);
      PointMm front = new PointMm(machine.getMaxX() + past, 0);
      canvas.line(PictureLayer.AXES, "middle", chain, rear, front);
    }
  }

  private List<Mark> dimensions(Overall overall) {
    if (overall == Overall.NONE || machine.isNull()) {
      return List.of();
    }
    List<Tiers.Span> below = new ArrayList<>();
    List<Tiers.Span> left = new ArrayList<>();
    Dimensions dims = Dimensions.at(n);
    boolean front = aspect == Aspect.FRONT;
    widths(front ? below : left);
    if (overall == Overall.BOTH) {
      if (front) {
        left.add(span("height", 0, machine.getMaxY(), 0, 0, "height"));
      } else {
        below.add(span("length", machine.getMinX(), machine.getMaxX(), 0, 0, "length"));
      }
    }
    double under = front ? -2.6 * n : machine.getMinY() - 2.6 * n;
    double beside = machine.getMinX() - (PAST_MM + 2) * n;
    List<Envelope> words = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    double any = Double.POSITIVE_INFINITY;
    marks.addAll(new Tiers(dims, Tiers.Side.BELOW, under, any, words).lay(below));
    marks.addAll(new Tiers(dims, Tiers.Side.LEFT, beside, any, words).lay(left));
    return marks;
  }

  /** The machine's own breadth and that of its grips, people not counted. */
  private void widths(List<Tiers.Span> into) {
    boolean front = aspect == Aspect.FRONT;
    double from = front ? machine.getMinX() : machine.getMinY();
    double to = front ? machine.getMaxX() : machine.getMaxY();
    into.add(span("width", from, to, at(from), at(to), "width"));
    for (RestPart rest : scene.layout().parts(RestPart.class).toList()) {
      PartShape shape = scene.shapes().get(rest.name());
      if (rest.type().limb() == RestPart.Limb.HAND && shape != null) {
        double right = -shape.rightMm();
        double left = shape.leftMm();
        if (right > from + 0.05 || left < to - 0.05) {
          String subject = "part:" + rest.name();
          into.add(span(subject, right, left, at(right), at(left), rest.name()));
        }
      }
    }
  }

  /** Returns where the outermost edge is that reaches so far across the machine, mm. */
  private double at(double y) {
    double best = 0;
    double nearest = Double.POSITIVE_INFINITY;
    boolean front = aspect == Aspect.FRONT;
    for (PartShape shape : scene.shapes().values()) {
      for (Aspect.Shadow s : shadows(shape.prisms())) {
        for (Coordinate c : s.area().getCoordinates()) {
          double off = Math.abs((front ? c.x : c.y) - y);
          double there = front ? c.y : c.x;
          // of places alike the one nearest to the dimension line
          if (off < nearest - 0.01 || off < nearest + 0.01 && there < best) {
            nearest = Math.min(off, nearest);
            best = there;
          }
        }
      }
    }
    return best;
  }

  private Tiers.Span span(
      String subject, double a, double b, double acrossA, double acrossB, String name) {
    String figure = scene.layout().units().bare(Math.abs(b - a), FigureSort.LENGTH);
    return new Tiers.Span(subject, a, b, acrossA, acrossB, name + " " + figure);
  }
}
