package org.longlow.constraints.check.ride;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.ride.RampClearance;
import org.longlow.constraints.machine.ride.RampClearance.Least;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Ground;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * What touches first at the foot of a ramp, over its crest and over a kerb, with nobody on the
 * machine and with each crew.
 */
public final class RampFindings {

  /** Ramps, crests and kerbs. */
  public static final FindingKind RAMP =
      new FindingKind("ramp", FindingGroup.CLEARANCE, Rests.ON_MASSES);

  private static final Basis PLANE =
      Basis.model("plane geometry of both wheels on the road; springs and tyres do not give");

  /** What no ramp is as steep as: the tyre meets a wall before what is higher than that. */
  private static final double WALL_RAD = Math.PI / 2;

  /** Least of all in one stance. */
  private record Worst(Standing stance, String part, Least least) {
    PointMm inFrame() {
      return stance.ground().toFrame(least.point());
    }
  }

  /** What outlines clear. */
  private interface Measure {

    /** Returns what a corner clears, or the edge that leads to it. */
    Least at(Ring ring, int corner);

    /** Returns a height over the road from on which nothing clears less than is known. */
    default double heightMm() {
      return Double.POSITIVE_INFINITY;
    }
  }

  private final Layout layout;
  private final Wheels wheels;
  private final List<OnRoad> stances;

  private RampFindings(Layout layout, Wheels wheels, List<Standing> standings) {
    this.layout = layout;
    this.wheels = wheels;
    stances =
        standings.stream()
            .filter(s -> s.kind() == Stance.Kind.UNLADEN || s.kind() == Stance.Kind.LADEN)
            .map(OnRoad::of)
            .toList();
  }

  public static List<Finding> of(Layout layout, Wheels wheels, List<Standing> standings) {
    RampFindings all = new RampFindings(layout, wheels, standings);
    return Stream.of(all.foot(true), all.foot(false), all.crest(), all.kerb())
        .flatMap(Optional::stream)
        .toList();
  }

  private RampClearance clearance(Standing s) {
    return new RampClearance(
        s.ground().wheelbaseMm(),
        wheels.rearTyre().freeRadiusMm(),
        wheels.frontTyre().freeRadiusMm());
  }

  private Optional<Finding> foot(boolean front) {
    return worst(
            s -> {
              RampClearance c = clearance(s);
              double end = front ? s.ground().wheelbaseMm() : 0;
              return (ring, i) -> {
                double x = ring.x[i];
                if (front ? !(x > end) : !(x < end)) {
                  return Least.NONE;
                }
                return front ? c.approach(ring.corner(i)) : c.departure(ring.corner(i));
              };
            })
        .filter(w -> w.least.value() < WALL_RAD)
        .map(
            w ->
                angle(
                    w,
                    front ? "approach" : "departure",
                    front
                        ? "At the foot of a ramp " + w.part + " touches"
                        : "Backwards at the foot of a ramp " + w.part + " touches"));
  }

  private Optional<Finding> crest() {
    return worst(s -> new Crest(clearance(s)))
        .map(w -> angle(w, "crest", "Over a crest " + w.part + " touches"));
  }

  private Finding angle(Worst w, String what, String begins) {
    double limit = w.stance.places().value(layout.demands().limit(Demands.Key.RAMP));
    double deg = Math.toDegrees(w.least.value());
    double asked = Math.toDegrees(limit);
    return finding(
        w,
        what,
        Demands.Key.RAMP,
        Figures.atLeast(deg, asked, FigureUnit.DEG),
        deg <= 0
            ? Words.of(w.part + " lies in the road", when(w), ": raise it.")
            : Words.of(
                begins + " at ",
                Say.deg(deg),
                when(w),
                deg < asked
                    ? Words.of("; ", Say.deg(asked), " are asked: raise it there.")
                    : Words.of(".")));
  }

  private Optional<Finding> kerb() {
    return worst(s -> new Kerb(clearance(s)))
        .map(
            w -> {
              double limit = w.stance.places().value(layout.demands().limit(Demands.Key.KERB));
              double mm = w.least.value();
              return finding(
                  w,
                  "kerb",
                  Demands.Key.KERB,
                  Figures.atLeast(mm, limit, FigureUnit.MM),
                  mm <= 0
                      ? Words.of(w.part + " lies in the road", when(w), ": raise it.")
                      : Words.of(
                          "Over a kerb square on, " + w.part + " touches from ",
                          Say.mm(mm),
                          " of height",
                          when(w),
                          mm < limit
                              ? Words.of("; ", Words.atLeast(limit), " are asked: raise it there.")
                              : Words.of(".")));
            });
  }

  private static String when(Worst w) {
    String people = w.stance.condition().people();
    return people.isEmpty() ? " with nobody on it" : " with " + people;
  }

  private Finding finding(Worst w, String what, Demands.Key demand, Figures figures, Words text) {
    return Finding.held(
            RAMP,
            About.parts(w.part).named(what),
            Optional.of(w.stance.condition()),
            figures,
            List.of(PLANE, Sources.of(layout, demand)),
            text)
        .at(w.inFrame());
  }

  /** Returns the least over all stances and edges; empty where nothing can touch. */
  private Optional<Worst> worst(Function<Standing, Measure> measures) {
    Worst worst = null;
    for (OnRoad stance : stances) {
      Measure measure = measures.apply(stance.stance);
      for (Ring ring : stance.rings) {
        if (ring.lowest >= measure.heightMm()) {
          break; // and the others are no lower
        }
        Least least = ring.least(measure);
        if (Double.isFinite(least.value())
            && (worst == null || least.value() < worst.least.value())) {
          worst = new Worst(stance.stance, ring.part, least);
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /** Crests, once some are known only what is lower than may clear less. */
  private static final class Crest implements Measure {

    private final RampClearance clearance;
    private double bestRad = Double.POSITIVE_INFINITY;
    private double heightMm = Double.POSITIVE_INFINITY;

    Crest(RampClearance clearance) {
      this.clearance = clearance;
    }

    @Override
    public Least at(Ring ring, int i) {
      int before = Math.max(0, i - 1);
      if (ring.z[i] >= heightMm && ring.z[before] >= heightMm) {
        return Least.NONE;
      }
      Least least = clearance.crest(ring.corner(i), ring.corner(before));
      if (least.value() < bestRad) {
        bestRad = least.value();
        heightMm = clearance.heightMm(bestRad);
      }
      return least;
    }

    @Override
    public double heightMm() {
      return heightMm;
    }
  }

  /** Kerbs, none of which touches anything before it is as high. */
  private static final class Kerb implements Measure {

    private final RampClearance clearance;
    private double bestMm = Double.POSITIVE_INFINITY;

    Kerb(RampClearance clearance) {
      this.clearance = clearance;
    }

    @Override
    public Least at(Ring ring, int i) {
      if (ring.z[i] >= bestMm) {
        return Least.NONE;
      }
      Least least = clearance.kerb(ring.corner(i));
      bestMm = Math.min(bestMm, least.value());
      return least;
    }

    @Override
    public double heightMm() {
      return bestMm;
    }
  }

  /**
   * The outline of a part in the axes of the road.
   *
   * @param x of its corners, mm; the last is the first
   * @param z likewise
   * @param lowest of z
   */
  private record Ring(String part, double[] x, double[] z, double lowest) {

    Least least(Measure measure) {
      Least least = Least.NONE;
      for (int i = 0; i < x.length; i++) {
        least = least.or(measure.at(this, i));
      }
      return least;
    }

    PointMm corner(int i) {
      return new PointMm(x[i], z[i]);
    }
  }

  /**
   * All but the wheels in one stance.
   *
   * @param rings the lowest first, since what is found of those spares looking at others
   */
  private record OnRoad(Standing stance, List<Ring> rings) {

    static OnRoad of(Standing s) {
      List<Ring> rings = new ArrayList<>();
      PointMm along = s.ground().along();
      for (PartShape shape : s.shapes().values()) {
        if (shape.part() instanceof WheelPart) {
          continue;
        }
        for (int i = 0; i < shape.outline().getNumGeometries(); i++) {
          Geometry piece = shape.outline().getGeometryN(i);
          Geometry outside = piece instanceof Polygon p ? p.getExteriorRing() : piece;
          if (!outside.isEmpty()) {
            rings.add(onRoad(shape.part().name(), outside, s.ground(), along));
          }
        }
      }
      rings.sort(Comparator.comparingDouble(Ring::lowest));
      return new OnRoad(s, rings);
    }

    private static Ring onRoad(String part, Geometry line, Ground ground, PointMm along) {
      Coordinate[] corners = line.getCoordinates();
      double[] x = new double[corners.length];
      double[] z = new double[corners.length];
      double lowest = Double.POSITIVE_INFINITY;
      for (int i = 0; i < corners.length; i++) {
        double dx = corners[i].x - ground.rearContact().x();
        double dz = corners[i].y - ground.rearContact().z();
        x[i] = along.x() * dx + along.z() * dz;
        z[i] = along.x() * dz - along.z() * dx;
        lowest = Math.min(lowest, z[i]);
      }
      return new Ring(part, x, z, lowest);
    }
  }
}
