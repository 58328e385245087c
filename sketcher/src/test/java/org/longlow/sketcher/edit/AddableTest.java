package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.layout.Wish;

/** What the drawer offers besides parts. */
class AddableTest {

  private static final Layout WREN = Tried.wren();

  private static Addable titled(Layout layout, String title) {
    return Addable.of(layout).stream()
        .filter(a -> a.title().equals(title))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void everyKindIsOfferedOnceUnderATitleOfItsOwn() {
    List<Addable> all = Addable.of(WREN);
    Set<String> titles = new HashSet<>();
    all.forEach(a -> assertThat(titles.add(a.title())).as(a.title()).isTrue());
    for (TieKind kind : TieKind.values()) {
      assertThat(titles).contains("tie " + kind.word());
    }
    for (Limit.Kind kind : Limit.Kind.values()) {
      assertThat(titles).contains("limit " + kind.word());
    }
    for (Wish.Kind kind : Wish.Kind.values()) {
      assertThat(titles).contains("wish " + kind.word());
    }
    for (Demands.Key key : Demands.Key.values()) {
      assertThat(titles.contains("demand " + key.word()))
          .isEqualTo(!WREN.demands().limits().containsKey(key));
    }
    for (String rules : Document.rules()) {
      assertThat(titles.contains("demand rules " + rules))
          .isEqualTo(!WREN.demands().rules().contains(rules));
    }
    assertThat(titles).contains("measure", "section", "person woman", "person man", "stance open");
  }

  @Test
  void whatItAddsIsToldBeforehand() {
    Additions.Picked none = new Additions.Picked(List.of(), List.of(), Drawn.places(WREN));
    Addable woman = titled(WREN, "person woman");
    assertThat(woman.subject(WREN, woman.edit().apply(none))).contains("person:woman");
    Addable tie = titled(WREN, "tie distance");
    assertThat(tie.subject(WREN, tie.edit().apply(none))).as("nothing is picked").isEmpty();
    Addable lean = titled(WREN, "demand lean");
    Layout demanding = lean.edit().apply(none).applied(WREN);
    assertThat(lean.subject(WREN, lean.edit().apply(none))).contains(Subjects.DEMANDS);
    assertThat(Addable.of(demanding)).noneMatch(a -> a.title().equals("demand lean"));
  }

  @Test
  void wordsFindWhatTheyBegin() {
    assertThat(Addable.of(WREN).stream().filter(a -> a.matches("tie dist")).map(Addable::title))
        .containsExactly("tie distance");
    assertThat(Addable.of(WREN).stream().filter(a -> a.matches("anvil"))).isEmpty();
    assertThat(Addable.of(WREN)).allMatch(a -> a.matches(" "));
  }

  @Test
  void whatIsThereOnceIsOfferedOnce() {
    Additions.Picked none = new Additions.Picked(List.of(), List.of(), Drawn.places(WREN));
    Layout ruled = Additions.rules("uk").applied(WREN);
    assertThat(Addable.of(ruled)).noneMatch(a -> a.title().equals("demand rules uk"));
    assertThat(Addable.of(WREN)).anyMatch(a -> a.title().equals("demand rules uk"));
    for (Stance.Kind kind : Stance.Kind.values()) {
      Stance stance = new Stance(kind, "");
      Layout only = Change.set(WREN, Map.of("it", stance), "stances");
      assertThat(Addable.of(only).stream().filter(a -> a.group().equals("stances")))
          .extracting(Addable::word)
          .containsExactlyElementsOf(
              Stream.of(Stance.Kind.values())
                  .filter(k -> k != kind || k == Stance.Kind.OPEN)
                  .map(Stance.Kind::word)
                  .toList());
    }
    for (Addable a : Addable.of(WREN)) {
      String name = a.edit().apply(none).name();
      String said = a.group().equals("crew") ? "add person" : "add " + a.title();
      assertThat(name).isEqualTo(said.replace("demand rules", "rules"));
    }
  }

  @Test
  void aLimitSaysHowMuchItSpeaksOf() {
    assertThat(titled(WREN, "limit distance").help()).isEqualTo("2 pins");
    assertThat(titled(WREN, "limit inside").help()).isEqualTo("1 pin 1 part");
    assertThat(titled(WREN, "limit gap").help()).isEqualTo("2 parts");
    assertThat(titled(WREN, "limit measure").help()).isEmpty();
  }
}
