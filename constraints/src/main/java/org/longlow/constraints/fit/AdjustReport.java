package org.longlow.constraints.fit;

import java.util.List;
import java.util.Optional;

/**
 * What adjustment of a machine would take in.
 *
 * @param curves of each adjuster the share that fits at each of its settings
 * @param anchors whom to take in
 * @param fitting who of them fits as the machine is
 * @param least what takes in most of them, with the fewest adjusters and least travel; empty where
 *     none takes in anybody more
 */
public record AdjustReport(
    List<Curve> curves,
    List<PercentilePerson> anchors,
    List<Boolean> fitting,
    Optional<Least> least) {

  public AdjustReport {
    curves = List.copyOf(curves);
    anchors = List.copyOf(anchors);
    fitting = List.copyOf(fitting);
  }

  /**
   * One setting.
   *
   * @param setting mm or deg
   * @param share how many fit; empty where the machine cannot be set so
   * @param barred why it cannot
   */
  public record Point(double setting, Optional<Share> share, String barred) {}

  /**
   * One adjuster.
   *
   * @param adjuster which
   * @param points its settings, in order
   * @param anywhere how many fit at one of them at least
   */
  public record Curve(Adjuster adjuster, List<Point> points, Share anywhere) {}

  /**
   * How far one adjuster must go.
   *
   * @param adjuster which
   * @param from from this setting
   * @param to to this one
   */
  public record Range(Adjuster adjuster, double from, double to) {}

  /**
   * The least hardware found.
   *
   * @param ranges of one adjuster or two
   * @param taken which of the anchors fit somewhere in these ranges
   */
  public record Least(List<Range> ranges, List<Boolean> taken) {

    /** Whether everybody is taken in. */
    public boolean all() {
      return taken.stream().allMatch(t -> t);
    }
  }
}
