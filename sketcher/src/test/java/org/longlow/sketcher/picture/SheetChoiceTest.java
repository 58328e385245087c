package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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
    // 1:20 is 2.5 times 1:50, at which all fit
    assertThat(detail(choice(2.4).largest())).isEqualTo("MAIN");
    assertThat(detail(choice(2.6).largest())).isEqualTo("FULL");
    assertThat(choice(2.6).largest().scale()).isEqualTo(Scale.oneTo(50));
  }

  @Test
  void aScaleThatIsAskedForGetsAllDimensionsThatFit() {
    assertThat(detail(choice(1).at(Scale.oneTo(50)))).isEqualTo("FULL");
    assertThat(detail(choice(9).at(Scale.oneTo(20)))).isEqualTo("MAIN");
  }

  @Test
  void aRefusalNamesTheLargestScaleThatFits() {
    assertThatThrownBy(() -> choice(2.6).at(Scale.oneTo(10)))
        .isInstanceOf(OutOfRange.class)
        .hasMessage("the views do not fit on A4 at 1:10; take 1:20 or larger paper");
  }

  @ParameterizedTest
  @CsvSource({"heron,50,20", "dunlin,50,20", "curlew,50,20"})
  void threeViewsOfShippedMachinesAreSeenOnSmallPaper(String name, int on, int off) {
    Study study = Study.of(Demos.layout(name));
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
