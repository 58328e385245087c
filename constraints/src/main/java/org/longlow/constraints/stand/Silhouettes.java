package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.PartShape;

/** What parts and people together hide of whoever looks at them from one side. */
public final class Silhouettes {

  private Silhouettes() {}

  /**
   * Returns area and centroid of all together, on the page and the road's axes; empty where nothing
   * is seen.
   */
  public static Optional<Silhouette> of(
      Collection<PartShape> shapes, Rider rider, Ground ground, SeenFrom from) {
    List<Coordinate[]> outlines = new ArrayList<>();
    Stream.concat(
            shapes.stream().flatMap(s -> s.prisms().stream()),
            rider.seated().stream().flatMap(s -> s.body().stream()))
        .flatMap(prism -> prism.convex().stream())
        .forEach(piece -> outlines.add(from.corners(piece, ground)));
    return JointArea.of(outlines);
  }
}
