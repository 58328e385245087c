package org.longlow.constraints.law;

import java.util.ArrayList;
import java.util.List;

/**
 * From where a lamp has to be seen: angles from straight ahead of its face, degrees. Up and down
 * are from the level, across from the plane that is upright along its face's way.
 *
 * @param in towards the middle plane; of a lamp that faces sideways, towards the rear
 * @param out away from the middle plane; of a lamp that faces sideways, towards the front
 * @param up above the level
 * @param down below the level
 * @param low what is asked down instead where the lamp is low; the lowest bound counts
 */
public record FieldOfView(double in, double out, double up, double down, List<Low> low) {

  /** What is asked down of a lamp whose centre is lower than so many mm above the road. */
  public record Low(double down, double belowMm) {}

  public FieldOfView {
    low = List.copyOf(low);
  }

  /**
   * Reads one, such as {@code in 20, out 45, up 15, down 15, down 5 below 750}.
   *
   * @throws IllegalArgumentException if it is none
   */
  static FieldOfView read(String text) {
    double[] angles = new double[4];
    List<String> names = List.of("in", "out", "up", "down");
    List<Low> low = new ArrayList<>();
    for (String said : text.split(", ")) {
      String[] words = said.split(" ");
      int at = names.indexOf(words[0]);
      if (at < 0 || (words.length != 2 && words.length != 4)) {
        throw new IllegalArgumentException("\"" + said + "\" is no angle of a field of view");
      }
      double angle = Double.parseDouble(words[1]);
      if (words.length == 4) {
        low.add(new Low(angle, Double.parseDouble(words[3])));
      } else {
        angles[at] = angle;
      }
    }
    return new FieldOfView(angles[0], angles[1], angles[2], angles[3], low);
  }

  /** Returns how far below the level a lamp has to be seen whose centre is so high, degrees. */
  public double down(double heightMm) {
    double bound = Double.POSITIVE_INFINITY;
    double asked = down;
    for (Low l : low) {
      if (heightMm < l.belowMm() && l.belowMm() < bound) {
        bound = l.belowMm();
        asked = l.down();
      }
    }
    return asked;
  }

  /** Returns the steepest angle asked for, up or down, degrees. */
  public double steepest() {
    return Math.max(up, low.stream().mapToDouble(Low::down).reduce(down, Math::max));
  }
}
