package org.longlow.constraints.check.person;

import java.util.ArrayList;
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
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.lock.HandsTurned;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** Whether whoever steers keeps both hands on the grips as far as the steering is to turn. */
public final class HandFindings {

  /** How far the bars turn with both hands on. */
  public static final FindingKind HANDS =
      new FindingKind("hands", FindingGroup.POSTURE, Rests.ON_DRAWING);

  /**
   * A shoulder comes so far forward for a grip, mm, where an arm is stretched and the trunk turns
   * with the bars at a walk; judgement.
   */
  static final double SHOULDER_MM = 100;

  private static final List<Basis> ARMS =
      List.of(
          Basis.model("grips turned in space; each arm from its shoulder, which stays where it is"),
          Basis.published(Known.CHECKED, "body links and breadth of shoulders of the survey"),
          Basis.judgement("a shoulder comes 100 mm forward for a moment"));

  private HandFindings() {}

  public static List<Finding> of(Wheels wheels, List<Sitting> sittings, List<Standing> standings) {
    Layout layout = wheels.layout();
    Places places = wheels.drawn();
    Optional<Steered> steered =
        wheels.fork() == null ? Optional.empty() : Steered.of(layout, wheels.fork(), places);
    List<Finding> findings = new ArrayList<>();
    if (steered.isEmpty()) {
      return findings; // that nothing steers is told where it is asked what that meets
    }
    double asked = places.value(layout.demands().limit(Demands.Key.LOCK));
    for (Sitting sitting : sittings) {
      if (sitting.occupant().rides()
          && sitting.posture().isPresent()
          && sitting.parts().hands().isPresent()) {
        RestPart grips = sitting.parts().hands().get();
        SteeringAxis axis = steered.get().axisOf().get(grips.name());
        Condition stance = Standing.under(sitting.occupant(), standings);
        findings.add(
            axis == null
                ? still(sitting, stance, grips)
                : turned(layout, sitting, stance, turned(sitting, axis, grips, places), asked));
      }
    }
    return findings;
  }

  private static HandsTurned turned(
      Sitting sitting, SteeringAxis axis, RestPart grips, Places places) {
    return new HandsTurned(
        sitting.body(),
        sitting.posture().orElseThrow(),
        axis,
        places.pin(grips.at()),
        places.value(grips.y()));
  }

  private static About about(Sitting sitting) {
    return About.person(sitting.occupant(), "hands at lock", "lock");
  }

  private static Finding still(Sitting sitting, Condition stance, RestPart grips) {
    return new Finding(
        HANDS,
        about(sitting),
        Optional.of(stance),
        Verdict.CAUTION,
        Figures.NONE,
        ARMS,
        Say.format(
            "Whether %s keeps both hands on %s at full lock is not known, since they are not said"
                + " to turn with the steering: set steered.",
            SeatFindings.who(sitting), grips.name()));
  }

  private static Finding turned(
      Layout layout, Sitting sitting, Condition stance, HandsTurned hands, double askedRad) {
    HandsTurned.Kept first = hands.first();
    double asked = Math.toDegrees(askedRad);
    double kept = Math.toDegrees(Math.min(first.rad(), askedRad));
    String who = SeatFindings.who(sitting);
    List<Basis> basis = new ArrayList<>(List.of(Sources.of(layout, Demands.Key.LOCK)));
    basis.addAll(ARMS);
    double far = hands.farMm(askedRad);
    Verdict verdict =
        first.rad() >= askedRad
            ? Verdict.PASS
            : hands.near(askedRad) || far > SHOULDER_MM ? Verdict.FAIL : Verdict.CAUTION;
    Words text =
        verdict == Verdict.PASS
            ? Say.format(
                "%s keeps both hands on the grips to the %s of lock asked on either side.",
                who, Say.deg(asked))
            : lost(who, hands, first, askedRad, verdict == Verdict.CAUTION ? far : Double.NaN);
    return new Finding(
            HANDS,
            about(sitting),
            Optional.of(stance),
            verdict,
            Figures.atLeast(kept, asked, FigureUnit.DEG),
            basis,
            text)
        .at(hands.grip())
        .pulling(
            verdict == Verdict.PASS
                ? Optional.empty()
                : Optional.of(
                    Tug.of(
                        Tug.Thing.GRIPS,
                        far == 0 ? Tug.Way.FARTHER : Tug.Way.NEARER,
                        far == 0
                            ? "ask for less lock"
                            : "bring the grips nearer to the axis they turn about, as far from the"
                                + " seat as now, or ask for less lock")));
  }

  /**
   * Says which grip is lost.
   *
   * @param forwardMm how far a shoulder must come forward to keep it; NaN where it cannot
   */
  private static Words lost(
      String who, HandsTurned hands, HandsTurned.Kept first, double askedRad, double forwardMm) {
    double far = hands.farMm(askedRad);
    boolean near = far == 0;
    Words asked = Say.deg(Math.toDegrees(askedRad));
    return Say.format(
        "Turned %s to the %s, the %s grip leaves the reach of %s; %s. Bring the grips %s, or ask"
            + " for less lock.",
        Say.deg(Math.toDegrees(first.rad())),
        first.turnLeft() ? "left" : "right",
        first.left() ? "left" : "right",
        who,
        Double.isNaN(forwardMm)
            ? Say.format(
                near
                    ? "on the way to the %s asked it is too near"
                    : "on the way to the %s asked it is %s too far away",
                asked,
                Words.atLeast(far))
            : Say.format(
                "for the %s asked the shoulder must come %s forward",
                asked, Words.atLeast(forwardMm)),
        near
            ? "farther from the seat"
            : "nearer to the axis they turn about, nearer to the seat or farther in");
  }
}
