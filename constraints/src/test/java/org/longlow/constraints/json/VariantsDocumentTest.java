package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.document.Varied;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.rider.geom.OutOfRange;

/** What may be said of variants and of the machine as built, and what follows from it. */
class VariantsDocumentTest {

  private static final Layout PLANK = Plank.layout();

  @Test
  void theRestOfTheFileMeansWhatItMeant() {
    String text = Plank.text();
    int at = text.indexOf(",\n  \"variants\"");
    String bare = text.substring(0, at) + "\n}\n";
    Layout plain = Plank.layout(bare);
    assertThat(Varied.planned(PLANK)).isEqualTo(plain);
    assertThat(LayoutWriter.toJson(plain)).doesNotContain("variants").doesNotContain("asBuilt");
    assertThat(plain.asBuilt()).isEqualTo(AsBuilt.NOTHING);
  }

  @Test
  void aVariantHasWhatItSaysAndAllElseOfTheLayout() {
    Layout longer = Varied.named(PLANK, "long");
    assertThat(longer.measures().get("wheelbase").is().text()).isEqualTo("1700 mm");
    assertThat(longer.measures().get("rake")).isEqualTo(PLANK.measures().get("rake"));
    assertThat(longer.pins().get("headTop").x().text()).isEqualTo("1240 mm");
    WheelPart rear = (WheelPart) longer.parts().get("rearWheel");
    assertThat(rear.radius().orElseThrow().evaluate(n -> 0)).isEqualTo(310);
    assertThat(longer.parts()).doesNotContainKey("sideStand").hasSize(PLANK.parts().size() - 1);
    assertThat(longer.variants()).isEmpty();
    assertThat(Varied.named(PLANK, "bare")).isEqualTo(Varied.planned(PLANK));
    assertThatThrownBy(() -> Varied.named(PLANK, "lang"))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("did you mean long?");
  }

  @Test
  void aMeasureOfWhichOnlyTheValueIsSaidKeepsTheRest() {
    String ranged =
        """
        {"is": "1640 mm", "free": true, "from": "1600 mm", "to": "1800 mm", "note": "to hubs"}""";
    Layout layout = Plank.layout(Plank.with("\"1640 mm\"", ranged));
    Measure plan = layout.measures().get("wheelbase");
    assertThat(plan.free()).isTrue();
    assertThat(Varied.named(layout, "long").measures().get("wheelbase"))
        .isEqualTo(
            new Measure(
                Formula.parse("1700 mm"), plan.dim(), false, plan.from(), plan.to(), "to hubs"));
    // and what it keeps is the layout's, not its own
    assertThat(LayoutWriter.toJson(layout)).contains("\"measures\": {\"wheelbase\": \"1700 mm\",");
    assertThat(Varied.named(layout, "long").measures().get("seatHeight").note())
        .isEqualTo("more foam");
  }

  @Test
  void measuredValuesStandInThePlaceOfPlannedOnes() {
    Layout built = Varied.measured(PLANK);
    // a bare or other unit is that of the measure, and it is not sought any more
    assertThat(built.measures().get("rake").is().evaluate(n -> 0))
        .isCloseTo(27.4 * Math.PI / 180, within(1e-12));
    assertThat(built.measures().get("rake").free()).isFalse();
    assertThat(built.limits()).doesNotContainKey("steer").containsKey("pegHeight");
    assertThat(built.pins().get("frontAxle").nailed()).isTrue();
    assertThat(built.pins().get("frontAxle").with()).isEqualTo("front-wheel");
    assertThat(built.parts().get("frontWheel").base().mass().orElseThrow().text())
        .isEqualTo("13.4 kg");
    assertThat(((WheelPart) built.parts().get("rearWheel")).radius().orElseThrow().text())
        .isEqualTo("301 mm");
    assertThat(
            built.ties().get("measured distance headTop to headBottom").is().orElseThrow().text())
        .isEqualTo("178 mm");
    assertThat(LayoutFaults.of(built)).isEmpty();
  }

  @ParameterizedTest(name = "{1}")
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          "frontAxle": ["1652 mm", "300 mm"]} ~ "frontAxel": ["1 mm", "3 mm"]} ~ $.asBuilt.pins.frontAxel ~ is no pin here
          "frontAxle": ["1652 mm", "300 mm"]} ~ "frontAxle": ["NaN mm", "3 mm"]} ~ $.asBuilt.pins.frontAxle[0] ~ cannot be read
          "frontAxle": ["1652 mm", "300 mm"]} ~ "frontAxle": ["1 mm"]} ~ $.asBuilt.pins.frontAxle ~ must hold two lengths
          "frontAxle": ["1652 mm", "300 mm"]} ~ "headTop": ["1250 mm", "700 mm"], "headBottom": ["1250 mm", "700.9 mm"]} ~ $.asBuilt.pins.headTop ~ the steering axis of
          "frontAxle": ["1652 mm", "300 mm"]} ~ "rearAxle": ["0 mm", "300 mm"], "swingPivot": ["0.3 mm", "300.4 mm"]} ~ $.asBuilt.pins ~ the arm of
          "rake": "27.4 deg" ~ "rake": "27 kg" ~ $.asBuilt.measures.rake ~ needs an angle
          "rake": "27.4 deg" ~ "rook": "27 deg" ~ $.asBuilt.measures.rook ~ is no measure here
          "frontWheel": "13.4 kg" ~ "frontWheel": "0 kg" ~ $.asBuilt.masses.frontWheel ~ must be more than 0
          "rearWheel": "301 mm" ~ "pan": "301 mm" ~ $.asBuilt.radii.pan ~ which has no tyre
          "to": "headBottom", "is": "178 mm" ~ "to": "headTop", "is": "178 mm" ~ $.asBuilt.spans[0].to ~ is the pin measured from
          "to": "headBottom", "is": "178 mm" ~ "to": "headBottom", "is": "-1 mm" ~ $.asBuilt.spans[0].is ~ must not be negative
          "to": "headBottom", "is": "178 mm" ~ "to": "headBottom", "is": "0 mm" ~ $.asBuilt.spans[0].is ~ two pins are at least 1 mm apart
          "to": "headBottom", "is": "178 mm" ~ "to": "headBottom", "is": "0.9 mm" ~ $.asBuilt.spans[0].is ~ two pins are at least 1 mm apart
          "to": "headBottom", "is": "178 mm" ~ "to": "headBottom", "is": "10001 mm" ~ $.asBuilt.spans[0].is ~ no machine has pins farther apart than 10000 mm
          "measured": "distance", "from": "headTop", "to": "headBottom", "is": "178 mm" ~ "measured": "above", "from": "headTop", "to": "headBottom", "is": "-90 m" ~ $.asBuilt.spans[0].is ~ is -90000 mm, and no machine
          "rearWheel": "301 mm" ~ "rearWheel": "50 m" ~ $.asBuilt.radii.rearWheel ~ must be from 50 to 2000 mm
          "rearWheel": "301 mm" ~ "rearWheel": "2001 mm" ~ $.asBuilt.radii.rearWheel ~ must be from 50 to 2000 mm
          "rearWheel": "301 mm" ~ "rearWheel": "51 mm" ~ $.asBuilt.radii.rearWheel ~ the radius of wheel rearWheel, 51 mm, is less than that of its tyre's section
          "bare": {} ~ "as-built": {} ~ $.variants.as-built ~ choose another name
          "without": ["sideStand"] ~ "without": ["stand"] ~ $.variants.long.without[0] ~ is no part here
          "without": ["sideStand"] ~ "without": ["rearWheel"] ~ $.variants.long.without ~ is in the parts of this variant too
          "headTop": ["1240 mm", "860 mm"] ~ "headTop": ["1240 kg", "860 mm"] ~ $.variants.long.pins.headTop[0] ~ needs a length
          "wheelbase": "1700 mm", "seatHeight" ~ "wheelbase": "wheelbase + 1 mm", "seatHeight" ~ $.variants.long.measures.wheelbase ~ goes round in a circle
          "axle": "rearAxle", "radius": "310 mm" ~ "axle": "rearAxel", "radius": "310 mm" ~ $.variants.long.parts.rearWheel.axle ~ is no pin here
          "end":"rear", "axle": "rearAxle", "radius": "310 mm" ~ "end": "front", "axle": "rearAxle", "radius": "310 mm" ~ $.variants.long ~ 2 wheels
          """)
  void whatCannotBeIsToldWhereItStands(String piece, String instead, String path, String says) {
    String faults =
        Plank.lines(LayoutReader.read(Plank.with(piece.strip(), instead.strip()), null));
    assertThat(faults).contains(path.strip());
    assertThat(faults).contains(says.strip());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          "is": "178 mm" ~ "is": "1 mm"
          "frontAxle": ["1652 mm", "300 mm"]} ~ "headTop": ["1250 mm", "700 mm"], "headBottom": ["1250 mm", "701 mm"]}
          "is": "178 mm" ~ "is": "10000 mm"
          "rearWheel": "301 mm" ~ "rearWheel": "1000 mm"
          "rearWheel": "301 mm" ~ "rearWheel": "100 mm"
          """)
  void whatJustCanBeIsTaken(String piece, String instead) {
    assertThat(LayoutReader.read(Plank.with(piece.strip(), instead.strip()), null))
        .isInstanceOf(ReadResult.Read.class);
  }

  @Test
  void spansOfTheSamePinsAreCalledByTheirPins() {
    Layout thrice = PLANK;
    for (int i = 0; i < 2; i++) {
      thrice = Typing.added(thrice, "", List.of("asBuilt", "spans"));
    }
    assertThat(Varied.measured(thrice).ties())
        .containsKeys(
            "measured distance headTop to headBottom",
            "distance headTop to headBottom measured again",
            "distance headTop to headBottom measured again 3")
        .hasSize(PLANK.ties().size() + 3);
    assertThat(LayoutFaults.of(Varied.measured(thrice))).isEmpty();
  }

  /** Plank's own two variants and so many more, of which the last is broken. */
  private static String many(int more) {
    StringBuilder text = new StringBuilder();
    for (int i = 1; i < more; i++) {
      text.append("\"v").append(i).append("\": {\"measures\": {\"wheelbase\": \"1650 mm\"}}, ");
    }
    text.append("\"broken\": {\"measures\": {\"wheelbase\": \"16 kg\"}}, \"bare\": {}");
    return Plank.with("\"bare\": {}", text.toString());
  }

  @Test
  void oneOfManyIsLookedAtWhenItIsAskedFor() {
    assertThat(Plank.lines(LayoutReader.read(many(18), null)))
        .contains("$.variants.broken.measures.wheelbase");
    ReadResult.Read read = (ReadResult.Read) LayoutReader.read(many(19), null);
    assertThat(read.notes()).anyMatch(n -> n.contains("of 21 variants 21 are not checked"));
    assertThatThrownBy(() -> Varied.named(read.layout(), "broken"))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("variant broken cannot be: $.measures.wheelbase");
    assertThat(Varied.named(read.layout(), "v3").measures().get("wheelbase").is().text())
        .isEqualTo("1650 mm");
    List<String> place = List.of("variants", "v3", "measures", "wheelbase", "is");
    assertThatThrownBy(() -> Typing.typed(read.layout(), "16 kg", place))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("variant v3 cannot be");
    assertThat(Typing.typed(read.layout(), "1660 mm", place).variants().get("v3").measures())
        .containsKey("wheelbase");
  }

  @Test
  void whatIsRenamedOrTakenOutIsSoInVariantsToo() {
    Layout renamed = Entries.renamed(PLANK, new Entry("pins", "frontAxle"), "spindle");
    assertThat(renamed.asBuilt().pins()).containsOnlyKeys("spindle");
    Layout measure = Entries.renamed(PLANK, new Entry("measures", "wheelbase"), "reach");
    assertThat(measure.variants().get("long").measures()).containsKey("reach");
    Layout part = Entries.renamed(PLANK, new Entry("parts", "rearWheel"), "hind");
    assertThat(part.variants().get("long").parts().get("hind").name()).isEqualTo("hind");
    assertThat(part.asBuilt().radii()).containsOnlyKeys("hind");
    Layout stand = Entries.without(PLANK, new Entry("parts", "sideStand")).layout();
    assertThat(stand.variants().get("long").without()).isEmpty();
    Layout head = Entries.without(PLANK, new Entry("pins", "headTop")).layout();
    assertThat(head.asBuilt().spans()).isEmpty();
    assertThat(head.asBuilt().masses()).isEqualTo(PLANK.asBuilt().masses());
  }

  @Test
  void whatIsSaidFirstOfAThingIsAsPlanned() {
    List<String> pins = List.of("asBuilt", "pins");
    Layout more = Typing.added(PLANK, "headTop", pins);
    assertThat(more.asBuilt().pins().get("headTop"))
        .extracting("text")
        .containsExactly("1230 mm", "860 mm");
    Layout typed = Typing.typed(more, "1233 mm", List.of("asBuilt", "pins", "headTop", "0"));
    assertThat(Varied.measured(typed).pins().get("headTop").x().text()).isEqualTo("1233 mm");
    Layout part = Typing.added(PLANK, "pan", List.of("variants", "bare", "parts"));
    assertThat(part.variants().get("bare").parts().get("pan")).isEqualTo(PLANK.parts().get("pan"));
    // an angle typed bare is one of the measure's
    Layout rake = Typing.typed(PLANK, "26", List.of("asBuilt", "measures", "rake"));
    assertThat(
            Varied.measured(Plank.layout(LayoutWriter.toJson(rake)))
                .measures()
                .get("rake")
                .is()
                .evaluate(n -> 0))
        .isCloseTo(Math.toRadians(26), within(1e-12));
  }
}
