package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.LineString;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.study.Study;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.SheetSpace;

class DimensionedElevationTest {

  @Test
  void theSheetUsesTheLargestPreferredScaleThatFits() {
    // 2.3 m of machine and its dimensions: 1:10 on A3 and Tabloid, 1:20 on A4, 1:5 on A1
    assertThat(scale(Paper.A3)).isEqualTo(Scale.oneTo(10));
    assertThat(scale(Paper.TABLOID)).isEqualTo(Scale.oneTo(10));
    assertThat(scale(Paper.A4)).isEqualTo(Scale.oneTo(20));
    assertThat(scale(Paper.A1)).isEqualTo(Scale.oneTo(5));
  }

  private static Scale scale(Paper paper) {
    return ViewSheets.elevation(Plover.study(), PictureOptions.PLAIN, paper, "").scale();
  }

  @Test
  void everythingOfThePictureLiesInsideTheFrameAboveTheTitleBlock() {
    for (Paper paper : List.of(Paper.A3, Paper.A4, Paper.TABLOID)) {
      var sheet = ViewSheets.elevation(Plover.study(), PictureOptions.PLAIN, paper, "2026-03-01");
      Envelope space = SheetSpace.pictureSpace(sheet.page().paper());
      space.expandBy(1e-6);
      for (Layer layer : sheet.page().layers()) {
        if (layer.id().startsWith("sheet-")) {
          continue;
        }
        for (Mark mark : layer.marks()) {
          Envelope box =
              mark instanceof Mark.Words w
                  ? w.boxMm()
                  : ((Mark.Shape) mark).geometry().getEnvelopeInternal();
          assertThat(space.contains(box)).as(mark + " on " + paper.name()).isTrue();
        }
      }
    }
  }

  @Test
  void noWordsOfTheSheetLieOnOthers() {
    for (Paper paper : List.of(Paper.A3, Paper.A4)) {
      List<Mark.Words> words = new ArrayList<>();
      for (Layer l :
          ViewSheets.elevation(Plover.study(), PictureOptions.PLAIN, paper, "").page().layers()) {
        for (Mark m : l.marks()) {
          if (m instanceof Mark.Words w && !l.id().startsWith("sheet-")) {
            words.add(w);
          }
        }
      }
      for (int i = 0; i < words.size(); i++) {
        for (int j = 0; j < i; j++) {
          assertThat(words.get(i).boxMm().intersects(words.get(j).boxMm()))
              .as("%s and %s on %s", words.get(i).text(), words.get(j).text(), paper.name())
              .isFalse();
        }
      }
    }
  }

  @Test
  void eachHPointSaysWhoseItIsWhereThereAreTwo() {
    Study heron = Shipped.study("heron");
    List<Occupant> both =
        List.of(new Occupant("Bram", Occupant.RIDER), new Occupant("Runa", "passenger"));
    List<String> two =
        words(DimensionedElevation.of(heron, PictureOptions.PLAIN.withSeated(both)), "dimensions");
    for (String name : List.of("Bram", "Runa")) {
      assertThat(two).filteredOn(w -> w.startsWith("H-point of " + name + " ")).hasSize(2);
    }
    assertThat(two).noneMatch(w -> w.matches("H-point [0-9].*"));
    List<String> one =
        words(
            DimensionedElevation.of(heron, PictureOptions.PLAIN.withSeated(both.subList(0, 1))),
            "dimensions");
    assertThat(one).filteredOn(w -> w.matches("H-point [0-9].*")).hasSize(2);
  }

  /** At 1:20 the words are longer than what they measure; twice their height is left between. */
  @Test
  void uprightWordsStandApart() {
    List<Occupant> both =
        List.of(new Occupant("Bram", Occupant.RIDER), new Occupant("Runa", "passenger"));
    PictureOptions options = PictureOptions.PLAIN.withSeated(both).withDenominator(20);
    List<Mark.Words> upright =
        ElevationPictureTest.layer(
                DimensionedElevation.of(Shipped.study("heron"), options), "dimensions")
            .marks()
            .stream()
            .filter(m -> m instanceof Mark.Words w && w.rotationDeg() == 90)
            .map(Mark.Words.class::cast)
            .toList();
    assertThat(upright).hasSizeGreaterThan(8);
    for (Mark.Words a : upright) {
      for (Mark.Words b : upright) {
        double apart = Math.abs(a.x() - b.x()) / 20;
        if (a != b && apart > 1e-6) {
          assertThat(apart).as(a.text() + ", " + b.text()).isGreaterThan(3 * a.heightMm());
        }
      }
    }
  }

  /** What is measured is called by what it is for, not by its name in the file. */
  @Test
  void restsAreCalledByWhatTheyAreFor() {
    List<String> heron =
        words(DimensionedElevation.of(Shipped.study("heron"), PictureOptions.PLAIN), "dimensions");
    assertThat(heron).anyMatch(w -> w.startsWith("passenger grips "));
    assertThat(heron).anyMatch(w -> w.startsWith("rider boards "));
    assertThat(heron).noneMatch(w -> w.contains("pillion"));
    List<String> curlew =
        words(DimensionedElevation.of(Shipped.study("curlew"), PictureOptions.PLAIN), "dimensions");
    assertThat(curlew).anyMatch(w -> w.startsWith("pegs ")).noneMatch(w -> w.startsWith("rider"));
  }

  /** No line of a dimension runs on through machine or people; none of the words is on a tyre. */
  @Test
  void noDimensionRunsThroughTheMachine() {
    int looked = 0;
    for (String name : Demos.names()) {
      Study study = Shipped.study(name);
      for (double n : new double[] {10, 20, 50}) {
        Drawing drawing = DimensionedElevation.of(study, PictureOptions.PLAIN.withDenominator(n));
        List<Geometry> bodies = new ArrayList<>();
        List<Geometry> tyres = new ArrayList<>();
        for (Layer layer : drawing.layers()) {
          for (Mark m : layer.marks()) {
            if (m instanceof Mark.Shape s
                && s.style().fill() != null
                && s.geometry().getDimension() == 2
                && s.subject().matches("(part|person):.*")
                && !layer.id().equals("dimensions")) {
              // without the noding that a drawing leaves, made once for all lines
              Geometry body = s.geometry().buffer(0);
              (layer.id().equals("wheels") ? tyres : bodies).add(body);
            }
          }
        }
        for (Mark m : ElevationPictureTest.layer(drawing, "dimensions").marks()) {
          if (m instanceof Mark.Words w) {
            Geometry box = Planar.rectangle(Labels.box(w, n));
            assertThat(tyres)
                .as("%s of %s at 1:%s", w.text(), name, n)
                .noneMatch(tyre -> tyre.intersects(box));
          } else if (((Mark.Shape) m).geometry() instanceof LineString line) {
            Envelope box = line.getEnvelopeInternal();
            boolean straight =
                (box.getWidth() == 0 || box.getHeight() == 0)
                    && ((Mark.Shape) m).style().strokeMm() == Canvas.HAIR_MM;
            // where it begins it shows for 2 mm; what is left after that is shorter than as much
            double most = 4.1 * n;
            for (Geometry body : straight ? bodies : List.<Geometry>of()) {
              double inside = line.intersection(body).getLength();
              assertThat(inside).as("%s of %s at 1:%s", m, name, n).isLessThan(most);
              looked++;
            }
          }
        }
      }
    }
    assertThat(looked).isGreaterThan(500);
  }

  @Test
  void axleLoadsAndTheCautionAreOnTheDrawing() {
    Layer notes =
        ElevationPictureTest.layer(
            DimensionedElevation.of(Plover.study(), PictureOptions.PLAIN), "notes");
    List<String> words = notes.marks().stream().map(m -> ((Mark.Words) m).text()).toList();
    assertThat(words).anyMatch(w -> w.matches("\\d+ kg in all: front \\d+ N .*"));
    assertThat(words).anyMatch(w -> w.contains("not a certificate"));
    assertThat(words).anyMatch(w -> w.contains("±20 %"));
  }

  @Test
  void noSightLineRunsThroughWords() {
    for (String name : Demos.names()) {
      Study study = Shipped.study(name);
      for (double n : new double[] {10, 20, 50}) {
        Drawing drawing = DimensionedElevation.of(study, PictureOptions.PLAIN.withDenominator(n));
        Layer heights = ElevationPictureTest.layer(drawing, "dimensions");
        for (Mark line : ElevationPictureTest.layer(drawing, "sight").marks()) {
          for (Mark mark : heights.marks()) {
            if (mark instanceof Mark.Words w && w.rotationDeg() != 0) {
              Geometry box = Planar.rectangle(Labels.box(w, n));
              assertThat(box.intersects(((Mark.Shape) line).geometry()))
                  .as("%s of %s at 1:%s", w.text(), name, n)
                  .isFalse();
            }
          }
        }
      }
    }
  }

  /** The axles carry the machine alone at full bump, whoever is drawn on it. */
  @Test
  void weightsSayWhetherThePeopleAreInThem() {
    PictureOptions mara = PictureOptions.PLAIN.withPerson("Mara");
    assertThat(notes(mara)).anyMatch(w -> w.matches("\\d+ kg in all: .*"));
    assertThat(notes(mara.withStance(Optional.of(Condition.empty(Stance.Kind.FULL_BUMP)))))
        .anyMatch(w -> w.matches("\\d+ kg without people: .*"));
    assertThat(
            notes(
                PictureOptions.PLAIN.withStance(
                    Optional.of(Condition.empty(Stance.Kind.FULL_BUMP)))))
        .anyMatch(w -> w.matches("\\d+ kg in all: .*"));
  }

  /** Springs shorten the one and steepen the other; nobody is to cut by that. */
  @Test
  void whatSpringsMakeOfWheelbaseAndRakeIsSaidBesideWhatIsSet() {
    PictureOptions mara = PictureOptions.PLAIN.withPerson("Mara").withDimensions(true);
    Drawing pressed = DimensionedElevation.of(Plover.study(), mara);
    List<String> words = words(pressed, "dimensions");
    assertThat(words).anyMatch(w -> w.startsWith("wheelbase, laden "));
    assertThat(words).anyMatch(w -> w.startsWith("rake, laden "));
    PointMm front = Plover.study().placed().places().pin("frontAxle");
    PointMm rear = Plover.study().placed().places().pin("rearAxle");
    String set = "wheelbase " + Dimensions.figure(front.x() - rear.x());
    assertThat(words).noneMatch(w -> w.endsWith(set.substring(9)));
    assertThat(notes(mara)).anyMatch(w -> w.startsWith("Cut by what is set, as drawn: " + set));
  }

  @Test
  void noHeightIsWrittenUnderTheRoad() {
    for (double n : new double[] {10, 20, 50}) {
      PictureOptions mara = PictureOptions.PLAIN.withPerson("Mara").withDenominator(n);
      Layer layer =
          ElevationPictureTest.layer(DimensionedElevation.of(Plover.study(), mara), "dimensions");
      List<Mark.Words> upright =
          layer.marks().stream()
              .filter(Mark.Words.class::isInstance)
              .map(Mark.Words.class::cast)
              .filter(w -> w.rotationDeg() == 90)
              .toList();
      assertThat(upright).hasSizeGreaterThan(3);
      assertThat(upright).allMatch(w -> Labels.box(w, n).getMinY() >= 0);
    }
  }

  private static List<String> words(Drawing drawing, String layer) {
    return ElevationPictureTest.layer(drawing, layer).marks().stream()
        .filter(Mark.Words.class::isInstance)
        .map(m -> ((Mark.Words) m).text())
        .toList();
  }

  private static List<String> notes(PictureOptions options) {
    return ElevationPictureTest.layer(DimensionedElevation.of(Plover.study(), options), "notes")
        .marks()
        .stream()
        .map(m -> ((Mark.Words) m).text())
        .toList();
  }

  /** Each dimension has two extension lines, and bodies that are left off break none. */
  @Test
  void extensionLinesBreakOnlyAtWhatIsDrawn() {
    assertThat(hairlines(LayerChoice.of(List.of("dimensions")))).isEven();
    assertThat(hairlines(LayerChoice.ALL))
        .isGreaterThan(hairlines(LayerChoice.of(List.of("dimensions"))));
  }

  private static int hairlines(LayerChoice layers) {
    Views side = new Views(Views.Kind.SIDE, Views.Projection.FIRST_ANGLE, layers);
    return (int)
        ViewSheets.sheet(
                Shipped.study("heron"), PictureOptions.PLAIN, side, Optional.empty(), Paper.A3, "")
            .page()
            .layers()
            .stream()
            .filter(l -> l.id().equals("dimensions"))
            .flatMap(l -> l.marks().stream())
            .filter(m -> m instanceof Mark.Shape s && s.style().strokeMm() == Canvas.HAIR_MM)
            .count();
  }
}
