package org.longlow.sketcher.fx;

import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;

/**
 * Something painted on the card. Two inks that are equal paint the same pixels, and none paints
 * where it does not reach, so that {@link Tiles} can leave what is there already.
 */
interface Ink {

  /**
   * Returns a box round all that it paints within a rectangle of the card, px; empty if nothing.
   */
  Optional<Spots.Box> within(Spots.Box px);

  /** Paints it; sets whatever it needs, but for clip and axes, which are those of the card, px. */
  void paint(GraphicsContext gc);
}
