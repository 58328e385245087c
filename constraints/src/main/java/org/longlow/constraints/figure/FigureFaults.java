package org.longlow.constraints.figure;

import java.util.List;
import java.util.stream.Collectors;

/** Every fault found in the input of a figure. */
public final class FigureFaults extends IllegalArgumentException {

  private static final long serialVersionUID = 1L;

  private final transient List<FigureFault> faults;

  /** Collects one or more faults; the message holds one line a fault. */
  public FigureFaults(List<FigureFault> faults) {
    super(faults.stream().map(FigureFault::line).collect(Collectors.joining("\n")));
    this.faults = List.copyOf(faults);
  }

  /** Returns the faults in the order of the inputs, at least one. */
  public List<FigureFault> faults() {
    return faults;
  }
}
