package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Rings where something touches first, with words beside the machine in a front view or plan, over
 * it in the elevation, which is broad enough.
 */
final class TouchInk {

  private static final double RING_MM = 1.3;

  /** From the machine to the words, and from one line of these to the next, paper mm. */
  private static final double AIR_MM = 4;

  private static final double LINE_MM = 4.2;

  private TouchInk() {}

  /** Returns a picture with the marks, under its dimensions, whose words break what runs there. */
  static Drawing on(Drawing picture, List<TouchRing> touches, Envelope machine, Eye eye, double n) {
    Layer layer = layer(touches, picture, machine, eye, n);
    if (layer.marks().isEmpty()) {
      return picture;
    }
    List<Layer> layers = new ArrayList<>(picture.layers());
    int at = 0;
    while (at < layers.size() && !layers.get(at).id().equals(PictureLayer.DIMENSIONS.id())) {
      at++;
    }
    layers.add(at, layer);
    return new Drawing(picture.title(), layers);
  }

  /**
   * Returns the marks.
   *
   * @param picture what they are drawn on
   */
  private static Layer layer(
      List<TouchRing> touches, Drawing picture, Envelope machine, Eye eye, double n) {
    Canvas canvas = new Canvas(n);
    boolean front = eye.aspect() == Aspect.FRONT;
    boolean side = eye.aspect() == Aspect.SIDE;
    List<Double> taken = new ArrayList<>();
    int placed = 0;
    Envelope all = picture.boundsMm();
    all.expandToInclude(machine);
    for (TouchRing touch : touches) {
      PointMm at = eye.page(touch.where(), touch.yMm());
      canvas.circle(
          PictureLayer.FINDINGS, "touch", at, canvas.paper(RING_MM), Style.line(Tone.BAD, 0.35));
      boolean right = side ? at.x() < all.centre().x : !front || touch.left();
      PointMm words =
          side
              ? new PointMm(at.x(), all.getMaxY() + canvas.paper(AIR_MM + LINE_MM * placed++))
              : new PointMm(
                  right
                      ? all.getMaxX() + canvas.paper(AIR_MM)
                      : all.getMinX() - canvas.paper(AIR_MM),
                  free(at.z(), right, taken, canvas.paper(LINE_MM)));
      canvas.line(
          PictureLayer.FINDINGS,
          "touch",
          Canvas.fine(Tone.BAD),
          towards(at, words, canvas.paper(RING_MM)),
          words);
      canvas.words(
          PictureLayer.FINDINGS,
          "touch",
          touch.words(),
          new PointMm(words.x() + canvas.paper(right ? 1 : -1), words.z() - canvas.paper(1)),
          Canvas.SMALL_MM,
          right ? Anchor.START : Anchor.END,
          Tone.INK);
    }
    List<Mark> marks = canvas.marks(PictureLayer.FINDINGS);
    return new Layer("touches", "What touches first", marks);
  }

  private static PointMm towards(PointMm from, PointMm to, double by) {
    return from.towards(to, Math.min(1, by / Math.max(by, from.distance(to))));
  }

  /** Words to the right are kept apart from each other, and so are those to the left. */
  private static double free(double wanted, boolean right, List<Double> taken, double apart) {
    double side = right ? 0 : 1e7;
    double y = wanted;
    boolean clear = false;
    while (!clear) {
      double now = y;
      clear = taken.stream().noneMatch(t -> Math.abs(t - side - now) < apart * 0.99);
      y = clear ? y : y + apart;
    }
    taken.add(y + side);
    return y;
  }
}
