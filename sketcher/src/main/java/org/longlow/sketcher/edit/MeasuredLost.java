package org.longlow.sketcher.edit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.BuiltSpan;

/** What was measured on the machine that was made, and goes with what it was measured of. */
final class MeasuredLost {

  private final List<String> lost = new ArrayList<>();

  private MeasuredLost() {}

  /** Returns in words what is no more, such as {@code mass of battery}. */
  static List<String> of(AsBuilt before, AsBuilt after) {
    MeasuredLost all = new MeasuredLost();
    all.see("value of ", before.measures(), after.measures());
    all.see("place of ", before.pins(), after.pins());
    all.see("mass of ", before.masses(), after.masses());
    all.see("radius of ", before.radii(), after.radii());
    for (BuiltSpan span : before.spans()) {
      if (!after.spans().contains(span)) {
        all.lost.add(span.kind().word() + " from " + span.from() + " to " + span.to());
      }
    }
    return all.lost;
  }

  private void see(String what, Map<String, ?> before, Map<String, ?> after) {
    before.keySet().stream()
        .filter(name -> !after.containsKey(name))
        .forEach(name -> lost.add(what + name));
  }
}
