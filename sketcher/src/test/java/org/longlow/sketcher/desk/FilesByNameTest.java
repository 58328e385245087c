package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.AccessDeniedException;
import java.nio.file.FileSystemException;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** Names of files and copies, and words on those that refuse. */
class FilesByNameTest {

  @TempDir Path folder;

  /** FIPS 180-2, appendix B.1, and the empty text. */
  @Test
  void digestsAreThoseOfTheStandard() throws IOException {
    String abc = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad";
    assertThat(Digest.of("abc")).isEqualTo(abc);
    assertThat(Digest.of(Files.writeString(folder.resolve("abc"), "abc"))).isEqualTo(abc);
    assertThat(Digest.of(Files.writeString(folder.resolve("none"), "")))
        .isEqualTo("e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    // appendix B.3: a million times a, longer than what is read at once
    assertThat(Digest.of(Files.writeString(folder.resolve("a"), "a".repeat(1_000_000))))
        .isEqualTo("cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0");
  }

  @ParameterizedTest(name = "{0} is saved as {1}")
  @CsvSource({
    "wren, wren.longlow",
    "wren.longlow, wren.longlow",
    "wren.json, wren.json",
    "Wren.JSON, Wren.JSON",
    "Wren.LongLow, Wren.LongLow",
    "wren.txt, wren.txt.longlow",
    "a.b, a.b.longlow",
    "json, json.longlow",
    "longlow, longlow.longlow"
  })
  void layoutFilesGetTheirEnding(String asked, String named) {
    assertThat(LayoutFile.named(folder.resolve(asked))).isEqualTo(folder.resolve(named));
  }

  @Test
  void aFileKnowsWhetherSomebodyElseTouchedIt() throws IOException {
    Path file = Wren.file(folder);
    LayoutFile known = ((LayoutFile.Opening.Opened) LayoutFile.open(file)).file();
    assertThat(known.path()).isAbsolute();
    assertThat(known.exists()).isTrue();
    assertThat(known.changedOnDisk()).isFalse();
    Files.writeString(file, Wren.text() + "\n");
    assertThat(known.changedOnDisk()).isTrue();
    assertThat(known.seen().changedOnDisk()).isFalse();
    Files.delete(file);
    assertThat(known.changedOnDisk()).isTrue();
    assertThat(known.exists()).isFalse();
    assertThat(known.seen().digest()).isEmpty();
    Files.createDirectory(file);
    assertThat(known.seen().changedOnDisk()).isFalse();
    assertThat(known.changedOnDisk()).isTrue();
  }

  @Test
  void whatRefusesIsSaidInWords() {
    Path file = folder.resolve("a.json");
    assertThat(Refusals.words(new AccessDeniedException(file.toString())))
        .isEqualTo(file + ": writing is not allowed there");
    assertThat(Refusals.words(new NoSuchFileException(file.toString())))
        .isEqualTo(file + ": it is not there");
    assertThat(Refusals.words(new NoSuchFileException(folder.toString())))
        .isEqualTo(folder + ": no file can be made there");
    assertThat(Refusals.words(new FileSystemException(file.toString())))
        .isEqualTo(file + ": it refuses");
    assertThat(Refusals.words(new FileSystemException(file.toString(), null, "No space left")))
        .isEqualTo(file + ": No space left");
    assertThat(Refusals.words(new IOException("a\nb"))).doesNotContain("\n").contains("a", "b");
    assertThat(Refusals.words(new FileSystemException(null))).isEqualTo("null");
    // the unfinished file beside it says nothing to the user; its folder does
    Path unfinished = folder.resolve(".longlow-12-123e4567-e89b-12d3-a456-426614174000.new");
    assertThat(Refusals.words(new AccessDeniedException(unfinished.toString())))
        .isEqualTo(folder + ": writing is not allowed there");
  }

  @Test
  void copiesAreNamedAfterTheirFile() {
    Autosave autosave = new Autosave(folder.resolve("home"));
    Path file = folder.resolve("wren.json");
    assertThat(Autosave.copyOf(file)).isEqualTo(folder.resolve(".wren.json.longlow-autosave.json"));
    Path away = autosave.awayFrom(file);
    // in a folder of its own, with its drawings
    assertThat(folder.resolve("home").relativize(away).toString().replace('\\', '/'))
        .matches("(wren_json-[0-9a-f]{16})/\\1\\.longlow-autosave\\.json");
    assertThat(autosave.awayFrom(folder.resolve("x/../wren.json"))).isEqualTo(away);
    assertThat(autosave.awayFrom(folder.resolve("x/wren.json"))).isNotEqualTo(away);
    // 120 bytes of a name are kept whole, of a longer one 20 characters and a digest
    String whole = "n".repeat(120);
    assertThat(Autosave.copyOf(folder.resolve(whole)).getFileName().toString())
        .isEqualTo("." + whole + ".longlow-autosave.json");
    assertThat(Autosave.copyOf(folder.resolve(whole + "n")).getFileName().toString())
        .matches("\\.n{20}-[0-9a-f]{16}\\.longlow-autosave\\.json");
    assertThat(Autosave.copyOf(folder.resolve(whole + "n")))
        .isNotEqualTo(Autosave.copyOf(folder.resolve(whole + "m")));
  }

  @Test
  void workWithoutAFileIsNamedAfterItsLayout() {
    Autosave autosave = new Autosave(folder.resolve("home"));
    Session session = Session.withoutFile(Wren.layout());
    assertThat(autosave.copyOf(session).getFileName().toString())
        .isEqualTo("wren-" + session.stamp() + ".longlow-autosave.json");
    session.apply(Edits.set(new Target.OfField(List.of("name"), "name"), "robin"));
    assertThat(autosave.copyOf(session).getFileName().toString())
        .as("where it was")
        .isEqualTo("wren-" + session.stamp() + ".longlow-autosave.json");
    Path drawn = autosave.copyOf(Session.withoutFile(Wren.layout(), folder));
    assertThat(drawn.getParent().getParent()).isEqualTo(folder.resolve("home"));
    String name = "\u00dcber/../x";
    Layout odd = layout(Wren.text().replace("\"name\": \"wren\"", "\"name\": \"" + name + "\""));
    assertThat(autosave.copyOf(Session.withoutFile(odd)).getParent())
        .isEqualTo(folder.resolve("home"));
    assertThat(autosave.copyOf(Session.withoutFile(odd)).getFileName().toString())
        .startsWith("_ber____x-");
  }

  private static Layout layout(String text) {
    return ((ReadResult.Read) LayoutReader.read(text, null)).layout();
  }

  @Test
  void aCopyIsItsOwnersAlone() throws IOException {
    assumeThat(FileSystems.getDefault().supportedFileAttributeViews()).contains("posix");
    Autosave autosave = new Autosave(folder.resolve("new/home"));
    Path copy = autosave.copyOf(Session.withoutFile(Wren.layout()));
    Autosave.write(Wren.layout(), copy, Optional.empty());
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copy)))
        .isEqualTo("rw-------");
    assertThat(PosixFilePermissions.toString(Files.getPosixFilePermissions(copy.getParent())))
        .isEqualTo("rwx------");
  }

  @Test
  void foundWorkIsOfferedLatestFirstAndBrokenWorkApart() throws IOException {
    Path home = Files.createDirectories(folder.resolve("home"));
    Autosave autosave = new Autosave(home);
    for (int i = 0; i < 3; i++) {
      Path copy = home.resolve("w" + i + "-x.longlow-autosave.json");
      Files.writeString(copy, Wren.text().replace("\"1640 mm\"", "\"" + (1650 + i) + " mm\""));
      Files.setLastModifiedTime(
          copy, FileTime.from(Instant.ofEpochSecond(1000 + (i == 1 ? 9 : i))));
      Path broken = home.resolve("b" + i + ".longlow-found-2.json");
      Files.writeString(broken, "{");
      Files.setLastModifiedTime(
          broken, FileTime.from(Instant.ofEpochSecond(1000 + (i == 1 ? 9 : i))));
    }
    Files.writeString(home.resolve("other.json"), Wren.text());
    assertThat(autosave.homeless())
        .extracting(f -> f.copy().getFileName().toString().substring(0, 2))
        .containsExactly("w1", "w2", "w0");
    assertThat(autosave.homeless().get(0).at()).isEqualTo(Instant.ofEpochSecond(1009));
    assertThat(autosave.brokenHomeless())
        .extracting(f -> f.copy().getFileName().toString().substring(0, 2))
        .containsExactly("b1", "b2", "b0");
    assertThat(autosave.brokenHomeless().get(0).trouble()).contains("is not JSON");
  }

  @Test
  void workBesideAFileIsOfferedLatestFirst() throws IOException {
    Path file = Wren.file(folder);
    Autosave autosave = new Autosave(Files.createDirectories(folder.resolve("home")));
    List<Path> copies =
        List.of(
            Autosave.copyOf(file),
            autosave.awayFrom(file),
            folder.resolve(".wren.json.longlow-found.json"),
            folder.resolve(".wren.json.longlow-found-7.json"));
    int[] age = {2, 4, 1, 3};
    Files.createDirectory(copies.get(1).getParent());
    for (int i = 0; i < 4; i++) {
      Files.writeString(
          copies.get(i), Wren.text().replace("\"1640 mm\"", "\"" + (1650 + i) + " mm\""));
      Files.setLastModifiedTime(copies.get(i), FileTime.from(Instant.ofEpochSecond(1000 + age[i])));
    }
    // one of another file, and one that says the same as the file
    Files.writeString(folder.resolve(".lark.json.longlow-found.json"), Wren.text());
    Files.writeString(folder.resolve(".wren.json.longlow-found-3.json"), Wren.text());
    assertThat(autosave.beside(file, Wren.layout()))
        .extracting(Autosave.Found::copy)
        .containsExactly(copies.get(1), copies.get(3), copies.get(0), copies.get(2));
    Autosave.Found held = Autosave.hold(autosave.beside(file, Wren.layout()).get(2));
    assertThat(held.copy().getFileName().toString()).isEqualTo(".wren.json.longlow-found-2.json");
    assertThat(Files.exists(copies.get(0))).isFalse();
    assertThat(Autosave.hold(held)).as("it waits already").isSameAs(held);
    Path aside = Autosave.setAside(held.copy());
    assertThat(aside).isEqualTo(folder.resolve("wren.unsaved.json"));
    assertThat(Files.exists(aside)).isTrue();
  }

  @Test
  void drawingsGoAlongOnceAndNeverOutOfTheFolder() throws IOException {
    Path from = Files.createDirectories(folder.resolve("from"));
    Path to = Files.createDirectories(folder.resolve("to"));
    Files.createDirectories(from.resolve("sub"));
    Files.writeString(
        from.resolve("sub/lump.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg'><path id='lump' d='M0 0 H200 V100 H0 Z'/></svg>");
    Path file =
        Files.writeString(
            from.resolve("wren.json"),
            Wren.text()
                .replaceFirst(
                    "(?s)(\"frame\": \"tankPin\",\\s*\"outline\": )\\{.*?\"closed\": true\\}",
                    "$1{\"svg\": \"sub/lump.svg\", \"path\": \"lump\", \"scale\": \"1 mm\"}"));
    Layout layout = ((LayoutFile.Opening.Opened) LayoutFile.open(file)).layout();
    assertThat(TracedFiles.of(layout)).containsExactly("sub/lump.svg");
    assertThat(TracedFiles.of(Wren.layout())).isEmpty();
    TracedFiles.copy(layout, from, to);
    assertThat(to.resolve("sub/lump.svg")).hasSameTextualContentAs(from.resolve("sub/lump.svg"));
    TracedFiles.copy(layout, from, to);
    // from another of its name the layout would be read otherwise; what is not there is no fault
    Files.writeString(to.resolve("sub/lump.svg"), "mine");
    assertThatThrownBy(() -> TracedFiles.copy(layout, from, to))
        .isInstanceOf(IOException.class)
        .hasMessageContaining(to.resolve("sub/lump.svg") + " than the one");
    assertThat(to.resolve("sub/lump.svg")).hasContent("mine");
    TracedFiles.copy(layout, folder.resolve("nowhere"), to);
  }

  @Test
  void twoClaimsOfOneFileAreToldApart() throws IOException {
    Path marks = folder.resolve("open");
    Path file = Wren.file(folder);
    try (FileClaim first = FileClaim.of(marks, file)) {
      assertThat(first.isAlone()).isTrue();
      try (FileClaim second = FileClaim.of(marks, folder.resolve("x/../wren.json"))) {
        assertThat(second.isAlone()).isFalse();
      }
      assertThat(FileClaim.isHeld(marks, file)).as("still, after a second look").isTrue();
      assertThat(FileClaim.isHeld(marks, folder.resolve("lark.json"))).isFalse();
      try (FileClaim other = FileClaim.of(marks, folder.resolve("lark.json"))) {
        assertThat(other.isAlone()).isTrue();
      }
    }
    // a mark that a killed window left holds nothing; a file not there yet is the same one then
    assertThat(FileClaim.isHeld(marks, file)).isFalse();
    Path copy = folder.resolve("new/copy.json");
    try (FileClaim early = FileClaim.of(marks, copy)) {
      Files.createDirectory(copy.getParent());
      Files.writeString(copy, "");
      assertThat(FileClaim.isHeld(marks, copy)).isTrue();
      assertThat(early.isAlone()).isTrue();
    }
    try (FileClaim again = FileClaim.of(marks, file)) {
      assertThat(again.isAlone()).isTrue();
    }
    try (var left = Files.list(marks)) {
      assertThat(left).isEmpty();
    }
  }
}
