package org.longlow.sketcher.cli;

import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.Locale;
import java.util.stream.Stream;
import org.longlow.constraints.json.Fault;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.study.Study;

/** Reads layout files for commands. */
final class Loading {

  /** Axles nearer than this carry nothing; two wheels would lie in each other, mm. */
  private static final double LEAST_WHEELBASE_MM = 100;

  private Loading() {}

  /**
   * Returns the layout in {@code file}, after saying on {@code err} what in it has no effect.
   *
   * @throws Refusal with one line a fault if the file is not a sound layout
   */
  static Layout layout(Path file, PrintWriter err) {
    ReadResult.Read read = read(file);
    read.notes().forEach(n -> err.println("longlow: " + file + ": note: " + n));
    err.flush();
    return read.layout();
  }

  /**
   * Returns the layout in {@code file}.
   *
   * @throws Refusal with one line a fault if the file is not a sound layout
   */
  static Layout layout(Path file) {
    return read(file).layout();
  }

  /**
   * Returns the study of {@code layout}.
   *
   * @throws Refusal if its ties leave no machine that could stand on two wheels
   */
  static Study study(Layout layout) {
    Placed placed = Placer.place(layout);
    double[] axles =
        Stream.of(Part.End.REAR, Part.End.FRONT)
            .map(end -> axle(layout, end))
            .mapToDouble(axle -> placed.places().pin(axle).x())
            .toArray();
    if (axles[1] - axles[0] < LEAST_WHEELBASE_MM) {
      throw new Refusal(
          String.format(
              Locale.ROOT,
              "the front axle, %s, comes %.1f mm ahead of the rear axle, %s, and at least %.0f mm are"
                  + " needed; look where they are drawn and at their ties",
              axle(layout, Part.End.FRONT),
              axles[1] - axles[0],
              axle(layout, Part.End.REAR),
              LEAST_WHEELBASE_MM));
    }
    return Study.of(placed);
  }

  private static String axle(Layout layout, Part.End end) {
    return layout.parts().values().stream()
        .filter(p -> p instanceof Part.Wheel w && w.end() == end)
        .map(p -> ((Part.Wheel) p).axle())
        .findFirst()
        .orElseThrow();
  }

  private static ReadResult.Read read(Path file) {
    ReadResult result = LayoutReader.read(file);
    if (result instanceof ReadResult.Refused refused) {
      throw new Refusal(
          refused.faults().stream().map(Fault::line).map(l -> file + ": " + l).toList());
    }
    return (ReadResult.Read) result;
  }
}
