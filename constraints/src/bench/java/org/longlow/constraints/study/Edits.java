package org.longlow.constraints.study;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Pin;

/** Edits of a shipped-like layout: 56 parts, 71 pins, two people on two seats, a section. */
final class Edits {

  /** Room for knees beside the hood, for everybody on every seat. */
  static final String KNEE_ROOM =
      "\"kneeRoom\": {\"limit\": \"gap\", \"parts\": [\"hoodSides\", \"rider\"], \"from\": \"12"
          + " mm\"},";

  private static final String LIMITS = "\"limits\": {";

  private final Layout layout;
  private int turn;

  Edits() {
    this("");
  }

  /**
   * @param limit a limit more, as the file has them, or nothing
   */
  Edits(String limit) {
    Path file = Path.of("src/test/resources/org/longlow/constraints/machines/tourer.json");
    ReadResult read =
        LayoutReader.read(text(file).replace(LIMITS, LIMITS + limit), file.getParent());
    if (!(read instanceof ReadResult.Read good)) {
      throw new IllegalStateException("run in the folder constraints: " + read);
    }
    layout = good.layout();
  }

  private static String text(Path file) {
    try {
      return Files.readString(file);
    } catch (IOException e) {
      throw new UncheckedIOException("run in the folder constraints", e);
    }
  }

  /** Never the same twice within any run of interest. */
  private double swing() {
    turn++;
    return 3 * Math.sin(0.7 * turn);
  }

  /** The seat slides: what hangs on its pins moves, and both people. */
  Layout slideSeat() {
    return slide("panRear");
  }

  /** The end of the exhaust slides: people stay where they are, springs sink a little otherwise. */
  Layout slideExhaust() {
    return slide("exTail");
  }

  private Layout slide(String name) {
    Pin pin = layout.pins().get(name);
    double x = pin.x().evaluate(n -> Double.NaN) + swing();
    return layout.withPins(Map.of(name, pin.at(Formula.of(x, Unit.MM), pin.z())));
  }

  /** The wheelbase changes: nearly everything is somewhere else. */
  Layout stretch() {
    Measure wheelbase = layout.measures().get("wheelbase");
    double mm = wheelbase.is().evaluate(n -> Double.NaN) + swing();
    return layout.withMeasure("wheelbase", wheelbase.withIs(Formula.of(mm, Unit.MM)));
  }
}
