package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** An edit of somebody else in the same file is never replaced in silence, and never lost. */
class OtherEditTest {

  @TempDir Path folder;
  private Path file;
  private String other;
  private DeskHands hands;

  @BeforeEach
  void openAndLetSomebodyElseSave() throws Exception {
    file = Wren.file(folder);
    hands = new DeskHands(folder.resolve("state"));
    hands.open(file);
    hands.set("rake", "28 deg");
    other = Wren.text().replace("\"1640 mm\"", "\"1650 mm\"");
    Files.writeString(file, other);
    hands.desk().files().checkDisk();
    hands.until(() -> hands.notice("disk").isPresent());
  }

  @AfterEach
  void end() {
    hands.desk().close();
  }

  private void saveKeepsTheOther() throws IOException {
    hands.desk().files().save();
    assertThat(hands.notice("saved").get().text())
        .startsWith("Saved as " + file)
        .contains("kept as wren.replaced.json");
    assertThat(folder.resolve("wren.replaced.json")).hasContent(other);
    assertThat(((LayoutFile.Opening.Opened) LayoutFile.open(file)).layout())
        .isEqualTo(hands.session().layout());
  }

  @Test
  void savingWithTheBarUpSaysWhyItIsNotDone() {
    assertThat(hands.notice("disk").get().mood()).isEqualTo(Notice.Mood.CARE);
    hands.desk().dropNotice("disk");
    for (int i = 0; i < 2; i++) {
      assertThat(hands.desk().files().save()).isTrue();
      assertThat(hands.notice("disk").get().text())
          .startsWith("Not saved yet.")
          .contains("changed by somebody else");
      assertThat(hands.notice("disk").get().mood()).isEqualTo(Notice.Mood.BAD);
    }
    hands.desk().files().saveAs(file);
    assertThat(file).hasContent(other);
  }

  @Test
  void carryingOnKeepsTheOtherBesideWhenItIsReplaced() throws Exception {
    hands.answer("disk", "Carry on");
    saveKeepsTheOther();
    hands.set("rake", "29 deg");
    hands.desk().files().save();
    assertThat(folder.resolve("wren.replaced-2.json")).as("only once").doesNotExist();
  }

  @Test
  void whatWasBroughtInAndTakenBackIsNotReplacedInSilence() throws Exception {
    hands.answer("disk", "Bring in");
    assertThat(hands.session().isChanged()).isFalse();
    hands.desk().undo();
    assertThat(hands.notice("took-back")).isPresent();
    hands.desk().redo();
    assertThat(hands.notice("took-back")).isEmpty();
    hands.desk().undo();
    hands.set("rake", "29 deg");
    hands.desk().dropNotice("took-back");
    hands.desk().files().save();
    assertThat(file).hasContent(other);
    assertThat(hands.notice("took-back").get().text()).startsWith("Not saved yet.");
    hands.answer("took-back", "Carry on");
    assertThat(hands.notice("took-back")).isEmpty();
    saveKeepsTheOther();
  }

  @Test
  void whatWasBroughtInAndKeptIsSavedOverWithoutAQuestion() throws Exception {
    hands.answer("disk", "Bring in");
    hands.set("rake", "29 deg");
    hands.desk().undo();
    hands.set("rake", "30 deg");
    hands.desk().files().save();
    assertThat(hands.session().isChanged()).isFalse();
    assertThat(folder.resolve("wren.replaced.json")).doesNotExist();
  }
}
