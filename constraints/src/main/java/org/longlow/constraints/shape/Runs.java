package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Tie;
import org.longlow.constraints.layout.TieKind;
import org.longlow.constraints.machine.chassis.BeltRun;
import org.longlow.rider.geom.PointMm;

/** Chains and belts, which are ties of belt length, as they run over the wheels of a layout. */
public final class Runs {

  /** Half as high as the plates of the highest chain usual on a motorcycle, mm; judgement. */
  public static final double HALF_HIGH_MM = 8;

  private Runs() {}

  /** Returns those of a layout, by name. */
  public static List<Map.Entry<String, Tie>> of(Layout layout) {
    return layout.ties().entrySet().stream()
        .filter(e -> e.getValue().kind() == TieKind.BELT_LENGTH)
        .toList();
  }

  /** Returns one where its pins are. */
  public static BeltRun of(Tie tie, Places places) {
    return of(tie, places, places::pin);
  }

  /** Returns one with its pins elsewhere. */
  public static BeltRun of(Tie tie, Places places, Function<String, PointMm> pins) {
    List<BeltRun.Wheel> wheels = new ArrayList<>();
    for (int i = 0; i < tie.pins().size(); i++) {
      String pin = tie.pins().get(i);
      wheels.add(
          new BeltRun.Wheel(
              pins.apply(pin), places.value(tie.radii().get(i)), tie.run().back().contains(pin)));
    }
    return new BeltRun(wheels);
  }

  /** Returns the pins of what drives and is driven, not of what only guides. */
  public static List<String> sprockets(Tie tie) {
    return tie.pins().stream().filter(p -> !tie.run().idlers().contains(p)).toList();
  }

  /** Returns the first of its idlers that it does not touch as it runs; empty if it touches all. */
  public static Optional<String> missed(Tie tie, BeltRun run) {
    List<Double> wraps = run.wrapsRad();
    return tie.run().idlers().stream()
        .filter(p -> !BeltRun.touches(wraps.get(tie.pins().indexOf(p))))
        .findFirst();
  }

  /** Returns how far it reaches across the machine; empty where that is not said. */
  public static Optional<Interval> across(Tie tie, Places places) {
    if (tie.run().across().isEmpty()) {
      return Optional.empty();
    }
    double half = places.value(tie.run().width().orElseThrow()) / 2;
    double[] all = tie.run().across().stream().mapToDouble(places::value).sorted().toArray();
    return Optional.of(new Interval(all[0] - half, all[all.length - 1] + half));
  }

  /** Returns the outline of a piece of it, as high as its plates. */
  public static Geometry outline(PointMm from, PointMm to) {
    PointMm up = PointMm.unit(to.minus(from).angleRad()).left().times(HALF_HIGH_MM);
    return Curves.polygon(List.of(from.minus(up), to.minus(up), to.plus(up), from.plus(up)));
  }
}
