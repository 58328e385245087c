package org.longlow.constraints.check.road;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.ride.LeanClearance;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.space.Piece;
import org.longlow.constraints.space.Rod;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Turning;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.PointMm;

/** Whatever is told of heights over the road in turns, against every corner of every prism. */
class OverRoadTest {

  /** Least height of all corners that reach past the middle; infinite if none does. */
  private static double least(List<Prism> body, boolean left, Turning.State state) {
    double least = Double.POSITIVE_INFINITY;
    for (Prism prism : body) {
      double y = left ? prism.across().to() : -prism.across().from();
      for (Coordinate c : prism.outline().getCoordinates()) {
        least = y > 0 ? Math.min(least, state.heightMm(c.x, y, c.y)) : least;
      }
    }
    return least;
  }

  /** Least height of some points of round pieces. */
  private static double leastOfPoints(List<Prism> body, boolean left, Turning.State state) {
    double least = Double.POSITIVE_INFINITY;
    double[] at = new double[3];
    Random random = new Random(5);
    for (Prism prism : body) {
      for (Piece piece : prism.convex()) {
        for (int i = 0; i < 20; i++) {
          piece.farthest(
              new double[] {random.nextGaussian(), random.nextGaussian(), -random.nextDouble()},
              at);
          least = Math.min(least, state.heightMm(at[0], left ? at[1] : -at[1], at[2]));
        }
      }
    }
    return least;
  }

  /** A tube lying along the machine is as high as its middle less its radius. */
  @Test
  void whatIsRoundIsHigherThanItsBox() {
    Random random = new Random(8);
    for (int i = 0; i < 50; i++) {
      Turning.State state = state(random);
      double y = 100 + 200 * random.nextDouble();
      double radius = 5 + 30 * random.nextDouble();
      PointMm from = new PointMm(300, 200 + 100 * random.nextDouble());
      PointMm to = from.plus(new PointMm(500, 80 * random.nextGaussian()));
      Prism tube =
          new Prism(
              Curves.strip(List.of(from, to), 2 * radius),
              new Interval(-y - radius, -y + radius),
              List.of(new Rod(from, to, -y, radius, true, true)));
      LowSide low = LowSide.of(List.of(tube), false);
      // steepness of the road under it: height rises by one along its normal
      double middle = state.heightMm(from.x(), y, from.z());
      double byX = state.heightMm(from.x() + 1, y, from.z()) - middle;
      double byY = state.heightMm(from.x(), y + 1, from.z()) - middle;
      double byZ = state.heightMm(from.x(), y, from.z() + 1) - middle;
      double steep = Math.sqrt(byX * byX + byY * byY + byZ * byZ);
      double least = Math.min(middle, state.heightMm(to.x(), y, to.z())) - radius * steep;
      assertThat(low.lowest(state, PointMm.ORIGIN).heightMm()).isCloseTo(least, within(1e-6));
      assertThat(low.reachesRoad(state, PointMm.ORIGIN)).isEqualTo(least <= 0);
      // shifted, its lowest point is as high as is said, and on the tube where that is now
      PointMm shift = new PointMm(30 * random.nextGaussian(), 20 * random.nextGaussian());
      LowSide.Low at = low.lowest(state, shift);
      assertThat(state.heightMm(at.at().x(), at.yMm(), at.at().z()))
          .isCloseTo(at.heightMm(), within(1e-9));
      double a = at.at().distance(from.plus(shift));
      double b = at.at().distance(to.plus(shift));
      assertThat(Math.min(a, b)).isLessThan(radius + 1e-9);
      assertThat(Math.abs(at.yMm() - y)).isLessThan(radius + 1e-9);
    }
  }

  private static Turning.State state(Random random) {
    PointMm contact = new PointMm(20 * random.nextGaussian(), 20 * random.nextGaussian());
    PointMm along = PointMm.unit(0.1 * random.nextGaussian());
    Ground ground = new Ground(contact, contact.plus(along.times(1500)));
    LeanClearance.Wheel front = new LeanClearance.Wheel(300, 40 + 40 * random.nextDouble());
    LeanClearance.Wheel rear = new LeanClearance.Wheel(310, 70);
    double roll = Math.toRadians(60) * random.nextDouble();
    return new Turning.State(
        roll, roll, 0, 0, ground, along, LeanClearance.road(1500, front, rear, roll));
  }

  private static Prism prism(Random random) {
    PointMm middle = new PointMm(1500 * random.nextDouble(), 60 + 500 * random.nextDouble());
    List<PointMm> ring = new ArrayList<>();
    for (int i = 0; i < 5; i++) {
      ring.add(middle.plus(PointMm.unit(2 * Math.PI * i / 5).times(20 + 80 * random.nextDouble())));
    }
    double from = 300 * random.nextGaussian();
    return new Prism(Curves.polygon(ring), new Interval(from, from + 100));
  }

  /** Its pieces reach past the outline of what bends more sharply than it is thick. */
  @ParameterizedTest
  @ValueSource(doubles = {300, 600, 1000})
  void aTubeThickerThanItsBendsReachesTheRoadWhereItIsLowest(double diameter) {
    Study study =
        TestMachine.runabout().part("backRail", "diameter", "'" + diameter + " mm'").study();
    Standing laden =
        study.standings().stream()
            .filter(s -> s.kind() == Stance.Kind.LADEN)
            .findFirst()
            .orElseThrow();
    List<Prism> tube = laden.shapes().get("backRail").prisms();
    Random random = new Random(17);
    for (int n = 0; n < 300; n++) {
      Turning.State state = state(random);
      LowSide low = LowSide.of(tube, n % 2 == 0);
      assertThat(low.reachesRoad(state, PointMm.ORIGIN))
          .as(diameter + " " + n)
          .isEqualTo(low.lowest(state, PointMm.ORIGIN).heightMm() <= 0);
    }
    assertThat(study.findings()).isNotEmpty();
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4})
  void boxesNeverHideACornerThatIsInTheRoad(long seed) {
    Random random = new Random(seed);
    int reached = 0;
    for (int n = 0; n < 500; n++) {
      List<Prism> body = List.of(prism(random), prism(random), prism(random));
      boolean left = random.nextBoolean();
      PointMm shift = n % 3 == 0 ? PointMm.ORIGIN : new PointMm(random.nextInt(90), -40);
      List<Prism> moved =
          new PartShape(null, body.get(0).outline(), body, 0, PointMm.ORIGIN, 0)
              .moved(new RigidMotion(0, shift))
              .prisms();
      Turning.State state = state(random);
      double least = least(moved, left, state);
      LowSide underside = LowSide.of(body, left);
      assertThat(underside.reachesRoad(state, shift)).as(seed + " " + n).isEqualTo(least <= 0);
      reached += least <= 0 ? 1 : 0;
      LowSide.Low low = underside.lowest(state, shift);
      if (least < 1e3) {
        assertThat(low.heightMm()).isEqualTo(least);
        Envelope all = new Envelope();
        moved.forEach(p -> all.expandToInclude(p.outline().getEnvelopeInternal()));
        all.expandBy(1e-9);
        assertThat(all.contains(low.at().x(), low.at().z())).isTrue();
        if (least <= 0) {
          assertThat(underside.isClear(state, all)).isFalse();
        }
      }
    }
    assertThat(reached).isBetween(50, 450);
  }

  @Test
  void aBoxIsAsLowAsItsLowestCorner() {
    Random random = new Random(5);
    for (int n = 0; n < 500; n++) {
      Turning.State state = state(random);
      Envelope box = prism(random).outline().getEnvelopeInternal();
      double least = Double.POSITIVE_INFINITY;
      for (double x : new double[] {box.getMinX(), box.getMaxX()}) {
        for (double z : new double[] {box.getMinY(), box.getMaxY()}) {
          least = Math.min(least, state.heightMm(x, 200, z));
        }
      }
      assertThat(state.leastMm(box, 200)).isCloseTo(least, within(1e-9));
    }
  }

  /** Also what goes with a wheel, shifted or shaped anew, at every step on both sides. */
  @ParameterizedTest
  @ValueSource(strings = {"tourer", "runabout"})
  void everyPartIsWhereItsBodyIs(String machine) {
    Study study =
        (machine.equals("tourer") ? TestMachine.tourer() : TestMachine.runabout()).study();
    Wheels wheels = Wheels.of(study.layout(), study.placed().places());
    Standing laden =
        study.standings().stream().filter(s -> s.kind() == Stance.Kind.LADEN).findFirst().get();
    int withWheel = 0;
    int shaped = 0;
    for (boolean left : new boolean[] {true, false}) {
      Turning turning = new Turning(wheels, laden, left ? 1 : -1);
      Undersides undersides = Undersides.at(left);
      for (PartShape shape : laden.shapes().values()) {
        OverRoad over = OverRoad.of(shape, turning.goesWithWheel(shape), turning, undersides);
        withWheel += turning.goesWithWheel(shape) ? 1 : 0;
        boolean within = Shapes.beyondPinsMm(shape.part(), laden.places()).isPresent();
        shaped += within ? 1 : 0;
        for (int step = 0; step < turning.steps(); step += 2) {
          Turning.State state = turning.step(step);
          List<Prism> body = turning.body(shape, state);
          double least = least(body, left, state);
          double lowest = over.lowest(state).heightMm();
          boolean reaches = over.reachesRoad(state);
          if (body.stream().allMatch(Prism::isFull)) {
            assertThat(reaches).as(shape.part().name()).isEqualTo(least <= 0);
            if (least < 1e3) {
              assertThat(lowest).isCloseTo(least, within(1e-9));
            }
          } else if (lowest < 1e3) {
            // what is round is higher than its box, and no lower than points of it
            assertThat(reaches).as(shape.part().name()).isEqualTo(lowest <= 0);
            assertThat(lowest).isBetween(least - 0.1, leastOfPoints(body, left, state) + 1e-9);
          }
          if (within) {
            double beyond = Shapes.beyondPinsMm(shape.part(), laden.places()).getAsDouble();
            Envelope room = turning.pins(shape, state);
            room.expandBy(beyond + 1e-9);
            body.forEach(
                p -> assertThat(room.contains(p.outline().getEnvelopeInternal())).isTrue());
          }
        }
      }
    }
    assertThat(withWheel).isGreaterThan(8);
    assertThat(shaped).isEqualTo(4); // fork and swingarm, to each side
  }
}
