package org.longlow.svg.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;

class DrawingTest {

  private static final Drawing SAMPLE =
      Drawing.of(
          "sample",
          new Layer(
              "a",
              "A",
              List.of(new Mark.Shape("s", Planar.rectangle(0, 0, 100, 50), Style.wide(Tone.INK)))),
          new Layer(
              "b",
              "B",
              List.of(new Mark.Words("w", "words", 120, 20, 3.5, 30, Anchor.START, Tone.INK))));

  @Test
  void boundsHoldShapesAndAnchors() {
    assertThat((Object) SAMPLE.boundsMm()).isEqualTo(new Envelope(0, 120, 0, 50));
    assertThat(Drawing.of("").boundsMm().isNull()).isTrue();
    assertThat(SAMPLE.paperBoundsMm().getMaxX()).isGreaterThan(130);
  }

  @Test
  void scalingKeepsStrokesAndLettering() {
    Drawing d = SAMPLE.scaled(0.1);
    assertThat((Object) d.boundsMm()).isEqualTo(new Envelope(0, 12, 0, 5));
    Mark.Words w = (Mark.Words) d.layers().get(1).marks().get(0);
    assertThat(w.heightMm()).isEqualTo(3.5);
    assertThat(w.rotationDeg()).isEqualTo(30);
    assertThat(((Mark.Shape) d.layers().get(0).marks().get(0)).style().strokeMm()).isEqualTo(0.5);
  }

  @Test
  void movingForthAndBackChangesNothing() {
    assertThat(SAMPLE.moved(8, -4).moved(-8, 4)).isEqualTo(SAMPLE);
    assertThat((Object) SAMPLE.moved(8, -4).boundsMm()).isEqualTo(new Envelope(8, 128, -4, 46));
  }

  @Test
  void layersCanBeAddedUnderIdsOfTheirOwn() {
    Drawing more = SAMPLE.plus(new Layer("c", "C", List.of()));
    assertThat(more.layers()).extracting(Layer::id).containsExactly("a", "b", "c");
    assertThatThrownBy(() -> SAMPLE.plus(new Layer("a", "again", List.of())))
        .hasMessageContaining("'a'");
    assertThatThrownBy(() -> new Layer("1 a", "", List.of())).hasMessageContaining("1 a");
  }

  @Test
  void theCallersListIsNotShared() {
    List<Mark> marks = new ArrayList<>();
    Layer layer = new Layer("l", "", marks);
    marks.add(Mark.Words.level("late", 0, 0, 3, Anchor.START, Tone.INK));
    assertThat(layer.marks()).isEmpty();
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
  void whatIsNotAFiniteLengthIsRefused(double bad) {
    assertThatThrownBy(
            () -> new Mark.Shape("part:x", Planar.line(0, 0, bad, 1), Style.wide(Tone.INK)))
        .isInstanceOf(IllegalArgumentException.class)
        .hasMessageContaining("part:x");
    assertThatThrownBy(() -> Mark.Words.level("t", bad, 0, 3, Anchor.START, Tone.INK))
        .hasMessageContaining("finite");
    assertThatThrownBy(() -> Mark.Words.level("t", 0, 0, bad, Anchor.START, Tone.INK))
        .hasMessageContaining("high");
    assertThatThrownBy(() -> SAMPLE.scaled(bad)).hasMessageContaining("scale factor");
    assertThatThrownBy(() -> SAMPLE.moved(bad, 0)).isInstanceOf(IllegalArgumentException.class);
    assertThatThrownBy(() -> Style.line(Tone.INK, bad)).hasMessageContaining("stroke width");
    assertThatThrownBy(() -> Style.area(Tone.INK, bad)).hasMessageContaining("opacity");
    assertThatThrownBy(() -> Dimensions.at(bad)).hasMessageContaining("denominator");
  }

  @Test
  void dashesAreMultiplesOfTheWidth() {
    // ISO 128-2 element lengths: dot 0.5 d, gap 3 d, dash 12 d, long dash 24 d.
    assertThat(LineType.CONTINUOUS.dashes(0.25)).isEmpty();
    assertThat(LineType.DASHED.dashes(0.5)).containsExactly(6, 1.5);
    assertThat(LineType.CHAIN.dashes(0.5)).containsExactly(12, 1.5, 0.25, 1.5);
    assertThat(LineType.DOUBLE_CHAIN.dashes(0.5)).containsExactly(12, 1.5, 0.25, 1.5, 0.25, 1.5);
  }

  @Test
  void hatchingStaysInsideAndKeepsItsSpacing() {
    var area = Planar.rectangle(0, 0, 90, 60).difference(Planar.disc(45, 30, 10));
    var lines = Hatch.lines(area, 3, 0);
    assertThat(area.buffer(1e-6).covers(lines)).isTrue();
    // Lines of length 90 every 3 mm, less the hole: area divided by spacing, to within one line.
    assertThat(lines.getLength()).isEqualTo(area.getArea() / 3, within(90.0));
    var slant = Hatch.lines(area, 3, Math.PI / 4);
    assertThat(area.buffer(1e-6).covers(slant)).isTrue();
    assertThat(slant.getLength()).isEqualTo(area.getArea() / 3, within(area.getLength()));
    assertThat(Hatch.lines(Planar.line(0, 0, 9, 9), 3, 0).isEmpty()).isTrue();
    assertThatThrownBy(() -> Hatch.lines(area, 0, 0)).hasMessageContaining("spacing");
    assertThatThrownBy(() -> Hatch.lines(area, 1e-9, 0)).hasMessageContaining("20000");
  }

  @Test
  void longTextIsShortenedAndWrapped() {
    String name = "An exceedingly long name of a part ".repeat(20);
    String cut = Lettering.fitted(name, 4, 80);
    assertThat(cut).endsWith("…").startsWith("An exceedingly");
    assertThat(Lettering.widthMm(cut, 4)).isLessThanOrEqualTo(80);
    assertThat(Lettering.fitted("short", 4, 80)).isEqualTo("short");
    assertThat(Lettering.wrapped(name, 3, 60))
        .allSatisfy(line -> assertThat(Lettering.widthMm(line, 3)).isLessThanOrEqualTo(60));
    assertThat(String.join(" ", Lettering.wrapped(name, 3, 60))).isEqualTo(name.strip());
  }
}
