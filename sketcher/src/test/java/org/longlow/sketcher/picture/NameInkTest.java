package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;

/** Names beside and inside the parts of finished pictures. */
class NameInkTest {

  private static final List<Double> SCALES = List.of(5.0, 8.0, 10.0, 14.0, 20.0);

  static Stream<Study> machines() {
    return Stream.concat(Stream.of(Plover.study()), Shipped.studies());
  }

  private static PictureOptions options(double n, boolean dimensions) {
    return PictureOptions.PLAIN.withNames(true).withDimensions(dimensions).withDenominator(n);
  }

  private static List<Mark.Words> words(Layer layer) {
    return layer.marks().stream()
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .toList();
  }

  @ParameterizedTest
  @MethodSource("machines")
  void noNameLiesOnOtherWordsOrOnALeader(Study study) {
    for (double n : SCALES) {
      for (boolean dimensions : new boolean[] {false, true}) {
        Drawing drawing = ElevationPicture.of(study, options(n, dimensions));
        Layer names = ElevationPictureTest.layer(drawing, "names");
        List<Envelope> others = new ArrayList<>();
        drawing.layers().stream()
            .filter(l -> l != names)
            .flatMap(l -> words(l).stream())
            .forEach(w -> others.add(Labels.box(w, n)));
        List<Mark.Words> placed = words(names);
        assertThat(placed).hasSizeGreaterThan(n > 10 ? 1 : 4);
        for (Mark.Words w : placed) {
          Envelope box = Labels.box(w, n);
          assertThat(Labels.free(box, others)).as(w.text() + " at 1:" + n).isTrue();
          others.add(box);
          Geometry area = Planar.rectangle(box);
          for (Mark mark : names.marks()) {
            if (mark instanceof Mark.Shape s
                && s.geometry().getDimension() == 1
                && !s.subject().equals(w.subject())) {
              assertThat(s.geometry().intersects(area))
                  .as(w.text() + " on the leader of " + s.subject() + " at 1:" + n)
                  .isFalse();
            }
          }
        }
      }
    }
  }

  @ParameterizedTest
  @MethodSource("machines")
  void whatIsNamedBesideIsLedToByADotOnIt(Study study) {
    double n = 10;
    PictureOptions options = options(n, false);
    Drawing drawing = ElevationPicture.of(study, options);
    Layer names = ElevationPictureTest.layer(drawing, "names");
    Scene scene = Scenes.of(study, options);
    int leaders = 0;
    for (Mark.Words w : words(names)) {
      Geometry part = onRoad(scene, scene.shapes().get(w.subject().substring(5)).outline());
      List<Geometry> lines =
          names.marks().stream()
              .filter(m -> m.subject().equals(w.subject()) && m instanceof Mark.Shape)
              .map(m -> ((Mark.Shape) m).geometry())
              .filter(g -> g.getDimension() == 1)
              .toList();
      Geometry box = Planar.rectangle(Labels.box(w, n));
      if (lines.isEmpty()) {
        assertThat(part.buffer(1).covers(box)).as(w.text() + " inside").isTrue();
      } else {
        leaders++;
        assertThat(lines).hasSize(1);
        assertThat(lines.get(0).distance(part)).as(w.text()).isLessThan(0.1);
        assertThat(lines.get(0).distance(box)).as(w.text()).isLessThan(0.8 * n);
      }
    }
    assertThat(leaders).isPositive();
  }

  private static Geometry onRoad(Scene scene, Geometry frame) {
    Geometry copy = frame.copy();
    copy.apply(
        (org.locationtech.jts.geom.CoordinateFilter)
            c -> {
              var p = scene.ground().toRoad(new org.longlow.rider.geom.PointMm(c.x, c.y));
              c.x = p.x();
              c.y = p.z();
            });
    copy.geometryChanged();
    return copy;
  }

  @Test
  void aNameIsWholeOnPaperAndShortenedWhereThatIsAsked() {
    PictureOptions paper = options(10, false);
    List<String> whole =
        words(ElevationPictureTest.layer(ElevationPicture.of(Plover.study(), paper), "names"))
            .stream()
            .map(Mark.Words::text)
            .toList();
    assertThat(whole).noneMatch(t -> t.endsWith("…"));
    Drawing narrow = ElevationPicture.of(Plover.study(), paper.withNameWidth(8));
    List<Mark.Words> shortened = words(ElevationPictureTest.layer(narrow, "names"));
    assertThat(shortened).allSatisfy(w -> assertThat(w.widthMm()).isLessThanOrEqualTo(8));
    assertThat(shortened).anyMatch(w -> w.text().endsWith("…"));
  }

  @Test
  void theSamePictureComesOutTwice() {
    Drawing once = ElevationPicture.of(Plover.study(), options(10, true));
    Drawing again = ElevationPicture.of(Plover.study(), options(10, true));
    assertThat(words(ElevationPictureTest.layer(again, "names")))
        .isEqualTo(words(ElevationPictureTest.layer(once, "names")));
  }
}
