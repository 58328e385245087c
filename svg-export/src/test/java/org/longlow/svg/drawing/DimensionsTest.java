package org.longlow.svg.drawing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;

class DimensionsTest {

  private static Mark.Words words(List<Mark> marks) {
    return marks.stream()
        .filter(Mark.Words.class::isInstance)
        .map(Mark.Words.class::cast)
        .findFirst()
        .orElseThrow();
  }

  private static List<Geometry> arrows(List<Mark> marks) {
    return marks.stream()
        .filter(m -> m instanceof Mark.Shape s && s.style().fill() != null)
        .map(m -> ((Mark.Shape) m).geometry())
        .toList();
  }

  @ParameterizedTest
  @ValueSource(doubles = {1, 5, 10, 20, 0.5})
  void sizesComeOutInPaperMillimetresAtEveryScale(double denominator) {
    Dimensions d = Dimensions.at(denominator);
    double length = 100 * denominator;
    Drawing onPaper =
        Drawing.of(
                "", new Layer("d", "", d.horizontal("m", 0, 0, length, 0, -10 * denominator, null)))
            .scaled(1 / denominator);
    List<Mark> marks = onPaper.layers().get(0).marks();
    assertThat(words(marks).heightMm()).isEqualTo(3.5);
    assertThat(words(marks).text()).isEqualTo(Dimensions.figure(length));
    assertThat(words(marks).x()).isEqualTo(50, within(1e-9));
    // One millimetre above a line 10 mm below.
    assertThat(words(marks).y()).isEqualTo(-9, within(1e-9));
    for (Geometry arrow : arrows(marks)) {
      assertThat(arrow.getEnvelopeInternal().getWidth()).isEqualTo(3, within(1e-9));
    }
    // The extension lines overshoot by 8 widths of 0.25 mm.
    assertThat(onPaper.boundsMm().getMinY()).isEqualTo(-12, within(1e-9));
    assertThat(marks).allSatisfy(m -> assertThat(m.subject()).isEqualTo("m"));
  }

  @Test
  void arrowTipsTouchThePointsMeasured() {
    List<Geometry> arrows =
        arrows(Dimensions.at(1).linear("", 10, 20, 110, 95, Math.atan2(75, 100), 10, 20, null));
    assertThat(arrows.get(0).getCoordinates()[0].distance(new Coordinate(10, 20))).isLessThan(1e-9);
    assertThat(arrows.get(1).getCoordinates()[0].distance(new Coordinate(110, 95)))
        .isLessThan(1e-9);
  }

  // 3-4-5 triangle scaled by 25.
  @Test
  void figuresAreTheDistancesMeant() {
    Dimensions d = Dimensions.at(1);
    assertThat(words(d.linear("", 0, 0, 75, 100, Math.atan2(100, 75), 0, 0, null)).text())
        .isEqualTo("125");
    assertThat(words(d.horizontal("", 0, 0, 75, 100, 8, null)).text()).isEqualTo("75");
    assertThat(words(d.vertical("", 0, 0, 75, 100, 8, null)).text()).isEqualTo("100");
    assertThat(words(d.vertical("", 0, 100, 75, 0, 8, null)).text()).isEqualTo("100");
    assertThat(words(d.angular("", 0, 0, 50, 0, Math.toRadians(24.5), null)).text())
        .isEqualTo("24.5°");
    assertThat(words(d.angular("", 0, 0, 50, 0, 1, "rake")).text()).isEqualTo("rake");
  }

  @ParameterizedTest
  @CsvSource({"1600, 1600", "1600.04, 1600", "1600.06, 1600.1", "-0.01, 0", "12.5, 12.5"})
  void figuresHaveAtMostOneDecimal(double value, String text) {
    assertThat(Dimensions.figure(value)).isEqualTo(text);
  }

  @ParameterizedTest
  @CsvSource({"0, 0", "90, 90", "-90, 90", "180, 0", "135, -45", "-135, 45", "270, 90", "89, 89"})
  void wordsReadFromTheBottomOrFromTheRight(double line, double words) {
    assertThat(Dimensions.readable(line)).isEqualTo(words, within(1e-9));
  }

  @Test
  void inATightPlaceArrowsAndWordsGoOutside() {
    List<Mark> marks = Dimensions.at(1).horizontal("", 0, 0, 4, 0, -10, "4 plus 0.1");
    assertThat(words(marks).x()).isGreaterThan(4);
    // The first arrow points to the right at x = 0 and so lies left of it.
    assertThat(arrows(marks).get(0).getEnvelopeInternal().getMaxX()).isEqualTo(0, within(1e-9));
  }

  @Test
  void aZeroLengthIsDrawnWithoutNonsense() {
    List<Mark> marks = Dimensions.at(1).linear("", 5, 5, 5, 5, 0, 5, 8, null);
    assertThat(words(marks).text()).isEqualTo("0");
  }
}
