package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.longlow.constraints.check.BodyChecks;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.place.Placer;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;

/**
 * The machine that a crowd sits on: as it is, and with things adjusted.
 *
 * @param placed the layout, solved
 * @param seat the rider's seat
 */
public record FitMachine(Placed placed, SeatParts seat) {

  /** Seats, pegs and grips are looked at so far either way, mm; a judgement. */
  private static final double FAR_MM = 100;

  /** And up and down, mm; a judgement. */
  private static final double FAR_UP_MM = 60;

  /** And a back so far, deg; a judgement. */
  private static final double FAR_DEG = 10;

  private static final int STEPS = 4;

  /** A measure that moves the seat by less is none of its adjusters, mm. */
  private static final double MOVES_MM = 1;

  /** Returns the machine of a solved layout; empty where nobody can sit on a rider's seat. */
  public static Optional<FitMachine> of(Placed placed) {
    return Optional.ofNullable(SeatParts.of(placed.layout()).get(Occupant.RIDER))
        .filter(s -> s.back().isPresent() && s.feet().isPresent())
        .map(s -> new FitMachine(placed, s));
  }

  /** Returns what depends on bodies on the machine as it is. */
  public BodyChecks checks() {
    return checks(placed, seat);
  }

  private static BodyChecks checks(Placed placed, SeatParts seat) {
    Layout layout = placed.layout();
    return new BodyChecks(layout, seat, placed.places(), Shapes.of(layout, placed.places()));
  }

  /** Returns what could be adjusted: free measures that move the seat, and parts of the seat. */
  public List<Adjuster> adjusters() {
    List<Adjuster> all = new ArrayList<>();
    boolean tilts = false;
    for (Map.Entry<String, Measure> e : placed.layout().measures().entrySet()) {
      Optional<Adjuster> one = measure(e.getKey(), e.getValue());
      one.ifPresent(all::add);
      tilts |= one.isPresent();
    }
    all.add(Adjuster.about("seat", "seat forward", Adjuster.Way.SEAT_ALONG, FAR_MM, STEPS));
    all.add(Adjuster.about("height", "seat up", Adjuster.Way.SEAT_UP, FAR_UP_MM, STEPS));
    if (!tilts) {
      all.add(Adjuster.about("back", "back further back", Adjuster.Way.BACK, FAR_DEG, STEPS));
    }
    all.add(Adjuster.about("pegs", "foot rests forward", Adjuster.Way.PEGS_ALONG, FAR_MM, STEPS));
    if (seat.hands().isPresent()) {
      all.add(Adjuster.about("grips", "grips forward", Adjuster.Way.GRIPS_ALONG, FAR_MM, STEPS));
      all.add(Adjuster.about("gripsUp", "grips up", Adjuster.Way.GRIPS_UP, FAR_UP_MM, STEPS));
    }
    return all;
  }

  private Optional<Adjuster> measure(String name, Measure measure) {
    boolean angle = measure.dim().equals(Dim.ANGLE);
    if (!measure.free()
        || measure.from().isEmpty()
        || measure.to().isEmpty()
        || !angle && !measure.dim().equals(Dim.LENGTH)) {
      return Optional.empty();
    }
    double scale = angle ? Math.toDegrees(1) : 1;
    double from = placed.places().value(measure.from().get()) * scale;
    double to = placed.places().value(measure.to().get()) * scale;
    Adjuster adjuster =
        Adjuster.between(
            name, angle, from, to, placed.places().measures().get(name) * scale, 2 * STEPS);
    Optional<Places> low = set(Map.of(adjuster, from)).map(Placed::places);
    Optional<Places> high = set(Map.of(adjuster, to)).map(Placed::places);
    boolean moves =
        from < to
            && low.isPresent()
            && high.isPresent()
            && seat.parts().stream()
                .flatMap(p -> p.pins().stream())
                .anyMatch(p -> low.get().pin(p).distance(high.get().pin(p)) > MOVES_MM);
    return moves ? Optional.of(adjuster) : Optional.empty();
  }

  /** Returns the layout solved with measures set; empty where it then contradicts itself. */
  private Optional<Placed> set(Map<Adjuster, Double> settings) {
    Layout layout = placed.layout();
    boolean changed = false;
    for (Map.Entry<Adjuster, Double> e : settings.entrySet()) {
      Adjuster adjuster = e.getKey();
      if (adjuster.measure()) {
        Measure was = layout.measures().get(adjuster.name());
        double inside = adjuster.turns() ? Math.toRadians(e.getValue()) : e.getValue();
        layout =
            layout.withMeasure(
                adjuster.name(),
                new Measure(
                    Formula.of(inside, Unit.of(was.dim())),
                    was.dim(),
                    false,
                    Optional.empty(),
                    Optional.empty(),
                    was.note()));
        changed = true;
      }
    }
    if (!changed) {
      return Optional.of(placed);
    }
    return Optional.of(Placer.solve(layout)).filter(Placed::holds);
  }

  /** The machine with things adjusted, or why it cannot be. */
  record Adjusted(Optional<BodyChecks> checks, String barred) {}

  /**
   * Returns the machine with things set.
   *
   * @param fouled what is too close already as it is
   */
  Adjusted at(Map<Adjuster, Double> settings, Set<String> fouled) {
    Optional<Placed> solved = set(settings);
    if (solved.isEmpty()) {
      return new Adjusted(Optional.empty(), "ties and limits do not hold");
    }
    SeatParts now = SeatParts.of(solved.get().layout()).get(seat.seat());
    BodyChecks there = checks(solved.get(), now);
    Map<String, PointMm> pins = new HashMap<>();
    Set<Part> moved = new LinkedHashSet<>();
    settings.forEach(
        (adjuster, setting) -> move(adjuster, setting, now, there.places(), pins, moved));
    BodyChecks checks =
        moved.isEmpty() ? there : there.with(moved, there.places().withPins(all(there, pins)));
    Set<String> worse = new LinkedHashSet<>(checks.fouled(new HashSet<>(now.parts())));
    worse.removeAll(fouled);
    return worse.isEmpty()
        ? new Adjusted(Optional.of(checks), "")
        : new Adjusted(Optional.empty(), worse.iterator().next() + " too close");
  }

  private static Map<String, PointMm> all(BodyChecks there, Map<String, PointMm> moved) {
    Map<String, PointMm> all = new HashMap<>(there.places().pins());
    all.putAll(moved);
    return all;
  }

  /** Returns what of the seat is too close to other parts as it is. */
  Set<String> fouled() {
    return checks().fouled(new HashSet<>(seat.parts()));
  }

  private static void move(
      Adjuster adjuster,
      double by,
      SeatParts seat,
      Places places,
      Map<String, PointMm> pins,
      Set<Part> moved) {
    List<Part> cushions =
        Stream.of(Optional.of(seat.pan()), seat.back(), seat.head())
            .<Part>flatMap(Optional::stream)
            .toList();
    List<Part> turned =
        Stream.of(seat.back(), seat.head()).<Part>flatMap(Optional::stream).toList();
    switch (adjuster.way()) {
      case SEAT_ALONG -> shift(cushions, new PointMm(by, 0), places, pins, moved);
      case SEAT_UP -> shift(cushions, new PointMm(0, by), places, pins, moved);
      case PEGS_ALONG ->
          shift(List.of(seat.feet().orElseThrow()), new PointMm(by, 0), places, pins, moved);
      case GRIPS_ALONG ->
          shift(List.of(seat.hands().orElseThrow()), new PointMm(by, 0), places, pins, moved);
      case GRIPS_UP ->
          shift(List.of(seat.hands().orElseThrow()), new PointMm(0, by), places, pins, moved);
      case BACK -> {
        CushionPart back = seat.back().orElseThrow();
        PointMm about = at(back.from(), places, pins);
        double rad = Math.toRadians(by);
        for (String pin : pinsOf(turned)) {
          PointMm arm = at(pin, places, pins).minus(about);
          // further back is counter-clockwise: x forward, z up
          pins.put(
              pin,
              about.plus(
                  new PointMm(
                      arm.x() * Math.cos(rad) - arm.z() * Math.sin(rad),
                      arm.x() * Math.sin(rad) + arm.z() * Math.cos(rad))));
        }
        moved.addAll(turned);
      }
      case LENGTH_MEASURE, ANGLE_MEASURE -> {
        // the solver has moved what hangs on it
      }
    }
  }

  private static void shift(
      List<Part> parts, PointMm by, Places places, Map<String, PointMm> pins, Set<Part> moved) {
    pinsOf(parts).forEach(pin -> pins.put(pin, at(pin, places, pins).plus(by)));
    moved.addAll(parts);
  }

  private static Set<String> pinsOf(List<Part> parts) {
    Set<String> all = new LinkedHashSet<>();
    parts.forEach(p -> all.addAll(p.pins()));
    return all;
  }

  private static PointMm at(String pin, Places places, Map<String, PointMm> pins) {
    return pins.getOrDefault(pin, places.pin(pin));
  }
}
