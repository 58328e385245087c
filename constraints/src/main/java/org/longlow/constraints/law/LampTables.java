package org.longlow.constraints.law;

import static org.longlow.constraints.law.LampColour.AMBER;
import static org.longlow.constraints.law.LampColour.RED;
import static org.longlow.constraints.law.LampColour.WHITE;
import static org.longlow.constraints.law.LampKind.DAYTIME;
import static org.longlow.constraints.law.LampKind.DRIVING_BEAM;
import static org.longlow.constraints.law.LampKind.FRONT_FOG;
import static org.longlow.constraints.law.LampKind.FRONT_POSITION;
import static org.longlow.constraints.law.LampKind.FRONT_SIDE_REFLECTOR;
import static org.longlow.constraints.law.LampKind.FRONT_SIGNAL;
import static org.longlow.constraints.law.LampKind.HEADLAMP;
import static org.longlow.constraints.law.LampKind.PLATE;
import static org.longlow.constraints.law.LampKind.REAR_FOG;
import static org.longlow.constraints.law.LampKind.REAR_REFLECTOR;
import static org.longlow.constraints.law.LampKind.REAR_SIDE_REFLECTOR;
import static org.longlow.constraints.law.LampKind.REAR_SIGNAL;
import static org.longlow.constraints.law.LampKind.STOP;
import static org.longlow.constraints.law.LampKind.TAIL;

import java.util.List;
import java.util.Set;
import org.longlow.constraints.law.LampRow.Datum;
import org.longlow.constraints.law.LampRow.Height;
import org.longlow.constraints.law.LampRow.Placement;

/** The lamp tables as data. Lengths mm; 1 in = 25.4 mm exactly. */
final class LampTables {

  /** Least distance, centre to centre, between US front signals: 16 in. */
  static final double US_FRONT_SIGNALS_APART_MM = 406.4;

  /** Least distance, centre to centre, between US rear signals: 9 in. */
  static final double US_REAR_SIGNALS_APART_MM = 228.6;

  /** Least distance, edge to edge, of a US signal from headlamp, tail or stop lamp: 4 in. */
  static final double US_SIGNAL_GAP_MM = 101.6;

  /** Greatest gap between the lit areas of two headlamps, US (8 in by name) and UN R53; memory. */
  static final double HEADLAMP_PAIR_GAP_MM = 200;

  /** Least gap between the lit areas of UN R53 front indicators; memory. */
  static final double UN_FRONT_INDICATORS_APART_MM = 240;

  /** Least gap between the inner edges of UN R53 rear indicators; memory. */
  static final double UN_REAR_INDICATORS_APART_MM = 180;

  /** Furthest a UN R53 rear indicator may be ahead of the rearmost point; memory. */
  static final double UN_REAR_INDICATOR_AHEAD_MM = 300;

  /** Gap of a UN R53 front indicator from the passing beam: enough at any intensity; memory. */
  static final double UN_INDICATOR_GAP_SURE_MM = 75;

  /** The same for the brightest indicators; below it never enough; memory. */
  static final double UN_INDICATOR_GAP_LEAST_MM = 20;

  /** Least gap of a UN R53 rear fog lamp from the stop lamp; memory. */
  static final double UN_REAR_FOG_GAP_MM = 100;

  private static final String US_TABLE = "49 CFR 571.108 Table I-c (10-1-2025)";
  private static final String US_SECOND = US_TABLE + ", " + Mark.CHECKED_SECOND_HAND.words() + "; ";
  private static final String US_HEIGHT =
      "49 CFR 571.108 Table I-a figures, "
          + Mark.CHECKED_SECOND_HAND.words()
          + "; the same for motorcycles "
          + Mark.FROM_MEMORY.words();
  private static final String US_SIGNAL =
      "49 CFR 571.108 Table I-c, copied in 67 Pa. Code ch. 175 Table V, " + Mark.CHECKED.words();
  private static final String US_LETTER =
      US_SECOND + "centreline and twin-lamp rule in an NHTSA letter of 21 Nov 1984, checked";

  private LampTables() {}

  static List<LampRow> of(RuleSet rules) {
    return switch (rules) {
      case US_FEDERAL -> US;
      case UN_R53 -> UN;
      case UK -> UK;
    };
  }

  private static LampRow us(
      LampKind kind,
      int least,
      int most,
      Set<LampColour> colours,
      Placement placement,
      Height height,
      String source) {
    return new LampRow(RuleSet.US_FEDERAL, kind, least, most, colours, placement, height, source);
  }

  private static Height centre(double least, double most, String source) {
    return new Height(least, most, Datum.CENTRE, source);
  }

  private static final List<LampRow> US =
      List.of(
          us(
              HEADLAMP,
              1,
              2,
              Set.of(WHITE),
              Placement.CENTRELINE_OR_PAIR,
              centre(559, 1372, US_HEIGHT),
              "49 CFR 571.108 Table I-c and S10.17; placement " + Mark.FROM_MEMORY.words()),
          us(
              TAIL,
              1,
              2,
              Set.of(RED),
              Placement.CENTRELINE_OR_PAIR,
              centre(381, 1828.8, US_HEIGHT),
              US_LETTER),
          us(
              STOP,
              1,
              2,
              Set.of(RED),
              Placement.CENTRELINE_OR_PAIR,
              centre(381, 1828.8, US_HEIGHT),
              US_LETTER),
          us(
              FRONT_SIGNAL,
              2,
              2,
              Set.of(AMBER),
              Placement.EACH_SIDE,
              centre(381, 2108.2, US_SIGNAL),
              US_SIGNAL),
          us(
              REAR_SIGNAL,
              2,
              2,
              Set.of(AMBER, RED),
              Placement.EACH_SIDE,
              centre(381, 2108.2, US_SIGNAL),
              US_SIGNAL),
          us(
              REAR_REFLECTOR,
              1,
              2,
              Set.of(RED),
              Placement.CENTRELINE_OR_PAIR,
              centre(381, 1524, US_HEIGHT),
              US_TABLE + ", " + Mark.FROM_MEMORY.words()),
          us(
              FRONT_SIDE_REFLECTOR,
              2,
              2,
              Set.of(AMBER),
              Placement.EACH_SIDE,
              centre(381, 1524, US_HEIGHT),
              US_TABLE + ", " + Mark.FROM_MEMORY.words()),
          us(
              REAR_SIDE_REFLECTOR,
              2,
              2,
              Set.of(RED),
              Placement.EACH_SIDE,
              centre(381, 1524, US_HEIGHT),
              US_TABLE + ", " + Mark.FROM_MEMORY.words()),
          us(
              PLATE,
              1,
              2,
              Set.of(WHITE),
              Placement.ANYWHERE,
              null,
              US_TABLE + ", " + Mark.CHECKED_SECOND_HAND.words()));

  private static LampRow un(
      String section,
      LampKind kind,
      int least,
      int most,
      Set<LampColour> colours,
      Placement placement,
      double lowest,
      double highest) {
    String source = "UN R53 " + section + ", " + Mark.FROM_MEMORY.words();
    Height height =
        lowest == 0 && highest == Double.POSITIVE_INFINITY
            ? null
            : new Height(lowest, highest, Datum.EDGE, source);
    return new LampRow(RuleSet.UN_R53, kind, least, most, colours, placement, height, source);
  }

  private static final double ANY = Double.POSITIVE_INFINITY;

  private static final List<LampRow> UN =
      List.of(
          un("6.1", DRIVING_BEAM, 0, 4, Set.of(WHITE), Placement.CENTRELINE_OR_PAIR, 0, ANY),
          un("6.2", HEADLAMP, 1, 2, Set.of(WHITE), Placement.CENTRELINE_OR_PAIR, 500, 1200),
          un("6.3", FRONT_SIGNAL, 2, 2, Set.of(AMBER), Placement.EACH_SIDE, 350, 1200),
          un("6.3", REAR_SIGNAL, 2, 2, Set.of(AMBER), Placement.EACH_SIDE, 350, 1200),
          un("6.4", STOP, 1, 2, Set.of(RED), Placement.CENTRELINE_OR_PAIR, 250, 1500),
          un("6.5", PLATE, 1, 4, Set.of(WHITE), Placement.ANYWHERE, 0, ANY),
          un(
              "6.6",
              FRONT_POSITION,
              1,
              2,
              Set.of(WHITE, AMBER),
              Placement.CENTRELINE_OR_PAIR,
              350,
              1200),
          un("6.7", TAIL, 1, 2, Set.of(RED), Placement.CENTRELINE_OR_PAIR, 250, 1500),
          un("6.8", REAR_REFLECTOR, 1, 2, Set.of(RED), Placement.CENTRELINE_OR_PAIR, 250, 900),
          un("6.10", FRONT_FOG, 0, 2, Set.of(WHITE), Placement.CENTRELINE_OR_PAIR, 250, ANY),
          un("6.11", REAR_FOG, 0, 2, Set.of(RED), Placement.ANYWHERE, 250, 900),
          un("6.12", FRONT_SIDE_REFLECTOR, 0, 4, Set.of(AMBER), Placement.EACH_SIDE, 300, 900),
          un("6.12", REAR_SIDE_REFLECTOR, 0, 4, Set.of(AMBER, RED), Placement.EACH_SIDE, 300, 900),
          un("6.13", DAYTIME, 0, 2, Set.of(WHITE), Placement.CENTRELINE_OR_PAIR, 250, 1500));

  private static final String UK_DIPPED =
      "Road Vehicles Lighting Regulations (Northern Ireland) 2000 sch. 4, "
          + Mark.CHECKED.words()
          + "; least height "
          + Mark.FROM_MEMORY.words();

  private static final String UK_POSITION =
      "SI 1989/1796 sch. 2 as made, "
          + Mark.CHECKED.words()
          + "; 2100 mm if the structure makes 1500 impracticable";

  private static final List<LampRow> UK =
      List.of(
          new LampRow(
              RuleSet.UK,
              HEADLAMP,
              1,
              2,
              Set.of(WHITE),
              Placement.CENTRELINE_OR_PAIR,
              new Height(500, 1200, Datum.EDGE, UK_DIPPED),
              UK_DIPPED),
          new LampRow(
              RuleSet.UK,
              FRONT_POSITION,
              1,
              2,
              Set.of(WHITE),
              Placement.ANYWHERE,
              new Height(0, 1500, Datum.EDGE, UK_POSITION),
              UK_POSITION));
}
