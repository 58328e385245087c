package org.longlow.sketcher.cli;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;

/** Who is meant by a name in an option. */
final class SaidOccupant {

  private SaidOccupant() {}

  /**
   * Returns who is meant by {@code Robin as passenger}, or by a name alone: on the rider's seat if
   * they ride, else on the only seat they have; empty where that is not clear.
   */
  static Optional<Occupant> of(Study study, String said) {
    List<Occupant> all = study.sittings().stream().map(Sitting::occupant).toList();
    List<Occupant> named = all.stream().filter(who -> who.person().equals(said)).toList();
    return all.stream()
        .filter(who -> who.words().equals(said))
        .findFirst()
        .or(() -> named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty());
  }
}
