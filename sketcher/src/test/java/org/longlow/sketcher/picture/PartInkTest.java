package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.HashMap;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Tone;

/** Parts as drawn keep their true size. */
class PartInkTest {

  static Stream<Study> machines() {
    return Stream.concat(Stream.of(Plover.study()), Shipped.studies());
  }

  @ParameterizedTest
  @MethodSource("machines")
  void nothingOfAPartIsDrawnOutsideItsOutlineAndTheOutlineIsThere(Study study) {
    for (double n : new double[] {5, 20}) {
      Scene scene = Scenes.of(study, PictureOptions.PLAIN.withSeated(java.util.List.of()));
      for (PartShape shape : scene.shapes().values()) {
        // wheels and forks are drawn from their own sizes, cushions as they are pressed
        if (shape.part() instanceof WheelPart
            || shape.part() instanceof FrontPart
            || shape.part() instanceof org.longlow.constraints.layout.CushionPart) {
          continue;
        }
        Canvas canvas = new Canvas(n);
        PartInk.draw(canvas, scene, shape);
        Geometry outline = shape.outline();
        boolean whole = false;
        for (PictureLayer layer : PictureLayer.values()) {
          for (Mark mark : canvas.marks(layer)) {
            Mark.Shape s = (Mark.Shape) mark;
            whole |= s.style().stroke() != null && s.geometry().equalsExact(outline);
            assertThat(outline.buffer(0.6 * n).covers(s.geometry()))
                .as(shape.part().name() + " at 1:" + n + ": " + s.geometry())
                .isTrue();
          }
        }
        assertThat(whole).as(shape.part().name() + " has its outline").isTrue();
      }
    }
  }

  @Test
  void everyLineHasATonesContrastThatLinesNeed() {
    Map<Tone, String> thin = new HashMap<>();
    machines()
        .forEach(
            study ->
                ElevationPicture.of(
                        study, PictureOptions.PLAIN.withNames(true).withDimensions(true))
                    .layers()
                    .forEach(
                        layer ->
                            layer.marks().stream()
                                .filter(Mark.Shape.class::isInstance)
                                .map(Mark.Shape.class::cast)
                                .filter(s -> s.style().stroke() != null)
                                .filter(s -> s.style().stroke() != Tone.PAPER)
                                .filter(s -> s.style().stroke().use().leastContrast() < 3)
                                .forEach(s -> thin.put(s.style().stroke(), s.subject()))));
    assertThat(thin).isEmpty();
  }

  @Test
  void theRoomiestDiscOfADrumIsItsOwnAndOfABoxHalfItsHeight() {
    Grain.Disc drum = Grain.roomiest(Planar.disc(100, 50, 90));
    assertThat(drum.radiusMm()).isBetween(87.0, 90.0);
    assertThat(drum.centre().distance(new org.longlow.rider.geom.PointMm(100, 50))).isLessThan(3);
    assertThat(Grain.roomiest(Planar.rectangle(0, 0, 300, 80)).radiusMm()).isBetween(38.0, 40.0);
  }
}
