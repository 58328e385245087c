package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.layout.Region;

/**
 * A painted surface in tiles, of which only that is painted anew where other inks are to be seen
 * than before; the toolkit then puts together only those tiles. What is seen is always what
 * painting everything would give.
 */
final class Tiles extends Region {

  /**
   * How wide and high a tile is, px. A multiple of four, so that tiles meet at whole pixels of a
   * screen that enlarges by quarters.
   */
  private static final int SIDE_PX = 200;

  /** So far an opaque tile reaches under the next, so that no gap is seen between enlarged ones. */
  private static final int UNDER_PX = 1;

  /**
   * After so many parts a tile is painted whole: parts wait in memory until the toolkit takes them,
   * which it does not while the window is put away.
   */
  private static final int MOST_PARTS = 60;

  private final boolean opaque;
  private final List<Tile> tiles = new ArrayList<>();
  private double wide;
  private double high;
  private List<Ink> shown = List.of();
  private int painted;

  /**
   * @param opaque whether inks leave nothing to be seen through
   */
  Tiles(boolean opaque) {
    this.opaque = opaque;
    setMouseTransparent(true);
    setManaged(false);
  }

  private final class Tile {
    private final Canvas canvas;
    private final Spots.Box box;
    private int partly;

    /**
     * @param partly how many parts it is taken to have painted, so that tiles do not all reach the
     *     most at once
     */
    Tile(Spots.Box box, int partly) {
      this.box = box;
      this.partly = partly;
      canvas = new Canvas(box.width(), box.height());
      canvas.relocate(box.x(), box.y());
    }

    /** Shows {@code all} where one of {@code changed} reaches; returns whether any does. */
    boolean paint(List<Ink> all, List<Ink> changed) {
      List<Spots.Box> boxes = Changed.boxes(changed, box);
      partly += boxes.size();
      if (partly > MOST_PARTS && !boxes.isEmpty()) {
        boxes = List.of(box);
      }
      boxes.forEach(b -> paint(all, b));
      if (!boxes.isEmpty()) {
        canvas.setVisible(all.stream().anyMatch(ink -> ink.within(box).isPresent()));
      }
      return !boxes.isEmpty();
    }

    private void paint(List<Ink> all, Spots.Box part) {
      GraphicsContext gc = canvas.getGraphicsContext2D();
      gc.save();
      gc.translate(-box.x(), -box.y());
      boolean whole = part.equals(box);
      partly = whole ? 0 : partly;
      if (whole || !opaque) {
        // what waits to be painted is forgotten where all of a canvas is cleared, without a clip
        gc.clearRect(part.x(), part.y(), part.width(), part.height());
      }
      if (!whole) {
        gc.beginPath();
        gc.rect(part.x(), part.y(), part.width(), part.height());
        gc.clip();
      }
      for (Ink ink : all) {
        if (ink.within(part).isPresent()) {
          ink.paint(gc);
        }
      }
      gc.restore();
    }
  }

  /** Takes another size, in whole px; nothing is shown until it is painted. */
  void take(double width, double height) {
    if (width == wide && height == high) {
      return;
    }
    wide = width;
    high = height;
    resize(width, height);
    int under = opaque ? UNDER_PX : 0;
    tiles.clear();
    shown = List.of();
    for (int y = 0; y < height; y += SIDE_PX) {
      for (int x = 0; x < width; x += SIDE_PX) {
        double w = Math.min(SIDE_PX + under, width - x);
        double h = Math.min(SIDE_PX + under, height - y);
        tiles.add(new Tile(new Spots.Box(x, y, w, h), 7 * tiles.size() % MOST_PARTS));
      }
    }
    getChildren().setAll(tiles.stream().map(t -> t.canvas).toList());
  }

  double wide() {
    return wide;
  }

  double high() {
    return high;
  }

  /** Shows these inks and nothing else, later ones over earlier ones. */
  void paint(List<Ink> inks) {
    List<Ink> changed = Changed.between(shown, inks);
    for (Tile tile : tiles) {
      painted += tile.paint(inks, changed) ? 1 : 0;
    }
    shown = List.copyOf(inks);
  }

  /** Returns how many tiles have been painted so far. */
  int painted() {
    return painted;
  }
}
