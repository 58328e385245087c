package org.longlow.constraints.suit;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * Where moved pins suit the crew.
 *
 * @param before the layout as it is now
 * @param beforeComfort discomfort of each person now, by the name used in findings
 * @param alternatives distinct places, the best first; the present one is among them only if
 *     nothing better was found, or only places of worse verdicts, which come after it
 * @param adjustment the least travel that suits everybody where the best single place does not;
 *     empty if none is needed or none does
 * @param limitedBy what holds each person, at the best single place
 * @param decided whether the searches ended by themselves; false where they had measured as many
 *     places as the settings allow, so that there may be better ones
 */
public record SuitReport(
    Study before,
    Map<String, Double> beforeComfort,
    List<Alternative> alternatives,
    Optional<Adjustment> adjustment,
    List<Limiting> limitedBy,
    boolean decided) {

  public SuitReport {
    beforeComfort = java.util.Collections.unmodifiableMap(beforeComfort);
    alternatives = List.copyOf(alternatives);
    limitedBy = List.copyOf(limitedBy);
  }

  /** Returns the best single place, if the layout can be solved at all. */
  public Optional<Alternative> best() {
    return alternatives.stream().findFirst();
  }

  /**
   * One place.
   *
   * @param layout the layout with the pins there
   * @param study everything about it
   * @param moves how far each pin went that was asked to move
   * @param comfort discomfort of each person on each seat, sum of squares of strays in spreads of
   *     13°, by the name used in findings
   * @param changes findings whose verdict is another than before
   * @param atLimits limits of the layout that these pins rest against
   */
  public record Alternative(
      Layout layout,
      Study study,
      List<Move> moves,
      Map<String, Double> comfort,
      List<Change> changes,
      List<String> atLimits) {
    public Alternative {
      moves = List.copyOf(moves);
      comfort = java.util.Collections.unmodifiableMap(comfort);
      changes = List.copyOf(changes);
      atLimits = List.copyOf(atLimits);
    }

    /** Returns whether something fails here that did not fail before. */
    public boolean breaks() {
      return changes.stream()
          .anyMatch(c -> c.after() == Verdict.FAIL && c.before() != Verdict.FAIL);
    }

    /**
     * Returns whether something fails here that did not, or more findings fail than in {@code
     * other}, or as many and more need care, or as many again and fewer pass.
     */
    public boolean isWorseThan(Study other) {
      return breaks() || hasMoreThan(other);
    }

    private boolean hasMoreThan(Study other) {
      return Comparator.comparingLong(Study::failing)
              .thenComparingLong(s -> s.count(Verdict.CAUTION))
              .thenComparingLong(s -> -s.count(Verdict.PASS))
              .compare(study, other)
          > 0;
    }

    /** Returns what fails about a person, on whatever seat. */
    public List<Finding> stops(String person) {
      return study.findings().stream()
          .filter(f -> f.verdict() == Verdict.FAIL && Concerns.person(f, person))
          .toList();
    }
  }

  /** A pin's way from one place to another, mm. */
  public record Move(String pin, PointMm from, PointMm to) {
    public double mm() {
      return from.distance(to);
    }
  }

  /**
   * A finding that changed its verdict; one that is not there counts as passing.
   *
   * @param before the verdict before
   * @param after the verdict after
   * @param finding the finding after, or before where there is none after
   */
  public record Change(Verdict before, Verdict after, Finding finding) {}

  /**
   * Adjustment that suits everybody.
   *
   * @param travels what slides how far
   * @param places the layout as each person sets it
   * @param unmet what fails about a person even there, for those about whom something does: with
   *     any it comes nearest to what they need, and does not do
   */
  public record Adjustment(
      List<Travel> travels, Map<String, Layout> places, Map<String, List<Finding>> unmet) {
    public Adjustment {
      travels = List.copyOf(travels);
      unmet = java.util.Collections.unmodifiableMap(unmet);
      places = java.util.Collections.unmodifiableMap(places);
    }
  }

  /**
   * One thing that slides.
   *
   * @param name the user's word for it
   * @param pin the pin of it that goes farthest
   * @param mm greatest distance between two persons' places, mm
   * @param places where the pin is for each person
   */
  public record Travel(String name, String pin, double mm, Map<String, PointMm> places) {
    public Travel {
      places = java.util.Collections.unmodifiableMap(places);
    }
  }

  /**
   * What holds a person: the worst failing finding about them, or the one with least to spare.
   *
   * @param person whom
   * @param finding by what
   */
  public record Limiting(String person, Finding finding) {}
}
