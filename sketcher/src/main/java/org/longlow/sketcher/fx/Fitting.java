package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.sketcher.picture.PictureLayer;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/** How a machine is fitted into the card so that it is seen whole, with what names its parts. */
final class Fitting {

  /** Names keep so far from what lies along the edges, px; drawn anew they move a little. */
  private static final double NAME_EDGE_PX = 8;

  /** The machine is at least this share of what it could be without words and figures round it. */
  private static final double LEAST_SHARE = 0.75;

  /** Shares of the room that words want which are tried until the machine is as large as that. */
  private static final double[] GIVEN = {1, 0.75, 0.5, 0.25, 0};

  /** It keeps so much of its size, words too, where a ticket is to lie beside it. */
  private static final double BESIDE_SHARE = 0.85;

  /**
   * A ticket that takes more of the width than this hides too much of a machine that does not lie
   * beside it, which then keeps its share of the size that words leave it.
   */
  private static final double HIDING_SHARE = 1.0 / 3;

  /** However far the card is pushed, so much of the machine stays, px. */
  private static final double KEPT_PX = 40;

  private Fitting() {}

  /**
   * Returns the frame that shows a machine with its names and figures. Where a ticket has room
   * beside it or over it, all that room is left in one place: the machine lies at the left, the
   * road at the lower edge.
   *
   * @param seen where it is seen, px
   * @param margin left free round machine and people, px; words and figures may run into it
   * @param letters how much larger than usual letters on the drawing are
   * @param onSlips how much larger than usual those of a ticket are
   * @param ticket whether a ticket may lie in that room
   */
  static ViewFrame of(
      Drawing drawing,
      Spots.Box seen,
      double margin,
      double letters,
      double onSlips,
      boolean ticket) {
    Envelope box = machine(drawing, false);
    double bare = fitted(box, seen, margin).pxPerMm();
    double least = LEAST_SHARE * bare;
    Spots.Box room = forWords(drawing, box, seen, margin, letters, least);
    ViewFrame frame = fitted(box, room, margin);
    double wide = TicketSize.leastWidePx(onSlips);
    Spots.Box narrower =
        new Spots.Box(room.x(), room.y(), Math.max(1, room.width() - wide), room.height());
    double beside = fitted(box, narrower, margin).pxPerMm();
    double size = wide > HIDING_SHARE * seen.width() ? frame.pxPerMm() : bare;
    if (ticket && beside >= BESIDE_SHARE * size) {
      frame = fitted(box, narrower, margin);
      frame = frame.panned(room.x() + margin - frame.screenX(box.getMinX()), 0);
      double first =
          written(drawing, frame, letters).stream()
              .mapToDouble(Spots.Box::x)
              .min()
              .orElse(seen.right());
      return frame.panned(Math.max(0, seen.x() + NAME_EDGE_PX - first), 0);
    }
    double over = room.bottom() - margin - frame.screenY(box.getMinY());
    boolean below = ticket && 2 * over >= TicketSize.leastHighPx(onSlips);
    return below ? frame.panned(0, over) : frame;
  }

  /**
   * Words keep their size, so they need the more room the smaller the machine is: with large
   * letters that has no end, and some are cut before the machine is too small to be seen.
   */
  private static Spots.Box forWords(
      Drawing drawing,
      Envelope box,
      Spots.Box seen,
      double margin,
      double letters,
      double leastPxPerMm) {
    Spots.Box room = seen;
    for (int i = 0; i < 2; i++) {
      double left = seen.x() + NAME_EDGE_PX;
      double right = seen.right() - NAME_EDGE_PX;
      double top = seen.y() + NAME_EDGE_PX;
      double low = seen.bottom() - NAME_EDGE_PX;
      for (Spots.Box word : written(drawing, fitted(box, room, margin), letters)) {
        left = Math.min(left, word.x());
        right = Math.max(right, word.right());
        top = Math.min(top, word.y());
        low = Math.max(low, word.bottom());
      }
      double x = Math.max(seen.x(), room.x() + seen.x() + NAME_EDGE_PX - left);
      double y = Math.max(seen.y(), room.y() + seen.y() + NAME_EDGE_PX - top);
      double to = Math.min(seen.right(), room.right() + seen.right() - NAME_EDGE_PX - right);
      double down = Math.min(seen.bottom(), room.bottom() + seen.bottom() - NAME_EDGE_PX - low);
      Spots.Box next = new Spots.Box(x, y, Math.max(1, to - x), Math.max(1, down - y));
      for (double share : GIVEN) {
        Spots.Box some = between(room, next, share);
        if (fitted(box, some, margin).pxPerMm() >= leastPxPerMm) {
          next = some;
          break;
        }
      }
      room = next;
    }
    return room;
  }

  /** Returns a rectangle that is by a share on the way from one to another. */
  private static Spots.Box between(Spots.Box from, Spots.Box to, double share) {
    return new Spots.Box(
        from.x() + share * (to.x() - from.x()),
        from.y() + share * (to.y() - from.y()),
        from.width() + share * (to.width() - from.width()),
        from.height() + share * (to.height() - from.height()));
  }

  private static ViewFrame fitted(Envelope box, Spots.Box room, double margin) {
    return ViewFrame.fitting(box, room.width(), room.height(), margin).panned(room.x(), room.y());
  }

  /** Returns where names of parts, figures and the lines of these are, px. */
  static List<Spots.Box> written(Drawing drawing, ViewFrame frame, double letters) {
    List<Spots.Box> all = new ArrayList<>(words(drawing, frame, letters));
    drawing.layers().stream()
        .filter(Fitting::isFigures)
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Shape.class::isInstance)
        .map(mark -> frame.onScreen(((Mark.Shape) mark).geometry().getEnvelopeInternal()))
        .forEach(all::add);
    return all;
  }

  /** Returns where names of parts and figures are written, px. */
  static List<Spots.Box> words(Drawing drawing, ViewFrame frame, double letters) {
    return drawing.layers().stream()
        .filter(layer -> layer.id().equals(PictureLayer.NAMES.id()) || isFigures(layer))
        .flatMap(layer -> layer.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .map(words -> box(words, frame, letters))
        .toList();
  }

  private static Spots.Box box(Mark.Words words, ViewFrame frame, double letters) {
    double px = ViewFrame.PX_PER_PAPER_MM * letters;
    Envelope paper = words.boxMm();
    double x = frame.screenX(words.x()) + px * (paper.getMinX() - words.x());
    double y = frame.screenY(words.y()) - px * (paper.getMaxY() - words.y());
    return new Spots.Box(x, y, px * paper.getWidth(), px * paper.getHeight());
  }

  /**
   * Returns the name of a part moved to the side so far that it is read whole, if an edge of the
   * card cuts it: the machine keeps its place when it is changed, and names take others then.
   */
  static Mark.Words inSight(Mark.Words words, ViewFrame frame, double letters, Spots.Box seen) {
    Spots.Box box = box(words, frame, letters);
    boolean cut = box.shared(seen) > 0 && (box.x() < seen.x() || box.right() > seen.right());
    if (!cut || !words.subject().startsWith("part:") || words.rotationDeg() != 0) {
      return words;
    }
    double to = Spots.within(box.x(), seen.x(), seen.right() - box.width());
    return words.transformed(
        AffineTransformation.translationInstance((to - box.x()) / frame.pxPerMm(), 0));
  }

  private static boolean isFigures(Layer layer) {
    return layer.id().equals(PictureLayer.DIMENSIONS.id())
        || layer.id().equals(PictureLayer.KEPT.id());
  }

  /**
   * Returns the box round machine, people and dimensions; sight lines and signs may run out of the
   * card.
   */
  static Envelope machine(Drawing drawing) {
    return machine(drawing, true);
  }

  /** Returns whether a part, or somebody seated, reaches out of where the machine is seen. */
  static boolean cutsOff(Drawing drawing, ViewFrame frame, Spots.Box seen) {
    Envelope bodies = bodies(drawing, false);
    if (bodies.isNull()) {
      return false;
    }
    Spots.Box box = frame.onScreen(bodies);
    return box.shared(seen) < 0.999 * box.width() * box.height();
  }

  /** Returns the frame panned back where nothing of the machine would be left to be seen. */
  static ViewFrame inSight(Drawing drawing, ViewFrame frame, Spots.Box seen) {
    return frame.keeping(machine(drawing, false), seen, KEPT_PX);
  }

  private static Envelope machine(Drawing drawing, boolean figures) {
    Envelope box = bodies(drawing, figures);
    return box.isNull() ? drawing.boundsMm() : box;
  }

  private static Envelope bodies(Drawing drawing, boolean figures) {
    Envelope box = new Envelope();
    for (Layer layer : drawing.layers()) {
      boolean written = isFigures(layer);
      if (written && !figures || layer.id().equals(PictureLayer.NAMES.id())) {
        continue;
      }
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Shape shape
            && (written
                || shape.style().fill() != null
                    && (shape.subject().startsWith("part:")
                        || shape.subject().startsWith("person:")))) {
          box.expandToInclude(shape.geometry().getEnvelopeInternal());
        }
      }
    }
    return box;
  }
}
