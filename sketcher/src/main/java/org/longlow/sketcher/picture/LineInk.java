package org.longlow.sketcher.picture;

import java.util.List;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.machine.line.LinePath;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Draws cables, hoses and looms along their ways, and gas springs between their pins. */
final class LineInk {

  /** Points of a curve so far apart are smooth at any scale that is printed, mm. */
  private static final double STEP_MM = 8;

  /** Width of a line on paper, mm. */
  private static final double CABLE_MM = 0.5;

  private LineInk() {}

  static void draw(Canvas canvas, Scene scene) {
    scene.layout().lines().forEach((name, line) -> line(canvas, scene, "line:" + name, line));
    scene.layout().sections().forEach((name, section) -> springs(canvas, scene, name, section));
  }

  private static void line(Canvas canvas, Scene scene, String subject, Line line) {
    List<double[]> through =
        line.points().stream()
            .map(p -> at(pin(scene, p.pin()), scene.places().value(p.y())))
            .toList();
    PointMm[] way =
        new LinePath(through)
            .evenly(STEP_MM).stream().map(p -> new PointMm(p[0], p[2])).toArray(PointMm[]::new);
    if (way.length > 1) {
      canvas.line(PictureLayer.CONTROLS, subject, Style.line(Tone.RUBBER, CABLE_MM), way);
    }
  }

  private static double[] at(PointMm p, double y) {
    return new double[] {p.x(), y, p.z()};
  }

  private static void springs(Canvas canvas, Scene scene, String name, Section section) {
    Style style = Style.line(Tone.STEEL, 2 * CABLE_MM);
    section
        .opens()
        .gasSprings()
        .forEach(
            g ->
                canvas.line(
                    PictureLayer.BODY,
                    "section:" + name,
                    style,
                    scene.places().pin(g.frame()),
                    moved(scene, name, scene.places().pin(g.section()))));
  }

  /** Where a pin is, with its section open. */
  private static PointMm pin(Scene scene, String pin) {
    PointMm shut = scene.places().pin(pin);
    return scene.opened().map(o -> o.pin(scene.layout(), pin, shut)).orElse(shut);
  }

  private static PointMm moved(Scene scene, String section, PointMm shut) {
    return scene
        .opened()
        .filter(o -> o.section().equals(section))
        .map(o -> o.motion().apply(shut))
        .orElse(shut);
  }
}
