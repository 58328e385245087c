package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Marks findings where they are with a sign and their number in the list: a square fails, a
 * triangle needs care, a disc passes, so that the verdict can be read without colour.
 */
final class FindingInk {

  private static final double SIGN_MM = 2.2;
  private static final double STEP_MM = 6.4;

  /** Card left free round a sign, as a share of half its size: for its edge and some air. */
  private static final double CLEAR_SHARE = 0.2;

  private FindingInk() {}

  /**
   * Returns the marks as a layer for the finished picture, in its axes.
   *
   * @param place where a finding is on the picture
   * @param picture what is on the card already; none of its words are covered where there is room
   */
  static Layer layer(
      Scene scene, Drawing picture, double denominator, Function<Finding, PointMm> place) {
    Canvas canvas = new Canvas(denominator);
    double r = canvas.paper(SIGN_MM);
    List<Map.Entry<Integer, Finding>> marked =
        scene.findings().entrySet().stream().filter(e -> e.getValue().where().isPresent()).toList();
    List<PointMm> places =
        SignSpots.places(
            marked.stream().map(e -> sign(e.getValue(), place, r)).toList(),
            words(picture, denominator),
            canvas.paper(STEP_MM));
    for (int i = 0; i < marked.size(); i++) {
      Finding f = marked.get(i).getValue();
      mark(canvas, f, marked.get(i).getKey(), place.apply(f), places.get(i));
    }
    return new Layer(
        PictureLayer.FINDINGS.id(),
        PictureLayer.FINDINGS.title(),
        canvas.marks(PictureLayer.FINDINGS));
  }

  private static SignSpots.Sign sign(Finding f, Function<Finding, PointMm> place, double r) {
    Envelope box = sign(f.verdict(), PointMm.ORIGIN, r).getEnvelopeInternal();
    box.expandBy(CLEAR_SHARE * r);
    return new SignSpots.Sign(place.apply(f), box);
  }

  private static List<Envelope> words(Drawing picture, double denominator) {
    return picture.layers().stream()
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(w -> Labels.box((Mark.Words) w, denominator))
        .toList();
  }

  private static void mark(Canvas canvas, Finding f, int number, PointMm at, PointMm sign) {
    Tone tone = tone(f.verdict());
    String subject = "finding:" + f.id();
    canvas.line(PictureLayer.FINDINGS, subject, Canvas.edge(tone), at, sign);
    canvas.circle(PictureLayer.FINDINGS, subject, at, canvas.paper(0.6), Style.area(tone, 1));
    canvas.shape(
        PictureLayer.FINDINGS,
        subject,
        sign(f.verdict(), sign, canvas.paper(SIGN_MM)),
        Style.line(tone, 0.5).withFill(Tone.PAPER, 1));
    canvas.words(
        PictureLayer.FINDINGS, subject, Integer.toString(number), sign, 2.2, Anchor.CENTRE, tone);
  }

  static Tone tone(Verdict verdict) {
    return switch (verdict) {
      case FAIL -> Tone.BAD;
      case CAUTION -> Tone.CARE;
      case PASS -> Tone.GOOD;
      case NOT_APPLICABLE -> Tone.PENCIL;
    };
  }

  static Geometry sign(Verdict verdict, PointMm c, double r) {
    return switch (verdict) {
      case FAIL -> Planar.rectangle(c.x() - r, c.z() - r, c.x() + r, c.z() + r);
      case CAUTION ->
          Planar.polygon(
              c.x() - 1.8 * r,
              c.z() - 1.1 * r,
              c.x() + 1.8 * r,
              c.z() - 1.1 * r,
              c.x(),
              c.z() + 1.9 * r);
      default -> Planar.disc(c.x(), c.z(), 1.15 * r);
    };
  }
}
