package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.util.AffineTransformation;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.rider.geom.PointMm;

/**
 * A part in place.
 *
 * @param part the part of the layout
 * @param drawn all of it in side view, mm
 * @param prisms its body, for gaps
 * @param massKg its mass, both sides together, kg
 * @param centre centre of mass in side view
 * @param centreYMm centre of mass across the machine, left positive
 * @param varying its volume and moments where its breadth varies; else they follow from its prisms
 */
public record PartShape(
    Part part,
    LateOutline drawn,
    List<Prism> prisms,
    double massKg,
    PointMm centre,
    double centreYMm,
    Optional<Bulk> varying) {

  private static final ByThing<PartShape, Bulk> BULKS =
      new ByThing<>(256, shape -> bulk(shape.prisms));

  private static final ByThing<Part, List<String>> PINS = new ByThing<>(512, Part::pins);

  public PartShape {
    prisms = List.copyOf(prisms);
  }

  /** A part whose breadth does not vary. */
  public PartShape(
      Part part,
      Geometry outline,
      List<Prism> prisms,
      double massKg,
      PointMm centre,
      double centreYMm) {
    this(part, outline, prisms, massKg, centre, centreYMm, Optional.empty());
  }

  /** Returns {@link Part#pins}, gathered once. */
  public List<String> pins() {
    return PINS.of(part);
  }

  /** A part whose outline is known. */
  public PartShape(
      Part part,
      Geometry outline,
      List<Prism> prisms,
      double massKg,
      PointMm centre,
      double centreYMm,
      Optional<Bulk> varying) {
    this(part, LateOutline.as(outline), prisms, massKg, centre, centreYMm, varying);
  }

  /** Returns all of it in side view, mm. */
  public Geometry outline() {
    return drawn.outline();
  }

  /** Returns the box round it in side view, mm; less work than its outline. */
  public Envelope box() {
    return drawn.box();
  }

  /** Returns the volume of its body and the moments of that, round bars taken as square. */
  public Bulk bulk() {
    return varying.isPresent() ? varying.get() : BULKS.of(this);
  }

  static Bulk bulk(List<Prism> prisms) {
    Bulk all = Bulk.NONE;
    for (Prism prism : prisms) {
      all = all.plus(Bulk.of(prism.outline(), prism.across()));
    }
    return all;
  }

  /** Returns the same made of other prisms. */
  PartShape of(List<Prism> others) {
    return new PartShape(part, drawn, others, massKg, centre, centreYMm, Optional.empty());
  }

  /** Returns how far it reaches to the left, mm. */
  public double leftMm() {
    return reach(1);
  }

  /** Returns how far it reaches to the right, mm, as a positive number. */
  public double rightMm() {
    return reach(-1);
  }

  private double reach(int side) {
    double most = Double.NEGATIVE_INFINITY;
    for (Prism p : prisms) {
      most = Math.max(most, side > 0 ? p.across().to() : -p.across().from());
    }
    return prisms.isEmpty() ? 0 : most;
  }

  /** Returns the same body after {@code motion}. */
  public PartShape moved(RigidMotion motion) {
    AffineTransformation move =
        AffineTransformation.rotationInstance(motion.turnRad())
            .translate(motion.shift().x(), motion.shift().z());
    Map<Geometry, Geometry> done = new IdentityHashMap<>();
    Geometry movedOutline = done.computeIfAbsent(outline(), move::transform);
    List<Prism> movedPrisms = new ArrayList<>(prisms.size());
    for (Prism prism : prisms) {
      Geometry g = done.computeIfAbsent(prism.outline(), move::transform);
      movedPrisms.add(
          new Prism(g, prism.across(), prism.pieces().stream().map(p -> p.moved(motion)).toList()));
    }
    return new PartShape(
        part,
        movedOutline,
        movedPrisms,
        massKg,
        motion.apply(centre),
        centreYMm,
        varying.map(b -> b.moved(motion)));
  }
}
