package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.longlow.constraints.machine.MassPoint;
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
   * @param person the crew's name
   * @param seat the seat's name
   * @param masses where their masses are
   * @param body their flesh and gear, for what touches
   */
  public record Seated(String person, String seat, List<MassPoint> masses, List<Prism> body) {
    public Seated {
      masses = List.copyOf(masses);
      body = List.copyOf(body);
    }
  }

  public Rider {
    seated = List.copyOf(seated);
  }

  /** Returns the crew on it in words, such as {@code Mara and Tor}; empty for nobody. */
  public String names() {
    return seated.stream().map(Seated::person).collect(Collectors.joining(" and "));
  }

  /** Returns where all their masses are, in the axes of the frame. */
  public List<MassPoint> masses() {
    List<MassPoint> masses = new ArrayList<>();
    seated.forEach(s -> masses.addAll(s.masses()));
    return masses;
  }
}
