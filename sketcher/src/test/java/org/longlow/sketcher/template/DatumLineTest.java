package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.Plover;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Tiling;

/** Stations of datum lines: none on a band that two sheets share, none under words. */
class DatumLineTest {

  /** Bands that two sheets share, from the rectangles of the sheets. */
  private static List<Envelope> seams(Tiling t) {
    List<Envelope> sheets = new ArrayList<>();
    for (int r = 0; r < t.rows(); r++) {
      for (int c = 0; c < t.columns(); c++) {
        sheets.add(t.tile(r, c));
      }
    }
    List<Envelope> out = new ArrayList<>();
    for (int i = 0; i < sheets.size(); i++) {
      for (int k = 0; k < i; k++) {
        Envelope band = sheets.get(i).intersection(sheets.get(k));
        if (!band.isNull()) {
          out.add(band);
        }
      }
    }
    return out;
  }

  private static int looked(NamedDrawing d, Paper paper, double turn) {
    List<Tiling> asked = new ArrayList<>();
    Drawing drawing =
        d.laid()
            .turned(turn)
            .on(
                box -> {
                  asked.add(Tiling.of(box, paper, 10, 10));
                  return asked.get(asked.size() - 1);
                });
    if (asked.isEmpty()) {
      return 0; // a card has no stations
    }
    List<Envelope> seams = seams(asked.get(0));
    List<Envelope> words = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      if (!layer.id().equals("stations")) {
        layer.marks().stream()
            .filter(Mark.Words.class::isInstance)
            .forEach(m -> words.add(((Mark.Words) m).boxMm()));
      }
    }
    int figures = 0;
    for (Layer layer : drawing.layers()) {
      for (Mark m : layer.marks()) {
        boolean tick = m instanceof Mark.Shape s && Math.abs(s.geometry().getLength() - 5) < 1e-6;
        boolean figure = m instanceof Mark.Words w && w.text().matches("-?[0-9]+");
        if (layer.id().equals("stations") && (tick || figure)) {
          Envelope box =
              m instanceof Mark.Words w
                  ? w.boxMm()
                  : ((Mark.Shape) m).geometry().getEnvelopeInternal();
          assertThat(seams).as(d.name() + " " + m).noneMatch(s -> s.intersects(box));
          assertThat(words).as(d.name() + " " + m).noneMatch(w -> w.intersects(box));
          figures += figure ? 1 : 0;
        }
      }
    }
    return figures;
  }

  @Test
  void stationsKeepOffSeamsAndWords() {
    Study study = Plover.study();
    int figures = 0;
    for (NamedDrawing d : Templates.of(study, Set.of())) {
      for (double turn : new double[] {0, Math.PI / 2, 0.4}) {
        figures += looked(d, Paper.A4, turn);
      }
    }
    assertThat(figures).isGreaterThan(60);
  }

  /**
   * A plate as high as two sheets and their seam, whose middle is a round height: it moves away.
   */
  @Test
  void aLineWhoseStationsWouldAllLieOnASeamRunsElsewhere() {
    // usable 277 high with 10 shared: two sheets cover 544, their seam is in the middle
    String plate =
        "\"plate\": {\"kind\": \"bracket\", \"frame\": \"a\", \"left\": 3, \"right\": 3, \"mass\": 1,"
            + " \"outline\": {\"points\": [[0, -250], [150, -250], [160, 250], [0, 250]]}}";
    NamedDrawing d = RailJoints.templates("\"a\": [300, 800]", plate, "plate").get(0);
    assertThat(looked(d, Paper.A4, 0)).isGreaterThanOrEqualTo(2);
    assertThat(RailJoints.said(d)).contains("datum z 750,").doesNotContain("datum z 800");
  }
}
