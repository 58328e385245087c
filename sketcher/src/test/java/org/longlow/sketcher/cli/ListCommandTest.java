package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.demo.Demos;

/** Lists in a folder: all of them, again, and beside what somebody changed. */
class ListCommandTest {

  @TempDir Path folder;

  private List<String> names(Path in) throws IOException {
    try (Stream<Path> files = Files.list(in)) {
      return files.map(f -> f.getFileName().toString()).sorted().toList();
    }
  }

  @Test
  void listsArePutThereWholeAndWhatWasChangedIsKept() throws IOException {
    Demos.copy("curlew", folder);
    Path file = folder.resolve("curlew.json");
    Path out = folder.resolve("shop/lists");
    Ran first = Ran.of("list", file, "--out", out);
    assertThat(first.said()).contains("What", "steel tube", "written: ");
    List<String> names = names(out);
    assertThat(names)
        .contains("shopping.csv", "bar-plan.csv", "cutting-plans.pdf", "weighing.pdf")
        .contains("SHA256SUMS", "cutting-plans-01.svg")
        .doesNotContain("not-finished.txt");
    // again: all is ours, and nothing is kept beside
    Files.copy(out.resolve("cutting-plans-01.svg"), out.resolve("cutting-plans-99.svg"));
    Ran.of("list", file, "--out", out, "--units", "in");
    assertThat(names(out)).noneMatch(n -> n.contains("replaced"));
    assertThat(Files.readString(out.resolve("tubes.csv"))).contains("Cut length (in)");
    // changed by hand: kept
    Files.writeString(out.resolve("shopping.csv"), "bought already\n");
    Ran third = Ran.of("list", file, "--out", out);
    assertThat(third.said()).contains("is kept as shopping.replaced.csv");
    assertThat(Files.readString(out.resolve("shopping.replaced.csv"))).contains("bought already");
    assertThat(Files.readString(out.resolve("shopping.csv"))).startsWith("What,Size,Quantity");
  }

  @Test
  void paperThatHasNoRoomIsRefused() throws IOException {
    Demos.copy("curlew", folder);
    Path file = folder.resolve("curlew.json");
    Path out = folder.resolve("lists");
    assertThat(Ran.of("list", file, "--out", out, "--paper", "roll 610").said())
        .contains("a roll is for templates");
    assertThat(Ran.of("list", file, "--out", out, "--paper", "100x150").said())
        .contains("at least 200 mm wide");
    assertThat(Files.exists(out)).isFalse();
  }
}
