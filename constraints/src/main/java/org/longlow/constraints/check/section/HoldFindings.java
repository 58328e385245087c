package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.machine.section.GasLaw;
import org.longlow.constraints.machine.section.SectionForces;
import org.longlow.constraints.machine.section.SectionForces.Most;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What a hand needs to open and shut a section, and what holds it open and shut without one. */
final class HoldFindings {

  /** The most a hand needs on the way. */
  static final FindingKind HAND_FORCE = kind("hand-force");

  /** Whether it stays open. */
  static final FindingKind STAYS_OPEN = kind("stays-open");

  /** What happens when what helps it fails. */
  static final FindingKind NO_HELP = kind("no-help");

  /** Whether somebody gets out when that has failed. */
  static final FindingKind WAY_OUT = kind("way-out");

  /** What holds it shut. */
  static final FindingKind SHUT = kind("shut");

  private static final Basis STATICS =
      Basis.model(
          "statics of the parts that move, level road, hinges without friction; gas springs as"
              + " straight lines");

  private static final Basis WORN =
      Basis.practice(
              "gas springs: a tenth of the force lost over the years, common practice, from memory")
          .fromMemory();

  private static final Basis WARMTH =
      Basis.judgement(
          "gas springs at −10 to 40 °C, judgement; force goes with absolute temperature");

  private final Layout layout;
  private final Places places;

  HoldFindings(Layout layout, Places places) {
    this.layout = layout;
    this.places = places;
  }

  private static FindingKind kind(String word) {
    return new FindingKind(word, FindingGroup.OPENING, Rests.ON_MASSES);
  }

  /**
   * @param struts on its gas springs
   * @param caught on its catches: what does not engage holds nothing
   */
  List<Finding> of(Opener opener, List<Finding> struts, List<Finding> caught) {
    List<Finding> findings = new ArrayList<>();
    findings.add(handForce(opener));
    findings.add(staysOpen(opener));
    boolean gas = !opener.opens().gasSprings().isEmpty();
    if (gas || !opener.opens().drive().isEmpty()) {
      findings.add(noHelp(opener));
    }
    if (opener.opens().wayOut()) {
      findings.add(wayOut(opener));
    }
    if (opener.opens().isHelped() || !opener.opens().catches().isEmpty() || pushed(opener) > 0) {
      findings.add(shut(opener, Caught.of(opener, caught)));
    }
    boolean reach = struts.stream().noneMatch(f -> f.verdict() == Verdict.FAIL);
    if (!reach) {
      findings.replaceAll(HoldFindings::outOfReach);
    }
    return findings;
  }

  /** What rests on a gas spring that cannot be as long, or as short, as its way asks. */
  private static Finding outOfReach(Finding f) {
    if (f.verdict() == Verdict.FAIL || f.kind() == NO_HELP) {
      return f;
    }
    return f.withVerdict(Verdict.CAUTION)
        .withText(
            Words.of(
                f.words(),
                " That is reckoned with a gas spring that cannot follow the whole way, as its own"
                    + " finding says: mend that first."));
  }

  private Finding handForce(Opener o) {
    SectionForces forces = o.forces();
    double to = o.held(places);
    // a gas spring hinders where it pushes the other way: it is looked at weak and strong
    Most up =
        more(
            forces.mostToOpen(to, GasLaw.COLD_AND_WORN, o.grip()),
            forces.mostToOpen(to, GasLaw.HOT, o.grip()));
    Most down =
        more(
            forces.mostToShut(to, GasLaw.HOT, o.grip()),
            forces.mostToShut(to, GasLaw.COLD_AND_WORN, o.grip()));
    boolean heavy = up.value() >= down.value();
    Most most = heavy ? up : down;
    double limit = places.value(layout.demands().limit(Demands.Key.HAND_FORCE));
    Words need =
        Words.of(
            "Section " + o.name() + ": to open it a hand " + o.gripWords() + " needs ",
            force(up),
            ", to shut it ",
            force(down),
            "; at most ",
            Say.newton(limit),
            " are asked. ");
    Words text =
        most.value() > limit
            ? Words.of(
                need,
                heavy
                    ? lighter(o, up, limit)
                    : "Take weaker gas springs, or move" + " their ends nearer to the hinge.")
            : Words.of(need, byItself(forces, to));
    return finding(
            HAND_FORCE,
            o,
            Figures.atMost(Math.max(0, most.value()), limit, FigureUnit.NEWTON),
            text)
        .openBy(most.opening())
        .at(o.motion().at(most.opening()).apply(o.grip()));
  }

  private static Most more(Most one, Most other) {
    return other.value() > one.value() ? other : one;
  }

  private static Words force(Most most) {
    return most.value() > 0
        ? Words.of(Say.newton(most.value()), " (most at ", Say.percent(most.opening()), " open)")
        : Words.of("nothing");
  }

  /** What makes it lighter: gas springs scaled so far that the hand needs what is asked. */
  private static Words lighter(Opener o, Most up, double limit) {
    SectionForces forces = o.forces();
    double all = forces.opening(up.opening(), GasLaw.COLD_AND_WORN);
    double gas = all - forces.opening(up.opening(), GasLaw.DEAD);
    double lacking = -all * (1 - limit / up.value());
    return gas > 0
        ? Say.format(
            "Take gas springs some %.1f times as strong, or move their ends farther from the hinge.",
            Math.ceil(10 * (1 + lacking / gas)) / 10)
        : Words.of(
            "Let gas springs or a counterweight help, make it lighter, or take hold farther from"
                + " the hinge.");
  }

  private static Words byItself(SectionForces forces, double to) {
    Optional<Double> from = forces.turnsOver(to, 1);
    if (from.isEmpty()) {
      return Words.of("It does not go up by itself.");
    }
    return from.get() > 0
        ? Words.of("It goes on by itself from ", Say.percent(from.get()), " open.")
        : Words.of("It opens by itself from shut on.");
  }

  private Finding staysOpen(Opener o) {
    double to = o.held(places);
    double cold = -o.forces().handN(to, GasLaw.COLD_AND_WORN, o.grip());
    double hot = -o.forces().handN(to, GasLaw.HOT, o.grip());
    double holds = Math.min(cold, hot);
    Most falling = o.forces().mostToOpen(to, GasLaw.COLD_AND_WORN, o.grip());
    double limit = places.value(layout.demands().limit(Demands.Key.HAND_FORCE));
    String springs = hot < cold ? ", gas springs hot" : ", gas springs cold and worn";
    Words begin = Words.of("Section " + o.name() + ", held ", Say.percent(to), " open, ");
    Words text =
        holds >= 0
            ? Words.of(
                begin,
                "stays there, pressed on with ",
                Say.newton(holds),
                " " + o.gripWords() + (o.opens().gasSprings().isEmpty() ? "." : springs + "."))
            : Words.of(
                begin,
                "falls shut: ",
                Say.newton(-holds),
                " " + o.gripWords() + " are lacking",
                falling.value() > limit
                    ? Words.of(
                        ", and as it falls up to ",
                        Say.newton(falling.value()),
                        " come on a hand, which is asked for at most ",
                        Say.newton(limit))
                    : Words.NONE,
                o.opens().isHelped()
                    ? ". Take more help, open it farther, or fit a prop that cannot slip."
                    : ". Fit a prop that cannot slip, or gas springs.");
    Finding f =
        finding(STAYS_OPEN, o, Figures.atLeast(holds, 0, FigureUnit.NEWTON), text)
            .openBy(to)
            .at(o.motion().at(to).apply(o.grip()));
    // with a prop, which is on no drawing, it is well, if a hand can hold what slips off it
    return f.verdict() == Verdict.FAIL && !o.opens().isHelped() && falling.value() <= limit
        ? f.withVerdict(Verdict.CAUTION)
        : f;
  }

  private Finding noHelp(Opener o) {
    double to = o.held(places);
    SectionForces forces = o.forces();
    double falls = forces.handN(to, GasLaw.DEAD, o.grip());
    PointMm centre = forces.centre();
    double drop = forces.down().dot(centre.minus(forces.motion().at(to).apply(centre)));
    String drive = o.opens().drive();
    String what =
        drive.isEmpty()
            ? "its gas springs dead"
            : "the power of "
                + drive
                + " gone"
                + (o.opens().gasSprings().isEmpty() ? "" : " and its gas springs dead");
    Words text =
        falls > 0
            ? Words.of(
                "With " + what + ", section " + o.name() + " falls shut from where it is held, ",
                Say.newton(falls),
                " " + o.gripWords() + "; its ",
                Say.kg(forces.massKg()),
                " come down ",
                Say.mm(drop),
                " on whatever is in the gap: have a prop for hands and heads, and a way to open it"
                    + " by hand from both sides.")
            : Words.of(
                "With "
                    + what
                    + ", section "
                    + o.name()
                    + " stays open by its weight"
                    + (drive.isEmpty() ? "." : "; see that it can be moved by hand."));
    Verdict verdict = falls > 0 || !drive.isEmpty() ? Verdict.CAUTION : Verdict.PASS;
    return finding(NO_HELP, o, Figures.only(Math.max(0, falls), FigureUnit.NEWTON), text)
        .withVerdict(verdict)
        .openBy(to);
  }

  Finding wayOut(Opener o) {
    double to = o.held(places);
    Most dead = o.forces().mostToOpen(to, GasLaw.DEAD, o.grip());
    Most most = more(dead, o.forces().mostToOpen(to, GasLaw.HOT, o.grip()));
    double limit = places.value(layout.demands().limit(Demands.Key.WAY_OUT_FORCE));
    Words text =
        Words.of(
            "Somebody gets out through section "
                + o.name()
                + (most == dead ? ": with all that helps it dead, a" : ": with gas springs hot, a")
                + " hand "
                + o.gripWords()
                + " needs ",
            force(most),
            "; at most ",
            Say.newton(limit),
            most.value() > limit
                ? " are asked. Make it lighter, let a counterweight help, or give another way out."
                : " are asked. See that it opens from inside, without power, with the machine on its"
                    + " side too.");
    return finding(
            WAY_OUT, o, Figures.atMost(Math.max(0, most.value()), limit, FigureUnit.NEWTON), text)
        .openBy(most.opening());
  }

  /** What pushes it open where it is shut, at the grip, whatever its gas springs are like, N. */
  private static double pushed(Opener o) {
    return DoubleStream.of(GasLaw.HOT, GasLaw.COLD_AND_WORN, GasLaw.DEAD)
        .map(share -> -o.forces().handN(0, share, o.grip()))
        .max()
        .orElseThrow();
  }

  private Finding shut(Opener o, Caught caught) {
    double pushes = pushed(o);
    Words text;
    if (pushes > 0) {
      text =
          Words.of(
              "Shut, section " + o.name() + " is pushed open with ",
              Say.newton(pushes),
              " " + o.gripWords(),
              switch (caught) {
                case SURELY -> "; its catch holds that.";
                case PERHAPS -> "; see what is said of its catch, which must hold that.";
                case NOT -> "; its catch does not engage, so nothing holds it: mend that first.";
                case NONE ->
                    ", and nothing is said to hold it: fit a catch"
                        + (o.opens().gasSprings().isEmpty()
                            ? "."
                            : ", or move an end of the gas springs so that they pull it shut, and"
                                + " its weight does.");
              });
    } else {
      text =
          Words.of(
              "Shut, section " + o.name() + " lies there with ",
              Say.newton(-pushes),
              " " + o.gripWords(),
              switch (caught) {
                case SURELY -> "; its catch holds it besides.";
                case PERHAPS -> "; see what is said of its catch, which must hold it besides.";
                case NOT ->
                    "; its catch does not engage, and bumps and wind under its edge are more than"
                        + " that: mend its catch.";
                case NONE ->
                    ", and nothing else is said to hold it: bumps and wind under its edge are"
                        + " more than that, so fit a catch.";
              });
    }
    Verdict verdict =
        switch (caught) {
          case SURELY -> Verdict.PASS;
          case PERHAPS -> Verdict.CAUTION;
          case NOT, NONE -> pushes > 0 ? Verdict.FAIL : Verdict.CAUTION;
        };
    return finding(SHUT, o, Figures.only(pushes, FigureUnit.NEWTON), text).withVerdict(verdict);
  }

  /** Whether catches hold a section shut. */
  private enum Caught {
    SURELY,
    /** Some of them do not engage, or may let go. */
    PERHAPS,
    NOT,
    NONE;

    static Caught of(Opener o, List<Finding> catches) {
      List<Verdict> engaged =
          catches.stream()
              .filter(f -> f.kind() == CatchFindings.CATCH)
              .map(Finding::verdict)
              .toList();
      if (o.opens().catches().isEmpty()) {
        return NONE;
      }
      if (engaged.stream().allMatch(v -> v == Verdict.FAIL)) {
        return NOT;
      }
      return engaged.stream().allMatch(v -> v == Verdict.PASS) ? SURELY : PERHAPS;
    }
  }

  private Finding finding(FindingKind kind, Opener o, Figures figures, Words text) {
    List<Basis> basis = new ArrayList<>();
    if (kind == HAND_FORCE || kind == WAY_OUT) {
      basis.add(
          Sources.of(layout, kind == WAY_OUT ? Demands.Key.WAY_OUT_FORCE : Demands.Key.HAND_FORCE));
    }
    basis.add(STATICS);
    if (!o.opens().gasSprings().isEmpty() && kind != NO_HELP) {
      if (kind != WAY_OUT) { // that is looked at with them dead, and hot
        basis.add(kind == SHUT ? WORN.aside() : WORN); // a catch decides, whatever they push
      }
      basis.add(WARMTH);
    }
    return Finding.held(
            kind,
            new About(o.name(), o.parts(), Optional.empty(), List.of(o.name())),
            kind == SHUT ? Optional.empty() : Optional.of(Condition.open(o.name())),
            figures,
            basis,
            text)
        .at(o.grip());
  }
}
