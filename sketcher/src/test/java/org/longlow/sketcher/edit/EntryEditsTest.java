package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.desk.Wren;

/** Things renamed and taken out as edits: tried, said beforehand, taken or refused in words. */
class EntryEditsTest {

  private static final Study WREN = Study.of(Wren.layout());

  private static Entries.Entry entry(String group, String name) {
    return new Entries.Entry(group, name);
  }

  @Test
  void whatIsSaidBeforehandIsWhatGoes() {
    Layout layout = WREN.layout();
    for (String group : List.of("pins", "parts", "crew")) {
      for (String name : Entries.of(layout, group).keySet()) {
        Entries.Entry entry = entry(group, name);
        String follows = Several.follows(layout, List.of(entry));
        Trial trial = Tried.of(WREN, Several.takeOut(List.of(entry)), null);
        if (trial instanceof Trial.Accepted taken) {
          for (String other : List.of("pins", "parts", "ties", "limits", "wishes", "sections")) {
            for (String was : Entries.of(layout, other).keySet()) {
              boolean gone = !Entries.of(taken.layout(), other).containsKey(was);
              // a part's own pins go with it unasked where nothing else does
              boolean own = other.equals("pins") && group.equals("parts") && follows.isEmpty();
              if (gone && !own && !(other.equals(group) && was.equals(name))) {
                assertThat(follows).as(name).contains(was);
              }
            }
          }
        } else {
          assertThat(((Trial.Refused) trial).words()).as(name).isNotBlank();
        }
      }
    }
  }

  @Test
  void aWheelCannotBeTakenOut() {
    String wheel =
        WREN.layout()
            .parts(org.longlow.constraints.layout.WheelPart.class)
            .findFirst()
            .orElseThrow()
            .name();
    Trial trial = Tried.of(WREN, Several.takeOut(List.of(entry("parts", wheel))), null);
    assertThat(trial).isInstanceOf(Trial.Refused.class);
    assertThat(((Trial.Refused) trial).words()).contains("needs exactly one");
  }

  @Test
  void aNameThatIsTakenOrNoneIsRefused() {
    Trial taken = Tried.of(WREN, Edits.rename(entry("pins", "backTop"), "backLow"), null);
    assertThat(((Trial.Refused) taken).words()).contains("already backLow");
    Trial none = Tried.of(WREN, Edits.rename(entry("pins", "backTop"), "?"), null);
    assertThat(((Trial.Refused) none).words()).contains("no good name");
    Trial gone = Tried.of(WREN, Several.takeOut(List.of(entry("pins", "nowhere"))), null);
    assertThat(((Trial.Refused) gone).words()).contains("no nowhere");
  }
}
