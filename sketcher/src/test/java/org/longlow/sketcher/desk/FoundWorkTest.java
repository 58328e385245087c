package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** Unsaved work that was found stays on the disk until it is answered, whatever else is done. */
class FoundWorkTest {

  @TempDir Path folder;
  private Path file;
  private Layout left;
  private DeskHands hands;

  @BeforeEach
  void leaveWorkAndOpen() throws Exception {
    file = Wren.file(folder);
    left = Edits.set(new Target.OfMeasure("wheelbase"), "1800 mm").applied(Wren.layout());
    Autosave.write(left, Autosave.copyOf(file), Optional.empty());
    begin();
  }

  private void begin() throws InterruptedException {
    hands = new DeskHands(folder.resolve("state"));
    hands.open(file);
  }

  /** As a kill does: nothing is answered, another program opens the file. */
  private void beginAgain() throws InterruptedException {
    hands.desk().close();
    begin();
  }

  @AfterEach
  void end() {
    hands.desk().close();
  }

  private List<Layout> kept() throws IOException {
    try (var files = Files.list(folder)) {
      return files
          .filter(f -> f.getFileName().toString().contains(".longlow-found"))
          .map(f -> ((LayoutFile.Opening.Opened) LayoutFile.open(f)).layout())
          .toList();
    }
  }

  @Test
  void aDragWithTheBarUpLeavesTheFoundWorkWhereItIsAndBothAreOffered() throws Exception {
    assertThat(hands.notice("found").get().text()).contains(folder + "", "longlow-found.json");
    hands.until(() -> hands.desk().shown().isPresent());
    assertThat(hands.desk().drags().grab("pegPin")).isTrue();
    hands.desk().drags().moveTo(new PointMm(1200, 400));
    hands.desk().drags().letGo();
    hands.until(() -> hands.session().isChanged());
    hands.desk().files().parting("close");
    Layout newer = hands.session().layout();
    assertThat(kept()).containsExactly(left);

    beginAgain();
    assertThat(kept()).containsExactlyInAnyOrder(left, newer);
    assertThat(hands.notice("found").get().text()).contains("the first of 2");
    hands.answer("found", "Take it up");
    assertThat(hands.session().layout()).as("the latest first").isEqualTo(newer);
    hands.answer("found", "Take it up");
    assertThat(hands.session().layout()).isEqualTo(left);
    hands.until(() -> kept(0));
    assertThat(hands.desk().files().found()).isEmpty();
  }

  private boolean kept(int number) {
    return String.join(" ", folder.toFile().list()).split("longlow-found", -1).length == number + 1;
  }

  @Test
  void partingNamesWhatIsNewerAndWhatWaits() throws Exception {
    Parting nothingNew = hands.desk().files().parting("leave").get();
    assertThat(nothingNew.unsaved()).isFalse();
    assertThat(nothingNew.kept()).isTrue();
    assertThat(nothingNew.words()).contains("stays as " + hands.desk().files().found().get(0));
    hands.set("wheelbase", "1700 mm");
    assertThat(hands.desk().files().parting("leave").get().words())
        .contains("it is kept as " + hands.desk().autosave().copyOf(hands.session()))
        .contains("stays as " + hands.desk().files().found().get(0));
    hands.desk().leave();
    assertThat(hands.desk().files().parting("close")).as("nothing is on the board").isEmpty();
    assertThat(kept()).containsExactly(left);
  }

  @Test
  void savingLeavesTheFoundWorkAndItIsOfferedAgain() throws Exception {
    hands.set("wheelbase", "1700 mm");
    assertThat(hands.desk().files().save()).isTrue();
    assertThat(hands.session().isChanged()).isFalse();
    assertThat(hands.notice("found")).isPresent();
    assertThat(hands.desk().files().parting("close")).isPresent();
    beginAgain();
    assertThat(hands.notice("found")).isPresent();
    hands.answer("found", "Take it up");
    assertThat(hands.session().layout()).isEqualTo(left);
  }

  @Test
  void throwingAwayTakesTheFoundWorkAndNothingElse() throws Exception {
    hands.set("wheelbase", "1700 mm");
    Layout newer = hands.session().layout();
    hands.answer("found", "Throw it away");
    hands.until(() -> kept(0));
    hands.desk().files().parting("close");
    assertThat(hands.desk().files().found()).isEmpty();
    beginAgain();
    hands.answer("found", "Take it up");
    assertThat(hands.session().layout()).isEqualTo(newer);
  }

  @Test
  void twoCopiesThatSayTheSameAreOfferedOnce() throws Exception {
    Autosave.write(left, Autosave.copyOf(file), Optional.empty());
    beginAgain();
    assertThat(hands.desk().files().found()).hasSize(1);
    assertThat(kept()).containsExactly(left);
  }
}
