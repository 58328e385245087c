package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.stand.Measured;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws the dimensions that the layout keeps, each where it says; everything in road axes. */
final class KeptInk {

  /** How far a line stands from what is measured where nothing is said, paper mm. */
  private static final double BESIDE_MM = 8;

  /** Radius of the arc of an angle where nothing is said, paper mm. */
  private static final double ARC_MM = 14;

  private final double n;
  private final Units units;
  private final List<Mark> marks = new ArrayList<>();

  private KeptInk(double denominator, Units units) {
    this.units = units;
    this.n = denominator;
  }

  /**
   * Returns them as a layer; one that names what is not there is left out.
   *
   * @param chosen the subject that is picked, which stands out
   */
  static Layer layer(Scene scene, double denominator, String chosen) {
    KeptInk ink = new KeptInk(denominator, scene.layout().units());
    KeptDimensions.of(scene)
        .forEach(
            (name, m) -> {
              Dimension d = scene.layout().dimensions().get(name);
              String subject = "dimension:" + name;
              double off = d.off().map(scene.places()::value).orElse(Double.NaN);
              Tone tone = subject.equals(chosen) ? Tone.CHOSEN : Tone.DIMENSION;
              ink.draw(subject, name, d, m, off, new Dimensions(denominator, 2.5, 2.5, tone));
            });
    return new Layer(PictureLayer.KEPT.id(), PictureLayer.KEPT.title(), ink.marks);
  }

  /**
   * Draws one.
   *
   * @param offMm where its line stands; not a number where nothing is said
   */
  private void draw(
      String subject, String name, Dimension d, Measured m, double offMm, Dimensions dims) {
    boolean said = !Double.isNaN(offMm);
    PointMm a = m.from();
    PointMm b = m.to();
    String text = name + " ";
    switch (d.along()) {
      case ANGLE -> {
        text += Dimensions.figure(Math.toDegrees(m.value())) + "°";
        put(angle(subject, m, said && offMm > 0 ? offMm : ARC_MM * n, text, dims));
      }
      case LEVEL -> {
        text += units.bare(m.value(), FigureSort.LENGTH);
        double line = said ? a.z() + offMm : Math.max(a.z(), b.z()) + BESIDE_MM * n;
        put(dims.horizontal(subject, a.x(), a.z(), b.x(), b.z(), line, text));
      }
      case UPRIGHT -> {
        text += units.bare(m.value(), FigureSort.LENGTH);
        double line = said ? a.x() + offMm : Math.max(a.x(), b.x()) + BESIDE_MM * n;
        put(dims.vertical(subject, a.x(), a.z(), b.x(), b.z(), line, text));
      }
      case STRAIGHT -> {
        text += units.bare(m.value(), FigureSort.LENGTH);
        PointMm way = b.minus(a);
        PointMm left = way.length() > 0 ? way.left().times(1 / way.length()) : new PointMm(0, 1);
        // what is nearest to each other is seen best between the two
        boolean between = d.ends().stream().anyMatch(Dimension.End::isEdge);
        PointMm on = a.plus(left.times(said ? offMm : between ? 0 : BESIDE_MM * n));
        put(
            dims.linear(
                subject,
                a.x(),
                a.z(),
                b.x(),
                b.z(),
                left.angleRad() - Math.PI / 2,
                on.x(),
                on.z(),
                text));
      }
    }
  }

  private static List<Mark> angle(
      String subject, Measured m, double radiusMm, String text, Dimensions dims) {
    PointMm at = m.at().orElseThrow();
    PointMm first = m.from().minus(at);
    PointMm last = m.to().minus(at);
    double from = first.angleRad();
    double to = from + Math.atan2(first.cross(last), first.dot(last));
    return dims.angular(subject, at.x(), at.z(), radiusMm, from, to, text);
  }

  /** Puts card behind the words, so that lines of the picture do not run through. */
  private void put(List<Mark> drawn) {
    for (Mark mark : drawn) {
      if (mark instanceof Mark.Words words) {
        marks.add(new Mark.Shape(words.subject(), behind(words), Style.area(Tone.PAPER, 0.85)));
      }
      marks.add(mark);
    }
  }

  private Geometry behind(Mark.Words words) {
    Mark.Words level =
        new Mark.Words(
            words.subject(),
            words.text(),
            words.x(),
            words.y(),
            words.heightMm(),
            0,
            words.anchor(),
            words.tone());
    Envelope box = Labels.box(level, n);
    return AffineTransformation.rotationInstance(
            Math.toRadians(words.rotationDeg()), words.x(), words.y())
        .transform(Planar.rectangle(box));
  }
}
