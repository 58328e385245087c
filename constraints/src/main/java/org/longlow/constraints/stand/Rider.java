package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.Prism;

/**
 * Who sits on the machine in a stance.
 *
 * @param seated each of them, whoever steers first; empty for nobody
 */
public record Rider(List<Seated> seated) {

  /** Nobody. */
  public static final Rider NOBODY = new Rider(List.of());

  /**
   * One person on a seat, in the axes of the frame.
   *
   * @param who the person and the seat
   * @param masses where their masses are
   * @param body their flesh and gear, for what touches
   */
  public record Seated(Occupant who, List<MassPoint> masses, List<Prism> body) {
    public Seated {
      masses = List.copyOf(masses);
      body = List.copyOf(body);
    }
  }

  public Rider {
    seated = List.copyOf(seated);
  }

  /** Returns who they are, in their order. */
  public List<Occupant> occupants() {
    return seated.stream().map(Seated::who).toList();
  }

  /** Returns where all their masses are, in the axes of the frame. */
  public List<MassPoint> masses() {
    List<MassPoint> masses = new ArrayList<>();
    seated.forEach(s -> masses.addAll(s.masses()));
    return masses;
  }
}
