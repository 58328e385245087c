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
import org.longlow.constraints.law.LampRow.Area;
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
 * Lamps in the United States: 49 CFR 571.108. Heights are to the item's centre at curb weight
 * (S6.1.4). 1 in = 25.4 mm exactly.
 */
final class UsRules {

  private static final String LAW = "49 CFR 571.108 ";
  private static final String EDITION = "edition of 1 Oct 2025";

  private static final int NO_MOST = Integer.MAX_VALUE;

  private UsRules() {}

  private static LawSource from(String section, String rule, Known status) {
    return new LawSource(LAW + section, EDITION, rule, status);
  }

  private static LampRow row(
      LampKind kind,
      String name,
      Zone zone,
      int least,
      int most,
      Set<LampColour> colours,
      LawSource source) {
    LampRow row =
        LampRow.of(
            RuleSet.US_FEDERAL,
            name,
            kind,
            zone,
            most == NO_MOST ? Count.atLeast(least, source) : Count.range(least, most, source));
    return colours.isEmpty() ? row : row.with(new Colours(colours, source));
  }

  /** Heights printed for four wheels; that the motorcycle rows say the same was not seen. */
  private static Heights carHeights(double least, double most, String rule) {
    LawSource source =
        from(
            "Table I-a, p. 450-458",
            rule + " (transcribed for other vehicles; the same for motorcycles from memory)",
            FROM_MEMORY);
    return heights(least, most, source);
  }

  private static Heights heights(double least, double most, LawSource source) {
    return new Heights(
        Datum.CENTRE, Optional.of(new Bound(least, source)), Optional.of(new Bound(most, source)));
  }

  private static LawSource twins(String letter) {
    return from(
        "Table I-c, p. 456-458",
        "on the vertical centreline; two symmetric about it (NHTSA letter of " + letter + ")",
        TRANSCRIBED);
  }

  private static LawSource signal(String rule) {
    return from(
        "Table I-c, p. 456-458",
        rule + " (repeated in 67 Pa. Code ch. 175 Table V, which was read)",
        TRANSCRIBED);
  }

  private static LawSource area(String rule) {
    return from("Table IV-a, p. 462", rule, TRANSCRIBED);
  }

  private static final Heights SIGNAL_HEIGHTS =
      heights(381, 2108.2, signal("centre 15 in to 83 in high"));

  private static final Heights REFLECTOR_HEIGHTS =
      carHeights(381, 1524, "centre 15 in to 60 in high");

  private static final Heights TAIL_HEIGHTS = carHeights(381, 1828.8, "centre 15 in to 72 in high");

  private static final Area SIGNAL_AREA =
      new Area(
          2258,
          2200,
          area("turn signal at least 2258 mm2 alone, 2200 mm2 each where several serve"));

  private static final Across EACH_SIDE =
      new Across(
          Placement.EACH_SIDE, signal("one each side of the vertical centreline, same height"));

  private static final LawSource REFLECTORS =
      from(
          "Table I-c, p. 456-458",
          "three red reflectors, one at the rear and one on each side as far rearward as"
              + " practicable, and two amber, one on each side as far forward as practicable",
          FROM_MEMORY);

  static final List<LampRow> LAMPS =
      List.of(
          row(
                  LampKind.HEADLAMP,
                  "headlamp",
                  Zone.FRONT,
                  1,
                  2,
                  Set.of(WHITE),
                  from(
                      "S10.17",
                      "one headlamp, at most two, white (at most two: NHTSA letter)",
                      TRANSCRIBED))
              .with(
                  new Across(
                      Placement.CENTRELINE_OR_PAIR,
                      from(
                          "S10.17",
                          "one on the centreline; two at one height and symmetric, or both on the"
                              + " centreline (NHTSA letters of 1998 and 2002)",
                          TRANSCRIBED)))
              .with(carHeights(558.8, 1371.6, "centre 22 in to 54 in high")),
          row(
                  LampKind.TAIL,
                  "tail",
                  Zone.REAR,
                  1,
                  2,
                  Set.of(RED),
                  from("Table I-c, p. 456-458", "one red tail lamp, two allowed", TRANSCRIBED))
              .with(new Across(Placement.CENTRELINE_OR_PAIR, twins("21 Nov 1984")))
              .with(TAIL_HEIGHTS),
          row(
                  LampKind.STOP,
                  "stop",
                  Zone.REAR,
                  1,
                  2,
                  Set.of(RED),
                  from("Table I-c, p. 456-458", "one red stop lamp, two allowed", TRANSCRIBED))
              .with(new Across(Placement.CENTRELINE_OR_PAIR, twins("24 Oct 1986")))
              .with(TAIL_HEIGHTS)
              .with(
                  new Area(
                      5000,
                      2200,
                      area(
                          "stop lamp at least 5000 mm2 alone, 2200 mm2 each of several (2258 mm2 on"
                              + " a motor driven cycle of 30 mph or less)"))),
          row(
                  LampKind.FRONT_SIGNAL,
                  "front-signal",
                  Zone.FRONT,
                  2,
                  2,
                  Set.of(AMBER),
                  signal(
                      "two amber signals at or near the front; none asked of a motor driven cycle"
                          + " of 30 mph or less"))
              .with(EACH_SIDE)
              .with(SIGNAL_HEIGHTS)
              .with(SIGNAL_AREA),
          row(
                  LampKind.REAR_SIGNAL,
                  "rear-signal",
                  Zone.REAR,
                  2,
                  2,
                  Set.of(AMBER, RED),
                  signal(
                      "two amber or red signals at or near the rear; none asked of a motor driven"
                          + " cycle of 30 mph or less"))
              .with(EACH_SIDE)
              .with(SIGNAL_HEIGHTS)
              .with(SIGNAL_AREA),
          row(LampKind.REAR_REFLECTOR, "rear-reflector", Zone.REAR, 1, 2, Set.of(RED), REFLECTORS)
              .with(
                  new Across(
                      Placement.CENTRELINE_OR_PAIR,
                      from(
                          "Table I-c, p. 456-458",
                          "rear reflector on the centreline; two symmetric about it",
                          FROM_MEMORY)))
              .with(REFLECTOR_HEIGHTS),
          row(
                  LampKind.SIDE_REFLECTOR,
                  "front-side-reflector",
                  Zone.FRONT,
                  2,
                  2,
                  Set.of(AMBER),
                  REFLECTORS)
              .with(new Across(Placement.EACH_SIDE, REFLECTORS))
              .with(REFLECTOR_HEIGHTS),
          row(
                  LampKind.SIDE_REFLECTOR,
                  "rear-side-reflector",
                  Zone.REAR,
                  2,
                  2,
                  Set.of(RED),
                  REFLECTORS)
              .with(new Across(Placement.EACH_SIDE, REFLECTORS))
              .with(REFLECTOR_HEIGHTS),
          row(
              LampKind.PLATE_LAMP,
              "plate-lamp",
              Zone.REAR,
              1,
              NO_MOST,
              Set.of(WHITE),
              from(
                  "Table I-c, p. 456-458",
                  "one white lamp that lights the plate from its top or sides",
                  TRANSCRIBED)),
          row(
              LampKind.PLATE,
              "plate",
              Zone.REAR,
              1,
              NO_MOST,
              Set.of(),
              new LawSource(
                  "registration law of each state",
                  "varies",
                  "a number plate at the rear",
                  FROM_MEMORY)));

  private static SpacingRow spacing(
      String name,
      Measure measure,
      LampKind kind,
      LampKind other,
      double limitMm,
      LawSource source) {
    return new SpacingRow(
        RuleSet.US_FEDERAL,
        name,
        measure,
        kind,
        Optional.ofNullable(other),
        limitMm,
        false,
        source);
  }

  private static final LawSource RED_GAP =
      from(
          "Table I-c, p. 456-458",
          "red rear signals at least 4 in, edge to edge, from a single tail or stop lamp on the"
              + " centreline; older and state texts ask it of amber ones too",
          TRANSCRIBED);

  static final List<SpacingRow> SPACING =
      List.of(
          spacing(
              "headlamp.pair-gap",
              Measure.PAIR_GAP,
              LampKind.HEADLAMP,
              null,
              200,
              from(
                  "S10.17",
                  "two headlamps side by side at most 8 in, printed as 200 mm, between the nearest"
                      + " edges (NHTSA letters of 1998 and 2002)",
                  TRANSCRIBED)),
          spacing(
              "front-signal.apart",
              Measure.CENTRES_APART,
              LampKind.FRONT_SIGNAL,
              null,
              406.4,
              signal("front signals at least 16 in apart, centre to centre")),
          spacing(
              "rear-signal.apart",
              Measure.CENTRES_APART,
              LampKind.REAR_SIGNAL,
              null,
              228.6,
              signal("rear signals at least 9 in apart, centre to centre")),
          spacing(
              "front-signal.headlamp-gap",
              Measure.GAP,
              LampKind.FRONT_SIGNAL,
              LampKind.HEADLAMP,
              101.6,
              signal(
                  "front signals at least 4 in from the headlamp, edge to edge in the front view"
                      + " (NHTSA letter of 2005), from each of two as well (letter of 8 Jan 1987)")),
          spacing(
              "rear-signal.tail-gap",
              Measure.RED_GAP_TO_SINGLE,
              LampKind.REAR_SIGNAL,
              LampKind.TAIL,
              101.6,
              RED_GAP),
          spacing(
              "rear-signal.stop-gap",
              Measure.RED_GAP_TO_SINGLE,
              LampKind.REAR_SIGNAL,
              LampKind.STOP,
              101.6,
              RED_GAP));

  static final List<NotCovered> NOT_COVERED =
      List.of(
          new NotCovered(
              RuleSet.US_FEDERAL,
              "upper-beam",
              "upper beam: a headlamp system gives a lower and an upper beam, and a layout does not"
                  + " say which beams a lamp gives",
              from("S10.17", "lower and upper beam", FROM_MEMORY)),
          new NotCovered(
              RuleSet.US_FEDERAL,
              "angles",
              LawTables.ANGLES,
              from("Tables V-b to V-d, p. 463-464", "angles of visibility", TRANSCRIBED)));

  static final List<StateLimit> STATES =
      List.of(
          new StateLimit(
              "Oklahoma",
              LampKind.TAIL,
              381,
              1524,
              new LawSource(
                  "Oklahoma Statutes 47-12-603",
                  "edition not noted",
                  "tail lamp 15 in to 60 in high",
                  CHECKED)));
}
