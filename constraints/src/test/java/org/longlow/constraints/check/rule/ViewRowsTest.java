package org.longlow.constraints.check.rule;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.check.rule.Ruling.Outcome;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.FieldOfView;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.law.LawTables;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.layout.LampPart.Colour;
import org.longlow.constraints.layout.LampPart.Kind;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;

/**
 * Every row on from where lamps are seen: its angles and how well they are known are restated here
 * from the sources, and both sides of each are tried.
 */
class ViewRowsTest {

  // in, out, up, down, down where low; a status is T for transcribed, M for from memory.
  // us: 49 CFR 571.108 Tables V-b to V-d; across transcribed, up and down from memory.
  // un-r53: annex 3 by its contents, all from memory.
  // uk: Northern Ireland 2000 Sch. 12; 5 deg below 750 mm from a table for cars.
  private static final String ROWS =
      """
      us     TAIL           SEEN        45 45 15 15 -                  M
      us     STOP           SEEN_ALONE  45 45 15 15 -                  M
      us     STOP           SEEN_SHARED 10 45 15 15 -                  M
      us     FRONT_SIGNAL   SEEN        20 45 15 15 -                  M
      us     REAR_SIGNAL    SEEN        20 45 15 15 -                  M
      un-r53 DRIVING_BEAM   SEEN        5  5  5  5  -                  M
      un-r53 HEADLAMP       SEEN_ALONE  45 45 15 10 -                  M
      un-r53 HEADLAMP       SEEN_SHARED 10 45 15 10 -                  M
      un-r53 FRONT_SIGNAL   SEEN        20 80 15 15 5<750              M
      un-r53 REAR_SIGNAL    SEEN        20 80 15 15 5<750              M
      un-r53 STOP           SEEN_ALONE  45 45 15 15 5<750              M
      un-r53 STOP           SEEN_SHARED 10 45 15 15 5<750              M
      un-r53 FRONT_POSITION SEEN_ALONE  80 80 15 15 5<750              M
      un-r53 FRONT_POSITION SEEN_SHARED 45 80 15 15 5<750              M
      un-r53 TAIL           SEEN_ALONE  80 80 15 15 5<750              M
      un-r53 TAIL           SEEN_SHARED 45 80 15 15 5<750              M
      un-r53 REAR_REFLECTOR SEEN_ALONE  30 30 15 15 5<750              M
      un-r53 REAR_REFLECTOR SEEN_SHARED 10 30 15 15 5<750              M
      un-r53 SIDE_REFLECTOR SEEN        30 30 15 15 5<750              M
      un-r53 FRONT_FOG      SEEN        45 45 5  5  -                  M
      un-r53 REAR_FOG       SEEN        25 25 5  5  -                  M
      un-r53 DAYTIME        SEEN        10 20 10 10 -                  M
      uk     STOP           SEEN        45 45 15 15 10<1500,5<750      T
      """;

  private static Stream<Row> rows() {
    return LawTables.rows().stream().filter(row -> row.asked().about() == Asked.Subject.VIEW);
  }

  @Test
  void theTablesHoldTheseRowsAndNoOthers() {
    assertThat(rows().map(ViewRowsTest::words))
        .containsExactlyElementsOf(ROWS.lines().map(l -> l.replaceAll(" +", " ")).toList());
  }

  private static String words(Row row) {
    FieldOfView field = row.field();
    String low =
        field.low().stream()
            .map(l -> "%.0f<%.0f".formatted(l.down(), l.belowMm()))
            .collect(Collectors.joining(","));
    return "%s %s %s %.0f %.0f %.0f %.0f %s %s"
        .formatted(
            row.rules().id(),
            row.kind(),
            row.asked(),
            field.in(),
            field.out(),
            field.up(),
            field.down(),
            low.isEmpty() ? "-" : low,
            switch (row.sources().get(0).status()) {
              case CHECKED -> "C";
              case TRANSCRIBED -> "T";
              case FROM_MEMORY -> "M";
            });
  }

  /** A post 1 m off stands half a degree beyond what is asked, or half a degree within it. */
  @ParameterizedTest
  @MethodSource("rows")
  void eachSide(Row row) {
    for (boolean out : List.of(true, false)) {
      double asked = out ? row.field().out() : row.field().in();
      assertThat(outcome(row, out, asked + 0.5)).isEqualTo(Outcome.INSIDE);
      assertThat(outcome(row, out, asked - 0.5)).isEqualTo(Outcome.OUTSIDE);
    }
  }

  private static Outcome outcome(Row row, boolean out, double angleDeg) {
    double height = 700;
    boolean sideways = row.kind() == Kind.SIDE_REFLECTOR;
    boolean front = row.zone() != Row.Zone.REAR;
    double x = front ? 1400 : 100;
    double y = sideways ? 200 : 50;
    // a face of no size to speak of, for its edges not to be what is hidden
    LampItem lamp =
        new LampItem("it", false, row.kind(), Colour.RED, front, x, y, height, 0.01, 0.01, false);
    double a = Math.toRadians(angleDeg);
    double ahead = 1000 * Math.cos(a);
    double aside = (out ? 1000 : -1000) * Math.sin(a);
    LampViewsTest.Box post =
        sideways
            ? thin(x + aside, y + ahead, height)
            : thin(front ? x + ahead : x - ahead, y + aside, height);
    List<LampItem> lamps = new ArrayList<>(List.of(lamp));
    if (row.asked() == Asked.SEEN_SHARED) {
      lamps.add(
          new LampItem("far", false, row.kind(), Colour.RED, front, x, y, 9e5, 0.01, 0.01, false));
    }
    LampViews views =
        new LampViews(
            List.of(post.shape("post")),
            (p, q) -> false,
            new Ground(PointMm.ORIGIN, new PointMm(1500, 0)),
            List.of(row.field()));
    return ViewRulings.of(row, lamps, views).get(0).outcome();
  }

  private static LampViewsTest.Box thin(double x, double y, double z) {
    return new LampViewsTest.Box(x - 0.1, x + 0.1, y - 0.1, y + 0.1, z - 10, z + 10);
  }

  @Test
  void aLampIsJudgedAloneOrAsOneOfSeveral() {
    Row alone = rows().filter(r -> r.asked() == Asked.SEEN_ALONE).findFirst().orElseThrow();
    Row shared = rows().filter(r -> r.asked() == Asked.SEEN_SHARED).findFirst().orElseThrow();
    LampViews nothing =
        new LampViews(
            List.of(),
            (p, q) -> false,
            new Ground(PointMm.ORIGIN, new PointMm(1500, 0)),
            List.of());
    LampItem one =
        new LampItem("one", false, alone.kind(), Colour.RED, false, 0, 40, 700, 20, 20, false);
    assertThat(ViewRulings.of(alone, List.of(one), nothing)).hasSize(1);
    assertThat(ViewRulings.of(shared, List.of(one), nothing)).isEmpty();
    List<LampItem> pair = List.of(one, one.mirrored());
    assertThat(ViewRulings.of(alone, pair, nothing)).isEmpty();
    assertThat(ViewRulings.of(shared, pair, nothing)).hasSize(1);
    assertThat(ViewRulings.of(alone, List.of(), nothing)).isEmpty();
  }
}
