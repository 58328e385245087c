package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.shape.ByPlaces;
import org.longlow.constraints.shape.Memo;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** Puts the machine into its stances. */
public final class Stances {

  /** Stances of one machine in which some part is elsewhere, those of the edit before too. */
  private static final int STANCES = 12;

  /** What hangs on several pins, shaped where these are in a stance. */
  private static final ByPlaces<Part, PartShape> IN_STANCE =
      new ByPlaces<>(64, STANCES, (part, places) -> Shapes.of(part, places, false));

  /** What hangs on one pin, shifted. */
  private static final Memo<Shifted, PartShape> SHIFTED =
      new Memo<>(128, shifted -> shifted.drawn.moved(new RigidMotion(0, shifted.by)));

  /** Where a part is drawn, which object tells, and by how much it is shifted. */
  private record Shifted(PartShape drawn, PointMm by) {

    @Override
    public boolean equals(Object other) {
      return other instanceof Shifted s && s.drawn == drawn && s.by.equals(by);
    }

    @Override
    public int hashCode() {
      return 31 * System.identityHashCode(drawn) + by.hashCode();
    }
  }

  private static final ByPlaces<Part, PartShape> PARKED =
      new ByPlaces<>(8, 2, (part, places) -> Shapes.of(part, places, true));

  private final Wheels wheels;
  private final Map<String, PartShape> drawn;
  private final Map<String, List<String>> pins = new HashMap<>();

  public Stances(Wheels wheels, Map<String, PartShape> drawn) {
    this.wheels = wheels;
    this.drawn = drawn;
    drawn.forEach((name, shape) -> pins.put(name, shape.pins()));
  }

  /**
   * Returns the machine in every stance that the layout asks for, or that every machine has.
   *
   * @param riders who may sit on it, for laden stances; each gives one
   */
  public List<Standing> all(List<Rider> riders) {
    List<Standing> standings = new ArrayList<>();
    if (!wheels.stands()) {
      return standings;
    }
    Layout layout = wheels.layout();
    Standing unladen = balanced(Condition.empty(Stance.Kind.UNLADEN), Rider.NOBODY);
    standings.add(unladen);
    if (isAsked(Stance.Kind.LIGHT)) {
      unladen
          .emptied()
          .map(s -> s.named(Condition.empty(Stance.Kind.LIGHT)))
          .ifPresent(standings::add);
    }
    for (Rider rider : riders) {
      standings.add(balanced(Condition.laden(rider.occupants()), rider));
    }
    standings.addAll(ends());
    if (layout.parts(StandPart.class).findAny().isPresent()) {
      standings.add(balanced(Condition.empty(Stance.Kind.PARKED), Rider.NOBODY));
    }
    layout.sections().keySet().forEach(name -> open(name, unladen).ifPresent(standings::add));
    return standings;
  }

  private boolean isAsked(Stance.Kind kind) {
    Collection<Stance> asked = wheels.layout().stances().values();
    return asked.isEmpty() || asked.stream().anyMatch(s -> s.kind() == kind);
  }

  /** Returns the machine with its wheels as far up and as far down as they go. */
  public List<Standing> ends() {
    Suspension f = wheels.frontSuspension();
    Suspension r = wheels.rearSuspension();
    List<Standing> ends = new ArrayList<>();
    ends.add(
        moved(
            Condition.empty(Stance.Kind.FULL_BUMP),
            Rider.NOBODY,
            new Travel(f.bumpMm(), r.bumpMm())));
    if (isAsked(Stance.Kind.FULL_DROOP)) {
      ends.add(
          moved(
              Condition.empty(Stance.Kind.FULL_DROOP),
              Rider.NOBODY,
              new Travel(-f.droopMm(), -r.droopMm())));
    }
    return ends;
  }

  /**
   * Returns the machine with a section fully open, and what its drive moves with it; empty if its
   * linkage cannot be made.
   */
  private Optional<Standing> open(String name, Standing unladen) {
    Map<String, PartShape> open;
    try {
      open = Sections.opened(name, wheels.layout(), wheels.drawn(), 1, drawn);
    } catch (OutOfRange e) {
      return Optional.empty();
    }
    Map<String, PartShape> shapes = new LinkedHashMap<>(unladen.shapes());
    shapes.putAll(open);
    Map<String, PartShape> moved = new LinkedHashMap<>(unladen.moved());
    moved.putAll(open);
    return Optional.of(
        new Standing(
            Condition.open(name),
            Rider.NOBODY,
            unladen.frontTravelMm(),
            unladen.rearTravelMm(),
            unladen.places(),
            unladen.ground(),
            shapes,
            moved,
            Load.of(shapes.values(), Rider.NOBODY, unladen.ground()),
            unladen.springs()));
  }

  /** Returns the stance in which springs and loads are in balance. */
  public Standing balanced(Condition condition, Rider rider) {
    Standing full = resting(condition, rider, drawn.values());
    return condition.kind() != Stance.Kind.PARKED && Contents.any(drawn.values())
        ? full.emptied(resting(condition, rider, Contents.without(drawn.values(), wheels.drawn())))
        : full;
  }

  /** Returns the stance in which springs are in balance with what these drawn parts weigh. */
  private Standing resting(Condition condition, Rider rider, Collection<PartShape> weighed) {
    Optional<Springs> springs = Springs.of(weighed, rider, wheels);
    Optional<StaticSag> sag = springs.map(s -> s.rest(wheels, 1));
    Standing at =
        at(
            condition,
            rider,
            sag.map(s -> s.front().travelMm()).orElse(0.0),
            sag.map(s -> s.rear().travelMm()).orElse(0.0),
            springs);
    return weighed == drawn.values()
        ? at
        : at.carrying(
            Load.of(Contents.without(at.shapes().values(), at.places()), rider, at.ground()));
  }

  /** Returns the machine with its wheels moved, whatever its springs would say. */
  public Standing moved(Condition condition, Rider rider, Travel travel) {
    return at(condition, rider, travel.frontMm(), travel.rearMm(), Optional.empty());
  }

  /** Returns the stance with these wheel travels, bump positive, mm. */
  private Standing at(
      Condition condition, Rider rider, double frontMm, double rearMm, Optional<Springs> springs) {
    Places places = wheels.moved(frontMm, rearMm);
    Ground ground = wheels.ground(places);
    boolean parked = condition.kind() == Stance.Kind.PARKED;
    Map<String, PartShape> shapes = new LinkedHashMap<>(drawn);
    Map<String, PartShape> moved = new LinkedHashMap<>();
    drawn.forEach(
        (part, shape) -> {
          boolean stand = parked && shape.part() instanceof StandPart;
          if (stand || movesBetween(pins.get(part), wheels.drawn(), places)) {
            PartShape now =
                stand ? PARKED.of(shape.part(), places) : moved(shape, wheels.drawn(), places);
            shapes.put(part, now);
            moved.put(part, now);
          }
        });
    return new Standing(
        condition,
        rider,
        frontMm,
        rearMm,
        places,
        ground,
        shapes,
        moved,
        Load.of(shapes.values(), rider, ground),
        springs);
  }

  /** Returns a part after its pins moved; what hangs on one pin shifts, else it is shaped anew. */
  private static PartShape moved(PartShape shape, Places before, Places after) {
    List<String> pins = shape.pins();
    return pins.size() > 1
        ? IN_STANCE.of(shape.part(), after)
        : SHIFTED.of(new Shifted(shape, shift(pins.get(0), before, after)));
  }

  /** Returns the body of a part after its pins moved, as it is in a stance; it is not kept. */
  static List<Prism> movedBody(PartShape shape, Places before, Places after) {
    List<String> pins = shape.pins();
    return pins.size() > 1
        ? Shapes.body(shape.part(), after)
        : shape.moved(new RigidMotion(0, shift(pins.get(0), before, after))).prisms();
  }

  private static PointMm shift(String pin, Places before, Places after) {
    return after.pin(pin).minus(before.pin(pin));
  }

  private static boolean movesBetween(List<String> pins, Places before, Places after) {
    for (String pin : pins) {
      if (!before.pin(pin).equals(after.pin(pin))) {
        return true;
      }
    }
    return false;
  }
}
