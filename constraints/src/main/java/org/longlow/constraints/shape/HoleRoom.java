package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Hole;
import org.longlow.constraints.layout.Material;
import org.longlow.constraints.layout.Opening;
import org.longlow.constraints.machine.shop.Drill;

/**
 * What stands between a hole and the edge or another hole, and what should.
 *
 * <p>Round holes and slots that a drill makes are taken for bolts: the middle of one keeps 1.5
 * diameters from an edge and 3 from the middle of another; in plywood 4 diameters and 25 mm from
 * the edge, 4 from another. All of it is common practice, from memory. Round larger openings 3 mm
 * are left, or they tear out or burn through.
 *
 * @param webMm what stands, mm; 0 or less where nothing does
 * @param needMm what should, mm
 * @param between what it stands between, in words
 * @param hole the hole it is asked of
 * @param folded whether it stands towards a fold, which pulls what is too near out of shape
 */
public record HoleRoom(double webMm, double needMm, String between, Opening hole, boolean folded) {

  private static final double LEAST_WEB_MM = 3;
  private static final double EDGE = 1.5;
  private static final double PITCH = 3;
  private static final double WOOD_EDGE = 4;
  private static final double WOOD_EDGE_MM = 25;
  private static final double WOOD_PITCH = 4;

  /** Returns all of them, of each hole its edge first. */
  public static List<HoleRoom> of(Geometry within, List<Holes.Placed> holes, String material) {
    boolean wood = Material.named(material).filter(m -> m == Material.PLYWOOD).isPresent();
    List<HoleRoom> all = new ArrayList<>();
    for (int i = 0; i < holes.size(); i++) {
      Holes.Placed placed = holes.get(i);
      Opening hole = placed.opening();
      double d = boltMm(placed);
      double edge = wood ? Math.max(WOOD_EDGE * d, WOOD_EDGE_MM) : EDGE * d;
      all.add(
          new HoleRoom(
              hole.webMm(within),
              d > 0 ? Math.max(LEAST_WEB_MM, edge - d / 2) : LEAST_WEB_MM,
              name(placed) + " and the edge",
              hole,
              false));
      for (int k = 0; k < i; k++) {
        Holes.Placed other = holes.get(k);
        double its = boltMm(other);
        double pitch = (wood ? WOOD_PITCH : PITCH) * Math.max(d, its);
        boolean bolts = d > 0 && its > 0;
        all.add(
            new HoleRoom(
                hole.webMm(other.opening()),
                bolts ? Math.max(LEAST_WEB_MM, pitch - (d + its) / 2) : LEAST_WEB_MM,
                name(other)
                    + " and "
                    + (other.index() == placed.index() ? "its image" : name(placed)),
                hole,
                false));
      }
    }
    return all;
  }

  /** Returns what stands between a hole and the heel that its sheet is folded at. */
  static HoleRoom fold(Holes.Placed hole, double webMm, double needMm) {
    return new HoleRoom(webMm, needMm, name(hole) + " and the heel", hole.opening(), true);
  }

  /** Returns the one that lacks most; empty where each has what it should. */
  public static Optional<HoleRoom> tightest(List<HoleRoom> all) {
    HoleRoom worst = null;
    for (HoleRoom r : all) {
      if (r.isTight() && (worst == null || r.lackMm() > worst.lackMm())) {
        worst = r;
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Returns the one with least between, the first of those. */
  public static HoleRoom least(List<HoleRoom> all) {
    HoleRoom least = all.get(0);
    for (HoleRoom r : all) {
      if (r.webMm() < least.webMm()) {
        least = r;
      }
    }
    return least;
  }

  /** Returns whether less stands than should. */
  public boolean isTight() {
    return webMm < needMm;
  }

  private double lackMm() {
    return needMm - webMm;
  }

  /** Returns the diameter of the bolt that a hole is taken to be for, mm; 0 for an opening. */
  private static double boltMm(Holes.Placed placed) {
    double d = 2 * placed.opening().radiusMm();
    return !(placed.hole() instanceof Hole.Cut) && d <= Drill.MOST_MM ? d : 0;
  }

  private static String name(Holes.Placed hole) {
    return "hole " + (hole.index() + 1);
  }
}
