package org.longlow.constraints.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.ForkJoinPool;
import java.util.function.UnaryOperator;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.StudyJson;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;

/**
 * Whatever was edited before, and however many threads look at it, a study is what it would be of a
 * machine never seen before, by one thread.
 */
class StudiedAgainTest {

  private static final ForkJoinPool ONE_THREAD = new ForkJoinPool(1);

  private final Random random = new Random(20261130);

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  static List<String> machines() {
    return LONG ? List.of("tourer", "runabout") : List.of("tourer");
  }

  /** By default one edit of each sort. */
  @ParameterizedTest
  @MethodSource("machines")
  @Tag("long")
  void isThatOfAMachineNeverSeenBefore(String name) {
    List<Layout> history = new ArrayList<>(List.of(TestMachine.named(name).layout()));
    for (int edit = 0; edit < (LONG ? 5 : 4); edit++) {
      Layout before = history.get(history.size() - 1);
      Layout now =
          switch (edit % 5) {
            case 0, 4 -> pinMoved(before);
            case 1 -> measureChanged(before);
            case 2 -> partReplaced(before);
            default -> history.get(random.nextInt(history.size()));
          };
      history.add(now);
      assertThat(StudyJson.of(Study.of(now)))
          .as("edit " + edit)
          .isEqualTo(StudyJson.of(ONE_THREAD.submit(() -> Study.of(unknown(now))).join()));
    }
  }

  @Test
  void whatHasNotMovedIsTheSameObject() {
    Layout tourer = TestMachine.tourer().layout();
    Study before = Study.of(tourer);
    Study again = Study.of(tourer.withPins(Map.of()));
    assertThat(again.shapes()).isNotEmpty();
    again.shapes().forEach((part, shape) -> assertThat(shape).isSameAs(before.shapes().get(part)));
    for (int i = 0; i < before.sittings().size(); i++) {
      assertThat(again.sittings().get(i)).isSameAs(before.sittings().get(i));
    }
  }

  private Layout pinMoved(Layout layout) {
    List<String> movable = layout.pins().keySet().stream().filter(p -> plain(layout, p)).toList();
    String name = movable.get(random.nextInt(movable.size()));
    Pin pin = layout.pins().get(name);
    return layout.withPins(Map.of(name, pin.at(shifted(pin.x()), shifted(pin.z()))));
  }

  private static boolean plain(Layout layout, String pin) {
    Pin p = layout.pins().get(pin);
    return plain(p.x()) && plain(p.z());
  }

  private static boolean plain(Formula formula) {
    try {
      return Double.isFinite(formula.evaluate(name -> Double.NaN));
    } catch (FormulaException e) {
      return false;
    }
  }

  private Formula shifted(Formula place) {
    return Formula.of(place.evaluate(n -> Double.NaN) + 8 * random.nextDouble() - 4, Unit.MM);
  }

  private Layout measureChanged(Layout layout) {
    Measure wheelbase = layout.measures().get("wheelbase");
    return layout.withMeasure("wheelbase", wheelbase.withIs(shifted(wheelbase.is())));
  }

  /** A part that is equal and yet another, as one whose field was typed and taken back. */
  private Layout partReplaced(Layout layout) {
    List<Part> parts = List.copyOf(layout.parts().values());
    return layout.withPart(copy(parts.get(random.nextInt(parts.size()))));
  }

  /** The same layout in objects that nobody has seen. */
  private static Layout unknown(Layout layout) {
    return Changed.with(
        layout,
        Map.of(
            "parts", each(layout.parts(), StudiedAgainTest::copy),
            "crew", each(layout.crew(), StudiedAgainTest::copy)));
  }

  private static <V> Map<String, V> each(Map<String, V> all, UnaryOperator<V> copy) {
    Map<String, V> copies = new LinkedHashMap<>();
    all.forEach((name, value) -> copies.put(name, copy.apply(value)));
    return copies;
  }

  @SuppressWarnings("unchecked")
  private static <V> V copy(V value) {
    return (V) Changed.with((Record) value, Map.of());
  }
}
