package org.longlow.constraints.seat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;

/**
 * The parts that make up one seat. A seat without a pan is no seat.
 *
 * @param seat its name
 * @param pan the pan
 * @param back the back rest, if any
 * @param head the head rest, if any
 * @param feet peg or footboard, if any
 * @param hands the grips, if any
 */
public record SeatParts(
    String seat,
    Part.Cushion pan,
    Optional<Part.Cushion> back,
    Optional<Part.Cushion> head,
    Optional<Part.Rest> feet,
    Optional<Part.Rest> hands) {

  /** Returns the seats of {@code layout} by name, in the order of their pans. */
  public static Map<String, SeatParts> of(Layout layout) {
    Map<String, SeatParts> seats = new LinkedHashMap<>();
    pans(layout)
        .forEach(
            pan ->
                seats.computeIfAbsent(
                    pan.seat(),
                    seat ->
                        new SeatParts(
                            seat,
                            pan,
                            cushion(layout, seat, Part.CushionRole.BACK),
                            cushion(layout, seat, Part.CushionRole.HEAD),
                            rest(layout, seat, Part.Limb.FOOT),
                            rest(layout, seat, Part.Limb.HAND))));
    return seats;
  }

  /** Returns every pan of {@code layout}. */
  public static Stream<Part.Cushion> pans(Layout layout) {
    return layout.parts(Part.Cushion.class).filter(c -> c.role() == Part.CushionRole.PAN);
  }

  /** Returns its parts. */
  public List<Part> parts() {
    return Stream.of(Optional.of(pan), back, head, feet, hands)
        .<Part>flatMap(Optional::stream)
        .toList();
  }

  private static Optional<Part.Cushion> cushion(Layout layout, String seat, Part.CushionRole role) {
    return layout
        .parts(Part.Cushion.class)
        .filter(c -> c.seat().equals(seat) && c.role() == role)
        .findFirst();
  }

  private static Optional<Part.Rest> rest(Layout layout, String seat, Part.Limb limb) {
    return layout
        .parts(Part.Rest.class)
        .filter(r -> r.seat().equals(seat) && r.type().limb() == limb)
        .findFirst();
  }
}
