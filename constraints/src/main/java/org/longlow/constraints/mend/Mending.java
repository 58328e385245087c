package org.longlow.constraints.mend;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * Looks for the few smallest single changes that mend a finding.
 *
 * <p>What a finding hangs on (the pins of its parts, the measures their formulas name, and so on)
 * is changed a little first, one after the other, which tells how far each must go; then the most
 * promising are followed to the fewest steps that do, and each of those is tried on the whole
 * machine. What the finding's own sentence says to change is tried first and keeps its place among
 * the offers. What the layout demands is not changed, for asking less mends nothing, but where that
 * sentence says so. A change that makes more fail than it mends is not offered, nor one by which
 * somebody can no longer sit: what is found about them would only not be looked at. Where ties and
 * limits contradict each other, what to let go of is offered instead.
 *
 * <p>Done in short pieces of a few solves, by {@link #goOn}, so that whoever asked can stop between
 * two of them. The work is bounded by counts. Not for several threads.
 */
public final class Mending {

  /** Ways looked at; beyond them a finding is mended by another machine. */
  private static final int DIALS = 60;

  /** Ways followed, and of those that mend it how many are tried on the whole machine. */
  private static final int FOLLOWED = 18;

  private static final int WHOLE = 10;

  /** Where a finding has no figure to follow, so many ways are tried far out. */
  private static final int FAR = 8;

  /** Machines solved for one finding at most. */
  private static final int MACHINES = 360;

  /** Offers kept, and how many of them may change one thing. */
  private static final int OFFERS = 5;

  private static final int OF_ONE_THING = 2;

  /** What costs more is no mending but another machine. */
  private static final int MOST_COSTS = 3;

  /** A slant that differs little from one of its axes is not offered beside it. */
  private static final double LEAST_SLANT = 0.2;

  private final Study base;
  private final Finding finding;
  private final Advised advised;
  private final Trying trying;
  private final Loosening loosening;
  private final double start;
  private final Deque<Along> unseen = new ArrayDeque<>();
  private final List<Along> seen = new ArrayList<>();
  private final Deque<Along> promising = new ArrayDeque<>();
  private final List<Offer> offers = new ArrayList<>();
  private final List<Offer> named = new ArrayList<>();
  private int far;
  private int whole;
  private boolean sorted;

  /**
   * @param base everything about the machine
   * @param finding one of its findings
   */
  public Mending(Study base, Finding finding) {
    this.base = base;
    this.finding = finding;
    advised = new Advised(base.layout(), finding);
    start = finding.margin() < 0 ? finding.margin() : Double.NaN;
    loosening = Loosening.isFor(base, finding) ? new Loosening(base) : null;
    trying =
        loosening == null && isMendable(base, finding) ? new Trying(base, finding, MACHINES) : null;
    if (trying != null) {
      new Dials(base).of(finding, DIALS).forEach(d -> unseen.add(new Along(d, trying, start)));
    }
  }

  /**
   * Returns whether a change of the layout may mend a finding at all: not what passes, not what
   * only says that something is not judged, and of a layout that contradicts itself nothing but
   * that it does.
   */
  public static boolean isMendable(Study base, Finding finding) {
    boolean wanted = finding.verdict() == Verdict.FAIL || finding.verdict() == Verdict.CAUTION;
    boolean outside = finding.margin() < 0;
    return Loosening.isFor(base, finding)
        || wanted
            && base.placed().holds()
            && finding.group() != FindingGroup.LAYOUT
            && (outside || finding.group() != FindingGroup.LAW);
  }

  /** Returns the offers for a finding, all of them worked out. */
  public static List<Offer> of(Study base, Finding finding) {
    Mending mending = new Mending(base, finding);
    while (mending.goOn()) {
      // until nothing is left to look at
    }
    return mending.offers();
  }

  /** Returns the offers found so far, the best first. */
  public List<Offer> offers() {
    if (loosening != null) {
      return loosening.offers();
    }
    List<Offer> few = new ArrayList<>(named);
    for (Offer offer : offers) {
      long same = few.stream().filter(o -> o.thing().equals(offer.thing())).count();
      if (few.size() < OFFERS && same < OF_ONE_THING && !few.contains(offer)) {
        few.add(offer);
      }
    }
    few.sort(Offer.ORDER);
    return few;
  }

  /** Looks at one more way; returns whether there is more to do. */
  public boolean goOn() {
    if (loosening != null) {
      return loosening.goOn();
    }
    if (trying == null || trying.isSpent()) {
      return false;
    }
    if (!unseen.isEmpty()) {
      Along next = unseen.remove();
      next.probe();
      if (next.isBlind() && far < FAR && Double.isNaN(next.slope() + start)) {
        far++;
        next.lookFar();
      }
      if (seen.stream().noneMatch(next::isLike)) {
        seen.add(next);
      }
      return true;
    }
    if (!sorted) {
      sort();
    }
    if (promising.isEmpty() || clean() >= OFFERS || whole >= WHOLE) {
      return false;
    }
    Along next = promising.remove();
    next.fewest().ifPresent(steps -> tryWhole(next.dial(), steps));
    return !promising.isEmpty();
  }

  private long clean() {
    return offers().stream().filter(o -> o.costs().isEmpty()).count();
  }

  private void sort() {
    sorted = true;
    List<Along> all = new ArrayList<>(seen);
    for (Along x : seen) {
      for (Along z : seen) {
        slant(x, z).ifPresent(all::add);
      }
    }
    all.stream()
        .filter(a -> !a.isBlind())
        .sorted(
            Comparator.comparing((Along a) -> !advised.names(a.dial()))
                .thenComparingDouble(Along::expected))
        .limit(FOLLOWED)
        .forEach(promising::add);
  }

  /** Of one thing that moves both ways: the direction in which the finding gets better fastest. */
  private Optional<Along> slant(Along x, Along z) {
    if (!(x.dial() instanceof Dial.Moving moving)
        || !(z.dial() instanceof Dial.Moving up)
        || !moving.thing().equals(up.thing())
        || moving.way().z() != 0
        || up.way().x() != 0) {
      return Optional.empty();
    }
    PointMm slope = new PointMm(x.slope(), z.slope());
    double least = Math.min(Math.abs(slope.x()), Math.abs(slope.z()));
    if (!(least > LEAST_SLANT * slope.length())) {
      return Optional.empty();
    }
    Along both = new Along(moving.along(slope.times(1 / slope.length())), trying, start);
    both.expect(slope.length());
    return Optional.of(both);
  }

  private void tryWhole(Dial dial, int steps) {
    whole++;
    Rewrite rewrite = dial.turned(steps).orElseThrow();
    Optional<Study> after = trying.study(rewrite);
    if (after.isEmpty() || !Outcome.of(finding, after.get().findings()).met()) {
      return;
    }
    List<Cost> costs = Cost.between(base.findings(), after.get().findings(), base.layout().units());
    String care = Outcome.among(after.get().findings(), finding.id()).map(Offer::care).orElse("");
    Places was = base.placed().places();
    Places now = after.get().placed().places();
    Offer offer =
        new Offer(
            dial.says(steps, was, now).in(base.layout().units()),
            rewrite,
            dial.size(steps, was, now),
            care,
            costs,
            dial.thing());
    long mostFailing = finding.verdict() == Verdict.FAIL ? 1 : 0;
    if (offer.failing() <= mostFailing && costs.size() <= MOST_COSTS) {
      offers.add(offer);
      offers.sort(Offer.ORDER);
      if (advised.names(dial)) {
        named.add(offer);
      }
    }
  }
}
