package org.longlow.constraints.machine.shop;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.machine.shop.SheetPlan.Laid;
import org.longlow.constraints.machine.shop.SheetPlan.Piece;

/** Sheets: what lies on them, cut from edge to edge, against all ways to cut a few pieces. */
class SheetPlanTest {

  private static final double SAME = 1e-6;

  /** A piece as it lies, mm. */
  private record Box(double x, double y, double w, double h) {}

  private static Box box(Laid laid, List<Piece> pieces) {
    Piece p = pieces.get(laid.piece());
    return new Box(
        laid.alongMm(),
        laid.acrossMm(),
        laid.turned() ? p.wideMm() : p.longMm(),
        laid.turned() ? p.longMm() : p.wideMm());
  }

  private static void isSound(SheetPlan plan, List<Piece> pieces) {
    List<Integer> all = new ArrayList<>(plan.tooLarge());
    for (SheetPlan.Sheet sheet : plan.sheets()) {
      List<Box> boxes = sheet.laid().stream().map(l -> box(l, pieces)).toList();
      for (Laid laid : sheet.laid()) {
        all.add(laid.piece());
        assertThat(laid.turned() && !pieces.get(laid.piece()).mayTurn()).isFalse();
      }
      for (Box b : boxes) {
        assertThat(b.x).isGreaterThanOrEqualTo(0);
        assertThat(b.y).isGreaterThanOrEqualTo(0);
        assertThat(b.x + b.w).isLessThanOrEqualTo(plan.longMm() + SAME);
        assertThat(b.y + b.h).isLessThanOrEqualTo(plan.wideMm() + SAME);
      }
      assertThat(isCutFromEdgeToEdge(boxes, plan.kerfMm())).as("%s", boxes).isTrue();
    }
    Collections.sort(all);
    assertThat(all).isEqualTo(IntStream.range(0, pieces.size()).boxed().toList());
    assertThat(plan.leastSheets()).isLessThanOrEqualTo(plan.sheets().size());
  }

  /** Whether straight cuts part them one after the other, each as wide as a kerf. */
  private static boolean isCutFromEdgeToEdge(List<Box> boxes, double kerf) {
    if (boxes.size() < 2) {
      return true;
    }
    for (boolean upright : new boolean[] {true, false}) {
      for (Box first : boxes) {
        double at = upright ? first.x + first.w : first.y + first.h;
        List<Box> before = new ArrayList<>();
        List<Box> behind = new ArrayList<>();
        for (Box b : boxes) {
          double from = upright ? b.x : b.y;
          double to = from + (upright ? b.w : b.h);
          if (to <= at + SAME) {
            before.add(b);
          } else if (from >= at + kerf - SAME) {
            behind.add(b);
          }
        }
        if (before.size() + behind.size() == boxes.size()
            && !behind.isEmpty()
            && isCutFromEdgeToEdge(before, kerf)
            && isCutFromEdgeToEdge(behind, kerf)) {
          return true;
        }
      }
    }
    return false;
  }

  /** All sizes that some pieces may take together, by all trees of straight cuts. */
  private static List<List<double[]>> together(List<Piece> pieces, double kerf) {
    int sets = 1 << pieces.size();
    List<List<double[]>> sizes = new ArrayList<>();
    sizes.add(List.of());
    for (int set = 1; set < sets; set++) {
      List<double[]> of = new ArrayList<>();
      if (Integer.bitCount(set) == 1) {
        Piece p = pieces.get(Integer.numberOfTrailingZeros(set));
        of.add(new double[] {p.longMm(), p.wideMm()});
        if (p.mayTurn()) {
          of.add(new double[] {p.wideMm(), p.longMm()});
        }
      }
      for (int part = (set - 1) & set; part > 0; part = (part - 1) & set) {
        for (double[] a : sizes.get(part)) {
          for (double[] b : sizes.get(set ^ part)) {
            of.add(new double[] {a[0] + kerf + b[0], Math.max(a[1], b[1])});
            of.add(new double[] {Math.max(a[0], b[0]), a[1] + kerf + b[1]});
          }
        }
      }
      List<double[]> least = new ArrayList<>();
      for (double[] a : of) {
        boolean beaten = least.stream().anyMatch(b -> b[0] <= a[0] + 1e-12 && b[1] <= a[1] + 1e-12);
        if (!beaten) {
          least.removeIf(b -> a[0] <= b[0] && a[1] <= b[1]);
          least.add(a);
        }
      }
      sizes.add(least);
    }
    return sizes;
  }

  /** The fewest sheets of all ways. */
  private static int fewest(List<Piece> pieces, double w, double h, double kerf) {
    List<List<double[]>> sizes = together(pieces, kerf);
    int sets = sizes.size();
    int[] fewest = new int[sets];
    for (int set = 1; set < sets; set++) {
      fewest[set] = 1000;
      for (int on = set; on > 0; on = (on - 1) & set) {
        if (sizes.get(on).stream().anyMatch(s -> s[0] <= w + SAME && s[1] <= h + SAME)) {
          fewest[set] = Math.min(fewest[set], 1 + fewest[set ^ on]);
        }
      }
    }
    return fewest[sets - 1];
  }

  @Test
  void aFewPiecesTakeNoFewerThanAnyWayAndHardlyMore() {
    Random random = new Random(11);
    int cases = 100;
    int more = 0;
    for (int i = 0; i < cases; i++) {
      double kerf = i % 3;
      List<Piece> pieces = new ArrayList<>();
      int count = 1 + random.nextInt(4);
      for (int k = 0; k < count; k++) {
        pieces.add(
            new Piece(10 + random.nextInt(80), 10 + random.nextInt(50), random.nextInt(3) > 0));
      }
      SheetPlan plan = SheetPlan.of(pieces, 100, 60, kerf);
      isSound(plan, pieces);
      assertThat(plan.tooLarge()).isEmpty();
      int fewest = fewest(pieces, 100, 60, kerf);
      assertThat(plan.leastSheets()).as("%s", pieces).isLessThanOrEqualTo(fewest);
      assertThat(plan.sheets().size()).as("%s", pieces).isBetween(fewest, fewest + 1);
      more += plan.sheets().size() - fewest;
    }
    assertThat(more).isLessThanOrEqualTo(cases / 20);
  }

  @Test
  void manyPiecesAreLaidAndCutFree() {
    Random random = new Random(5);
    List<Piece> pieces = new ArrayList<>();
    for (int k = 0; k < 120; k++) {
      pieces.add(
          new Piece(50 + random.nextInt(500), 40 + random.nextInt(300), random.nextBoolean()));
    }
    SheetPlan plan = SheetPlan.of(pieces, 2440, 1220, 3);
    isSound(plan, pieces);
    double area = pieces.stream().mapToDouble(p -> (p.longMm() + 3) * (p.wideMm() + 3)).sum();
    assertThat(plan.leastSheets()).isEqualTo((int) Math.ceil(area / (2443.0 * 1223)));
    assertThat(plan.sheets().size()).isLessThanOrEqualTo(plan.leastSheets() + 1);
  }

  @Test
  void grainForbidsTurning() {
    assertThat(SheetPlan.of(List.of(new Piece(50, 90, true)), 100, 60, 2).sheets()).hasSize(1);
    SheetPlan grained = SheetPlan.of(List.of(new Piece(50, 90, false)), 100, 60, 2);
    assertThat(grained.sheets()).isEmpty();
    assertThat(grained.tooLarge()).containsExactly(0);
  }

  @Test
  void aKerfLiesBetweenPiecesAndNotAtTheEdge() {
    List<Piece> four = Collections.nCopies(4, new Piece(49, 29, false));
    assertThat(SheetPlan.of(four, 100, 60, 2).sheets()).hasSize(1);
    assertThat(SheetPlan.of(four, 100, 59.9, 2).sheets()).hasSize(2);
    assertThat(SheetPlan.of(four, 99.9, 60, 2).sheets()).hasSize(2);
    assertThat(SheetPlan.of(List.of(new Piece(100, 60, false)), 100, 60, 2).sheets()).hasSize(1);
    assertThat(SheetPlan.of(List.of(), 100, 60, 2).sheets()).isEmpty();
  }

  @Test
  void largePiecesCountByThemselves() {
    List<Piece> large = Collections.nCopies(3, new Piece(60, 40, false));
    assertThat(SheetPlan.of(large, 100, 60, 0).leastSheets()).isEqualTo(3);
    // by area two would do; turned, two lie beside each other and two do
    SheetPlan turned = SheetPlan.of(Collections.nCopies(3, new Piece(60, 40, true)), 100, 60, 0);
    assertThat(turned.leastSheets()).isEqualTo(2);
    assertThat(turned.sheets()).hasSize(2);
  }

  @Test
  void nonsenseIsRefused() {
    assertThatThrownBy(() -> new Piece(0, 1, true)).hasMessageContaining("length");
    assertThatThrownBy(() -> new Piece(1, -1, true)).hasMessageContaining("width");
    assertThatThrownBy(() -> SheetPlan.of(List.of(), 0, 1, 0)).hasMessageContaining("sheet length");
    assertThatThrownBy(() -> SheetPlan.of(List.of(), 1, 1, -1)).hasMessageContaining("kerf");
  }
}
