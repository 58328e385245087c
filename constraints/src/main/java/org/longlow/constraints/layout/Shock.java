package org.longlow.constraints.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.formula.Formula;

/**
 * Spring and damper between an arm and the frame. All of it but the rocker is said, or nothing.
 *
 * @param foot the pin that it hangs on at the arm or at its rocker
 * @param top the pin that it hangs on at the frame
 * @param stroke by how much it can close
 * @param spring force for each mm by which it closes; of two, both together
 * @param rocker what turns the travel of the arm into its stroke, if it does not hang on the arm
 */
public record Shock(
    Optional<String> foot,
    Optional<String> top,
    Optional<Formula> stroke,
    Optional<Formula> spring,
    Rocker rocker) {

  /**
   * A rocker (bell crank) between arm and shock: all of it is said, or nothing. Pivot and end of
   * the rod are one on the arm and the other on the frame, either way round.
   *
   * @param pivot the pin it turns about
   * @param rod its pin that the rod hangs on
   * @param end the pin at the other end of the rod
   */
  public record Rocker(Optional<String> pivot, Optional<String> rod, Optional<String> end) {

    /** There is none. */
    public static final Rocker NONE =
        new Rocker(Optional.empty(), Optional.empty(), Optional.empty());

    Stream<String> pins() {
      return Stream.of(pivot, rod, end).flatMap(Optional::stream);
    }
  }

  /** The pins of a rocker that is said. */
  public record Loop(String pivot, String rod, String end) {}

  /** What it is made of, and the two pins that each of these lies between, by name. */
  public Map<String, List<String>> bodies() {
    Map<String, List<String>> bodies = new LinkedHashMap<>();
    foot.ifPresent(at -> bodies.put("the shock", List.of(at, top.orElseThrow())));
    loop()
        .ifPresent(
            r -> {
              bodies.put("the rod of its rocker", List.of(r.rod(), r.end()));
              bodies.put("its rocker", List.of(r.pivot(), r.rod()));
            });
    return bodies;
  }

  /** Nothing is said of it. */
  public static final Shock NOT_SAID =
      new Shock(
          Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Rocker.NONE);

  /** Returns the rocker, if it has one. */
  public Optional<Loop> loop() {
    return rocker
        .pivot()
        .flatMap(
            pivot ->
                rocker.rod().flatMap(rod -> rocker.end().map(end -> new Loop(pivot, rod, end))));
  }

  /** Returns the pins that it hangs on. */
  List<String> pins() {
    return Stream.concat(Stream.concat(foot.stream(), top.stream()), rocker.pins()).toList();
  }
}
