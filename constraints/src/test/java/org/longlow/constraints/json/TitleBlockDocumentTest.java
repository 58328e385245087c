package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.TitleEntries;

/** What may be said beside the picture of a drawing. */
class TitleBlockDocumentTest {

  @Test
  void itIsReadAsItIsWritten() {
    TitleEntries said = Plank.layout().titleBlock();
    assertThat(said.owner()).isEqualTo("The shed");
    assertThat(said.drawnBy()).isEqualTo("Wanda");
    assertThat(said.approvedBy()).isEqualTo("Odo");
    assertThat(said.notes()).containsExactly("Break all edges.");
    assertThat(said.revisions())
        .containsExactly(
            new TitleEntries.Revision("A", "2026-02-01", "first sight"),
            new TitleEntries.Revision("B", "", ""));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '~',
      textBlock =
          """
          {"revisions": [{"date": "2026"}]}     ~ revisions[0]       ~ index
          {"revisions": [{"index": ""}]}        ~ revisions[0].index ~ empty
          {"owner": 3}                          ~ owner              ~ text
          {"author": "x"}                       ~ author             ~ drawnBy
          """)
  void whatCannotBeIsRefusedAtItsField(String said, String field, String says) {
    String text =
        Plank.with("\"units\": \"in\",", "\"units\": \"in\",")
            .replaceFirst("(?s)\"titleBlock\": \\{.*?\\n  \\},", "\"titleBlock\": " + said + ",");
    ReadResult read = LayoutReader.read(text, Path.of("."));
    assertThat(read).isInstanceOf(ReadResult.Refused.class);
    assertThat(((ReadResult.Refused) read).faults())
        .anySatisfy(f -> assertThat(f.toString()).contains(field).contains(says));
  }

  /** Eight notes may be said, nine not. */
  @Test
  void notesLeaveThePictureItsRoom() {
    for (int n : new int[] {8, 9}) {
      String notes = String.join(", ", Collections.nCopies(n, "\"note\""));
      String text = Plank.with("[\"Break all edges.\"]", "[" + notes + "]");
      ReadResult read = LayoutReader.read(text, Path.of("."));
      assertThat(read instanceof ReadResult.Read).as(n + " notes").isEqualTo(n == 8);
    }
  }

  @Test
  void aFurtherRevisionTakesTheNextLetter() {
    Layout more = Typing.added(Plank.layout(), "", List.of("titleBlock", "revisions"));
    assertThat(more.titleBlock().revisions())
        .extracting(TitleEntries.Revision::index)
        .containsExactly("A", "B", "C");
    assertThat(more.titleBlock().revisions().get(2).what()).isEmpty();
  }
}
