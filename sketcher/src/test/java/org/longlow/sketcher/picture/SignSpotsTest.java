package org.longlow.sketcher.picture;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;

/** Numbered signs lie neither on one another nor on words: as found on finished pictures. */
class SignSpotsTest {

  private static final GeometryFactory JTS = new GeometryFactory();

  static Stream<Study> machines() {
    return Shipped.sample().map(Shipped::study);
  }

  /** A sign or a word on a picture, at its size on paper. */
  private record Thing(String what, Geometry covers) {}

  @ParameterizedTest
  @MethodSource("machines")
  void noSignOfAShippedMachineCoversAnotherOrAName(Study study) {
    // at 1:10 as in a report, larger and smaller as in windows; those told of, and all there are
    for (double denominator : List.of(8.0, 10.0, 14.0)) {
      for (boolean all : List.of(true, false)) {
        PictureOptions options =
            PictureOptions.PLAIN
                .withNames(true)
                .withDimensions(denominator != 10)
                .withDenominator(denominator)
                .withFindings(marked(study, all));
        free(ElevationPicture.of(study, options), denominator);
      }
    }
  }

  private static Map<String, Integer> marked(Study study, boolean all) {
    Map<String, Integer> ids = new LinkedHashMap<>();
    study.findings().stream()
        .filter(f -> f.where().isPresent())
        .filter(f -> all || f.verdict() == Verdict.FAIL || f.verdict() == Verdict.CAUTION)
        .map(Finding::id)
        .forEach(id -> ids.putIfAbsent(id, ids.size() + 1));
    assertThat(ids).isNotEmpty();
    return ids;
  }

  private static void free(Drawing drawing, double denominator) {
    List<Thing> signs = new ArrayList<>();
    List<Thing> words = new ArrayList<>();
    for (Layer layer : drawing.layers()) {
      boolean findings = layer.id().equals(PictureLayer.FINDINGS.id());
      Map<String, Geometry> largest = new LinkedHashMap<>();
      for (Mark mark : layer.marks()) {
        if (mark instanceof Mark.Words w && !findings) {
          words.add(new Thing(w.text(), JTS.toGeometry(Labels.box(w, denominator))));
        } else if (mark instanceof Mark.Shape s && findings) {
          largest.merge(s.subject(), s.geometry(), (a, b) -> a.getArea() > b.getArea() ? a : b);
        }
      }
      largest.forEach((subject, g) -> signs.add(new Thing(subject, g)));
    }
    assertThat(signs).isNotEmpty();
    for (int i = 0; i < signs.size(); i++) {
      Thing sign = signs.get(i);
      for (Thing other : signs.subList(i + 1, signs.size())) {
        assertThat(sign.covers().intersects(other.covers()))
            .as(sign.what() + " on " + other.what() + ", 1:" + denominator)
            .isFalse();
      }
      for (Thing word : words) {
        assertThat(sign.covers().intersects(word.covers()))
            .as(sign.what() + " on " + word.what() + ", 1:" + denominator)
            .isFalse();
      }
    }
  }

  @Test
  void signsOfOnePlaceAndOfManyKeepApartAndTheirLinesToo() {
    SplittableRandom random = new SplittableRandom(20261129);
    Envelope box = new Envelope(-2, 2, -2, 2);
    for (int round = 0; round < 50; round++) {
      List<SignSpots.Sign> signs = new ArrayList<>();
      List<Envelope> words = new ArrayList<>();
      for (int i = 0; i < 12; i++) {
        // every third on the spot of the last one, as lamps at the tail are
        PointMm at =
            i % 3 == 2
                ? signs.get(i - 1).at()
                : new PointMm(random.nextDouble(60), random.nextDouble(40));
        signs.add(new SignSpots.Sign(at, box));
        double x = random.nextDouble(60);
        double z = random.nextDouble(40);
        words.add(new Envelope(x, x + 8, z, z + 3));
      }
      List<PointMm> places = SignSpots.places(signs, words, 6);
      List<Envelope> taken = new ArrayList<>(words);
      for (int i = 0; i < places.size(); i++) {
        PointMm p = places.get(i);
        Envelope covers = new Envelope(p.x() - 2, p.x() + 2, p.z() - 2, p.z() + 2);
        assertThat(Labels.free(covers, taken)).isTrue();
        for (SignSpots.Sign sign : signs) {
          assertThat(covers.contains(sign.at().x(), sign.at().z())).isFalse();
        }
        taken.add(covers);
      }
    }
  }

  @Test
  void whereThereIsNoRoomTheNearestPlaceIsTaken() {
    SignSpots.Sign sign = new SignSpots.Sign(PointMm.ORIGIN, new Envelope(-1, 1, -1, 1));
    PointMm only =
        SignSpots.places(List.of(sign), List.of(new Envelope(-999, 999, -999, 999)), 5).get(0);
    assertThat(only.length()).isCloseTo(5, org.assertj.core.data.Offset.offset(1e-9));
  }
}
