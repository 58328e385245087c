package org.longlow.constraints.shape;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.words.Units;

/** What tests ask of formers. */
final class FormersAsked {

  private FormersAsked() {}

  static FormerCut only(Part part) {
    List<FormerCut> cuts = FormerCuts.of(part, Made.PLACES);
    assertThat(cuts).hasSize(1);
    return cuts.get(0);
  }

  static String told(Part part) {
    return FormerFaults.of(part, Made.PLACES).stream()
        .map(f -> f.line().in(Units.MM))
        .collect(Collectors.joining("\n"));
  }

  static List<Coordinate> points(Geometry line) {
    List<Coordinate> points = new ArrayList<>();
    Coordinate[] ring = line.getCoordinates();
    for (int i = 0; i + 1 < ring.length; i++) {
      points.add(ring[i]);
      points.add(new Coordinate((ring[i].x + ring[i + 1].x) / 2, (ring[i].y + ring[i + 1].y) / 2));
    }
    return points;
  }

  static double off(Geometry line, double x, double z) {
    return line.getBoundary().distance(Curves.FACTORY.createPoint(new Coordinate(x, z)));
  }

  static Envelope box(Geometry g) {
    return g.getEnvelopeInternal();
  }
}
