package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
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

  private final Scene scene;
  private final Aspect aspect;
  private final double n;
  private final Canvas canvas;
  private final AspectBodies bodies;
  private final Envelope machine;

  private AspectPicture(Scene scene, AspectBodies bodies, double denominator) {
    this.bodies = bodies;
    this.machine = bodies.machine();
    this.scene = scene;
    this.aspect = bodies.eye().aspect();
    this.n = denominator;
    this.canvas = new Canvas(denominator);
  }

  /** Returns a study as {@link #of(Study, PictureOptions)}, with what touches first marked. */
  static Drawing withTouches(Study study, PictureOptions options) {
    Scene scene = Scenes.of(study, options);
    Drawing view = of(study, scene, options);
    Eye eye = Eye.of(options.aspect(), scene.ground(), scene.leaned());
    List<TouchRing> touches =
        FirstTouches.of(study, options.aspect(), View.shown(study, options).seated());
    return TouchInk.on(view, touches, view.boundsMm(), eye, options.denominator());
  }

  /** Returns a study as it is seen from the front or from above, as options ask. */
  static Drawing of(Study study, PictureOptions options) {
    return of(study, Scenes.of(study, options), options);
  }

  private static Drawing of(Study study, Scene scene, PictureOptions options) {
    double n = options.denominator();
    AspectBodies bodies = LastSeen.of(study, options);
    boolean straight = scene.leaned().isEmpty() && scene.steerRad() == 0;
    boolean measured = options.dimensions() && straight;
    AspectDimensions measures = new AspectDimensions(scene, bodies, Detail.MAIN, n);
    Drawing drawing = of(scene, bodies, measured ? measures.all() : List.of(), n);
    List<Layer> layers = new ArrayList<>(drawing.layers());
    layers.addAll(chosen(bodies, options.chosen(), n));
    Drawing picture = new Drawing(drawing.title(), layers);
    Layer findings = FindingInk.layer(scene, picture, n, f -> bodies.eye().page(f, scene.shapes()));
    return findings.marks().isEmpty() ? picture : picture.plus(findings);
  }

  /** Returns the edge of what is picked, once more in the colour of that. */
  private static List<Layer> chosen(AspectBodies bodies, String subject, double n) {
    List<Geometry> outlines =
        bodies.all().stream()
            .filter(b -> b.thing().subject().equals(subject))
            .map(b -> b.seen().outline())
            .toList();
    Canvas canvas = new Canvas(n);
    canvas.shape(
        PictureLayer.CHOSEN,
        subject,
        Sightlines.union(outlines),
        Style.line(Tone.CHOSEN, ElevationPicture.CHOSEN_MM));
    return canvas.drawing("").layers();
  }

  /**
   * Returns a view at real size.
   *
   * @param bodies what is seen of the scene from there
   * @param dimensions what is measured on it
   */
  static Drawing of(Scene scene, AspectBodies bodies, List<Mark> dimensions, double denominator) {
    AspectPicture picture = new AspectPicture(scene, bodies, denominator);
    bodies.all().forEach(b -> picture.draw(b.thing(), b.seen()));
    picture.ground();
    picture.middle();
    Drawing drawing = picture.canvas.drawing(scene.title());
    return dimensions.isEmpty()
        ? drawing
        : drawing.plus(
            new Layer(PictureLayer.DIMENSIONS.id(), PictureLayer.DIMENSIONS.title(), dimensions));
  }

  private void draw(AspectBodies.Thing thing, Sightlines.Seen seen) {
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
      double past = canvas.paper(AspectDimensions.PAST_MM);
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
    double past = canvas.paper(AspectDimensions.PAST_MM);
    Style chain = Canvas.chain(Tone.DIMENSION);
    if (aspect == Aspect.FRONT) {
      PointMm foot = bodies.eye().page(scene.ground().toFrame(PointMm.ORIGIN), 0);
      PointMm up = bodies.eye().page(scene.ground().toFrame(new PointMm(0, 1)), 0).minus(foot);
      double high = (machine.getMaxY() + past - foot.z()) / up.z();
      canvas.line(
          PictureLayer.AXES,
          "middle",
          chain,
          foot.minus(up.times(past / 2)),
          foot.plus(up.times(high)));
    } else {
      PointMm rear = new PointMm(machine.getMinX() - past, 0);
      PointMm front = new PointMm(machine.getMaxX() + past, 0);
      canvas.line(PictureLayer.AXES, "middle", chain, rear, front);
    }
  }
}
