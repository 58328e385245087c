package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.solve.Freedom;
import org.longlow.constraints.words.Names;

/** What a user's words stand for: pins that are free to move. */
final class Movable {

  private static final int LISTED = 16;

  private final Layout layout;
  private final Set<String> free = new LinkedHashSet<>();
  private final Map<String, List<String>> known = new LinkedHashMap<>();

  /**
   * @param placed the layout, solved with its freedoms
   */
  Movable(Placed placed) {
    layout = placed.layout();
    Set<String> moving = new LinkedHashSet<>();
    placed
        .report()
        .diagnosis()
        .ifPresent(
            d ->
                d.freedoms().stream()
                    .filter(Freedom::lasting)
                    .forEach(f -> moving.addAll(f.moves().keySet())));
    for (String pin : layout.pins().keySet()) {
      if (moving.contains(pin + ".x") || moving.contains(pin + ".z")) {
        free.add(pin);
      }
    }
    roles();
    layout.parts().forEach((name, part) -> known.put(name, part.pins()));
    layout.pins().keySet().forEach(pin -> known.put(pin, List.of(pin)));
  }

  /** The seat's own words mean the rider's seat; the layout's names win over them. */
  private void roles() {
    SeatParts seat = SeatParts.of(layout).get(Occupant.RIDER);
    if (seat == null) {
      return;
    }
    known.put("pan", seat.pan().pins());
    seat.back().ifPresent(p -> known.put("back", p.pins()));
    seat.head().ifPresent(p -> known.put("head", p.pins()));
    seat.feet().ifPresent(p -> known.put("pegs", p.pins()));
    seat.hands().ifPresent(p -> known.put("grips", p.pins()));
  }

  /**
   * Returns the free pins that each word stands for, in the order of the words.
   *
   * @throws UnknownNames if a word is unknown or names nothing that can move
   */
  Map<String, List<String>> resolve(List<String> words) {
    Map<String, List<String>> groups = new LinkedHashMap<>();
    List<String> faults = new ArrayList<>();
    Set<String> taken = new LinkedHashSet<>();
    for (String word : words) {
      List<String> pins = known.get(word);
      if (pins == null) {
        faults.add(unknown(word));
        continue;
      }
      List<String> own = pins.stream().filter(free::contains).toList();
      if (own.isEmpty()) {
        faults.add(
            word
                + " cannot move: its ties hold "
                + String.join(", ", pins)
                + "; what can move: "
                + list());
      }
      List<String> fresh = own.stream().filter(taken::add).toList();
      if (!fresh.isEmpty()) {
        groups.put(word, fresh);
      }
    }
    if (words.isEmpty()) {
      faults.add("name what may move; what can move: " + list());
    }
    if (!faults.isEmpty()) {
      throw new UnknownNames(faults);
    }
    return groups;
  }

  private String unknown(String word) {
    String near = Names.nearest(word, known.keySet()).orElse(null);
    return "nothing is called "
        + (word.isBlank() ? "(blank)" : word)
        + (near == null ? "" : "; did you mean " + near + "?")
        + "; what can move: "
        + list();
  }

  /** Words for what can move: parts of seats first, then pins that are in none of them. */
  private String list() {
    List<String> names = new ArrayList<>();
    Set<String> told = new LinkedHashSet<>();
    layout
        .parts()
        .forEach(
            (name, part) -> {
              if (part.seatOf().isPresent() && part.pins().stream().anyMatch(free::contains)) {
                names.add(name);
                told.addAll(part.pins());
              }
            });
    free.stream().filter(p -> !told.contains(p)).forEach(names::add);
    if (names.isEmpty()) {
      return "nothing, every pin is held by ties";
    }
    int more = names.size() - LISTED;
    return String.join(", ", names.subList(0, Math.min(LISTED, names.size())))
        + (more > 0 ? " and " + more + " more" : "");
  }
}
