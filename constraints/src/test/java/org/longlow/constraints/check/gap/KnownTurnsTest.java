package org.longlow.constraints.check.gap;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.lock.LockWay;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/** What came of a turn is known again while nothing that decides it has changed. */
class KnownTurnsTest {

  private static final PointMm PIN = new PointMm(10, 20);

  private final KnownTurns turns = new KnownTurns(0.6);
  private final SpaceBody bar = body(0);
  private final SpaceBody tank = body(300);
  private final SteeringAxis axis = axis(0);
  private int worked;

  private static SpaceBody body(double xMm) {
    Interval across = new Interval(-10, 10);
    return SpaceBody.of("b", List.of(new Prism(Curves.disc(new PointMm(xMm, 0), 50), across)));
  }

  private static SteeringAxis axis(double xMm) {
    return SteeringAxis.through(new PointMm(xMm, 0), new PointMm(xMm - 100, 200));
  }

  private Optional<LockWay.Met> work() {
    worked++;
    return Optional.of(new LockWay.Met(worked, 0, PIN, 0, 0, null, null));
  }

  private double whole(SpaceBody one, SteeringAxis a, SpaceBody other, SteeringAxis b, double mm) {
    return turns.of(one, a, other, b, mm, this::work).orElseThrow().gapMm();
  }

  private double beyond(SpaceBody one, SteeringAxis a, SpaceBody other, PointMm pin, double mm) {
    return turns.beyond(one, a, other, List.of(pin), mm, this::work).orElseThrow().gapMm();
  }

  @Test
  void theSameIsKnownOfBodiesMadeOfTheSameAndAxesInTheSamePlace() {
    double first = whole(bar, axis, tank, null, 5);
    SpaceBody again = SpaceBody.of("another name", bar.madeOf());
    assertThat(whole(again, axis(0), tank, null, 5)).isEqualTo(first);
    assertThat(worked).isEqualTo(1);
  }

  @Test
  void isWorkedOutAgainWhateverElseIsChanged() {
    whole(bar, axis, tank, null, 5);
    whole(tank, axis, bar, null, 5);
    whole(body(0), axis, tank, null, 5);
    whole(bar, axis, body(300), null, 5);
    whole(bar, axis(Math.ulp(1)), tank, null, 5);
    whole(bar, axis, tank, axis, 5);
    whole(bar, axis, tank, axis(9), 5);
    whole(bar, axis, tank, null, Math.nextUp(5.0));
    new KnownTurns(0.7).of(bar, axis, tank, null, 5, this::work);
    assertThat(worked).isEqualTo(9);
  }

  @Test
  void whatIsCutOffAboutPinsIsAnotherBody() {
    double whole = whole(bar, axis, tank, null, 0);
    double first = beyond(bar, axis, tank, PIN, 30);
    assertThat(first).isNotEqualTo(whole);
    assertThat(beyond(bar, axis, tank, new PointMm(10, 20), 30)).isEqualTo(first);
    assertThat(beyond(bar, axis, tank, new PointMm(10, 21), 30)).isNotEqualTo(first);
    assertThat(beyond(bar, axis, tank, PIN, 31)).isNotEqualTo(first);
    assertThat(beyond(bar, axis(1), tank, PIN, 30)).isNotEqualTo(first);
    assertThat(worked).isEqualTo(5);
  }
}
