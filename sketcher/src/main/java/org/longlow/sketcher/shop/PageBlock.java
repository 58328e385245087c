package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/**
 * Something that stands on a page as it is: paper mm, from its upper left corner to the right and,
 * with y less than 0, down.
 *
 * @param highMm how much of the page it takes, mm
 * @param follows whether it goes on with the block before it, and so comes after it
 * @param head of what goes on right below the block before it: stands above it where it begins a
 *     page
 */
public record PageBlock(Drawing drawing, double highMm, boolean follows, Optional<PageBlock> head) {

  static final double HEAD_MM = 3.5;
  static final double TEXT_MM = 2.5;

  /** Smaller letters are read by nobody. */
  private static final double LEAST_TEXT_MM = 1.2;

  /** From one line of words to the next, in heights of capitals. */
  private static final double LEADING = 1.8;

  /** Returns it as one that comes after the block before it. */
  PageBlock following() {
    return new PageBlock(drawing, highMm, true, head);
  }

  /** Returns it as one that goes on right below the block before it. */
  PageBlock under(PageBlock heading) {
    return new PageBlock(drawing, highMm, true, Optional.of(heading));
  }

  /** A block being drawn, from above. */
  static final class Pen {
    private final String title;
    private final double widthMm;
    private final List<Mark> marks = new ArrayList<>();
    private double y;

    Pen(String title, double widthMm) {
      this.title = title;
      this.widthMm = widthMm;
    }

    /** How far down it is: less than 0. */
    double y() {
      return y;
    }

    double widthMm() {
      return widthMm;
    }

    void down(double mm) {
      y -= mm;
    }

    void mark(Mark mark) {
      marks.add(mark);
    }

    void box(String subject, double x, double yLow, double w, double h, Style style) {
      marks.add(new Mark.Shape(subject, Planar.rectangle(x, yLow, x + w, yLow + h), style));
    }

    /** Writes lines of words over the whole width. */
    void lines(String words, double heightMm, Tone tone) {
      for (String line : Lettering.wrapped(Lettering.printable(words), heightMm, widthMm)) {
        down(heightMm);
        marks.add(Mark.Words.level(line, 0, y, heightMm, Anchor.START, tone));
        down(heightMm * (LEADING - 1));
      }
    }

    /** Writes the first of several sayings that fits into a box, or none. */
    void first(double x, double yMid, double w, double h, String... sayings) {
      double height = Math.min(TEXT_MM, h * 0.7);
      for (String saying : sayings) {
        String text = Lettering.printable(saying);
        if (height >= LEAST_TEXT_MM && Lettering.widthMm(text, height) <= w * 0.94) {
          marks.add(Mark.Words.level(text, x + w / 2, yMid, height, Anchor.CENTRE, Tone.INK));
          return;
        }
      }
    }

    PageBlock done() {
      return new PageBlock(
          Drawing.of(title, new Layer("plan", title, marks)), -y, false, Optional.empty());
    }
  }
}
