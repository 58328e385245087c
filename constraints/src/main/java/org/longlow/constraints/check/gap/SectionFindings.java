package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.gap.Fouling;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.Sweep;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Sections;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What a section meets on its way from shut to open: parts that stay, and people seated. */
public final class SectionFindings {

  /** What would clear the way: to seek it takes a hundred times as long as the finding. */
  public enum Ways {
    SOUGHT,
    NOT_SOUGHT
  }

  /** Judgement: what meets more than this is opened another way, not mended piece by piece. */
  private static final int MOST_MENDED = 8;

  /** What opens by less than this does not, mm. */
  private static final double LEAST_WAY_MM = 1;

  /** Judgement: what meets as much as this, or is so deep in anything, may turn the wrong way. */
  private static final int MANY = 3;

  private final Layout layout;
  private final GapRules rules;
  private final GapFindings parts;
  private final Places places;
  private final JointFindings joints;
  private final List<PersonBody> people;
  private final Ways ways;

  public SectionFindings(
      Layout layout,
      GapRules rules,
      GapFindings parts,
      JointFindings joints,
      Places places,
      List<PersonBody> people,
      Ways ways) {
    this.joints = joints;
    this.layout = layout;
    this.rules = rules;
    this.parts = parts;
    this.places = places;
    this.people = people;
    this.ways = ways;
  }

  public List<Finding> all() {
    List<Finding> findings = new ArrayList<>();
    Map<String, Finding> ranInto = new HashMap<>();
    layout.sections().forEach((name, section) -> sweep(name, section, findings, ranInto));
    findings.addAll(twice());
    return findings;
  }

  /** What two sections move, such as a hatch in a tail that tips: each is swept alone. */
  private List<Finding> twice() {
    Map<String, List<String>> moving = new LinkedHashMap<>();
    layout
        .sections()
        .forEach(
            (name, s) ->
                s.parts()
                    .forEach(p -> moving.computeIfAbsent(p, k -> new ArrayList<>()).add(name)));
    List<Finding> findings = new ArrayList<>();
    moving.forEach(
        (part, by) -> {
          if (by.size() > 1) {
            findings.add(
                Finding.note(
                    FoulingWords.OPEN,
                    About.parts(part).named(part, "twice"),
                    Verdict.CAUTION,
                    FoulingWords.HOW,
                    Words.of(
                        part
                            + " moves with the sections "
                            + String.join(", ", by)
                            + ". Each of them was looked at with the others shut: try in cardboard"
                            + " what they meet opened together.")));
          }
        });
    return findings;
  }

  /**
   * @param ranInto the worst that was found of an earlier section running into a later one that the
   *     same drive moves, by the later one's name
   */
  private void sweep(
      String name, Section section, List<Finding> findings, Map<String, Finding> ranInto) {
    SectionMotion motion;
    try {
      motion = Sections.motion(section, places);
    } catch (OutOfRange e) {
      findings.add(
          Finding.note(
                  FoulingWords.OPEN,
                  About.thing(name, name),
                  Verdict.FAIL,
                  Basis.model("plane linkage geometry"),
                  Words.of("Section " + name + " cannot open: " + e.getMessage() + "."))
              .in(Condition.open(name)));
      return;
    }
    if (isStill(section, motion)) {
      findings.add(
          Finding.note(
                  FoulingWords.OPEN,
                  About.thing(name, name),
                  Verdict.FAIL,
                  FoulingWords.HOW,
                  Words.of(
                      "Section " + name + " does not open: with its angle of ",
                      Say.deg(Math.toDegrees(places.value(section.angle()))),
                      " nothing of it moves by ",
                      Say.mm(LEAST_WAY_MM),
                      ". Give it the angle that it turns by, or take the section out."))
              .in(Condition.open(name)));
      return;
    }
    int before = findings.size();
    Map<String, SectionMotion> mates = Sections.drivenWith(name, layout, places);
    List<Passing> met =
        passings(name, section, motion, mates).stream().filter(w -> !w.clears().get()).toList();
    boolean seek = ways == Ways.SOUGHT && met.size() <= MOST_MENDED;
    for (Passing w : met) {
      Optional<Finding> foul = w.fouls().apply(seek ? Ways.SOUGHT : Ways.NOT_SOUGHT);
      foul.ifPresent(findings::add);
      foul.ifPresent(
          f ->
              w.driven()
                  .ifPresent(
                      mate ->
                          ranInto.merge(
                              mate, f, (a, b) -> a.verdict().compareTo(b.verdict()) <= 0 ? a : b)));
    }
    List<Finding> fouls = findings.subList(before, findings.size());
    boolean badly =
        fouls.size() >= MANY || fouls.stream().anyMatch(f -> f.value() < -Sweep.DEEP_MM);
    if (badly && ways == Ways.SOUGHT && opensClear(name, section, mates)) {
      fouls.replaceAll(f -> turnsWrong(f, name, section));
    }
    if (findings.size() == before) {
      Optional<Finding> into = Optional.ofNullable(ranInto.get(name));
      String says =
          into.map(f -> ", meets it on its way: see " + f.id() + ".")
              .orElse((mates.isEmpty() ? "" : ",") + " opens clear of everything on the machine.");
      Finding f =
          Finding.note(
                  FoulingWords.OPEN,
                  About.thing(name, name),
                  into.map(Finding::verdict).orElse(Verdict.PASS),
                  FoulingWords.HOW,
                  Words.of("Section " + name + FoulingWords.together(mates.keySet()) + says))
              .in(Condition.open(name));
      findings.add(into.isPresent() ? f : f.measured(Figures.only(0, FigureUnit.NONE)));
    }
  }

  /** Whether no point of it moves so far that it can be said to open. */
  private boolean isStill(Section section, SectionMotion motion) {
    SectionMotion.Swing all = motion.swing(0, 1);
    return section.parts().stream()
        .map(parts::drawn)
        .allMatch(p -> all.mostMm(p.reachMm(all.pole())) < LEAST_WAY_MM);
  }

  /**
   * One body of a section past one that stays, or that the same drive moves.
   *
   * @param driven the other's section, if the same drive moves it
   * @param clears whether it keeps the gap all the way
   * @param fouls how it does not, with or without what would clear it
   */
  private record Passing(
      Optional<String> driven, Supplier<Boolean> clears, Function<Ways, Optional<Finding>> fouls) {}

  /**
   * All that a section passes on its way; of two that one drive moves, the first passes the second.
   */
  private List<Passing> passings(
      String name, Section section, SectionMotion motion, Map<String, SectionMotion> mates) {
    Set<String> own = Set.copyOf(section.parts());
    SectionWay plain = new SectionWay(name, motion);
    Map<String, SectionWay> withMates = new HashMap<>();
    Set<String> looked = new HashSet<>(own);
    boolean later = false;
    for (String other : layout.sections().keySet()) {
      later |= other.equals(name);
      if (mates.containsKey(other)) {
        SectionWay way = new SectionWay(name, motion, Map.entry(other, mates.get(other)));
        for (String part : layout.sections().get(other).parts()) {
          if (later) {
            withMates.put(part, way);
          } else {
            looked.add(part);
          }
        }
      }
    }
    List<Passing> all = new ArrayList<>();
    for (Solid part : parts.drawn()) {
      if (!own.contains(part.name())) {
        continue;
      }
      for (Solid other : parts.drawn()) {
        if (!looked.contains(other.name()) && rules.mayNotTouch(part.name(), other.name())) {
          all.add(past(withMates.getOrDefault(other.name(), plain), part, other));
        }
      }
      if (rules.clearOfPeople(part.name())) {
        people.forEach(person -> past(plain, part, person).ifPresent(all::add));
      }
    }
    for (GapRules.Joint joint : rules.joints()) {
      if (own.contains(joint.a()) != own.contains(joint.b())) {
        String part = own.contains(joint.a()) ? joint.a() : joint.b();
        String other = part.equals(joint.a()) ? joint.b() : joint.a();
        if (!looked.contains(other)) {
          all.add(joined(withMates.getOrDefault(other, plain), joint, part, other));
        }
      }
    }
    return all;
  }

  /** Whether a section clears everything when it turns the other way. */
  private boolean opensClear(String name, Section section, Map<String, SectionMotion> mates) {
    try {
      SectionMotion back = Sections.motion(section, -places.value(section.angle()), places);
      return passings(name, section, back, mates).stream().allMatch(w -> w.clears().get());
    } catch (OutOfRange e) {
      return false; // its linkage cannot go there
    }
  }

  private Finding turnsWrong(Finding f, String name, Section section) {
    double angle = Math.toDegrees(places.value(section.angle()));
    return f.withText(
        Words.of(
            "Section " + name + " seems to open the wrong way: with an angle of ",
            Say.deg(-angle),
            " instead of ",
            Say.deg(angle),
            " it opens clear of everything. ",
            f.words()));
  }

  /** One part of the section on its way past another part. */
  private Passing past(SectionWay way, Solid part, Solid other) {
    Demands.Key demand = rules.demand(part.name(), other.name());
    double limit = rules.limitMm(part.name(), other.name(), demand);
    double curves = CurveCare.mm(layout, part.name(), other.name());
    return new Passing(
        way.mate().map(Map.Entry::getKey),
        () -> way.clears(part, other, limit + curves),
        sought ->
            Fouling.of(way.motion(), part, other, limit + curves, remedies(part, other, sought))
                .map(
                    fouling ->
                        way.finding(
                            About.parts(part.name(), other.name()),
                            fouling,
                            limit,
                            rules.source(part.name(), other.name(), demand),
                            Words.of(
                                Advice.ways(part.name(), other.name(), moved(part, other), fouling),
                                ", or list it under touches if they are meant to meet")))
                .map(f -> CurveCare.held(f, curves)));
  }

  private boolean atWheel(Solid body) {
    return layout.parts().get(body.name()).traits().duty().atWheel();
  }

  private boolean cutToFit(Solid body) {
    return layout.parts().get(body.name()).traits().make().cutToFit();
  }

  /** Which of the two is shifted, if one is. */
  private String moved(Solid part, Solid other) {
    return atWheel(other) ? part.name() : other.name();
  }

  private List<Fouling.Remedy> remedies(Solid part, Solid other, Ways sought) {
    if (sought == Ways.NOT_SOUGHT) {
      return List.of();
    }
    List<Fouling.Remedy> remedies = new ArrayList<>();
    remedies.add(atWheel(other) ? Fouling.Remedy.SHIFT_PART : Fouling.Remedy.SHIFT_OTHER);
    if (cutToFit(part)) {
      remedies.add(Fouling.Remedy.CUT_PART);
    }
    if (cutToFit(other)) {
      remedies.add(Fouling.Remedy.CUT_OTHER);
    }
    return remedies;
  }

  /** One part of the section that shares pins with one that stays, beyond their joint. */
  private Passing joined(SectionWay way, GapRules.Joint joint, String part, String other) {
    List<PointMm> pins = joint.pins().stream().map(places::pin).toList();
    double reach = joints.reachMm(layout.parts().get(joint.a()), layout.parts().get(joint.b()));
    Solid a = parts.drawn(part).beyond(pins, reach);
    Solid b = parts.drawn(other).beyond(pins, reach);
    return new Passing(
        way.mate().map(Map.Entry::getKey),
        // what is so when shut is the joint's own finding
        () -> a.overlaps(b) || Double.isNaN(way.sweep().firstBelow(a, b, 0)),
        sought ->
            Fouling.of(way.motion(), a, b, 0, List.of())
                .map(
                    fouling ->
                        way.finding(
                            About.parts(part, other)
                                .said("beyond their joint " + part + " and " + other),
                            fouling,
                            0,
                            JointFindings.JOINT,
                            Words.of("change their shape there"))));
  }

  /** One part of the section on its way past somebody seated; nobody sits on what opens. */
  private Optional<Passing> past(SectionWay way, Solid part, PersonBody seated) {
    Sitting sitting = seated.sitting();
    Part opening = layout.parts().get(part.name());
    if (!rules.clear(opening, sitting).without().isEmpty()) {
      return Optional.empty();
    }
    Solid person = seated.clearOf(opening, rules);
    Demands.Key demand = rules.demandOfPeople(part.name());
    double limit = rules.limitMm(part.name(), sitting);
    double curves = CurveCare.mm(layout, part.name());
    List<Fouling.Remedy> remedies = new ArrayList<>(List.of(Fouling.Remedy.SHIFT_PART));
    if (cutToFit(part)) {
      remedies.add(Fouling.Remedy.CUT_PART);
    }
    String who = sitting.occupant().words();
    return Optional.of(
        new Passing(
            Optional.empty(),
            () -> way.clears(part, person, limit + curves),
            sought ->
                Fouling.of(
                        way.motion(),
                        part,
                        person,
                        limit + curves,
                        sought == Ways.SOUGHT ? remedies : List.of())
                    .map(
                        fouling ->
                            way.finding(
                                About.beside(part.name(), sitting.occupant()),
                                fouling,
                                limit,
                                rules.source(part.name(), GapRules.RIDER, demand),
                                Advice.ways(part.name(), who, part.name(), fouling)))
                    .map(f -> CurveCare.held(f, curves))));
  }
}
