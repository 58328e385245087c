package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Dimension.Along;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.constraints.layout.Layout;

/** What may be said of a dimension that is kept, and what becomes of it with what it names. */
class DimensionDocumentTest {

  private static List<String> faults(String dimension) {
    String json = dimension.replace('\'', '"');
    return Plank.faults(
            Plank.with("\"dimensions\": {", "\"dimensions\": {\n    \"odd\": {" + json + "},"))
        .stream()
        .map(Fault::path)
        .toList();
  }

  @Test
  void isReadAsItIsWritten() {
    Layout plank = Plank.layout();
    Dimension tread = plank.dimensions().get("tread");
    assertThat(tread.along()).isEqualTo(Along.LEVEL);
    assertThat(tread.ends()).containsExactly(End.pin("rearAxle"), End.point("engine", 3));
    assertThat(tread.off().orElseThrow().text()).isEqualTo("wheelbase / 4");
    assertThat(tread.note()).isEqualTo("to the crate");
    assertThat(plank.dimensions().get("knee gap"))
        .isEqualTo(
            new Dimension(
                Along.STRAIGHT,
                List.of(End.edge("pan"), End.edge("engine")),
                java.util.Optional.empty(),
                ""));
    assertThat(LayoutWriter.toJson(plank)).contains("\"ends\": [\"frontAxle\"]");
  }

  /** The last is 2^64 + 3, which a count of 64 bits takes for 3. */
  @ParameterizedTest
  @CsvSource({
    "2147483647, 2147483647",
    "2147483648, 2147483648",
    "-3000000000, -3000000000",
    "1e308, 1e308",
    "18446744073709551619, 1.8446744073709552e19"
  })
  void aPointTooLargeIsSaidAsItIsWritten(String written, String said) {
    assertThat(
            Plank.faults(
                Plank.with(
                    "\"dimensions\": {",
                    "\"dimensions\": {\"odd\": {\"ends\": [{\"part\": \"engine\", \"point\": "
                        + written
                        + "}, \"rearAxle\"]},")))
        .singleElement()
        .satisfies(
            fault -> {
              assertThat(fault.path()).isEqualTo("$.dimensions.odd.ends[0].point");
              assertThat(fault.value()).isEqualTo(said);
              assertThat(fault.message()).startsWith("must be a whole number from 0 to");
            });
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "'ends': ['rearAxle', 'frontAxle'] | ``",
        "'ends': ['rearAxle', 'nix'] | $.dimensions.odd.ends[1]",
        "'ends': [{'part': 'nix'}, 'rearAxle'] | $.dimensions.odd.ends[0].part",
        "'ends': [{}, 'rearAxle'] | $.dimensions.odd.ends[0]",
        "'ends': [{'pin': 'headTop', 'part': 'pan'}, 'rearAxle'] | $.dimensions.odd.ends[0].part",
        "'ends': [{'pin': 'headTop', 'point': 1}, 'rearAxle'] | $.dimensions.odd.ends[0].point",
        "'ends': [{'part': 'engine', 'point': 3}, 'rearAxle'] | ``",
        "'ends': [{'part': 'engine', 'point': 4}, 'rearAxle'] | $.dimensions.odd.ends[0].point",
        "'ends': [{'part': 'plate', 'point': 5}, 'rearAxle'] | ``",
        "'ends': [{'part': 'plate', 'point': 6}, 'rearAxle'] | $.dimensions.odd.ends[0].point",
        "'ends': [{'part': 'pan', 'point': 0}, 'rearAxle'] | $.dimensions.odd.ends[0].point",
        "'ends': ['rearAxle'] | $.dimensions.odd.ends",
        "'ends': ['rearAxle'], 'along': 'level' | $.dimensions.odd.ends",
        "'ends': ['rearAxle'], 'along': 'upright' | ``",
        "'ends': ['rearAxle', 'headTop', 'headBottom'] | $.dimensions.odd.ends",
        "'ends': ['rearAxle', 'headTop', 'headBottom'], 'along': 'angle' | ``",
        "'ends': ['rearAxle', 'headTop'], 'along': 'angle' | $.dimensions.odd.ends",
        "'ends': ['rearAxle', 'headTop', 'rearAxle'], 'along': 'angle' | $.dimensions.odd.ends[2]",
        "'ends': ['rearAxle', 'rearAxle'] | $.dimensions.odd.ends[1]",
        "'ends': [{'part': 'pan'}, 'rearAxle'], 'along': 'level' | $.dimensions.odd.ends[0]",
        "'ends': ['rearAxle', 'headTop', 'headBottom'], 'along': 'angle', 'off': '0 mm' |"
            + " $.dimensions.odd.off",
        "'ends': ['rearAxle', 'headTop'], 'off': '-20 mm' | ``",
        "'ends': ['rearAxle', 'headTop'], 'off': '2 kg' | $.dimensions.odd.off",
      })
  void eachFaultIsToldWhereItIs(String dimension, String path) {
    boolean sound = path.equals("``");
    assertThat(faults(dimension)).as(dimension).isEqualTo(sound ? List.of() : List.of(path));
  }

  @Test
  void followsWhatItNamesAndGoesWithIt() {
    Layout plank = Plank.layout();
    Layout renamed = Entries.renamed(plank, new Entry("pins", "rearAxle"), "hind");
    assertThat(renamed.dimensions().get("tread").ends().get(0)).isEqualTo(End.pin("hind"));
    Layout motor = Entries.renamed(plank, new Entry("parts", "engine"), "motor");
    assertThat(motor.dimensions().get("tread").ends().get(1)).isEqualTo(End.point("motor", 3));

    Entries.Without without = Entries.without(plank, new Entry("parts", "engine"));
    assertThat(without.also())
        .contains(new Entry("dimensions", "tread"), new Entry("dimensions", "knee gap"));
    assertThat(without.layout().dimensions()).containsOnlyKeys("axle height", "steering");
    assertThat(Entries.without(plank, new Entry("pins", "headBottom")).layout().dimensions())
        .doesNotContainKey("steering");
    assertThat(
            Entries.without(plank, new Entry("dimensions", "tread")).layout().dimensions().keySet())
        .containsExactly("knee gap", "axle height", "steering");
  }

  /** A pin picked where a part was named takes its place, and the other way round. */
  @Test
  void aPinTakesThePlaceOfAPart() {
    Layout plank = Plank.layout();
    Layout pin = Typing.typed(plank, "headTop", List.of("dimensions", "tread", "ends", "1", "pin"));
    assertThat(pin.dimensions().get("tread").ends().get(1)).isEqualTo(End.pin("headTop"));
    assertThat(LayoutFaults.of(pin)).isEmpty();
    Layout part = Typing.typed(pin, "pan", List.of("dimensions", "knee gap", "ends", "1", "part"));
    assertThat(part.dimensions().get("knee gap").ends().get(1)).isEqualTo(End.edge("pan"));
    Layout back =
        Typing.typed(plank, "engine", List.of("dimensions", "tread", "ends", "0", "part"));
    assertThat(back.dimensions().get("tread").ends().get(0)).isEqualTo(End.edge("engine"));
  }
}
