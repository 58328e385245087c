package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.fx.Spots.Box;
import org.longlow.sketcher.fx.Spots.Busy;
import org.longlow.sketcher.fx.Spots.Size;

/** Where slips lie and tags hang, against plain cases and against trying everything. */
class SpotsTest {

  @Test
  void aSlipKeepsOffWhatIsPickedAndLiesInTheFreePlaceNearest() {
    Box room = new Box(0, 0, 1000, 600);
    Box picked = new Box(400, 400, 200, 100);
    Box above = new Box(300, 0, 700, 280);
    Box at = Spots.slip(room, List.of(new Size(250, 250)), picked, busy(above, picked));
    assertThat(at.shared(picked)).isZero();
    assertThat(at.shared(above)).isZero();
    assertThat(at.apart(picked)).isLessThan(60);
  }

  @Test
  void aSlipGrowsAsFarAsItHidesNothingMore() {
    Box room = new Box(0, 0, 1000, 600);
    Box at = new Box(100, 200, 200, 100);
    Box below = new Box(150, 420, 40, 100);
    Box over = new Box(290, 20, 300, 90);
    Box beside = new Box(301, 0, 100, 600);
    assertThat(Spots.grown(at, 1000, room, null, busy(below, over, beside)))
        .isEqualTo(new Box(100, 110, 200, 310));
    assertThat(Spots.grown(at, 180, room, null, busy(below, over)))
        .as("downwards first, no higher than it likes")
        .isEqualTo(new Box(100, 200, 200, 180));
    assertThat(Spots.grown(at, 1000, room, below, busy()))
        .as("what is picked stays seen")
        .isEqualTo(new Box(100, 0, 200, 420));
    assertThat(Spots.grown(at, 1000, room, null, busy(new Box(150, 250, 10, 200))).bottom())
        .as("of what it hides already it hides no more")
        .isEqualTo(300);
  }

  @Test
  void theShapeIsTakenThatHidesLeast() {
    Box room = new Box(0, 0, 1000, 400);
    Box low = new Box(0, 160, 1000, 240);
    Box flat = Spots.slip(room, List.of(new Size(200, 300), new Size(400, 150)), null, busy(low));
    assertThat(flat.width()).isEqualTo(400);
    assertThat(flat.shared(low)).isZero();
    Box right = new Box(0, 0, 700, 400);
    Box tall = Spots.slip(room, List.of(new Size(200, 300), new Size(400, 150)), null, busy(right));
    assertThat(tall.width()).isEqualTo(200);
    assertThat(tall.shared(right)).isZero();
  }

  private static List<Busy> busy(Box... boxes) {
    return Stream.of(boxes).map(b -> new Busy(b, 1)).toList();
  }

  /** A head of 100 by 100 px weighs 80,000; the knees beside it 30,000. */
  @Test
  void whatIsDearIsHiddenLast() {
    Box room = new Box(0, 0, 400, 200);
    Busy head = new Busy(new Box(50, 50, 100, 100), 8);
    Busy knees = new Busy(new Box(200, 0, 200, 150), 1);
    Box at = Spots.slip(room, List.of(new Size(200, 200)), null, List.of(knees, head));
    assertThat(at.shared(head.box())).isZero();
    Box other = Spots.slip(room, List.of(new Size(200, 200)), null, busy(knees.box(), head.box()));
    assertThat(other.shared(knees.box())).isZero();
  }

  /** What a lower slip costs is weighed against the 200 x 100 px of the machine that it spares. */
  @Test
  void aSlipGrowsNoTallerThanIsWorthWhatItHides() {
    Box room = new Box(0, 0, 200, 300);
    Box machine = new Box(0, 100, 200, 200);
    Box spared =
        Spots.slip(
            room, List.of(new Size(200, 200), new Size(200, 100, 19_999)), null, busy(machine));
    assertThat(spared.height()).isEqualTo(100);
    assertThat(spared.shared(machine)).isZero();
    Box whole =
        Spots.slip(
            room, List.of(new Size(200, 200), new Size(200, 100, 20_001)), null, busy(machine));
    assertThat(whole.height()).isEqualTo(200);
  }

  @Test
  void wordsAreReadWhereNothingLiesOverThem() {
    Box room = new Box(0, 0, 1000, 600);
    Box list = new Box(700, 0, 300, 600);
    Size words = new Size(200, 40);
    Box free = Spots.beside(new PointMm(300, 300), words, 22, 20, room, List.of(list));
    assertThat(free).isEqualTo(new Box(322, 320, 200, 40));
    Box left = Spots.beside(new PointMm(650, 300), words, 22, 20, room, List.of(list));
    assertThat(left).as("flipped off the list").isEqualTo(new Box(428, 320, 200, 40));
    Box above = Spots.beside(new PointMm(300, 590), words, 22, 20, room, List.of(list));
    assertThat(above).isEqualTo(new Box(322, 530, 200, 40));
    Box corner = Spots.beside(new PointMm(990, 590), words, 22, 20, room, List.of());
    assertThat(corner).isEqualTo(new Box(768, 530, 200, 40));
  }

  @Test
  void wordsTooLongForEitherSideStayInside() {
    Box room = new Box(28, 44, 400, 300);
    Box at = Spots.beside(new PointMm(220, 100), new Size(350, 40), 22, 20, room, List.of());
    assertThat(at.x()).isGreaterThanOrEqualTo(room.x());
    assertThat(at.right()).isLessThanOrEqualTo(room.right());
    Box wider = Spots.beside(new PointMm(220, 100), new Size(900, 40), 22, 20, room, List.of());
    assertThat(wider.x()).as("its beginning is read").isEqualTo(room.x());
  }

  @Test
  void aSlipTooLargeForItsRoomLiesAtItsCorner() {
    Box at = Spots.slip(new Box(24, 50, 100, 90), List.of(new Size(260, 300)), null, List.of());
    assertThat(at).isEqualTo(new Box(24, 50, 260, 300));
  }

  @Test
  void tagsHangWhereTheyAreWantedIfThereIsRoom() {
    double[] left = Spots.row(new double[] {100, 400}, new double[] {100, 100}, 0, 1000, 8);
    assertThat(left).containsExactly(100, 400);
  }

  @Test
  void tagsThatWantTheSamePlaceHangEvenlyAboutIt() {
    double[] left = Spots.row(new double[] {300, 300}, new double[] {100, 100}, 0, 1000, 10);
    assertThat(left).containsExactly(245, 355);
  }

  /** The least sum of squares, by going through all places on a grid of 10 px. */
  @Test
  void aRowIsTheBestOfAll() {
    Random random = new Random(11);
    for (int trial = 0; trial < 40; trial++) {
      double[] wanted = new double[3];
      wanted[0] = random.nextInt(30) * 10;
      wanted[1] = wanted[0] + random.nextInt(10) * 10;
      wanted[2] = wanted[1] + random.nextInt(10) * 10;
      double[] widths = {60, 40, 80};
      double[] left = Spots.row(wanted, widths, 0, 500, 10);
      assertThat(left[1]).isGreaterThanOrEqualTo(left[0] + 70 - 1e-9);
      assertThat(left[2]).isGreaterThanOrEqualTo(left[1] + 50 - 1e-9);
      assertThat(left[0]).isGreaterThanOrEqualTo(0);
      assertThat(left[2]).isLessThanOrEqualTo(420 + 1e-9);
      double best = Double.POSITIVE_INFINITY;
      for (int a = 0; a <= 420; a += 10) {
        for (int b = a + 70; b <= 420; b += 10) {
          for (int c = b + 50; c <= 420; c += 10) {
            best = Math.min(best, off(wanted, a, b, c));
          }
        }
      }
      double is = off(wanted, left[0], left[1], left[2]);
      // the grid is at most 10 px off, so its best may be worse by little, never better
      assertThat(is).as("trial %d", trial).isLessThanOrEqualTo(best + 1e-6);
    }
  }

  @Test
  void aRowTooLongBeginsAtItsBeginning() {
    double[] left = Spots.row(new double[] {500, 500}, new double[] {300, 300}, 20, 400, 10);
    assertThat(left[0]).isCloseTo(20, within(1e-9));
    assertThat(left[1]).isCloseTo(330, within(1e-9));
  }

  private static double off(double[] wanted, double... left) {
    double sum = 0;
    for (int i = 0; i < left.length; i++) {
      sum += Math.pow(left[i] - wanted[i], 2);
    }
    return sum;
  }
}
