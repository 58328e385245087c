package org.longlow.sketcher.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pages read into blocks, words into runs. */
class GuidePageTest {

  static List<String> pages() {
    return GuideFiles.pages();
  }

  @Test
  void eachFormIsABlock() {
    assertThat(
            GuidePage.of(
                """
                # One
                two
                 lines
                ## Three
                - first
                  goes on
                2. second

                ```sh x
                # no heading
                ```
                | a | b |
                |---|---|
                | c \\| d | |
                ![seen](a.svg)
                """))
        .containsExactly(
            new GuideBlock.Heading(1, "One"),
            new GuideBlock.Paragraph("two lines"),
            new GuideBlock.Heading(2, "Three"),
            new GuideBlock.Item("•", "first goes on"),
            new GuideBlock.Item("2.", "second"),
            new GuideBlock.Code("sh x", List.of("# no heading")),
            new GuideBlock.Row(true, List.of("a", "b")),
            new GuideBlock.Row(false, List.of("c \\| d", "")),
            new GuideBlock.Picture("seen", "a.svg"));
  }

  @Test
  void runsLookAsTheyAreMarked() {
    assertThat(GuideRun.of("a **b** *c* `*d*` [e](f.md) 2 * 3 * 4 \\| g"))
        .containsExactly(
            new GuideRun(GuideRun.Look.PLAIN, "a ", ""),
            new GuideRun(GuideRun.Look.STRONG, "b", ""),
            new GuideRun(GuideRun.Look.PLAIN, " ", ""),
            new GuideRun(GuideRun.Look.STRESSED, "c", ""),
            new GuideRun(GuideRun.Look.PLAIN, " ", ""),
            new GuideRun(GuideRun.Look.CODE, "*d*", ""),
            new GuideRun(GuideRun.Look.PLAIN, " ", ""),
            new GuideRun(GuideRun.Look.LINK, "e", "f.md"),
            new GuideRun(GuideRun.Look.PLAIN, " 2 * 3 * 4 | g", ""));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "\n\n",
        "```",
        "```sh\nunclosed",
        "|",
        "||",
        "#",
        "- ",
        "![",
        "**",
        "[a](",
        "`"
      })
  void whatIsCutShortIsBorne(String text) {
    for (GuideBlock block : GuidePage.of(text)) {
      assertThat(block).isNotNull();
    }
    assertThat(GuideRun.of(text)).extracting(GuideRun::words).noneMatch(String::isEmpty);
  }

  /** A form that the window does not know would be shown with its signs. */
  @ParameterizedTest
  @MethodSource("pages")
  void theGuideKeepsToTheFormsThatAreRead(String page) {
    assertThat(Guide.page(page))
        .as("what is packed")
        .isEqualTo(GuidePage.of(GuideFiles.text(page)));
    assertThat(GuideFiles.text(page).lines())
        .noneMatch(line -> line.matches("( +[-*+] |\\* |\\+ |> |<\\w|---|===).*"));
    for (GuideBlock block : GuidePage.of(GuideFiles.text(page))) {
      if (block instanceof GuideBlock.Paragraph paragraph) {
        assertThat(GuideRun.of(paragraph.words()))
            .filteredOn(s -> s.look() != GuideRun.Look.CODE)
            .noneMatch(s -> s.words().matches(".*(\\*\\*|`|\\]\\().*"));
      }
    }
  }
}
