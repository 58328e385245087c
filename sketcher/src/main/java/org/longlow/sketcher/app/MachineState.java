package org.longlow.sketcher.app;

import java.util.Optional;
import org.longlow.constraints.built.BuiltMachine;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.document.Varied;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Variant;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;

/**
 * A machine in one of its states: as planned, as one of its variants, or as built.
 *
 * @param study everything about it in that state
 * @param built what was measured on it, where it is as built
 */
public record MachineState(Study study, Optional<BuiltMachine> built) {

  /** How a layout is solved, and refused where no machine comes of it. */
  @FunctionalInterface
  public interface Studies {
    Study of(Placed placed);
  }

  /**
   * Returns a state of a layout; its title says which, before what follows its first comma.
   *
   * @param name of a variant, {@value Variant#AS_BUILT}, or empty for the machine as planned
   * @throws OutOfRange if the layout has no such state; the message says which it has
   */
  public static MachineState of(Layout layout, String name, Studies studies) {
    if (name.isEmpty()) {
      return new MachineState(studies.of(Placer.place(layout)), Optional.empty());
    }
    if (!name.equals(Variant.AS_BUILT)) {
      Layout varied = titled(Varied.named(layout, name), "variant " + name);
      return new MachineState(studies.of(Placer.place(varied)), Optional.empty());
    }
    if (layout.asBuilt().isNothing()) {
      throw new OutOfRange(
          "nothing was measured yet; say what in \"asBuilt\", such as {\"masses\": {\"NAME\": \"12"
              + " kg\"}}");
    }
    BuiltMachine built =
        BuiltMachine.of(studies.of(Placer.place(titled(layout, "as built"))), studies::of);
    return new MachineState(built.built(), Optional.of(built));
  }

  private static Layout titled(Layout layout, String state) {
    String title = layout.title().isEmpty() ? layout.name() : layout.title();
    int comma = title.indexOf(',');
    String told =
        comma < 0
            ? title + ", " + state
            : title.substring(0, comma) + ", " + state + title.substring(comma);
    return Change.set(layout, told, "title");
  }
}
