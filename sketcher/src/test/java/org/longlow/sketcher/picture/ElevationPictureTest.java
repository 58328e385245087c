package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.svg.drawing.Dimensions;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;

public class ElevationPictureTest {

  private static final PictureOptions FULL =
      PictureOptions.PLAIN
          .withGhosts(Set.of("Tor"))
          .withFindings(List.of("sight.Mara", "sink.Mara.pan"))
          .withNames(true)
          .withDimensions(true)
          .withPins(true);

  private static final Study STUDY = Plover.study();
  private final Scene scene = Scenes.of(STUDY, FULL);

  private static Set<String> subjects(Drawing drawing) {
    return drawing.layers().stream()
        .flatMap(l -> l.marks().stream())
        .map(Mark::subject)
        .collect(Collectors.toSet());
  }

  public static Layer layer(Drawing drawing, String id) {
    return drawing.layers().stream().filter(l -> l.id().equals(id)).findFirst().orElseThrow();
  }

  public static Envelope boxOf(Layer layer, String subject) {
    Envelope box = new Envelope();
    for (Mark m : layer.marks()) {
      if (m instanceof Mark.Shape s && s.subject().equals(subject)) {
        box.expandToInclude(s.geometry().getEnvelopeInternal());
      }
    }
    return box;
  }

  /** A mast right before the eyes is looked over steeply; the line ends a little above it. */
  @Test
  void aSteepSightLineEndsAboveTheMachine() {
    PointMm eye = scene.people().get(0).joints().eye();
    String top =
        String.format(
            Locale.ROOT, "\"r2\": [\"%.0f mm\", \"%.0f mm\"]", eye.x() + 100, eye.z() + 500);
    Layout masted = Plover.layout("\"r2\":[\"480 mm\",\"360 mm\"]", top);
    Drawing drawing = ElevationPicture.of(Study.of(masted), PictureOptions.PLAIN);
    Envelope parts = new Envelope();
    for (Layer l : drawing.layers()) {
      l.marks().stream()
          .filter(m -> m instanceof Mark.Shape && m.subject().startsWith("part:"))
          .forEach(m -> parts.expandToInclude(((Mark.Shape) m).geometry().getEnvelopeInternal()));
    }
    Envelope sight = new Envelope();
    layer(drawing, "sight").marks().stream()
        .map(m -> ((Mark.Shape) m).geometry().getEnvelopeInternal())
        .forEach(sight::expandToInclude);
    assertThat(sight.getMaxY()).isBetween(parts.getMaxY(), parts.getMaxY() + 100);
    assertThat(sight.getMaxX()).isLessThan(parts.getMaxX());
  }

  @Test
  void everyPartPinPersonAndFindingCanBePicked() {
    Set<String> subjects = subjects(ElevationPicture.of(scene, FULL));
    scene.layout().parts().keySet().forEach(p -> assertThat(subjects).contains("part:" + p));
    scene.layout().pins().keySet().forEach(p -> assertThat(subjects).contains("pin:" + p));
    assertThat(subjects)
        .contains("person:Mara", "person:Tor", "finding:sight.Mara", "finding:sink.Mara.pan");
  }

  @Test
  @Tag("long")
  void whoeverBendsAFootFarUpCanBePicked() {
    String far = "\"pegPin\":[\"1330 mm\",\"330 mm\"]";
    for (String near : List.of("1230 mm\",\"330 mm", "1230 mm\",\"230 mm", "1330 mm\",\"450 mm")) {
      Study bent = Study.of(Plover.layout(far, "\"pegPin\":[\"" + near + "\"]"));
      Drawing drawing = ElevationPicture.of(bent, PictureOptions.PLAIN.withChosen("person:Mara"));
      assertThat(boxOf(layer(drawing, "chosen"), "person:Mara").getHeight())
          .as(near)
          .isGreaterThan(800);
    }
  }

  @Test
  void everyMarkHasASubject() {
    assertThat(subjects(ElevationPicture.of(scene, FULL))).doesNotContain("");
  }

  @Test
  void wheelsStandOneWheelbaseApartOnTheRoadInEveryStance() {
    for (Standing standing : STUDY.standings()) {
      Drawing drawing =
          ElevationPicture.of(
              STUDY, PictureOptions.PLAIN.withStance(Optional.of(standing.condition())));
      Layer wheels = layer(drawing, "wheels");
      Envelope rear = boxOf(wheels, "part:rearWheel");
      Envelope front = boxOf(wheels, "part:frontWheel");
      // tyres are polygons of 180 corners: within 0.02 % of the radius of the true circle
      assertThat(front.centre().x - rear.centre().x)
          .as(standing.condition().says())
          .isCloseTo(standing.ground().wheelbaseMm(), within(0.1));
      assertThat(rear.getMinY()).as(standing.condition().says()).isCloseTo(0, within(0.1));
      assertThat(front.getMinY()).as(standing.condition().says()).isCloseTo(0, within(0.1));
    }
  }

  @Test
  void wordsStayLevelWhenTheMachineIsPitched() {
    Drawing drawing =
        ElevationPicture.of(
            STUDY, FULL.withStance(Optional.of(Condition.empty(Stance.Kind.FULL_BUMP))));
    assertThat(layer(drawing, "pins").marks())
        .filteredOn(Mark.Words.class::isInstance)
        .allSatisfy(m -> assertThat(((Mark.Words) m).rotationDeg()).isZero());
  }

  @Test
  void aStanceThatTheMachineHasNotIsRefused() {
    assertThatThrownBy(
            () ->
                ElevationPicture.of(
                    STUDY, PictureOptions.PLAIN.withStance(Optional.of(Condition.open("tail")))))
        .hasMessageContaining("no stance open, tail");
  }

  @Test
  void thePersonDrawnIsTheFleshThatGapsAreMeasuredTo() {
    Sitting mara = STUDY.sitting("Mara", "rider").orElseThrow();
    Geometry chest =
        Figure.parts(mara.body(), mara.posture().orElseThrow()).stream()
            .filter(f -> f.name().equals("chest"))
            .findFirst()
            .orElseThrow()
            .outline();
    assertThat(scene.people().get(0).flesh().get(Figure.Part.CHEST).equalsExact(chest)).isTrue();
  }

  @Test
  void foamUnderAPersonIsThinnerByTheSinkAndNoMore() {
    Layer seat = layer(ElevationPicture.of(scene, PictureOptions.PLAIN), "seat");
    double drawn = foamArea(seat, "part:pan");
    double free = 75 * scene.places().pin("panRear").distance(scene.places().pin("panFront"));
    double sink = scene.sunk().get("pan").totalMm();
    assertThat(drawn).isLessThan(free - 0.2 * free * sink / 75);
    assertThat(drawn).isGreaterThan(free * (1 - sink / 75));
  }

  private static double foamArea(Layer seat, String subject) {
    double area = 0;
    for (Mark m : seat.marks()) {
      if (m instanceof Mark.Shape s
          && s.subject().equals(subject)
          && s.style().fill() != null
          && s.style().fill().name().startsWith("FOAM")) {
        area += s.geometry().getArea();
      }
    }
    return area;
  }

  @Test
  void dimensionsSayWhatTheDrawingMeasures() {
    Drawing drawing = ElevationPicture.of(scene, PictureOptions.PLAIN.withDimensions(true));
    List<String> words = words(layer(drawing, "dimensions"));
    assertThat(words)
        .contains("wheelbase, laden " + Dimensions.figure(scene.ground().wheelbaseMm()));
    Envelope machine = new Envelope();
    for (String id : List.of("wheels", "frame", "engine", "exhaust", "body", "lamps")) {
      for (Mark m : layer(drawing, id).marks()) {
        if (m instanceof Mark.Shape s) {
          machine.expandToInclude(s.geometry().getEnvelopeInternal());
        }
      }
    }
    String length = words.stream().filter(w -> w.startsWith("length ")).findFirst().orElseThrow();
    // the lens bows out of its lamp's outline by at most a few mm, inside the nose here
    assertThat(Double.parseDouble(length.substring(7))).isCloseTo(machine.getWidth(), within(0.06));
  }

  private static List<String> words(Layer layer) {
    List<String> out = new ArrayList<>();
    for (Mark m : layer.marks()) {
      if (m instanceof Mark.Words w) {
        out.add(w.text());
      }
    }
    return out;
  }

  @Test
  void dimensionWordsNeverLieOnOneAnother() {
    for (double n : new double[] {5, 10, 20}) {
      Layer layer =
          DimensionInk.layer(
              scene,
              ElevationPicture.of(scene, PictureOptions.PLAIN.withDenominator(n)),
              n,
              Detail.FULL);
      List<Mark.Words> words =
          layer.marks().stream()
              .filter(Mark.Words.class::isInstance)
              .map(Mark.Words.class::cast)
              .toList();
      assertThat(words).hasSizeGreaterThan(10);
      for (int i = 0; i < words.size(); i++) {
        for (int j = 0; j < i; j++) {
          Envelope a = Labels.box(words.get(i), n);
          Envelope b = Labels.box(words.get(j), n);
          assertThat(a.intersects(b))
              .as("%s and %s at 1:%s", words.get(i).text(), words.get(j).text(), n)
              .isFalse();
        }
      }
    }
  }

  @Test
  void noExtensionLineRunsThroughWhatIsWrittenOnTheMachine() {
    // at 1:20 there is no room under the belly that no line runs down through
    for (double n : new double[] {5, 10}) {
      Drawing machine = ElevationPicture.of(scene, PictureOptions.PLAIN.withDenominator(n));
      Layer layer = DimensionInk.layer(scene, machine, n, Detail.FULL);
      List<Mark.Words> written =
          layer.marks().stream()
              .filter(Mark.Words.class::isInstance)
              .map(Mark.Words.class::cast)
              .filter(w -> w.text().startsWith("rake") || w.text().startsWith("clear "))
              .toList();
      assertThat(written).hasSize(2);
      for (Mark.Words words : written) {
        Geometry box = Planar.rectangle(Labels.box(words, n));
        assertThat(
                layer.marks().stream()
                    .filter(Mark.Shape.class::isInstance)
                    .map(m -> ((Mark.Shape) m).geometry())
                    .filter(g -> g.getDimension() == 1)
                    .filter(g -> g.intersects(box)))
            .as("%s at 1:%s", words.text(), n)
            .isEmpty();
      }
    }
  }

  @Test
  void theChosenPartIsOutlinedOnItsOwnEdge() {
    Drawing drawing = ElevationPicture.of(scene, PictureOptions.PLAIN.withChosen("part:tank"));
    Mark.Shape mark = (Mark.Shape) layer(drawing, "chosen").marks().get(0);
    Geometry tank = scene.shapes().get("tank").outline();
    Geometry onRoad = mark.geometry();
    assertThat(onRoad.getArea()).isCloseTo(tank.getArea(), within(1e-6 * tank.getArea()));
  }

  @Test
  void nothingIsDrawnForAnUnknownChoice() {
    Drawing drawing = ElevationPicture.of(scene, PictureOptions.PLAIN.withChosen("part:none"));
    assertThat(drawing.layers()).noneMatch(l -> l.id().equals("chosen"));
  }
}
