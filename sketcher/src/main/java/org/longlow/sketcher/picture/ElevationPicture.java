package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.locationtech.jts.geom.util.GeometryFixer;
import org.locationtech.jts.operation.union.UnaryUnionOp;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.LineType;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws the machine in side elevation with its people on it. */
public final class ElevationPicture {

  static final double CHOSEN_MM = 0.7;

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

  /** Returns the stance that the elevation shows, its wheels moved; empty as drawn. */
  public static Optional<Standing> standing(Study study, PictureOptions options) {
    return Scenes.standing(study, options);
  }

  /** Returns the stance that the elevation shows, its wheels where they are in it. */
  public static Optional<Standing> stance(Study study, PictureOptions options) {
    return Scenes.stance(study, options);
  }

  /** Draws a scene; x forward from the rear contact point, y up from the road. */
  static Drawing of(Scene scene, PictureOptions options) {
    Canvas canvas = new Canvas(options.denominator());
    MachineInk.road(canvas, scene);
    byWidth(scene).forEach(shape -> PartInk.draw(canvas, scene, shape));
    scene.ghosts().forEach(m -> PersonInk.ghost(canvas, m));
    scene.people().forEach(m -> PersonInk.seated(canvas, m));
    LineInk.draw(canvas, scene);
    RunInk.draw(canvas, scene);
    ShockInk.draw(canvas, scene);
    phantoms(canvas, scene);
    MachineInk.steering(canvas, scene);
    MachineInk.sight(canvas, scene);
    MachineInk.centreOfMass(canvas, scene);
    if (options.pins()) {
      MachineInk.pins(canvas, scene);
    }
    chosen(canvas, options.chosen());
    double n = options.denominator();
    AffineTransformation toRoad = toRoad(scene);
    Drawing machine = onRoad(canvas.drawing(scene.title()), toRoad);
    Drawing drawing = with(machine, KeptInk.layer(scene, machine, n, options.chosen()));
    if (options.dimensions()) {
      drawing = drawing.plus(DimensionInk.layer(scene, drawing, n, Detail.MAIN));
    }
    if (options.names()) {
      drawing = with(drawing, NameInk.layer(scene, drawing, toRoad, n, options.nameWidthMm()));
    }
    return with(
        drawing,
        FindingInk.layer(scene, drawing, n, f -> scene.ground().toRoad(f.where().orElseThrow())));
  }

  private static Drawing with(Drawing drawing, Layer layer) {
    return layer.marks().isEmpty() ? drawing : drawing.plus(layer);
  }

  /** Returns parts in drawing order: what stands nearer to the viewer, at the right, later. */
  private static List<PartShape> byWidth(Scene scene) {
    List<PartShape> all = new ArrayList<>(scene.shapes().values());
    all.sort(Comparator.comparingDouble(PartShape::rightMm));
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
          // a boot drawn round a foot that is bent far up crosses itself at the ankle
          areas.add(GeometryFixer.fix(shape.geometry()));
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

  private static AffineTransformation toRoad(Scene scene) {
    PointMm along = scene.ground().along();
    PointMm rear = scene.ground().rearContact();
    AffineTransformation t = AffineTransformation.translationInstance(-rear.x(), -rear.z());
    t.compose(AffineTransformation.rotationInstance(-along.angleRad()));
    return t;
  }

  /** Returns the drawing with the machine put on the road; words stay level. */
  static Drawing onRoad(Drawing drawing, Scene scene) {
    return onRoad(drawing, toRoad(scene));
  }

  private static Drawing onRoad(Drawing drawing, AffineTransformation t) {
    List<Layer> layers = new ArrayList<>();
    // a body is painted in two marks of one shape
    Map<Geometry, Geometry> moved = new IdentityHashMap<>();
    for (Layer layer : drawing.layers()) {
      List<Mark> marks = layer.marks().stream().map(m -> levelled(m, t, moved)).toList();
      layers.add(new Layer(layer.id(), layer.title(), marks));
    }
    return new Drawing(drawing.title(), layers);
  }

  private static Mark levelled(Mark mark, AffineTransformation t, Map<Geometry, Geometry> shapes) {
    if (mark instanceof Mark.Shape s) {
      return new Mark.Shape(
          s.subject(), shapes.computeIfAbsent(s.geometry(), t::transform), s.style());
    }
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
