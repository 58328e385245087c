package org.longlow.constraints.shape;

import java.util.List;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Part;
import org.longlow.rider.geom.PointMm;

/**
 * A part in place.
 *
 * @param part the part of the layout
 * @param outline all of it in side view, mm
 * @param prisms its body, for gaps
 * @param massKg its mass, both sides together, kg
 * @param centre centre of mass in side view
 * @param centreYMm centre of mass across the machine, left positive
 */
public record PartShape(
    Part part,
    Geometry outline,
    List<Prism> prisms,
    double massKg,
    PointMm centre,
    double centreYMm) {
  public PartShape {
    prisms = List.copyOf(prisms);
  }

  /** Returns how far it reaches to the left, mm. */
  public double leftMm() {
    return prisms.stream().mapToDouble(p -> p.across().to()).max().orElse(0);
  }

  /** Returns how far it reaches to the right, mm, as a positive number. */
  public double rightMm() {
    return prisms.stream().mapToDouble(p -> -p.across().from()).max().orElse(0);
  }
}
