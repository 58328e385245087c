package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.formula.Formula;
import org.longlow.rider.geom.PointMm;

class ByPlacesTest {

  private int worked;

  /** A bar from a pin to a pin, as wide as a measure; of "bare" only where its first pin is. */
  private final ByPlaces<String, String> bars =
      new ByPlaces<>(
          4,
          2,
          (thing, places) -> {
            worked++;
            return thing.equals("bare")
                ? thing + places.pin("a")
                : thing + places.pin("a") + places.pin("b") + places.value(Formula.parse("wide"));
          });

  private final Map<String, PointMm> pins =
      new LinkedHashMap<>(
          Map.of("a", new PointMm(0, 1), "b", new PointMm(2, 3), "c", new PointMm(4, 5)));
  private final Map<String, Double> measures = new LinkedHashMap<>(Map.of("wide", 6.0, "far", 7.0));

  private String ask(String thing) {
    return bars.of(thing, new Places(Map.copyOf(pins), Map.copyOf(measures)));
  }

  @Test
  void isTheSameObjectWhileWhatItReadStays() {
    String first = ask("bar");
    pins.put("c", new PointMm(-4, 5));
    measures.put("far", 8.0);
    assertThat(ask("bar")).isSameAs(first);
    assertThat(worked).isEqualTo(1);
  }

  @Test
  void isAnotherWhenAPinOrAMeasureThatItReadHasChangedByABit() {
    ask("bar");
    pins.put("b", new PointMm(2, Math.nextUp(3.0)));
    assertThat(ask("bar")).contains("3.0000000000000004");
    measures.put("wide", Math.nextDown(6.0));
    assertThat(ask("bar")).contains("5.999999999999999");
    pins.put("a", new PointMm(-0.0, 1));
    assertThat(ask("bar")).contains("-0.0");
    assertThat(worked).isEqualTo(4);
  }

  @Test
  void whatOneThingReadsIsNothingToAnother() {
    String bare = ask("bare");
    ask("bar");
    pins.put("b", new PointMm(9, 9));
    assertThat(ask("bare")).isSameAs(bare);
    ask("bar");
    assertThat(worked).isEqualTo(3);
  }

  @Test
  void thingsAreToldApartByWhichOneTheyAre() {
    String one = ask("bar");
    String other = bars.of(new String("bar"), new Places(pins, measures));
    assertThat(other).isEqualTo(one).isNotSameAs(one);
  }

  /** There and back again costs nothing, once round three places costs all of them. */
  @Test
  void keepsThoseAskedForLast() {
    PointMm home = pins.get("a");
    String atHome = ask("bare");
    pins.put("a", new PointMm(1, 1));
    ask("bare");
    pins.put("a", home);
    assertThat(ask("bare")).isSameAs(atHome);
    assertThat(worked).isEqualTo(2);
    pins.put("a", new PointMm(2, 2));
    ask("bare");
    pins.put("a", new PointMm(1, 1));
    ask("bare"); // that at home was asked for after it
    assertThat(worked).isEqualTo(4);
  }

  @Test
  void whatIsMadeOfOthersReadsWhatTheyRead() {
    ByPlaces<String, String> pairs =
        new ByPlaces<>(4, 2, (thing, places) -> bars.of("bar", places) + thing);
    ask("bar"); // known already when the pair asks for it
    pairs.of("pair", new Places(Map.copyOf(pins), measures));
    pins.put("b", new PointMm(9, 9));
    assertThat(pairs.of("pair", new Places(Map.copyOf(pins), measures))).contains("x=9.0");
  }

  @Test
  void readingAllAtOnceIsRefused() {
    ByPlaces<String, String> all =
        new ByPlaces<>(4, 2, (thing, places) -> thing + places.pins().keySet());
    assertThatThrownBy(() -> all.of("all", new Places(pins, measures)))
        .isInstanceOf(UnsupportedOperationException.class);
  }

  @Test
  void aFunctionOfOneThingIsWorkedOutOnceForEach() {
    ByThing<String, Integer> lengths =
        new ByThing<>(
            2,
            s -> {
              worked++;
              return s.length();
            });
    String one = "one";
    assertThat(lengths.of(one)).isEqualTo(3);
    assertThat(lengths.of(one)).isEqualTo(3);
    assertThat(worked).isEqualTo(1);
    assertThat(lengths.of(new String("one"))).isEqualTo(3);
    assertThat(worked).isEqualTo(2);
  }
}
