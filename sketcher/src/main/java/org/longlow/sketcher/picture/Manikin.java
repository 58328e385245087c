package org.longlow.sketcher.picture;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Flesh;
import org.longlow.rider.pose.Posture;
import org.longlow.svg.drawing.Planar;

/**
 * A seated person as something to draw, in the axes of the frame: the same flesh that gaps are
 * measured to.
 *
 * @param name whose
 * @param seat which seat
 * @param joints where the joints are
 * @param body their sizes, and what they wear
 * @param flesh outline of each part, convex; the head's is the helmet's where one is worn
 * @param far the same body with the limbs that are farther from who looks; empty where they lie
 *     behind the near ones
 */
record Manikin(
    String name,
    String seat,
    Posture joints,
    Body body,
    Map<Figure.Part, Polygon> flesh,
    Optional<Manikin> far) {

  Manikin {
    flesh = Map.copyOf(flesh);
  }

  static Manikin of(String name, String seat, Body body, Posture posture) {
    Figure figure = new Figure(body, posture);
    Map<Figure.Part, Polygon> flesh = new EnumMap<>(Figure.Part.class);
    for (Figure.Part part : Figure.Part.values()) {
      flesh.put(part, figure.part(part).outline());
    }
    return new Manikin(name, seat, posture, body, flesh, Optional.empty());
  }

  /** Returns the same with far limbs of their own. */
  Manikin before(Manikin other) {
    return new Manikin(name, seat, joints, body, flesh, Optional.of(other));
  }

  Polygon flesh(Figure.Part part) {
    return flesh.get(part);
  }

  /** Returns the outlines of everything but the arms, lying over each other. */
  Geometry withoutArms() {
    return Planar.FACTORY.createMultiPolygon(
        Stream.concat(
                flesh.entrySet().stream()
                    .filter(
                        e ->
                            e.getKey() != Figure.Part.UPPER_ARM
                                && e.getKey() != Figure.Part.FOREARM)
                    .map(Map.Entry::getValue),
                rucksack())
            .toArray(Polygon[]::new));
  }

  private Stream<Polygon> rucksack() {
    return new Figure(body, joints).rucksack().map(Flesh::outline).stream();
  }

  /** Returns one smooth outline of all of it. */
  Geometry silhouette() {
    return Figure.silhouette(
        Stream.concat(flesh.values().stream(), rucksack())
            .map(outline -> new Flesh("", outline, 0, 0))
            .toList());
  }

  boolean helmet() {
    return body.gear().helmetMm() > 0;
  }

  boolean boots() {
    return body.gear().bootLengthMm() > 0;
  }

  /** Returns half the head's length, helmet included, mm. */
  double headRadiusMm() {
    return body.head().radiusMm();
  }

  /** Returns the unit vector the face looks along. */
  PointMm gaze() {
    return PointMm.unit(joints.angles().headPitch());
  }
}
