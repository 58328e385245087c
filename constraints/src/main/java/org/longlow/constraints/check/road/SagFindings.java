package org.longlow.constraints.check.road;

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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.stand.Springs;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** Whether the wheels hang between their stops at rest, with nobody and with each crew. */
public final class SagFindings {

  /** How far the springs are pressed at rest. */
  public static final FindingKind SAG =
      new FindingKind("sag", FindingGroup.SAG, Rests.ON_EACH_LOAD);

  private static final List<Basis> SOURCE =
      List.of(
          Basis.model("linear springs in balance with the masses"),
          Basis.practice(
              "that a wheel at rest is off both stops and uses about a third of its travel laden is"
                  + " common practice"));

  /** Of its travel a laden wheel uses about a third at rest; outside these care is wanted. */
  private static final double LEAST_LADEN = 0.1;

  private static final double MOST_LADEN = 0.6;

  private SagFindings() {}

  public static List<Finding> of(Wheels wheels, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    for (Standing s : standings) {
      boolean asked = s.kind() == Stance.Kind.LADEN || s.kind() == Stance.Kind.UNLADEN;
      Optional<Springs> springs = asked ? s.springs() : Optional.empty();
      if (springs.isPresent()) {
        StaticSag sag = springs.get().rest(wheels, 1);
        Optional<StaticSag> light =
            s.emptied().flatMap(Standing::springs).map(e -> e.rest(wheels, 1));
        end(
            findings,
            s,
            "front",
            wheels.frontSuspension(),
            sag.front(),
            light.map(StaticSag::front));
        end(findings, s, "rear", wheels.rearSuspension(), sag.rear(), light.map(StaticSag::rear));
      }
    }
    return findings;
  }

  private static void end(
      List<Finding> findings,
      Standing s,
      String end,
      Suspension has,
      Suspension.Rest full,
      Optional<Suspension.Rest> light) {
    if (full.state() == Suspension.State.RIGID || full.state() == Suspension.State.UNKNOWN) {
      return;
    }
    boolean laden = s.kind() == Stance.Kind.LADEN;
    String who = laden ? "With " + s.condition().people() : "With nobody on it";
    Sunk asFull = Sunk.of(has, full, laden);
    Optional<Sunk> asLight = light.map(rest -> Sunk.of(has, rest, laden));
    boolean lightIsWorse =
        asLight.filter(e -> e.verdict().compareTo(asFull.verdict()) < 0).isPresent();
    Sunk worst = lightIsWorse ? asLight.orElseThrow() : asFull;
    double used = worst.usedMm();
    double travel = worst.travelMm();
    Verdict verdict = worst.verdict();
    Words text =
        lightIsWorse
            ? Words.of(
                asFull.says(who, end, ""),
                " ",
                worst.says(who + " and tanks and boxes empty", end, worst.cure()))
            : Words.of(
                asFull.says(who, end, asFull.cure()),
                asLight
                    .map(
                        e ->
                            Say.format(
                                " Tanks and boxes empty it uses %s, %s.",
                                Say.mm(e.usedMm()), Say.percent(e.usedMm() / e.travelMm())))
                    .orElse(Words.NONE));
    findings.add(
        new Finding(
            SAG,
            About.thing(end + " suspension", end, laden ? s.condition().people() : "unladen"),
            Optional.of(s.condition()),
            verdict,
            Figures.atMost(used, travel, FigureUnit.MM),
            SOURCE,
            text));
  }

  /**
   * How far a wheel is up at rest.
   *
   * @param usedMm of its travel
   * @param travelMm all of it
   */
  private record Sunk(Suspension.State state, double usedMm, double travelMm, boolean laden) {

    static Sunk of(Suspension has, Suspension.Rest rest, boolean laden) {
      double hanging = has.path().axle(-has.droopMm()).z();
      return new Sunk(
          rest.state(),
          has.path().axle(rest.travelMm()).z() - hanging,
          has.path().axle(has.bumpMm()).z() - hanging,
          laden);
    }

    private boolean little() {
      return laden && usedMm < LEAST_LADEN * travelMm;
    }

    private boolean much() {
      return laden && usedMm > MOST_LADEN * travelMm;
    }

    Verdict verdict() {
      return state == Suspension.State.BOTTOMED
          ? Verdict.FAIL
          : laden && state == Suspension.State.TOPPED_OUT || little() || much()
              ? Verdict.CAUTION
              : Verdict.PASS;
    }

    String cure() {
      return little()
          ? "; a third is usual, so it can hardly follow a hollow: softer springs or less preload"
              + " there"
          : much()
              ? "; a third is usual, so little is left for a bump: stiffer springs or more preload"
                  + " there"
              : "";
    }

    Words says(String who, String end, String more) {
      return switch (state) {
        case BOTTOMED ->
            Say.format(
                "%s the %s wheel sits on its bump stop at rest: stiffer springs or more preload"
                    + " there.",
                who, end);
        case TOPPED_OUT ->
            Say.format(
                "%s the %s wheel hangs on its top-out stop at rest%s",
                who,
                end,
                laden
                    ? ", so it cannot follow a hollow: softer springs or less preload there."
                    : "; the springs carry it only once somebody sits on it.");
        default ->
            Say.format(
                "%s the %s wheel uses %s of its %s of travel at rest, %s%s.",
                who, end, Say.mm(usedMm), Say.mm(travelMm), Say.percent(usedMm / travelMm), more);
      };
    }
  }
}
