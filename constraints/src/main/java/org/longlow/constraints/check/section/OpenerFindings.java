package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.person.UnjudgedFindings;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Opens;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.words.Words;

/** Findings on sections of which it is said how they are opened and held. */
public final class OpenerFindings {

  private OpenerFindings() {}

  public static List<Finding> of(
      Layout layout, Places places, Map<String, PartShape> shapes, List<Standing> standings) {
    Optional<Ground> ground = ground(standings);
    HoldFindings holds = new HoldFindings(layout, places);
    CatchFindings catches = new CatchFindings(layout, places);
    List<Finding> findings = new ArrayList<>();
    unsaid(layout).ifPresent(findings::add);
    for (String name : layout.sections().keySet()) {
      findings.addAll(LeftBehindFindings.of(name, layout, places));
      if (layout.sections().get(name).opens().equals(Opens.UNSAID)) {
        continue;
      }
      Optional<Opener> opener = Opener.of(name, layout, places, shapes, ground);
      if (opener.isEmpty()) {
        findings.add(
            untold(
                name,
                layout.sections().get(name),
                "Section "
                    + name
                    + " does not move: what a hand needs, and what its gas springs, counterweights"
                    + " and catches do, can only be told once it opens."));
        continue;
      }
      Opener o = opener.get();
      List<Finding> caught = catches.of(o);
      List<Finding> struts = StrutFindings.of(o, o.held(places), layout);
      findings.addAll(holds.of(o, struts, caught));
      findings.addAll(struts);
      findings.addAll(caught);
    }
    return findings;
  }

  /** What is not judged of sections, since the layout is silent on it: one line in all. */
  private static Optional<Finding> unsaid(Layout layout) {
    List<String> silent =
        layout.sections().keySet().stream()
            .filter(name -> layout.sections().get(name).opens().equals(Opens.UNSAID))
            .toList();
    return silent.isEmpty()
        ? Optional.empty()
        : Optional.of(
            Finding.note(
                UnjudgedFindings.UNJUDGED,
                About.thing("what is not judged of sections", "sections"),
                Verdict.NOT_APPLICABLE,
                Basis.model("this layout"),
                Words.of(
                    "By what it is opened and held is not said of "
                        + String.join(", ", silent)
                        + ", so what a hand needs for it, whether it stays open and whether it"
                        + " stays shut are not judged: give each its grip, and the gas springs,"
                        + " counterweights and catches that it has.")));
  }

  private static Optional<Ground> ground(List<Standing> standings) {
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.UNLADEN)
        .map(Standing::ground)
        .findFirst();
  }

  /**
   * Returns what a hand needs with all help dead, for each section that is said to be a way out.
   */
  public static List<Finding> wayOuts(
      Layout layout, Places places, Map<String, PartShape> shapes, List<Standing> standings) {
    HoldFindings holds = new HoldFindings(layout, places);
    return layout.sections().entrySet().stream()
        .filter(s -> s.getValue().opens().wayOut())
        .flatMap(s -> Opener.of(s.getKey(), layout, places, shapes, ground(standings)).stream())
        .map(holds::wayOut)
        .toList();
  }

  /** Why nothing is said of what opens a section and holds it. */
  private static Finding untold(String name, Section section, String why) {
    return Finding.note(
            HoldFindings.HAND_FORCE,
            new About(name, section.parts(), Optional.empty(), List.of(name)),
            Verdict.NOT_APPLICABLE,
            Basis.model("how far its parts move"),
            Words.of(why))
        .in(Condition.open(name));
  }
}
