package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.longlow.constraints.document.Document;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Form;
import org.longlow.constraints.document.Form.Input;
import org.longlow.constraints.document.Forms;
import org.longlow.constraints.document.Type;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.sketcher.desk.Wren;

/** Whatever the document describes lies on the bench with all its fields, lists with their ends. */
class EveryFieldOnTheBenchTest {

  static Stream<Layout> layouts() {
    return Stream.of(
        Wren.layout(), Demos.layout("heron"), Demos.layout("dunlin"), Demos.layout("curlew"));
  }

  private static List<Entries.Entry> entries(Layout layout) {
    List<Entries.Entry> all = new ArrayList<>();
    Document.LAYOUT.fields().stream()
        .filter(f -> f.type() instanceof Type.Group)
        .forEach(
            f ->
                Entries.of(layout, f.key())
                    .keySet()
                    .forEach(name -> all.add(new Entries.Entry(f.key(), name))));
    return all;
  }

  private static Set<List<String>> paths(Bench bench) {
    Set<List<String>> paths = new LinkedHashSet<>();
    bench.groups().forEach(g -> g.rows().forEach(r -> paths.add(r.target().path())));
    return paths;
  }

  private static boolean isShown(Form.Row row) {
    // vertices of its own edge and of holes are drawn on the card; headings say nothing themselves
    return !isDrawn(row) && row.input() != Input.HEADING;
  }

  private static boolean isDrawn(Form.Row row) {
    List<String> path = row.path();
    return path.size() > 3
        && path.contains("points")
        && path.get(2).equals("outline")
        && List.of("points", "holes").contains(path.get(3));
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void everyFieldIsThereAndEveryListCanGrowAndShrink(Layout layout) {
    Places places = Study.of(layout).placed().places();
    int dropped = 0;
    for (Entries.Entry entry : entries(layout)) {
      String subject = Subjects.of(entry);
      assertThat(Subjects.entry(layout, subject)).contains(entry);
      Bench bench = OnBench.of(layout, places, subject);
      assertThat(bench.entry()).contains(entry);
      Form form = Forms.of(layout, entry).orElseThrow();
      for (Form.Row row : form.rows()) {
        if (isShown(row)) {
          // what is nailed is a switch of its own, beside the words on how the pin can move
          boolean apart = entry.group().equals("pins") && row.path().get(2).equals("nailed");
          assertThat(apart || paths(bench).contains(row.path()))
              .as(subject + " " + row.path())
              .isTrue();
        }
        if (row.item() && isDroppable(row)) {
          Layout fewer = Edits.drop(new Target.OfField(row.path(), "it")).change().apply(layout);
          assertThat(fewer).as(row.path().toString()).isNotEqualTo(layout);
          dropped++;
        }
      }
    }
    assertThat(dropped).isPositive();
  }

  private static boolean isDroppable(Form.Row row) {
    return !row.path().contains("points");
  }

  @ParameterizedTest
  @MethodSource("layouts")
  void whatBelongsToTheWholeIsThereToo(Layout layout) {
    Places places = Study.of(layout).placed().places();
    for (Form.Row row : Forms.demands(layout).rows()) {
      if (isShown(row)) {
        assertThat(paths(OnBench.of(layout, places, Subjects.DEMANDS))).contains(row.path());
      }
    }
    for (Form.Row row : Forms.whole(layout).rows()) {
      if (isShown(row)) {
        assertThat(paths(OnBench.of(layout, places, Subjects.NAMES))).contains(row.path());
      }
    }
  }
}
