package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Comfort;
import org.longlow.rider.pose.ComfortBands;
import org.longlow.rider.pose.JointReading;
import org.longlow.rider.pose.PoseResult;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.words.Words;

/** Reach and joint angles of each crew member. */
public final class PoseFindings {

  /** Whether hands and feet reach. */
  public static final FindingKind REACH =
      new FindingKind("reach", FindingGroup.POSTURE, Rests.ON_DRAWING);

  /** A joint's angle. */
  public static final FindingKind POSTURE =
      new FindingKind("posture", FindingGroup.POSTURE, Rests.ON_DRAWING);

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

  private static final List<Basis> LINKS =
      List.of(
          Basis.published(Known.CHECKED, "body links of the survey"),
          Basis.judgement("hip joints 170 mm apart"));

  private PoseFindings() {}

  public static List<Finding> of(Sitting sitting, Condition stance) {
    if (sitting.outcome() instanceof SeatOutcome.Unseatable none) {
      return notJudged(sitting, stance, none);
    }
    List<Finding> findings = new ArrayList<>();
    PoseResult pose = sitting.seated().orElseThrow().pose();
    reach(findings, sitting, stance, pose);
    for (JointReading reading : Comfort.read(pose.posture().angles(), sitting.body().sex())) {
      findings.add(angle(sitting, stance, reading, pose.posture()));
    }
    return findings;
  }

  /** Who cannot be seated reaches nothing that anybody knows of: what lacks is said. */
  private static List<Finding> notJudged(
      Sitting sitting, Condition stance, SeatOutcome.Unseatable none) {
    String who = SeatFindings.who(sitting);
    String why = ": " + none.reason();
    return List.of(
        sitting.parts().feet().isEmpty()
            ? unknown(
                sitting,
                stance,
                REACH,
                "feet",
                Verdict.FAIL,
                who + " has no foot rests; add a peg or a footboard.")
            : unknown(
                sitting,
                stance,
                REACH,
                "feet",
                Verdict.CAUTION,
                "Whether " + who + " reaches the foot rests is not known" + why),
        sitting.parts().hands().isEmpty()
            ? noGrips(sitting, stance)
            : unknown(
                sitting,
                stance,
                REACH,
                "hands",
                Verdict.CAUTION,
                "Whether " + who + " reaches the grips is not known" + why),
        unknown(
            sitting,
            stance,
            POSTURE,
            "posture",
            Verdict.CAUTION,
            "How the joints of " + who + " are bent is not known" + why));
  }

  private static Finding unknown(
      Sitting sitting,
      Condition stance,
      FindingKind kind,
      String what,
      Verdict verdict,
      String text) {
    return new Finding(
        kind,
        About.person(sitting.occupant(), what, what),
        Optional.of(stance),
        verdict,
        Figures.NONE,
        List.of(Basis.model("this layout")),
        Words.of(text));
  }

  /** Whoever steers needs grips; a passenger may do without. */
  private static Finding noGrips(Sitting sitting, Condition stance) {
    boolean steers = sitting.occupant().rides();
    return new Finding(
        REACH,
        About.person(sitting.occupant(), "hands", "hands"),
        Optional.of(stance),
        steers ? Verdict.FAIL : Verdict.CAUTION,
        Figures.only(Double.NaN, FigureUnit.MM),
        List.of(Basis.model("this layout")),
        Words.of(
            SeatFindings.who(sitting)
                + (steers
                    ? " has no grips to steer by; add a grip."
                    : " has no grips to hold on to; add a grip, or see what else there is to"
                        + " hold.")));
  }

  private static void reach(
      List<Finding> findings, Sitting sitting, Condition stance, PoseResult pose) {
    for (PoseResult.Limb limb : PoseResult.Limb.values()) {
      boolean arm = limb == PoseResult.Limb.ARM;
      if (arm && sitting.parts().hands().isEmpty()) {
        findings.add(noGrips(sitting, stance));
        continue;
      }
      String limbs = arm ? "hands" : "feet";
      About about = About.person(sitting.occupant(), limbs, limbs);
      PointMm at = arm ? pose.posture().grip() : pose.posture().ball();
      Optional<PoseResult.Shortfall> shortfall =
          pose.shortfalls().stream().filter(s -> s.limb() == limb).findFirst();
      String what = arm ? "the grips" : "the foot rests";
      if (shortfall.isEmpty()) {
        findings.add(
            new Finding(
                    REACH,
                    about,
                    Optional.of(stance),
                    Verdict.PASS,
                    Figures.only(0, FigureUnit.MM),
                    LINKS,
                    Words.of(SeatFindings.who(sitting) + " reaches " + what + "."))
                .at(at));
        continue;
      }
      double mm = shortfall.get().mm();
      boolean far = shortfall.get().side() == PoseResult.Side.TOO_FAR;
      findings.add(
          new Finding(
                  REACH,
                  about,
                  Optional.of(stance),
                  Verdict.FAIL,
                  Figures.atMost(mm, 0, FigureUnit.MM),
                  LINKS,
                  Words.of(
                      SeatFindings.who(sitting) + " cannot reach " + what + ": they are ",
                      Say.mm(mm),
                      (far ? " too far away; bring " : " too near; move ")
                          + what
                          + (far
                              ? " nearer to the seat or farther in."
                              : " farther from the seat.")))
              .at(at)
              .pulling(
                  Optional.of(
                      Tug.of(
                          arm ? Tug.Thing.GRIPS : Tug.Thing.FOOT_RESTS,
                          far ? Tug.Way.NEARER : Tug.Way.FARTHER,
                          ""))));
    }
  }

  private static Finding angle(
      Sitting sitting, Condition stance, JointReading reading, Posture posture) {
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
            POSTURE,
            About.person(sitting.occupant(), word, reading.name()),
            Optional.of(stance),
            verdict,
            new Figures(value, limit, Math.toDegrees(reading.marginRad()), FigureUnit.DEG),
            basis(reading),
            Say.format(
                "%s: %s %s, %s (%s to %s)%s.",
                SeatFindings.who(sitting),
                word,
                Say.deg(value),
                how,
                Say.deg(low),
                Say.deg(high),
                verdict == Verdict.PASS ? "" : remedy(reading.name(), value < low)))
        .at(place(reading.name(), posture))
        .pulling(verdict == Verdict.PASS ? Optional.empty() : pull(reading.name(), value < low));
  }

  /** Which way {@link #remedy} would have something moved. */
  private static Optional<Tug> pull(String name, boolean closed) {
    return Optional.ofNullable(
        switch (name) {
          case "recline" -> Tug.of(Tug.Thing.BACK, closed ? Tug.Way.FLATTER : Tug.Way.STEEPER, "");
          case "knee" ->
              Tug.of(Tug.Thing.FOOT_RESTS, closed ? Tug.Way.FARTHER : Tug.Way.NEARER, "");
          case "trunkThigh", "hamstring" ->
              Tug.of(
                  Tug.Thing.FOOT_RESTS,
                  closed ? Tug.Way.DOWN : Tug.Way.UP,
                  closed ? "lean the back rest farther back" : "set the back rest steeper");
          case "arm" ->
              closed
                  // to lean the back is the same to arm and shoulder as to move the grips
                  ? Tug.of(Tug.Thing.GRIPS, Tug.Way.FARTHER, Tug.Way.UP, "")
                  : Tug.of(Tug.Thing.GRIPS, Tug.Way.NEARER, Tug.Way.DOWN, "");
          case "elbow" -> Tug.of(Tug.Thing.GRIPS, closed ? Tug.Way.FARTHER : Tug.Way.NEARER, "");
          default -> null;
        });
  }

  /** Joint limits can fail an angle, our own bands alone let it pass. */
  private static List<Basis> basis(JointReading reading) {
    Basis decides = Basis.judgement(reading.source());
    return reading.source().equals(ComfortBands.SOURCE)
        ? List.of(decides, Basis.judgement(ComfortBands.BUILT_ON).fromMemory().aside())
        : List.of(decides);
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
              : "; bring the foot rests nearer to the seat or farther in";
      case "shankSole" ->
          closed
              ? "; tilt the foot boards away from the rider, or move the foot rests"
              : "; tilt the foot boards towards the rider, or move the foot rests";
      case "arm" -> closed ? "; move the grips forward or up" : "; bring the grips back or down";
      case "elbow" ->
          closed
              ? "; move the grips away from the seat"
              : "; bring the grips nearer to the seat or farther in";
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
