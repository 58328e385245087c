package org.longlow.sketcher.guide;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.sketcher.picture.Shipped;

/** The pages of the guide that are made from the program itself. */
class GuidePagesTest {

  static final List<String> MADE = List.of("format.md", "findings.md");

  @Test
  void everyFieldStandsOnItsPage() throws IOException {
    String made = FormatPage.text();
    assertThat(made).contains("## cushion", "| `ifd25` |");
    same("format.md", made);
  }

  @Test
  void everyKindOfFindingStandsOnItsPage() throws IOException {
    FindingsPage page = new FindingsPage(Shipped.studies().toList());
    assertThat(page.missing()).as("say it in finding-words.txt").isEmpty();
    same("findings.md", page.text());
  }

  private static void same(String page, String made) throws IOException {
    if (Boolean.getBoolean("golden.update")) {
      Files.writeString(GuideFiles.FOLDER.resolve(page), made);
    }
    assertThat(GuideFiles.text(page))
        .as("what it is made from changed; if meant, run with -Dgolden.update=true")
        .isEqualTo(made);
  }
}
