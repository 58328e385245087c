package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Point;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.picture.ElevationPictureTest;
import org.longlow.svg.drawing.Mark;

/** Holes on a template: the line to cut, a cross at each centre, the size beside it. */
class HoledTemplateTest {

  private static final GeometryFactory FACTORY = new GeometryFactory();

  private static NamedDrawing template(String kind, String more) {
    String file =
        """
        {"longlow": 1, "name": "t",
         "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
           "o": {"at": [400, 500], "nailed": true}, "bolt": {"at": [450, 620], "nailed": true}},
         "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
           "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
           "plate": {"kind": "%s", "frame": "o", "left": 50, "right": 50, "mass": 1%s,
             "outline": {"points": [[0, 0], [200, 0], [200, 150], [0, 150]], "holes": [
               {"hole": "round", "at": [40, 50], "diameter": 12.5}, {"hole": "round", "at": "bolt", "diameter": 40},
               {"hole": "slot", "from": [120, 100], "to": [150, 100], "width": 10},
               {"hole": "cut", "points": [[120, 20], [160, 20], [140, 60]]}]}}}}
        """
            .formatted(kind, more);
    ReadResult result = LayoutReader.read(file, null);
    assertThat(result).as(result.toString()).isInstanceOf(ReadResult.Read.class);
    Study study = Study.of(((ReadResult.Read) result).layout());
    return Templates.of(study, Set.of("plate")).get(0);
  }

  private static List<Mark> layer(NamedDrawing drawing, String id) {
    return ElevationPictureTest.layer(drawing.drawing(), id).marks();
  }

  private static Point point(double x, double z) {
    return FACTORY.createPoint(new Coordinate(x, z));
  }

  @Test
  void theLineToCutIsTheHoleToItsSize() {
    Geometry cut = ((Mark.Shape) layer(template("bracket", ""), "outline").get(0)).geometry();
    Polygon plate = (Polygon) cut;
    assertThat(plate.getNumInteriorRing()).isEqualTo(4);
    for (int i = 0; i < 4; i++) {
      Polygon hole = FACTORY.createPolygon(plate.getInteriorRingN(i));
      double[][] centres = {{440, 550, 6.25}, {450, 620, 20}};
      for (double[] c : centres) {
        if (hole.contains(point(c[0], c[1]))) {
          for (Coordinate on : hole.getCoordinates()) {
            assertThat(Math.hypot(on.x - c[0], on.y - c[1])).isCloseTo(c[2], within(1e-9));
          }
          // a chord of it is nowhere more than 0.02 mm inside of the circle
          assertThat(hole.getBoundary().distance(point(c[0], c[1]))).isGreaterThan(c[2] - 0.0201);
        }
      }
    }
  }

  @Test
  void everyCentreHasItsCrossAndEverySizeStandsOnThePiece() {
    for (String[] kind : new String[][] {{"bracket", ""}, {"cowl", ", \"thickness\": 2"}}) {
      NamedDrawing drawing = template(kind[0], kind[1]);
      Polygon plate = (Polygon) ((Mark.Shape) layer(drawing, "outline").get(0)).geometry();
      assertThat(plate.getNumInteriorRing()).isEqualTo(4);
      List<Mark> drills = layer(drawing, "drills");
      for (double[] c : new double[][] {{440, 550}, {450, 620}, {520, 600}, {550, 600}}) {
        assertThat(
                drills.stream()
                    .filter(m -> m instanceof Mark.Shape s && s.geometry() instanceof LineString)
                    .map(m -> ((Mark.Shape) m).geometry().getCentroid())
                    .filter(p -> p.distance(point(c[0], c[1])) < 1e-9))
            .as("two lines that cross at %s, %s", c[0], c[1])
            .hasSize(2);
      }
      List<Mark.Words> words =
          drills.stream().filter(Mark.Words.class::isInstance).map(Mark.Words.class::cast).toList();
      assertThat(words.stream().map(Mark.Words::text))
          .contains("Ø 12.5", "bolt Ø 40", "slot 40 x 10");
      for (Mark.Words w : words) {
        if (w.text().matches(".*(Ø|slot).*")) {
          assertThat(plate.contains(point(w.x(), w.y()))).as(w.text()).isTrue();
        }
      }
    }
  }

  /** The bolt hole of 12.5 stands 33.75 off the edge; that of 20 in radius is an opening. */
  @Test
  void holesSayHowTheyAreCutAndWhichStandTooNear() {
    String said = RailJoints.said(template("bracket", ""));
    assertThat(said).contains("holes: cut inside their lines").doesNotContain("TAKE CARE");
    String wood = RailJoints.said(template("bracket", ", \"material\": \"plywood\""));
    // 4 diameters of 12.5 from its middle, which is 40 from the edge
    assertThat(wood)
        .contains("TAKE CARE, 33.8 mm between hole 1 and the edge: 43.8 mm is common practice");
  }

  @Test
  void aSizeThatNoDrillHasNamesTheNearest() {
    assertThat(new TemplateFigures(Units.MM).drill(10.3)).isEqualTo("10.5");
    assertThat(new TemplateFigures(Units.IN).drill(8.3)).isEqualTo("21/64");
    assertThat(new TemplateFigures(Units.IN).drill(12.7)).isEqualTo("1/2");
    assertThat(new TemplateFigures(Units.MM).drill(40)).isEmpty();
  }
}
