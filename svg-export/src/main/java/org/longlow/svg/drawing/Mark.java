package org.longlow.svg.drawing;

import java.util.Objects;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.CoordinateSequenceFilter;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;

/** One thing drawn: a shape or a line of words. */
public sealed interface Mark {

  /**
   * Returns the name of the thing drawn, for picking (for example {@code part:tank}); may be empty,
   * never null.
   */
  String subject();

  /**
   * Returns the mark with its places transformed; stroke widths and letter heights stay, words turn
   * with the plane.
   */
  Mark transformed(AffineTransformation t);

  /**
   * A geometry with a style.
   *
   * @param geometry any JTS geometry in mm, finite coordinates; points are not drawn; must not be
   *     modified afterwards
   */
  record Shape(String subject, Geometry geometry, Style style) implements Mark {
    public Shape {
      Objects.requireNonNull(subject, "subject of a shape (may be empty)");
      Objects.requireNonNull(style, "style of shape " + subject);
      if (geometry == null) {
        throw new IllegalArgumentException("shape '" + subject + "' has no geometry");
      }
      geometry.apply(new FiniteOnly(subject));
    }

    @Override
    public Shape transformed(AffineTransformation t) {
      return new Shape(subject, t.transform(geometry), style);
    }
  }

  /**
   * A single line of words.
   *
   * @param x place of the anchor, mm
   * @param y place of the anchor, mm, up
   * @param heightMm height of capitals on paper, mm, in (0, 200]
   * @param rotationDeg direction of reading, deg, 0 to the right, positive counter-clockwise
   */
  record Words(
      String subject,
      String text,
      double x,
      double y,
      double heightMm,
      double rotationDeg,
      Anchor anchor,
      Tone tone)
      implements Mark {
    public Words {
      Objects.requireNonNull(subject, "subject of words (may be empty)");
      Objects.requireNonNull(text, "text of words (may be empty)");
      Objects.requireNonNull(anchor, "anchor of words");
      Objects.requireNonNull(tone, "tone of words");
      if (!Double.isFinite(x) || !Double.isFinite(y) || !Double.isFinite(rotationDeg)) {
        throw new IllegalArgumentException(
            "words '"
                + text
                + "' need a finite place and direction, got x="
                + x
                + ", y="
                + y
                + ", rotation="
                + rotationDeg);
      }
      if (!(heightMm > 0 && heightMm <= 200)) {
        throw new IllegalArgumentException(
            "words '" + text + "' are " + heightMm + " mm high; allowed: more than 0, at most 200");
      }
    }

    /** Returns words that read from left to right. */
    public static Words level(
        String text, double x, double y, double heightMm, Anchor anchor, Tone tone) {
      return new Words("", text, x, y, heightMm, 0, anchor, tone);
    }

    @Override
    public Words transformed(AffineTransformation t) {
      Coordinate place = t.transform(new Coordinate(x, y), new Coordinate());
      double a = Math.toRadians(rotationDeg);
      Coordinate ahead =
          t.transform(new Coordinate(x + Math.cos(a), y + Math.sin(a)), new Coordinate());
      double turned =
          t.isIdentity()
              ? rotationDeg
              : Math.toDegrees(Math.atan2(ahead.y - place.y, ahead.x - place.x));
      // A direction that did not turn keeps its exact figure, so files stay free of rounding noise.
      double kept = Math.abs(turned - rotationDeg) < 1e-6 ? rotationDeg : turned;
      return new Words(subject, text, place.x, place.y, heightMm, kept, anchor, tone);
    }

    /** Returns the estimated width on paper, mm. */
    public double widthMm() {
      return Lettering.widthMm(Lettering.printable(text), heightMm);
    }

    /** Returns the box round the words, mm, for a drawing at paper scale; descenders included. */
    public Envelope boxMm() {
      double w = widthMm();
      double a = Math.toRadians(rotationDeg);
      Envelope box = new Envelope();
      double base = -anchor.up() * heightMm;
      for (double along : new double[] {-anchor.along() * w, (1 - anchor.along()) * w}) {
        for (double up : new double[] {base - 0.3 * heightMm, base + 1.05 * heightMm}) {
          box.expandToInclude(
              x + along * Math.cos(a) - up * Math.sin(a),
              y + along * Math.sin(a) + up * Math.cos(a));
        }
      }
      return box;
    }
  }

  /** Refuses NaN and infinite coordinates, naming the shape. */
  final class FiniteOnly implements CoordinateSequenceFilter {
    private final String subject;

    FiniteOnly(String subject) {
      this.subject = subject;
    }

    @Override
    public void filter(CoordinateSequence seq, int i) {
      if (!Double.isFinite(seq.getX(i)) || !Double.isFinite(seq.getY(i))) {
        throw new IllegalArgumentException(
            "shape '"
                + subject
                + "' needs finite mm coordinates, got x="
                + seq.getX(i)
                + ", y="
                + seq.getY(i));
      }
    }

    @Override
    public boolean isDone() {
      return false;
    }

    @Override
    public boolean isGeometryChanged() {
      return false;
    }
  }
}
