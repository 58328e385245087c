package org.longlow.sketcher.fx;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import org.longlow.rider.geom.PointMm;

/**
 * A photo on the card.
 *
 * @param corner where its upper left corner is, px
 * @param across from one of its pixels to the next on the right, px
 * @param down from one of its pixels to the next below, px
 */
record PhotoInk(Image image, double opacity, PointMm corner, PointMm across, PointMm down)
    implements Ink {

  @Override
  public Optional<Spots.Box> within(Spots.Box px) {
    PointMm right = across.times(image.getWidth());
    PointMm below = down.times(image.getHeight());
    double left = corner.x() + Math.min(0, right.x()) + Math.min(0, below.x());
    double top = corner.z() + Math.min(0, right.z()) + Math.min(0, below.z());
    double wide = Math.abs(right.x()) + Math.abs(below.x());
    double high = Math.abs(right.z()) + Math.abs(below.z());
    return Reach.shared(Reach.grown(new Spots.Box(left, top, wide, high), Reach.SMOOTHED_PX), px);
  }

  @Override
  public void paint(GraphicsContext gc) {
    gc.save();
    gc.setGlobalAlpha(opacity);
    gc.transform(across.x(), across.z(), down.x(), down.z(), corner.x(), corner.z());
    gc.drawImage(image, 0, 0);
    gc.restore();
  }
}
