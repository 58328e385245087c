package org.longlow.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.fail;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;

/**
 * Spoils shipped machines at random: pins thrown about or on top of each other, parts and ties
 * taken away, people of every size. Whatever the reader accepts must be answered: no exception, no
 * figure that is not a number where there should be one.
 */
class HostileLayoutTest {

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  private static final int EACH = LONG ? 30 : 4;

  /**
   * Those after the second are for a long run; the fourth has a machine whose section takes long.
   */
  static LongStream seeds() {
    return LongStream.rangeClosed(1, LONG ? 4 : 2);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void whateverIsAcceptedIsAnswered(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int answered = 0;
    for (int i = 0; i < EACH; i++) {
      Layout spoiled = spoil(Demos.layout(random.nextBoolean() ? "heron" : "dunlin"), random);
      String text = LayoutWriter.toJson(spoiled);
      if (!(LayoutReader.checked(spoiled, null) instanceof ReadResult.Read)) {
        continue;
      }
      try {
        Study study = Study.of(spoiled);
        for (Finding f : study.findings()) {
          assertThat(f.text()).as(f.id()).isNotBlank().doesNotContain("NaN");
        }
        assertThat(StudyJson.of(study)).contains("\"findings\"");
        answered++;
      } catch (RuntimeException e) {
        fail("seed " + seed + ", layout " + i + " threw:\n" + text, e);
      }
    }
    assertThat(answered).isGreaterThan(EACH / 4);
  }

  @Test
  void wheelsOnOnePlaceAreAFindingAndTheRestIsAnswered() {
    Layout l = Demos.layout("dunlin");
    List<String> axles =
        l.parts().values().stream()
            .filter(WheelPart.class::isInstance)
            .map(p -> ((WheelPart) p).axle())
            .toList();
    Map<String, Pin> pins = new LinkedHashMap<>();
    axles.forEach(
        a ->
            pins.put(
                a, new Pin(Formula.parse("0 mm"), Formula.parse("280 mm"), true, "frame", "")));
    Layout spoiled =
        new Layout(
            l.name(),
            l.title(),
            Units.MM,
            l.notes(),
            l.measures(),
            l.withPins(pins).pins(),
            l.parts(),
            Map.of(),
            Map.of(),
            Map.of(),
            l.sections(),
            l.stances(),
            l.crew(),
            l.demands(),
            Map.of(),
            Map.of());
    Study study = Study.of(spoiled);
    assertThat(study.findings()).anyMatch(f -> f.text().contains("stands on no road"));
    assertThat(study.findings()).anyMatch(f -> f.id().startsWith("posture."));
    assertThat(study.failing()).isPositive();
  }

  private static Layout spoil(Layout l, SplittableRandom random) {
    Map<String, Pin> pins = new LinkedHashMap<>(l.pins());
    List<String> names = new ArrayList<>(pins.keySet());
    for (int k = random.nextInt(4); k > 0; k--) {
      String name = names.get(random.nextInt(names.size()));
      Pin pin = pins.get(name);
      switch (random.nextInt(3)) {
        case 0 -> pins.put(name, pin.at(mm(random, 300), mm(random, 300)));
        case 1 -> pins.put(name, pin.at(mm(random, 20_000), mm(random, 20_000)));
        default -> {
          Pin other = pins.get(names.get(random.nextInt(names.size())));
          pins.put(name, pin.at(other.x(), other.z()));
        }
      }
    }
    Map<String, Part> parts = new LinkedHashMap<>(l.parts());
    for (int k = random.nextInt(4) / 3; k > 0; k--) {
      List<String> left = new ArrayList<>(parts.keySet());
      parts.remove(left.get(random.nextInt(left.size())));
    }
    Map<String, Tie> ties = new LinkedHashMap<>(l.ties());
    for (int k = random.nextInt(5); k > 0 && !ties.isEmpty(); k--) {
      List<String> left = new ArrayList<>(ties.keySet());
      ties.remove(left.get(random.nextInt(left.size())));
    }
    Layout spoiled =
        new Layout(
            l.name(),
            l.title(),
            Units.MM,
            l.notes(),
            l.measures(),
            pins,
            parts,
            ties,
            l.limits(),
            l.wishes(),
            l.sections(),
            l.stances(),
            l.crew(),
            l.demands(),
            Map.of(),
            Map.of());
    if (random.nextBoolean()) {
      var person = l.crew().values().iterator().next();
      spoiled =
          spoiled.withPerson(
              new org.longlow.constraints.layout.Person(
                  person.name(),
                  person.sex(),
                  Formula.of(random.nextDouble(1200, 2200), Unit.MM),
                  Formula.of(random.nextDouble(30, 200), Unit.KG),
                  person.measured(),
                  person.seats(),
                  random.nextBoolean(),
                  random.nextBoolean(),
                  random.nextBoolean()));
    }
    return spoiled;
  }

  private static Formula mm(SplittableRandom random, double spread) {
    return Formula.of(random.nextDouble(-spread, spread), Unit.MM);
  }
}
