package org.longlow.sketcher.picture;

import java.util.Optional;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Steering;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.svg.drawing.Dimensions;

/**
 * Wheelbase and rake as they are set, before any spring is pressed; whoever cuts goes by these.
 *
 * @param wheelbaseMm NaN without two wheels
 * @param rakeRad NaN without a fork
 */
record AsDrawn(double wheelbaseMm, double rakeRad) {

  static final AsDrawn NOTHING = new AsDrawn(Double.NaN, Double.NaN);

  static AsDrawn of(Study study) {
    Layout layout = study.layout();
    Places places = study.placed().places();
    Optional<WheelPart> rear = layout.wheel(Part.End.REAR);
    return new AsDrawn(
        layout
            .wheel(Part.End.FRONT)
            .flatMap(f -> rear.map(r -> places.pin(f.axle()).x() - places.pin(r.axle()).x()))
            .orElse(Double.NaN),
        layout
            .parts(FrontPart.class)
            .findFirst()
            .map(f -> Steering.rakeRad(places.pin(f.top()), places.pin(f.bottom())))
            .orElse(Double.NaN));
  }

  static String degrees(double rad) {
    return Dimensions.figure(Math.toDegrees(rad)) + "°";
  }
}
