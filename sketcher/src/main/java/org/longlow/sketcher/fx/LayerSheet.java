package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.edit.Bench;
import org.longlow.sketcher.edit.OnBench;

/** Which fields of a cushion's layer are on its data sheet, and what they are called there. */
final class LayerSheet {

  private LayerSheet() {}

  /**
   * Returns the rows of a layer's data sheet.
   *
   * @param layer which, 0 on top
   * @param foam what it is of
   */
  static List<Bench.Row> rows(BoardState shown, String cushion, int layer, FoamSpec foam) {
    List<Bench.Row> all =
        OnBench.of(shown.layout(), shown.study().placed().places(), "part:" + cushion)
            .groups()
            .stream()
            .flatMap(g -> g.rows().stream())
            .toList();
    List<Bench.Row> rows = new ArrayList<>();
    for (String field : fields(foam)) {
      List<String> here = List.of("parts", cushion, "layers", Integer.toString(layer), field);
      all.stream()
          .filter(r -> r.target().path().equals(here))
          .findFirst()
          .ifPresent(r -> rows.add(named(r)));
    }
    return rows;
  }

  private static List<String> fields(FoamSpec foam) {
    List<String> fields = new ArrayList<>(List.of("thickness", "density"));
    if (foam.closedCell()) {
      fields.add(foam.stress25().isPresent() ? "stress25" : "wallStress");
      fields.add("polymerDensity");
    } else if (!foam.test().isThere()) {
      fields.add(foam.cv40().isPresent() ? "cv40" : "ifd25");
      fields.add("supportFactor");
    }
    fields.add("name");
    return fields;
  }

  /** Which layer it is about is seen; its field needs its own name only. */
  private static Bench.Row named(Bench.Row r) {
    String label = r.label().replaceFirst("^layer \\d+ ", "");
    return new Bench.Row(
        r.target(),
        label,
        r.text(),
        r.value(),
        r.note(),
        r.measure(),
        r.free(),
        r.input(),
        r.choices(),
        r.usual(),
        r.drops());
  }
}
