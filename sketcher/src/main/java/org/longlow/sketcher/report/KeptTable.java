package org.longlow.sketcher.report;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Dimension.Along;
import org.longlow.constraints.stand.Measured;
import org.longlow.constraints.study.Study;
import org.longlow.constraints.words.Names;
import org.longlow.sketcher.picture.KeptDimensions;
import org.longlow.sketcher.picture.PictureOptions;

/** The dimensions that the layout keeps. */
final class KeptTable {

  private static final List<String> HEADINGS =
      List.of("Name", "Value", "Which way", "Between", "Note");

  private KeptTable() {}

  static void write(Html h, Study study, PictureOptions picture) {
    Map<String, Measured> kept = KeptDimensions.of(study, picture);
    if (kept.isEmpty()) {
      return;
    }
    h.element("h2", "Dimensions kept");
    h.table("kept", "As the machine stands in elevation 1, in side view", HEADINGS);
    FigureWords figures = FigureWords.of(study);
    kept.forEach(
        (name, m) -> {
          Dimension d = study.layout().dimensions().get(name);
          h.row("", HEADINGS, List.of(name, value(d, m, figures), way(d), between(d), d.note()));
        });
    h.closeTable();
  }

  private static String value(Dimension d, Measured m, FigureWords figures) {
    return d.along() == Along.ANGLE ? FigureWords.deg(m.value()) : figures.mm(m.value());
  }

  private static String way(Dimension d) {
    boolean nearest = d.ends().stream().anyMatch(Dimension.End::isEdge);
    return Names.word(d.along()) + (nearest ? ", where nearest" : "");
  }

  private static String between(Dimension d) {
    String ends = d.ends().stream().map(Dimension.End::words).collect(Collectors.joining(", "));
    return d.ends().size() == 1 ? ends + ", the ground" : ends;
  }
}
