package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
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
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Shock;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.stand.ShockTravel;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/** Whether the shock of an arm has the stroke that travel asks, and what its spring is there. */
public final class ShockFindings {

  /** What travel asks of a shock's stroke. */
  public static final FindingKind STROKE =
      new FindingKind("stroke", FindingGroup.SAG, Rests.ON_DRAWING);

  /** What a shock's spring is at the wheel. */
  static final FindingKind WHEEL_RATE =
      new FindingKind("wheel-rate", FindingGroup.SAG, Rests.ON_DRAWING);

  /** What of a shock no part is drawn for. */
  static final FindingKind UNDRAWN = new FindingKind("undrawn", FindingGroup.SAG, Rests.ON_DRAWING);

  /** Springs are sold within so much of their rate; common practice, no source. */
  private static final double ALIKE = 0.1;

  /** At the wheel, N/mm: below it reads as none, and carries nobody. */
  private static final double LEAST_RATE = 0.05;

  private static final int STEPS = 24;

  private static final Basis WAY =
      Basis.model("the distance of both pins along the travel of the wheel");

  private static final Basis SQUARED =
      Basis.model(
          "virtual work: the spring's rate times the square of its share of what the axle moves,"
              + " as drawn; without what a changing ratio makes of its preload");

  private static final Basis WORK =
      Basis.model(
          "virtual work: the spring's force times its share of what the axle moves, all along the"
              + " travel");

  private static final Basis SPRINGS =
      Basis.practice("springs within a tenth of their rate are common practice; no source");

  private ShockFindings() {}

  /** Returns what is found of the shock of the arm that holds the rear wheel, if it is said. */
  public static List<Finding> of(Layout layout, Wheels wheels) {
    List<Finding> findings = new ArrayList<>();
    SwingarmPart arm = wheels.arm();
    if (arm == null || arm.shock().equals(Shock.NOT_SAID)) {
      return findings;
    }
    undrawn(layout, arm).ifPresent(findings::add);
    String foot = arm.shock().foot().orElseThrow();
    String top = arm.shock().top().orElseThrow();
    if (foot.equals(top)) {
      findings.add(
          wrong(
              arm,
              Words.of(
                  " has both its ends on the pin " + foot + ", ",
                  Say.mm(0),
                  " apart: name another pin as its top, one that stays on the frame.")));
      return findings;
    }
    ShockTravel travel = wheels.shock().orElseThrow();
    if (!travel.turns()) {
      findings.add(
          wrong(
              arm,
              Words.of(
                  " has a rocker that no rod turns: of its pivot and the far end of the rod one must"
                      + " go with the rear wheel and the other stay on the frame, and rod and lever"
                      + " must not lie in line as drawn.")));
      return findings;
    }
    boolean rocker = arm.shock().loop().isPresent();
    if (!rocker && (!wheels.carries(foot) || wheels.carries(top))) {
      findings.add(
          wrong(
              arm,
              Words.of(
                  " does not close as its wheel rises: its foot "
                      + foot
                      + " must go with the rear wheel and its top "
                      + top
                      + " must not.")));
      return findings;
    }
    Swept swept = Swept.of(travel, wheels.rearSuspension());
    findings.add(stroke(arm, swept, wheels));
    if (swept.jamsAt().isEmpty() && swept.opensAt().isEmpty()) {
      wheelRate(arm, travel, wheels).ifPresent(findings::add);
    }
    return findings;
  }

  /** What is no part is in no gap: nobody would hear that it runs through something. */
  private static Optional<Finding> undrawn(Layout layout, SwingarmPart arm) {
    List<String> lacks = new ArrayList<>();
    arm.shock()
        .bodies()
        .forEach(
            (what, pins) -> {
              if (layout.parts().values().stream().noneMatch(p -> p.pins().containsAll(pins))) {
                lacks.add(what + " between " + String.join(" and ", pins));
              }
            });
    return lacks.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.note(
                UNDRAWN,
                About.thing(arm.name(), arm.name()),
                Verdict.CAUTION,
                Basis.model("only parts are held off one another"),
                Words.of(
                    "What the suspension of "
                        + arm.name()
                        + " moves is not drawn, so that nothing is held off it: "
                        + String.join("; ", lacks)
                        + ". Draw a rail from the one pin to the other, as thick as it is; if it is"
                        + " bought, say so.")));
  }

  /** A shock that cannot work between the pins it hangs on. */
  private static Finding wrong(SwingarmPart arm, Words how) {
    return Finding.note(
        STROKE,
        About.thing(arm.name(), arm.name()),
        Verdict.FAIL,
        WAY,
        Words.of("The shock of " + arm.name(), how));
  }

  /**
   * Its length all along the travel.
   *
   * @param opensAt the step at which it is first longer than at the one before
   * @param jamsAt the travel at which rod and rocker do not meet, mm
   */
  private record Swept(
      double longestMm, double shortestMm, OptionalInt opensAt, OptionalDouble jamsAt) {

    static Swept of(ShockTravel way, Suspension rear) {
      double longest = Double.NEGATIVE_INFINITY;
      double shortest = Double.POSITIVE_INFINITY;
      double before = Double.POSITIVE_INFINITY;
      OptionalInt opens = OptionalInt.empty();
      for (int k = 0; k <= STEPS; k++) {
        double travel = -rear.droopMm() + k * (rear.droopMm() + rear.bumpMm()) / STEPS;
        if (!way.reaches(travel)) {
          return new Swept(longest, shortest, opens, OptionalDouble.of(travel));
        }
        double mm = way.lengthMm(travel);
        opens = opens.isEmpty() && mm > before ? OptionalInt.of(k) : opens;
        before = mm;
        longest = Math.max(longest, mm);
        shortest = Math.min(shortest, mm);
      }
      return new Swept(longest, shortest, opens, OptionalDouble.empty());
    }
  }

  private static Finding stroke(SwingarmPart arm, Swept swept, Wheels wheels) {
    if (swept.jamsAt().isPresent()) {
      return wrong(
          arm,
          Words.of(
              " has rod and lever of its rocker in line before its wheel is ",
              swept.jamsAt().getAsDouble() > 0 ? "up" : "down",
              ": a longer rod or lever, or less travel."));
    }
    double needed = swept.longestMm() - swept.shortestMm();
    boolean back = swept.opensAt().isPresent();
    double has = wheels.drawn().value(arm.shock().stroke().orElseThrow());
    String name = "The shock of " + arm.name();
    return new Finding(
            STROKE,
            About.thing(arm.name(), arm.name()),
            Optional.empty(),
            back || needed > has ? Verdict.FAIL : Verdict.PASS,
            Figures.atMost(needed, has, FigureUnit.MM),
            List.of(WAY),
            back
                ? Words.of(
                    name
                        + (swept.opensAt().getAsInt() == 1
                            ? " opens from the first millimetre that its wheel rises"
                            : " opens again before its wheel is up")
                        + ": move its top so that it closes all the way.")
                : Words.of(
                    name + " is ",
                    Say.mm(swept.longestMm()),
                    " long at full droop, pin to pin, and closes ",
                    Say.mm(needed),
                    " up to full bump; its stroke is ",
                    Say.mm(has),
                    needed > has
                        ? ": bring its foot nearer to the pivot, lay it flatter, or ask for less"
                            + " travel."
                        : "."))
        .at(wheels.drawn().pin(arm.shock().foot().orElseThrow()));
  }

  private static Optional<Finding> wheelRate(SwingarmPart arm, ShockTravel way, Wheels wheels) {
    if (wheels.rearSuspension().droopMm() + wheels.rearSuspension().bumpMm() == 0) {
      return Optional.empty();
    }
    Suspension rear = wheels.rearSuspension();
    double ratio = way.ratio(0);
    double rate = wheels.drawn().value(arm.shock().spring().orElseThrow()) * ratio * ratio;
    boolean none = rate < LEAST_RATE;
    Words found =
        Say.format(
            "The shock of %s closes %.2f of what the axle moves, so its spring is %s%s at the wheel",
            arm.name(),
            ratio,
            none ? "less than " : "",
            Words.figure(none ? 2 * LEAST_RATE : rate, FigureSort.RATE));
    if (arm.rate().isEmpty() && rear.known()) {
      double low = way.ratio(-rear.droopMm());
      double high = way.ratio(rear.bumpMm());
      return Optional.of(
          new Finding(
                  WHEEL_RATE,
                  About.thing(arm.name(), arm.name()),
                  Optional.empty(),
                  Verdict.PASS,
                  Figures.only(ratio, FigureUnit.NONE),
                  List.of(WORK),
                  Words.of(
                      found,
                      Say.format(
                          "; from full droop to full bump it closes %.2f to %.2f of that. The rear"
                              + " springs are taken so.",
                          low, high)))
              .at(wheels.drawn().pin(arm.shock().top().orElseThrow())));
    }
    boolean known = arm.rate().isPresent();
    double said = rear.rateNPerMm();
    boolean alike = known && Math.abs(rate - said) <= ALIKE * said;
    return Optional.of(
        new Finding(
                WHEEL_RATE,
                About.thing(arm.name(), arm.name()),
                Optional.empty(),
                alike ? Verdict.PASS : Verdict.CAUTION,
                Figures.only(ratio, FigureUnit.NONE),
                List.of(SQUARED, SPRINGS),
                alike
                    ? Words.of(found, ".")
                    : none
                        ? Words.of(
                            found,
                            ", which carries nothing: look at its rate, or let it close more of"
                                + " what the axle moves.")
                        : Words.of(
                            found,
                            known
                                ? Say.format(
                                    ", and the arm says %s: write what it is as \"rate\", or take"
                                        + " another spring.",
                                    Words.figure(said, FigureSort.RATE))
                                : Words.of(": write that as \"rate\" of the arm.")))
            .at(wheels.drawn().pin(arm.shock().top().orElseThrow())));
  }
}
