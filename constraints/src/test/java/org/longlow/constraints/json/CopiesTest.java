package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Copies;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.rider.geom.OutOfRange;

/** Entries put in once more, under other names. */
class CopiesTest {

  /** Of the entries of plank each so manieth is copied. */
  private static final int EACH = Boolean.getBoolean("longlow.long") ? 1 : 3;

  private final Layout plank = Plank.layout();

  private static Layout copied(Layout layout, List<Entry> entries) {
    Map<Entry, String> names = new LinkedHashMap<>();
    entries.forEach(e -> names.put(e, e.name() + "Too"));
    return Copies.into(layout, layout, names);
  }

  /** Wheels and measures apart: of those there may be no second, or none that anything uses. */
  @Test
  void everyEntryCanBeCopiedAndReadBack() {
    int met = 0;
    int seen = 0;
    for (var field : Document.LAYOUT.fields()) {
      if (!(field.type() instanceof Type.Group) || field.key().equals("measures")) {
        continue;
      }
      for (String name : Entries.of(plank, field.key()).keySet()) {
        if (name.endsWith("Wheel") || met++ % EACH != 0) {
          continue;
        }
        Layout after = copied(plank, List.of(new Entry(field.key(), name)));
        assertThat(LayoutFaults.of(after)).as(field.key() + " " + name).isEmpty();
        assertThat(Entries.of(after, field.key()))
            .as(name)
            .hasSize(Entries.of(plank, field.key()).size() + 1)
            .containsKey(name + "Too");
        ReadResult read = LayoutReader.read(LayoutWriter.toJson(after), null);
        assertThat(read).as(name).isInstanceOf(ReadResult.Read.class);
        seen++;
      }
    }
    assertThat(seen).isGreaterThan(50 / EACH);
  }

  @Test
  void whatIsCopiedTogetherNamesEachOtherAndOtherwiseWhatThereWas() {
    Layout after =
        copied(
            plank,
            List.of(
                new Entry("parts", "engine"),
                new Entry("parts", "lowRail"),
                new Entry("pins", "crank"),
                new Entry("pins", "lowB"),
                new Entry("ties", "onEngine")));
    SolidPart engine = (SolidPart) after.parts().get("engineToo");
    assertThat(engine.name()).isEqualTo("engineToo");
    assertThat(engine.base().touches()).containsExactly("lowRailToo", "pipe");
    assertThat(engine.frame().origin()).isEqualTo("crankToo");
    assertThat(engine.frame().along()).contains("engineRear");
    assertThat(((TubePart) after.parts().get("lowRailToo")).path())
        .containsExactly("lowA", "lowBToo", "lowC");
    assertThat(after.ties().get("onEngineToo").part()).isEqualTo("engineToo");
    assertThat(after.ties().get("onEngineToo").pins()).containsExactly("lowBToo");
    assertThat(after.parts()).containsAllEntriesOf(plank.parts());
    assertThat(after.pins()).containsAllEntriesOf(plank.pins());
    assertThat(after.ties()).containsAllEntriesOf(plank.ties());
    assertThat(after.measures()).isEqualTo(plank.measures());
  }

  @Test
  void aNameThatIsThereServesInPlaceOfACopy() {
    Layout after =
        Copies.into(
            plank,
            plank,
            Map.of(new Entry("parts", "back"), "backTwo", new Entry("pins", "panRear"), "lowA"));
    assertThat(((CushionPart) after.parts().get("backTwo")).from()).isEqualTo("lowA");
    assertThat(after.pins()).isEqualTo(plank.pins());
    assertThatThrownBy(
            () -> Copies.into(plank, plank, Map.of(new Entry("parts", "anvil"), "anvilTwo")))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("anvil");
  }
}
