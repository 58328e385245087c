package org.longlow.sketcher.edit;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.longlow.constraints.document.Change;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;

/** Whose seat something new belongs to: the first in order that has nothing like it yet. */
final class NextSeat {

  private NextSeat() {}

  /** Returns the seats that parts or people name, the rider's first. */
  private static Set<String> all(Layout layout) {
    Set<String> seats = new LinkedHashSet<>(List.of(Occupant.RIDER));
    layout.parts().values().forEach(p -> p.seatOf().ifPresent(seats::add));
    layout.crew().values().forEach(p -> seats.addAll(p.seats()));
    return seats;
  }

  /** Returns the seat of a new part such as this, which is of some seat. */
  static String of(Layout layout, Part part) {
    Set<String> all = all(layout);
    return all.stream()
        .filter(seat -> layout.parts().values().stream().noneMatch(p -> serves(p, seat, part)))
        .findFirst()
        .orElseGet(() -> Fresh.name(all, Occupant.PASSENGER));
  }

  private static boolean serves(Part there, String seat, Part like) {
    if (!there.seatOf().filter(seat::equals).isPresent()) {
      return false;
    }
    if (there instanceof CushionPart a && like instanceof CushionPart b) {
      return a.role() == b.role();
    }
    return there instanceof RestPart a
        && like instanceof RestPart b
        && a.type().limb() == b.type().limb();
  }

  /** Returns the layout with a part of it on the seat where one such as this goes. */
  static Layout seated(Layout before, Layout with, String name) {
    Part part = with.parts().get(name);
    return part.seatOf().isEmpty()
        ? with
        : Change.set(with, of(before, part), "parts", name, "seat");
  }

  /** Returns the seat of somebody new: one that nobody has yet, the rider's before others. */
  static String forSomebody(Layout layout) {
    List<String> there =
        layout.parts().values().stream().flatMap(p -> p.seatOf().stream()).distinct().toList();
    return Stream.concat(Stream.of(Occupant.RIDER).filter(there::contains), there.stream())
        .filter(s -> layout.crew().values().stream().noneMatch(p -> p.seats().contains(s)))
        .findFirst()
        .orElse(there.isEmpty() || there.contains(Occupant.RIDER) ? Occupant.RIDER : there.get(0));
  }

  /** Says whose seat it will be on where that is not the rider's; else empty. */
  static String said(Layout layout, Part part) {
    if (part.seatOf().isEmpty()) {
      return "";
    }
    String seat = of(layout, part);
    return seat.equals(Occupant.RIDER) ? "" : "for the seat " + seat;
  }
}
