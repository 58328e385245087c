package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Entries.Entry;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.OutOfRange;

/** Entries renamed and taken out, for every entry of every group that the document describes. */
class EntriesTest {

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  private static final List<Layout> MACHINES =
      List.of(Plank.layout(), TestMachine.tourer().layout(), TestMachine.runabout().layout());

  record Case(Layout layout, Entry entry) {
    @Override
    public String toString() {
      return layout.name() + " " + entry.group() + " " + entry.name();
    }
  }

  /** Every other entry of plank, where there is one of each kind; of whole machines a sample. */
  private static List<Case> everyEntry() {
    List<Case> cases = new ArrayList<>();
    for (Layout layout : MACHINES) {
      int each = LONG ? 1 : layout.name().equals("plank") ? 2 : 11;
      for (String group : groups()) {
        List<String> names = List.copyOf(Entries.of(layout, group).keySet());
        for (int i = 0; i < names.size(); i += each) {
          cases.add(new Case(layout, new Entry(group, names.get(i))));
        }
      }
    }
    return cases;
  }

  private static List<String> groups() {
    return Document.LAYOUT.fields().stream()
        .filter(f -> f.type() instanceof Type.Group)
        .map(f -> f.key())
        .toList();
  }

  @Test
  void groupsAreThoseOfTheDocument() {
    assertThat(groups())
        .containsExactly(
            "measures",
            "pins",
            "parts",
            "ties",
            "limits",
            "wishes",
            "sections",
            "stances",
            "crew",
            "photos",
            "dimensions",
            "lines",
            "stock",
            "variants");
  }

  @Test
  void whatIsRenamedIsSoundAndComesBack() {
    everyEntry().forEach(EntriesTest::renamedThereAndBack);
  }

  private static void renamedThereAndBack(Case c) {
    Layout renamed = Entries.renamed(c.layout(), c.entry(), "zz9");
    assertThat(LayoutFaults.of(renamed)).as(c.toString()).isEmpty();
    assertThat(Entries.of(renamed, c.entry().group())).containsKey("zz9");
    assertThat(Entries.of(renamed, c.entry().group())).doesNotContainKey(c.entry().name());
    Layout back = Entries.renamed(renamed, new Entry(c.entry().group(), "zz9"), c.entry().name());
    assertThat(LayoutWriter.toJson(back)).isEqualTo(LayoutWriter.toJson(c.layout()));
  }

  @Test
  void whatIsTakenOutLeavesNothingThatNamesIt() {
    everyEntry().forEach(EntriesTest::takenOut);
  }

  private static void takenOut(Case c) {
    Entries.Without without = Entries.without(c.layout(), c.entry());
    assertThat(Entries.of(without.layout(), c.entry().group())).doesNotContainKey(c.entry().name());
    assertThat(without.also()).doesNotContain(c.entry());
    assertThat(Collections.disjoint(without.changed(), without.also())).isTrue();
    // a machine needs its wheels; everything else can go
    assertThat(LayoutFaults.of(without.layout()))
        .as(c.toString())
        .extracting(Fault::line)
        .allMatch(line -> line.contains("wheels with"));
    for (Entry also : without.also()) {
      assertThat(Entries.of(without.layout(), also.group())).doesNotContainKey(also.name());
    }
  }

  @Test
  void formulasKeepTheirWorthWithoutAMeasure() {
    Layout plank = Plank.layout();
    for (String measure : plank.measures().keySet()) {
      if (plank.measures().get(measure).free()) {
        continue;
      }
      Layout rest = Entries.without(plank, new Entry("measures", measure)).layout();
      Layout before =
          LayoutFaults.verdict(plank, org.longlow.constraints.document.Tracer.NONE).layout();
      rest.pins()
          .forEach(
              (name, pin) ->
                  assertThat(pin.x().evaluate(n -> worth(rest, n)))
                      .as(measure + " in " + name)
                      .isEqualTo(before.pins().get(name).x().evaluate(n -> worth(before, n))));
    }
  }

  private static double worth(Layout layout, String measure) {
    return layout.measures().get(measure).is().evaluate(n -> worth(layout, n));
  }

  @Test
  void aNameIsReplacedAsAWordOnly() {
    Layout plank = Plank.layout();
    Set<String> others = Set.copyOf(plank.measures().keySet());
    String first = plank.measures().keySet().iterator().next();
    Layout renamed = Entries.renamed(plank, new Entry("measures", first), first + "Too");
    assertThat(renamed.measures().keySet()).hasSameSizeAs(others).contains(first + "Too");
    assertThat(LayoutWriter.toJson(renamed)).doesNotContain(first + "TooToo");
  }

  @Test
  void whatIsNotThereOrThereAlreadyIsRefused() {
    Layout plank = Plank.layout();
    assertThatThrownBy(() -> Entries.renamed(plank, new Entry("pins", "nowhere"), "here"))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("no nowhere among the pins");
    assertThatThrownBy(() -> Entries.renamed(plank, new Entry("pins", "rearAxle"), "frontAxle"))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("already frontAxle");
    assertThatThrownBy(() -> Entries.without(plank, new Entry("crew", "nobody")))
        .isInstanceOf(OutOfRange.class);
  }
}
