package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.sketcher.cli.Ran;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

class SessionTest {

  @TempDir Path folder;

  static LongStream seeds() {
    return LongStream.of(1, 20, 300).limit(Boolean.getBoolean("longlow.long") ? 3 : 1);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aThousandEditsUndoneAndRedoneEndWhereTheyBegan(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Layout first = Wren.layout();
    Session session = Session.withoutFile(first);
    List<String> texts = new ArrayList<>();
    texts.add(LayoutWriter.toJson(first));
    while (texts.size() <= 1000) {
      Layout before = session.layout();
      session.apply(randomEdit(before, random));
      if (!session.layout().equals(before)) {
        texts.add(LayoutWriter.toJson(session.layout()));
      }
      // now and then a step is taken back and gone forward again, as people do
      if (random.nextInt(10) == 0 && session.undo()) {
        assertThat(session.redo()).isTrue();
      }
    }
    Layout last = session.layout();
    for (int i = 999; i >= 0; i--) {
      assertThat(session.undo()).isTrue();
      assertThat(LayoutWriter.toJson(session.layout())).isEqualTo(texts.get(i));
    }
    assertThat(session.undo()).isFalse();
    assertThat(session.layout()).isSameAs(first);
    assertThat(session.isChanged()).isFalse();
    for (int i = 1; i <= 1000; i++) {
      assertThat(session.redo()).isTrue();
    }
    assertThat(session.redo()).isFalse();
    assertThat(session.layout()).isSameAs(last);
    assertThat(LayoutWriter.toJson(session.layout())).isEqualTo(texts.get(1000));
  }

  private static Edit randomEdit(Layout layout, SplittableRandom random) {
    String number = String.format(Locale.ROOT, "%.3f", 100 + 900 * random.nextDouble());
    List<String> pins = List.copyOf(layout.pins().keySet());
    String pin = pins.get(random.nextInt(pins.size()));
    String other = pins.get(random.nextInt(pins.size()));
    return switch (random.nextInt(8)) {
      case 0 -> Edits.set(new Target.OfMeasure("backLength"), number + " mm");
      case 1 -> Edits.free("wheelbase", random.nextBoolean());
      case 2 -> Edits.nail(pin, random.nextBoolean());
      case 3 -> {
        Pin at =
            layout
                .pins()
                .get(pin)
                .at(Formula.parse(number + " mm"), Formula.parse("boardTop + " + number + " mm"));
        yield new Edit("move " + pin, l -> l.withPins(Map.of(pin, at)));
      }
      case 4 -> Edits.tie(TieKind.DISTANCE, List.of(pin, other), number + " mm");
      case 5 ->
          layout.ties().isEmpty()
              ? Edits.nail(pin, true)
              : Edits.untie(List.copyOf(layout.ties().keySet()).get(layout.ties().size() / 2));
      case 6 -> Edits.set(new Target.OfPerson("Mara", random.nextBoolean()), number);
      default ->
          Edits.set(
              new Target.OfPart("pan", List.of("layers", "1", "thickness"), "thickness"),
              number + " mm");
    };
  }

  @Test
  void stepsAreNamedBothWays() {
    Session session = Session.withoutFile(Wren.layout());
    session.apply(Edits.set(new Target.OfMeasure("wheelbase"), "1700 mm"));
    session.apply(Edits.untie("pegLevel"));
    session.undo();
    assertThat(session.undoName()).contains("set wheelbase to 1700 mm");
    assertThat(session.redoName()).contains("let go of tie pegLevel");
    session.apply(Edits.nail("backTop", true));
    assertThat(session.redoName()).isEmpty();
  }

  @Test
  void anEditThatChangesNothingLeavesNoStep() {
    Session session = Session.withoutFile(Wren.layout());
    session.apply(Edits.nail("rearAxle", true));
    assertThat(session.undoName()).isEmpty();
    assertThat(session.isChanged()).isFalse();
  }

  @Test
  void savingKeepsTheLayoutAndReadsBackTheSame() throws IOException {
    Path file = Wren.file(folder);
    Session session = opened(file);
    session.apply(Edits.set(new Target.OfMeasure("wheelbase"), "66 1/2 in"));
    assertThat(session.isChanged()).isTrue();
    session.saveAs(file);
    assertThat(session.isChanged()).isFalse();
    assertThat(session.changedOnDisk()).isFalse();
    assertThat(opened(file).layout()).isEqualTo(session.layout());
    session.undo();
    assertThat(session.isChanged()).as("the file holds what came after").isTrue();
  }

  @Test
  void aForeignChangeOfTheFileIsNoticedAndCanBeTakenOrRefused() throws IOException {
    Path file = Wren.file(folder);
    Session session = opened(file);
    Files.writeString(file, Wren.text().replace("\"1640 mm\"", "\"1650 mm\""));
    assertThat(session.changedOnDisk()).isTrue();

    session.carryOn();
    assertThat(session.changedOnDisk()).isFalse();
    assertThat(session.isChanged()).as("mine is not on disk").isTrue();

    assertThat(session.bringIn()).isInstanceOf(LayoutFile.Opening.Opened.class);
    assertThat(session.layout().measures().get("wheelbase").is().text()).isEqualTo("1650 mm");
    assertThat(session.isChanged()).isFalse();
    session.undo();
    assertThat(session.layout()).isEqualTo(Wren.layout());
  }

  @Test
  void aForeignFileWithFaultsIsNotTaken() throws IOException {
    Path file = Wren.file(folder);
    Session session = opened(file);
    Files.writeString(file, "{\"longlow\": 1, \"name\": 7}");
    assertThat(session.bringIn()).isInstanceOf(LayoutFile.Opening.Refused.class);
    assertThat(session.layout()).isEqualTo(Wren.layout());
  }

  @Test
  void workLeftByAKilledSessionIsFoundBesideItsFile() throws IOException {
    Path file = Wren.file(folder);
    Session session = opened(file);
    Autosave autosave = new Autosave(folder.resolve("home"));
    session.apply(Edits.set(new Target.OfMeasure("wheelbase"), "1700 mm"));
    Autosave.write(session.layout(), autosave.copyOf(session), Optional.empty());
    // nothing is closed: the session is simply gone

    Session next = opened(file);
    List<Autosave.Found> found = autosave.beside(file, next.layout());
    assertThat(found).hasSize(1);
    assertThat(found.get(0).layout()).isEqualTo(session.layout());
    assertThat(autosave.unsaved(file)).contains(found.get(0));
    Autosave.remove(found.get(0).copy());
    assertThat(autosave.unsaved(file)).isEmpty();
    assertThat(autosave.beside(file, next.layout())).isEmpty();
  }

  @Test
  void aCopyThatSaysTheSameAsItsFileIsNotOffered() throws IOException {
    Path file = Wren.file(folder);
    Autosave autosave = new Autosave(folder);
    Autosave.write(Wren.layout(), Autosave.copyOf(file), Optional.empty());
    assertThat(autosave.beside(file, Wren.layout())).isEmpty();
    assertThat(autosave.unsaved(file)).isEmpty();
    Files.delete(file);
    assertThat(autosave.unsaved(file)).as("the file is gone, its work is not").isPresent();
  }

  @Test
  void aTornCopyIsNotOffered() throws IOException {
    Path file = Wren.file(folder);
    Autosave autosave = new Autosave(folder);
    Files.writeString(Autosave.copyOf(file), Wren.text().substring(0, 400));
    assertThat(autosave.beside(file, Wren.layout())).isEmpty();
  }

  @Test
  void workWithoutAFileIsFoundByItself() throws IOException {
    Autosave autosave = new Autosave(folder.resolve("home"));
    assertThat(autosave.homeless()).isEmpty();
    Session session = Session.withoutFile(Wren.layout());
    session.apply(Edits.nail("backTop", true));
    Autosave.write(session.layout(), autosave.copyOf(session), Optional.empty());
    assertThat(autosave.homeless())
        .singleElement()
        .satisfies(f -> assertThat(f.layout()).isEqualTo(session.layout()));
  }

  @Test
  void twoSessionsWithoutAFileKeepTheirWorkApart() throws IOException {
    Autosave autosave = new Autosave(folder.resolve("home"));
    for (String pin : List.of("backTop", "pegPin")) {
      Session session = Session.withoutFile(Wren.layout());
      session.apply(Edits.nail(pin, true));
      Autosave.write(session.layout(), autosave.copyOf(session), Optional.empty());
    }
    assertThat(autosave.homeless()).hasSize(2);
  }

  @Test
  void aTracedOutlineGoesWhereItsLayoutGoes() throws IOException {
    Path first = Files.createDirectories(folder.resolve("first"));
    Path second = Files.createDirectories(folder.resolve("second"));
    Files.writeString(
        first.resolve("lump.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg'><path id='lump' d='M0 0 H200 V100 H0 Z'/></svg>");
    Path file =
        Files.writeString(
            first.resolve("wren.json"),
            Wren.text()
                .replaceFirst(
                    "(?s)(\"frame\": \"tankPin\",\\s*\"outline\": )\\{.*?\"closed\": true\\}",
                    "$1{\"svg\": \"lump.svg\", \"path\": \"lump\", \"scale\": \"1 mm\"}"));
    Session session = opened(file);
    Autosave autosave = new Autosave(folder.resolve("home"));
    session.saveAs(second.resolve("wren.json"));
    assertThat(opened(second.resolve("wren.json")).layout()).isEqualTo(session.layout());

    Session homeless = Session.withoutFile(session.layout(), first);
    Autosave.write(homeless.layout(), autosave.copyOf(homeless), homeless.folder());
    assertThat(autosave.homeless()).hasSize(1);

    // another drawing of the same name: neither layout is read from that of the other
    Path third = Files.createDirectories(folder.resolve("third"));
    Files.writeString(
        third.resolve("lump.svg"),
        "<svg xmlns='http://www.w3.org/2000/svg'><path id='lump' d='M0 0 H90 V100 Z'/></svg>");
    Session other = opened(Files.copy(file, third.resolve("wren.json")));
    assertThat(other.layout()).isNotEqualTo(session.layout());
    assertThatThrownBy(() -> session.saveAs(third.resolve("mine.json")))
        .isInstanceOf(IOException.class)
        .hasMessageContaining("another file called " + third.resolve("lump.svg"));
    assertThat(third.resolve("mine.json")).doesNotExist();
    assertThat(session.file().orElseThrow().path()).isEqualTo(second.resolve("wren.json"));
    Ran ran = Ran.of("place", file, "--move", "pegPin", "--out", third.resolve("mine.json"));
    assertThat(ran.code()).as(ran.err()).isEqualTo(2);
    assertThat(ran.err()).contains("another file called " + third.resolve("lump.svg"));
    Session drawn = Session.withoutFile(other.layout(), third);
    Autosave.write(drawn.layout(), autosave.copyOf(drawn), drawn.folder());
    assertThat(autosave.homeless())
        .extracting(Autosave.Found::layout)
        .containsExactlyInAnyOrder(session.layout(), other.layout());
  }

  @Test
  void aBrokenFileIsRefusedWithAllItsFaults() throws IOException {
    Path file = folder.resolve("broken.json");
    Files.writeString(
        file,
        Wren.text()
            .replace("\"wheelbase\": \"1640 mm\"", "\"wheelbase\": \"1640 kg\"")
            .replace("[\"lowA\", \"lowB\", \"lowC\"]", "[\"lowA\", \"nowhere\"]"));
    LayoutFile.Opening opening = LayoutFile.open(file);
    assertThat(opening).isInstanceOf(LayoutFile.Opening.Refused.class);
    assertThat(((LayoutFile.Opening.Refused) opening).faults()).hasSizeGreaterThanOrEqualTo(2);
  }

  private static Session opened(Path file) {
    LayoutFile.Opening.Opened opened = (LayoutFile.Opening.Opened) LayoutFile.open(file);
    return Session.of(opened.layout(), opened.file());
  }
}
