package org.longlow.constraints.check.person;

import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.Cushion;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.words.Words;

/** How a head rest that a free head does not lean on is moved to it. */
final class HeadRestShift {

  /** A head that leans on a rest does so at least this far from its ends, mm; judgement. */
  private static final double WELL_ON_MM = 30;

  /** What is less is no move, mm. */
  private static final double LEAST_MM = 1;

  private HeadRestShift() {}

  /** Returns the way to where the head just touches it; empty without a rest or where it does. */
  static Optional<PointMm> of(Sitting sitting, Places places) {
    if (sitting.seated().isEmpty() || sitting.seated().get().headOnRest()) {
      return Optional.empty();
    }
    return Seats.geometry(sitting.parts(), places)
        .map(SeatGeometry::headRest)
        .map(rest -> of(sitting, rest))
        .filter(shift -> shift.length() > LEAST_MM);
  }

  private static PointMm of(Sitting sitting, Cushion rest) {
    Posture posture = sitting.posture().orElseThrow();
    PointMm along = rest.to().minus(rest.from()).times(1 / rest.lengthMm());
    PointMm ahead = along.left().times(-1);
    PointMm head = posture.headCentre().minus(rest.from());
    double on = Math.min(WELL_ON_MM, 0.5 * rest.lengthMm());
    double station = head.dot(along);
    double past = station - Math.max(on, Math.min(rest.lengthMm() - on, station));
    double gap = head.dot(ahead) - rest.foam().thicknessMm() - sitting.body().head().radiusMm();
    return along.times(past).plus(ahead.times(gap));
  }

  /** Says how the rest comes to the head; empty where {@link #of} is. */
  static Optional<Words> words(Sitting sitting, Places places) {
    return of(sitting, places).map(shift -> Say.moved("the head rest", shift));
  }
}
