package org.longlow.sketcher.shop;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.section.LineSaid;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.GasSpring;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Shock;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Names;
import org.longlow.constraints.words.Said;

/**
 * What a machine needs that is no part of its own: lines, shocks, gas springs, covers, and the tube
 * of a front with links.
 *
 * @param what in words
 * @param size likewise
 * @param count how many
 * @param note what it is for, may be empty
 */
record Sundries(String what, String size, int count, String note) {

  /** Returns all of a machine, line by line. */
  static List<Sundries> of(Study study) {
    SizeWords sizes = new SizeWords(study.layout().units());
    Places places = study.placed().places();
    List<Sundries> all = new ArrayList<>();
    study.layout().lines().forEach((name, line) -> all.add(line(name, line, study, sizes)));
    study.layout().parts(FrontPart.class).forEach(front -> tube(front, places, sizes, all));
    study
        .layout()
        .parts(SwingarmPart.class)
        .filter(arm -> !isPart(study, arm.shock()))
        .forEach(arm -> shock(arm, places, sizes, all));
    study
        .layout()
        .sections()
        .forEach(
            (name, section) ->
                section
                    .opens()
                    .gasSprings()
                    .forEach(spring -> all.add(spring(name, spring, study, sizes))));
    study.layout().parts(CushionPart.class).forEach(c -> all.add(cover(c, study, sizes)));
    return all;
  }

  private static Sundries line(String name, Line line, Study study, SizeWords sizes) {
    Places places = study.placed().places();
    String length =
        line.length()
            .map(cut -> sizes.mm(places.value(cut)) + " long")
            .orElseGet(
                () ->
                    "longer than "
                        + sizes.mm(
                            study.findings().stream()
                                .filter(f -> f.kind().equals(LineSaid.LINE))
                                .filter(f -> f.about().words().equals(name))
                                .mapToDouble(Finding::value)
                                .findFirst()
                                .orElseThrow())
                        + ", its longest way");
    return new Sundries(
        Said.with(name, Names.word(line.kind())),
        length + ", Ø" + sizes.mm(places.value(line.diameter())),
        1,
        line.note());
  }

  /** Legs and links are two each, by the lengths between their holes. */
  private static void tube(
      FrontPart front, Places places, SizeWords sizes, Collection<Sundries> to) {
    front
        .pivot()
        .ifPresent(
            pivot -> {
              String section = "Ø" + sizes.mm(places.value(front.tube())) + " or plates as broad, ";
              String between = " between holes";
              double leg = places.pin(front.bottom()).distance(places.pin(pivot));
              double link = places.pin(pivot).distance(places.pin(front.axle()));
              to.add(
                  new Sundries(
                      front.name() + ", leg", section + sizes.mm(leg) + between, 2, front.name()));
              to.add(
                  new Sundries(
                      front.name() + ", link",
                      section + sizes.mm(link) + between,
                      2,
                      front.name()));
            });
  }

  /** Whether a shock is drawn as a tube that is bought. */
  private static boolean isPart(Study study, Shock shock) {
    List<String> between = shock.bodies().getOrDefault("the shock", List.of());
    return study
        .layout()
        .parts(TubePart.class)
        .filter(TubePart::bought)
        .anyMatch(t -> !between.isEmpty() && t.pins().containsAll(between));
  }

  private static void shock(
      SwingarmPart arm, Places places, SizeWords sizes, Collection<Sundries> to) {
    Shock shock = arm.shock();
    shock
        .foot()
        .flatMap(foot -> shock.top().map(top -> places.pin(foot).distance(places.pin(top))))
        .ifPresent(
            eyes ->
                to.add(
                    new Sundries(
                        "shock",
                        sizes.mm(eyes)
                            + " between eyes as drawn, stroke "
                            + shock.stroke().map(s -> sizes.mm(places.value(s))).orElse("not said"),
                        1,
                        arm.name())));
  }

  private static Sundries spring(String section, GasSpring spring, Study study, SizeWords sizes) {
    Places places = study.placed().places();
    return new Sundries(
        "gas spring",
        sizes.mm(places.value(spring.length()))
            + " long, stroke "
            + sizes.mm(places.value(spring.stroke()))
            + ", "
            + sizes.newtons(places.value(spring.force())),
        spring.count(),
        section);
  }

  /** Over the foam and down all four sides of foam and board. */
  private static Sundries cover(CushionPart cushion, Study study, SizeWords sizes) {
    Places places = study.placed().places();
    FlatCut board = Cuts.board(study, cushion);
    double side =
        places.value(cushion.board())
            + cushion.layers().stream().mapToDouble(l -> places.value(l.thickness())).sum();
    return new Sundries(
        "cover cloth",
        sizes.flat(board.longMm() + 2 * side, board.wideMm() + 2 * side)
            + " and what is turned under",
        board.pieces(),
        cushion.name());
  }
}
