package org.longlow.sketcher.guide;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.built.BuiltMachine;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.cli.Ran;
import org.longlow.sketcher.picture.Shipped;

/** The pages of the guide that are made from the program itself. */
class GuidePagesTest {

  @TempDir Path folder;

  static final List<String> MADE = List.of("format.md", "findings.md");

  @Test
  void everyFieldStandsOnItsPage() throws IOException {
    String made = FormatPage.text();
    assertThat(made).contains("## cushion", "| `ifd25` |");
    same("format.md", made);
  }

  @Test
  void everyKindOfFindingStandsOnItsPage() throws IOException {
    List<Study> studies = new ArrayList<>(Shipped.studies().toList());
    studies.add(Study.of(first("at-fault.json")));
    studies.add(BuiltMachine.of(Study.of(first("measured.json"))).built());
    studies.add(Study.of(first("nobody.json")));
    FindingsPage page = new FindingsPage(studies);
    assertThat(page.missing()).as("say it in finding-words.txt").isEmpty();
    same("findings.md", page.text());
  }

  /** Returns a first machine with what a file says put into it. */
  private Layout first(String change) throws IOException {
    Path file = folder.resolve("first-" + change);
    assertThat(Ran.of("new", "--out", file).code()).isZero();
    try (InputStream in = getClass().getResourceAsStream(change)) {
      TypedAlong.put(file, (ObjectNode) new ObjectMapper().readTree(in));
    }
    return ((ReadResult.Read) LayoutReader.read(file)).layout();
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
