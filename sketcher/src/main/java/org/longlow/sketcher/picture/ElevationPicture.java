package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws the machine in side elevation with its people on it. */
public final class ElevationPicture {

  private static final double CHOSEN_MM = 0.7;

  private ElevationPicture() {}

  /**
   * Returns the elevation of a study at real size: x forward from the rear contact point, y up from
   * the road.
   *
   * @throws IllegalArgumentException if the stance asked for does not exist
   */
  public static Drawing of(Study study, PictureOptions options) {
    return of(Scenes.of(study, options), options);
  }

  /** Returns the stance that the elevation shows; empty for the machine as drawn. */
  public static Optional<Standing> standing(Study study, PictureOptions options) {
    return Scenes.standing(study, options);
  }

  /** Draws a scene; x forward from the rear contact point, y up from the road. */
  static Drawing of(Scene scene, PictureOptions options) {
    Canvas canvas = new Canvas(options.denominator());
    MachineInk.road(canvas, scene);
    byWidth(scene).forEach(shape -> PartInk.draw(canvas, scene, shape));
    scene.ghosts().forEach(m -> PersonInk.ghost(canvas, m));
    scene.people().forEach(m -> PersonInk.seated(canvas, m));
    phantoms(canvas, scene);
    MachineInk.steering(canvas, scene);
    MachineInk.sight(canvas, scene);
    MachineInk.centreOfMass(canvas, scene);
    if (options.names()) {
      names(canvas, scene);
    }
    if (options.pins()) {
      MachineInk.pins(canvas, scene);
    }
    chosen(canvas, options.chosen());
    Drawing onRoad = onRoad(canvas.drawing(scene.title()), scene);
    Drawing measured =
        options.dimensions()
            ? onRoad.plus(DimensionInk.layer(scene, options.denominator(), false))
            : onRoad;
    Layer findings = FindingInk.layer(scene, measured, options.denominator());
    return findings.marks().isEmpty() ? measured : measured.plus(findings);
  }

  /** Returns parts in drawing order: what stands nearer to the viewer (on the left) later. */
  private static List<PartShape> byWidth(Scene scene) {
    List<PartShape> all = new ArrayList<>(scene.shapes().values());
    all.sort(Comparator.comparingDouble(PartShape::leftMm));
    return all;
  }

  private static void phantoms(Canvas canvas, Scene scene) {
    Style phantom = Canvas.fine(Tone.PENCIL).withLine(LineType.DOUBLE_CHAIN);
    scene
        .phantoms()
        .values()
        .forEach(
            shapes ->
                shapes.forEach(
                    s ->
                        canvas.shape(
                            PictureLayer.MOVED, "part:" + s.part().name(), s.outline(), phantom)));
  }

  /** Names the larger parts where there is room inside them. */
  private static void names(Canvas canvas, Scene scene) {
    List<Envelope> taken = new ArrayList<>();
    for (PartShape shape : scene.shapes().values()) {
      Part part = shape.part();
      if (part.edge().isEmpty() || shape.outline().isEmpty()) {
        continue;
      }
      Point middle = middle(shape.outline());
      Mark.Words words =
          new Mark.Words(
              "part:" + part.name(),
              part.name(),
              middle.getX(),
              middle.getY(),
              Canvas.SMALL_MM,
              0,
              Anchor.CENTRE,
              Tone.INK);
      Envelope box = Labels.box(words, canvas.denominator());
      Geometry back = shape.outline().getFactory().toGeometry(box);
      if (Labels.free(box, taken) && shape.outline().contains(back)) {
        taken.add(box);
        canvas.shape(PictureLayer.NAMES, words.subject(), back, Style.area(Tone.PAPER, 0.75));
        canvas.add(PictureLayer.NAMES, words);
      }
    }
  }

  /**
   * Returns a place inside the largest piece, near its middle: quick, as this runs on every edit.
   */
  private static Point middle(Geometry outline) {
    Geometry largest = outline;
    for (int i = 0; i < outline.getNumGeometries(); i++) {
      Geometry g = outline.getGeometryN(i);
      if (i == 0 || g.getArea() > largest.getArea()) {
        largest = g;
      }
    }
    return largest.getInteriorPoint();
  }

  /** Draws once more, in the colour of what is picked, the outer edge of the chosen subject. */
  private static void chosen(Canvas canvas, String subject) {
    if (subject.isEmpty()) {
      return;
    }
    List<Geometry> areas = new ArrayList<>();
    for (PictureLayer layer : PictureLayer.values()) {
      if (layer.compareTo(PictureLayer.AXES) >= 0) {
        break;
      }
      for (Mark mark : canvas.marks(layer)) {
        if (mark instanceof Mark.Shape shape
            && shape.subject().equals(subject)
            && shape.geometry().getDimension() == 2) {
          areas.add(shape.geometry());
        }
      }
    }
    if (!areas.isEmpty()) {
      canvas.shape(
          PictureLayer.CHOSEN,
          subject,
          UnaryUnionOp.union(areas),
          Style.line(Tone.CHOSEN, CHOSEN_MM));
    }
  }

  /** Returns the drawing with the machine put on the road; words stay level. */
  static Drawing onRoad(Drawing drawing, Scene scene) {
    PointMm along = scene.ground().along();
    PointMm rear = scene.ground().rearContact();
    AffineTransformation t = AffineTransformation.translationInstance(-rear.x(), -rear.z());
    t.compose(AffineTransformation.rotationInstance(-along.angleRad()));
    List<Layer> layers = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      List<Mark> marks = layer.marks().stream().map(m -> levelled(m, t)).toList();
      layers.add(new Layer(layer.id(), layer.title(), marks));
    }
    return new Drawing(drawing.title(), layers);
  }

  private static Mark levelled(Mark mark, AffineTransformation t) {
    Mark moved = mark.transformed(t);
    if (mark instanceof Mark.Words before && moved instanceof Mark.Words after) {
      return new Mark.Words(
          after.subject(),
          after.text(),
          after.x(),
          after.y(),
          after.heightMm(),
          before.rotationDeg(),
          after.anchor(),
          after.tone());
    }
    return moved;
  }
}
