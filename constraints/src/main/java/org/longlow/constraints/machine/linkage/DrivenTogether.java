package org.longlow.constraints.machine.linkage;

import org.longlow.rider.geom.PointMm;

/**
 * How one section moves as seen from another that the same drive moves: both are open by the same
 * share at every instant. What it says of places is in the axes of the other, shut.
 *
 * @param mover the one that is looked at
 * @param seat the one it is looked at from
 */
public record DrivenTogether(SectionMotion mover, SectionMotion seat) implements Moving {

  @Override
  public RigidMotion at(double opening) {
    RigidMotion to = mover.at(opening);
    RigidMotion back = seat.at(opening).inverse();
    return new RigidMotion(back.turnRad() + to.turnRad(), back.apply(to.shift()));
  }

  /**
   * A point of the mover moves by what the mover does, and back by what the seat does where that
   * point is: no farther from the seat's pole than the mover's pole and the point's distance from
   * it.
   */
  @Override
  public Swing swing(double from, double to) {
    Swing own = mover.swing(from, to);
    Swing other = seat.swing(from, to);
    double apart =
        mover.at(from).apply(own.pole()).distance(seat.at(from).apply(other.pole()))
            + own.shiftMm()
            + other.shiftMm();
    return new Swing(
        own.pole(),
        own.shiftMm() + other.shiftMm() + apart * other.turnRad(),
        own.turnRad() + other.turnRad());
  }

  @Override
  public DrivenTogether seenFrom(PointMm origin, double gridMm) {
    return new DrivenTogether(mover.seenFrom(origin, gridMm), seat.seenFrom(origin, gridMm));
  }
}
