package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.Shipped;

class TextTableTest {

  private static String printed(List<Finding> findings) {
    StringWriter out = new StringWriter();
    FindingsTable.print(findings, true, Units.MM, new PrintWriter(out, true));
    return out.toString();
  }

  /** The table's rows; a line that begins with blanks goes on with the row above. */
  private static List<String> rows(String printed) {
    List<String> rows = new ArrayList<>();
    for (String line : printed.split("\n\n")[0].split("\n")) {
      if (line.startsWith(" ")) {
        rows.set(rows.size() - 1, rows.get(rows.size() - 1) + line.strip());
      } else {
        rows.add(line);
      }
    }
    return rows;
  }

  @Test
  void noFindingReadsLikeAnotherAndNoneIsTooWide() {
    for (String name : Demos.names()) {
      List<Finding> findings = Shipped.study(name).findings();
      String text = printed(findings);
      assertThat(rows(text)).hasSize(findings.size() + 1).doesNotHaveDuplicates();
      List<String> sentences = List.of(text.split("\n\n", 2)[1].split("\n"));
      assertThat(sentences).doesNotHaveDuplicates();
      assertThat(text.split("\n\n")[0].lines()).allMatch(l -> l.length() <= 160);
    }
  }

  @Test
  void thePersonAndTheSeatAreShown() {
    String text = printed(Shipped.study("heron").findings());
    assertThat(text).containsPattern("hold\\.Runa +Runa  ");
    assertThat(text).containsPattern("hold\\.Runa\\.passenger +Runa, passenger");
  }

  @Test
  void wrappingLosesNothing() {
    Random random = new Random(7);
    Set<Integer> lengths = new HashSet<>();
    for (int i = 0; i < 500; i++) {
      StringBuilder text = new StringBuilder();
      int length = random.nextInt(120);
      for (int k = 0; k < length; k++) {
        text.append("ab.c ,d".charAt(random.nextInt(7)));
      }
      int most = 3 + random.nextInt(30);
      List<String> lines = TextTable.wrapped(text.toString(), most);
      lengths.add(lines.size());
      assertThat(lines).allMatch(l -> l.length() <= most);
      assertThat(String.join("", lines).replace(" ", ""))
          .isEqualTo(text.toString().replace(" ", ""));
    }
    assertThat(lengths).hasSizeGreaterThan(5);
  }
}
