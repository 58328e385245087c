package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.layout.Layout;

/** Work is never lost without a word: what the desk does with files, without a window. */
class WorkKeptTest {

  @TempDir Path folder;
  private Autosave autosave;
  private DeskHands hands;
  private Desk desk;

  @BeforeEach
  void begin() {
    autosave = new Autosave(folder.resolve("state"));
    hands = new DeskHands(folder.resolve("state"));
    desk = hands.desk();
  }

  @AfterEach
  void end() {
    desk.close();
  }

  private void until(BooleanSupplier done) throws InterruptedException {
    hands.until(done);
  }

  private Layout open(Path file) throws InterruptedException {
    return hands.open(file);
  }

  private void change(String length) throws InterruptedException {
    hands.set("wheelbase", length);
  }

  private Optional<Notice> notice(String topic) {
    return hands.notice(topic);
  }

  private static List<String> names(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void savingUnderTheNameOfAnotherFileAsksAndProposesAFreeOne() throws Exception {
    Path other = Files.writeString(folder.resolve("heron.json"), "my own machine");
    desk.files().openCopy(Wren.layout(), Optional.empty());
    for (int i = 0; i < 2; i++) {
      desk.files().saveAs(other);
    }
    assertThat(other).hasContent("my own machine");
    assertThat(notice("saved").get().text()).startsWith("Not saved yet");
    hands.answer("saved", "Save as heron-2.json");
    assertThat(other).hasContent("my own machine");
    assertThat(names(folder)).contains("heron-2.json").doesNotContain("heron-3.json");
    // the file of the session itself is saved without a question
    change("66 in");
    assertThat(desk.files().save()).isTrue();
    assertThat(desk.session().get().isChanged()).isFalse();
  }

  @Test
  void aReplacedFileIsKeptBesideAndNeverOverAnOlderOne() throws Exception {
    Path other = folder.resolve("heron.json");
    for (String old : List.of("first", "second")) {
      Files.writeString(other, old);
      desk.files().openCopy(Wren.layout(), Optional.empty());
      desk.files().saveAs(other);
      hands.answer("saved", "Replace it");
      assertThat(notice("saved").get().text()).contains("kept as heron.replaced");
    }
    assertThat(folder.resolve("heron.replaced.json")).hasContent("first");
    assertThat(folder.resolve("heron.replaced-2.json")).hasContent("second");
    assertThat(((LayoutFile.Opening.Opened) LayoutFile.open(other)).layout())
        .isEqualTo(Wren.layout());
  }

  @Test
  void whereTheFolderRefusesTheWorkIsKeptElsewhereAndFoundAgain() throws Exception {
    Path shop = Files.createDirectory(folder.resolve("shop"));
    Path file = Wren.file(shop);
    open(file);
    // a folder that is gone refuses everybody, on every system
    Files.delete(file);
    Files.delete(shop);
    Files.writeString(shop, "in the way");
    change("1700 mm");
    Layout work = desk.session().get().layout();
    Parting parting = desk.files().parting("close").get();
    assertThat(parting.kept()).isTrue();
    assertThat(parting.words()).contains(folder.resolve("state").toString());
    until(() -> notice("autosave").isPresent());
    assertThat(notice("autosave").get().text()).contains("kept as " + folder.resolve("state"));

    Files.delete(shop);
    Files.createDirectory(shop);
    Wren.file(shop);
    desk.close();
    begin();
    open(file);
    hands.answer("found", "Take it up");
    assertThat(desk.session().get().layout()).isEqualTo(work);
  }

  @Test
  void whereNothingCanBeKeptNothingIsPromised() throws Exception {
    Files.writeString(folder.resolve("state"), "in the way");
    desk.files().openCopy(Wren.layout(), Optional.empty());
    assertThat(desk.files().parting("leave")).isEmpty();
    change("1700 mm");
    Parting parting = desk.files().parting("leave").get();
    assertThat(parting.kept()).isFalse();
    assertThat(parting.words()).contains("If you leave now it is lost");
    until(() -> notice("autosave").isPresent());
    assertThat(notice("autosave").get().text()).contains("cannot be kept");
  }

  @Test
  void whatPartingPromisesWasDone() throws Exception {
    Path file = Wren.file(folder);
    open(file);
    change("1700 mm");
    assertThat(desk.files().parting("close").get().kept()).isTrue();
    Path copy = autosave.copyOf(desk.session().get());
    assertThat(((LayoutFile.Opening.Opened) LayoutFile.open(copy)).layout())
        .isEqualTo(desk.session().get().layout());
    if (folder.getFileSystem().supportedFileAttributeViews().contains("posix")) {
      assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copy)))
          .isEqualTo("rw-------");
    }
  }

  @Test
  void brokenAndNewerCopiesAreShownAndKept() throws Exception {
    Path file = Wren.file(folder);
    Map<String, String> broken =
        Map.of(
            Wren.text().substring(0, 400), "is not JSON",
            Wren.text().replaceFirst("\"longlow\": 1", "\"longlow\": 99"), "longlow = 99",
            Wren.text()
                    .replaceFirst(
                        "(?s)(\"frame\": \"tankPin\",\\s*\"outline\": )\\{.*?\"closed\": true\\}",
                        "$1{\"svg\": \"gone.svg\", \"path\": \"lump\", \"scale\": \"1 mm\"}"),
                "gone.svg");
    for (Map.Entry<String, String> one : broken.entrySet()) {
      // the last window tidies its own copy first, or it would take this one for it
      desk.close();
      begin();
      Files.writeString(Autosave.copyOf(file), one.getKey());
      open(file);
      assertThat(notice("broken").get().text()).contains(one.getValue(), "It is kept as");
      change("1700 mm");
      desk.files().save();
      until(() -> true);
    }
    try (Stream<Path> kept = Files.list(folder)) {
      assertThat(
              kept.filter(f -> f.getFileName().toString().contains(".unsaved"))
                  .map(WorkKeptTest::text))
          .containsExactlyInAnyOrderElementsOf(broken.keySet());
    }
    Files.createDirectories(folder.resolve("state"));
    Files.writeString(folder.resolve("state/x.longlow-autosave.json"), "{");
    assertThat(autosave.brokenHomeless()).hasSize(1);
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new AssertionError(e);
    }
  }

  @Test
  void longNamesAreKeptToo() throws Exception {
    Path file =
        Files.move(Wren.file(folder), folder.resolve("ä".repeat(110) + ".json")); // 225 bytes
    open(file);
    change("1700 mm");
    assertThat(desk.files().parting("close").get().kept()).isTrue();
    desk.close();
    assertThat(autosave.beside(file, Wren.layout())).hasSize(1);
    Path other = folder.resolve("ä".repeat(109) + "b.json");
    assertThat(Autosave.copyOf(other)).isNotEqualTo(Autosave.copyOf(file));
  }

  @Test
  void aSecondWindowIsToldOfTheFirst() throws Exception {
    Path file = Wren.file(folder);
    open(file);
    assertThat(notice("window")).isEmpty();
    Desk first = desk;
    begin();
    open(file);
    assertThat(notice("window").get().text()).contains("Another window");
    first.close();
    desk.close();
    begin();
    open(file);
    assertThat(notice("window")).isEmpty();
    desk.leave();
    assertThat(names(folder.resolve("state/open"))).isEmpty();
  }

  /** Each window keeps its own work, and leaves that of another one that lives alone. */
  @Test
  void twoWindowsOnOneFileKeepTheirWorkApart() throws Exception {
    Path file = Wren.file(folder);
    open(file);
    Desk first = desk;
    change("1700 mm");
    assertThat(first.files().parting("close")).isPresent();
    begin();
    open(file);
    assertThat(notice("found")).as("that of a window that lives").isEmpty();
    change("1800 mm");
    assertThat(desk.files().parting("close")).isPresent();
    Layout second = desk.session().get().layout();
    first.files().save();
    assertThat(first.files().parting("close")).isEmpty();
    desk.close(); // as if killed
    first.close();
    assertThat(autosave.beside(file, first.session().get().layout()))
        .extracting(Autosave.Found::layout)
        .containsExactly(second);
    begin();
    open(file);
    hands.answer("found", "Take it up");
    assertThat(desk.session().get().layout()).isEqualTo(second);
  }

  @Test
  void unsavedWorkOfAnotherWindowIsNotOffered() throws Exception {
    desk.files().openCopy(Wren.layout(), Optional.empty());
    change("1700 mm");
    assertThat(desk.files().parting("close")).isPresent();
    assertThat(autosave.homeless()).isEmpty();
    desk.leave();
    assertThat(autosave.homeless()).as("left, so here too").hasSize(1);
    desk.files().openFound(autosave.homeless().get(0));
    until(() -> autosave.homeless().isEmpty());
    desk.close();
    assertThat(autosave.homeless()).hasSize(1);
  }

  @Test
  void aPipeIsNoLayoutFile() throws Exception {
    Path pipe = folder.resolve("pipe.json");
    try {
      assumeThat(new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor()).isZero();
    } catch (IOException e) {
      assumeThat(e).as("a system without pipes of a name").isNull();
    }
    desk.files().open(pipe);
    until(() -> desk.files().refusal().isPresent());
    assertThat(desk.files().refusal().get().faults().get(0).line()).contains("no ordinary file");
  }

  @Test
  void theFolderOfTheUsersOwnIsThatOfTheSystem() {
    String home = folder.toString();
    Path set = folder.resolve("set");
    assertThat(StateFolder.of("Linux", home, n -> null))
        .isEqualTo(folder.resolve(".local/state/longlow"));
    assertThat(StateFolder.of("Linux", home, Map.of("XDG_STATE_HOME", set + "")::get))
        .isEqualTo(set.resolve("longlow"));
    assertThat(StateFolder.of("Linux", home, Map.of("XDG_STATE_HOME", "relative")::get))
        .isEqualTo(folder.resolve(".local/state/longlow"));
    assertThat(StateFolder.of("Windows 11", home, Map.of("LOCALAPPDATA", set + "")::get))
        .isEqualTo(set.resolve("Longlow"));
    assertThat(StateFolder.of("Mac OS X", home, n -> null).toString())
        .startsWith(folder.resolve("Library").toString());
  }

  @Test
  void aNameWithoutTheEndingGetsItAndTheWholePathIsSaid() throws Exception {
    desk.files().openCopy(Wren.layout(), Optional.empty());
    desk.files().saveAs(folder.resolve("mine.v2"));
    assertThat(notice("saved").get().text())
        .isEqualTo("Saved as " + folder.resolve("mine.v2.longlow") + ".");
    assertThat(names(folder)).contains("mine.v2.longlow").doesNotContain("mine.v2");
    desk.files().saveAs(folder.resolve("mine.v2"));
    assertThat(notice("saved").get().text()).as("its own file").startsWith("Saved as");
    desk.files().saveAs(folder.resolve("LOUD.JSON"));
    assertThat(names(folder)).contains("LOUD.JSON");
    Files.createDirectory(folder.resolve("shop"));
    desk.files().saveAs(folder.resolve("shop"));
    assertThat(notice("saved").get().text()).contains("Not saved", "is a folder");
    assertThat(names(folder)).doesNotContain("shop.longlow", "shop-2");
  }

  @Test
  void aFolderThatTakesNoFilesIsNotSaidToBeMissing() {
    Path there = folder.resolve(".longlow-1-00000000-0000-0000-0000-000000000000.new");
    assertThat(Refusals.words(new NoSuchFileException(there.toString())))
        .isEqualTo(folder + ": no file can be made there");
    Path gone = folder.resolve("gone").resolve(there.getFileName());
    assertThat(Refusals.words(new NoSuchFileException(gone.toString())))
        .isEqualTo(folder.resolve("gone") + ": it is not there");
  }
}
