package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.ComfortBands;
import org.longlow.rider.pose.JointLimits;
import org.longlow.rider.pose.Neck;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.RoadSight;
import org.longlow.rider.words.Words;

/** What seeing asks of a reclined head: the road, and a light that hangs over a stop line. */
final class HeadUpFindings {

  /** How far the neck must bend for the eyes to rest on the road. */
  static final FindingKind NECK =
      new FindingKind("seeing-neck", FindingGroup.SIGHT_AND_FOOT, Rests.ON_DRAWING);

  /** How far up one sees. */
  static final FindingKind LIGHT =
      new FindingKind("traffic-light", FindingGroup.SIGHT_AND_FOOT, Rests.ON_DRAWING);

  /** How far eyes turn down with ease, rad (MIL-STD-1472, from memory). */
  static final double EYES_EASY_RAD = Math.toRadians(15);

  /** How far they turn down at all, rad (LaValle, Virtual Reality, ch. 5). */
  static final double EYES_DOWN_RAD = Math.toRadians(25);

  /** How far they turn up, rad (likewise). */
  static final double EYES_UP_RAD = Math.toRadians(20);

  /** Up to here a helmet leaves the view free, rad: UN R22, from memory. */
  static final double HELMET_UP_RAD = Math.toRadians(7);

  /** A head presses so much of its rest together to look up, of its thickness; judgement. */
  static final double PRESSED_SHARE = 0.5;

  /** Farther before a light nobody stops to see it, mm; judgement. */
  static final double STOP_OFF_MM = 50_000;

  private static final Basis EASE =
      Basis.published(Known.FROM_MEMORY, "15 with ease (MIL-STD-1472, from memory)");

  private static List<Basis> neckBasis(boolean ease) {
    return List.of(
        Basis.model("angles of trunk, head and eyes in the elevation"),
        Basis.published(
            Known.CHECKED, "eyes turn down 25 degrees (LaValle, Virtual Reality, ch. 5)"),
        ease ? EASE : EASE.aside(),
        Basis.judgement("bands of the neck are judgement"));
  }

  private static final List<Basis> LIGHT_BASIS =
      List.of(
          Basis.model("heights and distances of the MUTCD give 22 degrees"),
          Basis.published(
              Known.FROM_MEMORY,
              "a helmet leaves 7 degrees up free (UN R22, from memory); heights and distances by"
                  + " summaries"));

  private HeadUpFindings() {}

  static List<Finding> of(
      Layout layout,
      Sitting sitting,
      Posture posture,
      Standing standing,
      List<LookingAhead> ahead) {
    List<Finding> findings = new ArrayList<>();
    double eye = standing.ground().heightMm(posture.eye());
    if (!(eye > 0)) {
      return findings;
    }
    // how far the drawn frame is nose up on the road
    double tilt = -standing.ground().along().angleRad();
    double limit = standing.places().value(layout.demands().limit(Demands.Key.SIGHT));
    double down = Math.atan2(eye, limit) + tilt;
    findings.add(neck(sitting, posture, standing, down));
    findings.add(light(sitting, posture, standing, tilt, ahead));
    return findings;
  }

  private static Finding neck(Sitting sitting, Posture posture, Standing standing, double down) {
    double recline = posture.angles().recline();
    double easy = Math.max(0, recline - EYES_EASY_RAD + down);
    double least = Math.max(0, recline - EYES_DOWN_RAD + down);
    double eyes = posture.angles().headPitch() + down;
    boolean onRest = sitting.seated().orElseThrow().headOnRest();
    boolean lifts = eyes > EYES_DOWN_RAD + 1e-9;
    double cost = onRest && !lifts ? recline - posture.angles().headPitch() : easy;
    Verdict verdict =
        least > JointLimits.NECK
            ? Verdict.FAIL
            : lifts || Math.max(cost, easy) > ComfortBands.NECK_HIGH
                ? Verdict.CAUTION
                : Verdict.PASS;
    return new Finding(
            NECK,
            About.person(sitting.occupant(), "neck while seeing", "neck"),
            Optional.of(standing.condition()),
            verdict,
            Figures.atMost(
                Math.toDegrees(easy), Math.toDegrees(ComfortBands.NECK_HIGH), FigureUnit.DEG),
            neckBasis(recline + down > ComfortBands.NECK_HIGH),
            Words.of(
                Say.format(
                    "Leaning back %s, %s bends the neck by %s to rest the eyes on the nearest road"
                        + " asked for, or by %s with the eyes turned down as far as they go",
                    Say.deg(Math.toDegrees(recline)),
                    sitting.occupant().words(),
                    Say.deg(Math.toDegrees(easy)),
                    Say.deg(Math.toDegrees(least))),
                lifts && onRest
                    ? Words.of(
                        "; on its rest the head lies too far back for that and must be lifted")
                    : Words.NONE,
                verdict == Verdict.PASS
                    ? Words.of(".")
                    : Words.of(": set the back steeper, or bring the head rest forward.")))
        .at(posture.neckBase())
        .pulling(
            verdict == Verdict.PASS
                ? Optional.empty()
                : Optional.of(
                    Tug.of(Tug.Thing.BACK, Tug.Way.STEEPER, "bring the head rest forward")));
  }

  private static Finding light(
      Sitting sitting, Posture posture, Standing standing, double tilt, List<LookingAhead> ahead) {
    PointMm eye = standing.ground().toRoad(posture.eye());
    double recline = posture.angles().recline();
    double most = recline + JointLimits.NECK;
    double rest =
        sitting.parts().head().isEmpty()
            ? most
            : restPitch(sitting, posture, standing.places(), most);
    double head = Math.min(most, rest);
    double view =
        sitting.body().gear().helmetMm() > 0 ? Math.min(HELMET_UP_RAD, EYES_UP_RAD) : EYES_UP_RAD;
    double turns = head + view - tilt;
    Optional<LookingAhead> roof =
        ahead.stream()
            .filter(a -> a.overhead() && !a.clear())
            .min(Comparator.comparingDouble(a -> a.under().minus(eye).angleRad()))
            .filter(a -> a.under().minus(eye).angleRad() < turns);
    Optional<LookingAhead> wall =
        ahead.stream()
            .filter(a -> !a.overhead() && !a.clear())
            .filter(a -> a.corner().minus(eye).angleRad() >= RoadSight.LIGHT_RAD)
            .findFirst();
    double up =
        wall.isPresent()
            ? 0
            : Math.toDegrees(roof.map(a -> a.under().minus(eye).angleRad()).orElse(turns));
    double asked = Math.toDegrees(RoadSight.LIGHT_RAD);
    Figures figures = Figures.atLeast(up, asked, FigureUnit.DEG);
    boolean sees = figures.verdict() == Verdict.PASS;
    return new Finding(
            LIGHT,
            About.person(sitting.occupant(), "traffic light at a stop line", "light"),
            Optional.of(standing.condition()),
            sees ? Verdict.PASS : Verdict.CAUTION,
            figures,
            LIGHT_BASIS,
            Words.of(
                Say.format(
                    "With the head tipped back as far as %s, %s sees up to %s %s the level",
                    rest < most ? "its rest gives way" : "the neck goes",
                    sitting.occupant().words(),
                    Say.deg(Math.abs(up)),
                    up < 0 ? "below" : "above"),
                wall.map(a -> Words.of(", for " + a.part() + " stands before what is higher"))
                    .or(() -> roof.map(a -> Words.of(", for " + a.part() + " is over that")))
                    .orElse(Words.NONE),
                Say.format("; a light over a stop line may hang %s up", Say.deg(asked)),
                sees
                    ? Words.of(".")
                    : todo(
                        wall.or(() -> roof).isPresent()
                            ? "cut that back"
                            : rest < most ? "move the head rest back" : "",
                        RoadSight.lightMm(eye.z(), Math.toRadians(up)))))
        .at(posture.eye());
  }

  /** What to change, or how far off to stop, where that is no farther than one would. */
  private static Words todo(String change, double offMm) {
    if (offMm > STOP_OFF_MM) {
      return Words.of(change.isEmpty() ? "." : ": " + change + ".");
    }
    return Words.of(
        ": ",
        change.isEmpty() ? "" : change + ", or ",
        "stop ",
        LookingAhead.metres(offMm),
        " or more before the light.");
  }

  /** How far the head tips back before its rest is pressed as far as it may be; rad. */
  private static double restPitch(Sitting sitting, Posture posture, Places places, double most) {
    CushionPart rest = sitting.parts().head().orElseThrow();
    PointMm from = places.pin(rest.from());
    PointMm up = places.pin(rest.to()).minus(from);
    if (!(up.length() > 0)) {
      return most;
    }
    PointMm ahead = up.left().times(-1 / up.length());
    double foam = rest.layers().stream().mapToDouble(l -> places.value(l.thickness())).sum();
    PointMm surface = from.plus(ahead.times((1 - PRESSED_SHARE) * foam));
    Neck neck = Neck.of(sitting.body(), posture.hip(), posture.angles().recline());
    double pitch = neck.pitchTouching(surface, ahead);
    // a rest that the head misses does not hold it
    return Double.isNaN(pitch) ? most : Math.max(pitch, posture.angles().headPitch());
  }
}
