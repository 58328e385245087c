package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.scene.control.ComboBox;
import javafx.scene.control.TextField;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Entries;
import org.longlow.demo.Demos;
import org.longlow.sketcher.desk.Autosave;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** A file that is read while the toolkit still starts is in the window when that is up. */
@Windowed
class BeginningWalkTest extends Walk {

  private Autosave autosave() {
    return new Autosave(folder.resolve("home"));
  }

  private Hands open(Optional<Path> file) throws Exception {
    Beginning begun = new Beginning(file, autosave());
    return Hands.at(stage -> LonglowWindow.show(stage, begun));
  }

  @SuppressWarnings("unchecked")
  private ComboBox<String> pinsToTieTo() {
    return (ComboBox<String>) hands.find("tie-other").orElseThrow();
  }

  @Test
  void whatWasWorkedOutBeforeTheWindowIsOnItAndCanBeEdited() throws Exception {
    Path file = Files.writeString(folder.resolve("wren.json"), Wren.text());
    Beginning begun = new Beginning(Optional.of(file), autosave());
    Desk desk = begun.desk();
    CountDownLatch shown = new CountDownLatch(1);
    begun.run(() -> desk.watch(() -> desk.shown().ifPresent(s -> shown.countDown())));
    begun.run(() -> desk.shown().ifPresent(s -> shown.countDown()));
    assertThat(shown.await(Hands.PATIENCE_S, TimeUnit.SECONDS)).isTrue();

    hands = Hands.at(stage -> LonglowWindow.show(stage, begun));
    hands.until("answers", desk::isIdle);
    hands.settle();

    assertThat(hands.desk()).isSameAs(desk);
    assertThat(Hands.onFx(() -> hands.window().getScene().getFocusOwner()))
        .as("a space bar would leave the machine from the first button")
        .isSameAs(hands.window().board());
    assertThat(hands.layout()).isEqualTo(Wren.layout());
    assertThat(Hands.onFx(() -> desk.session().get().file().get().path())).isEqualTo(file);
    assertThat(hands.find("start").filter(n -> Hands.onFx(n::isVisible))).isEmpty();
    assertThat(hands.shown().drawing().layers()).isNotEmpty();
    hands.click("fit");
    assertThat(hands.shown().layout()).isEqualTo(Wren.layout());

    // nothing is made or styled that nobody sees, and all of it is there once it is asked for
    assertThat(Hands.onFx(() -> hands.find("machine-" + Demos.names().get(0)))).isEmpty();
    assertThat(isStyled("tie-maker")).isFalse();
    assertThat(isStyled("bench-ticket")).isTrue();
    Hands.onFx(
        () -> {
          desk.choose("pin:backTop");
          return null;
        });
    hands.settle();
    assertThat(isStyled("tie-maker")).isTrue();

    // what can be tied to is what is there now; what was picked and typed stays
    ComboBox<String> other = Hands.onFx(() -> pinsToTieTo());
    TextField value = (TextField) Hands.onFx(() -> hands.find("tie-value").orElseThrow());
    Hands.onFx(
        () -> {
          other.setValue("panRear");
          value.setText("777 mm");
          Entries.Entry peg = new Entries.Entry("pins", "pegPin");
          desk.edit(Edits.rename(peg, "pegEnd"), new Target.OfEntry(peg), "");
          return null;
        });
    hands.settle();
    assertThat(other.getItems()).contains("pegEnd").doesNotContain("pegPin", "backTop");
    assertThat(other.getValue()).isEqualTo("panRear");
    assertThat(value.getText()).isEqualTo("777 mm");
    Hands.onFx(
        () -> {
          desk.leave();
          return null;
        });
    hands.settle();
    assertThat(Hands.onFx(() -> hands.find("machine-" + Demos.names().get(0)))).isPresent();
  }

  private boolean isStyled(String name) {
    return Hands.onFx(() -> hands.find(name).orElseThrow().getScene() != null);
  }

  @Test
  void aFileThatCannotBeReadIsRefusedOnTheStartPage() throws Exception {
    Path file = Files.writeString(folder.resolve("broken.json"), "{\"longlow\": 1,");

    hands = open(Optional.of(file));
    hands.until("a refusal", () -> hands.desk().files().refusal().isPresent());
    hands.settle();

    assertThat(Hands.onFx(() -> hands.desk().session())).isEmpty();
    assertThat(hands.find("start").filter(n -> Hands.onFx(n::isVisible))).isPresent();
  }

  @Test
  void withNoFileTheShippedMachinesLieOnTheStartPage() throws Exception {
    hands = open(Optional.empty());

    for (String name : Demos.names()) {
      assertThat(hands.find("machine-" + name)).isPresent();
    }
  }
}
