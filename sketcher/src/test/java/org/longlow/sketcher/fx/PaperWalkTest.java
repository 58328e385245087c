package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import javafx.event.ActionEvent;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.desk.Printers;
import org.longlow.sketcher.desk.Wren;

/** Paper from the window, by keys and pointer. */
@Windowed
class PaperWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    begin(Wren.layout());
  }

  private String text(String id) {
    return Hands.onFx(() -> hands.node(id, Label.class).getText());
  }

  private void untilSaid(String id, String words) {
    Label label = hands.node(id, Label.class);
    hands.until(id + " says " + words, () -> label.getText().contains(words));
    hands.settle();
  }

  private boolean seen(String id) {
    return Hands.onFx(() -> hands.find(id).filter(n -> n.isVisible()).isPresent());
  }

  private static Map<String, FileTime> files(Path folder) throws IOException {
    Map<String, FileTime> all = new TreeMap<>();
    try (Stream<Path> files = Files.list(folder)) {
      for (Path file : files.toList()) {
        all.put(file.getFileName().toString(), Files.getLastModifiedTime(file));
      }
    }
    return all;
  }

  /** Returns what the sheet shows at a place of it, mm from its lower left corner. */
  private Color onSheet(double xMm, double yMm) {
    return Hands.onFx(
        () -> {
          SheetView view = (SheetView) hands.find("paper-sheet").get();
          Point2D p = view.onScreen(xMm, yMm);
          SnapshotParameters one = new SnapshotParameters();
          one.setViewport(new Rectangle2D(Math.floor(p.getX()), Math.floor(p.getY()), 1, 1));
          return view.snapshot(one, null).getPixelReader().getColor(0, 0);
        });
  }

  @Test
  @Tag("long")
  void enterWhileSheetsAreLaidOutWritesThemOnceTheyAreThere() throws IOException {
    assertThat(hands.find("paper-slip")).as("nobody has asked for it").isEmpty();
    double high =
        Hands.onFx(
            () -> {
              hands.window().deeds().stream()
                  .filter(d -> d.keys().equals("Ctrl M"))
                  .forEach(d -> d.run().run());
              return hands.node("paper-part-tank", CheckBox.class).getHeight();
            });
    assertThat(high).as("it has its place before a click that follows").isPositive();
    hands.settle();
    untilSaid("paper-words", "templates on ");
    Path into = folder.resolve("made");
    CheckBox tank = hands.node("paper-part-tank", CheckBox.class);
    assertThat(tickAndWrite(tank, into)).contains("as soon as they are laid out");
    hands.press(KeyCode.ESCAPE);
    assertThat(seen("paper-slip")).as("Escape takes that back only").isTrue();
    untilSaid("paper-words", "templates on ");
    assertThat(Files.exists(into)).isFalse();
    tickAndWrite(tank, into);
    untilSaid("make-words", "in " + into);
    assertThat(files(into).keySet()).anyMatch(n -> n.contains("tank"));
  }

  @Test
  void anotherMachineIsOfferedAFolderOfItsOwn() {
    hands.press(KeyCode.SHORTCUT, KeyCode.M).settle();
    assertThat(hands.node("make-folder", TextField.class).getText()).endsWith("wren");
    hands.press(KeyCode.ESCAPE).click("open").click("first-wheels");
    hands.until("two wheels", () -> hands.layout().name().equals("mine"));
    hands.settle().press(KeyCode.SHORTCUT, KeyCode.M).settle();
    assertThat(hands.node("make-folder", TextField.class).getText()).endsWith("mine");
  }

  /** Both before any answer can come back: that waits for the thread that this is done on. */
  private String tickAndWrite(CheckBox part, Path into) {
    return Hands.onFx(
        () -> {
          part.fire();
          TextField field = hands.node("make-folder", TextField.class);
          field.setText(into.toString());
          field.fireEvent(new ActionEvent());
          return hands.node("make-words", Label.class).getText();
        });
  }

  @Test
  @Tag("long")
  void whatIsPickedIsSeenTurnedThroughAndWrittenAndNothingReplacedUnasked() throws IOException {
    pick("part:pan").press(KeyCode.SHORTCUT, KeyCode.M);
    untilSaid("paper-words", "templates on ");
    assertThat(hands.node("paper-part-pan", CheckBox.class).isSelected()).isTrue();
    assertThat(hands.node("paper-part-back", CheckBox.class).isSelected()).isFalse();
    assertThat(hands.node("paper-find", TextField.class).isFocused()).isTrue();
    int sheets = Integer.parseInt(text("paper-turned").replaceAll(".* of ", ""));
    assertThat(text("paper-words")).contains(" on " + sheets + " sheets of A4");
    hands.press(KeyCode.PAGE_DOWN).press(KeyCode.PAGE_DOWN).press(KeyCode.PAGE_UP);
    assertThat(text("paper-turned")).isEqualTo("sheet 2 of " + sheets);
    hands.click("paper-sheet").press(KeyCode.END).press(KeyCode.RIGHT);
    assertThat(text("paper-turned")).isEqualTo("sheet " + sheets + " of " + sheets);

    Path into = folder.resolve("made");
    hands.typeInto("make-folder", into.toString());
    untilSaid("make-words", "in " + into);
    Map<String, FileTime> made = files(into);
    assertThat(made.keySet().stream().filter(n -> n.endsWith(".svg"))).hasSize(sheets);

    hands.click("make-start");
    hands.until("the question", () -> seen("make-asks") && text("make-asks").contains("already"));
    assertThat(made.keySet()).allSatisfy(name -> assertThat(text("make-asks")).contains(name));
    assertThat(hands.node("make-refuse", Button.class).isFocused()).isTrue();
    hands.press(KeyCode.ESCAPE);
    assertThat(hands.node("make-start", Button.class).isFocused()).isTrue();
    assertThat(seen("paper-slip")).as("Escape answered the question only").isTrue();
    assertThat(files(into)).isEqualTo(made);

    hands.press(KeyCode.SPACE);
    hands.until("the question", () -> hands.node("make-refuse", Button.class).isFocused());
    hands.click("make-agree");
    untilSaid("make-words", "in " + into);
    assertThat(files(into).keySet()).isEqualTo(made.keySet());
    assertThat(files(into)).isNotEqualTo(made);
    hands.click("make-open");
    untilSaid("make-words", "It cannot be opened from here; it is " + into);
    hands.press(KeyCode.ESCAPE);
    assertThat(seen("paper-slip")).isFalse();
    assertThat(Hands.onFx(() -> hands.window().board().isFocused())).isTrue();
  }

  @Test
  @Tag("long")
  void aPrinterIsMeasuredAndADrawingIsSetByKeys() {
    hands.press(KeyCode.SHORTCUT, KeyCode.F);
    hands.write("paper printer").press(KeyCode.ENTER);
    hands.click("paper-printer");
    untilSaid("paper-words", "Calibration page on A4 portrait.");
    // the long bar across starts at 5 mm: its first field is dark, its second is not
    assertThat(onSheet(10, 23).getBrightness()).isLessThan(0.5);
    assertThat(onSheet(20, 23).getBrightness()).isGreaterThan(0.8);
    hands.typeInto("printer-name", "attic");
    hands.write("199.2").press(KeyCode.ENTER).write("180").press(KeyCode.ENTER);
    assertThat(text("printer-said")).contains("190.5 to 210.5 mm").contains("fit to page");
    assertThat(Printers.at(folder.resolve("home"))).isEqualTo(Printers.NONE);
    hands.typeInto("printer-along", "200.4");
    untilSaid("printers", "Corrected for attic: 1.004 across, 0.998 along.");
    assertThat(text("printer-said")).isEmpty();
    assertThat(Printers.at(folder.resolve("home")).byName()).containsOnlyKeys("attic");

    hands.click("paper-drawing");
    untilSaid("paper-words", "Mara riding");
    Hands.onFx(
        () -> {
          hands.find("paper-seat-rider").get().requestFocus();
          return null;
        });
    hands.press(KeyCode.DOWN);
    untilSaid("paper-words", "Tor riding");
    hands.press(KeyCode.TAB).press(KeyCode.DOWN);
    untilSaid("paper-words", "as drawn");
    hands.press(KeyCode.DOWN);
    untilSaid("paper-words", "unladen");
    hands.press(KeyCode.ESCAPE);
    assertThat(seen("paper-slip")).isFalse();
    hands.press(KeyCode.SHORTCUT, KeyCode.M);
    untilSaid("paper-words", "Mara riding");
  }
}
