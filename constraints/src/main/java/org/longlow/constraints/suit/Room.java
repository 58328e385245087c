package org.longlow.constraints.suit;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.longlow.constraints.check.PartialChecks;
import org.longlow.constraints.gap.Gap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.gap.Sweep;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Sections;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.OutOfRange;

/**
 * Room between moved parts and all others, and between people and parts: as drawn, in every stance,
 * and while sections open. Bodies of what stays are kept with their indexes. Not for several
 * threads.
 */
final class Room {

  /** With so much more room than asked a gap is no concern, mm. */
  private static final double ROOM_MM = 1;

  private final Layout layout;
  private final Map<String, PartShape> shapes;
  private final Map<String, Thing> bodies = new LinkedHashMap<>();
  private final Map<Condition, Map<String, Thing>> stanceBodies = new LinkedHashMap<>();
  private final Map<String, Opening> openings = new LinkedHashMap<>();
  private final PartialChecks checks;

  Room(
      Layout layout,
      Places base,
      Map<String, PartShape> shapes,
      List<Standing> standings,
      PartialChecks checks) {
    this.layout = layout;
    this.shapes = shapes;
    this.checks = checks;
    shapes.forEach((name, s) -> bodies.put(name, body(s)));
    for (Standing s : standings) {
      if (s.kind() != Stance.Kind.OPEN) {
        Map<String, Thing> moved = new LinkedHashMap<>();
        s.moved().forEach((name, shape) -> moved.put(name, body(shape)));
        stanceBodies.put(s.condition(), moved);
      }
    }
    layout.sections().forEach((name, section) -> opening(name, section, base));
  }

  private static Thing body(PartShape shape) {
    return new Thing(shape.part().name(), shape.prisms());
  }

  /** A body with what it is made of. */
  private record Thing(String name, List<Prism> prisms, Solid body) {
    Thing(String name, List<Prism> prisms) {
      this(name, prisms, new Solid(name, prisms));
    }
  }

  /** A section on its way; its parts shut. */
  private record Opening(Sweep sweep, List<Solid> parts) {}

  private void opening(String name, Section section, Places base) {
    try {
      openings.put(
          name,
          new Opening(
              new Sweep(Sections.motion(section, base)),
              section.parts().stream().map(part -> bodies.get(part).body()).toList()));
    } catch (OutOfRange e) {
      return; // it cannot open wherever people sit
    }
  }

  /**
   * Adds the margins of gaps.
   *
   * @param moved the parts that may have moved, where they are now
   * @param now where the pins are now
   * @param sittings the people, where they sit now
   */
  void gaps(
      List<Reading> readings, Map<String, PartShape> moved, Places now, List<Sitting> sittings) {
    Map<String, Thing> movers = new LinkedHashMap<>();
    moved.forEach(
        (name, shape) ->
            movers.put(name, shape == shapes.get(name) ? bodies.get(name) : body(shape)));
    parts(readings, movers);
    joints(readings, moved, movers, now);
    sittings.forEach(s -> people(readings, s, movers));
  }

  /** Moved parts against all parts, in the stance in which each pair is closest. */
  private void parts(List<Reading> readings, Map<String, Thing> moved) {
    Worst worst = new Worst();
    List<Thing> movers = List.copyOf(moved.values());
    for (int i = 0; i < movers.size(); i++) {
      Thing mover = movers.get(i);
      for (Thing other : bodies.values()) {
        if (!moved.containsKey(other.name())) {
          pair(worst, mover, other);
        }
      }
      for (Thing other : movers.subList(0, i)) {
        pair(worst, mover, other);
      }
      for (Map<String, Thing> inStance : stanceBodies.values()) {
        if (!inStance.containsKey(mover.name())) {
          inStance.values().forEach(other -> pair(worst, mover, other));
        }
      }
    }
    openings.forEach(
        (name, opening) -> {
          List<String> own = driven(name);
          for (Solid part : opening.parts()) {
            for (Thing mover : movers) {
              if (!own.contains(mover.name())) {
                worst.keep(
                    "open." + name + "." + part.name() + "." + mover.name(),
                    opening.sweep(),
                    part,
                    mover,
                    checks.leastMm(part.name(), mover.name()));
              }
            }
          }
        });
    worst.into(readings, Optional.empty());
  }

  /** The parts of a section and of what its drive moves with it: these do not stay for it. */
  private List<String> driven(String section) {
    return Stream.concat(Stream.of(section), layout.drivenWith(section).stream())
        .flatMap(s -> layout.sections().get(s).parts().stream())
        .toList();
  }

  /** Joints of moved parts, as drawn. */
  private void joints(
      List<Reading> readings, Map<String, PartShape> moved, Map<String, Thing> movers, Places now) {
    Map<String, PartShape> all = new LinkedHashMap<>(shapes);
    all.putAll(moved);
    checks
        .jointsMm(
            moved.keySet(), all, part -> movers.getOrDefault(part, bodies.get(part)).body(), now)
        .forEach(
            (id, spared) -> {
              if (spared < ROOM_MM) {
                readings.add(new Reading(id, Optional.empty(), "", Reading.Kind.GAP, spared));
              }
            });
  }

  private void pair(Worst worst, Thing a, Thing b) {
    worst.keep("gap." + a.name() + "." + b.name(), a, b, checks.leastMm(a.name(), b.name()));
  }

  private void people(List<Reading> readings, Sitting sitting, Map<String, Thing> moved) {
    if (sitting.posture().isEmpty()) {
      return;
    }
    Map<Resting.Clear, Thing> limbs = new HashMap<>();
    Worst worst = new Worst();
    String name = sitting.occupant().name();
    bodies.forEach(
        (part, body) ->
            worst.keep(
                "gap." + part + "." + name,
                person(sitting, limbs, part),
                moved.getOrDefault(part, body),
                checks.leastMm(part, sitting)));
    openings.forEach(
        (section, opening) -> {
          for (Solid part : opening.parts()) {
            if (checks.clear(part.name(), sitting).without().isEmpty()) {
              worst.keep(
                  "open." + section + "." + part.name() + "." + name,
                  opening.sweep(),
                  part,
                  person(sitting, limbs, part.name()),
                  checks.leastMm(part.name(), sitting));
            }
          }
        });
    worst.into(readings, Optional.of(sitting.occupant()));
  }

  /** The person, as far as a part must be clear of them. */
  private Thing person(Sitting sitting, Map<Resting.Clear, Thing> limbs, String part) {
    return limbs.computeIfAbsent(
        checks.clear(part, sitting), clear -> new Thing(sitting.person(), clear.prisms(sitting)));
  }

  /** The least margin under each name; pairs with more than enough room are left out. */
  private static final class Worst {
    private final Map<String, Double> margins = new LinkedHashMap<>();

    void keep(String id, Thing a, Thing b, double leastMm) {
      Gap gap = Double.isNaN(leastMm) ? null : a.body().to(b.body(), leastMm + ROOM_MM);
      if (gap != null) {
        double mm = gap.gapMm();
        if (mm < 0) {
          mm = Math.min(mm, -Depth.of(a.prisms(), b.prisms()));
        }
        margins.merge(id, mm - leastMm, Math::min);
      }
    }

    /** As the other, with the first body on the whole of its way. */
    void keep(String id, Sweep sweep, Solid part, Thing other, double leastMm) {
      double near =
          Double.isNaN(leastMm)
              ? Double.NaN
              : sweep.firstBelow(part, other.body(), leastMm + ROOM_MM);
      if (!Double.isNaN(near)) {
        double mm = sweep.worst(part, other.body(), near).gap().gapMm();
        margins.merge(id, mm - leastMm, Math::min);
      }
    }

    void into(List<Reading> readings, Optional<Occupant> who) {
      String person = who.map(Occupant::person).orElse("");
      margins.forEach(
          (id, margin) -> readings.add(new Reading(id, who, person, Reading.Kind.GAP, margin)));
    }
  }
}
