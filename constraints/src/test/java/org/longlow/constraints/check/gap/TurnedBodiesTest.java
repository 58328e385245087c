package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** What of a body is left about a joint is all of it that is farther off, and no more of it. */
class TurnedBodiesTest {

  private static final double RADIUS = 40;

  @Test
  void whatIsLeftBeyondAJointKeepsItsOwnBreadth() {
    Study study = TestMachine.asFiled("tourer");
    TurnedBodies bodies =
        new TurnedBodies(study.shapes(), study.placed().places(), study.standings());
    TurnedBodies.State state = bodies.states().get(0);
    SplittableRandom random = new SplittableRandom(3);
    int cut = 0;
    for (PartShape shape : state.shapes().values()) {
      List<Piece> pieces = shape.prisms().stream().flatMap(p -> p.pieces().stream()).toList();
      if (pieces.isEmpty()) {
        continue;
      }
      List<PointMm> joint = List.of(middle(pieces.get(random.nextInt(pieces.size()))));
      SpaceBody rest = bodies.beyond(state, shape.part().name(), joint, RADIUS);
      for (Prism prism : rest.madeOf()) {
        if (prism.isFull()
            && shape.prisms().stream().noneMatch(p -> p.outline() == prism.outline())) {
          cut++;
          // it is as broad as some piece was, and lies where that was
          assertThat(pieces)
              .as(shape.part().name())
              .anyMatch(
                  p ->
                      p.box().from()[1] == prism.across().from()
                          && p.box().to()[1] == prism.across().to());
          assertThat(prism.outline().distance(Curves.FACTORY.createPoint(at(joint.get(0)))))
              .isGreaterThan(RADIUS - 1);
        } else {
          assertThat(pieces).containsAll(prism.pieces());
        }
      }
      // nothing is lost
      for (Piece piece : pieces) {
        double[] at = new double[3];
        piece.farthest(new double[] {random.nextDouble(-1, 1), 0.1, random.nextDouble(-1, 1)}, at);
        PointMm point = new PointMm(at[0], at[2]);
        if (point.distance(joint.get(0)) > RADIUS + 0.1) {
          assertThat(rest.madeOf())
              .anyMatch(
                  p ->
                      p.pieces().contains(piece)
                          || p.isFull()
                              && p.across().from() <= at[1] + 1e-6
                              && p.across().to() >= at[1] - 1e-6
                              && p.outline().distance(Curves.FACTORY.createPoint(at(point)))
                                  < 1e-3);
        }
      }
    }
    assertThat(cut).isGreaterThan(5);
  }

  private static Coordinate at(PointMm p) {
    return new Coordinate(p.x(), p.z());
  }

  private static PointMm middle(Piece piece) {
    return new PointMm(piece.box().middle(0), piece.box().middle(2));
  }
}
