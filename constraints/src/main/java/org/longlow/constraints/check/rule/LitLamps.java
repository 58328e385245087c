package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.law.LampItem;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Ground;
import org.longlow.rider.geom.PointMm;

/** The lamps of a machine as the law sees them: each of a pair by itself, on the road's axes. */
public final class LitLamps {

  private LitLamps() {}

  /** Returns them where pins are at {@code places} over {@code ground}. */
  public static List<LampItem> of(Layout layout, Places places, Ground ground) {
    List<LampItem> lamps = new ArrayList<>();
    for (LampPart lamp : layout.parts(LampPart.class).toList()) {
      LampItem item = item(lamp, places, ground);
      lamps.add(item);
      if (lamp.pair()) {
        lamps.add(item.mirrored());
      }
    }
    return lamps;
  }

  private static LampItem item(LampPart lamp, Places places, Ground ground) {
    PointMm at = ground.toRoad(places.pin(lamp.at()));
    return new LampItem(
        lamp.name(),
        false,
        lamp.type(),
        lamp.colour(),
        at.x() > ground.wheelbaseMm() / 2,
        at.x(),
        places.value(lamp.y()),
        at.z(),
        places.value(lamp.halfWidth()),
        places.value(lamp.halfHeight()),
        lamp.base().steered());
  }
}
