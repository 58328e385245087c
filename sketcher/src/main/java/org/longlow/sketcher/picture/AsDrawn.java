package org.longlow.sketcher.picture;

import java.util.EnumMap;
import java.util.Map;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;
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
    Map<Part.End, PointMm> axles = new EnumMap<>(Part.End.class);
    layout.parts(WheelPart.class).forEach(w -> axles.put(w.end(), places.pin(w.axle())));
    boolean both = axles.size() == Part.End.values().length;
    return new AsDrawn(
        both ? axles.get(Part.End.FRONT).x() - axles.get(Part.End.REAR).x() : Double.NaN,
        layout
            .parts(FrontPart.class)
            .findFirst()
            .map(f -> rake(places.pin(f.top()), places.pin(f.bottom())))
            .orElse(Double.NaN));
  }

  static double rake(PointMm top, PointMm bottom) {
    PointMm axis = top.minus(bottom);
    return Math.atan2(-axis.x(), axis.z());
  }

  static String degrees(double rad) {
    return Dimensions.figure(Math.toDegrees(rad)) + "°";
  }
}
