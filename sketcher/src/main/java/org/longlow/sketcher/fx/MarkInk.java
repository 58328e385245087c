package org.longlow.sketcher.fx;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Mark;

/**
 * One mark of a drawing as the card shows it.
 *
 * @param fills how opaque areas are, as a share of what they are on paper
 * @param opacity of the whole mark, in (0, 1]
 */
record MarkInk(
    DrawingPainter painter, Mark mark, ViewFrame frame, double fills, double opacity, Spots.Box box)
    implements Ink {

  /** A line of more points is taken to reach all over its box. */
  private static final int FEW = 12;

  static MarkInk of(
      DrawingPainter painter, Mark mark, ViewFrame frame, double fills, double opacity) {
    return new MarkInk(painter, mark, frame, fills, opacity, box(painter, mark, frame));
  }

  private static Spots.Box box(DrawingPainter painter, Mark mark, ViewFrame frame) {
    return mark instanceof Mark.Shape shape
        ? Reach.grown(
            frame.onScreen(shape.geometry().getEnvelopeInternal()), besidePx(painter, shape))
        : Reach.grown(painter.box((Mark.Words) mark, frame), Reach.SMOOTHED_PX);
  }

  private static double besidePx(DrawingPainter painter, Mark.Shape shape) {
    return painter.strokePx(shape.style()) / 2 + Reach.SMOOTHED_PX;
  }

  @Override
  public Optional<Spots.Box> within(Spots.Box px) {
    Optional<Spots.Box> part = Reach.shared(box, px);
    return part.isPresent()
            && mark instanceof Mark.Shape shape
            && shape.geometry() instanceof LineString line
            && line.getNumPoints() <= FEW
        ? ofLine(line, besidePx(painter, shape), px)
        : part;
  }

  private Optional<Spots.Box> ofLine(LineString line, double beside, Spots.Box px) {
    CoordinateSequence points = line.getCoordinateSequence();
    double[] x = new double[points.size()];
    double[] y = new double[points.size()];
    for (int i = 0; i < x.length; i++) {
      x[i] = frame.screenX(points.getX(i));
      y[i] = frame.screenY(points.getY(i));
    }
    return Reach.ofLine(x, y, beside, px);
  }

  @Override
  public void paint(GraphicsContext gc) {
    gc.setGlobalAlpha(opacity);
    painter.mark(gc, mark, frame, fills);
  }

  /** Whether it is the same mark, seen in the same way; its box follows from that. */
  @Override
  public boolean equals(Object other) {
    return other instanceof MarkInk that
        && mark == that.mark
        && painter == that.painter
        && frame.equals(that.frame)
        && fills == that.fills
        && opacity == that.opacity;
  }

  @Override
  public int hashCode() {
    return System.identityHashCode(mark);
  }
}
