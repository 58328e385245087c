package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.Finding;
import org.longlow.constraints.check.Verdict;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
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

  private FindingInk() {}

  static void draw(Canvas canvas, Scene scene) {
    List<Envelope> taken = new ArrayList<>();
    double r = canvas.paper(SIGN_MM);
    for (Map.Entry<Integer, Finding> e : scene.findings().entrySet()) {
      Finding f = e.getValue();
      if (f.where().isEmpty()) {
        continue;
      }
      PointMm at = f.where().get();
      PointMm sign = free(at, canvas, f.verdict() == Verdict.CAUTION ? 1.9 * r : 1.25 * r, taken);
      Tone tone = tone(f.verdict());
      String subject = "finding:" + f.id();
      canvas.line(PictureLayer.FINDINGS, subject, Canvas.edge(tone), at, sign);
      canvas.circle(PictureLayer.FINDINGS, subject, at, canvas.paper(0.6), Style.area(tone, 1));
      canvas.shape(
          PictureLayer.FINDINGS,
          subject,
          sign(f.verdict(), sign, r),
          Style.line(tone, 0.5).withFill(Tone.PAPER, 1));
      canvas.words(
          PictureLayer.FINDINGS,
          subject,
          Integer.toString(e.getKey()),
          sign,
          2.2,
          Anchor.CENTRE,
          tone);
    }
  }

  static Tone tone(Verdict verdict) {
    return switch (verdict) {
      case FAIL -> Tone.BAD;
      case CAUTION -> Tone.CARE;
      case PASS -> Tone.GOOD;
      case NOT_APPLICABLE -> Tone.PENCIL;
    };
  }

  /** Returns the nearest place round {@code at} where no other sign is. */
  private static PointMm free(PointMm at, Canvas canvas, double half, List<Envelope> taken) {
    PointMm first = null;
    for (int ring = 1; ring <= 8; ring++) {
      int spots = 8 * ring;
      for (int k = 0; k < spots; k++) {
        double angle = Math.PI / 4 + 2 * Math.PI * k / spots;
        PointMm p = at.plus(PointMm.unit(angle).times(canvas.paper(STEP_MM) * ring));
        Envelope box = new Envelope(p.x() - half, p.x() + half, p.z() - half, p.z() + half);
        if (first == null) {
          first = p;
        }
        if (Labels.free(box, taken)) {
          taken.add(box);
          taken.add(new Envelope(at.x(), at.x(), at.z(), at.z()));
          return p;
        }
      }
    }
    return first;
  }

  private static Geometry sign(Verdict verdict, PointMm c, double r) {
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
