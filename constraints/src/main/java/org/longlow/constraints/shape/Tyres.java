package org.longlow.constraints.shape;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;

/** Tyres of wheels: measured figures where the layout gives them, else those of the size. */
public final class Tyres {

  /** Sizes as read, by their text: every stance and turn asks for the same few. */
  private static final Memo<String, TyreSize.Reading> READ = new Memo<>(32, TyreSizeReader::read);

  private Tyres() {}

  /**
   * Returns the tyre of {@code wheel}.
   *
   * @throws IllegalArgumentException if it has neither a readable size nor a measured radius
   */
  public static Tyre of(WheelPart wheel, Places places) {
    Tyre tyre;
    if (wheel.tyre().isEmpty()) {
      double radius = need(wheel, wheel.radius(), "radius", places);
      double width = need(wheel, wheel.width(), "width", places);
      tyre = new Tyre(radius, width, width / 2, false, true);
    } else {
      TyreSize.Reading reading = READ.of(wheel.tyre());
      if (reading.size() == null) {
        throw new IllegalArgumentException(
            "tyre of " + wheel.name() + ": " + String.join("; ", reading.faults()));
      }
      tyre = reading.size().tyre();
      if (wheel.radius().isPresent()) {
        tyre = tyre.withMeasuredRadiusMm(places.value(wheel.radius().get()));
      }
      if (wheel.width().isPresent()) {
        double width = places.value(wheel.width().get());
        tyre = tyre.withMeasuredWidthMm(width).withMeasuredSectionRadiusMm(width / 2);
      }
    }
    return wheel.crown().isPresent()
        ? tyre.withMeasuredSectionRadiusMm(places.value(wheel.crown().get()))
        : tyre;
  }

  private static double need(WheelPart wheel, Optional<Formula> value, String what, Places places) {
    return value
        .map(places::value)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "wheel " + wheel.name() + " has no tyre size and no " + what));
  }
}
