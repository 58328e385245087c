package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.longlow.svg.drawing.Anchor;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;

/** Words go where they are read best, on a picture of two tubes and a word. */
class WordSpotsTest {

  private static final double N = 10;

  private static final Drawing PICTURE =
      new Drawing(
          "tubes",
          List.of(
              new Layer(
                  "frame",
                  "Frame",
                  List.of(
                      new Mark.Shape(
                          "part:a", Planar.line(0, 0, 1000, 0), Style.line(Tone.INK, 0.5)),
                      new Mark.Shape(
                          "part:b", Planar.line(0, 400, 1000, 400), Style.line(Tone.INK, 0.5)),
                      words(500, 200)))));

  private static Mark.Words words(double x, double y) {
    return new Mark.Words("", "knee room 412", x, y, 2.5, 0, Anchor.CENTRE, Tone.DIMENSION);
  }

  private static Mark.Words best(WordSpots spots, Mark.Words... ways) {
    return spots.best(List.of(ways), w -> w);
  }

  @Test
  void whatIsLikedBestIsTakenWhereItIsFree() {
    assertThat(best(new WordSpots(PICTURE, N), words(500, 100), words(500, 300)))
        .isEqualTo(words(500, 100));
  }

  @Test
  void aLineIsWorseThanAPlaceLikedLess() {
    assertThat(best(new WordSpots(PICTURE, N), words(500, 0), words(500, 400), words(500, 300)))
        .isEqualTo(words(500, 300));
  }

  @Test
  void otherWordsAreWorseThanAnyLine() {
    assertThat(best(new WordSpots(PICTURE, N), words(520, 210), words(500, 400)))
        .isEqualTo(words(500, 400));
  }

  @Test
  void whatWasPutThereIsTaken() {
    WordSpots spots = new WordSpots(PICTURE, N);
    assertThat(best(spots, words(500, 100), words(500, 300))).isEqualTo(words(500, 100));
    assertThat(best(spots, words(510, 105), words(500, 300))).isEqualTo(words(500, 300));
    assertThat(spots.taken()).hasSize(3);
  }
}
