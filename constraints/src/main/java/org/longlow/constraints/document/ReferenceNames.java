package org.longlow.constraints.document;

import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;

/** The names that references can have. */
final class ReferenceNames {

  private ReferenceNames() {}

  /** Returns what a reference to each target may say in {@code layout}. */
  static Map<Referent, Collection<String>> in(Layout layout) {
    Map<Referent, Collection<String>> known = new EnumMap<>(Referent.class);
    known.put(Referent.PIN, layout.pins().keySet());
    known.put(Referent.PART, layout.parts().keySet());
    known.put(Referent.PART_OR_RIDER, with(layout.parts().keySet(), Set.of(Occupant.RIDER)));
    known.put(Referent.SECTION, layout.sections().keySet());
    known.put(Referent.MEASURE, layout.measures().keySet());
    known.put(Referent.CARRIER, with(PointKinds.CARRIERS, layout.sections().keySet()));
    // somebody may be meant for these before they have a pan; findings say that they lack it
    Set<String> seats = new LinkedHashSet<>(List.of(Occupant.RIDER, Occupant.PASSENGER));
    for (Part part : layout.parts().values()) {
      if (part != null) {
        part.seatOf().ifPresent(seats::add);
      }
    }
    known.put(Referent.SEAT, seats);
    return known;
  }

  /** Returns the targets that are entries of the group {@code key} of the document. */
  static Set<Referent> targets(String key) {
    return switch (key) {
      case "pins" -> EnumSet.of(Referent.PIN);
      case "parts" -> EnumSet.of(Referent.PART, Referent.PART_OR_RIDER);
      case "sections" -> EnumSet.of(Referent.SECTION, Referent.CARRIER);
      case "measures" -> EnumSet.of(Referent.MEASURE);
      default -> EnumSet.noneOf(Referent.class);
    };
  }

  private static Set<String> with(Collection<String> names, Collection<String> more) {
    Set<String> all = new LinkedHashSet<>(names);
    all.addAll(more);
    return all;
  }
}
