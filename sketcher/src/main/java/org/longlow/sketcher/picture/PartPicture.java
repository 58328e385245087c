package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Ground;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Mark;

/** One part alone, drawn as it is on the machine. */
public final class PartPicture {

  private PartPicture() {}

  /**
   * Returns the picture at real size, in the axes of the road.
   *
   * @param layout that the part is from
   * @param places of its pins, in the axes of the frame
   * @param denominator N of the scale 1:N for strokes
   */
  public static Drawing of(
      Layout layout, Part part, Places places, Ground ground, double denominator) {
    PartShape shape = Shapes.of(part, places, false);
    Scene scene =
        new Scene(
            part.name(),
            layout,
            "",
            Optional.empty(),
            places,
            Map.of(part.name(), shape),
            ground,
            List.of(),
            List.of(),
            Map.of(),
            Map.of(),
            Map.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            0,
            AsDrawn.NOTHING);
    Canvas canvas = new Canvas(denominator);
    PartInk.draw(canvas, scene, shape);
    return ElevationPicture.onRoad(canvas.drawing(part.name()), scene);
  }

  /** Returns the box round what is filled; centre lines stick out of it. */
  public static Envelope body(Drawing drawing) {
    Envelope box = new Envelope();
    drawing.layers().stream()
        .flatMap(layer -> layer.marks().stream())
        .filter(mark -> mark instanceof Mark.Shape shape && shape.style().fill() != null)
        .forEach(mark -> box.expandToInclude(((Mark.Shape) mark).geometry().getEnvelopeInternal()));
    return box;
  }
}
