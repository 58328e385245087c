package org.longlow.constraints.check.section;

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
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Catch;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.machine.linkage.MotionRate;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.machine.section.GasLaw;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Sections;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Whether catches engage with all their play against them, and let go when they are pulled. */
final class CatchFindings {

  /** How deep a catch engages at worst. */
  static final FindingKind CATCH = new FindingKind("catch", FindingGroup.OPENING, Rests.ON_DRAWING);

  /** Whether its release is pulled hard enough. */
  static final FindingKind RELEASE =
      new FindingKind("release", FindingGroup.OPENING, Rests.ON_MASSES);

  /** Friction of greased steel jaws: common practice, from memory. */
  private static final double FRICTION = 0.3;

  private static final Basis PLAY =
      Basis.model("depth less play, less how far jaw and striker are apart as drawn");

  private static final Basis PULL =
      Basis.practice(
              "spring of the jaw, and friction 0.3 of greased steel under load: common practice,"
                  + " from memory")
          .fromMemory();

  /** Of the hand's way: a jaw that moves less would carry 20 times the push; judgement. */
  private static final double LEAST_LEVER = 0.05;

  /** Places of the way that are looked at. */
  private static final int STEPS = 24;

  private final Layout layout;
  private final Places places;

  CatchFindings(Layout layout, Places places) {
    this.layout = layout;
    this.places = places;
  }

  List<Finding> of(Opener opener) {
    List<Finding> findings = new ArrayList<>();
    List<Catch> all = opener.opens().catches();
    for (int i = 0; i < all.size(); i++) {
      About about =
          new About(
              opener.name() + ", catch at " + all.get(i).jaw(),
              opener.parts(),
              Optional.empty(),
              List.of(opener.name(), Integer.toString(i + 1)));
      findings.add(engaged(opener, all.get(i), about));
      release(opener, all.get(i), about).ifPresent(findings::add);
    }
    return findings;
  }

  /** A catch that holds nothing, and why. */
  private Finding idle(Opener opener, Catch held, About about, Words why) {
    String which = "The catch of section " + opener.name() + " at " + held.jaw();
    return Finding.note(CATCH, about, Verdict.FAIL, PLAY, Words.of(which, why))
        .at(places.pin(held.jaw()));
  }

  private Finding engaged(Opener opener, Catch held, About about) {
    Condition condition = Condition.open(opener.name());
    String on = layout.pins().get(held.striker()).with();
    if (on.equals(opener.name())) {
      return idle(
          opener,
          held,
          about,
          Words.of(
              " holds nothing: its striker "
                  + held.striker()
                  + " moves with the same section. Name a pin of what it is held to."));
    }
    double lever = lever(opener, held);
    if (lever < LEAST_LEVER) {
      return idle(
          opener,
          held,
          about,
          Words.of(
              " is so near what the section turns about that it holds nothing: it moves by ",
              Say.percent(lever),
              " of what the hand does. Set it farther out."));
    }
    double apart = places.pin(held.jaw()).distance(places.pin(held.striker()));
    double shut = apart;
    double at = 0;
    Optional<SectionMotion> together = together(opener, on);
    if (together.isPresent()) {
      double to = Math.min(opener.held(places), heldBy(on));
      for (int k = 1; k <= STEPS; k++) {
        double now = apart(opener, held, together.get(), to * k / STEPS);
        if (now > apart) {
          apart = now;
          at = to * k / STEPS;
        }
      }
    }
    double depth = places.value(held.depth());
    double play = places.value(held.play());
    double limit = places.value(layout.demands().limit(Demands.Key.ENGAGEMENT));
    double parts = apart - shut;
    Figures figures = Figures.atLeast(depth - play - apart, limit, FigureUnit.MM);
    Words text =
        Words.of(
            "The catch of section "
                + opener.name()
                + " at "
                + held.jaw()
                + (together.isPresent() ? ", driven together with " + on + "," : "")
                + (figures.value() >= 0 ? " engages by " : " does not engage, by "),
            Say.mm(Math.abs(figures.value())),
            " at worst: ",
            Say.mm(depth),
            " deep, less ",
            Say.mm(play),
            " of play and ",
            Say.mm(apart),
            " out of line",
            together.isPresent() ? Words.of(" (at ", Say.percent(at), " open)") : "",
            "; ",
            Words.atLeast(limit),
            " are asked",
            figures.margin() >= 0
                ? (held.spring().isPresent()
                    ? "."
                    : ". Nothing is said to keep its jaw shut: give it a spring.")
                : parts > depth
                    ? Words.of(
                        ". They part on the way, for " + opener.name() + " and " + on,
                        " open differently: shut they are ",
                        Say.mm(shut),
                        " apart. No depth of jaw helps: set the striker on what the catch is to hold "
                            + opener.name()
                            + " to, which is not "
                            + on
                            + ", or do not drive both together.")
                    : Words.of(
                        ". Make it ",
                        Words.atLeast(-figures.margin()),
                        " deeper, guide it closer, or bring jaw and striker in line."));
    Finding f =
        Finding.held(
                CATCH,
                about,
                at > 0 ? Optional.of(condition) : Optional.empty(),
                figures,
                List.of(Sources.of(layout, Demands.Key.ENGAGEMENT), PLAY),
                text)
            .at(opener.motion().at(at).apply(places.pin(held.jaw())));
    f = at > 0 ? f.openBy(at) : f;
    boolean loose = f.verdict() == Verdict.PASS && held.spring().isEmpty();
    return loose ? f.withVerdict(Verdict.CAUTION) : f;
  }

  /** How far the jaw goes for each mm that the hand does as it opens. */
  private double lever(Opener opener, Catch held) {
    MotionRate rate = opener.motion().rate(0);
    return rate.of(places.pin(held.jaw())).length() / rate.of(opener.grip()).length();
  }

  /** How far jaw and striker are apart with both sections opened as far. */
  private double apart(Opener opener, Catch held, SectionMotion other, double opening) {
    PointMm jaw = opener.motion().at(opening).apply(places.pin(held.jaw()));
    return jaw.distance(other.at(opening).apply(places.pin(held.striker())));
  }

  private double heldBy(String section) {
    return layout.sections().get(section).opens().holds().map(places::value).orElse(1.0);
  }

  /** How the section moves that the striker is on, if the same drive moves both. */
  private Optional<SectionMotion> together(Opener opener, String on) {
    if (!layout.drivenWith(opener.name()).contains(on)) {
      return Optional.empty();
    }
    try {
      return Optional.of(Sections.motion(layout.sections().get(on), places));
    } catch (OutOfRange e) {
      return Optional.empty(); // that it cannot open is said already
    }
  }

  private Optional<Finding> release(Opener opener, Catch held, About about) {
    if (held.pull().isEmpty() || lever(opener, held) < LEAST_LEVER) {
      return Optional.empty();
    }
    double way = opener.motion().rate(0).of(places.pin(held.jaw())).length();
    double pushes =
        Math.max(
            0,
            Math.max(
                opener.forces().opening(0, GasLaw.HOT),
                opener.forces().opening(0, GasLaw.COLD_AND_WORN)));
    double load = pushes / way / opener.opens().catches().size();
    double spring = held.spring().map(places::value).orElse(0.0);
    double needed = spring + FRICTION * load;
    double pull = places.value(held.pull().get());
    Words text =
        Words.of(
            "To let go of section " + opener.name() + ", the catch at " + held.jaw() + " needs ",
            Say.newton(needed),
            " (",
            Say.newton(spring),
            " of its spring, the rest friction under ",
            Say.newton(load),
            "); it is pulled with ",
            Say.newton(pull),
            pull >= needed ? "." : ". Pull harder, by a longer lever, or take a weaker spring.");
    return Optional.of(
        Finding.held(
                RELEASE,
                about,
                Optional.empty(),
                Figures.atLeast(pull, needed, FigureUnit.NEWTON),
                List.of(
                    Basis.model("statics with gas springs hot, or cold and worn if worse"), PULL),
                text)
            .at(places.pin(held.jaw())));
  }
}
