package org.longlow.constraints.document;

import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.document.Type.Target;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;

/** The names that references can have. */
final class Known {

  private Known() {}

  /** Returns what a reference to each target may say in {@code layout}. */
  static Map<Target, Collection<String>> in(Layout layout) {
    Map<Target, Collection<String>> known = new EnumMap<>(Target.class);
    known.put(Target.PIN, layout.pins().keySet());
    known.put(Target.PART, layout.parts().keySet());
    known.put(Target.PART_OR_RIDER, with(layout.parts().keySet(), Set.of(Occupant.RIDER)));
    known.put(Target.SECTION, layout.sections().keySet());
    known.put(Target.MEASURE, layout.measures().keySet());
    known.put(Target.CARRIER, with(PointKinds.CARRIERS, layout.sections().keySet()));
    Set<String> seats = new LinkedHashSet<>();
    for (Part part : layout.parts().values()) {
      if (part != null) {
        part.seatOf().ifPresent(seats::add);
      }
    }
    known.put(Target.SEAT, seats);
    return known;
  }

  /** Returns the targets that are entries of the group {@code key} of the document. */
  static Set<Target> targets(String key) {
    return switch (key) {
      case "pins" -> EnumSet.of(Target.PIN);
      case "parts" -> EnumSet.of(Target.PART, Target.PART_OR_RIDER);
      case "sections" -> EnumSet.of(Target.SECTION, Target.CARRIER);
      case "measures" -> EnumSet.of(Target.MEASURE);
      default -> EnumSet.noneOf(Target.class);
    };
  }

  private static Set<String> with(Collection<String> names, Collection<String> more) {
    Set<String> all = new LinkedHashSet<>(names);
    all.addAll(more);
    return all;
  }
}
