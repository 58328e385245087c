package org.longlow.constraints.law;

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
 * Lamps under UN Regulation No 53, category L3. Only its list of contents could be read, so every
 * figure is from memory and none may pass a machine. Heights are to the edges of the lit surface,
 * machine unladen. The repealed EU directive 2009/67/EC, Annex IV, gives the same figures for
 * indicators, stop, position and passing lamps, under other section numbers.
 */
final class UnRules {

  private static final String EDITION = "contents of OJ L 166, 18.6.2013, p. 55; body not read";

  private static final int NO_MOST = Integer.MAX_VALUE;

  private UnRules() {}

  private static LawSource from(String section, String rule) {
    return new LawSource("UN R53 " + section, EDITION, rule, Known.FROM_MEMORY);
  }

  private static LampRow row(
      String section,
      LampKind kind,
      String name,
      Zone zone,
      int least,
      int most,
      Set<LampColour> colours,
      String rule) {
    LawSource source = from(section, rule);
    LampRow row =
        LampRow.of(
            RuleSet.UN_R53,
            name,
            kind,
            zone,
            most == NO_MOST ? Count.atLeast(least, source) : Count.range(least, most, source));
    return colours.isEmpty() ? row : row.with(new Colours(colours, source));
  }

  private static Heights least(String section, double mm) {
    Bound bound = new Bound(mm, from(section, "lower edge at least " + (int) mm + " mm high"));
    return new Heights(Datum.EDGE, Optional.of(bound), Optional.empty());
  }

  private static Heights heights(String section, double least, double most) {
    LawSource source =
        from(section, "lit edges " + (int) least + " mm to " + (int) most + " mm high");
    return new Heights(
        Datum.EDGE, Optional.of(new Bound(least, source)), Optional.of(new Bound(most, source)));
  }

  private static Across pair(String section) {
    return new Across(
        Placement.CENTRELINE_OR_PAIR, from(section, "on the centreline or a symmetric pair"));
  }

  private static Across eachSide(String section) {
    return new Across(
        Placement.EACH_SIDE, from(section, "the same on each side, at the same height"));
  }

  static final List<LampRow> LAMPS =
      List.of(
          row(
                  "6.1",
                  LampKind.DRIVING_BEAM,
                  "driving-beam",
                  Zone.FRONT,
                  0,
                  4,
                  Set.of(WHITE),
                  "one or two driving beams, two or four over 125 cm3; white")
              .with(pair("6.1")),
          row(
                  "6.2",
                  LampKind.HEADLAMP,
                  "headlamp",
                  Zone.FRONT,
                  1,
                  2,
                  Set.of(WHITE),
                  "one or two passing beams, how many depends on 125 cm3 as well (6.2.1); white")
              .with(pair("6.2"))
              .with(heights("6.2", 500, 1200)),
          row(
                  "6.3",
                  LampKind.FRONT_SIGNAL,
                  "front-signal",
                  Zone.FRONT,
                  2,
                  2,
                  Set.of(AMBER),
                  "two amber indicators a side, one of them in front")
              .with(eachSide("6.3"))
              .with(heights("6.3", 350, 1200)),
          row(
                  "6.3",
                  LampKind.REAR_SIGNAL,
                  "rear-signal",
                  Zone.REAR,
                  2,
                  2,
                  Set.of(AMBER),
                  "two amber indicators a side, one of them behind")
              .with(eachSide("6.3"))
              .with(heights("6.3", 350, 1200)),
          row(
                  "6.4",
                  LampKind.STOP,
                  "stop",
                  Zone.REAR,
                  1,
                  2,
                  Set.of(RED),
                  "one or two red stop lamps")
              .with(pair("6.4"))
              .with(heights("6.4", 250, 1500)),
          row(
              "6.5",
              LampKind.PLATE_LAMP,
              "plate-lamp",
              Zone.REAR,
              1,
              NO_MOST,
              Set.of(WHITE),
              "one or more white lamps that light the plate"),
          row(
              "6.5",
              LampKind.PLATE,
              "plate",
              Zone.REAR,
              1,
              NO_MOST,
              Set.of(),
              "a rear registration plate to light; national registration law asks for it"),
          row(
                  "6.6",
                  LampKind.FRONT_POSITION,
                  "front-position",
                  Zone.FRONT,
                  1,
                  2,
                  Set.of(WHITE, AMBER),
                  "one or two front position lamps, white, amber by some series")
              .with(pair("6.6"))
              .with(heights("6.6", 350, 1200)),
          row(
                  "6.7",
                  LampKind.TAIL,
                  "tail",
                  Zone.REAR,
                  1,
                  2,
                  Set.of(RED),
                  "one or two red rear position lamps")
              .with(pair("6.7"))
              .with(heights("6.7", 250, 1500)),
          row(
                  "6.8",
                  LampKind.REAR_REFLECTOR,
                  "rear-reflector",
                  Zone.REAR,
                  1,
                  2,
                  Set.of(RED),
                  "one or two red reflectors, not triangular (2009/67/EC: exactly one)")
              .with(pair("6.8"))
              .with(heights("6.8", 250, 900)),
          row(
                  "6.10",
                  LampKind.FRONT_FOG,
                  "front-fog",
                  Zone.FRONT,
                  0,
                  2,
                  Set.of(WHITE),
                  "at most two front fog lamps")
              .with(pair("6.10"))
              .with(least("6.10", 250)),
          row(
                  "6.11",
                  LampKind.REAR_FOG,
                  "rear-fog",
                  Zone.REAR,
                  0,
                  2,
                  Set.of(RED),
                  "at most two red rear fog lamps")
              .with(heights("6.11", 250, 900)),
          row(
                  "6.12",
                  LampKind.SIDE_REFLECTOR,
                  "side-reflector",
                  Zone.ANYWHERE,
                  2,
                  4,
                  Set.of(),
                  "one or two reflectors a side")
              .with(eachSide("6.12"))
              .with(heights("6.12", 300, 900)),
          row(
              "6.12",
              LampKind.SIDE_REFLECTOR,
              "front-side-reflector",
              Zone.FRONT,
              0,
              NO_MOST,
              Set.of(AMBER),
              "side reflectors amber"),
          row(
              "6.12",
              LampKind.SIDE_REFLECTOR,
              "rear-side-reflector",
              Zone.REAR,
              0,
              NO_MOST,
              Set.of(AMBER, RED),
              "side reflectors amber, the rear ones amber or red"),
          row(
                  "6.13",
                  LampKind.DAYTIME,
                  "daytime",
                  Zone.FRONT,
                  0,
                  2,
                  Set.of(WHITE),
                  "at most two daytime running lamps, white")
              .with(pair("6.13"))
              .with(heights("6.13", 250, 1500)));

  private static SpacingRow spacing(
      String section,
      String name,
      Measure measure,
      LampKind kind,
      LampKind other,
      double limitMm,
      String rule) {
    return new SpacingRow(
        RuleSet.UN_R53,
        name,
        measure,
        kind,
        Optional.ofNullable(other),
        limitMm,
        false,
        from(section, rule));
  }

  static final List<SpacingRow> SPACING =
      List.of(
          spacing(
              "6.2",
              "headlamp.pair-gap",
              Measure.PAIR_GAP,
              LampKind.HEADLAMP,
              null,
              200,
              "a pair of passing beams at most 200 mm apart"),
          spacing(
              "6.3",
              "front-signal.edges-apart",
              Measure.EDGES_APART,
              LampKind.FRONT_SIGNAL,
              null,
              240,
              "front indicators at least 240 mm apart between the lit areas"),
          spacing(
              "6.3",
              "rear-signal.edges-apart",
              Measure.EDGES_APART,
              LampKind.REAR_SIGNAL,
              null,
              180,
              "rear indicators at least 180 mm apart between the inner edges"),
          spacing(
              "6.3",
              "front-signal.outside-headlamp",
              Measure.OUTSIDE,
              LampKind.FRONT_SIGNAL,
              LampKind.HEADLAMP,
              0,
              "front indicators outside the headlamp's outer edges"),
          new SpacingRow(
              RuleSet.UN_R53,
              "front-signal.headlamp-gap",
              Measure.GAP,
              LampKind.FRONT_SIGNAL,
              Optional.of(LampKind.HEADLAMP),
              75,
              true,
              from(
                  "6.3",
                  "front indicators 75 mm from the passing beam; 40 mm with 175 cd, 20 mm with 250"
                      + " cd, less with 400 cd")),
          spacing(
              "6.3",
              "rear-signal.ahead",
              Measure.AHEAD_OF_REARMOST,
              LampKind.REAR_SIGNAL,
              null,
              300,
              "rear indicators at most 300 mm ahead of the rearmost point"),
          spacing(
              "6.10",
              "front-fog.below-headlamp",
              Measure.NOT_ABOVE,
              LampKind.FRONT_FOG,
              LampKind.HEADLAMP,
              0,
              "front fog lamp not above the passing beam"),
          spacing(
              "6.11",
              "rear-fog.stop-gap",
              Measure.GAP,
              LampKind.REAR_FOG,
              LampKind.STOP,
              100,
              "rear fog lamp at least 100 mm from the stop lamp"));

  private static NotCovered none(String section, String name, String text) {
    return new NotCovered(RuleSet.UN_R53, name, text, from(section, name.replace('-', ' ')));
  }

  static final List<NotCovered> NOT_COVERED =
      List.of(
          none(
              "6.1",
              "driving-beam",
              "driving beam: whether the headlamp gives it is not in a layout"),
          none(
              "6.9",
              "hazard-warning",
              "hazard warning signal: it lights the indicators together, and wiring is not in a"
                  + " layout"),
          none("6.14", "emergency-stop-signal", "emergency stop signal: its rules were not read"),
          none("6.15", "courtesy-lamp", "external courtesy lamp: its rules were not read"),
          none("annex 3", "angles", LawTables.ANGLES));
}
