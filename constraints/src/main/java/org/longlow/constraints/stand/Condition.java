package org.longlow.constraints.stand;

import java.util.List;
import java.util.stream.Collectors;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;

/**
 * A stance and who is on the machine in it.
 *
 * @param stance the stance
 * @param aboard who is on it, whoever steers first; empty for nobody
 */
public record Condition(Stance stance, List<Occupant> aboard) {

  public Condition {
    aboard = List.copyOf(aboard);
  }

  /** Returns a stance with nobody on the machine. */
  public static Condition empty(Stance.Kind kind) {
    return new Condition(new Stance(kind, ""), List.of());
  }

  /** Returns the machine with a section open and nobody on it. */
  public static Condition open(String section) {
    return new Condition(new Stance(Stance.Kind.OPEN, section), List.of());
  }

  /** Returns the machine at rest under these people. */
  public static Condition laden(List<Occupant> aboard) {
    return new Condition(new Stance(Stance.Kind.LADEN, ""), aboard);
  }

  public Stance.Kind kind() {
    return stance.kind();
  }

  /** Whether just this person is on the machine, riding. */
  public boolean ladenBy(Occupant alone) {
    return kind() == Stance.Kind.LADEN && aboard.equals(List.of(alone));
  }

  /** Whether this person steers it at rest, whoever else is aboard. */
  public boolean riddenBy(Occupant rider) {
    return kind() == Stance.Kind.LADEN && !aboard.isEmpty() && aboard.get(0).equals(rider);
  }

  /** Returns who is on it in words, such as {@code Mara and Tor}; empty for nobody. */
  public String people() {
    return aboard.stream().map(Occupant::person).collect(Collectors.joining(" and "));
  }

  /** Returns its kind in words, such as {@code full bump}. */
  public String word() {
    return kind().word().replace('-', ' ');
  }

  /** Returns it in words, such as {@code full bump} or {@code laden, Mara}. */
  public String says() {
    String more = kind() == Stance.Kind.OPEN ? stance.section() : people();
    return more.isEmpty() ? word() : word() + ", " + more;
  }
}
