package org.longlow.sketcher.edit;

import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Sections;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** A section held at a point of it and pulled open or shut. */
public final class SectionPull {

  /** How finely the way is looked along before the nearest place on it is closed in on. */
  private static final int STEPS = 60;

  /** Share of the way to which the opening is found: 0.1 mm at the end of a metre. */
  private static final double FINE = 1e-4;

  private final SectionMotion motion;
  private final PointMm held;

  private SectionPull(SectionMotion motion, PointMm held) {
    this.motion = motion;
    this.held = held;
  }

  /** Returns the section that a part belongs to. */
  public static Optional<String> sectionOf(Layout layout, String part) {
    return layout.sections().entrySet().stream()
        .filter(s -> s.getValue().parts().contains(part))
        .map(Map.Entry::getKey)
        .findFirst();
  }

  /**
   * Takes hold of a section; empty if there is none of that name or it cannot open.
   *
   * @param drawn the machine as drawn
   * @param opening how far it is open now, 0 shut to 1 open
   * @param at where it is held, in the axes of the drawn machine
   */
  public static Optional<SectionPull> of(
      Layout layout, Places drawn, String section, double opening, PointMm at) {
    Section there = layout.sections().get(section);
    if (there == null) {
      return Optional.empty();
    }
    try {
      SectionMotion motion = Sections.motion(there, drawn);
      return Optional.of(new SectionPull(motion, motion.at(opening).inverse().apply(at)));
    } catch (OutOfRange e) {
      // the finding on the section says why it cannot open
      return Optional.empty();
    }
  }

  /** Returns the opening that brings what is held nearest to a place. */
  public double towards(PointMm to) {
    int best = 0;
    for (int i = 1; i <= STEPS; i++) {
      best = off((double) i / STEPS, to) < off((double) best / STEPS, to) ? i : best;
    }
    double from = Math.max(0, (best - 1.0) / STEPS);
    double end = Math.min(1, (best + 1.0) / STEPS);
    while (end - from > FINE) {
      double one = from + (end - from) / 3;
      double two = end - (end - from) / 3;
      if (off(one, to) < off(two, to)) {
        end = two;
      } else {
        from = one;
      }
    }
    return (from + end) / 2;
  }

  private double off(double opening, PointMm to) {
    return motion.at(opening).apply(held).distance(to);
  }
}
