package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** Tubes, fork legs and stand legs reach each way as far as points of a round surface. */
class RoundPartsTest {

  private static final Study STUDY = TestMachine.tourer().study();
  private static final Places PLACES = STUDY.placed().places();

  private static final int WAYS = Boolean.getBoolean("longlow.long") ? 200 : 50;

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }

  private static void reaches(String name, List<double[]> cloud, double radius) {
    Random random = new Random(9);
    List<Prism> body = STUDY.shapes().get(name).prisms();
    assertThat(body).as(name).noneMatch(Prism::isFull);
    for (int k = 0; k < WAYS; k++) {
      double[] way = {random.nextGaussian(), random.nextGaussian(), random.nextGaussian()};
      double length = Math.sqrt(dot(way, way));
      double reach = Double.NEGATIVE_INFINITY;
      for (Prism prism : body) {
        for (Piece piece : prism.convex()) {
          double[] at = new double[3];
          piece.farthest(way, at);
          reach = Math.max(reach, dot(way, at) / length);
        }
      }
      double most = Double.NEGATIVE_INFINITY;
      for (double[] p : cloud) {
        most = Math.max(most, dot(way, p) / length);
      }
      // of a step of 4 degrees a point misses no more than this, and chords of bends a hair
      double missed = radius * (1 - Math.cos(Math.toRadians(3))) + 0.02;
      assertThat(reach).as(name + " " + k).isBetween(most - 1e-6, most + missed);
    }
  }

  @Test
  void standLegsAreRound() {
    StandPart stand = STUDY.layout().parts(StandPart.class).findFirst().orElseThrow();
    double r = PLACES.value(stand.diameter()) / 2;
    List<PointMm> leg = List.of(PLACES.pin(stand.pivot()), PLACES.pin(stand.stowed()));
    reaches(stand.name(), BarCloud.of(leg, true, PLACES.value(stand.y()), r, 4), r);
  }

  @Test
  void tubesAreRound() {
    List<TubePart> tubes = STUDY.layout().parts(TubePart.class).toList();
    assertThat(tubes).isNotEmpty();
    for (TubePart tube : tubes) {
      double r = PLACES.value(tube.diameter()) / 2;
      double y = PLACES.value(tube.y());
      List<PointMm> line = Shapes.centreLine(tube, PLACES);
      List<double[]> cloud = new ArrayList<>(BarCloud.of(line, false, y, r, 4));
      if (tube.both()) {
        cloud.addAll(BarCloud.of(line, false, -y, r, 4));
      }
      reaches(tube.name(), cloud, r);
    }
  }

  @Test
  void forkLegsAreRound() {
    FrontPart front = STUDY.layout().parts(FrontPart.class).findFirst().orElseThrow();
    double r = PLACES.value(front.tube()) / 2;
    double y = PLACES.value(front.y());
    List<PointMm> stem = List.of(PLACES.pin(front.top()), PLACES.pin(front.bottom()));
    List<double[]> cloud = new ArrayList<>(BarCloud.of(stem, true, 0, r, 4));
    for (List<String> line : front.lines()) {
      List<PointMm> legs = line.stream().map(PLACES::pin).toList();
      cloud.addAll(BarCloud.of(legs, true, y, r, 4));
      cloud.addAll(BarCloud.of(legs, true, -y, r, 4));
    }
    reaches(front.name(), cloud, r);
  }
}
