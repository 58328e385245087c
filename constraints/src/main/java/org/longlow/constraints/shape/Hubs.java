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

  /** Returns a body about an axle, as a cylinder. */
  public static Prism of(HubBody body, PointMm axle, Places places) {
    double radius = places.value(body.radius());
    double half = places.value(body.width()) / 2;
    double y = places.value(body.y());
    return new Prism(
        Curves.disc(axle, radius),
        new Interval(y - half, y + half),
        List.of(Rings.cylinder(axle, radius, y - half, y + half)));
  }

  /** Returns all that turns about the axle of a wheel. */
  public static List<Prism> of(WheelPart wheel, Places places) {
    PointMm axle = places.pin(wheel.axle());
    return turning(wheel).stream().map(body -> of(body, axle, places)).toList();
  }
}
