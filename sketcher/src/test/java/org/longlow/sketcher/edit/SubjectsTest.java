package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.layout.Layout;
import org.longlow.sketcher.desk.Wren;

/** What lies on the bench, as a word and a name. */
class SubjectsTest {

  private static final Layout WREN = Wren.layout();

  @Test
  void eachGroupHasAWordAndComesBack() {
    List<String> words = new ArrayList<>();
    Subjects.each(
        (word, group) -> {
          words.add(word);
          Entry entry = new Entry(group, "a: b");
          assertThat(Subjects.of(entry)).isEqualTo(word + ":a: b");
          assertThat(Subjects.entry(word + ":a: b")).contains(entry);
        });
    assertThat(words).startsWith("part", "pin", "person").hasSize(14);
    assertThatThrownBy(() -> Subjects.of(new Entry("anvils", "a")))
        .isInstanceOf(IllegalArgumentException.class);
  }

  /** Nothing is reachable by a text editor alone; units have their entry in the menu. */
  @Test
  void everyFieldOfTheDocumentLiesOnTheBench() {
    Set<String> missed = new TreeSet<>();
    Document.LAYOUT.fields().forEach(f -> missed.add(f.key()));
    Subjects.each((word, group) -> missed.remove(group));
    Stream.of(Forms.whole(WREN), Forms.demands(WREN), Forms.asBuilt(WREN))
        .flatMap(form -> form.rows().stream())
        .forEach(row -> missed.remove(row.path().get(0)));
    assertThat(missed).containsExactly("units");
  }

  @Test
  void whatIsNoEntryIsNone() {
    for (String subject : List.of("", ":tank", "tank", Subjects.DEMANDS, Subjects.NAMES)) {
      assertThat(Subjects.entry(subject)).as(subject).isEmpty();
    }
    assertThat(Subjects.entry(WREN, "part:tank")).contains(new Entry("parts", "tank"));
    assertThat(Subjects.entry(WREN, "part:anvil")).isEmpty();
  }
}
