package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Purchase;
import org.longlow.constraints.layout.Stock;

/** What may be said of stock, and how it is refused. */
class StockDocumentTest {

  private static final Layout PLANK = Plank.layout();

  @Test
  void stockIsReadAsItIsWritten() {
    Stock tube = PLANK.stock().get("round tube");
    assertThat(tube.form()).isEqualTo(Stock.Form.TUBE);
    assertThat(tube.per()).isEqualTo(Stock.Per.METRE);
    assertThat(tube.price().orElseThrow().text()).isEqualTo("18.5");
    assertThat(PLANK.stock().get("ply").grain()).contains(Stock.Grain.ALONG);
    assertThat(PLANK.stock().get("ply").per()).isEqualTo(Stock.Per.PIECE);
    assertThat(PLANK.currency()).isEqualTo("crowns");
    Purchase pan = PLANK.parts().get("pan").base().purchase();
    assertThat(pan.price()).isPresent();
    assertThat(pan.fasteners()).extracting(Purchase.Fastener::count).containsExactly(4, 1);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      quoteCharacter = '`',
      textBlock =
          """
          {"form": "tube", "width": 5}                          ~ width     ~ form tube
          {"form": "tube", "thickness": 5}                      ~ thickness ~ form tube
          {"form": "tube", "grain": "along"}                    ~ grain     ~ form tube
          {"form": "tube", "grade": "firm"}                     ~ grade     ~ form tube
          {"form": "sheet", "wall": 2}                          ~ wall      ~ form sheet
          {"form": "foam", "material": "steel"}                 ~ material  ~ form foam
          {"form": "sheet", "material": "stele"}                ~ material  ~ is no material
          {"form": "tube", "diameter": 20, "wall": 10.1}        ~ wall      ~ more than half
          {"form": "tube", "kerf": 10.1}                        ~ kerf      ~ from 0 to 10
          {"form": "tube", "price": -1}                         ~ price     ~ negative
          """)
  void whatCannotBeIsRefusedAtItsField(String stock, String field, String says) {
    String text = Plank.with("\"off-cuts\": {", "\"odd\": " + stock + ",\n    \"off-cuts\": {");
    ReadResult read = LayoutReader.read(text, Path.of("."));
    assertThat(read).isInstanceOf(ReadResult.Refused.class);
    List<Fault> faults = ((ReadResult.Refused) read).faults();
    assertThat(faults)
        .anySatisfy(
            f -> {
              assertThat(f.path()).endsWith("odd." + field);
              assertThat(f.line()).contains(says);
            });
  }

  @Test
  void aBarAsThickAsItsWallAllowsIsTaken() {
    String text =
        Plank.with(
            "\"off-cuts\": {",
            "\"odd\": {\"form\": \"tube\", \"diameter\": 20, \"wall\": 10, \"kerf\": 10},\n"
                + "    \"off-cuts\": {");
    assertThat(LayoutReader.read(text, Path.of("."))).isInstanceOf(ReadResult.Read.class);
  }

  @Test
  void aFastenerCanBeAddedInTheWindow() {
    Layout more = Typing.added(PLANK, "", List.of("parts", "engine", "fasteners"));
    assertThat(more.parts().get("engine").base().purchase().fasteners())
        .extracting(Purchase.Fastener::what)
        .containsExactly("M8 bolt");
  }
}
