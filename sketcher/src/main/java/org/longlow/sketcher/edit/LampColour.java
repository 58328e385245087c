package org.longlow.sketcher.edit;

import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.law.LampNeeds;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** The colour of a new lamp: the usual one of its kind, or what is asked where it is put. */
final class LampColour {

  private LampColour() {}

  /** Returns the axle at an end, if there is a wheel. */
  static Optional<PointMm> axle(Layout layout, Places places, Part.End end) {
    return layout.wheel(end).map(w -> places.pin(w.axle()));
  }

  /** Returns whether a place is in the front half of the wheelbase, if there is one. */
  static Optional<Boolean> ahead(Layout layout, Places places, PointMm at) {
    Optional<PointMm> rear = axle(layout, places, Part.End.REAR);
    return axle(layout, places, Part.End.FRONT)
        .flatMap(front -> rear.map(r -> at.x() > (front.x() + r.x()) / 2));
  }

  /** Returns the layout where a part, if it is a lamp, has a colour that the rules allow there. */
  static Layout fitting(Layout layout, String part, PointMm at) {
    if (!(layout.parts().get(part) instanceof LampPart lamp)) {
      return layout;
    }
    return ahead(layout, Drawn.places(layout), at)
        .map(ahead -> LampNeeds.colour(layout.demands().rules(), lamp.type(), ahead, lamp.colour()))
        .filter(colour -> colour != lamp.colour())
        .map(colour -> Change.set(layout, colour, "parts", part, "colour"))
        .orElse(layout);
  }
}
