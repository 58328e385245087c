package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Comfort;
import org.longlow.rider.pose.JointReading;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.SeatOutcome;

/** Reach and joint angles of each crew member. */
final class PoseFindings {

  private static final Map<String, String> WORDS =
      Map.of(
          "recline", "torso angle",
          "trunkThigh", "angle between trunk and thigh",
          "knee", "knee angle",
          "shankSole", "ankle angle",
          "arm", "angle of the upper arm",
          "elbow", "elbow angle",
          "neckFlexion", "neck flexion",
          "headPitch", "head pitch",
          "hamstring", "angle between trunk and thigh against the hamstrings");

  private PoseFindings() {}

  static List<Finding> of(Sitting sitting) {
    List<Finding> findings = new ArrayList<>();
    Optional<SeatOutcome.Seated> seated = sitting.seated();
    if (seated.isEmpty()) {
      return findings;
    }
    String stance = "laden, " + sitting.person();
    PoseResult pose = seated.get().pose();
    reach(findings, sitting, stance, pose);
    for (JointReading reading : Comfort.read(pose.posture().angles(), sitting.body().sex())) {
      findings.add(angle(sitting, stance, reading, pose.posture()));
    }
    return findings;
  }

  /** Whoever steers needs grips; a passenger may do without. */
  private static Finding noGrips(Sitting sitting, String stance) {
    boolean steers = sitting.seat().equals(SeatParts.RIDER);
    return Finding.note(
        "reach." + SeatFindings.name(sitting) + ".hands",
        SeatFindings.who(sitting) + ", hands",
        stance,
        steers ? Verdict.FAIL : Verdict.CAUTION,
        Double.NaN,
        "mm",
        "this layout",
        SeatFindings.who(sitting)
            + (steers
                ? " has no grips to steer by; add a grip."
                : " has no grips to hold on to; add a grip, or see what else there is to hold."));
  }

  private static void reach(
      List<Finding> findings, Sitting sitting, String stance, PoseResult pose) {
    for (PoseResult.Limb limb : PoseResult.Limb.values()) {
      boolean arm = limb == PoseResult.Limb.ARM;
      if (arm && sitting.parts().hands().isEmpty()) {
        findings.add(noGrips(sitting, stance));
        continue;
      }
      String id = "reach." + SeatFindings.name(sitting) + (arm ? ".hands" : ".feet");
      PointMm at = arm ? pose.posture().grip() : pose.posture().ball();
      Optional<PoseResult.Shortfall> shortfall =
          pose.shortfalls().stream().filter(s -> s.limb() == limb).findFirst();
      String subject = SeatFindings.who(sitting) + (arm ? ", hands" : ", feet");
      String what = arm ? "the grips" : "the foot rests";
      if (shortfall.isEmpty()) {
        findings.add(
            Finding.note(
                    id,
                    subject,
                    stance,
                    Verdict.PASS,
                    0,
                    "mm",
                    "body links of the survey",
                    SeatFindings.who(sitting) + " reaches " + what + ".")
                .at(at));
        continue;
      }
      double mm = shortfall.get().mm();
      boolean far = shortfall.get().side() == PoseResult.Side.TOO_FAR;
      findings.add(
          new Finding(
                  id,
                  subject,
                  stance,
                  Verdict.FAIL,
                  mm,
                  0,
                  -mm,
                  "mm",
                  "body links of the survey",
                  SeatFindings.who(sitting)
                      + " cannot reach "
                      + what
                      + ": they are "
                      + Say.mm(mm)
                      + (far ? " too far away; bring " : " too near; move ")
                      + what
                      + (far ? " nearer to the seat." : " farther from the seat."),
                  Optional.empty())
              .at(at));
    }
  }

  private static Finding angle(
      Sitting sitting, String stance, JointReading reading, Posture posture) {
    double value = Math.toDegrees(reading.valueRad());
    double low = Math.toDegrees(reading.softBand().lowRad());
    double high = Math.toDegrees(reading.softBand().highRad());
    double limit = value - low < high - value ? low : high;
    Verdict verdict =
        switch (reading.verdict()) {
          case COMFORTABLE -> Verdict.PASS;
          case OUTSIDE_COMFORT -> Verdict.CAUTION;
          case BEYOND_LIMIT -> Verdict.FAIL;
        };
    String word = WORDS.getOrDefault(reading.name(), reading.name());
    String how =
        switch (reading.verdict()) {
          case COMFORTABLE -> "comfortable";
          case OUTSIDE_COMFORT -> "outside the comfortable band";
          case BEYOND_LIMIT -> "beyond what the joint can do";
        };
    return new Finding(
            "posture." + SeatFindings.name(sitting) + "." + reading.name(),
            SeatFindings.who(sitting) + ", " + word,
            stance,
            verdict,
            value,
            limit,
            Math.toDegrees(reading.marginRad()),
            "deg",
            reading.source(),
            Say.format(
                "%s: %s %s, %s (%s to %s)%s.",
                SeatFindings.who(sitting),
                word,
                Say.deg(value),
                how,
                Say.deg(low),
                Say.deg(high),
                verdict == Verdict.PASS ? "" : remedy(reading.name(), value < low)),
            Optional.empty())
        .at(place(reading.name(), posture));
  }

  /** Says which thing to move which way; {@code closed} where the angle is too small. */
  private static String remedy(String name, boolean closed) {
    return switch (name) {
      case "recline" ->
          closed ? "; lean the back rest farther back" : "; set the back rest steeper";
      case "trunkThigh", "hamstring" ->
          closed
              ? "; move the foot rests lower or lean the back rest farther back"
              : "; raise the foot rests or set the back rest steeper";
      case "knee" ->
          closed
              ? "; move the foot rests farther from the seat"
              : "; bring the foot rests nearer to the seat";
      case "shankSole" ->
          closed
              ? "; tilt the foot boards away from the rider, or move the foot rests"
              : "; tilt the foot boards towards the rider, or move the foot rests";
      case "arm" -> closed ? "; move the grips forward or up" : "; bring the grips back or down";
      case "elbow" ->
          closed ? "; move the grips away from the seat" : "; bring the grips nearer to the seat";
      case "neckFlexion", "headPitch" -> "; change the recline or the head rest";
      default -> "";
    };
  }

  private static PointMm place(String name, Posture p) {
    return switch (name) {
      case "knee" -> p.knee();
      case "shankSole" -> p.ankle();
      case "arm" -> p.shoulder();
      case "elbow" -> p.elbow();
      case "neckFlexion", "headPitch" -> p.neckBase();
      default -> p.hip();
    };
  }
}
