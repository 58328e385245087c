package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.sketcher.app.FigureAnswers;

/** Lists that the README keeps by hand are those of the program. */
class ReadmeTest {

  private static List<String> listed(String between) throws IOException {
    String readme = Files.readString(Path.of("..", "README.md"));
    Matcher m = Pattern.compile(between, Pattern.DOTALL).matcher(readme);
    assertThat(m.find()).as(between).isTrue();
    return List.of(m.group(1).replace("`", "").strip().split(",\\s+|\\s+and\\s+"));
  }

  @Test
  void partsAreThoseOfTheFileFormat() throws IOException {
    assertThat(listed("\\*\\*parts\\*\\* hang on pins: ([^.]*)\\."))
        .containsExactlyInAnyOrderElementsOf(Document.PART.kinds().keySet());
  }

  @Test
  void figureKindsAreThoseThatAreAnswered() throws IOException {
    assertThat(listed("`figure` knows ([^.]*)\\."))
        .containsExactlyInAnyOrderElementsOf(FigureAnswers.kinds());
  }
}
