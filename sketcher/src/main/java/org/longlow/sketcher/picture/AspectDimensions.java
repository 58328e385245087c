package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.words.FigureSort;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;

/** Dimensions of a front view or plan, in tiers beside it. */
final class AspectDimensions {

  /** How far ground and middle plane run past the machine, paper mm. */
  static final double PAST_MM = 6;

  /** Straight pieces go round a curve by 0.2 mm at most; a little more for what is reckoned. */
  private static final double ROUND_MM = 0.25;

  private final Scene scene;
  private final AspectBodies bodies;
  private final Detail detail;
  private final double n;
  private final boolean front;
  private final Envelope machine;
  private final List<Tiers.Span> below = new ArrayList<>();
  private final List<Tiers.Span> left = new ArrayList<>();
  private final List<Tiers.Span> right = new ArrayList<>();

  AspectDimensions(Scene scene, AspectBodies bodies, Detail detail, double denominator) {
    this.scene = scene;
    this.bodies = bodies;
    this.detail = detail;
    this.n = denominator;
    this.front = bodies.eye().aspect() == Aspect.FRONT;
    this.machine = bodies.machine();
  }

  /** Returns those of a view that stands alone. */
  List<Mark> all() {
    if (machine.isNull()) {
      return List.of();
    }
    widths();
    if (front) {
      left.add(span("height", 0, machine.getMaxY(), 0, 0, "height"));
    } else {
      Envelope side = MachineInk.bounds(scene);
      double rear = exact(machine.getMinX(), side.getMinX());
      double ahead = exact(machine.getMaxX(), side.getMaxX());
      below.add(span("length", rear, ahead, 0, 0, "length"));
    }
    if (front && detail == Detail.FULL) {
      LampSpans lamps = new LampSpans(scene);
      below.addAll(lamps.across());
      right.addAll(lamps.up(true));
      left.addAll(lamps.up(false));
    }
    return lay();
  }

  /** Returns how broad it is, for a view beside the elevation, which says the rest. */
  List<Mark> breadth() {
    if (machine.isNull()) {
      return List.of();
    }
    widths();
    return lay();
  }

  private List<Mark> lay() {
    Dimensions dims = new Dimensions(n, Canvas.SMALL_MM, Canvas.SMALL_MM, Tone.DIMENSION);
    double under = front ? -2.6 * n : machine.getMinY() - 2.6 * n;
    double beside = (PAST_MM + 2) * n;
    List<Envelope> words = new ArrayList<>();
    List<Mark> marks = new ArrayList<>();
    double any = Double.POSITIVE_INFINITY;
    marks.addAll(new Tiers(dims, Tiers.Side.BELOW, under, any, words, BodyEdges.NONE).lay(below));
    marks.addAll(
        new Tiers(dims, Tiers.Side.LEFT, machine.getMinX() - beside, any, words, BodyEdges.NONE)
            .lay(left));
    marks.addAll(
        new Tiers(dims, Tiers.Side.RIGHT, machine.getMaxX() + beside, any, words, BodyEdges.NONE)
            .lay(right));
    return marks;
  }

  /** Returns where the elevation has an end, unless it is elsewhere here, such as steered. */
  private static double exact(double round, double side) {
    return Math.abs(round - side) <= ROUND_MM ? side : round;
  }

  /** The machine's own breadth and that of its grips, people not counted. */
  private void widths() {
    List<Tiers.Span> into = front ? below : left;
    double from = front ? machine.getMinX() : machine.getMinY();
    double to = front ? machine.getMaxX() : machine.getMaxY();
    into.add(span("width", from, to, bodies.at(from), bodies.at(to), "width"));
    if (detail == Detail.OVERALL) {
      return;
    }
    for (RestPart rest : scene.layout().parts(RestPart.class).toList()) {
      PartShape shape = scene.shapes().get(rest.name());
      if (rest.type().limb() == RestPart.Limb.HAND && shape != null) {
        double a = -shape.rightMm();
        double b = shape.leftMm();
        if (a > from + 0.05 || b < to - 0.05) {
          String subject = "part:" + rest.name();
          into.add(
              span(subject, a, b, bodies.at(a), bodies.at(b), RestWords.of(scene.layout(), rest)));
        }
      }
    }
  }

  private Tiers.Span span(
      String subject, double a, double b, double acrossA, double acrossB, String name) {
    String figure = scene.layout().units().bare(Math.abs(b - a), FigureSort.LENGTH);
    return new Tiers.Span(subject, a, b, acrossA, acrossB, name + " " + figure);
  }
}
