package org.longlow.constraints.solve.step;

import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * One way to bring a group onto its ties: where to begin, how far to shake that, and how the ties
 * are taken in. {@link Attempts} goes through a list of them.
 *
 * @param name what it is called among developers
 * @param keepsTurns whether the first step may not turn an angle over
 * @param fromBest whether it begins where an earlier try missed least, else at the beginning
 * @param shakeShare how far variables are shaken first, as a share of the extent of the group
 * @param ties how the ties are taken in
 * @param seed of the shaking and of the order of ties; the same way every time
 */
record Try(
    String name, boolean keepsTurns, boolean fromBest, double shakeShare, Ties ties, int seed) {

  /** How ties are taken in. */
  enum Ties {
    ALL_AT_ONCE,
    /** One after the other, as the user would have added them. */
    IN_THEIR_ORDER,
    /** One after the other in an order of chance. */
    IN_ANY_ORDER,
    /** Those that are off most come last. */
    FAILING_LAST
  }

  private static final Try KEEPING_TURNS =
      new Try("keeping turns", true, false, 0, Ties.ALL_AT_ONCE, 0);
  private static final Try PLAIN = new Try("plain", false, false, 0, Ties.ALL_AT_ONCE, 1);

  /** The first three look near by, each in a way that another does not. */
  private static final List<Try> NEAR =
      List.of(
          new Try("near the best", false, true, 0.05, Ties.ALL_AT_ONCE, 2),
          new Try("tie by tie", false, false, 0, Ties.IN_THEIR_ORDER, 3),
          new Try("near the best, failing ties last", false, true, 0.05, Ties.FAILING_LAST, 4));

  /** How far those shake that do not begin where an earlier one came near. */
  static double farShare(int seed) {
    return 0.2 * (1 + seed % 5);
  }

  /** From where it begins and no farther. */
  static List<Try> plain(boolean keepingTurns) {
    return keepingTurns ? List.of(KEEPING_TURNS, PLAIN) : List.of(PLAIN);
  }

  /** From so many other starts: near by, then farther and farther, in turns all ties at once. */
  static List<Try> shaken(int count) {
    Stream<Try> far =
        IntStream.range(NEAR.size(), Math.max(count, NEAR.size()))
            .map(i -> i + 2)
            .mapToObj(
                seed ->
                    new Try(
                        "far",
                        false,
                        false,
                        farShare(seed),
                        seed % 2 == 1 ? Ties.IN_ANY_ORDER : Ties.ALL_AT_ONCE,
                        seed));
    return Stream.concat(NEAR.stream().limit(count), far).toList();
  }

  /** Plain ones, then shaken ones. */
  static List<Try> all(boolean keepingTurns, int shaken) {
    return Stream.concat(plain(keepingTurns).stream(), shaken(shaken).stream()).toList();
  }
}
