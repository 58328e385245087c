package org.longlow.sketcher.cli;

import java.nio.file.Path;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Variant;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.app.MachineState;
import picocli.CommandLine.Option;

/** Which state of the machine is meant; as planned unless said. */
final class VariantOption {

  @Option(
      names = "--variant",
      paramLabel = "NAME",
      description = "The machine as one of its variants, instead of as planned.")
  private String variant;

  @Option(
      names = "--as-built",
      description = "The machine as it was built, by what was measured; --variant as-built alike.")
  private boolean asBuilt;

  boolean isAsked() {
    return asBuilt || variant != null;
  }

  /** Returns the name of the state asked for; empty as planned. */
  String name() {
    return asBuilt ? Variant.AS_BUILT : variant == null ? "" : variant;
  }

  /**
   * Returns the machine in the state asked for.
   *
   * @throws Refusal if the layout has no such state, or no machine that could stand on two wheels
   */
  MachineState of(Layout layout, Path file) {
    if (asBuilt && variant != null && !variant.equals(Variant.AS_BUILT)) {
      throw new Refusal("--as-built and --variant " + variant + " are two states; give one");
    }
    if (variant != null && variant.isBlank()) {
      throw new Refusal("--variant names no variant; write its name, or leave it out");
    }
    String name = name();
    try {
      return MachineState.of(layout, name, placed -> Loading.study(placed, file));
    } catch (OutOfRange e) {
      String state =
          asBuilt ? "--as-built: " : variant == null ? "" : "--variant " + variant + ": ";
      throw new Refusal(file + ": " + state + e.getMessage());
    }
  }
}
