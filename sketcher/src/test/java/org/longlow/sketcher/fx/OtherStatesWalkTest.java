package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Notice;
import org.longlow.sketcher.desk.Wren;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/** Other states of the machine over the plan, what was measured, and lists from the window. */
@Windowed
class OtherStatesWalkTest extends Walk {

  /** Wren, and as a variant the same with 60 mm more wheelbase. */
  private static Layout varied() {
    String variants =
        "{\"variants\": {\"long\": {\"measures\": {\"wheelbase\": \"1700 mm\"}}},\n \"longlow\"";
    String text = Wren.text().replaceFirst("\\{\\s*\"longlow\"", variants);
    return ((ReadResult.Read) LayoutReader.read(text, null)).layout();
  }

  private List<String> said() {
    return Hands.onFx(() -> hands.desk().notices().stream().map(Notice::text).toList());
  }

  /** Returns the box round what is drawn over the plan; empty where nothing is. */
  private Envelope over() {
    Envelope box = new Envelope();
    for (Layer layer : hands.shown().drawing().layers()) {
      if (layer.id().equals("over")) {
        layer.marks().stream()
            .map(m -> ((Mark.Shape) m).geometry().getEnvelopeInternal())
            .forEach(box::expandToInclude);
      }
    }
    return box;
  }

  @Test
  void aKeyGoesThroughWhatWasMeasuredAndTheVariants() throws Exception {
    begin(varied());
    hands.press(KeyCode.Y).settle();
    assertThat(hands.desk().options().over()).isEqualTo("long");
    assertThat(said()).anyMatch(s -> s.contains("the machine as long. Y goes on"));
    // the front wheel of 300 mm ends 60 mm farther ahead; the road under it is that of the plan
    assertThat(over().getMaxX()).isCloseTo(1700 + 300, within(5.0));

    pick("pin:headTop");
    hands.typeInto("field-headTop-measured-x", "1340 mm");
    assertThat(hands.desk().trouble()).isEmpty();
    assertThat(hands.layout().asBuilt().pins().get("headTop").get(0).text()).isEqualTo("1340 mm");
    pickOnCard("pin:headTop");
    hands.press(KeyCode.Y).settle();
    assertThat(hands.desk().options().over()).as("the last is followed by none").isEmpty();
    assertThat(over().isNull()).isTrue();
    hands.press(KeyCode.Y).settle();
    assertThat(hands.desk().options().over()).isEqualTo("as-built");
    assertThat(over().isNull()).isFalse();
    hands.press(KeyCode.ESCAPE).settle();
    assertThat(hands.desk().options().over()).isEmpty();
    assertThat(said()).noneMatch(s -> s.contains("Drawn over the plan"));
  }

  @Test
  void whereThereIsNoOtherStateAKeySaysHowToHaveOne() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.Y).settle();
    assertThat(hands.desk().options().over()).isEmpty();
    assertThat(said()).anyMatch(s -> s.startsWith("Nothing was measured yet"));
  }

  @Test
  @Tag("long")
  void listsAreShownAndWritten() throws Exception {
    begin(Wren.layout());
    hands.press(KeyCode.SHORTCUT, KeyCode.M).settle();
    hands.click("paper-lists");
    Label words = hands.node("paper-words", Label.class);
    hands.until("lists", () -> words.getText().contains("for a spreadsheet"));
    assertThat(Hands.onFx(words::getText)).contains("to fill in at the scales");
    Path into = folder.resolve("shop");
    hands.typeInto("make-folder", into.toString());
    Label made = hands.node("make-words", Label.class);
    hands.until("lists on disk", () -> made.getText().contains("in " + into));
    assertThat(names(into)).anyMatch(n -> n.endsWith(".csv")).anyMatch(n -> n.endsWith(".pdf"));
  }

  private static List<String> names(Path folder) throws IOException {
    try (Stream<Path> files = Files.list(folder)) {
      return files.map(f -> f.getFileName().toString()).toList();
    }
  }
}
