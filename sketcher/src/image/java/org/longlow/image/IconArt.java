package org.longlow.image;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.Ellipse2D;
import java.awt.geom.Line2D;
import java.awt.geom.Path2D;
import java.awt.geom.RoundRectangle2D;
import java.awt.image.BufferedImage;

/**
 * The icon: two wheels far apart on one ground line and what goes low between them, as in the mark
 * on the window's first page, on a card.
 */
final class IconArt {

  private static final Color CARD = new Color(0x1b2430);
  private static final Color LINE = new Color(0xf2ede2);
  private static final Color GROUND = new Color(0xe0a33a);

  /** The icon is drawn on a square of this side and scaled. */
  private static final double SIDE = 64;

  private IconArt() {}

  /** Draws the icon as a square of {@code px} pixels. */
  static BufferedImage of(int px) {
    BufferedImage image = new BufferedImage(px, px, BufferedImage.TYPE_INT_ARGB);
    Graphics2D g = image.createGraphics();
    g.setRenderingHint(RenderingHints.KEY_ANTIALIASING, RenderingHints.VALUE_ANTIALIAS_ON);
    g.setRenderingHint(RenderingHints.KEY_STROKE_CONTROL, RenderingHints.VALUE_STROKE_PURE);
    g.scale(px / SIDE, px / SIDE);
    g.setColor(CARD);
    g.fill(new RoundRectangle2D.Double(1, 1, 62, 62, 14, 14));
    g.setStroke(new BasicStroke(3.4f, BasicStroke.CAP_ROUND, BasicStroke.JOIN_ROUND));
    g.setColor(GROUND);
    g.draw(new Line2D.Double(7, 48.5, 57, 48.5));
    g.setColor(LINE);
    g.draw(new Ellipse2D.Double(7.5, 30.5, 16, 16));
    g.draw(new Ellipse2D.Double(40.5, 30.5, 16, 16));
    Path2D low = new Path2D.Double();
    low.moveTo(15.5, 38.5);
    low.lineTo(22, 41.5);
    low.lineTo(37, 41.5);
    low.lineTo(43, 22);
    low.lineTo(48.5, 38.5);
    low.moveTo(22, 41.5);
    low.lineTo(13, 25);
    g.draw(low);
    g.dispose();
    return image;
  }
}
