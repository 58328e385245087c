package org.longlow.svg.drawing;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Objects;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.util.AffineTransformation;

/** A picture: layers of marks in millimetres, x to the right, y up. Layer ids are unique. */
public record Drawing(String title, List<Layer> layers) {

  public Drawing {
    Objects.requireNonNull(title, "title of a drawing (may be empty)");
    layers = List.copyOf(layers);
    Set<String> seen = new HashSet<>();
    for (Layer layer : layers) {
      if (!seen.add(layer.id())) {
        throw new IllegalArgumentException(
            "drawing '" + title + "' has two layers with id '" + layer.id() + "'");
      }
    }
  }

  /** Returns a drawing of one layer. */
  public static Drawing of(String title, Layer... layers) {
    return new Drawing(title, List.of(layers));
  }

  /**
   * Returns the box round all shapes and the anchor points of all words, mm; a null envelope if
   * there is nothing.
   */
  public Envelope boundsMm() {
    Envelope box = new Envelope();
    for (Layer layer : layers) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape) {
          box.expandToInclude(shape.geometry().getEnvelopeInternal());
        } else if (mark instanceof Mark.Words words) {
          box.expandToInclude(words.x(), words.y());
        }
      }
    }
    return box;
  }

  /**
   * Returns the box round all shapes and all words at their paper size, mm; meaningful at paper
   * scale.
   */
  public Envelope paperBoundsMm() {
    Envelope box = boundsMm();
    for (Layer layer : layers) {
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Words words) {
          box.expandToInclude(words.boxMm());
        }
      }
    }
    return box;
  }

  /** Returns the drawing with one more layer on top. */
  public Drawing plus(Layer layer) {
    List<Layer> all = new ArrayList<>(layers);
    all.add(layer);
    return new Drawing(title, all);
  }

  /** Returns the drawing moved by (dx, dy) mm. */
  public Drawing moved(double dx, double dy) {
    return transformed(AffineTransformation.translationInstance(dx, dy));
  }

  /**
   * Returns the drawing scaled about the origin; stroke widths and letter heights are kept.
   *
   * @param factor finite and greater than 0
   */
  public Drawing scaled(double factor) {
    if (!(factor > 0) || !Double.isFinite(factor)) {
      throw new IllegalArgumentException(
          "scale factor is " + factor + "; allowed: finite, greater than 0");
    }
    return transformed(AffineTransformation.scaleInstance(factor, factor));
  }

  /** Returns the drawing with every mark transformed; stroke widths and letter heights are kept. */
  public Drawing transformed(AffineTransformation t) {
    return new Drawing(title, layers.stream().map(l -> l.transformed(t)).toList());
  }
}
