package org.longlow.sketcher.edit;

import java.util.LinkedHashMap;
import java.util.Map;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** What a layout says of itself before anything is solved. */
final class Drawn {

  private Drawn() {}

  /** Returns the pins where they are written, free measures at what they start with. */
  static Places places(Layout layout) {
    Measures measures = Measures.of(layout);
    Places measured = new Places(Map.of(), measures.values(measures.start()::get));
    Map<String, PointMm> pins = new LinkedHashMap<>();
    layout
        .pins()
        .forEach(
            (name, pin) ->
                pins.put(name, new PointMm(measured.value(pin.x()), measured.value(pin.z()))));
    return measured.withPins(pins);
  }
}
