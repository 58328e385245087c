package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiConsumer;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Fault;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Form.Input;
import org.longlow.constraints.document.Form.Row;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.document.Typing;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.TestMachine;
import org.longlow.rider.geom.OutOfRange;

/** Every field of every thing that the document describes is shown in a form and can be typed. */
class FormTest {

  private static final boolean LONG = Boolean.getBoolean("longlow.long");

  /** Rows that many entries have, with one sentence, are typed into in so many of them. */
  private static final int MOST = LONG ? Integer.MAX_VALUE : 1;

  /** Of those that are unlike, each so manieth. */
  private static final int EACH = LONG ? 1 : 5;

  /** Lists of one sentence are grown in so many entries. */
  private static final int MOST_GROWN = LONG ? Integer.MAX_VALUE : 2;

  private static final List<Layout> LAYOUTS =
      List.of(Plank.layout(), TestMachine.tourer().layout(), TestMachine.runabout().layout());

  private static List<Form> forms(Layout layout) {
    List<Form> forms =
        new ArrayList<>(List.of(Forms.whole(layout), Forms.demands(layout), Forms.asBuilt(layout)));
    Document.LAYOUT.fields().stream()
        .filter(f -> f.type() instanceof Type.Group)
        .forEach(
            f ->
                Entries.of(layout, f.key())
                    .keySet()
                    .forEach(
                        name ->
                            forms.add(
                                Forms.of(layout, new Entries.Entry(f.key(), name)).orElseThrow())));
    return forms;
  }

  private static void eachRow(BiConsumer<Layout, Row> test) {
    LAYOUTS.forEach(layout -> eachRow(layout, test));
  }

  private static void eachRow(Layout layout, BiConsumer<Layout, Row> test) {
    forms(layout).forEach(form -> form.rows().forEach(row -> test.accept(layout, row)));
  }

  private static boolean isTyped(Row row) {
    return row.input() != Input.HEADING && row.input() != Input.MORE;
  }

  @Test
  void everyKindAndEveryInputIsAmongThem() {
    List<String> kinds = new ArrayList<>();
    List<Input> inputs = new ArrayList<>();
    for (Layout layout : LAYOUTS) {
      for (Form form : forms(layout)) {
        kinds.add(form.name());
        assertThat(form.help()).isNotBlank();
        form.rows().forEach(row -> inputs.add(row.input()));
      }
    }
    assertThat(kinds)
        .contains("layout", "demands", "measure", "pin", "tie", "limit", "wish", "section")
        .contains("stance", "person", "wheel", "rail", "cushion", "lamp", "stand");
    assertThat(inputs).contains(Input.values());
  }

  @Test
  void everyFieldHasItsRowAndItsSentence() {
    Layout plank = Plank.layout();
    plank
        .parts()
        .forEach(
            (name, part) -> {
              Form form = Forms.of(plank, new Entries.Entry("parts", name)).orElseThrow();
              Document.PART
                  .kind(part)
                  .fields()
                  .forEach(
                      f ->
                          assertThat(form.rows())
                              .as(name + " " + f.key())
                              .anyMatch(r -> r.path().get(2).equals(f.key())));
            });
    eachRow((layout, row) -> assertThat(row.help()).as(row.path().toString()).isNotBlank());
  }

  @Test
  void whatIsTypedAgainAsItWasChangesNothing() {
    eachRow(
        (layout, row) -> {
          if (isTyped(row)) {
            assertThat(Typing.typed(layout, row.text(), row.path()))
                .as(row.path().toString())
                .isEqualTo(layout);
          }
        });
  }

  @Test
  void whatIsTypedStandsThereAndIsWrittenAndReadAgain() {
    int[] sound = {0};
    int[] met = {0};
    String written = LayoutWriter.toJson(Plank.layout());
    Map<List<Object>, Integer> alike = new HashMap<>();
    eachRow(
        Plank.layout(),
        (layout, row) -> {
          if (!isTyped(row)
              || alike.merge(List.of(row.label(), row.input(), row.help()), 1, Integer::sum) > MOST
              || met[0]++ % EACH != 0) {
            return;
          }
          String other = other(row);
          Layout typed = Typing.typed(layout, other, row.path());
          assertThat(textAt(typed, row)).as(row.path() + " " + other).isEqualTo(other);
          if (LayoutFaults.of(typed).isEmpty()) {
            sound[0]++;
            String text = LayoutWriter.toJson(typed);
            ReadResult read = LayoutReader.read(text, null);
            if (read instanceof ReadResult.Read again) {
              assertThat(LayoutWriter.toJson(again.layout())).isEqualTo(text);
            } else {
              assertThat(Plank.lines(read)).as("only files need be missing").contains("svg");
            }
          }
          boolean cleared =
              row.label().equals("pin")
                  || row.path().contains("ends") && row.label().equals("part");
          if (cleared && row.text().isEmpty()) {
            return; // a vertex hung on a pin has lost its coordinates, an end its pin or part
          }
          Layout back = Typing.typed(typed, row.text(), row.path());
          assertThat(LayoutWriter.toJson(back)).as(row.path() + " " + other).isEqualTo(written);
        });
    assertThat(sound[0]).isGreaterThan(LONG ? 400 : 20);
  }

  /** The form that has the row at a path. */
  private static Form form(Layout layout, List<String> path) {
    return switch (path.get(0)) {
      case "demands" -> Forms.demands(layout);
      case "asBuilt" -> Forms.asBuilt(layout);
      case "titleBlock" -> Forms.whole(layout);
      case "name", "title", "currency", "notes" -> Forms.whole(layout);
      default -> Forms.of(layout, new Entries.Entry(path.get(0), path.get(1))).orElseThrow();
    };
  }

  private static String textAt(Layout layout, Row row) {
    return form(layout, row.path()).rows().stream()
        .filter(r -> r.path().equals(row.path()) && r.input() == row.input())
        .findFirst()
        .orElseThrow()
        .text();
  }

  /** Another value of the same sort. */
  private static String other(Row row) {
    return switch (row.input()) {
      case SWITCH -> row.text().equals("true") ? "false" : "true";
      case CHOICE ->
          row.choices().stream().filter(c -> !c.equals(row.text())).findFirst().orElse(row.text());
      case NUMBER -> row.text().equals("2") ? "3" : "2";
      case QUANTITY -> row.text().equals("7") ? "8" : "7";
      default -> row.text() + "x";
    };
  }

  @Test
  void whatMayBeLeftOutIsTakenOutByTypingNothing() {
    Layout plank = Plank.layout();
    List<String> mass = List.of("parts", plank.parts().keySet().iterator().next(), "mass");
    Layout with = Typing.typed(plank, "3.21 kg", mass);
    assertThat(LayoutWriter.toJson(with)).contains("3.21 kg");
    Layout without = Typing.typed(with, " ", mass);
    assertThat(LayoutFaults.of(without)).isEmpty();
    assertThat(LayoutWriter.toJson(without)).doesNotContain("3.21 kg");
  }

  @Test
  void listsTakeMoreAndGiveItBack() {
    int[] more = {0};
    Map<Layout, String> written = new IdentityHashMap<>();
    Map<String, Integer> alike = new HashMap<>();
    LAYOUTS.forEach(layout -> written.put(layout, LayoutWriter.toJson(layout)));
    eachRow(
        (layout, row) -> {
          if (row.input() != Input.MORE
              || row.path().contains("points")
              || alike.merge(row.help(), 1, Integer::sum) > MOST_GROWN) {
            return;
          }
          String word = row.choices().isEmpty() ? "" : row.choices().get(0);
          Layout longer = Typing.added(layout, word, row.path());
          List<Row> items = items(longer, row.path());
          assertThat(items).as(row.path().toString()).hasSize(items(layout, row.path()).size() + 1);
          Layout back = Typing.dropped(longer, items.get(items.size() - 1).path());
          assertThat(LayoutWriter.toJson(back)).isEqualTo(written.get(layout));
          more[0]++;
        });
    assertThat(more[0]).isGreaterThan(LONG ? 50 : 20);
  }

  private static List<Row> items(Layout layout, List<String> path) {
    return form(layout, path).rows().stream()
        .filter(
            r ->
                r.input() != Input.MORE
                    && r.path().size() == path.size() + 1
                    && r.path().subList(0, path.size()).equals(path))
        .toList();
  }

  @Test
  void aVertexIsAddedBetweenTheLastAndTheFirst() {
    Layout plank = Plank.layout();
    int tried = 0;
    for (Form form : forms(plank)) {
      for (Row row : form.rows()) {
        boolean local =
            row.input() == Input.MORE
                && row.path().contains("points")
                && form.rows().stream()
                    .noneMatch(r -> r.label().equals("pin") && !r.text().isEmpty());
        if (local) {
          Layout more = Typing.added(plank, "", row.path());
          assertThat(LayoutFaults.of(more)).extracting(Fault::line).isEmpty();
          tried++;
        }
      }
    }
    assertThat(tried).isPositive();
  }

  @Test
  void whatIsNoSuchValueIsRefusedInWords() {
    Layout plank = Plank.layout();
    assertThatThrownBy(() -> Typing.typed(plank, "femal", List.of("crew", "Jon", "sex")))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("is none of female, male; did you mean female?");
    assertThatThrownBy(() -> Typing.typed(plank, "x", List.of("crew", "Jon", "nose")))
        .isInstanceOf(OutOfRange.class);
    assertThatThrownBy(() -> Typing.dropped(plank, List.of("crew", "Jon", "seats", "99")))
        .isInstanceOf(OutOfRange.class);
    assertThat(Forms.of(plank, new Entries.Entry("pins", "nowhere"))).isEmpty();
  }
}
