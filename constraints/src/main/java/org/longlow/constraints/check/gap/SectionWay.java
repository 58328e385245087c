package org.longlow.constraints.check.gap;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.gap.Fouling;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.Sweep;
import org.longlow.constraints.machine.linkage.DrivenTogether;
import org.longlow.constraints.machine.linkage.Moving;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.Memo;
import org.longlow.rider.words.Words;

/**
 * How a section's bodies move past what they pass.
 *
 * @param section its name
 * @param motion seen from what is passed
 * @param mate what the same drive moves, if that is passed; its name and how it moves
 */
record SectionWay(
    String section, Moving motion, Sweep sweep, Optional<Map.Entry<String, SectionMotion>> mate) {

  /** Where something first comes too close on a way: most of what it passes stays as it is. */
  private static final Memo<Passed, Double> FIRST = new Memo<>(512);

  /** A body on its way past another, both told apart by which objects they are. */
  private record Passed(Moving motion, Solid body, Solid other, double gapMm) {

    @Override
    public boolean equals(Object o) {
      return o instanceof Passed p
          && p.body == body
          && p.other == other
          && Double.compare(p.gapMm, gapMm) == 0
          && p.motion.equals(motion);
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(body) + System.identityHashCode(other);
    }
  }

  /** Past what stays. */
  SectionWay(String section, SectionMotion motion) {
    this(section, motion, new Sweep(motion), Optional.empty());
  }

  /** Past what the same drive moves. */
  SectionWay(String section, SectionMotion motion, Map.Entry<String, SectionMotion> mate) {
    this(section, new DrivenTogether(motion, mate.getValue()), mate);
  }

  private SectionWay(String section, Moving motion, Map.Entry<String, SectionMotion> mate) {
    this(section, motion, new Sweep(motion), Optional.of(mate));
  }

  boolean clears(Solid body, Solid other, double gapMm) {
    Passed passed = new Passed(motion, body, other, gapMm);
    return Double.isNaN(FIRST.of(passed, () -> sweep.firstBelow(body, other, gapMm)));
  }

  Finding finding(About about, Fouling fouling, double limitMm, Basis source, Words ways) {
    Set<String> with = mate.map(Map.Entry::getKey).map(Set::of).orElse(Set.of());
    Finding f = FoulingWords.finding(section, with, about, fouling, limitMm, source, ways);
    return mate.map(m -> f.at(m.getValue().at(fouling.worst()).apply(fouling.where()))).orElse(f);
  }
}
