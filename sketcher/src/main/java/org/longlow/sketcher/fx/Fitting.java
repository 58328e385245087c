package org.longlow.sketcher.fx;

import org.locationtech.jts.geom.Envelope;
import org.longlow.sketcher.picture.PictureLayer;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;

/** How a machine is fitted into the card so that it is seen whole, with what names its parts. */
final class Fitting {

  /** Names keep so far from what lies along the edges, px. */
  private static final double NAME_EDGE_PX = 4;

  /** The machine is at least this share of what it could be without figures round it. */
  private static final double LEAST_SHARE = 0.75;

  private Fitting() {}

  /**
   * Returns the frame that shows a machine with its names.
   *
   * @param seen where it is seen, px
   * @param margin left free round machine and people, px; names may run into it
   * @param letters how much larger than usual letters are
   */
  static ViewFrame of(Drawing drawing, Spots.Box seen, double margin, double letters) {
    Envelope box = roomy(machine(drawing, true), machine(drawing, false), seen, margin);
    double left = 0;
    double right = 0;
    ViewFrame frame = fitted(box, seen, left, right, margin);
    // names keep their size, so they need the more room the smaller the machine is; twice is enough
    for (int i = 0; i < 2; i++) {
      double[] ends = names(drawing, frame, letters);
      double overLeft = seen.x() + NAME_EDGE_PX - ends[0];
      double overRight = ends[1] + NAME_EDGE_PX - seen.right();
      if (overLeft <= 0 && overRight <= 0) {
        return frame;
      }
      left = Math.max(0, left + overLeft);
      right = Math.max(0, right + overRight);
      frame = fitted(box, seen, left, right, margin);
    }
    return frame;
  }

  /**
   * Dimensions keep their size on the card, so that the smaller the machine is the more of the box
   * is theirs; with large letters that has no end. They may run out of the card before the machine
   * is less than a share of what it could be.
   */
  private static Envelope roomy(
      Envelope withFigures, Envelope bare, Spots.Box seen, double margin) {
    double scale = fitted(withFigures, seen, 0, 0, margin).pxPerMm();
    if (scale >= LEAST_SHARE * fitted(bare, seen, 0, 0, margin).pxPerMm()) {
      return withFigures;
    }
    Envelope box = new Envelope(bare);
    double more = (1 / LEAST_SHARE - 1) / 2;
    box.expandBy(more * bare.getWidth(), more * bare.getHeight());
    return box;
  }

  private static ViewFrame fitted(
      Envelope box, Spots.Box seen, double left, double right, double margin) {
    return ViewFrame.fitting(box, seen.width() - left - right, seen.height(), margin)
        .panned(seen.x() + left, seen.y());
  }

  /** Returns from where to where across the card names are written, px. */
  private static double[] names(Drawing drawing, ViewFrame frame, double letters) {
    double from = Double.POSITIVE_INFINITY;
    double to = Double.NEGATIVE_INFINITY;
    for (Layer layer : drawing.layers()) {
      if (layer.id().equals(PictureLayer.NAMES.id())) {
        for (Mark mark : layer.marks()) {
          if (mark instanceof Mark.Words words) {
            double wide =
                Lettering.widthMm(words.text(), words.heightMm())
                    * ViewFrame.PX_PER_PAPER_MM
                    * letters;
            double x = frame.screenX(words.x()) - words.anchor().along() * wide;
            from = Math.min(from, x);
            to = Math.max(to, x + wide);
          }
        }
      }
    }
    return new double[] {from, to};
  }

  /**
   * Returns the box round machine, people and dimensions; sight lines and signs may run out of the
   * card.
   */
  static Envelope machine(Drawing drawing) {
    return machine(drawing, true);
  }

  private static Envelope machine(Drawing drawing, boolean figures) {
    Envelope box = new Envelope();
    for (Layer layer : drawing.layers()) {
      boolean written =
          figures
              && (layer.id().equals(PictureLayer.DIMENSIONS.id())
                  || layer.id().equals(PictureLayer.KEPT.id()));
      for (Mark mark : layer.marks()) {
        if (written && mark instanceof Mark.Words words) {
          box.expandToInclude(words.x(), words.y());
        } else if (mark instanceof Mark.Shape shape
            && (written || shape.style().fill() != null)
            && (written
                || shape.subject().startsWith("part:")
                || shape.subject().startsWith("person:"))) {
          box.expandToInclude(shape.geometry().getEnvelopeInternal());
        }
      }
    }
    return box.isNull() ? drawing.boundsMm() : box;
  }
}
