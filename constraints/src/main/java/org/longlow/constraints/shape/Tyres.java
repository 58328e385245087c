package org.longlow.constraints.shape;

import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.chassis.TyreSize;
import org.longlow.constraints.machine.chassis.TyreSizeReader;
import org.longlow.rider.geom.OutOfRange;

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
    Optional<Tyre> size = size(wheel);
    double radius = value(wheel, wheel.radius(), size.map(Tyre::freeRadiusMm), "radius", places);
    double width = value(wheel, wheel.width(), size.map(Tyre::widthMm), "width", places);
    if (size.isPresent()
        && wheel.radius().isEmpty()
        && wheel.width().isEmpty()
        && wheel.crown().isEmpty()) {
      return size.get();
    }
    double section =
        wheel
            .crown()
            .map(places::value)
            .orElse(
                size.isPresent() && wheel.width().isEmpty()
                    ? size.get().sectionRadiusMm()
                    : width / 2);
    try {
      boolean near = size.map(Tyre::nearEquivalent).orElse(false);
      return new Tyre(radius, width, section, near);
    } catch (OutOfRange e) {
      throw new OutOfRange(
          "wheel "
              + wheel.name()
              + ": "
              + e.getMessage()
              + "; mend its \"radius\", or \"width\" or \"crown\" of its tyre");
    }
  }

  /** Returns a size as read. */
  static TyreSize.Reading read(String size) {
    return READ.of(size);
  }

  private static Optional<Tyre> size(WheelPart wheel) {
    if (wheel.tyre().isEmpty()) {
      return Optional.empty();
    }
    TyreSize.Reading reading = read(wheel.tyre());
    if (reading.size() == null) {
      throw new IllegalArgumentException(
          "tyre of " + wheel.name() + ": " + String.join("; ", reading.faults()));
    }
    return Optional.of(reading.size().tyre());
  }

  private static double value(
      WheelPart wheel,
      Optional<Formula> said,
      Optional<Double> ofSize,
      String what,
      Places places) {
    return said.map(places::value)
        .or(() -> ofSize)
        .orElseThrow(
            () ->
                new IllegalArgumentException(
                    "wheel " + wheel.name() + " has no tyre size and no " + what));
  }
}
