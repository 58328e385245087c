package org.longlow.sketcher.desk;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.app.ListSet;
import org.longlow.sketcher.app.PartPaper;
import org.longlow.sketcher.app.Ready;
import org.longlow.sketcher.app.StepWatch;
import org.longlow.sketcher.app.TemplateSet;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.PrintCorrection;
import org.longlow.svg.page.TemplateSettings;

/**
 * Works out what a choice gives on paper. The templates of a machine are remembered, so that
 * ticking a part does not draw them anew. Confined to one thread.
 */
final class PaperPress {

  private Study drawn;
  private TemplateSet all;

  /**
   * What a choice gives.
   *
   * @param ready what can be written
   * @param sheets what paper each part takes, ticked or not; empty where that was not asked
   */
  record Printed(Ready ready, Map<String, PartPaper> sheets) {}

  /**
   * Works it out; empty if {@code watch} stopped it.
   *
   * @throws IllegalArgumentException with what is wrong and allowed, in words for people
   */
  Optional<Printed> print(
      Study study, PaperChoice choice, Printers printers, LocalDate date, StepWatch watch) {
    PrintCorrection correction = printers.of(choice.printer()).orElse(PrintCorrection.NONE);
    return switch (choice.kind()) {
      case TEMPLATES -> {
        TemplateSettings settings =
            TemplateSettings.on(templatePaper(choice.paper())).withCorrection(correction);
        yield templates(study, choice.ticked(), settings, watch);
      }
      case DRAWING ->
          Optional.of(
              new Printed(
                  Ready.Drawing.of(
                          study,
                          choice.options(),
                          choice.views(),
                          choice.scale(),
                          paper(choice.wall()),
                          date.toString(),
                          choice.svg())
                      .in(choice.ink()),
                  Map.of()));
      case REPORT -> Optional.of(new Printed(Ready.Report.of(study, choice.options()), Map.of()));
      case LISTS ->
          Optional.of(new Printed(Ready.Lists.of(study, listPaper(choice.paper())), Map.of()));
      case PRINTER ->
          Optional.of(
              new Printed(
                  Ready.Calibration.of(templatePaper(choice.paper()), correction), Map.of()));
    };
  }

  private Optional<Printed> templates(
      Study study, Set<String> ticked, TemplateSettings settings, StepWatch watch) {
    if (study != drawn || !all.settings().equals(settings)) {
      Optional<TemplateSet> every;
      try {
        every = TemplateSet.of(study, Set.of(), settings, watch);
      } catch (OutOfRange e) {
        return some(study, ticked, settings, watch, e);
      }
      if (every.isEmpty()) {
        return Optional.empty();
      }
      drawn = study;
      all = every.get();
    }
    // a plain piece is on paper where it is ticked alone
    if (ticked.size() == 1 && all.plain().stream().anyMatch(d -> ticked.contains(d.part()))) {
      return TemplateSet.of(study, ticked, settings, watch)
          .map(set -> new Printed(new Ready.Templates(set), all.paperOfParts()));
    }
    return Optional.of(new Printed(new Ready.Templates(all.only(ticked)), all.paperOfParts()));
  }

  /** All of them would be too many sheets; those that are ticked may not. */
  private static Optional<Printed> some(
      Study study, Set<String> ticked, TemplateSettings settings, StepWatch watch, OutOfRange why) {
    if (ticked.isEmpty()) {
      throw why;
    }
    return TemplateSet.of(study, ticked, settings, watch)
        .map(set -> new Printed(new Ready.Templates(set), set.paperOfParts()));
  }

  private static Paper paper(String text) {
    return Paper.parse(text);
  }

  private static Paper templatePaper(String text) {
    Paper paper = paper(text);
    TemplateSettings.refusal(paper)
        .ifPresent(
            why -> {
              throw new OutOfRange(why);
            });
    return paper;
  }

  /** Lists are read at the bench: on a roll or a small sheet they would be in pieces. */
  private static Paper listPaper(String text) {
    Paper paper = paper(text);
    ListSet.refusal(paper)
        .ifPresent(
            why -> {
              throw new OutOfRange(why);
            });
    return paper;
  }
}
