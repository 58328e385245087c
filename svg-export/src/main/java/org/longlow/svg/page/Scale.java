package org.longlow.svg.page;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Envelope;

/**
 * A drawing scale: {@code paper} mm on the sheet stand for {@code real} mm.
 *
 * <p>Preferred scales after ISO 5455 (from memory): 1, 2 and 5 times powers of ten.
 */
public record Scale(int paper, int real) {

  /** Preferred scales, largest first. */
  public static final List<Scale> PREFERRED =
      List.of(
          new Scale(50, 1),
          new Scale(20, 1),
          new Scale(10, 1),
          new Scale(5, 1),
          new Scale(2, 1),
          new Scale(1, 1),
          new Scale(1, 2),
          new Scale(1, 5),
          new Scale(1, 10),
          new Scale(1, 20),
          new Scale(1, 50),
          new Scale(1, 100),
          new Scale(1, 200),
          new Scale(1, 500),
          new Scale(1, 1000));

  /**
   * Those and others that a steel rule or a scale rule knows, largest first: between 1:2 and 1:5 a
   * drawing may come out less than half as large as the sheet has room for, and so down from there.
   */
  public static final List<Scale> ANY =
      Stream.concat(PREFERRED.stream(), IntStream.of(3, 25, 30, 250, 300).mapToObj(Scale::oneTo))
          .sorted(Comparator.comparingDouble(Scale::factor).reversed())
          .toList();

  public Scale {
    if (paper < 1 || real < 1) {
      throw new IllegalArgumentException(
          "scale " + paper + ":" + real + " needs two whole numbers greater than 0");
    }
  }

  /** Returns the scale 1 : n. */
  public static Scale oneTo(int n) {
    return new Scale(1, n);
  }

  /**
   * Returns the largest preferred scale at which something fits.
   *
   * @param bounds what is to be drawn, real mm
   * @param widthMm room on paper, mm
   * @param heightMm room on paper, mm
   * @throws IllegalArgumentException if it does not fit at the smallest preferred scale
   */
  public static Scale fitting(Envelope bounds, double widthMm, double heightMm) {
    for (Scale s : PREFERRED) {
      if (bounds.getWidth() * s.factor() <= widthMm
          && bounds.getHeight() * s.factor() <= heightMm) {
        return s;
      }
    }
    throw new IllegalArgumentException(
        String.format(
            Locale.ROOT,
            "%.0f x %.0f mm does not fit into %.0f x %.0f mm even at 1:1000; check the layout or take larger paper",
            bounds.getWidth(),
            bounds.getHeight(),
            widthMm,
            heightMm));
  }

  /**
   * Returns the largest preferred scale at which something fits into the drawing space of a framed
   * sheet.
   */
  public static Scale fitting(Envelope bounds, Paper paper) {
    Envelope space = SheetSpace.pictureSpace(paper);
    return fitting(bounds, space.getWidth(), space.getHeight());
  }

  /** Returns paper length divided by real length. */
  public double factor() {
    return (double) paper / real;
  }

  /** Returns N of 1:N as {@link org.longlow.svg.drawing.Dimensions} needs it. */
  public double denominator() {
    return (double) real / paper;
  }

  /** Returns {@code 1:10}. */
  @Override
  public String toString() {
    return paper + ":" + real;
  }
}
