package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.geom.Line2D;
import java.awt.geom.Rectangle2D;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;

/** Strings of tags and the heads that they do not run over, against another geometry library. */
class StringsTest {

  private static final Spots.Box TAG = new Spots.Box(300, 8, 240, 22);
  private static final Spots.Box HEAD = new Spots.Box(450, 140, 120, 120);

  private static boolean over(List<PointMm> line, Spots.Box box) {
    Rectangle2D r = new Rectangle2D.Double(box.x(), box.y(), box.width(), box.height());
    for (int i = 1; i < line.size(); i++) {
      PointMm a = line.get(i - 1);
      PointMm b = line.get(i);
      if (new Line2D.Double(a.x(), a.z(), b.x(), b.z()).intersects(r)) {
        return true;
      }
    }
    return false;
  }

  @Test
  void withNothingInItsWayItHangsStraightFromTheMiddle() {
    PointMm to = new PointMm(700, 340);
    assertThat(Strings.of(TAG, to, List.of(), List.of())).containsExactly(new PointMm(420, 30), to);
  }

  /** From 420 to 590 it would run over the head; from farther left it would too. */
  @Test
  void itHangsFromAnotherSpotOfItsTagIfThatIsEnough() {
    PointMm to = new PointMm(700, 240);
    List<PointMm> line = Strings.of(TAG, to, List.of(HEAD), List.of());
    assertThat(over(List.of(new PointMm(420, 30), to), HEAD)).isTrue();
    assertThat(line).hasSize(2);
    assertThat(line.get(0).z()).isEqualTo(30);
    assertThat(line.get(0).x()).isBetween(421.0, 540.0);
    assertThat(over(line, HEAD)).isFalse();
  }

  @Test
  void elseItGoesRoundTheHead() {
    Spots.Box wide = new Spots.Box(250, 140, 340, 120);
    for (double x : new double[] {300, 540}) {
      PointMm to = new PointMm(x, 400);
      List<PointMm> line = Strings.of(TAG, to, List.of(wide), List.of());
      assertThat(line).hasSizeGreaterThan(2);
      assertThat(over(line, wide)).isFalse();
      assertThat(line.get(line.size() - 1)).isEqualTo(to);
      assertThat(line.get(1).x()).as("on the nearer side").isEqualTo(x < 420 ? 245 : 595);
    }
  }

  @Test
  void whatIsAboutTheHeadItselfHangsOnIt() {
    PointMm eye = new PointMm(520, 190);
    assertThat(Strings.of(TAG, eye, List.of(HEAD), List.of()).get(1)).isEqualTo(eye);
    assertThat(Strings.of(TAG, eye, List.of(HEAD), List.of())).hasSize(2);
  }

  /** Straight down from the middle of the tag it would run through the word. */
  @Test
  void whereItCanItRunsThroughNoWords() {
    PointMm to = new PointMm(420, 400);
    Spots.Box word = new Spots.Box(390, 200, 60, 16);
    List<PointMm> line = Strings.of(TAG, to, List.of(), List.of(word));
    assertThat(over(List.of(new PointMm(420, 30), to), word)).isTrue();
    assertThat(over(line, word)).isFalse();
    assertThat(line).hasSize(2);
    // where every way runs through words it hangs as it would without them
    Spots.Box wide = new Spots.Box(-1000, 200, 3000, 16);
    assertThat(Strings.of(TAG, to, List.of(), List.of(wide)).get(0))
        .isEqualTo(new PointMm(420, 30));
  }

  @Test
  void whatRunsThroughABoxIsWhatAnotherLibrarySays() {
    Random random = new Random(7);
    int through = 0;
    for (int i = 0; i < 2000; i++) {
      PointMm a = new PointMm(random.nextDouble() * 900, random.nextDouble() * 400);
      PointMm b = new PointMm(random.nextDouble() * 900, random.nextDouble() * 400);
      boolean crosses = Strings.crosses(a, b, HEAD);
      assertThat(crosses).as(a + " " + b).isEqualTo(over(List.of(a, b), HEAD));
      through += crosses ? 1 : 0;
    }
    assertThat(through).isBetween(200, 1800);
  }
}
