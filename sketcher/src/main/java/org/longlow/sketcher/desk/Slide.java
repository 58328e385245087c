package org.longlow.sketcher.desk;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.rider.geom.PointMm;

/**
 * A way along which the machine is moved by a slider, and what is on it.
 *
 * @param from where the way begins
 * @param to where it ends
 * @param marks what is on it, in the order of the way
 */
public record Slide(double from, double to, List<Mark> marks) {

  /** What becomes of a hand that comes to a mark. */
  public enum Stop {
    NOT,
    /** It is stopped where it goes on to greater values. */
    RISING,
    /** It is stopped where it goes on to smaller values. */
    FALLING
  }

  /**
   * A mark on the way.
   *
   * @param at its value
   * @param words what is there
   * @param touch whether two things touch there
   * @param where the place of the touch, in the axes of the frame
   * @param yMm where that is across the machine, left positive, mm
   */
  public record Mark(
      double at, String words, Stop stop, boolean touch, Optional<PointMm> where, double yMm) {

    /** A mark at a place in the middle plane, or that has none. */
    public Mark(double at, String words, Stop stop, boolean touch, Optional<PointMm> where) {
      this(at, words, stop, touch, where, 0);
    }

    /** Returns it as an angle, such as {@code silencer at 31.2°}. */
    public String degWords() {
      return String.format(Locale.ROOT, "%s at %.1f\u00b0", words, Math.abs(at));
    }
  }

  public Slide {
    marks = List.copyOf(marks);
  }

  /** Returns the first touches below nought, or above it, the nearest to nought first. */
  public List<Mark> sides(boolean below, int most) {
    return marks.stream()
        .filter(m -> m.touch() && (below ? m.at() < 0 : m.at() > 0))
        .sorted(Comparator.comparingDouble(m -> Math.abs(m.at())))
        .limit(most)
        .toList();
  }

  /**
   * Returns where a hand is stopped that goes from one value to another: at the first mark that it
   * comes to, and not at one where it is already.
   *
   * @param near values that lie no farther apart than this are one
   */
  public OptionalDouble stop(double was, double is, double near) {
    OptionalDouble rising =
        marks.stream()
            .filter(m -> m.stop() == Stop.RISING && was < m.at() - near && is > m.at())
            .mapToDouble(Mark::at)
            .min();
    OptionalDouble falling =
        marks.stream()
            .filter(m -> m.stop() == Stop.FALLING && was > m.at() + near && is < m.at())
            .mapToDouble(Mark::at)
            .max();
    return rising.isPresent() ? rising : falling;
  }
}
