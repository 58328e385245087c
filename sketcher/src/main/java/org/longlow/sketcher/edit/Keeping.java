package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.Dimension;
import org.longlow.constraints.layout.Dimension.Along;
import org.longlow.constraints.layout.Dimension.End;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.TieKind;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Edits that keep what was measured: as a dimension on the drawing, or as a tie. */
public final class Keeping {

  /** What has moved less since it was drawn is where it was drawn, mm. */
  private static final double STILL_MM = 0.05;

  private Keeping() {}

  /** Returns the name that a reading is kept by. */
  public static String name(Layout layout, Measuring.Reading reading) {
    String wanted =
        switch (reading.along()) {
          case STRAIGHT -> reading.nearest() ? "gap" : "length";
          case LEVEL -> "run";
          case UPRIGHT -> "height";
          case ANGLE -> "angle";
        };
    return Fresh.name(layout, "dimensions", wanted);
  }

  /**
   * Returns the edit that keeps a reading; where there is nothing to end at a pin is nailed.
   *
   * @throws OutOfRange if such a pin would move with a part that is not shown where it is drawn
   */
  public static Edit dimension(Measuring measuring, Measuring.Reading reading, MeasureView view) {
    List<Pin> nails = new ArrayList<>();
    for (MeasureSpot spot : measuring.spots()) {
      nails.add(isKept(measuring, spot, reading) ? null : nail(spot, view));
    }
    return new Edit(
        "keep dimension",
        layout -> {
          Map<String, Pin> pins = new LinkedHashMap<>();
          List<End> ends = new ArrayList<>();
          for (int i = 0; i < nails.size(); i++) {
            MeasureSpot spot = measuring.spots().get(i);
            if (nails.get(i) != null) {
              List<String> taken = new ArrayList<>(layout.pins().keySet());
              taken.addAll(pins.keySet());
              String pin = Fresh.name(taken, "mark");
              pins.put(pin, nails.get(i));
              ends.add(End.pin(pin));
            } else if (spot.end().isPresent()) {
              ends.add(spot.end().get());
            } else if (spot.isEdge()) {
              ends.add(End.edge(spot.part()));
            }
          }
          Map<String, Dimension> all = new LinkedHashMap<>(layout.dimensions());
          all.put(
              name(layout, reading), new Dimension(reading.along(), ends, Optional.empty(), ""));
          return Change.set(layout.withPins(pins), all, "dimensions");
        });
  }

  private static boolean isKept(Measuring m, MeasureSpot spot, Measuring.Reading reading) {
    return spot.end().isPresent()
        || reading.nearest() && spot.isEdge()
        || m.isGroundBelow(spot, reading);
  }

  private static Pin nail(MeasureSpot spot, MeasureView view) {
    String carrier = Pin.FRAME;
    if (spot.isEdge()) {
      carrier = Hang.offered(view.layout(), List.of(spot.part())).get(0).carrier();
      boolean moved =
          view.layout().parts().get(spot.part()).pins().stream()
              .anyMatch(p -> view.now().pin(p).distance(view.drawn().pin(p)) > STILL_MM);
      if (moved && !carrier.equals(Pin.FRAME)) {
        throw new OutOfRange(
            spot.part()
                + " is not where it is drawn in this stance, so no pin can be nailed to it; measure"
                + " in the stance as drawn, or from a pin of it");
      }
    }
    PointMm at = spot.at();
    return new Pin(PointEdits.mm(at.x()), PointEdits.mm(at.z()), true, carrier, "");
  }

  /** Returns the edit that ties what was measured as it is drawn; empty if its ends are no pins. */
  public static Optional<Edit> tie(
      Measuring measuring, Measuring.Reading reading, MeasureView view) {
    List<String> pins = new ArrayList<>();
    for (MeasureSpot spot : measuring.spots()) {
      spot.end().map(End::pin).filter(p -> !p.isEmpty()).ifPresent(pins::add);
    }
    if (pins.size() < measuring.spots().size() || pins.size() < 2) {
      return Optional.empty();
    }
    if (reading.along() == Along.ANGLE) {
      String at = pins.get(1);
      return Optional.of(
          Additions.tie(TieKind.ANGLE_BETWEEN, picked(view, at, pins.get(0), at, pins.get(2))));
    }
    TieKind kind =
        switch (reading.along()) {
          case LEVEL -> TieKind.AHEAD;
          case UPRIGHT -> TieKind.ABOVE;
          default -> TieKind.DISTANCE;
        };
    return Optional.of(Additions.tie(kind, picked(view, pins.get(0), pins.get(1))));
  }

  private static Additions.Picked picked(MeasureView view, String... pins) {
    return new Additions.Picked(List.of(pins), List.of(), view.drawn());
  }
}
