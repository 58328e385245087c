package org.longlow.constraints.shape;

import java.util.List;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.space.Rings;
import org.longlow.rider.geom.PointMm;

/** The bodies of what sits about an axle and turns with its wheel. */
public final class Hubs {

  private Hubs() {}

  /** Returns what of a wheel is round all about its axle; a calliper is at one side of that. */
  public static List<HubBody> turning(WheelPart wheel) {
    return wheel.inside().stream().filter(body -> body.what().turns()).toList();
  }

  /** Returns where a body stands across the machine. */
  public static Interval across(HubBody body, Places places) {
    double half = places.value(body.width()) / 2;
    double y = places.value(body.y());
    return new Interval(y - half, y + half);
  }

  /** Returns a body about an axle, as a cylinder. */
  public static Prism of(PointMm axle, double radiusMm, Interval across) {
    return new Prism(
        Curves.disc(axle, radiusMm),
        across,
        List.of(Rings.cylinder(axle, radiusMm, across.from(), across.to())));
  }

  /** Returns all that turns about the axle of a wheel. */
  public static List<Prism> of(WheelPart wheel, Places places) {
    PointMm axle = places.pin(wheel.axle());
    return turning(wheel).stream()
        .map(body -> of(axle, places.value(body.radius()), across(body, places)))
        .toList();
  }
}
