package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Steering;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.shape.Cushions;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Dimensions the elevation; everything in road axes. */
final class DimensionInk {

  /** Radii of the arc of the rake that are tried, paper mm. */
  private static final double[] RAKE_RADII_MM = {16, 20, 24, 29, 34};

  /** Where tiers under the road begin, paper mm. */
  private static final double UNDER_MM = -2.6;

  private final Scene scene;
  private final Dimensions dims;
  private final double n;
  private final Envelope box;
  private final List<Tiers.Span> below = new ArrayList<>();
  private final List<Tiers.Span> left = new ArrayList<>();
  private final List<Tiers.Span> right = new ArrayList<>();
  private final List<Mark> marks = new ArrayList<>();
  private final WordSpots spots;
  private final BodyEdges bodies;

  /** What is written on the machine itself, once it is known where lines run down from it. */
  private final List<Runnable> onMachine = new ArrayList<>();

  private DimensionInk(Scene scene, Drawing picture, double denominator) {
    this.scene = scene;
    this.n = denominator;
    this.spots = new WordSpots(picture, denominator);
    this.bodies = BodyEdges.of(picture);
    this.dims = new Dimensions(denominator, 2.5, 2.5, Tone.DIMENSION);
    this.box = MachineInk.bounds(scene);
    for (Manikin m : scene.people()) {
      for (Coordinate c : m.withoutArms().getCoordinates()) {
        PointMm p = scene.ground().toRoad(new PointMm(c.x, c.y));
        box.expandToInclude(p.x(), p.z());
      }
    }
  }

  /**
   * Returns the dimensions as a layer.
   *
   * @param picture what is on the card already
   * @param detail how much is dimensioned
   */
  static Layer layer(Scene scene, Drawing picture, double denominator, Detail detail) {
    DimensionInk ink = new DimensionInk(scene, picture, denominator);
    boolean full = detail == Detail.FULL;
    ink.wheels(full);
    if (detail != Detail.OVERALL) {
      ink.steering();
    }
    ink.heights(detail);
    if (full) {
      ink.places();
    }
    double edge = MachineInk.ROAD_MM * 0.4;
    double top = ink.box.getMaxY();
    ink.lay(Tiers.Side.BELOW, UNDER_MM * denominator, Double.POSITIVE_INFINITY, ink.below);
    ink.lay(Tiers.Side.LEFT, ink.box.getMinX() - edge, top, ink.left);
    ink.lay(Tiers.Side.RIGHT, ink.box.getMaxX() + edge, top, ink.right);
    ink.spots.keepOff(ink.marks);
    ink.onMachine.forEach(Runnable::run);
    return new Layer(PictureLayer.DIMENSIONS.id(), PictureLayer.DIMENSIONS.title(), ink.marks);
  }

  private void lay(Tiers.Side side, double base, double end, List<Tiers.Span> spans) {
    marks.addAll(new Tiers(dims, side, base, end, spots.taken(), bodies).lay(spans));
  }

  private PointMm road(PointMm frame) {
    return scene.ground().toRoad(frame);
  }

  private void wheels(boolean full) {
    if (scene.wheel(Part.End.REAR).isEmpty() || scene.wheel(Part.End.FRONT).isEmpty()) {
      return;
    }
    double base = scene.ground().wheelbaseMm();
    below.add(span("wheelbase", 0, base, 0, 0, "wheelbase" + PressedWords.pressed(scene)));
    below.add(
        span(
            "length",
            box.getMinX(),
            box.getMaxX(),
            heightAt(box.getMinX()),
            heightAt(box.getMaxX()),
            "length"));
    if (full) {
      for (Part.End end : Part.End.values()) {
        WheelPart wheel = scene.wheel(end).get();
        PointMm axle = road(scene.places().pin(wheel.axle()));
        List<Tiers.Span> at = end == Part.End.REAR ? left : right;
        at.add(span("part:" + wheel.name(), 0, axle.z(), axle.x(), axle.x(), "axle"));
      }
    }
  }

  /** Returns how high the outermost point at {@code x} is, mm. */
  private double heightAt(double x) {
    double best = 0;
    double nearest = Double.POSITIVE_INFINITY;
    for (PartShape shape : scene.shapes().values()) {
      for (Coordinate c : shape.outline().getCoordinates()) {
        PointMm p = road(new PointMm(c.x, c.y));
        if (Math.abs(p.x() - x) < nearest) {
          nearest = Math.abs(p.x() - x);
          best = p.z();
        }
      }
    }
    return best;
  }

  private void steering() {
    if (scene.front().isEmpty() || scene.wheel(Part.End.FRONT).isEmpty()) {
      return;
    }
    FrontPart front = scene.front().get();
    PointMm top = scene.places().pin(front.top());
    PointMm bottom = scene.places().pin(front.bottom());
    PointMm foot = MachineInk.axisFoot(scene, top, bottom);
    if (foot == null) {
      return;
    }
    double contact = scene.ground().wheelbaseMm();
    double footX = road(foot).x();
    below.add(span("part:" + front.name(), contact, footX, 0, 0, "trail", footX - contact));
    PointMm t = road(top);
    double rake = Steering.rakeRad(t, road(bottom));
    if (Math.abs(rake) > 1e-3) {
      onMachine.add(() -> rake("part:" + front.name(), t, rake));
    }
  }

  /** The arc of the rake is drawn as far up as its figure needs to stand clear of the machine. */
  private void rake(String subject, PointMm top, double rakeRad) {
    String text = "rake" + PressedWords.pressed(scene) + " " + AsDrawn.degrees(rakeRad);
    List<Mark.Words> ways = new ArrayList<>();
    for (double radius : RAKE_RADII_MM) {
      double over = top.z() + (radius + 3.5) * n;
      double side = top.z() + (radius - 2) * n;
      // the axis leans over the whole height of the words
      double high = radius - 2 + (rakeRad > 0 ? dims.textMm() + 0.5 : -1);
      double leaning = top.x() - high * n * Math.tan(rakeRad);
      ways.add(
          words(subject, text, top.x() - radius * n * Math.sin(rakeRad / 2), over, Anchor.MIDDLE));
      boolean back = rakeRad > 0;
      ways.add(words(subject, text, top.x() + n, side, back ? Anchor.START : Anchor.END));
      ways.add(words(subject, text, leaning - n, side, back ? Anchor.END : Anchor.START));
    }
    Mark.Words best = spots.best(ways, w -> w);
    double radius = RAKE_RADII_MM[ways.indexOf(best) / 3];
    for (Mark m :
        dims.angular(
            subject, top.x(), top.z(), radius * n, Math.PI / 2, Math.PI / 2 + rakeRad, "")) {
      if (!(m instanceof Mark.Words)) {
        marks.add(m);
      }
    }
    onCard(best);
  }

  private Mark.Words words(String subject, String text, double x, double y, Anchor anchor) {
    return new Mark.Words(subject, text, x, y, dims.textMm(), 0, anchor, dims.tone());
  }

  /** Writes words with card behind them, so that lines of the picture do not run through. */
  private void onCard(Mark.Words mark) {
    Envelope back = Labels.box(mark, n);
    marks.add(new Mark.Shape(mark.subject(), Planar.rectangle(back), Style.area(Tone.PAPER, 1)));
    marks.add(mark);
  }

  private void heights(Detail detail) {
    double top = 0;
    double topX = 0;
    double low = Double.POSITIVE_INFINITY;
    PointMm lowest = null;
    String lowestName = "";
    for (PartShape shape : scene.shapes().values()) {
      Part part = shape.part();
      Duty duty = part.traits().duty();
      boolean belly = !(duty.atWheel() || duty == Duty.STAND || insideWheel(shape));
      for (Coordinate c : shape.outline().getCoordinates()) {
        PointMm p = road(new PointMm(c.x, c.y));
        if (p.z() > top) {
          top = p.z();
          topX = p.x();
        }
        if (belly && p.z() < low) {
          low = p.z();
          lowest = p;
          lowestName = part.name();
        }
      }
    }
    if (top > 0) {
      left.add(span("height", 0, top, topX, topX, "height"));
    }
    if (detail == Detail.OVERALL) {
      return;
    }
    if (lowest != null && low > 0) {
      clearance(lowest, lowestName);
    }
    List<CushionPart> pans = SeatParts.pans(scene.layout()).toList();
    pans.forEach(
        pan -> seat(pan, pans.size() > 1 ? pan.seat() + " seat" : "seat", detail == Detail.FULL));
  }

  /** A hub motor or a brake inside its wheel is not the belly. */
  private boolean insideWheel(PartShape shape) {
    return scene.shapes().values().stream()
        .anyMatch(w -> w.part() instanceof WheelPart && w.outline().contains(shape.outline()));
  }

  /** Seat height: where the pan's surface is under the H-point, or at the middle of its board. */
  private void seat(CushionPart pan, String seat, boolean full) {
    PointMm from = scene.places().pin(pan.from());
    PointMm to = scene.places().pin(pan.to());
    PointMm up = Cushions.towardsPerson(pan, from, to);
    double thick =
        pan.layers().stream().mapToDouble(l -> scene.places().value(l.thickness())).sum();
    PointMm on = from.towards(to, 0.5);
    String sitter = "load";
    for (Manikin m : scene.people()) {
      if (m.seat().equals(pan.seat())) {
        sitter = m.name();
        PointMm along = to.minus(from);
        double share = m.joints().hip().minus(from).dot(along) / along.dot(along);
        on = from.towards(to, Math.max(0, Math.min(1, share)));
      }
    }
    PointMm free = road(on.plus(up.times(thick)));
    String subject = "part:" + pan.name();
    left.add(span(subject, 0, free.z(), free.x(), free.x(), seat + ", free"));
    Scene.Sunk sunk = scene.sunk().get(pan.name());
    if (full && sunk != null) {
      PointMm pressed = road(on.plus(up.times(thick - sunk.totalMm())));
      left.add(span(subject, 0, pressed.z(), pressed.x(), pressed.x(), seat + ", under " + sitter));
    }
  }

  /**
   * Between belly and road where its words have room beside the tyres; else they stand under the
   * road.
   */
  private void clearance(PointMm lowest, String part) {
    String subject = "part:" + part;
    String text = "clear " + figure(lowest.z());
    List<Mark.Words> ways = new ArrayList<>();
    for (double share : new double[] {0.5, 0.75, 0.25}) {
      double z = share * lowest.z() - 0.5 * dims.textMm() * n;
      ways.add(words(subject, text, lowest.x() + 1.2 * n, z, Anchor.START));
      ways.add(words(subject, text, lowest.x() - 1.2 * n, z, Anchor.END));
    }
    ways.removeIf(w -> overTyres(Labels.box(w, n)));
    if (ways.isEmpty()) {
      double z = (UNDER_MM - 1.2 - dims.textMm()) * n;
      double x = lowest.x();
      List<Mark.Words> under =
          List.of(
              words(subject, text, x + 1.2 * n, z, Anchor.START),
              words(subject, text, x - 1.2 * n, z, Anchor.END));
      Mark.Words best = spots.best(under, w -> w);
      upright(subject, lowest, z);
      onMachine.add(() -> onCard(best)); // over what runs down there
    } else {
      onMachine.add(
          () -> {
            upright(subject, lowest, 0);
            onCard(spots.best(ways, w -> w));
          });
    }
  }

  /** The line of the clearance, drawn on below the road as far as its words need. */
  private void upright(String subject, PointMm lowest, double bottom) {
    double x = lowest.x();
    for (Mark m : dims.vertical(subject, x, 0, x, lowest.z(), x, "")) {
      if (!(m instanceof Mark.Words)) {
        marks.add(m);
      }
    }
    if (bottom < 0) {
      marks.add(new Mark.Shape(subject, Planar.line(x, 0, x, bottom), Style.narrow(dims.tone())));
    }
  }

  private boolean overTyres(Envelope box) {
    for (Part.End end : Part.End.values()) {
      Optional<WheelPart> wheel = scene.wheel(end);
      if (wheel.isPresent() && scene.shapes().get(wheel.get().name()) != null) {
        Envelope round = new Envelope();
        PartShape shape = scene.shapes().get(wheel.get().name());
        for (Coordinate c : shape.outline().getCoordinates()) {
          PointMm p = road(new PointMm(c.x, c.y));
          round.expandToInclude(p.x(), p.z());
        }
        double x = Math.max(box.getMinX(), Math.min(box.getMaxX(), round.centre().x));
        double z = Math.max(box.getMinY(), Math.min(box.getMaxY(), round.centre().y));
        if (Math.hypot(x - round.centre().x, z - round.centre().y) < round.getHeight() / 2) {
          return true;
        }
      }
    }
    return false;
  }

  /** Places of H-point, pegs and grips from the rear contact and above the road. */
  private void places() {
    for (Manikin m : scene.people()) {
      PointMm hip = road(m.joints().hip());
      String subject = "person:" + m.name();
      String whose = scene.people().size() > 1 ? "H-point of " + m.name() : "H-point";
      below.add(span(subject, 0, hip.x(), 0, hip.z(), whose));
      right.add(span(subject, 0, hip.z(), hip.x(), hip.x(), whose));
    }
    for (RestPart rest : scene.layout().parts(RestPart.class).toList()) {
      PointMm at = road(scene.places().pin(rest.at()));
      String subject = "part:" + rest.name();
      String words = RestWords.of(scene.layout(), rest);
      below.add(span(subject, 0, at.x(), 0, at.z(), words));
      right.add(span(subject, 0, at.z(), at.x(), at.x(), words));
    }
  }

  private Tiers.Span span(
      String subject, double a, double b, double acrossA, double acrossB, String name) {
    return span(subject, a, b, acrossA, acrossB, name, Math.abs(b - a));
  }

  private Tiers.Span span(
      String subject,
      double a,
      double b,
      double acrossA,
      double acrossB,
      String name,
      double value) {
    return new Tiers.Span(subject, a, b, acrossA, acrossB, name + " " + figure(value));
  }

  private String figure(double mm) {
    return scene.layout().units().bare(mm, FigureSort.LENGTH);
  }
}
