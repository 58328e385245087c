package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.PartBase;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;

class RoundTripTest {

  @Test
  void plankIsReadWhole() {
    Layout plank = Plank.layout();
    assertThat(plank.name()).isEqualTo("plank");
    assertThat(plank.measures()).hasSize(7);
    assertThat(plank.pins()).hasSize(29);
    assertThat(plank.parts()).hasSize(24);
    assertThat(plank.crew().get("Jon").stature().evaluate(n -> 0)).isEqualTo(5.9 * 304.8);
  }

  @Test
  void writingAndReadingGivesAnEqualLayout() {
    Layout plank = Plank.layout();
    String text = LayoutWriter.toJson(plank);
    assertThat(Plank.layout(text)).isEqualTo(plank);
    assertThat(LayoutWriter.toJson(Plank.layout(text))).isEqualTo(text);
  }

  @Test
  void everyMeasureAndPinIsOnALineOfItsOwn() {
    Layout plank =
        Plank.layout(Plank.with("board and foam", "board and foam, " + "a long story ".repeat(20)));
    List<String> lines = LayoutWriter.toJson(plank).lines().map(String::strip).toList();
    List<String> names = new ArrayList<>(plank.pins().keySet());
    names.addAll(plank.measures().keySet());
    names.remove("share"); // also a wish
    for (String name : names) {
      assertThat(lines).filteredOn(l -> l.startsWith("\"" + name + "\": ")).hasSize(1);
    }
    assertThat(lines)
        .contains(
            "\"rearAxle\": {\"at\": [\"0 mm\", \"300 mm\"], \"nailed\": true, \"with\":"
                + " \"rear-wheel\"},");
  }

  @Test
  void editedLayoutIsHeldToTheSameRules() {
    Layout plank = Plank.layout();
    assertThat(LayoutFaults.of(plank)).isEmpty();
    Layout edited =
        plank.withTie(
            "new", Tie.of(TieKind.DISTANCE, List.of("crank", "nowhere"), Formula.parse("1 kg")));
    assertThat(LayoutFaults.of(edited))
        .extracting(Fault::path)
        .containsExactly("$.ties.new.pins[1]", "$.ties.new.is");
  }

  static LongStream seeds() {
    int step = Boolean.getBoolean("longlow.long") ? 1 : 4;
    return LongStream.range(0, 100).filter(seed -> seed % step == 0);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void randomlyEditedLayoutsReadBackEqual(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Layout layout = Plank.layout();
    for (int i = 0; i < 20; i++) {
      layout = edited(layout, random);
    }
    String text = LayoutWriter.toJson(layout);
    assertThat(Plank.layout(text)).isEqualTo(layout);
    assertThat(LayoutWriter.toJson(Plank.layout(text))).isEqualTo(text);
  }

  private static Formula length(SplittableRandom random) {
    return switch (random.nextInt(4)) {
      case 0 -> Formula.of(random.nextDouble(1, 2000), Unit.MM);
      case 1 -> Formula.of(random.nextDouble(1, 2000), Unit.INCH);
      case 2 -> Formula.parse("wheelbase / " + random.nextInt(1, 9) + " + 1/2 in");
      default -> Formula.parse(Integer.toString(random.nextInt(1, 2000))).as(Dim.LENGTH, n -> null);
    };
  }

  private static Layout edited(Layout layout, SplittableRandom random) {
    String note =
        random.nextBoolean()
            ? ""
            : "seen \"here\"\n\t\u00e9\uD83D\uDE00 \\ / " + random.nextInt(99);
    List<String> pins = new ArrayList<>(layout.pins().keySet());
    String pin = pins.get(random.nextInt(pins.size()));
    switch (random.nextInt(6)) {
      case 0:
        Formula is = Formula.of(random.nextDouble(1, 900), Unit.FOOT);
        Optional<Formula> from =
            random.nextBoolean() ? Optional.empty() : Optional.of(Formula.parse("-1 mm"));
        return layout.withMeasure(
            "m" + random.nextInt(5),
            new Measure(
                random.nextBoolean() ? is : Formula.parse(is.text() + " - wheelbase"),
                Dim.LENGTH,
                random.nextBoolean(),
                from,
                Optional.empty(),
                note));
      case 1:
        return layout.withPins(
            Map.of(
                random.nextBoolean() ? pin : "new " + random.nextInt(9) + " (a.b) '+-",
                new Pin(length(random), length(random), random.nextBoolean(), "canopy", note)));
      case 2:
        Part part =
            new RestPart(
                new PartBase(
                    "p" + random.nextInt(5),
                    Optional.empty(),
                    random.nextBoolean() ? Optional.empty() : Optional.of(Formula.parse("1 lb")),
                    random.nextBoolean() ? "" : "steel",
                    random.nextBoolean(),
                    random.nextBoolean(),
                    random.nextBoolean() ? List.of() : List.of("rider", "engine"),
                    note),
                RestPart.Kind.FOOTBOARD,
                "rider",
                pin,
                Optional.of(pins.get(0)),
                length(random),
                length(random),
                length(random),
                random.nextBoolean());
        return layout.withPart(part);
      case 3:
        return layout.withTie(
            "t" + random.nextInt(5),
            new Tie(
                TieKind.PATH_LENGTH,
                List.of(pin, pins.get(0), pin),
                Optional.of(length(random)),
                List.of(length(random)),
                "",
                0,
                random.nextBoolean(),
                note));
      case 4:
        Map<String, Formula> measured = new LinkedHashMap<>();
        if (random.nextBoolean()) {
          measured.put("footlength", Formula.of(random.nextDouble(230, 290), Unit.MM));
        }
        return layout.withPerson(
            new Person(
                "Zo\u00eb " + random.nextInt(5),
                random.nextBoolean() ? "female" : "male",
                Formula.of(random.nextDouble(1400, 2000), Unit.MM),
                Formula.of(random.nextDouble(40, 150), Unit.POUND),
                measured,
                List.of("rider"),
                random.nextBoolean(),
                random.nextBoolean(),
                random.nextBoolean()));
      default:
        return layout.withPins(
            Map.of(pin, layout.pins().get(pin).at(length(random), length(random))));
    }
  }
}
