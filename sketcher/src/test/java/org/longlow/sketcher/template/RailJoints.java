package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Mark;

/** Two bare wheels with rails between pins, for what their ends meet. */
final class RailJoints {

  private RailJoints() {}

  /** A rail as it stands in a file. */
  static String rail(String name, String path, double diameter, double y, boolean both) {
    return ("\"%s\": {\"kind\": \"rail\", \"path\": [%s], \"diameter\": %s, \"wall\": 2,"
            + " \"bendRadius\": 100, \"y\": %s, \"both\": %s, \"material\": \"steel\"}")
        .formatted(name, path, diameter, y, both);
  }

  static Study study(String units, String pins, String parts) {
    String text =
        """
        {"longlow": 1, "name": "joint", "units": "%s",
         "pins": {"r": {"at": [0, 300], "nailed": true}, "f": {"at": [2000, 300], "nailed": true}, %s},
         "parts": {
          "w1": {"kind": "wheel", "end": "rear", "axle": "r", "radius": 300, "width": 100},
          "w2": {"kind": "wheel", "end": "front", "axle": "f", "radius": 300, "width": 90},
          %s}}
        """
            .formatted(units, pins, parts);
    ReadResult read = LayoutReader.read(text, null);
    assertThat(read).as(read.toString()).isInstanceOf(ReadResult.Read.class);
    return Study.of(((ReadResult.Read) read).layout());
  }

  static List<NamedDrawing> templates(String pins, String parts, String of) {
    return Templates.of(study("mm", pins, parts), Set.of(of));
  }

  static String said(NamedDrawing drawing) {
    return drawing.drawing().layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .collect(Collectors.joining(" "));
  }
}
