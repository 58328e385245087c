package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
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
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Spreads;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.pose.Flesh;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.Foam;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatNote;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Support;
import org.longlow.rider.words.Words;

/** How each crew member sits: sink of each cushion, hold, head rest. */
public final class SeatFindings {

  /** Somebody cannot sit on a seat, or what to take care of where they can. */
  public static final FindingKind SEAT =
      new FindingKind("seat", FindingGroup.SEAT, Rests.ON_DRAWING);

  /** How deep somebody sinks into a cushion. */
  public static final FindingKind SINK =
      new FindingKind("sink", FindingGroup.SEAT, Rests.ON_DRAWING);

  /** Whether friction holds somebody. */
  public static final FindingKind HOLD =
      new FindingKind("hold", FindingGroup.SEAT, Rests.ON_DRAWING);

  /** Whether the head has a rest. */
  static final FindingKind HEAD = new FindingKind("head", FindingGroup.SEAT, Rests.ON_DRAWING);

  private static final Basis RIDER_MODEL = Basis.model("rider model");

  private static final Basis FOAM_LAW =
      Basis.published(
          Known.FROM_MEMORY,
          "layered foam model after Gibson and Ashby 1997 and Mills 2007 (both from memory)");

  /**
   * What a sink rests on. The law of open cells runs through two forces that were measured, 25 and
   * 65 %: others through the same two differ from it by 11 % at most up to 80 %, less than what is
   * said of each sink, so it decides nothing. That of closed cells goes on from one figure alone.
   */
  private static List<Basis> foam(CushionPart part) {
    boolean goesOn = part.layers().stream().anyMatch(FoamSpec::closedCell);
    return List.of(
        goesOn ? FOAM_LAW : FOAM_LAW.aside(),
        Basis.practice("bottoming limits and 15 % of wear are common practice"));
  }

  private static final List<Basis> HOLD_BASIS =
      List.of(
          Basis.model("static load share"),
          Basis.practice("design friction 0.30 for rain and vibration is common practice"));

  private static final List<Basis> HEAD_BASIS =
      List.of(
          Basis.published(
              Known.CHECKED, "Reed, Ebert and Jones 2019: posture with and without head rest"),
          Basis.judgement("judgement"));

  /**
   * A pan or back carries at least so much on each side of the middle, mm: sit bones are some 100
   * to 130 mm apart. From memory; judgement.
   */
  static final double HALF_MM = 50;

  /** A head rest likewise, mm; judgement. */
  static final double HEAD_HALF_MM = 30;

  private static final List<Basis> ACROSS =
      List.of(
          Basis.judgement(
                  "judgement: sit bones are some 100 to 130 mm apart (from memory), a head needs 30"
                      + " mm on each side")
              .fromMemory());

  /** The flesh that each cushion carries. */
  private static final Map<CushionPart.Role, String> CARRIED =
      Map.of(
          CushionPart.Role.PAN,
          "pelvis",
          CushionPart.Role.BACK,
          "chest",
          CushionPart.Role.HEAD,
          "head");

  private SeatFindings() {}

  public static List<Finding> of(Sitting sitting, Condition stance, Places places) {
    List<Finding> findings = new ArrayList<>();
    if (sitting.outcome() instanceof SeatOutcome.Unseatable none) {
      findings.add(
          Finding.note(
                  SEAT,
                  About.person(sitting.occupant(), "").said(sitting.person()),
                  Verdict.FAIL,
                  RIDER_MODEL,
                  Words.of(
                      sitting.person()
                          + " cannot sit on the "
                          + sitting.seat()
                          + " seat: "
                          + none.reason()))
              .in(stance));
      findings.addAll(BodyCare.notes(sitting, stance));
      return findings;
    }
    SeatOutcome.Seated seated = sitting.seated().orElseThrow();
    cushion(findings, sitting, stance, "pan", sitting.parts().pan(), seated.pan());
    sitting
        .parts()
        .back()
        .ifPresent(b -> cushion(findings, sitting, stance, "back", b, seated.back()));
    Optional<CushionPart> head = sitting.parts().head();
    if (head.isPresent() && seated.headRest().isPresent()) {
      cushion(findings, sitting, stance, "head", head.get(), seated.headRest().get());
    }
    List<Flesh> flesh = sitting.flesh();
    for (CushionPart cushion : cushions(sitting)) {
      beside(sitting, flesh, stance, cushion, places).ifPresent(findings::add);
    }
    hold(findings, sitting, stance, seated);
    headRest(findings, sitting, stance, seated, places);
    seated.notes().forEach(note -> findings.add(care(sitting, stance, note)));
    findings.addAll(BodyCare.notes(sitting, stance));
    return findings;
  }

  private static Finding care(Sitting sitting, Condition stance, SeatNote note) {
    return Finding.note(
            SEAT,
            About.person(
                sitting.occupant(), note.about().words(), note.about().words().replace(' ', '-')),
            Verdict.CAUTION,
            RIDER_MODEL,
            Words.of(who(sitting) + ": ", note.text()))
        .in(stance)
        .pulling(
            note.about() == SeatNote.About.THIGHS
                ? Optional.of(
                    Tug.of(Tug.Thing.PAN, Tug.Way.SHORTER, Tug.Way.DOWN, "raise the feet"))
                : Optional.empty());
  }

  private static List<CushionPart> cushions(Sitting sitting) {
    List<CushionPart> cushions = new ArrayList<>(List.of(sitting.parts().pan()));
    sitting.parts().back().ifPresent(cushions::add);
    sitting.parts().head().ifPresent(cushions::add);
    return cushions;
  }

  /** A cushion that does not carry somebody on either side of their middle. */
  private static Optional<Finding> beside(
      Sitting sitting, List<Flesh> flesh, Condition stance, CushionPart cushion, Places places) {
    double half =
        flesh.stream()
            .filter(f -> f.name().equals(CARRIED.get(cushion.role())))
            .mapToDouble(Flesh::outerMm)
            .findFirst()
            .orElseThrow();
    List<Interval> across = Spreads.of(cushion.base(), places);
    double left = within(across, 0, half);
    double right = within(across, -half, 0);
    double least = cushion.role() == CushionPart.Role.HEAD ? HEAD_HALF_MM : HALF_MM;
    double side = Math.min(left, right);
    if (side >= least) {
      return Optional.empty();
    }
    String way = left < right ? "left" : "right";
    return Optional.of(
        new Finding(
            SEAT,
            About.person(
                sitting.occupant(),
                cushion.name(),
                cushion.role().name().toLowerCase(Locale.ROOT),
                "across"),
            Optional.of(stance),
            side <= 0 ? Verdict.FAIL : Verdict.CAUTION,
            Figures.atLeast(side, least, FigureUnit.MM),
            ACROSS,
            Say.format(
                "%s carries %s on %s to the left of the middle and %s to the right; %s are asked on"
                    + " each side: set it %s farther to the %s or make it wider.",
                cushion.name(),
                who(sitting),
                Say.mm(left),
                Say.mm(right),
                Say.mm(least),
                Words.atLeast(least - side),
                way)));
  }

  /** How much of a stretch across the machine some intervals fill, mm; they may overlap. */
  private static double within(List<Interval> across, double from, double to) {
    double most = 0;
    for (Interval i : across) {
      most = Math.max(most, Math.min(i.to(), to) - Math.max(i.from(), from));
    }
    return most;
  }

  /** The person in words, with the seat where it is not the rider's. */
  public static String who(Sitting sitting) {
    return sitting.occupant().words();
  }

  private static void cushion(
      List<Finding> findings,
      Sitting sitting,
      Condition stance,
      String role,
      CushionPart part,
      CushionLoad load) {
    double thickness = load.safeSinkMm() + load.remainingMm();
    double limit = Math.min(FoamStack.MEAN_LIMIT * thickness, thickness - FoamStack.LEAST_LEFT_MM);
    Support support = Support.of(load);
    Verdict verdict =
        support.bottoms() ? Verdict.FAIL : support.lasts() ? Verdict.PASS : Verdict.CAUTION;
    Words later =
        support.bottoms() || support.worn() == support.fresh()
            ? Words.NONE
            : Say.format(
                " Worn foam, %s softer, has a %s of %s and %s.",
                Say.percent(1 - Foam.WORN_SHARE),
                Support.DESIGN,
                Say.mm(load.worn().safeSinkMm()),
                support.worn().words());
    findings.add(
        new Finding(
                SINK,
                About.person(sitting.occupant(), part.name(), role).on(part.name()),
                Optional.of(stance),
                verdict,
                Figures.atMost(load.safeSinkMm(), limit, FigureUnit.MM),
                foam(part),
                Say.format(
                    "%s on %s, %s thick: %s %s; %s %s, leaves %s, %s.%s %s%s",
                    who(sitting),
                    part.name(),
                    Say.mm(thickness),
                    Support.LIKELY,
                    Say.mm(load.sinkMm()),
                    Support.DESIGN,
                    Say.mm(load.safeSinkMm()),
                    Say.mm(load.remainingMm()),
                    support.advice(),
                    later,
                    FoamStack.SINK_CAUTION,
                    Rucksack.words(sitting)))
            .at(load.centre()));
  }

  private static void hold(
      List<Finding> findings, Sitting sitting, Condition stance, SeatOutcome.Seated seated) {
    double friction = Math.abs(seated.load().frictionNeeded());
    Finding f =
        Finding.held(
            HOLD,
            About.person(sitting.occupant(), "hold"),
            Optional.of(stance),
            Figures.atMost(friction, SeatLoad.DESIGN_FRICTION, FigureUnit.NONE),
            HOLD_BASIS,
            Say.format(
                "%s needs a friction of %s not to slide %s on the pan; %s can be counted on%s.",
                who(sitting),
                Say.hundredths(friction),
                seated.load().frictionNeeded() >= 0 ? "forward" : "back",
                Say.hundredths(SeatLoad.DESIGN_FRICTION),
                friction <= SeatLoad.DESIGN_FRICTION
                    ? ""
                    : seated.load().frictionNeeded() >= 0
                        ? ": raise the front of the pan"
                        : ": lower the front of the pan"));
    findings.add(
        (f.verdict() == Verdict.FAIL ? f.withVerdict(Verdict.CAUTION) : f)
            .at(seated.hip())
            .pulling(
                f.verdict() == Verdict.PASS
                    ? Optional.empty()
                    : Optional.of(
                        Tug.of(
                            Tug.Thing.PAN,
                            seated.load().frictionNeeded() >= 0 ? Tug.Way.UP : Tug.Way.DOWN,
                            ""))));
  }

  private static void headRest(
      List<Finding> findings,
      Sitting sitting,
      Condition stance,
      SeatOutcome.Seated seated,
      Places places) {
    double recline = Math.toDegrees(seated.reclineRad());
    boolean needed = seated.wantsHeadRest();
    if (!needed && sitting.parts().head().isEmpty()) {
      return;
    }
    boolean held = seated.headOnRest();
    Verdict verdict = held || !needed ? Verdict.PASS : Verdict.CAUTION;
    Words text =
        held
            ? Words.of(who(sitting) + ": the head leans on the rest.")
            : sitting.parts().head().isEmpty()
                ? Say.format(
                    "%s leans back %s with nothing to rest the head on; from about %.0f° a head"
                        + " rest is wanted.",
                    who(sitting),
                    Say.deg(recline),
                    Math.toDegrees(SeatOutcome.Seated.HEAD_REST_RECLINE_RAD))
                : Double.isNaN(seated.headGapMm())
                    ? Words.of(
                        who(sitting) + ": the head does not come to its rest",
                        HeadRestShift.words(sitting, places)
                            .map(how -> Words.of("; for it to lean on that, ", how))
                            .orElse(Words.NONE),
                        ".")
                    : Say.format(
                        "%s: the head is %s off its rest.",
                        who(sitting), Say.mm(seated.headGapMm()));
    findings.add(
        new Finding(
            HEAD,
            About.person(sitting.occupant(), "head"),
            Optional.of(stance),
            verdict,
            Figures.only(recline, FigureUnit.DEG),
            HEAD_BASIS,
            text));
  }
}
