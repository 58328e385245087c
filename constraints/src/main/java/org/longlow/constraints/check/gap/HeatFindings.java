package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
import org.longlow.constraints.gap.Clearing;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Gaps;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Traits.Heat;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.RoadPlane;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * What is nearer to something that burns than it may be with nothing between them. That it is not
 * nearer than it may be behind a shield, the gaps tell.
 */
public final class HeatFindings {

  /** Something near what burns. */
  public static final FindingKind HEAT =
      new FindingKind("heat", FindingGroup.GAPS, Rests.ON_DRAWING);

  /** With so many of the crew aboard how low it comes is known; there may be very many pairs. */
  private static final int ENOUGH = 8;

  private static final Basis AS_DRAWN = Basis.model("distance of bodies, machine as drawn");

  private final Layout layout;
  private final GapRules rules;
  private final GapFindings parts;
  private final Places places;
  private final List<Solid> lines;

  /**
   * Something near what burns.
   *
   * @param words what it is
   * @param body of it
   * @param low the layout's own limit of that gap, where it is less than is asked behind a shield
   */
  private record Near(String words, Solid body, Gap gap, About about, Optional<Low> low) {}

  /** Less than is asked behind a shield, mm. */
  private record Low(double ownMm, double shieldedMm) {}

  /**
   * @param lines bodies of cables, hoses and looms
   */
  public HeatFindings(
      Layout layout, GapRules rules, GapFindings parts, Places places, List<Solid> lines) {
    this.layout = layout;
    this.rules = rules;
    this.parts = parts;
    this.places = places;
    this.lines = lines;
  }

  public List<Finding> all(List<PersonBody> people, List<Standing> standings) {
    List<Finding> findings = new ArrayList<>();
    boolean any = false;
    for (Part part : layout.parts().values()) {
      boolean hot = part.base().hot();
      if (GapRules.burnsSkin(part)) {
        any = true;
        ofPeople(part, people, standings).ifPresent(findings::add);
      }
      if (hot) {
        List<Part> bears = suffering(part);
        of(
            part,
            bears.stream().filter(HeatFindings::isTank),
            Demands.Key.OPEN_HEAT_FUEL,
            standings,
            findings);
        of(
            part,
            bears.stream().filter(p -> isBattery(p) || p instanceof WheelPart),
            Demands.Key.OPEN_HEAT_WIRING,
            standings,
            findings);
        of(
            part,
            bears.stream().filter(p -> !isTank(p) && !isBattery(p) && !(p instanceof WheelPart)),
            Demands.Key.OPEN_HEAT_PANEL,
            standings,
            findings);
        ofLines(part, Demands.Key.OPEN_HEAT_FUEL_HOSE, standings, findings);
        ofLines(part, Demands.Key.OPEN_HEAT_WIRING, standings, findings);
      }
    }
    if (any && findings.isEmpty()) {
      findings.add(
          Finding.note(
              HEAT,
              About.thing("what burns"),
              Verdict.PASS,
              AS_DRAWN,
              Words.of(
                  "People, tanks, wiring, tyres, cowls and cushions keep their open distances from"
                      + " what burns.")));
    }
    return findings;
  }

  /**
   * Returns what burns and is nearer to somebody than they bear, by part: the verdicts of {@link
   * #all}, without figures and what would help, which take long.
   */
  public Map<String, Verdict> verdicts(PersonBody person) {
    double limit = open(Demands.Key.OPEN_HEAT_PEOPLE);
    return layout.parts().values().stream()
        .filter(part -> GapRules.burnsSkin(part) && isOpenToPeople(part))
        .filter(
            part -> person.clearOf(part, rules).apartMm(parts.drawn(part.name()), limit) < limit)
        .collect(Collectors.toMap(Part::name, part -> near(Demands.Key.OPEN_HEAT_PEOPLE)));
  }

  private boolean isOpenToPeople(Part hot) {
    return rules.clearOfPeople(hot.name())
        && !rules.isShielded(hot.name(), GapRules.RIDER, rules.demandOfPeople(hot.name()));
  }

  /** What is nearer than common practice has it needs care; what the layout itself asks holds. */
  private Verdict near(Demands.Key key) {
    return layout.demands().limits().containsKey(key) ? Verdict.FAIL : Verdict.CAUTION;
  }

  private Optional<Finding> ofPeople(Part part, List<PersonBody> people, List<Standing> standings) {
    return nearest(people(part, people))
        .map(n -> finding(part, n, Demands.Key.OPEN_HEAT_PEOPLE, standings))
        .map(f -> f.in(Standing.under(f.who().orElseThrow(), standings)));
  }

  private static boolean isTank(Part part) {
    return part instanceof SolidPart s && s.type() == SolidPart.Kind.TANK;
  }

  private static boolean isBattery(Part part) {
    return part instanceof SolidPart s && s.type() == SolidPart.Kind.BATTERY;
  }

  private List<Part> suffering(Part hot) {
    return layout.parts().values().stream()
        .filter(p -> p.traits().heat() == Heat.SUFFERS && !p.base().hot())
        .filter(p -> rules.mayNotTouch(hot.name(), p.name()))
        .filter(p -> !rules.isShielded(hot.name(), p.name(), rules.demand(hot.name(), p.name())))
        .toList();
  }

  private void of(
      Part hot,
      Stream<Part> suffering,
      Demands.Key key,
      List<Standing> standings,
      List<Finding> findings) {
    double limit = open(key);
    List<Near> near = new ArrayList<>();
    suffering.forEach(
        part -> {
          Solid body = parts.drawn(part.name());
          for (Gap gap : apart(hot, body, limit)) {
            About about = About.parts(hot.name(), part.name());
            Optional<Low> low = low(hot, part.name(), rules.demand(hot.name(), part.name()));
            near.add(new Near(part.name(), body, gap, about, low));
          }
        });
    nearest(near).ifPresent(n -> findings.add(finding(hot, n, key, standings)));
  }

  /** Of lines no gap behind a shield is told elsewhere: nearer than that they fail. */
  private void ofLines(
      Part hot, Demands.Key key, List<Standing> standings, List<Finding> findings) {
    List<Near> near = new ArrayList<>();
    for (Solid line : lines) {
      if (wiring(line) != key) {
        continue;
      }
      for (Gap gap : apart(hot, line, open(key))) {
        About about = About.parts(hot.name()).said(hot.name() + " and " + line.name());
        About named = about.named(hot.name(), line.name());
        near.add(new Near(line.name(), line, gap, named, Optional.empty()));
      }
    }
    double shielded = open(Demands.Key.HOT_GAP);
    nearest(near)
        .map(
            n -> {
              Finding f = finding(hot, n, key, standings);
              return n.gap().gapMm() < shielded ? f.withVerdict(Verdict.FAIL) : f;
            })
        .ifPresent(findings::add);
  }

  /** What is asked of a cable, hose or loom, nothing between. */
  private Demands.Key wiring(Solid line) {
    return layout.lines().get(line.name()).kind() == Line.Kind.FUEL_HOSE
        ? Demands.Key.OPEN_HEAT_FUEL_HOSE
        : Demands.Key.OPEN_HEAT_WIRING;
  }

  private double open(Demands.Key key) {
    return places.value(layout.demands().limit(key));
  }

  private List<Gap> apart(Part hot, Solid other, double limitMm) {
    return Gaps.between(
        List.of(parts.drawn(hot.name())), List.of(other), limitMm, (a, b) -> limitMm);
  }

  private List<Near> people(Part hot, List<PersonBody> people) {
    List<Near> near = new ArrayList<>();
    if (!isOpenToPeople(hot)) {
      return near;
    }
    Demands.Key shielded = rules.demandOfPeople(hot.name());
    double limit = open(Demands.Key.OPEN_HEAT_PEOPLE);
    for (PersonBody person : people) {
      About about = About.beside(hot.name(), person.sitting().occupant());
      Solid body = person.clearOf(hot, rules);
      for (Gap gap : apart(hot, body, limit)) {
        Optional<Low> low = low(hot, GapRules.RIDER, shielded);
        near.add(new Near(person.sitting().occupant().words(), body, gap, about, low));
      }
    }
    return near;
  }

  private Optional<Low> low(Part hot, String other, Demands.Key shielded) {
    return rules.ownMm(hot.name(), other).map(own -> new Low(own, open(shielded)));
  }

  private static Optional<Near> nearest(List<Near> near) {
    return near.stream().min(Comparator.comparingDouble(n -> n.gap().gapMm()));
  }

  /** What moves it; down no farther than the road lets it, and then it says what is left. */
  private Words move(Part hot, Clearing clearing, List<Standing> standings) {
    Optional<PointMm> shift = clearing.elevationInTenths();
    double down = -shift.map(PointMm::z).orElse(0.0);
    double low =
        standings.stream()
            .filter(s -> s.kind() == Stance.Kind.LADEN && s.shapes().containsKey(hot.name()))
            .limit(ENOUGH)
            .mapToDouble(
                s ->
                    RoadPlane.under(s.ground())
                        .lowest(s.shapes().get(hot.name()).prisms())
                        .heightMm())
            .min()
            .orElse(Double.POSITIVE_INFINITY);
    double least = places.value(layout.demands().limit(Demands.Key.GROUND_CLEARANCE));
    return down <= 0 || low - down >= least
        ? Words.of(": ", Advice.move(hot.name(), clearing), ", or ")
        : Words.of(
            ". Moved ",
            Say.way(shift.orElseThrow()),
            " " + hot.name() + " would be ",
            Say.mm(Math.max(0, low - down)),
            " over the road, where ",
            Words.atLeast(least),
            " are asked, so ");
  }

  private static Words shield(Low low) {
    return Words.of(
        ", and behind a shield ",
        Words.atLeast(low.shieldedMm()),
        " still, where this layout's own limit has ",
        Say.mm(low.ownMm()));
  }

  private Finding finding(Part hot, Near near, Demands.Key key, List<Standing> standings) {
    double limit = open(key);
    Figures figures = Figures.atLeast(near.gap().gapMm(), limit, FigureUnit.MM);
    Words text =
        Words.of(
            near.words() + " and " + hot.name(),
            figures.value() < 0
                ? Words.of(" run into each other by ", Say.mm(-figures.value()))
                : Words.of(" are ", Say.mm(figures.value()), " apart"),
            "; with nothing between them ",
            Words.atLeast(limit),
            " are asked",
            near.low().map(HeatFindings::shield).orElse(Words.NONE),
            figures.margin() < 0
                ? Words.later(
                    () -> move(hot, parts.clearingOf(hot.name(), near.body(), limit), standings))
                : Words.of(": "),
            (!hot.base().hot() ? "lead its warm air away, or " : "")
                + "put a shield with air behind it between them and"
                + (near.low().isPresent()
                    ? " raise the limit of that gap so far."
                    : " give the gap a limit of its own."));
    return new Finding(
            HEAT,
            near.about(),
            Optional.empty(),
            figures.margin() >= 0 ? Verdict.PASS : near(key),
            figures,
            List.of(Sources.of(layout, key), AS_DRAWN),
            text)
        .at(near.gap().where());
  }
}
