package org.longlow.sketcher.picture;

import java.util.List;
import org.longlow.constraints.layout.Shock;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.shape.Curves;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Draws how an arm is sprung, where its pins are: the coil, and the rod and rocker that work it.
 */
final class ShockInk {

  private static final int TURNS = 8;

  /** Half the breadth of a coil on paper, mm. */
  private static final double COIL_MM = 1.4;

  /** Breadth of a rod on paper, mm. */
  private static final double ROD_MM = 0.5;

  private ShockInk() {}

  static void draw(Canvas canvas, Scene scene) {
    scene
        .layout()
        .parts(SwingarmPart.class)
        .filter(arm -> arm.shock().foot().isPresent())
        .forEach(arm -> draw(canvas, scene, "part:" + arm.name(), arm.shock()));
  }

  private static void draw(Canvas canvas, Scene scene, String subject, Shock shock) {
    PointMm foot = scene.places().pin(shock.foot().orElseThrow());
    PointMm top = scene.places().pin(shock.top().orElseThrow());
    shock.loop().ifPresent(r -> rocker(canvas, scene, subject, r, foot));
    PointMm way = top.minus(foot);
    if (way.length() > 0) {
      PointMm side = way.left().times(canvas.paper(COIL_MM) / way.length());
      Style wire = Canvas.fine(Tone.INK);
      canvas.line(PictureLayer.FRAME, subject, wire, foot, top);
      coil(canvas, subject, wire, foot.towards(top, 0.15), way.times(0.7), side, TURNS);
    }
  }

  private static void rocker(
      Canvas canvas, Scene scene, String subject, Shock.Loop rocker, PointMm foot) {
    PointMm pivot = scene.places().pin(rocker.pivot());
    PointMm rod = scene.places().pin(rocker.rod());
    canvas.line(
        PictureLayer.FRAME,
        subject,
        Style.line(Tone.STEEL, ROD_MM),
        rod,
        scene.places().pin(rocker.end()));
    canvas.shape(
        PictureLayer.FRAME,
        subject,
        Curves.polygon(List.of(pivot, rod, foot)),
        Canvas.fine(Tone.INK).withFill(Tone.STEEL, 0.5));
    canvas.circle(
        PictureLayer.FRAME,
        subject,
        pivot,
        canvas.paper(ROD_MM),
        Canvas.fine(Tone.INK).withFill(Tone.PAPER, 1));
  }

  /**
   * Draws a coil.
   *
   * @param run from its one end to the other
   * @param side from its middle to its wires, square to that
   */
  static void coil(
      Canvas canvas,
      String subject,
      Style wire,
      PointMm from,
      PointMm run,
      PointMm side,
      int turns) {
    PointMm[] coil = new PointMm[2 * turns + 1];
    for (int i = 0; i < coil.length; i++) {
      PointMm on = from.plus(run.times(i / (coil.length - 1.0)));
      coil[i] = i == 0 || i == coil.length - 1 ? on : i % 2 == 0 ? on.plus(side) : on.minus(side);
    }
    canvas.line(PictureLayer.FRAME, subject, wire, coil);
  }
}
