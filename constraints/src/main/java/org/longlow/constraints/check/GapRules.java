package org.longlow.constraints.check;

import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Places;

/** Which parts must stay clear of each other, and by how much. */
final class GapRules {

  /** The word that stands for whoever sits on the machine. */
  static final String RIDER = "rider";

  private final Layout layout;
  private final Places places;
  private final Set<String> excused = new HashSet<>();
  private final Map<String, Double> asked = new HashMap<>();

  GapRules(Layout layout, Places places) {
    this.layout = layout;
    this.places = places;
    for (Part part : layout.parts().values()) {
      part.base().touches().forEach(other -> excused.add(key(part.name(), other)));
    }
    for (Limit limit : layout.limits().values()) {
      if (limit.kind() == Limit.Kind.GAP && limit.from().isPresent()) {
        asked.put(
            key(limit.parts().get(0), limit.parts().get(1)), places.value(limit.from().get()));
      }
    }
  }

  static String key(String a, String b) {
    return a.compareTo(b) <= 0 ? a + "\n" + b : b + "\n" + a;
  }

  /** Returns whether two parts must stay clear: not joined at a pin, not said to touch. */
  boolean mayNotTouch(String a, String b) {
    String key = key(a, b);
    if (asked.containsKey(key)) {
      return true;
    }
    if (excused.contains(key)) {
      return false;
    }
    if (layout.parts().get(a) instanceof Part.Cushion one
        && layout.parts().get(b) instanceof Part.Cushion other
        && one.seat().equals(other.seat())) {
      return false; // one seat is upholstered as one
    }
    List<String> pinsOfB = layout.parts().get(b).pins();
    return layout.parts().get(a).pins().stream().noneMatch(pinsOfB::contains);
  }

  /** Returns whether a person must stay clear of a part: all but what they rest on. */
  boolean clearOfPeople(String part) {
    Part p = layout.parts().get(part);
    if (asked.containsKey(key(part, RIDER))) {
      return true;
    }
    return !(p instanceof Part.Cushion)
        && !(p instanceof Part.Rest)
        && !(p instanceof Part.Solid s && s.type() == Part.SolidKind.LEVER)
        && !excused.contains(key(part, RIDER));
  }

  /** Returns the demand that holds for two parts. */
  Demands.Key demand(String a, String b) {
    Part p = layout.parts().get(a);
    Part q = layout.parts().get(b);
    if ((p.base().hot() && suffersFromHeat(q)) || (q.base().hot() && suffersFromHeat(p))) {
      return Demands.Key.HOT_GAP;
    }
    if (p instanceof Part.Wheel || q instanceof Part.Wheel) {
      return Demands.Key.TYRE_GAP;
    }
    return Demands.Key.GAP;
  }

  Demands.Key demandOfPeople(String part) {
    return layout.parts().get(part).base().hot() ? Demands.Key.HOT_GAP : Demands.Key.PERSON_GAP;
  }

  private static boolean suffersFromHeat(Part part) {
    return part instanceof Part.Cushion
        || part instanceof Part.Shell
        || (part instanceof Part.Solid s
            && (s.type() == Part.SolidKind.TANK || s.type() == Part.SolidKind.BATTERY));
  }

  /** Returns the smallest gap allowed, mm: the layout's own limit for the pair, or the demand's. */
  double limitMm(String a, String b, Demands.Key demand) {
    Double own = asked.get(key(a, b));
    return own != null ? own : places.value(layout.demands().limit(demand));
  }

  /** Returns where the limit for the pair comes from. */
  String source(String a, String b, Demands.Key demand) {
    return asked.containsKey(key(a, b)) ? "this layout's own limit" : Sources.of(layout, demand);
  }
}
