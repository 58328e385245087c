package org.longlow.sketcher.edit;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.PointMm;

/**
 * A pin or a whole seat on its way into a machine: one place says where.
 *
 * @param seat true for a seat, false for a pin
 */
public record PuttingOne(boolean seat, Optional<PointMm> at, Hang hang) implements Putting {

  public static final PuttingOne PIN = new PuttingOne(false, Optional.empty(), Hang.FRAME);
  public static final PuttingOne SEAT = new PuttingOne(true, Optional.empty(), Hang.FRAME);

  @Override
  public String title() {
    return seat ? "seat" : "pin";
  }

  @Override
  public String said(Layout layout) {
    return seat ? NextSeat.said(layout, Adding.of("pan").part()) : "";
  }

  @Override
  public String next() {
    return "";
  }

  @Override
  public boolean isPlaced() {
    return at.isPresent();
  }

  @Override
  public Putting with(PinSpot spot) {
    return new PuttingOne(seat, Optional.of(spot.at()), hang);
  }

  @Override
  public Putting back() {
    return new PuttingOne(seat, Optional.empty(), hang);
  }

  @Override
  public Putting on(Hang other) {
    return new PuttingOne(seat, at, other);
  }

  @Override
  public List<Ghost> ghosts(PointMm next) {
    return seat
        ? Additions.seatPieces(next).entrySet().stream()
            .flatMap(p -> Adding.of(p.getKey()).ghosts(p.getValue()).stream())
            .toList()
        : List.of();
  }

  @Override
  public Edit edit() {
    PointMm place = at.orElseThrow(() -> new IllegalStateException(title() + " has no place yet"));
    return seat ? Additions.seat(place) : Additions.pin(place, hang);
  }

  @Override
  public String subjectIn(Layout layout) {
    String group = seat ? "parts" : "pins";
    return Subjects.of(new Entries.Entry(group, Fresh.name(layout, group, seat ? "pan" : "pin")));
  }
}
