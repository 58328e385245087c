package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
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
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Pressed;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Gaps between parts, in the stance in which each pair is closest. */
public final class GapFindings {

  /** A gap between two parts, or a part and somebody. */
  public static final FindingKind GAP = new FindingKind("gap", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** Pairs farther apart than this are clear and not listed one by one, mm. */
  static final double HORIZON_MM = 40;

  /** Two curved bodies may be nearer by no more than this than they are found, mm. */
  private static final double CURVES_MM = 1;

  /** Beyond what is asked, so that figures in tenths of mm hold what they say, mm. */
  static final double EASE_MM = 0.001;

  private final Layout layout;
  private final GapRules rules;
  private final Map<String, Solid> drawn = new LinkedHashMap<>();
  private final List<Solid> worked = new ArrayList<>();
  private final Map<Pair, Worst> worst = new LinkedHashMap<>();
  private final List<Map<String, PartShape>> stances = new ArrayList<>();

  /** Two parts, whichever comes first in the alphabet first. */
  private record Pair(String a, String b) {
    public static Pair of(String a, String b) {
      return a.compareTo(b) <= 0 ? new Pair(a, b) : new Pair(b, a);
    }

    @Override
    public int hashCode() {
      return 31 * a.hashCode() + b.hashCode();
    }

    @Override
    public boolean equals(Object other) {
      return other instanceof Pair p && p.a.equals(a) && p.b.equals(b);
    }
  }

  /** The smallest gap of two parts, the stance that it is in, and whether a pedal is worked. */
  private record Worst(Gap gap, Optional<Condition> stance, boolean worked) {}

  public GapFindings(Layout layout, GapRules rules, Map<String, PartShape> shapes) {
    this.layout = layout;
    this.rules = rules;
    shapes.forEach((name, shape) -> drawn.put(name, Solid.of(shape)));
    worked.addAll(worked(shapes.values(), rules.places()));
  }

  private GapFindings(GapFindings other, Map<String, PartShape> instead) {
    layout = other.layout;
    rules = other.rules;
    drawn.putAll(other.drawn);
    worked.addAll(other.worked);
    instead.forEach((name, shape) -> drawn.put(name, new Solid(name, shape.prisms())));
  }

  /** Returns nothing found yet, of the same machine with some parts elsewhere. */
  public GapFindings with(Map<String, PartShape> instead) {
    return new GapFindings(this, instead);
  }

  /** Returns the bodies of all parts as drawn, with their indexes. */
  public List<Solid> drawn() {
    return List.copyOf(drawn.values());
  }

  /** Returns the body of a part as drawn. */
  public Solid drawn(String part) {
    return drawn.get(part);
  }

  private static List<Solid> worked(Collection<PartShape> shapes, Places places) {
    return bodies(Pressed.of(shapes, places).stream().map(Pressed::shape).toList());
  }

  /** Returns the places of a part on its way, if that is a pedal. */
  List<Solid> worked(String part) {
    return worked.stream().filter(s -> s.name().equals(part)).toList();
  }

  public List<Finding> of(List<Standing> standings, Progress progress) {
    double horizonMm = rules.largestMm(HORIZON_MM) + CURVES_MM;
    keepWorst(Optional.empty(), false, Gaps.among(drawn(), horizonMm, this::cut));
    keepWorst(Optional.empty(), true, Gaps.between(worked, drawn(), horizonMm, this::cut));
    int done = 0;
    for (Standing standing : standings) {
      progress.at("gaps between parts, stance by stance", done++, standings.size());
      if (standing.kind() == Stance.Kind.OPEN) {
        continue; // swept from shut to open by SectionFindings
      }
      // bodies with their indexes are large, so none is kept for the next stance
      List<Solid> moved = bodies(standing.moved().values());
      stances.add(standing.moved());
      List<Solid> still = new ArrayList<>(drawn.values());
      still.removeIf(b -> standing.moved().containsKey(b.name()));
      Optional<Condition> stance = Optional.of(standing.condition());
      keepWorst(stance, false, Gaps.between(moved, still, horizonMm, this::cut));
      keepWorst(stance, false, Gaps.among(moved, horizonMm, this::cut));
      List<Solid> stay =
          worked.stream().filter(s -> !standing.moved().containsKey(s.name())).toList();
      List<Solid> go = worked(standing.moved().values(), standing.places());
      keepWorst(stance, true, Gaps.between(stay, moved, horizonMm, this::cut));
      keepWorst(stance, true, Gaps.between(go, still, horizonMm, this::cut));
      keepWorst(stance, true, Gaps.between(go, moved, horizonMm, this::cut));
    }
    List<Finding> findings = new ArrayList<>();
    worst.forEach((key, gap) -> findings.add(finding(key, gap)));
    // where some are too close, each of them says so itself and is counted once
    if (findings.stream().noneMatch(f -> f.verdict() == Verdict.FAIL)) {
      findings.add(summary(findings.size()));
    }
    return findings;
  }

  /** Only gaps smaller than the smallest known so far matter. */
  private double cut(Solid a, Solid b) {
    if (!rules.mayNotTouch(a.name(), b.name())) {
      return Gaps.Cut.NEVER;
    }
    Worst known = worst.get(Pair.of(a.name(), b.name()));
    if (known != null) {
      // what is round is known to a millionth
      return known.gap.gapMm() - 1e-5;
    }
    // what is asked beyond the horizon is looked for as far
    Demands.Key demand = rules.demand(a.name(), b.name());
    return Math.max(
        HORIZON_MM,
        rules.limitMm(a.name(), b.name(), demand) + CurveCare.mm(layout, a.name(), b.name()));
  }

  static List<Solid> bodies(Collection<PartShape> shapes) {
    List<Solid> bodies = new ArrayList<>(shapes.size());
    shapes.forEach(s -> bodies.add(Solid.of(s)));
    return bodies;
  }

  private void keepWorst(Optional<Condition> stance, boolean pressed, List<Gap> gaps) {
    for (Gap gap : gaps) {
      worst.merge(
          Pair.of(gap.first(), gap.second()),
          new Worst(gap, stance, pressed),
          (a, b) -> b.gap.gapMm() < a.gap.gapMm() ? b : a);
    }
  }

  private Finding finding(Pair pair, Worst least) {
    Demands.Key demand = rules.demand(pair.a(), pair.b());
    double limit = rules.limitMm(pair.a(), pair.b(), demand);
    Gap gap = least.gap;
    String pedal = worked(pair.a()).isEmpty() ? pair.b() : pair.a();
    Finding f =
        Finding.held(
                GAP,
                About.parts(pair.a(), pair.b()),
                least.stance,
                Figures.atLeast(gap.gapMm(), limit, FigureUnit.MM),
                List.of(rules.source(pair.a(), pair.b(), demand)),
                Words.of(
                    least.worked ? "With " + pedal + " worked as far as it goes, " : "",
                    words(
                        pair.a(),
                        pair.b(),
                        gap.gapMm(),
                        limit,
                        () ->
                            Words.of(
                                advice(pair, limit),
                                least.worked ? "; or give it less travel" : ""))))
            .at(gap.where());
    return CurveCare.held(f, CurveCare.mm(layout, pair.a(), pair.b()));
  }

  private Words advice(Pair pair, double limitMm) {
    String moved = movesFirst(pair) ? pair.a() : pair.b();
    String still = movesFirst(pair) ? pair.b() : pair.a();
    Clearing clearing = clearing(still, moved, limitMm);
    return Words.of(
        Advice.move(moved, clearing),
        AfterMove.said(Advice.moves(clearing), m -> made(moved, m.by()), "; but ", ""),
        (rules.saidToTouch(pair.a(), pair.b())
            ? "; or drop the limit, since they are said to touch"
            : rules.demand(pair.a(), pair.b()) == Demands.Key.HOT_GAP
                ? "; or put a limit of your own on the gap if something shields it"
                : "; or list it under touches if they are meant to meet"));
  }

  /** Everything that the two bodies must be clear in, the second to be moved. */
  private Clearing clearing(String still, String moved, double limitMm) {
    return new Clearing(
        positions(still, moved), limitMm + CurveCare.mm(layout, still, moved) + EASE_MM);
  }

  private List<Clearing.Position> positions(String still, String moved) {
    Solid body = drawn.get(moved);
    List<Clearing.Position> positions = new ArrayList<>();
    positions.add(new Clearing.Position(drawn.get(still), body));
    for (Map<String, PartShape> stance : stances) {
      if (!stance.containsKey(still) && !stance.containsKey(moved)) {
        continue;
      }
      Solid there = in(stance, moved);
      // a shift of what turns in a stance turns with it
      RigidMotion back = new RigidMotion(-body.turnRad(there), PointMm.ORIGIN);
      positions.add(new Clearing.Position(in(stance, still).moved(back), there.moved(back)));
    }
    // a pedal is moved with its pivot
    worked(moved).forEach(there -> positions.add(new Clearing.Position(drawn.get(still), there)));
    worked(still).forEach(there -> positions.add(new Clearing.Position(there, body)));
    return positions;
  }

  /**
   * Returns the least gap to another part that is too small, and smaller than now, once a part is
   * moved so as drawn, in any stance.
   */
  Optional<AfterMove.Made> made(String part, UnaryOperator<Solid> move) {
    List<AfterMove.Made> made = new ArrayList<>();
    for (String other : drawn.keySet()) {
      if (!other.equals(part) && rules.mayNotTouch(part, other)) {
        double limit = rules.limitMm(part, other, rules.demand(part, other));
        for (Clearing.Position p : positions(other, part)) {
          AfterMove.made(p, move, limit).ifPresent(made::add);
        }
      }
    }
    return AfterMove.worst(made);
  }

  GapRules rules() {
    return rules;
  }

  private Solid in(Map<String, PartShape> stance, String part) {
    return stance.containsKey(part) ? Solid.of(stance.get(part)) : drawn.get(part);
  }

  /** Returns what it takes to move a part as drawn away from a person seated as drawn. */
  Clearing clearingOf(String part, Solid person, double limitMm) {
    return clearingOf(part, List.of(drawn.get(part)), person, limitMm);
  }

  /** Returns what it takes to move a part away from a person, wherever it may be. */
  Clearing clearingOf(String part, List<Solid> places, Solid person, double limitMm) {
    List<Clearing.Position> positions = new ArrayList<>();
    for (Solid there : places) {
      // a shift of what turns turns with it
      RigidMotion back = new RigidMotion(-drawn.get(part).turnRad(there), PointMm.ORIGIN);
      positions.add(new Clearing.Position(person.moved(back), there.moved(back)));
    }
    return new Clearing(positions, limitMm + CurveCare.mm(layout, part) + EASE_MM);
  }

  /** Of two parts the one to move: not what carries a wheel, rather what no stance moves. */
  private boolean movesFirst(Pair pair) {
    Part a = layout.parts().get(pair.a());
    Part b = layout.parts().get(pair.b());
    if (a.traits().duty().atWheel() != b.traits().duty().atWheel()) {
      return b.traits().duty().atWheel();
    }
    boolean stays = stances.stream().noneMatch(s -> s.containsKey(pair.a()));
    return stays && stances.stream().anyMatch(s -> s.containsKey(pair.b()));
  }

  /**
   * Says how two things stand to each other.
   *
   * @param advice what keeps them apart; not asked for where they are
   */
  static Words words(String a, String b, double gapMm, double limitMm, Supplier<Words> advice) {
    String both = a + " and " + b;
    if (gapMm >= limitMm) {
      return Words.of(
          both + " are ", Say.mm(gapMm), " apart; ", Words.atLeast(limitMm), " are asked.");
    }
    Words state =
        gapMm < 0
            ? Words.of(both + " run into each other by ", Say.mm(-gapMm), "; ")
            : gapMm == 0
                ? Words.of(both + " touch; ")
                : Words.of(both + " are ", Say.mm(gapMm), " apart; ");
    return Words.of(
        state, Words.atLeast(limitMm), " are asked between them: ", Words.later(advice), ".");
  }

  private Finding summary(int near) {
    int n = layout.parts().size();
    return Finding.note(
        GAP,
        About.thing("all parts"),
        Verdict.PASS,
        Basis.model("distance of bodies in side view and across the machine"),
        Say.format(
            "%d pairs of parts looked at in every stance; %d come within %s, none of them too"
                + " close.",
            n * (n - 1) / 2, near, Say.mm(HORIZON_MM)));
  }
}
