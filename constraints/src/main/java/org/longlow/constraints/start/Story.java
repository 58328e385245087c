package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.start.Answers.Box;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.rider.words.Words;

/**
 * What is said of a machine in words: its name and title, notes, and what is left to its builder.
 */
final class Story {

  /** From here on a back is so flat that necks and thighs bend more than is comfortable, deg. */
  private static final double FLAT_DEG = 40;

  private final Brief brief;
  private final Answers answers;
  private final String name;
  private final Units units;

  /**
   * @param name what it is called, if its builder has a name for it
   * @param units in which figures are said
   */
  Story(Brief brief, Answers answers, Optional<String> name, Units units) {
    this.brief = brief;
    this.answers = answers;
    this.name = name.orElseGet(this::kind);
    this.units = units;
  }

  String name() {
    return name;
  }

  /** Each place of the drive makes a machine of its own kind, with a name of its own. */
  private String kind() {
    return switch (brief.place()) {
      case BEFORE -> "plover";
      case UNDER -> "godwit";
      case BEHIND -> "whimbrel";
      case HUB -> "sanderling";
    };
  }

  String title() {
    String drive = brief.electric() ? "motor" : "engine";
    String where =
        switch (brief.place()) {
          case BEFORE -> "under the knees";
          case UNDER -> "under the seat";
          case BEHIND -> "behind the seat";
          case HUB -> "in the rear hub";
        };
    String called = name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    return String.format(
        Locale.ROOT,
        "%s, a first machine for %s with the %s %s",
        called,
        brief.pillion() ? "two" : "one",
        drive,
        where);
  }

  List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "A first machine, to be changed: drag it, or change its measures. The wheelbase, the place"
            + " and height of the seat, its recline, and the reach to boards and grips are measures;"
            + " rails, lamps and guards follow.");
    notes.addAll(yours());
    return notes;
  }

  /** Returns what only whoever builds it can decide or measure. */
  List<String> yours() {
    List<String> yours = new ArrayList<>();
    Box box = brief.box();
    String drive = brief.electric() ? "motor" : "engine";
    if (answers.box().isEmpty() && answers.tracing().isPresent()) {
      yours.add(
          Words.format(
                  "That the %s is %s broad and weighs %s is a guess: measure and weigh yours.",
                  drive, Say.wholeMm(box.breadthMm()), wholeKg(box))
              .in(units));
    } else if (answers.box().isEmpty()) {
      yours.add(
          Words.format(
                  "The %s is a guess of %s x %s x %s and %s: measure and weigh yours.",
                  drive,
                  Words.bare(box.lengthMm(), FigureSort.WHOLE_LENGTH),
                  Words.bare(box.heightMm(), FigureSort.WHOLE_LENGTH),
                  Say.wholeMm(box.breadthMm()),
                  wholeKg(box))
              .in(units));
    }
    yours.add(
        "Masses of wheels, fork, cushions, "
            + (brief.electric() ? "battery" : "tank")
            + " and lamps are common ones: weigh yours.");
    yours.add(
        "Stops for the steering, its cables and hoses are not drawn: turn it to full lock with them in"
            + " place before you weld.");
    if (brief.reclineDeg() > FLAT_DEG) {
      yours.add(
          String.format(
              Locale.ROOT,
              "A back at %.0f degrees bends necks and hips more than is comfortable: try it in"
                  + " cardboard.",
              brief.reclineDeg()));
    }
    return yours;
  }

  private static Words wholeKg(Box box) {
    return Words.figure(box.massKg(), FigureSort.WHOLE_MASS);
  }
}
