package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.longlow.sketcher.template.RailJoints.said;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.picture.ElevationPictureTest;
import org.longlow.svg.drawing.Mark;

/** What a seat maker needs beside the lines to cut: bolts, corners, bevels, the cover. */
class CushionMarksTest {

  private static final String PINS = "\"a\": [500, 500], \"b\": [900, 500], \"k\": [600, 470]";

  /** A level pan of 400 by 300 on a board of 12, foam of 30 and 40; a bracket 60 long under it. */
  private static List<NamedDrawing> pan(String units, double left, double right, double longMm) {
    String parts =
        """
        "pan": {"kind": "cushion", "role": "pan", "from": "a", "to": "b", "board": 12,
          "left": 150, "right": 150, "mass": 2, "layers": [
           {"name": "soft", "thickness": 30, "density": "45 kg/m^3", "ifd25": "170 N", "supportFactor": 2.5},
           {"name": "firm", "thickness": 40, "density": "50 kg/m^3", "ifd25": "250 N", "supportFactor": 2.7}]},
        "lug": {"kind": "bracket", "frame": "k", "left": %s, "right": %s, "mass": 1,
          "outline": {"points": [[0, 0], [%s, 0], [%s, 16], [0, 16]]}}
        """
            .formatted(left, right, longMm, longMm);
    return Templates.of(RailJoints.study(units, PINS, parts), Set.of("pan"));
  }

  private static NamedDrawing of(List<NamedDrawing> all, String file) {
    return all.stream().filter(d -> d.fileName().equals(file)).findFirst().orElseThrow();
  }

  private static List<Geometry> inside(NamedDrawing d) {
    return ElevationPictureTest.layer(d.drawing(), "inside").marks().stream()
        .filter(Mark.Shape.class::isInstance)
        .map(m -> ((Mark.Shape) m).geometry())
        .toList();
  }

  /** 400 and 300 with 82 of foam and board and 45 turned under, twice: 654 by 554. */
  @Test
  void theCoverIsItsTopWithSidesAndWhatIsTurnedUnder() {
    NamedDrawing cover = of(pan("mm", 60, 60, 60), "pan-cover");
    PlainPiece blank = cover.plain().orElseThrow();
    assertThat(blank.longMm()).isCloseTo(654, within(1e-9));
    assertThat(blank.wideMm()).isCloseTo(554, within(1e-9));
    assertThat(said(cover)).contains("top 400 x 300 mm", "sides 82 mm high", "a square of 117 mm");
    // every seam is as long as the side is high and joins its neighbour at a corner of the top
    List<Geometry> lines =
        inside(cover).stream().filter(g -> Math.abs(g.getLength() - 82) < 1e-9).toList();
    assertThat(lines).hasSize(8);
    for (Geometry l : lines) {
      Coordinate c = l.getCoordinate();
      assertThat(Math.abs(Math.abs(c.x - 200) - 200)).isLessThan(1e-9);
      assertThat(Math.abs(Math.abs(c.y) - 150)).isLessThan(1e-9);
    }
  }

  /** Two boards beside the middle, each over a bracket of its own: one sheet for both. */
  @Test
  void aPairOfBoardsIsPrintedOnce() {
    String one = "[{\"thickness\": 30, \"density\": 45, \"ifd25\": 170, \"supportFactor\": 2.5}]";
    String pan =
        "\"pan\": {\"kind\": \"cushion\", \"role\": \"pan\", \"from\": \"a\", \"to\": \"b\","
            + " \"board\": 12, \"left\": 180, \"right\": -20, \"both\": true, \"layers\": "
            + one
            + "}, \"lug\": {\"kind\": \"bracket\", \"frame\": \"k\", \"left\": 140, \"right\": -60,"
            + " \"both\": %s, \"mass\": 1, \"outline\": {\"points\": [[0, 0], [60, 0], [60, 16], [0,"
            + " 16]]}}";
    List<NamedDrawing> both =
        Templates.of(RailJoints.study("mm", PINS, pan.formatted(true)), Set.of("pan"));
    assertThat(both.stream().map(NamedDrawing::fileName))
        .containsExactly("pan-side", "pan-board", "pan-cover", "pan-layer-1");
    assertThat(said(both.get(1))).contains("make 2, the second one turned over");
    assertThat(said(both.get(2))).contains("cover, make 2");
    assertThat(said(both.get(3))).contains("make 2, one for each board");
    assertThat(
            Templates.of(RailJoints.study("mm", PINS, pan.formatted(false)), Set.of("pan")).stream()
                .map(NamedDrawing::fileName))
        .contains("pan-board-1", "pan-board-2");
  }

  @Test
  void twoBoltsStandInTheFootprintOffTheEdge() {
    NamedDrawing board = of(pan("mm", 60, 60, 60), "pan-board");
    // footprint 100 to 160 along, 120 across: bolts a quarter of that to each side
    assertThat(bolt(board, 1)).isEqualTo(new PointMm(130, -30));
    assertThat(bolt(board, 2)).isEqualTo(new PointMm(130, 30));
    assertThat(said(board)).contains("its bolts M6 or 1/4 in").doesNotContain("TAKE CARE");
    assertThat(board.plain().orElseThrow().pins()).hasSize(2);
  }

  private static PointMm bolt(NamedDrawing board, int n) {
    Envelope box =
        ElevationPictureTest.boxOf(
            ElevationPictureTest.layer(board.drawing(), "drills"), "pin:lug bolt " + n);
    return new PointMm(
        Math.rint(box.centre().x * 1e6) / 1e6, Math.rint(box.centre().y * 1e6) / 1e6);
  }

  @Test
  void aFootprintAtTheEdgeSaysThatItHasNoRoom() {
    assertThat(said(of(pan("mm", 150, -126, 60), "pan-board")))
        .contains("TAKE CARE, lug has no room for a bolt 25 mm from the edge")
        .doesNotContain("its bolts");
    assertThat(said(of(pan("mm", 150, -124, 60), "pan-board"))).contains("its bolts");
  }

  @Test
  void boltsNearerThanFourDiametersAreOne() {
    Envelope board = new Envelope(0, 400, -150, 150);
    assertThat(BoardBolts.of(new Envelope(100, 123, 0, 10), board))
        .containsExactly(new PointMm(111.5, 5));
    assertThat(BoardBolts.of(new Envelope(100, 124, 0, 10), board))
        .containsExactly(new PointMm(100, 5), new PointMm(124, 5));
    assertThat(BoardBolts.of(new Envelope(100, 200, 0, 10), board))
        .containsExactly(new PointMm(125, 5), new PointMm(175, 5));
    assertThat(BoardBolts.of(new Envelope(0, 24, 0, 10), board)).isEmpty();
    assertThat(BoardBolts.of(new Envelope(0, 40, 0, 10), new Envelope(0, 40, -20, 20))).isEmpty();
  }

  @Test
  void cornersOfABoardAreArcsInsideOfIt() {
    NamedDrawing board = of(pan("mm", 60, 60, 60), "pan-board");
    List<Geometry> arcs =
        inside(board).stream()
            .filter(g -> g instanceof LineString l && l.getNumPoints() > 10)
            .toList();
    assertThat(arcs).hasSize(4);
    for (Geometry arc : arcs) {
      assertThat(arc.getLength()).isCloseTo(Math.PI / 2 * 20, within(0.05));
      Envelope box = arc.getEnvelopeInternal();
      assertThat(Math.abs(Math.abs(box.centre().x - 200) - 190)).isLessThan(1e-9);
      assertThat(Math.abs(Math.abs(box.centre().y) - 140)).isLessThan(1e-9);
    }
  }

  /** Bevels of 10 at both lower corners of the layer on the board, none on the one above. */
  @Test
  void theLowestLayerIsBevelled() {
    List<NamedDrawing> all = pan("mm", 60, 60, 60);
    List<Geometry> bevels = inside(of(all, "pan-layer-2"));
    assertThat(bevels).hasSize(2);
    Envelope first = bevels.get(0).getEnvelopeInternal();
    assertThat((Object) first).isEqualTo(new Envelope(500, 510, 500, 510));
    assertThat((Object) bevels.get(1).getEnvelopeInternal())
        .isEqualTo(new Envelope(890, 900, 500, 510));
    assertThat(said(of(all, "pan-layer-2"))).contains("bevel its lower edges");
    assertThat(said(of(all, "pan-layer-1"))).doesNotContain("bevel");
  }

  @Test
  void inInchesThereAreNoMillimetres() {
    for (NamedDrawing d : pan("in", 150, -126, 60)) {
      assertThat(said(d)).as(d.name()).doesNotContain(" mm").contains(" in");
    }
  }
}
