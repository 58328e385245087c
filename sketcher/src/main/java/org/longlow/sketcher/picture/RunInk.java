package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Runs;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Draws chains and belts round their wheels: as high as their plates, with a chain line along the
 * pitch line and on the pitch circles (as toothed wheels are drawn, ISO 2203, from memory).
 */
final class RunInk {

  /** Of an arc for each chord: chords lie 0.1 mm within an arc of 100 mm at most, rad. */
  private static final double STEP_RAD = Math.toRadians(5);

  /** Likewise for bodies seen from ahead or above, where arcs are at the edge of the picture. */
  private static final double BODY_STEP_RAD = Math.toRadians(30);

  /** A wheel smaller than the plates are high is drawn with a dot within them, mm. */
  private static final double LEAST_MM = 0.1;

  private RunInk() {}

  static void draw(Canvas canvas, Scene scene) {
    Runs.of(scene.layout())
        .forEach(run -> belt(scene, run).ifPresent(belt -> draw(canvas, subject(run), belt)));
  }

  private static String subject(Map.Entry<String, Tie> run) {
    return "tie:" + run.getKey();
  }

  /** Returns it as it runs in the scene; empty where its wheels leave no way round them. */
  private static Optional<BeltRun> belt(Scene scene, Map.Entry<String, Tie> run) {
    BeltRun belt = Runs.of(run.getValue(), scene.places());
    try {
      belt.straights();
      return Optional.of(belt);
    } catch (OutOfRange e) {
      return Optional.empty();
    }
  }

  private static void draw(Canvas canvas, String subject, BeltRun belt) {
    PictureLayer layer = PictureLayer.RUNS;
    Polygon plates =
        Curves.FACTORY.createPolygon(
            ring(shifted(belt, Runs.HALF_HIGH_MM)),
            new LinearRing[] {ring(shifted(belt, -Runs.HALF_HIGH_MM))});
    canvas.shape(layer, subject, plates, Canvas.fine(Tone.INK).withFill(Tone.STEEL, 0.55));
    Style pitch = Canvas.chain(Tone.INK);
    canvas.shape(layer, subject, ring(belt), pitch);
    belt.wheels()
        .forEach(
            w ->
                canvas.shape(
                    layer,
                    subject,
                    Planar.disc(w.at().x(), w.at().z(), w.radiusMm()).getExteriorRing(),
                    pitch));
  }

  /** Returns what runs beside it, so far outside all along. */
  private static BeltRun shifted(BeltRun belt, double outMm) {
    return new BeltRun(
        belt.wheels().stream()
            .map(
                w ->
                    new BeltRun.Wheel(
                        w.at(),
                        Math.max(LEAST_MM, w.radiusMm() + (w.back() ? -outMm : outMm)),
                        w.back()))
            .toList());
  }

  private static LinearRing ring(BeltRun belt) {
    return Curves.FACTORY.createLinearRing(
        closed(belt.way(STEP_RAD)).stream().map(Curves::coordinate).toArray(Coordinate[]::new));
  }

  private static List<PointMm> closed(List<PointMm> way) {
    List<PointMm> all = new ArrayList<>(way);
    all.add(way.get(0));
    return all;
  }

  /** Hands over the bodies of those that say where they are across the machine, by subject. */
  static void bodies(Scene scene, BiConsumer<String, List<Prism>> into) {
    for (Map.Entry<String, Tie> run : Runs.of(scene.layout())) {
      Optional<Interval> across = Runs.across(run.getValue(), scene.places());
      Optional<BeltRun> belt = belt(scene, run);
      if (across.isPresent() && belt.isPresent()) {
        List<PointMm> way = closed(belt.get().way(BODY_STEP_RAD));
        List<Prism> pieces = new ArrayList<>();
        for (int i = 1; i < way.size(); i++) {
          pieces.add(new Prism(Runs.outline(way.get(i - 1), way.get(i)), across.get()));
        }
        into.accept(subject(run), pieces);
      }
    }
  }
}
