package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Entries.Entry;
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

  @Test
  void whatIsNoEntryIsNone() {
    for (String subject : List.of("", ":tank", "tank", Subjects.DEMANDS, Subjects.NAMES)) {
      assertThat(Subjects.entry(subject)).as(subject).isEmpty();
    }
    assertThat(Subjects.entry(WREN, "part:tank")).contains(new Entry("parts", "tank"));
    assertThat(Subjects.entry(WREN, "part:anvil")).isEmpty();
  }
}
