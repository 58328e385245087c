package org.longlow.constraints.seat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.shape.Memo;

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
    CushionPart pan,
    Optional<CushionPart> back,
    Optional<CushionPart> head,
    Optional<RestPart> feet,
    Optional<RestPart> hands) {

  private static final Memo<Same, SeatParts> KNOWN = new Memo<>(64, same -> same.seat);

  /** A seat, equal to one of the same parts: the same objects, which takes no comparing. */
  private record Same(SeatParts seat) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Same s
          && s.seat.seat.equals(seat.seat)
          && s.seat.pan == seat.pan
          && same(s.seat.back, seat.back)
          && same(s.seat.head, seat.head)
          && same(s.seat.feet, seat.feet)
          && same(s.seat.hands, seat.hands);
    }

    private static boolean same(Optional<?> one, Optional<?> other) {
      return one.orElse(null) == other.orElse(null);
    }

    @Override
    public int hashCode() {
      return System.identityHashCode(seat.pan);
    }
  }

  /**
   * Returns the seats of {@code layout} by name, in the order of their pans; the same objects again
   * while their parts are.
   */
  public static Map<String, SeatParts> of(Layout layout) {
    Map<String, SeatParts> seats = new LinkedHashMap<>();
    pans(layout)
        .forEach(
            pan ->
                seats.computeIfAbsent(
                    pan.seat(),
                    seat ->
                        KNOWN.of(
                            new Same(
                                new SeatParts(
                                    seat,
                                    pan,
                                    cushion(layout, seat, CushionPart.Role.BACK),
                                    cushion(layout, seat, CushionPart.Role.HEAD),
                                    rest(layout, seat, RestPart.Limb.FOOT),
                                    rest(layout, seat, RestPart.Limb.HAND))))));
    return seats;
  }

  /** Returns every pan of {@code layout}. */
  public static Stream<CushionPart> pans(Layout layout) {
    return layout.parts(CushionPart.class).filter(c -> c.role() == CushionPart.Role.PAN);
  }

  /** Returns its parts. */
  public List<Part> parts() {
    return Stream.of(Optional.of(pan), back, head, feet, hands)
        .<Part>flatMap(Optional::stream)
        .toList();
  }

  /** Returns the same seat with another cushion of its role. */
  SeatParts with(CushionPart other) {
    Optional<CushionPart> it = Optional.of(other);
    return switch (other.role()) {
      case PAN -> new SeatParts(seat, other, back, head, feet, hands);
      case BACK -> new SeatParts(seat, pan, it, head, feet, hands);
      case HEAD -> new SeatParts(seat, pan, back, it, feet, hands);
    };
  }

  private static Optional<CushionPart> cushion(Layout layout, String seat, CushionPart.Role role) {
    return layout
        .parts(CushionPart.class)
        .filter(c -> c.seat().equals(seat) && c.role() == role)
        .findFirst();
  }

  private static Optional<RestPart> rest(Layout layout, String seat, RestPart.Limb limb) {
    return layout
        .parts(RestPart.class)
        .filter(r -> r.seat().equals(seat) && r.type().limb() == limb)
        .findFirst();
  }
}
