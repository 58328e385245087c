package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.rider.words.Words;

/** What is mended goes down the list alone. */
class FindingInSightTest {

  private final FindingInSight sight = new FindingInSight();

  /** Findings by name; one with {@code !} fails. */
  private static List<Finding> list(String... names) {
    return Stream.of(names).map(FindingInSightTest::finding).toList();
  }

  private static Finding finding(String name) {
    String plain = name.replace("!", "");
    return Finding.note(
        GapFindings.GAP,
        About.thing(plain, plain),
        plain.equals(name) ? Verdict.PASS : Verdict.FAIL,
        Basis.judgement("judgement: test"),
        Words.of("Text."));
  }

  private static String id(String name) {
    return finding(name).id();
  }

  @Test
  void whatFailsNextTakesThePlaceOfWhatIsMended() {
    assertThat(sight.index(list("a!", "b!", "c!", "x", "y"), id("b"), false)).isEqualTo(1);
    assertThat(sight.index(list("a!", "c!", "x", "y", "b"), id("b"), false)).isEqualTo(1);
    // and stays there, though the list is told anew
    assertThat(sight.index(list("a!", "c!", "x", "b", "y"), id("b"), false)).isEqualTo(1);
    assertThat(sight.index(list("a!", "x", "b", "y", "c"), id("b"), false)).isZero();
  }

  @Test
  void theFirstThatFailsComesAfterTheLast() {
    sight.index(list("a!", "b!", "x"), id("b"), false);
    assertThat(sight.index(list("a!", "b", "x"), id("b"), false)).isZero();
  }

  @Test
  void withNoneLeftThePlaceIsKept() {
    sight.index(list("a!", "x", "y"), id("a"), false);
    assertThat(sight.index(list("x", "y", "a"), id("a"), false)).isZero();
    assertThat(sight.index(List.of(), id("a"), false)).isEqualTo(-1);
  }

  @Test
  void whatFailsAgainIsFollowedAgain() {
    sight.index(list("a!", "b!", "x"), id("a"), false);
    sight.index(list("b!", "x", "a"), id("a"), false);
    assertThat(sight.index(list("b!", "a!", "x"), id("a"), false)).isEqualTo(1);
  }

  @Test
  void whatWasNotMendedIsFollowedWhereverItGoes() {
    sight.index(list("a!", "b!", "x", "y"), id("a"), false);
    assertThat(sight.index(list("b!", "a!", "x", "y"), id("a"), false)).isEqualTo(1);
    assertThat(sight.index(list("b!", "a!", "x", "y"), id("y"), false)).isEqualTo(3);
    assertThat(sight.index(list("b!", "a!", "y", "x"), id("y"), false)).isEqualTo(2);
    assertThat(sight.index(list("b!", "a!", "x"), "", false)).isEqualTo(-1);
  }

  /** Whoever drags watches its figure, also past its limit. */
  @Test
  void whileSomethingMovesWhatIsPickedIsWatched() {
    sight.index(list("a!", "b!", "x"), id("a"), false);
    assertThat(sight.index(list("b!", "x", "a"), id("a"), true)).isEqualTo(2);
    assertThat(sight.index(list("b!", "x", "a"), id("a"), false)).isZero();
  }
}
