package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.stand.Measured;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws the dimensions that the layout keeps, each where it says; everything in road axes. */
final class KeptInk {

  /** How far a line stands from what is measured where nothing is said, paper mm. */
  private static final double BESIDE_MM = 8;

  /** Length of an arrowhead, paper mm. */
  private static final double HEAD_MM = 2.5;

  /** Radius of the arc of an angle where nothing is said, paper mm. */
  private static final double ARC_MM = 14;

  /** Where nothing is said, lines this much farther out, or at the other side, are tried too. */
  private static final double[] FARTHER = {1, -1, 2, -2, 3};

  /** Words stand in the middle of their line, or so far along it, as a share of its length. */
  private static final double[] ALONG = {0, 0.15, -0.15, 0.3, -0.3};

  private final WordSpots spots;
  private final double n;
  private final Units units;
  private final List<Mark> marks = new ArrayList<>();

  private KeptInk(WordSpots spots, double denominator, Units units) {
    this.spots = spots;
    this.units = units;
    this.n = denominator;
  }

  /**
   * Returns them as a layer; one that names what is not there is left out.
   *
   * @param picture what is on the card already
   * @param chosen the subject that is picked, which stands out
   */
  static Layer layer(Scene scene, Drawing picture, double denominator, String chosen) {
    Map<String, Measured> kept = KeptDimensions.of(scene);
    if (kept.isEmpty()) {
      return new Layer(PictureLayer.KEPT.id(), PictureLayer.KEPT.title(), List.of());
    }
    WordSpots spots = new WordSpots(picture, denominator);
    KeptInk ink = new KeptInk(spots, denominator, scene.layout().units());
    kept.forEach(
        (name, m) -> {
          Dimension d = scene.layout().dimensions().get(name);
          String subject = "dimension:" + name;
          double off = d.off().map(scene.places()::value).orElse(Double.NaN);
          Tone tone = subject.equals(chosen) ? Tone.CHOSEN : Tone.DIMENSION;
          ink.put(
              ink.ways(subject, name, d, m, off, new Dimensions(denominator, HEAD_MM, 2.5, tone)));
        });
    return new Layer(PictureLayer.KEPT.id(), PictureLayer.KEPT.title(), ink.marks);
  }

  /**
   * Returns the ways in which one may be drawn, the one liked best first.
   *
   * @param offMm where its line stands; not a number where nothing is said
   */
  private List<List<Mark>> ways(
      String subject, String name, Dimension d, Measured m, double offMm, Dimensions dims) {
    // what is nearest to each other is seen best between the two
    boolean between =
        d.along() == Dimension.Along.STRAIGHT && d.ends().stream().anyMatch(Dimension.End::isEdge);
    boolean fixed = !Double.isNaN(offMm) || between;
    List<List<Mark>> ways = new ArrayList<>();
    for (double times : fixed ? new double[] {1} : FARTHER) {
      double off = between && Double.isNaN(offMm) ? 0 : offMm;
      for (List<Mark> way : drawn(subject, name, d, m, off, times, dims)) {
        ways.add(way);
      }
    }
    return ways;
  }

  private List<List<Mark>> drawn(
      String subject,
      String name,
      Dimension d,
      Measured m,
      double offMm,
      double times,
      Dimensions dims) {
    boolean said = !Double.isNaN(offMm);
    double beside = times * BESIDE_MM * n;
    PointMm a = m.from();
    PointMm b = m.to();
    String text = name + " ";
    if (d.along() == Dimension.Along.ANGLE) {
      text += Dimensions.figure(Math.toDegrees(m.value())) + "°";
      double radius = said && offMm > 0 ? offMm : (ARC_MM + 4 * (Math.abs(times) - 1)) * n;
      return List.of(angle(subject, m, radius, text, dims));
    }
    text += units.bare(m.value(), FigureSort.LENGTH);
    PointMm way = b.minus(a);
    switch (d.along()) {
      case LEVEL -> {
        double edge = times > 0 ? Math.max(a.z(), b.z()) : Math.min(a.z(), b.z());
        double line = said ? a.z() + offMm : edge + beside;
        return slid(
            dims.horizontal(subject, a.x(), a.z(), b.x(), b.z(), line, text), Math.abs(way.x()));
      }
      case UPRIGHT -> {
        double edge = times > 0 ? Math.max(a.x(), b.x()) : Math.min(a.x(), b.x());
        double line = said ? a.x() + offMm : edge + beside;
        return slid(
            dims.vertical(subject, a.x(), a.z(), b.x(), b.z(), line, text), Math.abs(way.z()));
      }
      default -> {
        PointMm left = way.length() > 0 ? way.left().times(1 / way.length()) : new PointMm(0, 1);
        PointMm on = a.plus(left.times(said ? offMm : beside));
        double along = left.angleRad() - Math.PI / 2;
        return slid(
            dims.linear(subject, a.x(), a.z(), b.x(), b.z(), along, on.x(), on.z(), text),
            way.length());
      }
    }
  }

  /** Returns a dimension with its words at several places along its line, where they have room. */
  private List<List<Mark>> slid(List<Mark> drawn, double lengthMm) {
    List<List<Mark>> ways = new ArrayList<>();
    for (double share : ALONG) {
      List<Mark> way = new ArrayList<>();
      boolean room = true;
      for (Mark mark : drawn) {
        if (mark instanceof Mark.Words w) {
          double off = share * lengthMm;
          room = share == 0 || Math.abs(off) + 0.5 * (w.widthMm() + 2 * HEAD_MM) * n < lengthMm / 2;
          double turn = Math.toRadians(w.rotationDeg());
          way.add(Labels.moved(w, off * Math.cos(turn), off * Math.sin(turn)));
        } else {
          way.add(mark);
        }
      }
      if (room) {
        ways.add(way);
      }
    }
    return ways;
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

  /**
   * Draws the way whose words are read best, with card behind them, so that lines of the picture do
   * not run through.
   */
  private void put(List<List<Mark>> ways) {
    for (Mark mark : spots.best(ways, KeptInk::words)) {
      if (mark instanceof Mark.Words words) {
        marks.add(new Mark.Shape(words.subject(), behind(words), Style.area(Tone.PAPER, 0.85)));
      }
      marks.add(mark);
    }
  }

  private static Mark.Words words(List<Mark> drawn) {
    return drawn.stream()
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .findFirst()
        .orElseThrow();
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
