package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.MassPoint;
import org.longlow.constraints.machine.RigidMotion;
import org.longlow.constraints.machine.SectionMotion;
import org.longlow.constraints.machine.StaticSag;
import org.longlow.constraints.machine.Suspension;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;

/** Puts the machine into its stances. */
public final class Stances {

  /**
   * Share of a front system's or swingarm's mass that moves with the wheel; common practice, no
   * source.
   */
  public static final double UNSPRUNG_SHARE = 0.5;

  private final Wheels wheels;
  private final Map<String, PartShape> drawn;
  private final Map<String, List<String>> pins = new HashMap<>();

  public Stances(Wheels wheels, Map<String, PartShape> drawn) {
    this.wheels = wheels;
    this.drawn = drawn;
    drawn.forEach((name, shape) -> pins.put(name, shape.part().pins()));
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
    Set<Stance.Kind> asked = new HashSet<>();
    layout.stances().values().forEach(s -> asked.add(s.kind()));
    boolean all = asked.isEmpty();
    Standing unladen = balanced("unladen", Stance.Kind.UNLADEN, Rider.NOBODY);
    standings.add(unladen);
    for (Rider rider : riders) {
      standings.add(balanced("laden, " + rider.names(), Stance.Kind.LADEN, rider));
    }
    Suspension f = wheels.frontSuspension();
    Suspension r = wheels.rearSuspension();
    standings.add(at("full bump", Stance.Kind.FULL_BUMP, Rider.NOBODY, f.bumpMm(), r.bumpMm()));
    if (all || asked.contains(Stance.Kind.FULL_DROOP)) {
      standings.add(
          at("full droop", Stance.Kind.FULL_DROOP, Rider.NOBODY, -f.droopMm(), -r.droopMm()));
    }
    boolean stand = layout.parts().values().stream().anyMatch(Part.Stand.class::isInstance);
    if (stand) {
      standings.add(balanced("parked", Stance.Kind.PARKED, Rider.NOBODY));
    }
    layout
        .sections()
        .forEach((name, section) -> open(name, section, unladen).ifPresent(standings::add));
    return standings;
  }

  /** Returns the machine with a section fully open; empty if its linkage cannot be made. */
  private Optional<Standing> open(String name, Section section, Standing unladen) {
    Map<String, PartShape> open;
    try {
      SectionMotion motion = Sections.motion(section, wheels.drawn());
      open = Sections.shapes(section, motion, 1, drawn);
    } catch (IllegalArgumentException e) {
      return Optional.empty();
    }
    Map<String, PartShape> shapes = new LinkedHashMap<>(unladen.shapes());
    shapes.putAll(open);
    Map<String, PartShape> moved = new LinkedHashMap<>(unladen.moved());
    moved.putAll(open);
    return Optional.of(
        new Standing(
            "open, " + name,
            Stance.Kind.OPEN,
            "",
            name,
            unladen.frontTravelMm(),
            unladen.rearTravelMm(),
            unladen.places(),
            unladen.ground(),
            shapes,
            moved,
            unladen.load()));
  }

  /** Returns the stance in which springs and loads are in balance. */
  public Standing balanced(String name, Stance.Kind kind, Rider rider) {
    List<MassPoint> sprung = new ArrayList<>(rider.masses());
    List<MassPoint> atFront = new ArrayList<>();
    List<MassPoint> atRear = new ArrayList<>();
    drawn.values().forEach(shape -> share(shape, sprung, atFront, atRear));
    double front = 0;
    double rear = 0;
    if (!atFront.isEmpty() && !atRear.isEmpty()) {
      StaticSag sag =
          StaticSag.of(
              new StaticSag.End(
                  wheels.frontSuspension(),
                  MassPoint.total(atFront),
                  wheels.frontTyre().freeRadiusMm()),
              new StaticSag.End(
                  wheels.rearSuspension(),
                  MassPoint.total(atRear),
                  wheels.rearTyre().freeRadiusMm()),
              sprung,
              1);
      front = sag.front().travelMm();
      rear = sag.rear().travelMm();
    }
    return at(name, kind, rider, front, rear);
  }

  /** Puts a part's mass on the springs or on a wheel; carriers are shared half and half. */
  private static void share(
      PartShape shape, List<MassPoint> sprung, List<MassPoint> atFront, List<MassPoint> atRear) {
    Part part = shape.part();
    double unsprung =
        part instanceof Part.Wheel
            ? 1
            : part instanceof Part.Front || part instanceof Part.Swingarm ? UNSPRUNG_SHARE : 0;
    boolean front =
        part instanceof Part.Front || (part instanceof Part.Wheel w && w.end() == Part.End.FRONT);
    add(sprung, shape, 1 - unsprung);
    add(front ? atFront : atRear, shape, unsprung);
  }

  private static void add(List<MassPoint> into, PartShape shape, double share) {
    if (share > 0 && shape.massKg() > 0) {
      PointMm c = shape.centre();
      into.add(new MassPoint(shape.massKg() * share, c.x(), c.z()));
    }
  }

  /** Returns the stance with these wheel travels, bump positive, mm. */
  public Standing at(String name, Stance.Kind kind, Rider rider, double frontMm, double rearMm) {
    Places places = wheels.moved(frontMm, rearMm);
    Ground ground = wheels.ground(places);
    boolean parked = kind == Stance.Kind.PARKED;
    Map<String, PartShape> shapes = new LinkedHashMap<>(drawn);
    Map<String, PartShape> moved = new LinkedHashMap<>();
    drawn.forEach(
        (part, shape) -> {
          boolean stand = parked && shape.part() instanceof Part.Stand;
          if (stand || movesBetween(pins.get(part), wheels.drawn(), places)) {
            PartShape now =
                stand
                    ? Shapes.of(shape.part(), places, true)
                    : moved(pins.get(part), shape, places);
            shapes.put(part, now);
            moved.put(part, now);
          }
        });
    return new Standing(
        name,
        kind,
        rider.names(),
        "",
        frontMm,
        rearMm,
        places,
        ground,
        shapes,
        moved,
        Load.of(masses(shapes, rider), ground));
  }

  /** What hangs on one pin shifts with it; anything else is shaped again. */
  private PartShape moved(List<String> pins, PartShape shape, Places places) {
    if (pins.size() > 1) {
      return Shapes.of(shape.part(), places, false);
    }
    String pin = pins.get(0);
    return shape.moved(new RigidMotion(0, places.pin(pin).minus(wheels.drawn().pin(pin))));
  }

  private static boolean movesBetween(List<String> pins, Places before, Places after) {
    for (String pin : pins) {
      if (!before.pin(pin).equals(after.pin(pin))) {
        return true;
      }
    }
    return false;
  }

  /** Returns the masses of parts and people, in the axes of the frame. */
  static List<MassPoint> masses(Map<String, PartShape> shapes, Rider rider) {
    List<MassPoint> masses = new ArrayList<>(rider.masses());
    for (PartShape shape : shapes.values()) {
      if (shape.massKg() > 0) {
        PointMm c = shape.centre();
        masses.add(new MassPoint(shape.massKg(), c.x(), c.z()));
      }
    }
    return masses;
  }
}
