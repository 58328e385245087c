package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.longlow.constraints.words.Counted;
import org.longlow.sketcher.template.NamedDrawing;

/** What is said of a set of templates: how many sheets each takes, and what is given by figures. */
final class SetWords {

  private SetWords() {}

  /** Returns the sheets of each file, in one line. */
  static String sheets(TemplateSet set) {
    return set.bundles().stream()
        .map(
            b ->
                b.stem()
                    + " "
                    + b.sheets().size()
                    + (b.isShared()
                        ? " ("
                            + b.pieces().stream()
                                .map(NamedDrawing::name)
                                .collect(Collectors.joining("; "))
                            + ")"
                        : ""))
        .collect(Collectors.joining(", "));
  }

  /** Returns which pieces are given by figures, and where; empty if none is. */
  static List<String> plain(TemplateSet set) {
    List<String> lines = new ArrayList<>();
    if (!set.plain().isEmpty()) {
      lines.add(
          Counted.of(set.plain().size(), "plain piece")
              + " without a sheet, for figures say all that a saw needs; they are in the cut list of"
              + " the report: "
              + set.plain().stream().map(NamedDrawing::name).collect(Collectors.joining("; ")));
      lines.add("Name such a part alone to have it on paper all the same.");
    }
    return lines;
  }
}
