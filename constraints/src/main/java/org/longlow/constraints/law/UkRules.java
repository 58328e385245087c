package org.longlow.constraints.law;

import static org.longlow.constraints.law.Known.CHECKED;
import static org.longlow.constraints.law.Known.FROM_MEMORY;
import static org.longlow.constraints.law.Known.TRANSCRIBED;
import static org.longlow.constraints.law.LampColour.AMBER;
import static org.longlow.constraints.law.LampColour.RED;
import static org.longlow.constraints.law.LampColour.WHITE;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.law.LampRow.Across;
import org.longlow.constraints.law.LampRow.Bound;
import org.longlow.constraints.law.LampRow.Colours;
import org.longlow.constraints.law.LampRow.Count;
import org.longlow.constraints.law.LampRow.Datum;
import org.longlow.constraints.law.LampRow.Heights;
import org.longlow.constraints.law.LampRow.Placement;
import org.longlow.constraints.law.LampRow.Zone;
import org.longlow.constraints.law.SpacingRow.Measure;
import org.longlow.constraints.layout.Part.LampKind;

/**
 * Lamps of a solo motor bicycle in the United Kingdom: the Road Vehicles Lighting Regulations, SI
 * 1989/1796, of which only some schedules could be read. Heights are to the edges of the lit area.
 */
final class UkRules {

  private static final String LIGHTING = "SI 1989/1796 ";
  private static final String NOT_READ = "text not read";

  private UkRules() {}

  private static final LawSource DIPPED =
      new LawSource(
          "Road Vehicles Lighting Regulations (Northern Ireland) 2000 Sch. 4",
          "as made, 2000",
          "one dipped beam on the centreline, or a matched pair",
          CHECKED);

  private static final LawSource POSITION =
      new LawSource(
          LIGHTING + "Sch. 2",
          "as made, 1989",
          "one front position lamp, on the centreline or the off side",
          CHECKED);

  private static final LawSource STOP =
      new LawSource(
          LIGHTING + "Sch. 12",
          "as at 19 Jul 2006",
          "one stop lamp, on the centreline or the off side",
          CHECKED);

  private static final LawSource TAIL =
      new LawSource(
          LIGHTING + "Sch. 10",
          NOT_READ + "; heights seen in a table for cars",
          "a rear position lamp, lit edges 350 mm to 1500 mm high",
          FROM_MEMORY);

  private static final LawSource INDICATORS =
      new LawSource(
          LIGHTING + "Sch. 7",
          "copy, date not noted",
          "one indicator in front and one behind on each side, if first used from 1 Apr 1986 by one"
              + " copy of the schedule, from 1 Aug 1986 by the inspection manual; not asked of 30"
              + " mph or less, nor of a machine for its rider alone off the road",
          TRANSCRIBED);

  private static final LawSource MANUAL =
      new LawSource(
          "motorcycle inspection manual",
          "date not noted",
          "a rear number plate lamp",
          TRANSCRIBED);

  private static final LawSource REFLECTOR =
      new LawSource(
          LIGHTING + "Sch. 18",
          "as at 21 Oct 2005",
          "one red rear reflector at or near the rear",
          CHECKED);

  private static final LawSource PLATE =
      new LawSource(
          "SI 2001/561",
          "copy, date not noted",
          "a rear number plate, vertical or near it; none in front if registered from 1 Sep 2001;"
              + " characters 64 mm by 44 mm",
          TRANSCRIBED);

  /** The schedules name colours that were not read, but for the reflector's. */
  private static Colours colour(LampColour colour, String lamp) {
    return new Colours(
        Set.of(colour),
        new LawSource("SI 1989/1796", NOT_READ, lamp + " " + colour.word(), FROM_MEMORY));
  }

  /** One lamp must be there; whether more may be was not read. */
  private static LampRow one(LampKind kind, String name, Zone zone, LawSource source) {
    return LampRow.of(RuleSet.UK, name, kind, zone, Count.atLeast(1, source));
  }

  private static LampRow indicators(LampKind kind, String name, Zone zone) {
    return LampRow.of(RuleSet.UK, name, kind, zone, Count.atLeast(2, INDICATORS))
        .with(colour(AMBER, "indicators"))
        .with(new Across(Placement.EACH_SIDE, INDICATORS))
        .unread("height and spacing");
  }

  static final List<LampRow> LAMPS =
      List.of(
          LampRow.of(
                  RuleSet.UK, "headlamp", LampKind.HEADLAMP, Zone.FRONT, Count.range(1, 2, DIPPED))
              .with(colour(WHITE, "headlamp"))
              .with(new Across(Placement.CENTRELINE_OR_PAIR, DIPPED))
              .with(dippedHeights()),
          one(LampKind.FRONT_POSITION, "front-position", Zone.FRONT, POSITION)
              .with(colour(WHITE, "front position lamp"))
              .with(new Across(Placement.CENTRELINE_OR_OFF_SIDE, POSITION))
              .with(positionHeights()),
          one(LampKind.STOP, "stop", Zone.REAR, STOP)
              .with(colour(RED, "stop lamp"))
              .with(new Across(Placement.CENTRELINE_OR_OFF_SIDE, STOP))
              .with(stopHeights()),
          one(LampKind.TAIL, "tail", Zone.REAR, TAIL)
              .with(colour(RED, "rear position lamp"))
              .with(
                  new Heights(
                      Datum.EDGE,
                      Optional.of(new Bound(350, TAIL)),
                      Optional.of(new Bound(1500, TAIL))))
              .unread("number and place across the machine"),
          indicators(LampKind.FRONT_SIGNAL, "front-signal", Zone.FRONT),
          indicators(LampKind.REAR_SIGNAL, "rear-signal", Zone.REAR),
          one(LampKind.REAR_REFLECTOR, "rear-reflector", Zone.REAR, REFLECTOR)
              .with(new Colours(Set.of(RED), REFLECTOR))
              .unread("height and place across the machine"),
          one(LampKind.PLATE_LAMP, "plate-lamp", Zone.REAR, MANUAL)
              .with(colour(WHITE, "plate lamp")),
          one(LampKind.PLATE, "plate", Zone.REAR, PLATE)
              .unread("height, and how near to vertical,"));

  private static Heights dippedHeights() {
    LawSource least =
        new LawSource(
            LIGHTING + "Sch. 4",
            NOT_READ,
            "dipped beam at least 500 mm high, for motor bicycles too",
            FROM_MEMORY);
    LawSource most =
        new LawSource(
            DIPPED.section(), DIPPED.edition(), "dipped beam at most 1200 mm high", CHECKED);
    return new Heights(
        Datum.EDGE, Optional.of(new Bound(500, least)), Optional.of(new Bound(1200, most)));
  }

  private static Heights positionHeights() {
    LawSource most =
        new LawSource(
            POSITION.section(),
            POSITION.edition(),
            "at most 1500 mm high, 2100 mm where the structure of the machine makes that"
                + " impracticable; no least height",
            CHECKED);
    return new Heights(Datum.EDGE, Optional.empty(), Optional.of(new Bound(1500, most)));
  }

  private static Heights stopHeights() {
    LawSource source =
        new LawSource(
            STOP.section(),
            STOP.edition(),
            "lit edges 350 mm to 1500 mm high, 2100 mm where the structure of the machine makes"
                + " that impracticable; no least height if first used before 1 Jan 1971",
            CHECKED);
    return new Heights(
        Datum.EDGE, Optional.of(new Bound(350, source)), Optional.of(new Bound(1500, source)));
  }

  static final List<SpacingRow> SPACING =
      List.of(
          new SpacingRow(
              RuleSet.UK,
              "headlamp.pair-gap",
              Measure.PAIR_GAP,
              LampKind.HEADLAMP,
              Optional.empty(),
              200,
              false,
              new LawSource(
                  LIGHTING + "Sch. 4",
                  NOT_READ,
                  "a matched pair of dipped beams at most 200 mm apart",
                  FROM_MEMORY)));

  private static NotCovered none(String section, String name, String text) {
    return new NotCovered(
        RuleSet.UK,
        name,
        text,
        new LawSource(LIGHTING + section, NOT_READ, name.replace('-', ' '), FROM_MEMORY));
  }

  static final List<NotCovered> NOT_COVERED =
      List.of(
          none(
              "Sch. 1",
              "other-lamps",
              "other lamps: the list of lamps that a solo machine needs was not read, so it may ask"
                  + " for more than is judged here"),
          new NotCovered(
              RuleSet.UK,
              "indicator-date",
              "from which date indicators are asked: a copy of the schedule says first used from 1"
                  + " Apr 1986, the inspection manual 1 Aug 1986, and nobody could settle it",
              INDICATORS),
          none("Sch. 5", "main-beam", "main beam: its rules were not read"),
          none("Schs. 2 to 12", "angles", LawTables.ANGLES));
}
