package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.template.RailJoints.said;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.study.Study;

/** What is bought and still needs marks: apertures of lamps, dummies, lengths of legs and links. */
class BoughtTemplatesTest {

  private static final String PINS =
      "\"l\": [1800, 700], \"s\": [1500, 500], \"n\": [1700, 650], \"t\": [1600, 800], \"u\":"
          + " [1700, 500], \"v\": [1850, 330]";

  private static String lamp(String name, String kind, String at, String more) {
    return ("\"%s\": {\"kind\": \"lamp\", \"lamp\": \"%s\", \"at\": \"%s\", \"halfWidth\": 80,"
            + " \"halfHeight\": 50, \"depth\": 95, \"colour\": \"white\", \"mass\": 1%s}")
        .formatted(name, kind, at, more);
  }

  private static final String COWL =
      ", \"nose\": {\"kind\": \"cowl\", \"frame\": \"n\", \"left\": 150, \"right\": 150,"
          + " \"thickness\": 3, \"mass\": 1, \"outline\": {\"points\": [[0, 0], [100, 0], [100, 100],"
          + " [0, 100]]}, \"touches\": [%s]}";

  private static List<String> names(Study study, String... of) {
    return Templates.of(study, Set.of(of)).stream().map(NamedDrawing::name).toList();
  }

  @Test
  void aLampInACowlHasAnAperture() {
    Study study =
        RailJoints.study(
            "mm",
            PINS,
            lamp("head", "headlamp", "l", "")
                + ", "
                + lamp("pair", "front-signal", "s", ", \"y\": 200, \"pair\": true")
                + COWL.formatted("\"head\""));
    assertThat(names(study)).contains("head, aperture").doesNotContain("pair, aperture");
    assertThat(names(study, "pair")).contains("pair, aperture");
    assertThat(names(study, "nose")).doesNotContain("head, aperture");
    NamedDrawing head = named(study, "head, aperture", "head");
    PlainPiece plain = head.plain().orElseThrow();
    assertThat(plain.longMm()).isCloseTo(160, within(1e-9));
    assertThat(plain.wideMm()).isCloseTo(100, within(1e-9));
    assertThat(said(head))
        .contains("aperture in nose, make 1", "from ahead", "700 mm over the ground as drawn");
    assertThat(said(named(study, "pair, aperture", "pair")))
        .contains("aperture, make 2", "200 mm beside the middle");
  }

  /** A tail lamp is seen from behind, where the right side lies to the right; a reflector aside. */
  @Test
  void anApertureIsSeenFromWhereItShinesTo() {
    Study study =
        RailJoints.study(
            "mm",
            PINS,
            lamp("tail", "tail", "l", ", \"y\": 60, \"touches\": [\"nose\"]")
                + ", "
                + lamp("side", "side-reflector", "s", ", \"y\": 150, \"pair\": true")
                + COWL.formatted(""));
    NamedDrawing tail = named(study, "tail, aperture", "tail");
    assertThat(tail.right()).isEqualTo("right side");
    assertThat(tail.laid().ink().orElseThrow().getEnvelopeInternal().centre().x)
        .isCloseTo(-60, within(1e-9));
    NamedDrawing side = named(study, "side, aperture", "side");
    assertThat(side.right()).isEqualTo("forward");
    assertThat(side.plain().orElseThrow().wideMm()).isCloseTo(95, within(1e-9));
  }

  private static NamedDrawing named(Study study, String name, String part) {
    return Templates.of(study, Set.of(part)).stream()
        .filter(d -> d.name().equals(name))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whatIsBoughtIsADummy() {
    String engine =
        "\"motor\": {\"kind\": \"engine\", \"frame\": \"s\", \"left\": 150, \"right\": 100,"
            + " \"mass\": 60, \"outline\": {\"points\": [[0, 0], [300, 0], [200, 300]]}}";
    Study study = RailJoints.study("mm", PINS, engine);
    assertThat(names(study)).isEmpty();
    String said = said(Templates.of(study, Set.of("motor")).get(0));
    assertThat(said)
        .contains("dummy of what is bought: cut it of card or foam")
        .contains("250 mm broad throughout")
        .doesNotContain("make 1");
  }

  /** Links from (1700, 500) to (2000, 300): 360.6; legs from (1600, 800): 316.2. */
  @Test
  void legsAndLinksAndArmsSayTheirLengths() {
    String front =
        "\"front\": {\"kind\": \"front\", \"type\": \"leading-link\", \"top\": \"l\", \"bottom\":"
            + " \"t\", \"pivot\": \"u\", \"axle\": \"f\", \"tube\": 41, \"y\": 95, \"bump\": 60,"
            + " \"droop\": 40, \"mass\": 12}, \"arm\": {\"kind\": \"swingarm\", \"pivot\": \"s\","
            + " \"axle\": \"r\", \"depth\": 40, \"left\": 90, \"right\": 90, \"bump\": 60,"
            + " \"droop\": 40, \"mass\": 5}, \"prop\": {\"kind\": \"stand\", \"pivot\": \"u\","
            + " \"foot\": \"v\", \"stowed\": \"s\", \"y\": 200, \"diameter\": 20, \"lean\": 12}";
    Study study = RailJoints.study("mm", PINS, front);
    assertThat(said(Templates.of(study, Set.of("front")).get(0)))
        .contains(
            "steering axis from l to t 223.6 mm",
            "legs from t to u 316.2 mm",
            "links from u to f 360.6 mm, middle to middle",
            "Ø41, 95 mm to each side");
    assertThat(said(Templates.of(study, Set.of("arm")).get(0)))
        .contains("arm from s to r 1513.3 mm");
    assertThat(said(Templates.of(study, Set.of("prop")).get(0)))
        .contains("leg as seen from the side from u to s 200 mm");
  }
}
