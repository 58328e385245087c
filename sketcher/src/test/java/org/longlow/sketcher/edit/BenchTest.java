package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.FormulaException;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.Wren;

class BenchTest {

  private final Layout layout = Wren.layout();
  private final Places places = drawn(layout);

  /** Returns the places as drawn, without solving. */
  static Places drawn(Layout layout) {
    Measures measures = Measures.of(layout);
    Map<String, Double> values = measures.values(n -> measures.start().get(n));
    Map<String, PointMm> pins = new LinkedHashMap<>();
    layout
        .pins()
        .forEach(
            (name, pin) ->
                pins.put(
                    name,
                    new PointMm(pin.x().evaluate(values::get), pin.z().evaluate(values::get))));
    return new Places(pins, values);
  }

  /** The rows of what a part says of itself. */
  private List<Bench.Row> own(Layout in, String part) {
    return OnBench.of(in, places, "part:" + part).groups().stream()
        .filter(g -> g.heading().equals("its own"))
        .findFirst()
        .orElseThrow()
        .rows();
  }

  /** Headings, each followed by the keys of its rows. */
  private static List<String> laid(Bench bench) {
    List<String> all = new ArrayList<>();
    for (Bench.Group group : bench.groups()) {
      all.add(group.heading() + ":");
      group.rows().forEach(r -> all.add(r.label()));
    }
    return all;
  }

  @Test
  void whatFindingsMissComesFirst() {
    assertThat(laid(OnBench.of(layout, places, "part:grips")))
        .startsWith("to give first:", "mass", "its own:");
    assertThat(laid(OnBench.of(layout, places, "part:tank"))).startsWith("its own:");
    Layout soft = Edits.set(new Target.OfPart("fork", List.of("rate"), "rate"), "").applied(layout);
    assertThat(laid(OnBench.of(soft, places, "part:fork")))
        .startsWith("to give first:", "rate", "its own:");
  }

  /** Whoever fills in one field after the other goes on to the next, wherever each belongs. */
  @Test
  void whatIsFilledInStaysInItsPlaceWhileTheThingIsPicked() {
    Bench before = OnBench.of(layout, places, "part:grips");
    for (Bench.Row row : before.groups().stream().flatMap(g -> g.rows().stream()).toList()) {
      String text = row.label().equals("mass") ? "2 kg" : row.text().isEmpty() ? "" : "40 mm";
      if (row.input() == Form.Input.QUANTITY && !text.isEmpty()) {
        Layout filled = Edits.set(row.target(), text).applied(layout);
        Bench after = BenchPlaces.keep(before, OnBench.of(filled, places, "part:grips"));
        assertThat(laid(after)).as(row.label()).isEqualTo(laid(before));
        assertThat(row(after, row.target()).orElseThrow().text()).isEqualTo(text);
      }
    }
    Bench pan = OnBench.of(layout, places, "part:pan");
    Target mass = new Target.OfPart("pan", List.of("mass"), "mass");
    Layout weighed = Edits.set(mass, "3 kg").applied(layout);
    Bench alone = OnBench.of(weighed, places, "part:pan");
    assertThat(laid(alone)).as("told anew").isNotEqualTo(laid(pan));
    assertThat(laid(BenchPlaces.keep(pan, alone))).isEqualTo(laid(pan));
    assertThat(laid(BenchPlaces.keep(before, alone))).as("of another part").isEqualTo(laid(alone));
  }

  @Test
  void whatIsNewComesWhereItBelongs() {
    Bench pan = OnBench.of(layout, places, "part:pan");
    Layout more =
        Edits.more(new Target.OfPart("pan", List.of("layers"), "layer"), "").applied(layout);
    Bench longer = OnBench.of(more, places, "part:pan");
    assertThat(laid(BenchPlaces.keep(pan, longer))).isEqualTo(laid(longer));
    assertThat(laid(BenchPlaces.keep(longer, pan))).isEqualTo(laid(pan));
  }

  @Test
  void everyQuantityOfEveryPartCanBeReplacedAloneAndPutBack() {
    int seen = 0;
    for (String name : layout.parts().keySet()) {
      for (Bench.Row row : own(layout, name)) {
        Layout changed = Edits.set(row.target(), "123 mm").applied(layout);
        assertThat(own(changed, name))
            .filteredOn(r -> r.target().equals(row.target()))
            .singleElement()
            .satisfies(r -> assertThat(r.text()).isEqualTo("123 mm"));
        assertThat(Edits.set(row.target(), row.text()).applied(changed)).isEqualTo(layout);
        assertThat(row.note()).endsWith(".");
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(40);
  }

  @Test
  void aPinShowsItsPlaceItsTiesItsLimitsAndTheMeasuresBehindThem() {
    Bench bench = OnBench.of(layout, places, "pin:backTop");
    assertThat(bench.groups())
        .extracting(Bench.Group::heading)
        .containsExactly(
            "place", "ties", "limits", "as built", "measures it rests on", "more to say");
    assertThat(row(bench, new Target.OfTie("backLong")))
        .get()
        .satisfies(
            r -> {
              assertThat(r.text()).isEqualTo("backLength");
              assertThat(r.value()).isEqualTo("520 mm");
            });
    assertThat(row(bench, new Target.OfMeasure("backLength"))).isPresent();
  }

  @Test
  void measuresBehindMeasuresAreShownToo() {
    Bench bench = OnBench.of(layout, places, "pin:panFront");
    assertThat(row(bench, new Target.OfMeasure("panSpan"))).isPresent();
    assertThat(row(bench, new Target.OfMeasure("panLength"))).isPresent();
  }

  @Test
  void whatIsNotThereShowsTheWholeMachine() {
    assertThat(OnBench.of(layout, places, "part:gone").title()).isEqualTo("wren");
    assertThat(OnBench.of(layout, places, "").groups().get(0).rows())
        .hasSize(layout.measures().size());
  }

  @Test
  void figuresCarryTheirUnitAndNoUselessZero() {
    assertThat(Bench.figure(1640, Dim.LENGTH, Units.MM)).isEqualTo("1640 mm");
    assertThat(Bench.figure(12.34, Dim.LENGTH, Units.MM)).isEqualTo("12.3 mm");
    assertThat(Bench.figure(-0.01, Dim.LENGTH, Units.MM)).isEqualTo("0 mm");
    assertThat(Bench.figure(Math.toRadians(27.25), Dim.ANGLE, Units.MM)).isEqualTo("27.25 deg");
    assertThat(Bench.figure(0.46, Dim.NUMBER, Units.MM)).isEqualTo("0.46");
  }

  private static String over(Layout layout, String measure, String text) {
    Layout typed = Edits.set(new Target.OfMeasure(measure), text).applied(layout);
    return typed.measures().get(measure).is().text();
  }

  @Test
  void aBareNumberOverAMeasureIsOneOfWhatItMeasures() {
    Layout inches = layout.withUnits(Units.IN);
    assertThat(over(layout, "panLength", "410")).isEqualTo("410 mm");
    assertThat(over(inches, "panLength", "16 1/8")).isEqualTo("16 1/8 in");
    assertThat(over(inches, "rake", "27")).isEqualTo("27 deg");
    Layout free = Edits.freeWithin("rake", "24", "").applied(layout);
    assertThat(free.measures().get("rake").from().get().text()).isEqualTo("24 deg");
  }

  @Test
  void typingNonsenseSaysWhatIsWrong() {
    assertThatThrownBy(() -> Edits.set(new Target.OfMeasure("rake"), "27 deg +").applied(layout))
        .isInstanceOf(FormulaException.class);
    assertThatThrownBy(() -> Edits.set(new Target.OfMeasure("rake"), " ").applied(layout))
        .isInstanceOf(FormulaException.class)
        .hasMessageContaining("empty");
  }

  @Test
  void aTypedValueHoldsAFreeMeasure() {
    Layout after = Edits.set(new Target.OfMeasure("pegReach"), "800 mm").applied(layout);
    assertThat(after.measures().get("pegReach").free()).isFalse();
    assertThat(after.measures().get("pegReach").from()).isPresent();
    assertThat(Edits.free("pegReach", true).applied(after).measures().get("pegReach").free())
        .isTrue();
  }

  private static Optional<Bench.Row> row(Bench bench, Target target) {
    return bench.groups().stream()
        .flatMap(g -> g.rows().stream())
        .filter(r -> r.target().equals(target))
        .findFirst();
  }

  /**
   * A file's bare 215 of a tie is 215 mm, 8.465 in, nearest to 8 7/16; what is typed bare is
   * inches, as typed.
   */
  @Test
  void bareNumbersOfTiesAndLimitsAreShownInTheUnitsOfTheLayoutAndKeptAsTyped() {
    Layout bare = Edits.set(new Target.OfTie("headPlace"), "215").applied(layout);
    bare = Edits.set(new Target.OfLimit("backLean", true), "15").applied(bare);
    Layout inches = bare.withUnits(Units.IN);
    assertThat(text(inches, "pin:headBottom", new Target.OfTie("headPlace")))
        .isEqualTo("8 7/16 in");
    assertThat(inches.ties().get("headPlace").is().orElseThrow().text()).isEqualTo("215");
    assertThat(text(inches, "pin:backTop", new Target.OfLimit("backLean", true)))
        .as("degrees are degrees")
        .isEqualTo("15");
    assertThat(text(bare, "pin:headBottom", new Target.OfTie("headPlace"))).isEqualTo("215");
    Layout typed = Edits.set(new Target.OfTie("headPlace"), "8 1/2").applied(inches);
    assertThat(typed.ties().get("headPlace").is().orElseThrow().text()).isEqualTo("8 1/2 in");
    Layout free = Edits.freeWithin("wheelbase", "60", "66").applied(inches);
    assertThat(free.measures().get("wheelbase").from().orElseThrow().text()).isEqualTo("60 in");
    assertThat(free.measures().get("wheelbase").to().orElseThrow().text()).isEqualTo("66 in");
  }

  private static String text(Layout layout, String subject, Target target) {
    return OnBench.of(layout, drawn(layout), subject).groups().stream()
        .flatMap(g -> g.rows().stream())
        .filter(r -> r.target().equals(target))
        .findFirst()
        .orElseThrow()
        .text();
  }
}
