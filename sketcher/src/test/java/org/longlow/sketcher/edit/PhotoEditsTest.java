package org.longlow.sketcher.edit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.LayoutWriter;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Photo;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Wren;
import org.longlow.sketcher.photo.PhotoPlace;
import org.longlow.sketcher.photo.Pixel;

class PhotoEditsTest {

  private static final Layout WREN = Wren.layout();
  private static final Places PLACES = Placer.place(WREN).places();
  private static final Envelope BOX = new Envelope(-300, 1700, 0, 1000);

  private static Layout put() {
    return PhotoEdits.put("side", "side.jpg", 4000, 3000, BOX).applied(WREN);
  }

  private static PointMm at(Layout layout, double right, double down) {
    return PhotoPlace.of(layout.photos().get("side"), layout, PLACES)
        .inMachine(new Pixel(right, down))
        .orElseThrow();
  }

  private static void assertSoundAndReadBack(Layout layout) {
    assertThat(LayoutFaults.of(layout)).isEmpty();
    ReadResult read = LayoutReader.read(LayoutWriter.toJson(layout), null);
    assertThat(((ReadResult.Read) read).layout().photos()).isEqualTo(layout.photos());
  }

  @Test
  void aPhotoIsPutInAsBroadAsTheMachineAndInItsMiddle() {
    Layout layout = put();
    assertSoundAndReadBack(layout);
    assertThat(at(layout, 0, 0)).isEqualTo(new PointMm(-300, 1250));
    assertThat(at(layout, 4000, 3000)).isEqualTo(new PointMm(1700, -250));
    assertThatThrownBy(() -> PhotoEdits.put("side", "b.png", 9, 9, BOX).applied(layout))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("already a photo called side");
  }

  @Test
  void namesOfNewPhotosAreFreeAndGood() {
    assertThat(PhotoEdits.unused(WREN, "IMG_2041.JPG")).isEqualTo("IMG_2041");
    assertThat(PhotoEdits.unused(WREN, "sub/#-@engine & gearbox.png"))
        .isEqualTo("engine - gearbox");
    assertThat(PhotoEdits.unused(WREN, "@@.png")).isEqualTo("photo");
    assertThat(PhotoEdits.unused(WREN, "x".repeat(90) + ".png")).hasSize(40);
    assertThat(PhotoEdits.unused(put(), "side.png")).isEqualTo("side 2");
    Layout two = PhotoEdits.put("side 2", "b.png", 9, 9, BOX).applied(put());
    assertThat(PhotoEdits.unused(two, "side.png")).isEqualTo("side 3");
    for (String file : List.of("IMG_2041.JPG", "#-@engine & gearbox.png", "a\u00e9\u4e2d.png")) {
      String name = PhotoEdits.unused(WREN, file);
      assertThat(LayoutFaults.of(PhotoEdits.put(name, "a.png", 9, 9, BOX).applied(WREN))).isEmpty();
    }
  }

  @Test
  void twoPointsAndALengthScaleItAndTheFirstStays() {
    Layout layout = put();
    PointMm kept = at(layout, 1000, 2500);
    Layout scaled =
        PhotoEdits.scaled("side", PLACES, new Pixel(1000, 2500), new Pixel(3000, 2500), "63 1/2 in")
            .applied(layout);
    assertSoundAndReadBack(scaled);
    PointMm a = at(scaled, 1000, 2500);
    PointMm b = at(scaled, 3000, 2500);
    assertThat(a.distance(kept)).isLessThan(0.001);
    // 63.5 in of 25.4 mm
    assertThat(b.x() - a.x()).isCloseTo(1612.9, within(0.001));
    assertThat(b.z()).isCloseTo(a.z(), within(1e-9));
  }

  @Test
  void aBareNumberIsOneOfMillimetresAndAMeasureGoesOnToHold() {
    Layout layout = put();
    Layout bare =
        PhotoEdits.scaled("side", PLACES, new Pixel(0, 0), new Pixel(0, 800), "400")
            .applied(layout);
    assertThat(at(bare, 0, 0).z() - at(bare, 0, 800).z()).isCloseTo(400, within(0.001));
    String measure =
        WREN.measures().keySet().stream()
            .filter(m -> WREN.measures().get(m).dim().words().contains("length"))
            .findFirst()
            .orElseThrow();
    Layout tied =
        PhotoEdits.scaled("side", PLACES, new Pixel(0, 0), new Pixel(800, 0), measure)
            .applied(layout);
    assertSoundAndReadBack(tied);
    assertThat(tied.photos().get("side").scale().orElseThrow().names()).containsExactly(measure);
    assertThat(at(tied, 800, 0).x() - at(tied, 0, 0).x())
        .isCloseTo(PLACES.measures().get(measure), within(0.001));
  }

  @ParameterizedTest
  @ValueSource(strings = {"0", "-3 mm", "5 kg", "zebra", "1 mm +", "", "24 deg"})
  void nonsenseIsRefusedAndSaysWhy(String text) {
    assertThat(
            Tried.of(
                org.longlow.constraints.study.Study.of(put()),
                PhotoEdits.scaled("side", PLACES, new Pixel(0, 0), new Pixel(800, 0), text),
                null))
        .isInstanceOfSatisfying(
            Trial.Refused.class, r -> assertThat(r.words()).isNotBlank().doesNotContain("null"));
  }

  @Test
  void pointsOnOneSpotAreRefused() {
    assertThatThrownBy(
            () ->
                PhotoEdits.scaled("side", PLACES, new Pixel(5, 5), new Pixel(5, 5.9), "1 m")
                    .applied(put()))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("further apart");
  }

  static LongStream seeds() {
    return LongStream.range(0, 40);
  }

  @ParameterizedTest(name = "seed {0}")
  @MethodSource("seeds")
  void aLineIsLevelledByTheShorterTurnAndItsFirstPointStays(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    Layout layout = put();
    for (int i = 0; i < 3; i++) {
      Pixel a = new Pixel(random.nextDouble(4000), random.nextDouble(3000));
      Pixel b = new Pixel(random.nextDouble(4000), random.nextDouble(3000));
      PointMm was = at(layout, a.right(), a.down());
      double before = PhotoPlace.of(layout.photos().get("side"), layout, PLACES).axis().angleRad();
      layout = PhotoEdits.level("side", PLACES, a, b).applied(layout);
      PointMm from = at(layout, a.right(), a.down());
      PointMm to = at(layout, b.right(), b.down());
      assertThat(from.distance(was)).isLessThan(0.001);
      // the turn is written to 1e-4 deg
      assertThat(to.z() - from.z()).isCloseTo(0, within(from.distance(to) * 1e-6 + 0.001));
      double after = PhotoPlace.of(layout.photos().get("side"), layout, PLACES).axis().angleRad();
      assertThat(Math.abs(Math.IEEEremainder(after - before, 2 * Math.PI)))
          .isLessThanOrEqualTo(Math.PI / 2 + 1e-4);
    }
    assertSoundAndReadBack(layout);
  }

  @Test
  void aRectangleSeenAtASlantIsSquaredUp() {
    List<Pixel> corners =
        List.of(
            new Pixel(500, 2500), new Pixel(3400, 2200), new Pixel(3300, 700), new Pixel(600, 400));
    Layout layout =
        PhotoEdits.level("side", PLACES, new Pixel(0, 0), new Pixel(4000, 200)).applied(put());
    PointMm kept = at(layout, 500, 2500);
    Layout squared = PhotoEdits.squared("side", PLACES, corners, "1.2 m", "600 mm").applied(layout);
    assertSoundAndReadBack(squared);
    double[][] flat = {{0, 0}, {1200, 0}, {1200, 600}, {0, 600}};
    for (int i = 0; i < 4; i++) {
      PointMm at = at(squared, corners.get(i).right(), corners.get(i).down());
      assertThat(at.distance(kept.plus(new PointMm(flat[i][0], flat[i][1])))).isLessThan(0.01);
    }
    // scaled afterwards it keeps its proportions: what was 1200 long is 1500, 600 is 750
    Layout larger =
        PhotoEdits.scaled("side", PLACES, corners.get(0), corners.get(1), "1500 mm")
            .applied(squared);
    assertSoundAndReadBack(larger);
    assertThat(at(larger, 500, 2500).distance(kept)).isLessThan(0.01);
    assertThat(at(larger, 3400, 2200).distance(kept.plus(new PointMm(1500, 0)))).isLessThan(0.01);
    assertThat(at(larger, 600, 400).distance(kept.plus(new PointMm(0, 750)))).isLessThan(0.01);
    List<Pixel> wrong = List.of(corners.get(0), corners.get(2), corners.get(1), corners.get(3));
    assertThat(
            LayoutFaults.of(
                PhotoEdits.squared("side", PLACES, wrong, "1.2 m", "600 mm").applied(layout)))
        .extracting(f -> f.path())
        .containsExactly("$.photos.side.corners");
  }

  @Test
  void aPhotoOfAPartMovesAndTurnsWithIt() {
    String part =
        WREN.parts().values().stream()
            .filter(p -> p instanceof org.longlow.constraints.layout.Part.Outlined)
            .findFirst()
            .orElseThrow()
            .name();
    Photo side = put().photos().get("side");
    Layout layout = withPart(put(), side, part);
    String origin =
        ((org.longlow.constraints.layout.Part.Outlined) WREN.parts().get(part)).frame().origin();
    PointMm by = new PointMm(12, -7);
    java.util.Map<String, PointMm> pins = new java.util.HashMap<>(PLACES.pins());
    PhotoPlace before = PhotoPlace.of(layout.photos().get("side"), layout, PLACES);
    pins.replaceAll((name, p) -> p.plus(by));
    PhotoPlace after = PhotoPlace.of(layout.photos().get("side"), layout, PLACES.withPins(pins));
    Pixel pixel = new Pixel(123, 456);
    assertThat(
            after
                .inMachine(pixel)
                .orElseThrow()
                .distance(before.inMachine(pixel).orElseThrow().plus(by)))
        .isLessThan(1e-9);
    assertThat(before.base()).isEqualTo(PLACES.pin(origin));
    Layout moved = PhotoEdits.moved("side", PLACES, by).applied(layout);
    assertThat(at(moved, 123, 456).distance(before.inMachine(pixel).orElseThrow().plus(by)))
        .isLessThan(0.001);
    assertSoundAndReadBack(moved);
  }

  @Test
  void aPhotoOfAPartThatIsTurnedIsLevelledToo() {
    Layout turned =
        org.longlow.constraints.document.Change.set(
            put(),
            org.longlow.constraints.formula.Formula.parse("20 deg"),
            "parts",
            "engine",
            "frame",
            "angle");
    Layout layout = withPart(turned, put().photos().get("side"), "engine");
    Layout level =
        PhotoEdits.level("side", PLACES, new Pixel(0, 0), new Pixel(900, 700)).applied(layout);
    assertThat(at(level, 900, 700).z()).isCloseTo(at(level, 0, 0).z(), within(0.01));
    assertThat(at(level, 0, 0).distance(at(layout, 0, 0))).isLessThan(0.001);
  }

  private static Layout withPart(Layout layout, Photo p, String part) {
    Photo of =
        new Photo(
            p.file(),
            p.view(),
            Optional.of(part),
            p.x(),
            p.z(),
            p.turn(),
            p.scale(),
            p.corners(),
            p.width(),
            p.height(),
            p.fade(),
            p.locked(),
            p.hidden(),
            p.note());
    return org.longlow.constraints.document.Change.set(layout, of, "photos", "side");
  }

  @Test
  void whatIsWrittenByAFormulaStaysWhereNothingMoves() {
    Layout layout =
        org.longlow.constraints.document.Typing.typed(
            put(), "10 mm * 2 - 320 mm", List.of("photos", "side", "at", "0"));
    Layout raised = PhotoEdits.moved("side", PLACES, new PointMm(0, 3)).applied(layout);
    assertThat(raised.photos().get("side").x().text()).isEqualTo("10 mm * 2 - 320 mm");
    assertThat(PLACES.value(raised.photos().get("side").z())).isEqualTo(1253);
  }

  @Test
  void fadeLockAndHide() {
    Layout layout = PhotoEdits.faded("side", 0.8333).applied(put());
    layout = PhotoEdits.locked("side", true).applied(layout);
    layout = PhotoEdits.hidden("side", true).applied(layout);
    Photo side = layout.photos().get("side");
    assertThat(side.fade().text()).isEqualTo("0.83");
    assertThat(side.locked()).isTrue();
    assertThat(side.hidden()).isTrue();
    assertSoundAndReadBack(layout);
    assertThatThrownBy(() -> PhotoEdits.moved("none", PLACES, PointMm.ORIGIN).applied(put()))
        .hasMessageContaining("no photo called none");
  }

  /** Its lower edge goes on to be as long: 1200 mm for the pixels between its two corners. */
  @Test
  void shownAsTakenItIsAsLargeAlongItsLowerEdgeAndTheCornerStays() {
    List<Pixel> corners =
        List.of(
            new Pixel(500, 2500), new Pixel(3400, 2200), new Pixel(3300, 700), new Pixel(600, 400));
    Layout squared = PhotoEdits.squared("side", PLACES, corners, "1.2 m", "600 mm").applied(put());
    PointMm kept = at(squared, 500, 2500);
    Layout taken = PhotoEdits.asTaken("side", PLACES).applied(squared);
    assertSoundAndReadBack(taken);
    assertThat(at(taken, 500, 2500).distance(kept)).isLessThan(0.01);
    assertThat(at(taken, 3400, 2200).distance(kept)).isCloseTo(1200, within(0.01));
    // as it was taken, 1000 pixels are everywhere the same: 1200 mm * 1000 / 2915.476
    for (double down : new double[] {0, 2900}) {
      assertThat(at(taken, 3000, down).distance(at(taken, 2000, down)))
          .isCloseTo(411.60, within(0.01));
    }
    assertThatThrownBy(() -> PhotoEdits.asTaken("side", PLACES).applied(taken))
        .isInstanceOf(OutOfRange.class)
        .hasMessageContaining("as it was taken");
    assertThatThrownBy(
            () ->
                PhotoEdits.scaled("side", PLACES, corners.get(0), corners.get(0), "1 m")
                    .applied(squared))
        .hasMessageContaining("further apart");
    assertThatThrownBy(
            () ->
                PhotoEdits.level("side", PLACES, corners.get(0), new Pixel(500.4, 2500.4))
                    .applied(squared))
        .hasMessageContaining("further apart");
    // the two long edges meet at about 10300 pixels to the right
    assertThatThrownBy(
            () ->
                PhotoEdits.level("side", PLACES, corners.get(0), new Pixel(20000, 1500))
                    .applied(squared))
        .hasMessageContaining("beyond the horizon");
  }

  @Test
  void theHistoryTellsWhatWasDone() {
    assertThat(PhotoEdits.locked("side", true).name()).isEqualTo("lock photo side");
    assertThat(PhotoEdits.locked("side", false).name()).isEqualTo("free photo side");
    assertThat(PhotoEdits.hidden("side", true).name()).isEqualTo("hide photo side");
    assertThat(PhotoEdits.hidden("side", false).name()).isEqualTo("show photo side");
    assertThat(PhotoEdits.entry("side").group()).isEqualTo("photos");
  }
}
