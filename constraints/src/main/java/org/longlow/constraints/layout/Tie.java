package org.longlow.constraints.layout;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;

/**
 * An exact geometric relation between pins, measures and part edges.
 *
 * @param kind what must hold
 * @param pins the pins it speaks of, in the order that {@link TieKind} gives
 * @param is the target quantity, for kinds that have one
 * @param radii radii, for circles, bends and belts
 * @param part the part whose edge is meant, or empty
 * @param edge which edge of its outline, counted from 0
 * @param inside true for an inside tangency
 * @param run where a belt or chain runs across the machine, if it is said
 * @param note for people, may be empty
 */
public record Tie(
    TieKind kind,
    List<String> pins,
    Optional<Formula> is,
    List<Formula> radii,
    String part,
    int edge,
    boolean inside,
    Run run,
    String note) {

  /**
   * A belt or chain across the machine.
   *
   * @param across where each of its wheels has the middle of it, left positive; empty where nobody
   *     has said
   * @param width how broad it is over its pins
   * @param halfLink whether a chain is meant to have a cranked half link
   * @param idlers pins of those of its wheels that only guide or tighten it
   * @param back those of them that press on it from outside
   * @param sprung the one of them that a spring presses on it, if there is one
   */
  public record Run(
      List<Formula> across,
      Optional<Formula> width,
      boolean halfLink,
      List<String> idlers,
      List<String> back,
      Optional<String> sprung) {

    /** Nothing is said. */
    public static final Run NOT_SAID =
        new Run(List.of(), Optional.empty(), false, List.of(), List.of(), Optional.empty());

    public Run {
      across = List.copyOf(across);
      idlers = List.copyOf(idlers);
      back = List.copyOf(back);
    }
  }

  public Tie {
    pins = List.copyOf(pins);
    radii = List.copyOf(radii);
  }

  /** A tie of which nothing is said across the machine. */
  public Tie(
      TieKind kind,
      List<String> pins,
      Optional<Formula> is,
      List<Formula> radii,
      String part,
      int edge,
      boolean inside,
      String note) {
    this(kind, pins, is, radii, part, edge, inside, Run.NOT_SAID, note);
  }

  /** Returns a tie of pins and one target, the common case. */
  public static Tie of(TieKind kind, List<String> pins, Formula is) {
    return new Tie(kind, pins, Optional.ofNullable(is), List.of(), "", 0, false, "");
  }
}
