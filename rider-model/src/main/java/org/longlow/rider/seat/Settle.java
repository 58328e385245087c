package org.longlow.rider.seat;

import java.util.Locale;
import java.util.function.Function;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.ComfortBands;

/**
 * Settles a person into a seat: posture, sink and loads are worked round until they agree.
 *
 * <p>One round: from the sinks, the hip is where the line 95 mm off the compressed pan meets the
 * line 137 (men) or 142 mm (women) off the compressed back; the trunk is parallel to the compressed
 * back; the head may lean on its rest. From the posture come the loads ({@link SeatLoad}), and from
 * the loads new sinks ({@link FoamContact}). Of the legs only what the feet carry enters the loads
 * (relaxed hinges). Rounds are sped up by {@link Agree}.
 *
 * <p>The head leans on the rest if that leaves the nose no more than 10° up, or if the free head
 * would be inside the rest anyway; else it is held free.
 *
 * <p>Sinks for the hip count foam beside the body ({@code edgeShare}); verdicts do not.
 */
public final class Settle {

  /** Least angle between pan and back, deg; below it the hip is nowhere in particular. */
  private static final double LEAST_CORNER_DEG = 30;

  private static final double MOST_CORNER_DEG = 175;

  /** A rest that bends the neck more than this is not leant on, rad; judgement. */
  private static final double MOST_FLEXION = Math.toRadians(60);

  private Settle() {}

  /** Settles a person at ease. */
  public static SeatOutcome settle(Body body, SeatGeometry seat) {
    return settle(body, seat, SettleOptions.DEFAULT);
  }

  /**
   * Settles a person. Never throws on odd geometry: what cannot be sat on comes back as {@link
   * SeatOutcome.Unseatable} with its reason.
   */
  public static SeatOutcome settle(Body body, SeatGeometry seat, SettleOptions options) {
    String fault = fault(seat);
    if (fault != null) {
      return new SeatOutcome.Unseatable(fault);
    }
    return SeatedReport.of(choose(leaning -> run(body, seat, options, leaning)));
  }

  /** Settles with the head on its rest or free; null if it is to lean and cannot. */
  static Settling run(Body body, SeatGeometry seat, SettleOptions options, boolean leaning) {
    Settling settling = new Settling(body, seat, options, leaning);
    return settling.run() ? settling : null;
  }

  /**
   * Returns how the head is held.
   *
   * @param run settles with the head leaning (true) or free; null where it cannot lean
   */
  static Settling choose(Function<Boolean, Settling> run) {
    Settling leaning = run.apply(true);
    if (leaning == null) {
      return run.apply(false);
    }
    double pitch = leaning.at().headPitch();
    boolean bends = leaning.at().recline() - pitch > MOST_FLEXION;
    if (pitch <= ComfortBands.HEAD_HIGH && !bends) {
      return leaning;
    }
    Settling free = run.apply(false);
    return free.at().headGapMm() < 0 && !bends ? leaning : free;
  }

  /** Returns what is wrong with a seat, or null. */
  static String fault(SeatGeometry seat) {
    if (seat.pan().lengthMm() < 50) {
      return "The pan board is shorter than 50 mm: move its ends apart.";
    }
    if (seat.back().lengthMm() < 50) {
      return "The back board is shorter than 50 mm: move its ends apart.";
    }
    PointMm pan = seat.pan().along();
    PointMm back = seat.back().along();
    double panDeg = Math.toDegrees(pan.angleRad());
    double backDeg = Math.toDegrees(Math.atan2(-back.x(), back.z()));
    if (!(panDeg >= -59 && panDeg <= 59)) {
      return String.format(
          Locale.ROOT,
          "The pan slopes %.1f deg; a person sits on -59 to 59 deg (front up positive). Check that"
              + " its first end is the rear one.",
          panDeg);
    }
    if (!(backDeg >= -45 && backDeg <= 85)) {
      return String.format(
          Locale.ROOT,
          "The back leans %.1f deg from the vertical; a person sits against -45 to 85 deg (rearward"
              + " positive). Check that its first end is the lower one.",
          backDeg);
    }
    double corner = Math.toDegrees(Math.atan2(pan.cross(back), pan.dot(back)));
    if (!(corner >= LEAST_CORNER_DEG && corner <= MOST_CORNER_DEG)) {
      return String.format(
          Locale.ROOT,
          "Pan and back meet at %.1f deg; the hip needs %.0f to %.0f deg between them.",
          corner,
          LEAST_CORNER_DEG,
          MOST_CORNER_DEG);
    }
    return null;
  }
}
