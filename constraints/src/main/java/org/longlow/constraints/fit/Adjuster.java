package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.check.finding.Say;
import org.longlow.rider.words.Words;

/**
 * Something that could be adjusted on a machine.
 *
 * @param name its name: of a measure that is free, or {@code seat}, {@code pegs} ...
 * @param words what moves how, in plain words
 * @param way what it does
 * @param settings where it may stand, in order: mm or deg from where it is, of a measure its value
 * @param now the setting as the machine is
 */
public record Adjuster(String name, String words, Way way, List<Double> settings, double now) {

  /** What adjusters do. */
  enum Way {
    SEAT_ALONG,
    SEAT_UP,
    PEGS_ALONG,
    GRIPS_ALONG,
    GRIPS_UP,
    BACK,
    LENGTH_MEASURE,
    ANGLE_MEASURE
  }

  public Adjuster {
    settings = List.copyOf(settings);
  }

  /** Returns one that goes as far either way, in equal steps. */
  static Adjuster about(String name, String words, Way way, double far, int steps) {
    List<Double> settings = new ArrayList<>();
    for (int k = -steps; k <= steps; k++) {
      settings.add(far * k / steps);
    }
    return new Adjuster(name, words, way, settings, 0);
  }

  /** Returns one that goes from a value to another, in equal steps. */
  static Adjuster between(
      String name, boolean angle, double from, double to, double now, int steps) {
    List<Double> settings = new ArrayList<>();
    for (int k = 0; k <= steps; k++) {
      settings.add(from + (to - from) * k / steps);
    }
    return new Adjuster(name, name, angle ? Way.ANGLE_MEASURE : Way.LENGTH_MEASURE, settings, now);
  }

  /** Whether its settings are angles, deg; else mm. */
  public boolean turns() {
    return way == Way.BACK || way == Way.ANGLE_MEASURE;
  }

  /** Whether it is a measure of the layout that is free. */
  public boolean measure() {
    return way == Way.LENGTH_MEASURE || way == Way.ANGLE_MEASURE;
  }

  /** Returns a setting, or a length of travel, in words. */
  public Words says(double setting) {
    return turns() ? Say.deg(setting) : Say.mm(setting);
  }

  /** Returns what it moves, in words. */
  public String what() {
    return switch (way) {
      case SEAT_ALONG, SEAT_UP -> "the seat";
      case PEGS_ALONG -> "the foot rests";
      case GRIPS_ALONG, GRIPS_UP -> "the grips";
      case BACK -> "the back";
      case LENGTH_MEASURE, ANGLE_MEASURE -> name;
    };
  }

  /** Returns where a setting is, in words: of a measure its value, else how far from as drawn. */
  public Words where(double setting) {
    if (measure()) {
      return says(setting);
    }
    if (setting == 0) {
      return Words.of("where drawn");
    }
    boolean more = setting > 0;
    String side =
        switch (way) {
          case SEAT_UP, GRIPS_UP -> more ? " higher than drawn" : " lower than drawn";
          case BACK -> more ? " farther back than drawn" : " more upright than drawn";
          default -> more ? " farther forward than drawn" : " farther back than drawn";
        };
    return Words.of(says(Math.abs(setting)), side);
  }

  /** Returns how much of all its travel lies between two of its settings. */
  double share(int from, int to) {
    return (double) (to - from) / Math.max(1, settings.size() - 1);
  }
}
