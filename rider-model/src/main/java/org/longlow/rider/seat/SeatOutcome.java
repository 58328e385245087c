package org.longlow.rider.seat;

import java.util.List;
import java.util.Optional;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.ComfortBands;
import org.longlow.rider.pose.PoseResult;

/** How seating a person came out. */
public sealed interface SeatOutcome {

  /**
   * The person sits.
   *
   * @param pose joints; also when a limb does not reach
   * @param hip hip joint (H-point), mm
   * @param reclineRad hip-shoulder line from the vertical, rearward positive, rad
   * @param pan pan
   * @param back back
   * @param headRest head rest, if the head leans on one
   * @param headOnRest whether it does
   * @param headGapMm gap from helmet to the free head rest, mm; 0 when on it; NaN without a rest
   * @param load shares of the weight
   * @param held whether design friction holds the rider both ways
   * @param iterations rounds until posture, sink and loads agreed
   * @param converged whether they agreed to 1e-10 mm
   * @param notes what to take care of, at most one of each kind
   */
  record Seated(
      PoseResult pose,
      PointMm hip,
      double reclineRad,
      CushionLoad pan,
      CushionLoad back,
      Optional<CushionLoad> headRest,
      boolean headOnRest,
      double headGapMm,
      SeatLoad.Shares load,
      boolean held,
      int iterations,
      boolean converged,
      List<SeatNote> notes)
      implements SeatOutcome {
    /** Leaning back more than this wants something to rest the head on, rad; judgement. */
    public static final double HEAD_REST_RECLINE_RAD = Math.toRadians(30);

    public Seated {
      notes = List.copyOf(notes);
    }

    /** Whether they lean back so far that the head wants a rest. */
    public boolean wantsHeadRest() {
      return reclineRad > HEAD_REST_RECLINE_RAD;
    }

    /** Whether the back bends the head far forward on the trunk with nothing behind it. */
    public boolean bendsHead() {
      double bent = pose.posture().angles().neckFlexion();
      return !headOnRest && wantsHeadRest() && bent > ComfortBands.NECK_HIGH + 1e-9;
    }
  }

  /**
   * Nobody can sit on this.
   *
   * @param reason what is wrong and what to change, in plain words
   */
  record Unseatable(String reason) implements SeatOutcome {}
}
