package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.ListView;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.edit.AlsoCalled;

/** Words that things and deeds are also called by lead to them. */
@Windowed
class FinderWordsWalkTest extends Walk {

  /** What is said of single things, beside their kind. */
  private static final List<String> SAID =
      List.of(
          "person",
          "passenger",
          "rider",
          "tie",
          "limit",
          "measure",
          "section",
          "pin",
          "demands",
          "law",
          "mass",
          "pan",
          "back",
          "head",
          "telescopic",
          "leading-link",
          "trailing-link",
          "headlamp",
          "plate",
          "front-signal",
          "stop",
          "tail",
          "driving-beam");

  @Test
  void eachLeadsSomewhereAndTheFinderListsIt() throws Exception {
    begin(Wren.layout());
    List<String> all = new ArrayList<>(SAID);
    all.addAll(Document.PART.kinds().keySet());
    Hands.onFx(() -> hands.window().deeds())
        .forEach(d -> all.add(d.words().toLowerCase(Locale.ROOT)));
    String table;
    try (InputStream in = AlsoCalled.class.getResourceAsStream("also-called.txt")) {
      table = new String(in.readAllBytes(), StandardCharsets.UTF_8);
    }
    table
        .lines()
        .filter(line -> line.contains(": ") && !line.startsWith("#"))
        .flatMap(line -> List.of(line.split(": ")[1].split(", ")).stream())
        .forEach(
            other ->
                assertThat(all)
                    .as(other)
                    .anyMatch(a -> List.of(other.split(" ")).stream().allMatch(a::contains)));
    hands.press(KeyCode.SLASH).write("undo");
    assertThat(listed()).anyMatch(line -> line.contains("take back"));
    hands.press(KeyCode.SHORTCUT, KeyCode.A).write("saddle");
    assertThat(listed()).anyMatch(line -> line.contains("subject=part:pan"));
  }

  private List<String> listed() {
    return Hands.onFx(
        () ->
            ((ListView<?>) Hands.called(hands.window(), "find-list").orElseThrow())
                .getItems().stream().map(Object::toString).toList());
  }
}
