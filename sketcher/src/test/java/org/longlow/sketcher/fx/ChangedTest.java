package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import javafx.scene.canvas.GraphicsContext;
import org.junit.jupiter.api.Test;

/** What is painted anew: all that changed, over and under what, and hardly more. */
class ChangedTest {

  private static final Spots.Box ALL = new Spots.Box(0, 0, 1000, 1000);

  /** An ink that is known by its name. */
  private record Named(String name, Spots.Box box) implements Ink {
    @Override
    public Optional<Spots.Box> within(Spots.Box px) {
      return Reach.shared(box, px);
    }

    @Override
    public void paint(GraphicsContext gc) {
      throw new UnsupportedOperationException();
    }
  }

  private static Ink ink(String name) {
    return new Named(name, ALL);
  }

  private static Ink at(double x, double y, double wide, double high) {
    return new Named("", new Spots.Box(x, y, wide, high));
  }

  @Test
  void whatComesAndGoes() {
    Ink a = ink("a");
    Ink b = ink("b");
    Ink c = ink("c");
    assertThat(Changed.between(List.of(a, b, c), List.of(a, b, c))).isEmpty();
    assertThat(Changed.between(List.of(a, b), List.of(a, c, b))).containsExactly(c);
    assertThat(Changed.between(List.of(a, b, c), List.of(a, c))).containsExactly(b);
    assertThat(Changed.between(List.of(), List.of(a))).containsExactly(a);
    assertThat(Changed.between(List.of(a), List.of())).containsExactly(a);
  }

  @Test
  void whatLiesOverSomethingElseThanBefore() {
    Ink a = ink("a");
    Ink b = ink("b");
    Ink c = ink("c");
    List<Ink> changed = Changed.between(List.of(a, b, c), List.of(b, a, c));
    assertThat(changed).as("one of the two that changed places").containsAnyOf(a, b);
    assertThat(changed).doesNotContain(c);
  }

  @Test
  void onePaintedTwiceAndThenOnce() {
    Ink a = ink("a");
    assertThat(Changed.between(List.of(a, a), List.of(a))).contains(a);
    assertThat(Changed.between(List.of(a), List.of(a, a))).contains(a);
  }

  @Test
  void nearBoxesAreOneAndFarOnesAreNot() {
    assertThat(Changed.boxes(List.of(at(10.2, 10.7, 20, 20), at(25, 20, 20, 20)), ALL))
        .containsExactly(new Spots.Box(10, 10, 35, 30));
    assertThat(Changed.boxes(List.of(at(0, 0, 20, 20), at(900, 900, 20, 20)), ALL)).hasSize(2);
    Ink left = at(0, 0, 100, 100);
    Ink right = at(250, 0, 100, 100);
    assertThat(Changed.boxes(List.of(right, left), ALL)).hasSize(2);
    assertThat(Changed.boxes(List.of(right, left, at(110, 0, 130, 100)), ALL))
        .as("joined by the one between")
        .containsExactly(new Spots.Box(0, 0, 350, 100));
  }

  @Test
  void boxesStayWithinTheTile() {
    Spots.Box tile = new Spots.Box(200, 200, 101, 101);
    assertThat(Changed.boxes(List.of(at(150, 250.5, 500, 3)), tile))
        .containsExactly(new Spots.Box(200, 250, 101, 4));
    assertThat(Changed.boxes(List.of(at(0, 0, 200, 200)), tile)).isEmpty();
  }

  /** A slanting line reaches into few tiles of the box round it. */
  @Test
  void linesReachWhereTheyRun() {
    double[] x = {0, 400};
    double[] y = {0, 400};
    assertThat(Reach.ofLine(x, y, 1, new Spots.Box(300, 0, 100, 100))).isEmpty();
    Spots.Box on = Reach.ofLine(x, y, 1, new Spots.Box(100, 100, 100, 100)).orElseThrow();
    assertThat(on).isEqualTo(new Spots.Box(100, 100, 100, 100));
    Spots.Box corner = Reach.ofLine(x, y, 10, new Spots.Box(105, 90, 20, 10)).orElseThrow();
    assertThat(corner.x()).isEqualTo(105);
    assertThat(corner.right()).as("where it leaves the box widened by 10").isBetween(119.9, 120.1);
    assertThat(Reach.ofLine(new double[] {5, 5}, y, 2, new Spots.Box(0, 50, 20, 20)).orElseThrow())
        .as("upright")
        .isEqualTo(new Spots.Box(3, 50, 4, 20));
    assertThat(Reach.ofLine(new double[] {5, 5}, y, 2, new Spots.Box(7.5, 50, 20, 20))).isEmpty();
  }
}
