package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.seat.Compression;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;

/** How each crew member sits: sink of each cushion, hold, head rest. */
final class SeatFindings {

  private static final String FOAM =
      "layered foam model after Gibson and Ashby 1997 and Mills 2007 (both from memory); bottoming"
          + " limits and 15 % of wear are common practice";

  private SeatFindings() {}

  static List<Finding> of(Sitting sitting) {
    List<Finding> findings = new ArrayList<>();
    String who = name(sitting);
    String stance = "laden, " + sitting.person();
    if (sitting.outcome() instanceof SeatOutcome.Unseatable none) {
      findings.add(
          Finding.note(
              "seat." + who,
              sitting.person(),
              stance,
              Verdict.FAIL,
              Double.NaN,
              "",
              "rider model",
              sitting.person()
                  + " cannot sit on the "
                  + sitting.seat()
                  + " seat: "
                  + none.reason()));
      findings.addAll(BodyCare.notes(sitting, stance));
      return findings;
    }
    SeatOutcome.Seated seated = sitting.seated().orElseThrow();
    cushion(findings, sitting, stance, "pan", sitting.parts().pan(), seated.pan());
    sitting
        .parts()
        .back()
        .ifPresent(b -> cushion(findings, sitting, stance, "back", b, seated.back()));
    Optional<Part.Cushion> head = sitting.parts().head();
    if (head.isPresent() && seated.headRest().isPresent()) {
      cushion(findings, sitting, stance, "head", head.get(), seated.headRest().get());
    }
    hold(findings, sitting, stance, seated);
    headRest(findings, sitting, stance, seated);
    findings.addAll(BodyCare.notes(sitting, stance));
    return findings;
  }

  /** The person in words, with the seat where it is not the rider's. */
  static String who(Sitting sitting) {
    return sitting.seat().equals(SeatParts.RIDER)
        ? sitting.person()
        : sitting.person() + " as " + sitting.seat();
  }

  /**
   * The person in ids, with the seat where it is not the rider's. Dots in the name are doubled, so
   * that nobody's name reads like somebody else's seat.
   */
  static String name(Sitting sitting) {
    String person = sitting.person().replace(".", "..");
    return sitting.seat().equals(SeatParts.RIDER) ? person : person + "." + sitting.seat();
  }

  /** How a cushion holds, best first. */
  private enum Hold {
    SOUND("and stays off the board"),
    BUMP("and reaches the board over a bump of 1 g; use firmer or thicker foam"),
    TOPPER(
        "and uses up the top layer, which does nothing more, while the rest holds; a firmer or"
            + " thicker top layer would help"),
    BOARD("and goes through to the board; use firmer or thicker foam");

    private final String words;

    Hold(String words) {
      this.words = words;
    }

    static Hold of(Compression.Verdict verdict, boolean holdsBump) {
      return switch (verdict) {
        case BOTTOMS -> BOARD;
        case TOPPER_SPENT -> TOPPER;
        case SOUND -> holdsBump ? SOUND : BUMP;
      };
    }
  }

  private static void cushion(
      List<Finding> findings,
      Sitting sitting,
      String stance,
      String role,
      Part.Cushion part,
      CushionLoad load) {
    double thickness = load.safeSinkMm() + load.remainingMm();
    double limit = Math.min(FoamStack.MEAN_LIMIT * thickness, thickness - FoamStack.LEAST_LEFT_MM);
    Hold fresh = Hold.of(load.verdict(), load.holdsBump());
    Hold worn = Hold.of(load.worn().verdict(), load.worn().holdsBump());
    Verdict verdict =
        fresh == Hold.BOARD ? Verdict.FAIL : worn == Hold.SOUND ? Verdict.PASS : Verdict.CAUTION;
    String how =
        fresh != Hold.SOUND
            ? fresh.words
            : worn == Hold.SOUND
                ? "and stays off the board, also when the foam is worn"
                : "and stays off the board while the foam is new";
    String later =
        fresh == Hold.BOARD || worn == fresh
            ? ""
            : Say.format(
                " Worn foam, %s softer, sinks %s %s.",
                Say.percent(1 - Foam.WORN_SHARE), Say.mm(load.worn().safeSinkMm()), worn.words);
    findings.add(
        new Finding(
                "sink." + SeatFindings.name(sitting) + "." + role,
                who(sitting) + ", " + part.name(),
                stance,
                verdict,
                load.safeSinkMm(),
                limit,
                limit - load.safeSinkMm(),
                "mm",
                FOAM,
                Say.format(
                    "%s sinks at most %s of %s into %s, %s.%s %s",
                    who(sitting),
                    Say.mm(load.safeSinkMm()),
                    Say.mm(thickness),
                    part.name(),
                    how,
                    later,
                    FoamStack.SINK_CAUTION),
                Optional.empty())
            .at(load.centre()));
  }

  private static void hold(
      List<Finding> findings, Sitting sitting, String stance, SeatOutcome.Seated seated) {
    double friction = Math.abs(seated.load().frictionNeeded());
    Finding f =
        Finding.atMost(
            "hold." + SeatFindings.name(sitting),
            who(sitting) + ", hold",
            stance,
            friction,
            SeatLoad.DESIGN_FRICTION,
            "",
            "static load share; design friction 0.30 for rain and vibration is common practice",
            Say.format(
                "%s needs a friction of %.2f not to slide %s on the pan; 0.30 can be counted on%s.",
                who(sitting),
                friction,
                seated.load().frictionNeeded() >= 0 ? "forward" : "back",
                friction <= SeatLoad.DESIGN_FRICTION
                    ? ""
                    : seated.load().frictionNeeded() >= 0
                        ? ": raise the front of the pan"
                        : ": lower the front of the pan"));
    findings.add(
        (f.verdict() == Verdict.FAIL ? f.withVerdict(Verdict.CAUTION) : f).at(seated.hip()));
  }

  private static void headRest(
      List<Finding> findings, Sitting sitting, String stance, SeatOutcome.Seated seated) {
    double recline = Math.toDegrees(seated.reclineRad());
    boolean needed = recline > 30;
    if (!needed && sitting.parts().head().isEmpty()) {
      return;
    }
    boolean held = seated.headOnRest();
    Verdict verdict = held || !needed ? Verdict.PASS : Verdict.CAUTION;
    String text =
        held
            ? who(sitting) + ": the head leans on the rest."
            : sitting.parts().head().isEmpty()
                ? Say.format(
                    "%s leans back %s with nothing to rest the head on; from about 30° a head rest"
                        + " is wanted.",
                    who(sitting), Say.deg(recline))
                : Double.isNaN(seated.headGapMm())
                    ? who(sitting) + ": the head does not come to its rest."
                    : Say.format(
                        "%s: the head is %s off its rest.",
                        who(sitting), Say.mm(seated.headGapMm()));
    findings.add(
        Finding.note(
            "head." + SeatFindings.name(sitting),
            who(sitting) + ", head",
            stance,
            verdict,
            recline,
            "deg",
            "Reed, Ebert and Jones 2019: posture with and without head rest; judgement",
            text));
  }
}
