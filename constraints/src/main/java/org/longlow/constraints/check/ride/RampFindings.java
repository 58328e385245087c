package org.longlow.constraints.check.ride;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
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

  /** What one edge of an outline clears. */
  private interface Measure extends BiFunction<PointMm, PointMm, Least> {}

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
              return (a, b) -> front ? c.approach(a) : c.departure(a);
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
    return worst(
            s -> {
              RampClearance c = clearance(s);
              double[] best = {Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY};
              return (a, b) -> {
                if (a.z() >= best[1] && b.z() >= best[1]) {
                  return Least.NONE; // so high up nothing clears less
                }
                Least least = c.crest(a, b);
                if (least.value() < best[0]) {
                  best[0] = least.value();
                  best[1] = c.heightMm(best[0]);
                }
                return least;
              };
            })
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
    return worst(
            s -> {
              RampClearance c = clearance(s);
              double[] best = {Double.POSITIVE_INFINITY};
              return (a, b) -> {
                if (a.z() >= best[0]) {
                  return Least.NONE; // no kerb touches before it is as high
                }
                Least least = c.kerb(a);
                best[0] = Math.min(best[0], least.value());
                return least;
              };
            })
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
        Least least = ring.least(measure);
        if (Double.isFinite(least.value())
            && (worst == null || least.value() < worst.least.value())) {
          worst = new Worst(stance.stance, ring.part, least);
        }
      }
    }
    return Optional.ofNullable(worst);
  }

  /**
   * The outline of a part in the axes of the road.
   *
   * @param corners closed
   */
  private record Ring(String part, List<PointMm> corners) {

    Least least(Measure measure) {
      Least least = Least.NONE;
      PointMm before = corners.get(0);
      for (PointMm at : corners) {
        least = least.or(measure.apply(at, before));
        before = at;
      }
      return least;
    }

    double lowest() {
      return corners.stream().mapToDouble(PointMm::z).min().orElseThrow();
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
            rings.add(new Ring(shape.part().name(), onRoad(outside, s.ground(), along)));
          }
        }
      }
      rings.sort(Comparator.comparingDouble(Ring::lowest));
      return new OnRoad(s, rings);
    }

    private static List<PointMm> onRoad(Geometry line, Ground ground, PointMm along) {
      List<PointMm> corners = new ArrayList<>();
      for (Coordinate c : line.getCoordinates()) {
        double x = c.x - ground.rearContact().x();
        double z = c.y - ground.rearContact().z();
        corners.add(new PointMm(along.x() * x + along.z() * z, along.x() * z - along.z() * x));
      }
      return corners;
    }
  }
}
