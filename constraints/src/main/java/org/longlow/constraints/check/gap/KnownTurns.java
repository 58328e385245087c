package org.longlow.constraints.check.gap;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Supplier;
import org.longlow.constraints.lock.LockWay;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;

/**
 * What came of bodies that turned past each other lately. From one edit to the next most parts, and
 * often the people, stay where they are.
 */
final class KnownTurns {

  private static final Memo<Turn, Optional<LockWay.Met>> KNOWN = new Memo<>(2048);

  /**
   * One body turned past another.
   *
   * @param body what it is made of, which object tells
   * @param past likewise of the other
   * @param axis that it turns about
   * @param otherAxis that the other turns about, or null where it stays
   * @param cutOff points about which both are cut off
   * @param reachMm how far about these
   */
  private record Turn(
      List<Prism> body,
      List<Prism> past,
      SteeringAxis axis,
      SteeringAxis otherAxis,
      double gapMm,
      double lockRad,
      List<PointMm> cutOff,
      double reachMm) {

    @Override
    public boolean equals(Object o) {
      return o instanceof Turn t
          && t.body == body
          && t.past == past
          && t.axis.equals(axis)
          && Objects.equals(t.otherAxis, otherAxis)
          && Double.compare(t.gapMm, gapMm) == 0
          && Double.compare(t.lockRad, lockRad) == 0
          && t.cutOff.equals(cutOff)
          && Double.compare(t.reachMm, reachMm) == 0;
    }

    @Override
    public int hashCode() {
      int pair = 31 * System.identityHashCode(body) + System.identityHashCode(past);
      return 31 * (31 * pair + axis.hashCode()) + Double.hashCode(gapMm);
    }
  }

  private final double lockRad;

  /**
   * @param lockRad how far the steering is turned to each side
   */
  KnownTurns(double lockRad) {
    this.lockRad = lockRad;
  }

  /**
   * Returns what is known of two whole bodies, or works it out.
   *
   * @param otherAxis that the other turns about, or null where it stays
   */
  Optional<LockWay.Met> of(
      SpaceBody body,
      SteeringAxis axis,
      SpaceBody past,
      SteeringAxis otherAxis,
      double gapMm,
      Supplier<Optional<LockWay.Met>> work) {
    List<Prism> one = body.madeOf();
    return KNOWN.of(
        new Turn(one, past.madeOf(), axis, otherAxis, gapMm, lockRad, List.of(), 0), work);
  }

  /** Returns the same of what lies beyond a reach about some points, the other staying. */
  Optional<LockWay.Met> beyond(
      SpaceBody body,
      SteeringAxis axis,
      SpaceBody past,
      List<PointMm> points,
      double reachMm,
      Supplier<Optional<LockWay.Met>> work) {
    List<Prism> one = body.madeOf();
    return KNOWN.of(
        new Turn(one, past.madeOf(), axis, null, 0, lockRad, List.copyOf(points), reachMm), work);
  }
}
