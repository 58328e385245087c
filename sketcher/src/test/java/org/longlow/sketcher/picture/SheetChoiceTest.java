package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.drawing.Style;
import org.longlow.svg.drawing.Tone;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.TitleBlock;

/** The scale at which views go on a sheet. A4 has 255 x 132 mm for them, or 168 x 219 mm. */
class SheetChoiceTest {

  /** A square of 2 m with a margin round it that its words take on paper, by detail. */
  private static Drawing square(double n, Detail detail) {
    double words =
        switch (detail) {
          case FULL -> 80;
          case MAIN -> 62;
          case OVERALL -> 10;
        };
    Envelope box = new Envelope(0, 2000, 0, 2000);
    box.expandBy(words / 2 * n);
    Mark mark = new Mark.Shape(detail.name(), Planar.rectangle(box), Style.narrow(Tone.INK));
    return Drawing.of("square", new Layer("square", "Square", List.of(mark)));
  }

  private static SheetChoice choice(double worthIt) {
    return new SheetChoice(
        Paper.A4,
        TitleBlock.of("Square", "square", ""),
        "the views",
        true,
        new Envelope(0, 2000, 0, 2000),
        List.of(Detail.values()),
        worthIt,
        SheetChoiceTest::square);
  }

  private static String detail(DimensionedElevation.Sheet sheet) {
    return sheet.page().layers().get(0).marks().get(0).subject();
  }

  @Test
  void theLargestScaleCostsDimensionsWhereAnyLargerOneIsWorthThem() {
    // at 1:20 it is 100 mm with 10, 62 or 80 more; 132 or 168 are there
    assertThat(choice(1).largest().scale()).isEqualTo(Scale.oneTo(20));
    assertThat(detail(choice(1).largest())).isEqualTo("MAIN");
  }

  @Test
  void dimensionsStayWhereTheLargerScaleIsNotWorthThem() {
    // 1:20 is 1.25 times 1:25, at which all fit
    assertThat(detail(choice(1.2).largest())).isEqualTo("MAIN");
    assertThat(detail(choice(1.3).largest())).isEqualTo("FULL");
    assertThat(choice(1.3).largest().scale()).isEqualTo(Scale.oneTo(25));
  }

  /** A roll is cut as long as the picture; only its breadth decides. */
  @Test
  void aRollKeepsTheScaleOrNamesOneThatFits() {
    Study heron = Shipped.study("heron");
    Paper roll = Paper.roll(610);
    DimensionedElevation.Sheet sheet =
        ViewSheets.elevation(heron, PictureOptions.PLAIN, roll, Scale.oneTo(5), "");
    assertThat(sheet.scale()).isEqualTo(Scale.oneTo(5));
    assertThat(sheet.page().paper().heightMm()).isEqualTo(610);
    double long5 = sheet.page().paper().widthMm();
    double long10 =
        ViewSheets.elevation(heron, PictureOptions.PLAIN, roll, Scale.oneTo(10), "")
            .page()
            .paper()
            .widthMm();
    // the machine alone, 2734.6 mm, is as much longer; what is written beside it is not
    assertThat(long5 - long10).isBetween(2734.6 / 10 - 30, 2734.6 / 10 + 60);
    assertThatThrownBy(
            () -> ViewSheets.elevation(heron, PictureOptions.PLAIN, roll, Scale.oneTo(2), ""))
        .hasMessageContaining("does not fit on roll-610 at 1:2; take 1:3 or larger paper");
  }

  @Test
  void theLargestPaperIsUsed() {
    for (String name : Demos.names()) {
      DimensionedElevation.Sheet sheet =
          ViewSheets.elevation(Shipped.study(name), PictureOptions.PLAIN, Paper.A0, "");
      assertThat(sheet.scale()).as(name).isEqualTo(Scale.oneTo(3));
    }
  }

  @Test
  void aScaleThatIsAskedForGetsAllDimensionsThatFit() {
    assertThat(detail(choice(1).at(Scale.oneTo(50)))).isEqualTo("FULL");
    assertThat(detail(choice(9).at(Scale.oneTo(20)))).isEqualTo("MAIN");
  }

  @Test
  void aRefusalNamesTheLargestScaleThatFits() {
    assertThatThrownBy(() -> choice(1.3).at(Scale.oneTo(10)))
        .isInstanceOf(OutOfRange.class)
        .hasMessage("the views do not fit on A4 at 1:10; take 1:20 or larger paper");
  }

  static Stream<Arguments> machines() {
    return Stream.of(
            Arguments.of("heron", 30, 20),
            Arguments.of("dunlin", 25, 20),
            Arguments.of("curlew", 25, 20))
        .filter(a -> Shipped.isSampled((String) a.get()[0]));
  }

  @ParameterizedTest
  @MethodSource("machines")
  void threeViewsOfShippedMachinesAreSeenOnSmallPaper(String name, int on, int off) {
    Study study = Shipped.study(name);
    Views all = new Views(Views.Kind.ALL, Views.Projection.FIRST_ANGLE);
    Scale scale =
        ViewSheets.sheet(study, PictureOptions.PLAIN, all, Optional.empty(), Paper.A4, "").scale();
    assertThat(scale).isEqualTo(Scale.oneTo(on));
    Optional<Scale> larger = Optional.of(Scale.oneTo(off));
    assertThatThrownBy(
            () -> ViewSheets.sheet(study, PictureOptions.PLAIN, all, larger, Paper.A4, ""))
        .hasMessageContaining("; take 1:" + on + " or larger paper");
  }
}
