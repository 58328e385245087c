package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.start.Answers.Box;

/**
 * What is said of a machine in words: its name and title, notes, and what is left to its builder.
 */
final class Story {

  /** From here on a back is so flat that necks and thighs bend more than is comfortable, deg. */
  private static final double FLAT_DEG = 40;

  private final Brief brief;
  private final Answers answers;
  private final String name;

  /**
   * @param name what it is called, if its builder has a name for it
   */
  Story(Brief brief, Answers answers, Optional<String> name) {
    this.brief = brief;
    this.answers = answers;
    this.name = name.orElseGet(this::kind);
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
          String.format(
              Locale.ROOT,
              "That the %s is %.0f mm broad and weighs %.0f kg is a guess: measure and weigh yours.",
              drive,
              box.breadthMm(),
              box.massKg()));
    } else if (answers.box().isEmpty()) {
      yours.add(
          String.format(
              Locale.ROOT,
              "The %s is a guess of %.0f x %.0f x %.0f mm and %.0f kg: measure and weigh yours.",
              drive,
              box.lengthMm(),
              box.heightMm(),
              box.breadthMm(),
              box.massKg()));
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
}
