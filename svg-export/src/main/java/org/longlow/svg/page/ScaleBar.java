package org.longlow.svg.page;

import java.util.ArrayList;
import java.util.List;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** The bars and the square that tell whether a print is true. */
final class ScaleBar {

  /** Side of the square, mm. */
  static final double SQUARE_MM = 50;

  /** Room round a bar for its figures and words, mm: along and across. */
  static final double BLOCK_LONG_MM = 108;

  static final double BLOCK_SHORT_MM = 15;

  /**
   * The room that a bar takes, mm.
   *
   * @param footMm from its outer side to the bar
   * @param figures whether there is room for figures there
   * @param inches whether a line of 4 in stands beside it
   */
  record Block(double longMm, double shortMm, double footMm, boolean figures, boolean inches) {

    /** As it should be. */
    static Block full(boolean inches) {
      return new Block(BLOCK_LONG_MM, BLOCK_SHORT_MM, 5, true, inches);
    }

    /** As little as it can do with: the bar, its words and the line of 4 in. */
    static Block slim(boolean inches) {
      return new Block(103, inches ? 11.5 : 9, 1.5, false, inches);
    }

    private double endMm() {
      return (longMm - PrintCorrection.BAR_MM) / 2;
    }
  }

  static final String MEASURE = "measure: should be 100.0 mm";

  /** Subjects by which the bars can be found in a file. */
  static final String ACROSS = "scale-bar:across";

  static final String ALONG = "scale-bar:along";

  private static final double WORDS_MM = 2.5;

  /** Words may come out a fifth wider in a font other than the intended one. */
  private static final double FONT_RESERVE = 1.2;

  /** The line of 4 in. */
  static final String INCHES = "scale-bar:inches";

  /** Length of that line, mm: 4 in of 25.4 mm. */
  static final double INCHES_MM = 4 * 25.4;

  private static final double FIELD_MM = 10;
  private static final double THICK_MM = 2;
  private static final double TICK_MM = 4;
  private static final double HAIR_MM = 0.13;

  private ScaleBar() {}

  /** Returns what is said beside a bar on a sheet with this correction. */
  static String measure(PrintCorrection correction) {
    String from = MEASURE + " from ";
    return correction.printer().isEmpty()
        ? MEASURE
        : from
            + Lettering.fitted(
                Lettering.printable(correction.printer()),
                WORDS_MM,
                PrintCorrection.BAR_MM / FONT_RESERVE - Lettering.widthMm(from, WORDS_MM));
  }

  /** Returns a horizontal bar whose block has its lower left corner at (x, y). */
  static List<Mark> across(double x, double y, String words, boolean inches) {
    return across(Block.full(inches), x, y, words);
  }

  static List<Mark> across(Block block, double x, double y, String words) {
    return bar(
        block.figures(),
        x + block.endMm(),
        y + block.footMm(),
        false,
        PrintCorrection.BAR_MM,
        ACROSS,
        words,
        block.inches());
  }

  /** Returns a vertical bar whose block has its lower left corner at (x, y). */
  static List<Mark> along(double x, double y, String words, boolean inches) {
    return along(Block.full(inches), x, y, words);
  }

  static List<Mark> along(Block block, double x, double y, String words) {
    return bar(
        block.figures(),
        x + block.shortMm() - block.footMm(),
        y + block.endMm(),
        true,
        PrintCorrection.BAR_MM,
        ALONG,
        words,
        block.inches());
  }

  /** A line of 4 in beside the bar, its middle on the bar's, its ends ticked like the bar's. */
  private static List<Mark> fourInches(Turn t, double deg) {
    double from = (PrintCorrection.BAR_MM - INCHES_MM) / 2;
    double to = from + INCHES_MM;
    double gap = 6;
    double middle = PrintCorrection.BAR_MM / 2;
    return List.of(
        new Mark.Shape(
            INCHES,
            Planar.FACTORY.createMultiLineString(
                new LineString[] {
                  Planar.line(t.x(from, 7.4), t.y(from, 7.4), t.x(from, 9.6), t.y(from, 9.6)),
                  Planar.line(
                      t.x(from, 8.5),
                      t.y(from, 8.5),
                      t.x(middle - gap, 8.5),
                      t.y(middle - gap, 8.5)),
                  Planar.line(
                      t.x(middle + gap, 8.5), t.y(middle + gap, 8.5), t.x(to, 8.5), t.y(to, 8.5)),
                  Planar.line(t.x(to, 7.4), t.y(to, 7.4), t.x(to, 9.6), t.y(to, 9.6))
                }),
            Style.line(Tone.INK, HAIR_MM)),
        new Mark.Words(
            "", "4 in", t.x(middle, 7.6), t.y(middle, 7.6), 2, deg, Anchor.MIDDLE, Tone.INK));
  }

  /** A bar that starts at (x, y); its figures stand on the outer side, its words on the inner. */
  static List<Mark> bar(
      double x,
      double y,
      boolean upright,
      double length,
      String subject,
      String words,
      boolean inches) {
    return bar(true, x, y, upright, length, subject, words, inches);
  }

  private static List<Mark> bar(
      boolean figures,
      double x,
      double y,
      boolean upright,
      double length,
      String subject,
      String words,
      boolean inches) {
    Turn t = new Turn(x, y, upright);
    List<Mark> out = new ArrayList<>();
    // Only the dark fields are painted, so a line of the drawing that must pass under the bar is
    // not lost.
    for (double a = 0; a < length; a += 2 * FIELD_MM) {
      double b = a + FIELD_MM;
      out.add(
          new Mark.Shape(
              "",
              Planar.polygon(
                  t.x(a, 0), t.y(a, 0),
                  t.x(b, 0), t.y(b, 0),
                  t.x(b, THICK_MM), t.y(b, THICK_MM),
                  t.x(a, THICK_MM), t.y(a, THICK_MM)),
              Style.area(Tone.INK, 1)));
    }
    // One subject, one path: the two end ticks joined by the base line. The middle of a tick is the
    // place to measure.
    out.add(
        new Mark.Shape(
            subject,
            Planar.FACTORY.createMultiLineString(
                new LineString[] {
                  Planar.line(t.x(0, -1), t.y(0, -1), t.x(0, TICK_MM), t.y(0, TICK_MM)),
                  Planar.line(t.x(0, 0), t.y(0, 0), t.x(length, 0), t.y(length, 0)),
                  Planar.line(
                      t.x(0, THICK_MM),
                      t.y(0, THICK_MM),
                      t.x(length, THICK_MM),
                      t.y(length, THICK_MM)),
                  Planar.line(
                      t.x(length, -1), t.y(length, -1),
                      t.x(length, TICK_MM), t.y(length, TICK_MM))
                }),
            Style.line(Tone.INK, HAIR_MM)));
    double deg = upright ? 90 : 0;
    for (int mm = 0; figures && mm <= length; mm += 50) {
      out.add(
          new Mark.Words(
              "",
              Integer.toString(mm),
              t.x(mm, -1.8),
              t.y(mm, -1.8),
              2,
              deg,
              Anchor.TOP_MIDDLE,
              Tone.INK));
    }
    out.add(
        new Mark.Words(
            "",
            words,
            t.x(length / 2, 4.2),
            t.y(length / 2, 4.2),
            WORDS_MM,
            deg,
            Anchor.MIDDLE,
            Tone.INK));
    if (inches) {
      out.addAll(fourInches(t, deg));
    }
    return out;
  }

  /** Returns the square with its lower left corner at (x, y). */
  static List<Mark> square(double x, double y) {
    double m = SQUARE_MM / 2;
    return List.of(
        new Mark.Shape(
            "scale-square",
            Planar.rectangle(x, y, x + SQUARE_MM, y + SQUARE_MM),
            Style.line(Tone.INK, HAIR_MM)),
        new Mark.Shape(
            "",
            Planar.FACTORY.createMultiLineString(
                new LineString[] {
                  Planar.line(x + m - 3, y + m, x + m + 3, y + m),
                  Planar.line(x + m, y + m - 3, x + m, y + m + 3)
                }),
            Style.line(Tone.PENCIL, HAIR_MM)),
        Mark.Words.level("50 x 50 mm", x + m, y + m + 8, 2.5, Anchor.MIDDLE, Tone.INK),
        Mark.Words.level("diagonals 70.7 mm", x + m, y + m - 10, 2, Anchor.MIDDLE, Tone.PENCIL));
  }

  /**
   * Along and across a bar, turned a quarter for the upright one, whose "across" then points to the
   * left.
   */
  private record Turn(double x0, double y0, boolean upright) {
    double x(double along, double across) {
      return upright ? x0 - across : x0 + along;
    }

    double y(double along, double across) {
      return upright ? y0 + along : y0 + across;
    }
  }
}
