package org.longlow.constraints.check.section;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.gap.PersonBody;
import org.longlow.constraints.check.section.LineWays.Way;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.words.Words;

/**
 * How near one line comes to somebody seated, in all its states but those in which a section is
 * open. Of hands, forearms and feet it may come near: they work what it leads to.
 */
final class LinePeople {

  private static final Set<String> WORKING = Set.of("forearm", "foot");

  private final Layout layout;
  private final List<PersonBody> people;
  private final String name;
  private final double radiusMm;
  private final double askedMm;
  private final Map<PersonBody, Near> nearest = new LinkedHashMap<>();

  private record Near(Gap gap, Way way) {}

  LinePeople(Layout layout, List<PersonBody> people, Places drawn, String name, double radiusMm) {
    this.layout = layout;
    this.people = people;
    this.name = name;
    this.radiusMm = radiusMm;
    askedMm = drawn.value(layout.demands().limit(Demands.Key.PERSON_GAP));
  }

  /** Looks at one state. */
  void see(Way way) {
    if (way.condition().kind() == Stance.Kind.OPEN) {
      return;
    }
    Solid line = LineSaid.body(name, way.path(), radiusMm);
    for (PersonBody person : people) {
      Near known = nearest.get(person);
      Gap gap = line.to(person.without(WORKING), known == null ? askedMm : known.gap.gapMm());
      if (gap != null && gap.gapMm() < (known == null ? askedMm : known.gap.gapMm())) {
        nearest.put(person, new Near(gap, way));
      }
    }
  }

  /** Returns what is said of each to whom it is nearer than may be. */
  List<Finding> findings() {
    return nearest.entrySet().stream().map(e -> finding(e.getKey(), e.getValue())).toList();
  }

  private Finding finding(PersonBody person, Near near) {
    double mm = near.gap.gapMm();
    String who = person.sitting().person();
    return Finding.held(
            LineSaid.LINE,
            About.person(person.sitting().occupant(), name, name),
            Optional.of(near.way.condition()),
            Figures.atLeast(mm, askedMm, FigureUnit.MM),
            List.of(Sources.of(layout, Demands.Key.PERSON_GAP), LineSaid.HOW),
            Words.of(
                mm < 0
                    ? Words.of(name + " runs into " + who + " by ", Say.mm(-mm))
                    : Words.of(name + " comes to ", Say.mm(mm), " of " + who),
                LineSaid.state(near.way),
                "; ",
                Words.atLeast(askedMm),
                " are asked, but for hands, forearms and feet: lead it round them."))
        .at(near.gap.where());
  }
}
