package org.longlow.sketcher.guide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What the guide says is so: each command in it is run, each answer in it is the program's. */
class GuideTest {

  private static final Pattern LINK = Pattern.compile("\\]\\(([^)#]+)(?:#[^)]*)?\\)");

  @TempDir Path folder;

  static List<String> pages() {
    return GuideFiles.pages();
  }

  /** Chapters that make what takes long: crowds, places that suit, all templates. */
  private static final Set<String> DEAR =
      Set.of(
          "as-built.md",
          "crowd.md",
          "drawings.md",
          "first-machine.md",
          "first-template.md",
          "reading-findings.md",
          "seat.md",
          "templates.md");

  /** All with the long sweeps, else those that are soon typed along. */
  static List<String> chapters() {
    return pages().stream()
        .filter(p -> !GuidePagesTest.MADE.contains(p))
        .filter(p -> Boolean.getBoolean("longlow.long") || !DEAR.contains(p))
        .toList();
  }

  @ParameterizedTest
  @MethodSource("chapters")
  void whatAChapterTypesDoesWhatItSays(String chapter) throws IOException {
    TypedAlong reader = new TypedAlong(folder);
    for (GuideBlock block : GuidePage.of(GuideFiles.text(chapter))) {
      if (block instanceof GuideBlock.Code box) {
        reader.take(box);
      } else if (block instanceof GuideBlock.Picture picture && picture.file().endsWith(".svg")) {
        reader.see(picture);
      }
    }
    if (!chapter.equals("README.md")) {
      assertThat(reader.commands()).isPositive();
      assertThat(reader.lines()).isPositive();
    }
  }

  @Test
  void whatIsNotSoIsNoticed() {
    assertThatThrownBy(() -> read("```sh\nlonglow figure trail   # ends with 0\n```"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("--input is missing");
    assertThatThrownBy(() -> read("```sh\nls\n```")).isInstanceOf(AssertionError.class);
    assertThatThrownBy(() -> read("```\nnothing said\n```")).isInstanceOf(AssertionError.class);
    String trail =
        "```json t.json\n{\"radiusMm\": 300, \"rakeDeg\": 0, \"offsetMm\": 20}\n```\n"
            + "```sh\nlonglow figure trail --input t.json\n```\n";
    assertThatThrownBy(() -> read(trail + "```text\n\"groundTrailMm\": 20.0\n```"))
        .isInstanceOf(AssertionError.class)
        .hasMessageContaining("-20.0");
    assertThatThrownBy(() -> read(trail + "```text\n-20.0 … groundTrailMm\n```"))
        .isInstanceOf(AssertionError.class);
  }

  @Test
  void whatIsSoIsFound() throws IOException {
    read(
        "```json t.json\n{\"radiusMm\": 300, \"rakeDeg\": 0, \"offsetMm\": 5}\n```\n"
            + "```json t.json\n{\"offsetMm\": 20}\n```\n"
            + "```sh\nlonglow figure trail --input t.json\n"
            + "longlow figure trail   # ends with 2\n```\n"
            + "```text\n\"groundTrailMm\": … -20.0\n--input is … missing\n```");
  }

  private void read(String page) throws IOException {
    TypedAlong reader = new TypedAlong(folder);
    for (GuideBlock block : GuidePage.of(page)) {
      reader.take((GuideBlock.Code) block);
    }
  }

  @ParameterizedTest
  @MethodSource("pages")
  void linksAndPicturesAreThere(String page) {
    Matcher link = LINK.matcher(GuideFiles.text(page));
    while (link.find()) {
      assertThat(GuideFiles.FOLDER.resolve(link.group(1))).exists();
    }
  }

  @Test
  void theIndexLeadsToEveryPageAndEveryPictureIsShown() throws IOException {
    String index = GuideFiles.text("README.md");
    StringBuilder all = new StringBuilder();
    for (String page : pages()) {
      all.append(GuideFiles.text(page));
      if (!page.equals("README.md")) {
        assertThat(index).contains("](" + page + ")");
      }
    }
    try (var pictures = Files.list(GuideFiles.FOLDER.resolve("pictures"))) {
      assertThat(pictures.map(p -> "pictures/" + p.getFileName()))
          .isNotEmpty()
          .allSatisfy(p -> assertThat(all).contains("](" + p + ")"));
    }
  }
}
