package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Spread;

/** What a file may say of the breadth of outlined parts, and what is refused. */
class BreadthDocumentTest {

  private static String of(String breadth) {
    return """
        {"longlow": 1, "name": "t", "pins": {"o": [0, 0], "a": [0, 300], "b": [1500, 300]},
         "parts": {
          "rear": {"kind": "wheel", "end": "rear", "axle": "a", "radius": 300, "width": 120},
          "front": {"kind": "wheel", "end": "front", "axle": "b", "radius": 300, "width": 120},
          "tank": {"kind": "tank", "frame": "o",
           "outline": {"points": [[0, 0], [100, 0], [100, 50], [0, 50]]}, %s}}}
        """
        .formatted(breadth);
  }

  private static Layout read(String breadth) {
    ReadResult result = LayoutReader.read(of(breadth), null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) result).layout();
  }

  private static List<String> faults(String breadth) {
    ReadResult result = LayoutReader.read(of(breadth), null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Refused.class);
    return ((ReadResult.Refused) result).faults().stream().map(Fault::line).toList();
  }

  private static Part.Outlined tank(Layout layout) {
    return (Part.Outlined) layout.parts().get("tank");
  }

  private static final String STATIONS =
      "\"stations\": [{\"x\": 0, \"left\": 40}, {\"x\": 100, \"left\": 20, \"right\": 10}]";

  @Test
  void stationsStandAloneAndAFileKeepsThemSo() {
    Layout alone = read(STATIONS + ", \"both\": true");
    Spread spread = tank(alone).base().spread().orElseThrow();
    assertThat(spread.said()).isFalse();
    assertThat(spread.both()).isTrue();
    assertThat(spread.left().text()).isEqualTo("40");
    String written = LayoutWriter.toJson(alone);
    assertThat(written).containsOnlyOnce("\"40\"").containsOnlyOnce("\"right\"");
    ReadResult again = LayoutReader.read(written, null);
    assertThat(((ReadResult.Read) again).layout()).isEqualTo(alone);

    String body = "{\"outline\": {\"points\": [[0, 0], [50, 0], [50, 50]]}, " + STATIONS + "}";
    Layout bodies = read("\"left\": 30, \"right\": 30, \"bodies\": [" + body + "]");
    assertThat(tank(bodies).bodies().get(0).spread().said()).isFalse();
    assertThat(tank(bodies).base().spread().orElseThrow().said()).isTrue();
    again = LayoutReader.read(LayoutWriter.toJson(bodies), null);
    assertThat(((ReadResult.Read) again).layout()).isEqualTo(bodies);
  }

  @Test
  void somethingMustSayHowFarItReaches() {
    String advice =
        "is missing; add \"left\" and \"right\", each a length (such as 1600 mm), or \"stations\"";
    assertThat(faults("\"mass\": 1")).containsExactly("$.parts.tank.left: " + advice);
    assertThat(faults("\"stations\": []")).containsExactly("$.parts.tank.left: " + advice);
    String body = "{\"outline\": {\"points\": [[0, 0], [50, 0], [50, 50]]}}";
    assertThat(faults("\"left\": 3, \"right\": 3, \"bodies\": [" + body + "]"))
        .containsExactly("$.parts.tank.bodies[0].left: " + advice);
    // one side alone is meant for nothing, with stations or without
    assertThat(faults("\"left\": 30, " + STATIONS))
        .containsExactly(
            "$.parts.tank.right: is missing; add \"right\", a length (such as 1600 mm)");
  }

  @Test
  void somewhereItIsBroaderThanNought() {
    String flat = "\"stations\": [{\"x\": 0, \"left\": 0}, {\"x\": 9, \"left\": 5, \"right\": -5}]";
    String told = "$.parts.tank.stations = [...]: leave no width";
    assertThat(faults(flat)).singleElement().asString().startsWith(told);
    assertThat(faults("\"left\": 30, \"right\": 30, " + flat))
        .singleElement()
        .asString()
        .startsWith(told);
    read("\"stations\": [{\"x\": 0, \"left\": 0}, {\"x\": 9, \"left\": 5, \"right\": -4}]");
  }

  /** 5 m to a side is broader than any road; more is a slip of the unit. */
  @Test
  void noPartReachesFartherThanARoadIsWide() {
    read("\"left\": \"5 m\", \"right\": \"-4.9 m\"");
    String told = "must be from -5000 to 5000 mm";
    assertThat(faults("\"left\": \"5.001 m\", \"right\": 0"))
        .singleElement()
        .asString()
        .startsWith("$.parts.tank.left = ")
        .contains(told);
    assertThat(faults("\"stations\": [{\"x\": 0, \"left\": \"45 m\"}]"))
        .singleElement()
        .asString()
        .contains(told);
  }

  @Test
  void aWrongProfileIsToldAllItMayBe() {
    String may =
        "write one of these, in quotes, or some of {\"shape\": ..., \"corner\": ...,"
            + " \"points\": ...}";
    for (String wrong : List.of("3", "[]", "\"rectangle\"", "null")) {
      assertThat(faults("\"left\": 3, \"right\": 3, \"profile\": " + wrong))
          .as(wrong)
          .singleElement()
          .asString()
          .contains("must be one of flat, round, oval, or an object")
          .endsWith(may);
    }
    assertThat(faults("\"left\": 3, \"right\": 3, \"profile\": \"ovall\""))
        .singleElement()
        .asString()
        .endsWith("did you mean oval?");
  }
}
