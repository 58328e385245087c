package org.longlow.constraints.stand;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Tyres;
import org.longlow.rider.geom.PointMm;

/**
 * The wheels of a machine and how they move against the frame.
 *
 * @param layout the layout
 * @param drawn places as drawn
 * @param front front wheel, or null
 * @param rear rear wheel, or null
 * @param fork the front system, or null
 * @param arm the swingarm, or null
 */
public record Suspension(
    Layout layout,
    Places drawn,
    Part.Wheel front,
    Part.Wheel rear,
    Part.Front fork,
    Part.Swingarm arm) {

  /** Travel limits and spring of one wheel, mm, N/mm, N; bump positive. */
  public record Travel(double bumpMm, double droopMm, double rateNPerMm, double preloadN) {

    /** A wheel that does not move against the frame. */
    public static final Travel RIGID = new Travel(0, 0, Double.NaN, 0);

    /** Returns the travel at which the spring carries {@code loadN}, within the stops. */
    public double at(double loadN) {
      if (!(rateNPerMm > 0)) {
        return 0;
      }
      double t = (loadN - preloadN) / rateNPerMm - droopMm;
      return Math.max(-droopMm, Math.min(bumpMm, t));
    }
  }

  /** Returns the suspension of {@code layout}. */
  public static Suspension of(Layout layout, Places drawn) {
    Part.Wheel front = null;
    Part.Wheel rear = null;
    Part.Front fork = null;
    Part.Swingarm arm = null;
    for (Part part : layout.parts().values()) {
      if (part instanceof Part.Wheel w && w.end() == Part.End.FRONT) {
        front = w;
      } else if (part instanceof Part.Wheel w) {
        rear = w;
      } else if (part instanceof Part.Front f) {
        fork = f;
      } else if (part instanceof Part.Swingarm s) {
        arm = s;
      }
    }
    return new Suspension(layout, drawn, front, rear, fork, arm);
  }

  /** Returns whether there are two wheels to stand on. */
  public boolean stands() {
    return front != null && rear != null;
  }

  public double frontRadiusMm() {
    return Tyres.of(front, drawn).freeRadiusMm();
  }

  public double rearRadiusMm() {
    return Tyres.of(rear, drawn).freeRadiusMm();
  }

  public Travel frontTravel() {
    return fork == null
        ? Travel.RIGID
        : travel(fork.bump(), fork.droop(), fork.rate(), fork.preload());
  }

  public Travel rearTravel() {
    return arm == null ? Travel.RIGID : travel(arm.bump(), arm.droop(), arm.rate(), arm.preload());
  }

  private Travel travel(
      Formula bump, Formula droop, Optional<Formula> rate, Optional<Formula> preload) {
    return new Travel(
        drawn.value(bump),
        drawn.value(droop),
        rate.map(drawn::value).orElse(Double.NaN),
        preload.map(drawn::value).orElse(0.0));
  }

  /** Returns places with the wheels moved by these travels, bump positive, mm. */
  public Places moved(double frontMm, double rearMm) {
    Map<String, PointMm> pins = new LinkedHashMap<>(drawn.pins());
    if (fork != null && frontMm != 0) {
      WheelPath path = WheelPath.front(fork, drawn);
      move(pins, Pin.FRONT_WHEEL, fork.axle(), path, frontMm);
    }
    if (arm != null && rearMm != 0) {
      WheelPath path = WheelPath.rear(arm, drawn);
      move(pins, Pin.REAR_WHEEL, arm.axle(), path, rearMm);
    }
    return drawn.withPins(pins);
  }

  private void move(
      Map<String, PointMm> pins, String carrier, String axle, WheelPath path, double travelMm) {
    layout
        .pins()
        .forEach(
            (name, pin) -> {
              if (name.equals(axle) || pin.with().equals(carrier)) {
                pins.put(name, path.moved(drawn.pin(name), travelMm));
              }
            });
  }

  /** Returns the road under the wheels in {@code places}. */
  public Ground ground(Places places) {
    return Ground.under(
        places.pin(rear.axle()), rearRadiusMm(), places.pin(front.axle()), frontRadiusMm());
  }
}
