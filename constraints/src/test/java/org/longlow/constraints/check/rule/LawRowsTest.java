package org.longlow.constraints.check.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LawSource;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;

/**
 * Every row of the lamp tables, one by one: its figures and how well they are known are restated
 * here from the sources, and both sides of each limit are tried.
 *
 * <p>A status is C for checked in a statute text, T for transcribed, M for from memory.
 */
class LawRowsTest {

  // 49 CFR 571.108, edition of 1 Oct 2025: Table I-c (p. 456-458) for number, colour and place,
  // Table I-a (p. 450-458) for heights (22, 54, 15, 72, 60 in; for motorcycles from memory), Table
  // IV-a (p. 462) for areas. Turn signals: 15 and 83 in, repeated in 67 Pa. Code 175 Table V.
  // At most two headlamps: agency's letters. 1 in = 25.4 mm exactly.
  private static final String US =
      """
      headlamp             HEADLAMP       FRONT 1 2 T WHITE     T PAIR T CENTRE 558.8 M 1371.6 M -    -
      tail                 TAIL           REAR  1 2 T RED       T PAIR T CENTRE 381   M 1828.8 M -    -
      stop                 STOP           REAR  1 2 T RED       T PAIR T CENTRE 381   M 1828.8 M 5000 2200
      front-signal         FRONT_SIGNAL   FRONT 2 2 T AMBER     T EACH T CENTRE 381   T 2108.2 T 2258 -
      rear-signal          REAR_SIGNAL    REAR  2 2 T AMBER|RED T EACH T CENTRE 381   T 2108.2 T 2258 -
      rear-reflector       REAR_REFLECTOR REAR  1 2 M RED       M PAIR M CENTRE 381   M 1524   M -    -
      front-side-reflector SIDE_REFLECTOR FRONT 2 2 M AMBER     M EACH M CENTRE 381   M 1524   M -    -
      rear-side-reflector  SIDE_REFLECTOR REAR  2 2 M RED       M EACH M CENTRE 381   M 1524   M -    -
      plate-lamp           PLATE_LAMP     REAR  1 - T WHITE     T -    - -      -     - -      - -    -
      plate                PLATE          REAR  1 - M -         - -    - -      -     - -      - -    -
      """;

  // UN R53: only its contents were read (OJ L 166, 18.6.2013, p. 55), so all is from memory.
  private static final String UN =
      """
      driving-beam         DRIVING_BEAM   FRONT    0 4 M WHITE       M PAIR M -    -   - -    - - -
      headlamp             HEADLAMP       FRONT    1 2 M WHITE       M PAIR M EDGE 500 M 1200 M - -
      front-signal         FRONT_SIGNAL   FRONT    2 2 M AMBER       M EACH M EDGE 350 M 1200 M - -
      rear-signal          REAR_SIGNAL    REAR     2 2 M AMBER       M EACH M EDGE 350 M 1200 M - -
      stop                 STOP           REAR     1 2 M RED         M PAIR M EDGE 250 M 1500 M - -
      plate-lamp           PLATE_LAMP     REAR     1 - M WHITE       M -    - -    -   - -    - - -
      plate                PLATE          REAR     1 - M -           - -    - -    -   - -    - - -
      front-position       FRONT_POSITION FRONT    1 2 M WHITE|AMBER M PAIR M EDGE 350 M 1200 M - -
      tail                 TAIL           REAR     1 2 M RED         M PAIR M EDGE 250 M 1500 M - -
      rear-reflector       REAR_REFLECTOR REAR     1 2 M RED         M PAIR M EDGE 250 M 900  M - -
      front-fog            FRONT_FOG      FRONT    0 2 M WHITE       M PAIR M EDGE 250 M -    - - -
      rear-fog             REAR_FOG       REAR     0 2 M RED         M -    - EDGE 250 M 900  M - -
      side-reflector       SIDE_REFLECTOR ANYWHERE 2 4 M -           - EACH M EDGE 300 M 900  M - -
      front-side-reflector SIDE_REFLECTOR FRONT    0 - M AMBER       M -    - -    -   - -    - - -
      rear-side-reflector  SIDE_REFLECTOR REAR     0 - M AMBER|RED   M -    - -    -   - -    - - -
      daytime              DAYTIME        FRONT    0 2 M WHITE       M PAIR M EDGE 250 M 1500 M - -
      """;

  // Dipped beam: Northern Ireland 2000 Sch. 4 (checked; 500 mm for motor bicycles from memory).
  // SI 1989/1796: Sch. 2 as made, Sch. 12 as at 19 Jul 2006, Sch. 18 as at 21 Oct 2005 (checked);
  // Sch. 7 in a copy; Sch. 10 only as a table for cars. Plate: SI 2001/561, a copy. Plate lamp: the
  // inspection manual. Colours were read for the reflector only.
  private static final String UK =
      """
      headlamp       HEADLAMP       FRONT 1 2 C WHITE M PAIR C EDGE 500 M 1200 C - -
      front-position FRONT_POSITION FRONT 1 - C WHITE M OFF  C EDGE -   - 1500 C - -
      stop           STOP           REAR  1 - C RED   M OFF  C EDGE 350 C 1500 C - -
      tail           TAIL           REAR  1 - M RED   M -    - EDGE 350 M 1500 M - -
      front-signal   FRONT_SIGNAL   FRONT 2 - T AMBER M EACH T -    -   - -    - - -
      rear-signal    REAR_SIGNAL    REAR  2 - T AMBER M EACH T -    -   - -    - - -
      rear-reflector REAR_REFLECTOR REAR  1 - C RED   C -    - -    -   - -    - - -
      plate-lamp     PLATE_LAMP     REAR  1 - T WHITE M -    - -    -   - -    - - -
      plate          PLATE          REAR  1 - T -     - -    - -    -   - -    - - -
      """;

  /** One row as restated above; "-" where nothing is asked. */
  private record Restated(RuleSet rules, String[] words) {

    String name() {
      return words[0];
    }

    LampPart.Kind kind() {
      return LampPart.Kind.valueOf(words[1]);
    }

    Row.Zone zone() {
      return Row.Zone.valueOf(words[2]);
    }

    boolean asks(int at) {
      return !words[at].equals("-");
    }

    double number(int at) {
      return Double.parseDouble(words[at]);
    }

    int least() {
      return Integer.parseInt(words[3]);
    }

    boolean memory(int at) {
      return words[at].equals("M");
    }

    /** What a figure inside gives. */
    Verdict inside(int status) {
      return memory(status) ? Verdict.CAUTION : Verdict.PASS;
    }

    Set<LampPart.Colour> colours() {
      Set<LampPart.Colour> colours = EnumSet.noneOf(LampPart.Colour.class);
      if (asks(6)) {
        Arrays.stream(words[6].split("\\|")).map(LampPart.Colour::valueOf).forEach(colours::add);
      }
      return colours;
    }

    boolean ahead() {
      return zone() != Row.Zone.REAR;
    }

    LampPart.Colour colour() {
      return colours().isEmpty() ? LampPart.Colour.AMBER : colours().iterator().next();
    }

    LampItem lamp(String name, double y, double z, double half) {
      return lamp(name, y, z, half, half);
    }

    LampItem lamp(String name, double y, double z, double halfWidth, double halfHeight) {
      return new LampItem(
          name,
          false,
          kind(),
          colour(),
          ahead(),
          ahead() ? 1500 : -200,
          y,
          z,
          halfWidth,
          halfHeight,
          false);
    }

    /** So many where they belong. */
    List<LampItem> lamps(int n) {
      List<LampItem> lamps = new ArrayList<>();
      for (int i = 0; i < n; i++) {
        lamps.add(lamp("lamp" + i, (i % 2 == 0 ? 1 : -1) * (200 + 10 * (i / 2)), 700, 30));
      }
      return lamps;
    }

    Verdict verdict(String aspect, LampItem... lamps) {
      return finding(aspect, List.of(lamps)).verdict();
    }

    Finding finding(String aspect, List<LampItem> lamps) {
      String id = "law." + rules.id() + "." + name() + "." + aspect;
      List<Finding> those =
          Rulings.findings(
                  LawFindings.lampRulings(Set.of(rules), lamps, -400),
                  Condition.empty(Stance.Kind.UNLADEN),
                  java.util.Map.of())
              .stream()
              .filter(f -> f.id().equals(id))
              .toList();
      assertThat(those).as(id).hasSize(1);
      return those.get(0);
    }

    @Override
    public String toString() {
      return rules + " " + name();
    }
  }

  static Stream<Restated> rows() {
    return Stream.of(rows(Sets.US_FEDERAL, US), rows(Sets.UN_R53, UN), rows(Sets.UK, UK))
        .flatMap(Function.identity());
  }

  private static Stream<Restated> rows(RuleSet rules, String text) {
    return text.lines().map(line -> new Restated(rules, line.trim().split(" +")));
  }

  private static String letter(Known status) {
    return switch (status) {
      case CHECKED -> "C";
      case TRANSCRIBED -> "T";
      case FROM_MEMORY -> "M";
    };
  }

  private static String number(double value) {
    return Double.isInfinite(value)
        ? "-"
        : value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  /** The rows of one lamp as they are restated above. */
  private static List<String> words(List<Row> rows) {
    Row first = rows.get(0);
    String[] words = new String[17];
    Arrays.fill(words, "-");
    words[0] = first.name();
    words[1] = first.kind().name();
    words[2] = first.zone().name();
    words[3] = "0";
    words[5] = letter(first);
    words[6] = "[]";
    for (Row row : rows) {
      switch (row.asked()) {
        case COUNT -> {
          words[3] = number(row.least());
          words[4] = number(row.most());
        }
        case COLOUR -> {
          words[6] = new TreeSet<>(row.colours()).toString();
          words[7] = letter(row);
        }
        case CENTRELINE_OR_PAIR, CENTRELINE_OR_OFF_SIDE, EACH_SIDE -> {
          words[8] =
              Map.of(Asked.CENTRELINE_OR_PAIR, "PAIR", Asked.EACH_SIDE, "EACH")
                  .getOrDefault(row.asked(), "OFF");
          words[9] = letter(row);
        }
        case HEIGHT_OF_CENTRE, HEIGHT_OF_EDGE -> {
          words[10] = row.asked() == Asked.HEIGHT_OF_CENTRE ? "CENTRE" : "EDGE";
          words[11] = number(row.least());
          words[12] = row.hasLeast() ? letter(row) : "-";
          words[13] = number(row.most());
          words[14] =
              row.hasMost() ? letter(row.sources().get(row.sources().size() - 1).status()) : "-";
        }
        case AREA, AREA_ALONE -> words[15] = number(row.least());
        case AREA_SHARED -> words[16] = number(row.least());
        default -> assertThat(row.asked()).isEqualTo(Asked.UNREAD);
      }
    }
    return withRules(first.rules(), words);
  }

  private static String letter(Row row) {
    return letter(row.sources().get(0).status());
  }

  private static List<String> withRules(RuleSet rules, String[] words) {
    List<String> all = new ArrayList<>(List.of(words));
    all.add(0, rules.id());
    return all;
  }

  @Test
  void theTablesHoldTheseRowsAndNoOthers() {
    List<List<String>> restated =
        rows()
            .map(
                row -> {
                  List<String> words = withRules(row.rules(), row.words());
                  words.set(7, new TreeSet<>(row.colours()).toString());
                  return words;
                })
            .toList();
    Map<String, List<Row>> byLamp = new LinkedHashMap<>();
    LawTables.rows().stream()
        .filter(row -> row.asked().about() == Asked.Subject.LAMP)
        .filter(row -> row.asked() != Asked.STATE_HEIGHT)
        .forEach(
            row ->
                byLamp
                    .computeIfAbsent(row.rules().id() + " " + row.name(), k -> new ArrayList<>())
                    .add(row));
    assertThat(byLamp.values().stream().map(LawRowsTest::words))
        .containsExactlyElementsOf(restated);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void number(Restated row) {
    int least = row.least();
    if (least > 0) {
      Finding few = row.finding("count", row.lamps(least - 1));
      assertThat(few.verdict()).isEqualTo(Verdict.FAIL);
      assertThat(few.margin()).isEqualTo(-1);
      assertThat(row.finding("count", row.lamps(least)).verdict()).isEqualTo(row.inside(5));
    }
    boolean open = !row.asks(4);
    if (open && least == 0) {
      assertThat(
              LawFindings.lampRulings(Set.of(row.rules()), row.lamps(5), -400).stream()
                  .map(r -> r.about().path()))
          .doesNotContain(List.of(row.name(), "count"));
      return;
    }
    int most = open ? least : (int) row.number(4);
    assertThat(row.finding("count", row.lamps(most)).verdict()).isEqualTo(row.inside(5));
    assertThat(row.finding("count", row.lamps(most + 1)).verdict())
        .isEqualTo(open ? Verdict.CAUTION : Verdict.FAIL);
  }

  @ParameterizedTest
  @MethodSource("rows")
  void halfOfTheMachine(Restated row) {
    if (row.zone() == Row.Zone.ANYWHERE || row.kind() == LampPart.Kind.SIDE_REFLECTOR) {
      return;
    }
    List<LampItem> astray =
        row.lamps(Math.max(1, row.least())).stream()
            .map(
                l ->
                    new LampItem(
                        l.part(),
                        false,
                        l.kind(),
                        l.colour(),
                        !l.ahead(),
                        700,
                        l.yMm(),
                        l.zMm(),
                        30,
                        30,
                        false))
            .toList();
    Finding f = row.finding("count", astray);
    assertThat(f.verdict()).isEqualTo(row.least() > 0 ? Verdict.FAIL : Verdict.CAUTION);
    assertThat(f.text()).contains(row.ahead() ? "in the rear half" : "in the front half");
  }

  @ParameterizedTest
  @MethodSource("rows")
  void colour(Restated row) {
    if (!row.asks(6)) {
      return;
    }
    for (LampPart.Colour colour : LampPart.Colour.values()) {
      LampItem lamp =
          new LampItem("it", false, row.kind(), colour, row.ahead(), 0, 0, 700, 30, 30, false);
      assertThat(row.verdict("colour.it", lamp))
          .as(colour.name())
          .isEqualTo(row.colours().contains(colour) ? row.inside(7) : Verdict.FAIL);
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void placeAcross(Restated row) {
    switch (row.words()[8]) {
      case "PAIR" -> {
        // 1 mm counts as drawn true
        assertThat(row.verdict("placement", row.lamp("a", 1, 700, 30))).isEqualTo(row.inside(9));
        assertThat(row.verdict("placement", row.lamp("a", 1.1, 700, 30))).isEqualTo(Verdict.FAIL);
        LampItem left = row.lamp("a", 100, 700, 30);
        assertThat(row.verdict("placement", left, row.lamp("b", -100, 701, 30)))
            .isEqualTo(row.inside(9));
        assertThat(row.verdict("placement", left, row.lamp("b", -100, 701.1, 30)))
            .isEqualTo(Verdict.FAIL);
        assertThat(row.verdict("placement", left, row.lamp("b", 100, 700, 30)))
            .isEqualTo(Verdict.FAIL);
      }
      case "OFF" -> {
        // traffic keeps left: the off side is the right, y below 0
        assertThat(row.verdict("placement", row.lamp("a", 1, 700, 30))).isEqualTo(row.inside(9));
        assertThat(row.verdict("placement", row.lamp("a", -90, 700, 30))).isEqualTo(row.inside(9));
        assertThat(row.verdict("placement", row.lamp("a", 1.1, 700, 30))).isEqualTo(Verdict.FAIL);
      }
      case "EACH" -> {
        LampItem left = row.lamp("a", 200, 700, 30);
        assertThat(row.verdict("placement", left, row.lamp("b", -200, 701, 30)))
            .isEqualTo(row.inside(9));
        assertThat(row.verdict("placement", left, row.lamp("b", -200, 701.1, 30)))
            .isEqualTo(Verdict.FAIL);
        assertThat(row.verdict("placement", left)).isEqualTo(Verdict.FAIL);
        assertThat(row.verdict("placement", left, row.lamp("b", 0, 700, 30)))
            .isEqualTo(Verdict.FAIL);
      }
      default -> assertThat(row.asks(8)).isFalse();
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void height(Restated row) {
    if (!row.asks(10)) {
      return;
    }
    // the centre, or an edge 20 mm from it
    double edge = row.words()[10].equals("EDGE") ? 20 : 0;
    Verdict inside = row.memory(12) || row.memory(14) ? Verdict.CAUTION : Verdict.PASS;
    if (row.asks(11)) {
      limit(row, row.number(11) + edge, row.number(11), -1, inside);
    }
    if (row.asks(13)) {
      limit(row, row.number(13) - edge, row.number(13), 1, inside);
    }
  }

  /** Tries a lamp whose counted height is on the limit, then 0.1 mm inside and outside. */
  private static void limit(
      Restated row, double centre, double limit, int outward, Verdict inside) {
    for (double out : new double[] {-0.1, 0, 0.1}) {
      Finding f = row.finding("height.it", List.of(row.lamp("it", 0, centre + outward * out, 20)));
      assertThat(f.verdict()).as(f.text()).isEqualTo(out > 0 ? Verdict.FAIL : inside);
      assertThat(f.limit()).isEqualTo(limit);
      assertThat(f.margin()).isCloseTo(-out, org.assertj.core.api.Assertions.within(1e-9));
      assertThat(f.unit()).isEqualTo(FigureUnit.MM);
      if (inside == Verdict.CAUTION) {
        assertThat(f.text()).contains("from memory");
        assertThat(f.source()).contains("from memory");
      }
    }
  }

  @ParameterizedTest
  @MethodSource("rows")
  void litArea(Restated row) {
    if (!row.asks(15)) {
      return;
    }
    boolean each = row.words()[8].equals("EACH");
    // a rectangle 50 mm wide
    double alone = row.number(15) / 100;
    assertThat(row.verdict("area.it", row.lamp("it", 0, 700, 25, alone))).isEqualTo(Verdict.PASS);
    assertThat(row.verdict("area.it", row.lamp("it", 0, 700, 25, alone - 0.01)))
        .isEqualTo(Verdict.FAIL);
    double two = (each ? row.number(15) : row.number(16)) / 100;
    LampItem other = row.lamp("other", -150, 700, 25, 90);
    assertThat(row.verdict("area.it", row.lamp("it", 150, 700, 25, two), other))
        .isEqualTo(Verdict.PASS);
    assertThat(row.verdict("area.it", row.lamp("it", 150, 700, 25, two - 0.01), other))
        .isEqualTo(Verdict.FAIL);
    // as wide as high: a square would do, a circle of that width would not
    double square = Math.sqrt(row.number(15)) / 2 + 0.01;
    assertThat(row.verdict("area.it", row.lamp("it", 0, 700, square))).isEqualTo(Verdict.CAUTION);
  }

  @Test
  void whatWasNotReadOfAKindIsNotCovered() {
    List<String> unread =
        LawTables.rows().stream()
            .filter(row -> row.asked() == Asked.UNREAD)
            .map(row -> row.rules().id() + "." + row.name())
            .toList();
    // Schs. 7, 10 and 18 of SI 1989/1796 and SI 2001/561 were read in part
    assertThat(unread)
        .containsExactly(
            "uk.tail", "uk.front-signal", "uk.rear-signal", "uk.rear-reflector", "uk.plate");
    Restated uk = rows(Sets.UK, UK).filter(r -> r.name().equals("tail")).findFirst().orElseThrow();
    Finding f = uk.finding("not-covered", List.of());
    assertThat(f.verdict()).isEqualTo(Verdict.CAUTION);
    assertThat(f.text()).startsWith("Not covered: number and place");
  }

  @Test
  void everyRowSaysSectionEditionRuleAndStatus() {
    for (Row row : LawTables.rows()) {
      LawSource source = row.sources().get(0);
      assertThat(source.cite())
          .contains(source.section(), source.edition(), source.rule())
          .endsWith(source.status().words());
    }
    // both dates for indicators, for the sources disagree
    assertThat(LawTables.rows())
        .filteredOn(row -> row.rules() == Sets.UK && row.asked() == Asked.NOT_COVERED)
        .filteredOn(none -> none.name().equals("indicator-date"))
        .singleElement()
        .satisfies(none -> assertThat(none.text()).contains("1 Apr 1986", "1 Aug 1986"));
  }
}
