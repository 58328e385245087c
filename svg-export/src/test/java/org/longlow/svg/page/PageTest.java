package org.longlow.svg.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

class PageTest {

  private static Drawing square(String layer) {
    return Drawing.of(
        "square",
        new Layer(
            layer,
            layer,
            List.of(
                new Mark.Shape("s", Planar.rectangle(0, 0, 10, 10), Style.wide(Tone.INK)),
                new Mark.Words("w", "w", 10, 0, 3, 0, Anchor.START, Tone.INK))));
  }

  private static Page.Piece piece(String layer, Affine at) {
    return new Page.Piece(square(layer), at, null);
  }

  @Test
  void layersOfSeveralPiecesGetIdsOfTheirOwn() {
    Page page =
        new Page(
            "p",
            Paper.A4,
            List.of(
                piece("cut", Affine.IDENTITY),
                piece("cut-2", Affine.IDENTITY),
                piece("cut", Affine.IDENTITY),
                piece("cut", Affine.IDENTITY)));
    assertThat(page.layers()).extracting(Layer::id).doesNotHaveDuplicates().hasSize(4);
    assertThat(page.layers().get(0).id()).isEqualTo("cut");
  }

  @Test
  void aPlacementTurnsWordsAndKeepsTheirHeight() {
    Affine quarter = new Affine(0, -2, 100, 2, 0, 50);
    List<Mark> marks =
        new Page("p", Paper.A4, List.of(piece("l", quarter))).layers().get(0).marks();
    assertThat((Object) ((Mark.Shape) marks.get(0)).geometry().getEnvelopeInternal())
        .isEqualTo(new Envelope(80, 100, 50, 70));
    Mark.Words w = (Mark.Words) marks.get(1);
    assertThat(w.x()).isEqualTo(100);
    assertThat(w.y()).isEqualTo(70);
    assertThat(w.rotationDeg()).isEqualTo(90, within(1e-9));
    assertThat(w.heightMm()).isEqualTo(3);
  }

  @Test
  void placementsCombineInTheOrderSaid() {
    Affine both = Affine.move(1, 2).then(Affine.scale(10, 100));
    assertThat((Object) both.of(new Envelope(0, 1, 0, 1)))
        .isEqualTo(new Envelope(10, 20, 200, 300));
  }

  @Test
  void aMirroredPlacementIsRefused() {
    assertThatThrownBy(() -> Affine.scale(-1, 1)).hasMessageContaining("mirror");
    assertThatThrownBy(() -> Affine.scale(0, 1)).hasMessageContaining("flatten");
  }

  @ParameterizedTest
  @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
  void aPlacementThatIsNotFiniteIsRefused(double bad) {
    assertThatThrownBy(() -> Affine.move(bad, 0)).hasMessageContaining("finite");
    assertThatThrownBy(() -> Affine.scale(1, bad)).hasMessageContaining("finite");
  }

  @Test
  void aPageRoundADrawingHoldsAllOfIt() {
    Page page = Page.round(square("l").moved(-300, 40), 5);
    Envelope sheet = new Envelope(0, page.paper().widthMm(), 0, page.paper().heightMm());
    for (Mark m : page.layers().get(0).marks()) {
      Envelope e =
          m instanceof Mark.Words w ? w.boxMm() : ((Mark.Shape) m).geometry().getEnvelopeInternal();
      assertThat(sheet.contains(e)).isTrue();
    }
    assertThatThrownBy(() -> Page.round(Drawing.of("none"), 5)).hasMessageContaining("'none'");
  }
}
