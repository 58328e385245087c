package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Tone;

/** Upright dimensions at 1:20 whose words are longer than what they measure. */
class TiersTest {

  private static final double N = 20;
  private static final String TEXT = "passenger seat, free 836.9";
  private static final double LONG = Lettering.widthMm(TEXT, 2.5) * N;

  private static List<Mark> laid(double to, double end) {
    Dimensions dims = new Dimensions(N, 2.5, 2.5, Tone.DIMENSION);
    return new Tiers(dims, Tiers.Side.LEFT, 0, end, new ArrayList<>(), BodyEdges.NONE)
        .lay(List.of(new Tiers.Span("part:pan", 0, to, 100, 100, TEXT)));
  }

  private static Envelope words(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Words.class::isInstance)
        .map(m -> Labels.box((Mark.Words) m, N))
        .findFirst()
        .orElseThrow();
  }

  @Test
  void whereThereIsRoomTheyStandPastTheEnd() {
    double to = 0.7 * LONG;
    assertThat(words(laid(to, 10 * LONG)).getMinY()).isGreaterThan(to);
  }

  /** They begin at the road, and reach no farther up than they must. */
  @Test
  void whereTheCardEndsTheyRunOverTheEndOfTheirOwnLine() {
    double to = 0.7 * LONG;
    List<Mark> marks = laid(to, 1.2 * LONG);
    Envelope words = words(marks);
    assertThat(words.getMinY()).isCloseTo(0, within(1.0 * N));
    assertThat(words.getMaxY()).isCloseTo(LONG, within(2.0 * N));
    int last = marks.size() - 1;
    assertThat(marks.get(last)).as("over all lines").isInstanceOf(Mark.Words.class);
    Mark.Shape back = (Mark.Shape) marks.get(last - 1);
    assertThat((Object) back.geometry().getEnvelopeInternal())
        .as("with card behind")
        .isEqualTo(words);
  }

  @Test
  void whatFitsStandsBetweenItsEnds() {
    double to = 1.5 * LONG;
    Envelope words = words(laid(to, to));
    assertThat(words.getMinY()).isPositive();
    assertThat(words.getMaxY()).isLessThan(to);
    assertThat(words.centre().y).isCloseTo(to / 2, within(1e-6 * LONG));
  }
}
