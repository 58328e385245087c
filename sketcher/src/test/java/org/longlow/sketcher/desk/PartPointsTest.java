package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Outlines;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Handle;
import org.longlow.sketcher.edit.HoleEdits;
import org.longlow.sketcher.edit.Plates;

/** What is done to the points of a plate, asked of the desk; places are those of its corners. */
class PartPointsTest {

  private static final PointMm A = new PointMm(400, 500);
  private static final PointMm B = new PointMm(500, 500);
  private static final PointMm C = new PointMm(500, 560);
  private static final PointMm D = new PointMm(400, 560);
  private static final PointMm PIN_P = new PointMm(460, 540);

  @TempDir Path folder;
  private DeskHands hands;
  private PartPoints points;

  /** A plate of 100 by 60 on the board. */
  private void open() throws Exception {
    hands = new DeskHands(folder.resolve("state"));
    Layout plate = Plates.points("[0, 0], [100, 0], [100, 60], [0, 60]");
    Path file = Files.writeString(folder.resolve("plate.json"), LayoutWriter.toJson(plate));
    hands.open(file);
    hands.until(() -> hands.desk().shown().isPresent());
    points = new PartPoints(hands.desk(), "plate");
  }

  @AfterEach
  void close() {
    hands.desk().close();
  }

  private void done() throws InterruptedException {
    hands.until(() -> true);
    assertThat(hands.desk().trouble()).isEmpty();
  }

  private List<PointMm> corners() {
    Part.Outlined plate = (Part.Outlined) hands.session().layout().parts().get("plate");
    return Outlines.vertices(plate.frame(), plate.outline(), points.places());
  }

  private void cornersAre(PointMm... expected) {
    List<PointMm> is = corners();
    assertThat(is).hasSize(expected.length);
    for (int i = 0; i < expected.length; i++) {
      assertThat(is.get(i).distance(expected[i])).as("corner %d of %s", i, is).isLessThan(0.002);
    }
  }

  @Test
  void whatNeedsAPointSaysSoWhereNoneIsPicked() throws Exception {
    open();
    Layout before = hands.desk().shown().get().layout();
    points.pick(-1);
    List<Runnable> all = List.of(points::takeOut, points::smooth, () -> points.symmetrical(false));
    for (Runnable one : all) {
      hands.desk().dropNotice("point");
      one.run();
      assertThat(hands.desk().notices()).anyMatch(n -> n.text().contains("Pick a point first"));
    }
    assertThat(hands.desk().session().get().layout()).isSameAs(before);
  }

  @Test
  void pointsArePickedOneAfterTheOther() throws Exception {
    open();
    assertThat(points.isThere()).isTrue();
    assertThat(new PartPoints(hands.desk(), "nothing").isThere()).isFalse();
    assertThat(points.part()).isEqualTo("plate");
    assertThat(points.isClosed()).isTrue();
    assertThat(points.handles()).hasSize(4);
    assertThat(points.index()).isEqualTo(-1);
    assertThat(points.picked()).isNull();
    points.step(1);
    assertThat(points.index()).isZero();
    points.step(-1);
    assertThat(points.index()).isEqualTo(3);
    points.step(1);
    points.step(1);
    assertThat(points.picked().at().distance(B)).isLessThan(1e-9);
    assertThat(points.before().at().distance(A)).isLessThan(1e-9);
    assertThat(points.ring()).hasSize(4);
    points.pick(-1);
    points.step(-1);
    assertThat(points.index()).isEqualTo(3);
  }

  @Test
  void aPointMovesAndIsAtOnceWhereItWillBe() throws Exception {
    open();
    points.pick(1);
    PointMm to = new PointMm(530, 490);
    points.move(to, "");
    assertThat(points.handles().get(1).at()).isEqualTo(to);
    assertThat(points.asks()).isEmpty();
    done();
    cornersAre(A, to, C, D);
    assertThat(points.handles().get(1).at().distance(to)).isLessThan(0.002);
    assertThat(points.index()).isEqualTo(1);
    // the edge before it, of its own direction, as long as is typed
    points.setTo(150);
    done();
    cornersAre(A, A.plus(to.minus(A).times(150 / to.distance(A))), C, D);
    assertThat(hands.session().undo()).isTrue();
  }

  @Test
  void aPointIsAddedHalfWayAfterTheOnePickedAndPicked() throws Exception {
    open();
    PointMm low = new PointMm(450, 500);
    points.addAfter();
    done();
    cornersAre(A, low, B, C, D);
    assertThat(points.handles()).hasSize(5);
    assertThat(points.index()).isEqualTo(1);
    points.addAfter();
    done();
    cornersAre(A, low, new PointMm(475, 500), B, C, D);
    assertThat(points.picked().at().distance(new PointMm(475, 500))).isLessThan(0.002);
    // the edge after the last point is the one that closes the outline
    points.pick(5);
    points.addAfter();
    done();
    assertThat(corners()).hasSize(7);
    assertThat(corners().get(6).distance(new PointMm(400, 530))).isLessThan(0.002);
    assertThat(points.index()).isEqualTo(6);
    assertThat(hands.session().undo()).isTrue();
    assertThat(hands.session().undo()).isTrue();
    assertThat(hands.session().undo()).isTrue();
    assertThat(hands.session().undo()).isFalse();
  }

  /** A point hung on a pin is not torn off it in silence. */
  @Test
  void whatAPinHoldsIsAskedForFirst() throws Exception {
    open();
    points.pick(2);
    points.move(PIN_P, "p");
    done();
    cornersAre(A, B, PIN_P, D);
    assertThat(points.handles().get(2).pin()).isEqualTo("p");
    Layout hung = hands.session().layout();
    points.move(C, "");
    assertThat(points.asks()).contains("p").endsWith(".");
    assertThat(Character.isUpperCase(points.asks().charAt(0))).isTrue();
    done();
    assertThat(hands.session().layout()).isSameAs(hung);
    // dropped, it is not done later either: what is written then is where the point is
    points.drop();
    assertThat(points.asks()).isEmpty();
    points.replace();
    done();
    cornersAre(A, B, PIN_P, D);
    assertThat(points.handles().get(2).pin()).isEmpty();
    points.move(PIN_P, "p");
    done();
    points.move(C, "");
    points.replace();
    assertThat(points.asks()).isEmpty();
    done();
    cornersAre(A, B, C, D);
    assertThat(points.handles().get(2).pin()).isEmpty();
  }

  @Test
  void pointsAreAddedNearAnEdgeAndTakenOut() throws Exception {
    open();
    points.add(new PointMm(450, 509), 8);
    done();
    cornersAre(A, B, C, D);
    points.pick(3);
    points.add(new PointMm(450, 507), 8);
    done();
    cornersAre(A, new PointMm(450, 500), B, C, D);
    assertThat(points.index()).isEqualTo(-1);
    points.takeOut();
    done();
    assertThat(corners()).hasSize(5);
    points.pick(1);
    points.takeOut();
    done();
    cornersAre(A, B, C, D);
    assertThat(points.index()).isEqualTo(-1);
  }

  @Test
  void aPointIsSmoothedAndMadeACornerAgain() throws Exception {
    open();
    points.smooth();
    done();
    points.pick(1);
    points.smooth();
    done();
    assertThat(points.handles())
        .extracting(Handle::smooth)
        .containsExactly(false, true, false, false);
    points.smooth();
    done();
    assertThat(points.handles()).noneMatch(Handle::smooth);
  }

  private double areaMm2() {
    return Shapes.of(hands.session().layout().parts().get("plate"), points.places(), false)
        .outline()
        .getArea();
  }

  /** A hole of 8 mm takes 16 pi from 6000 square millimetres, and of 20 mm 100 pi. */
  @Test
  void aRoundHoleIsSizedAndTakenOut() throws Exception {
    open();
    points.hole(HoleEdits.Sort.ROUND, new PointMm(430, 520), 5, Optional.empty());
    done();
    assertThat(areaMm2()).isBetween(6000 - 16 * Math.PI - 0.1, 6000 - 16 * Math.PI + 1);
    points.pick(4);
    assertThat(points.picked().of()).isEqualTo(Handle.Of.CENTRE);
    assertThat(points.ring()).hasSize(1);
    points.setTo(20);
    done();
    assertThat(areaMm2()).isBetween(6000 - 100 * Math.PI - 0.1, 6000 - 100 * Math.PI + 3);
    points.smooth();
    done();
    points.takeOut();
    done();
    assertThat(areaMm2()).isEqualTo(6000);
  }

  /**
   * A slot moves whole, or by one end and then grows; what it takes of the plate is told by area.
   */
  @Test
  void aSlotMovesWholeOrByAnEnd() throws Exception {
    open();
    points.hole(HoleEdits.Sort.SLOT, new PointMm(450, 530), 5, Optional.of(12.0));
    done();
    double slot = areaMm2();
    PointMm left = points.handles().get(4).at();
    PointMm right = points.handles().get(5).at();
    points.pick(4);
    assertThat(points.takesHole()).isFalse();
    points.turnWholeHoles();
    assertThat(points.takesHole()).isTrue();
    points.move(left.plus(new PointMm(-10, 6)), "");
    assertThat(points.handles().get(5).at().distance(right.plus(new PointMm(-10, 6)))).isZero();
    done();
    assertThat(points.handles().get(4).at().distance(left.plus(new PointMm(-10, 6))))
        .isLessThan(1e-9);
    assertThat(points.handles().get(5).at().distance(right.plus(new PointMm(-10, 6))))
        .isLessThan(1e-9);
    assertThat(areaMm2()).isCloseTo(slot, within(1e-6));
    points.pick(0);
    assertThat(points.takesHole()).isFalse();
    points.pick(4);
    points.turnWholeHoles();
    points.move(left.plus(new PointMm(-20, 6)), "");
    done();
    assertThat(points.handles().get(5).at().distance(right.plus(new PointMm(-10, 6))))
        .isLessThan(1e-9);
    // half as wide as the 12 mm asked, 10 mm longer and turned by nothing
    assertThat(areaMm2()).isCloseTo(slot - 60, within(0.5));
  }

  /** Near a pin a round hole is centred on it; a cut-out is not, and is three times as large. */
  @Test
  void holesGoToPinsAndCutOutsWhereTheyAreAsked() throws Exception {
    open();
    points.hole(HoleEdits.Sort.ROUND, new PointMm(457, 538), 5, Optional.of(12.0));
    done();
    assertThat(points.handles().get(4).pin()).isEqualTo("p");
    assertThat(areaMm2()).isBetween(6000 - 36 * Math.PI - 0.1, 6000 - 36 * Math.PI + 2);
    hands.desk().undo();
    done();
    points.hole(HoleEdits.Sort.ROUND, new PointMm(452, 538), 5, Optional.of(12.0));
    done();
    assertThat(points.handles().get(4).pin()).isEmpty();
    assertThat(points.handles().get(4).at().distance(new PointMm(452, 538))).isLessThan(1);
    hands.desk().undo();
    done();
    points.hole(HoleEdits.Sort.CUT, new PointMm(450, 530), 30, Optional.empty());
    done();
    List<Handle> cut = points.handles().subList(4, points.handles().size());
    assertThat(cut).allMatch(h -> h.of() == Handle.Of.CUT && h.pin().isEmpty());
    assertThat(areaMm2()).isCloseTo(6000 - 24 * 24, within(1.0));
    // of four corners one can go; of three the whole hole does
    points.pick(5);
    assertThat(points.ring()).hasSize(cut.size());
    points.takeOut();
    done();
    assertThat(points.handles()).hasSize(4 + cut.size() - 1);
    for (int left = cut.size() - 1; left >= 3; left--) {
      points.pick(4);
      points.takeOut();
      done();
    }
    assertThat(points.handles()).hasSize(4);
    assertThat(areaMm2()).isEqualTo(6000);
  }

  /**
   * A plate that is 20 mm longer at its top: ahead of 450 lie 50 by 60 and half of 20 by 60, above
   * 530 lie 30 by 115. Made symmetrical it is twice that, and written out the same.
   */
  @Test
  void aPlateIsMadeSymmetrical() throws Exception {
    open();
    points.pick(2);
    points.move(new PointMm(520, 560), "");
    done();
    points.add(new PointMm(450, 500), 2);
    done();
    points.pick(1);
    points.symmetrical(true);
    done();
    assertThat(areaMm2()).isCloseTo(2 * 3600, within(0.1));
    assertThat(points.index()).isEqualTo(-1);
    assertThat(points.isClosed()).isFalse();
    points.symmetrical(true);
    done();
    assertThat(points.isClosed()).isTrue();
    assertThat(areaMm2()).isCloseTo(2 * 3600, within(0.1));
    hands.desk().undo();
    hands.desk().undo();
    done();
    // nothing picked, nothing done
    points.pick(-1);
    points.symmetrical(false);
    done();
    assertThat(areaMm2()).isCloseTo(6600, within(0.1));
    points.add(new PointMm(400, 530), 2);
    done();
    points.pick(5);
    points.symmetrical(false);
    done();
    assertThat(areaMm2()).isCloseTo(2 * 3450, within(0.1));
  }

  /** 5 mm outwards all round: 110 by 70 with corners square. */
  @Test
  void anEdgeIsMovedOutwards() throws Exception {
    open();
    points.offset(5, false);
    done();
    assertThat(areaMm2()).isBetween(110 * 70 - 25.0, 110 * 70 + 0.1);
  }

  @Test
  void aTubeHasBendsAndNoEdge() throws Exception {
    open();
    PartPoints rail = new PartPoints(hands.desk(), "rail");
    assertThat(rail.outline()).isEmpty();
    assertThat(rail.isClosed()).isFalse();
    assertThat(rail.handles()).hasSize(3).allMatch(h -> h.of() == Handle.Of.TUBE);
    Layout before = hands.session().layout();
    rail.hole(HoleEdits.Sort.ROUND, new PointMm(500, 700), 5, Optional.empty());
    rail.pick(1);
    rail.smooth();
    rail.setTo(300);
    rail.symmetrical(false);
    rail.replace();
    done();
    assertThat(hands.session().layout()).isSameAs(before);
    rail.add(new PointMm(500, 704), 8);
    done();
    assertThat(rail.handles()).hasSize(4);
    assertThat(rail.handles().get(1).at().distance(new PointMm(500, 700))).isLessThan(0.01);
    rail.pick(1);
    rail.takeOut();
    done();
    assertThat(rail.handles()).hasSize(3);
  }

  /** A side that is not typed keeps what the part, or the point, says. */
  @Test
  void aPointSaysHowFarTheBodyReaches() throws Exception {
    open();
    points.reach(Optional.of(20.0), true, true);
    assertThat(points.reaches()).as("no point is picked").isEmpty();
    points.pick(1);
    points.reach(Optional.of(70.0), true, false);
    done();
    String right =
        hands.session().layout().parts().get("plate").base().spread().orElseThrow().right().text();
    assertThat(reach()).isEqualTo("70 mm, " + right);
    points.reach(Optional.of(12.5), false, true);
    done();
    assertThat(reach()).isEqualTo("70 mm, 12.5 mm");
    assertThat(points.reaches()).isEqualTo("reaches 70.0 left, 12.5 mm right");
    points.reach(Optional.of(90.0), true, true);
    done();
    assertThat(reach()).isEqualTo("90 mm, 90 mm");
    points.reach(Optional.empty(), true, true);
    done();
    assertThat(points.reaches()).isEmpty();
    cornersAre(A, B, C, D);
  }

  private String reach() {
    Part.Outlined plate = (Part.Outlined) hands.session().layout().parts().get("plate");
    return plate.outline().vertices().get(1).reach().orElseThrow().leftOrRight().text()
        + ", "
        + plate.outline().vertices().get(1).reach().orElseThrow().rightOrLeft().text();
  }
}
