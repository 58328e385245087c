package org.longlow.constraints.suit;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.longlow.constraints.check.PartialChecks;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.person.SightFindings;
import org.longlow.constraints.check.road.LoadFindings;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Load;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Springs;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/**
 * Measures what changes when some pins of a machine move a little from a base place: the crew anew,
 * and the moved parts against all else. What stays (other parts, their indexes, how the springs
 * sag) is kept from the base; take a new base every few steps. Not for several threads.
 */
final class Gauge {

  private static final double UNMOVED_MM = 1e-9;

  private final Layout layout;
  private final Places base;
  private final Set<String> company;
  private final Map<String, PartShape> shapes;
  private final Map<String, SeatParts> seats;
  private final Map<String, org.longlow.rider.body.Body> people = new LinkedHashMap<>();
  private final Wheels wheels;
  private final List<Standing> standings;
  private final Room room;
  private final PartialChecks checks;
  private final List<Sitting> baseSittings;

  /**
   * @param base where the pins are
   * @param company pins that move or may come along; their parts are always looked at
   * @param who which of the crew to look at, by name
   * @param checks what is asked of the machine
   */
  Gauge(
      Layout layout,
      Places base,
      Set<String> company,
      Predicate<String> who,
      PartialChecks checks) {
    this.company = company;
    this.checks = checks;
    this.layout = layout;
    this.base = base;
    shapes = Shapes.of(layout, base);
    seats = SeatParts.of(layout);
    for (Person person : layout.crew().values()) {
      if (who.test(person.name())) {
        people.put(person.name(), Seats.body(person, base));
      }
    }
    wheels = Wheels.of(layout, base);
    baseSittings = sittings(base, null);
    standings = new Stances(wheels, shapes).all(Study.riders(baseSittings));
    room = new Room(layout, base, shapes, standings, checks);
  }

  /** The crew on their seats; on seats of which no part moved they sit as at the base. */
  private List<Sitting> sittings(Places places, Map<String, PartShape> moved) {
    List<Sitting> sittings = new ArrayList<>();
    people.forEach(
        (name, body) -> {
          for (String seat : layout.crew().get(name).seats()) {
            SeatParts parts = seats.get(seat);
            if (parts != null && moved != null && still(parts, moved)) {
              sittings.add(
                  baseSittings.stream()
                      .filter(s -> s.person().equals(name) && s.seat().equals(seat))
                      .findFirst()
                      .orElseThrow());
            } else if (parts != null) {
              sittings.add(Seats.sit(name, body, parts, places));
            }
          }
        });
    return sittings;
  }

  private boolean still(SeatParts seat, Map<String, PartShape> moved) {
    return seat.parts().stream()
        .noneMatch(
            part ->
                moved.containsKey(part.name())
                    && moved.get(part.name()) != shapes.get(part.name()));
  }

  /** Returns every margin with the pins at {@code places}. */
  List<Reading> at(Places places) {
    Map<String, PartShape> moved = moved(places);
    List<Sitting> sittings = sittings(places, moved);
    List<Rider> riders = Study.riders(sittings);
    List<Standing> full = new ArrayList<>();
    List<Standing> partial = new ArrayList<>();
    for (Standing s : standings) {
      full.add(with(s, moved, riders, false));
      partial.add(with(s, moved, riders, true));
    }
    List<Reading> readings = new ArrayList<>();
    for (Finding f : checks.machine(partial)) {
      add(readings, Reading.of(f, f.kind() == LoadFindings.LOAD ? f.subject() : ""));
    }
    wishedShare(readings, partial);
    for (Sitting sitting : sittings) {
      crew(readings, sitting, full);
    }
    room.gaps(readings, moved, places, sittings);
    return readings;
  }

  private Map<String, PartShape> moved(Places places) {
    Set<String> pins = new HashSet<>();
    places
        .pins()
        .forEach(
            (name, p) -> {
              if (p.distance(base.pin(name)) > UNMOVED_MM) {
                pins.add(name);
              }
            });
    Map<String, PartShape> moved = new LinkedHashMap<>();
    shapes.forEach(
        (name, shape) -> {
          List<String> own = shape.pins();
          if (own.stream().anyMatch(pins::contains)) {
            moved.put(name, Shapes.of(shape.part(), places, false));
          } else if (own.stream().anyMatch(company::contains)) {
            moved.put(name, shape);
          }
        });
    return moved;
  }

  /** The stance with the moved parts and today's riders in it; only the moved parts if asked. */
  private Standing with(
      Standing s, Map<String, PartShape> moved, List<Rider> riders, boolean onlyMoved) {
    Map<String, PartShape> now = new LinkedHashMap<>(s.shapes());
    moved.forEach(
        (name, shape) -> {
          if (!s.moved().containsKey(name)) {
            now.put(name, shape);
          }
        });
    Rider rider = s.rider();
    Load load = s.load();
    Optional<Springs> springs = s.springs();
    if (s.kind() == Stance.Kind.LADEN) {
      Optional<Rider> today =
          riders.stream().filter(r -> r.occupants().equals(s.condition().aboard())).findFirst();
      rider = today.orElse(rider);
      load = today.map(r -> Load.of(now.values(), r, s.ground())).orElse(null);
      springs = today.flatMap(r -> Springs.of(now.values(), r, wheels));
    }
    if (onlyMoved) {
      now.keySet().retainAll(moved.keySet());
    }
    return new Standing(
        s.condition(),
        rider,
        s.frontTravelMm(),
        s.rearTravelMm(),
        s.places(),
        s.ground(),
        now,
        s.moved(),
        load,
        springs);
  }

  private static void add(List<Reading> into, Reading reading) {
    if (reading != null) {
      into.add(reading);
    }
  }

  private void crew(List<Reading> readings, Sitting sitting, List<Standing> full) {
    String person = sitting.person();
    for (Finding f : checks.crew(sitting, full)) {
      if (f.kind() == SightFindings.SIGHT) {
        sight(readings, sitting, f, full);
      } else {
        add(readings, Reading.of(f, person));
      }
    }
    sitting
        .seated()
        .filter(s -> s.headGapMm() > 0 && s.wantsHeadRest())
        .ifPresent(
            s ->
                readings.add(
                    new Reading(
                        "head." + sitting.occupant().name(),
                        Optional.of(sitting.occupant()),
                        person,
                        Reading.Kind.HEAD,
                        -s.headGapMm())));
  }

  /**
   * The nearest road seen jumps to nowhere when the sight line comes level, so the search looks at
   * the angle of the line: how far it lies below the line to the road that is asked for.
   */
  private void sight(List<Reading> readings, Sitting sitting, Finding f, List<Standing> full) {
    Condition stance = f.stance().orElseThrow();
    Standing s = full.stream().filter(t -> t.condition().equals(stance)).findFirst().orElseThrow();
    if (f.where().isEmpty()) {
      return; // nothing ahead
    }
    PointMm eye = s.ground().toRoad(sitting.posture().orElseThrow().eye());
    PointMm over = s.ground().toRoad(f.where().get());
    double line = Math.atan2(over.z() - eye.z(), over.x() - eye.x());
    double limit = base.value(layout.demands().limit(Demands.Key.SIGHT));
    readings.add(
        new Reading(
            f.id(),
            f.who(),
            sitting.person(),
            Reading.Kind.SIGHT,
            // an edge that hangs before the road has to come up to the level of the eye
            SightFindings.late(f.about()) ? below(eye, limit, line) : Math.toDegrees(line)));
    for (Map.Entry<String, Wish> e : layout.wishes().entrySet()) {
      if (e.getValue().kind() == Wish.Kind.SIGHT && e.getValue().is().isPresent()) {
        double miss = Math.min(0, below(eye, base.value(e.getValue().is().get()), line));
        readings.add(
            new Reading(
                "wish." + e.getKey() + "." + sitting.person(),
                Optional.of(sitting.occupant()),
                sitting.person(),
                Reading.Kind.WISHED_SIGHT,
                Math.sqrt(e.getValue().weight()) * miss));
      }
    }
  }

  private static double below(PointMm eye, double roadMm, double lineRad) {
    return Math.toDegrees(-Math.atan2(eye.z(), roadMm) - lineRad);
  }

  private void wishedShare(List<Reading> readings, List<Standing> partial) {
    layout
        .wishes()
        .forEach(
            (name, wish) -> {
              if (wish.kind() == Wish.Kind.FRONT_SHARE && wish.is().isPresent()) {
                double is = base.value(wish.is().get());
                for (Standing s : partial) {
                  if (s.kind() == Stance.Kind.LADEN
                      && s.load() != null
                      && people.containsKey(s.condition().people())) {
                    readings.add(
                        new Reading(
                            "wish." + name + "." + s.condition().people(),
                            Optional.empty(),
                            s.condition().people(),
                            Reading.Kind.WISHED_SHARE,
                            -Math.sqrt(wish.weight())
                                * Math.abs(s.load().axles().frontShare() - is)));
                  }
                }
              }
            });
  }
}
