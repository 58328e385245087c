package org.longlow.sketcher.picture;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.gap.LockFindings;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;

/**
 * What a finding says touches as the machine leans or is steered to one side.
 *
 * @param left to which side
 * @param deg how far it goes before
 * @param what touches, in the user's names
 * @param who whose limb that is, if it is one
 * @param stance in which it does so soonest
 * @param where the place, in the axes of the frame
 * @param yMm where that is across the machine, left positive, mm
 */
public record Touch(
    boolean left,
    double deg,
    String what,
    Optional<Occupant> who,
    Optional<Condition> stance,
    PointMm where,
    double yMm) {

  /** Returns what touches the road leaning to each side, the soonest first. */
  public static List<Touch> lean(Collection<Finding> findings) {
    return findings.stream()
        .filter(f -> f.kind().equals(LeanFindings.TOUCH) && f.about().path().size() > 1)
        .filter(f -> f.where().isPresent())
        .map(f -> of(f, (f.who().isPresent() ? "a limb of " : "") + f.subject()))
        .sorted(Comparator.comparingDouble(Touch::deg))
        .toList();
  }

  /** Returns what first meets as it is steered to each side, the soonest first. */
  public static List<Touch> steer(Collection<Finding> findings) {
    return findings.stream()
        .filter(f -> f.kind().equals(LockFindings.LOCK) && f.unit() == FigureUnit.DEG)
        .filter(f -> f.where().isPresent())
        .map(f -> of(f, both(f)))
        .sorted(Comparator.comparingDouble(Touch::deg))
        .toList();
  }

  private static Touch of(Finding f, String what) {
    return new Touch(
        f.about().path().get(0).equals("left"),
        f.value(),
        what,
        f.who(),
        f.stance(),
        f.where().orElseThrow(),
        f.across().orElse(0));
  }

  /** Returns what of the machine and whose limb a finding is about. */
  static String both(Finding f) {
    return Stream.concat(
            f.about().parts().stream(), f.who().stream().map(who -> "a limb of " + who.words()))
        .collect(Collectors.joining(" and "));
  }

  /** Returns it in words, such as {@code silencer at 31.2\u00b0}. */
  public String words() {
    return String.format(Locale.ROOT, "%s at %.1f\u00b0", what, deg);
  }

  /** Returns those that are about these people, or nobody. */
  static List<Touch> with(List<Touch> all, Collection<Occupant> people) {
    return all.stream().filter(t -> t.who().map(people::contains).orElse(true)).toList();
  }

  /** Returns the first of those to each side, the left first. */
  public static List<Touch> first(List<Touch> all, int most) {
    return Stream.of(true, false)
        .flatMap(left -> all.stream().filter(t -> t.left() == left).limit(most))
        .toList();
  }
}
