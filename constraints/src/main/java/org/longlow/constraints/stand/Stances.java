package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.MassPoint;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.rider.geom.PointMm;

/** Puts the machine into its stances. */
public final class Stances {

  /** Standard gravity, m/s², by definition (CGPM 1901). */
  public static final double GRAVITY = 9.80665;

  /**
   * Share of a front system's or swingarm's mass that moves with the wheel; common practice, no
   * source.
   */
  public static final double UNSPRUNG_SHARE = 0.5;

  /** Travels that agree with the loads to this are in balance, mm. */
  public static final double BALANCE_MM = 1e-6;

  private static final int MOST_ROUNDS = 100;

  private final Suspension suspension;
  private final Map<String, PartShape> drawn;

  public Stances(Suspension suspension, Map<String, PartShape> drawn) {
    this.suspension = suspension;
    this.drawn = drawn;
  }

  /**
   * Returns the machine in every stance that the layout asks for, or that every machine has.
   *
   * @param riders who may sit on it, for laden stances; each gives one
   */
  public List<Standing> all(List<Rider> riders) {
    List<Standing> standings = new ArrayList<>();
    if (!suspension.stands()) {
      return standings;
    }
    Layout layout = suspension.layout();
    Set<Stance.Kind> asked = new HashSet<>();
    layout.stances().values().forEach(s -> asked.add(s.kind()));
    boolean all = asked.isEmpty();
    standings.add(balanced("unladen", Stance.Kind.UNLADEN, Rider.NOBODY));
    for (Rider rider : riders) {
      standings.add(balanced("laden, " + rider.names(), Stance.Kind.LADEN, rider));
    }
    Suspension.Travel f = suspension.frontTravel();
    Suspension.Travel r = suspension.rearTravel();
    standings.add(at("full bump", Stance.Kind.FULL_BUMP, Rider.NOBODY, f.bumpMm(), r.bumpMm()));
    if (all || asked.contains(Stance.Kind.FULL_DROOP)) {
      standings.add(
          at("full droop", Stance.Kind.FULL_DROOP, Rider.NOBODY, -f.droopMm(), -r.droopMm()));
    }
    boolean stand = layout.parts().values().stream().anyMatch(Part.Stand.class::isInstance);
    if (stand) {
      standings.add(balanced("parked", Stance.Kind.PARKED, Rider.NOBODY));
    }
    return standings;
  }

  /** Returns the stance in which springs and loads are in balance. */
  public Standing balanced(String name, Stance.Kind kind, Rider rider) {
    Suspension.Travel f = suspension.frontTravel();
    Suspension.Travel r = suspension.rearTravel();
    double front = 0;
    double rear = 0;
    for (int round = 0; round < MOST_ROUNDS; round++) {
      Places places = suspension.moved(front, rear);
      Ground ground = suspension.ground(places);
      Load load = Load.of(masses(drawn, rider), ground);
      if (load == null) {
        break;
      }
      double nextFront = f.at(load.axles().frontN() - unsprungKg(true) * GRAVITY);
      double nextRear = r.at(load.axles().rearN() - unsprungKg(false) * GRAVITY);
      double change = Math.abs(nextFront - front) + Math.abs(nextRear - rear);
      front = nextFront;
      rear = nextRear;
      if (change < BALANCE_MM) {
        break;
      }
    }
    return at(name, kind, rider, front, rear);
  }

  private double unsprungKg(boolean atFront) {
    double mass = 0;
    for (PartShape shape : drawn.values()) {
      Part part = shape.part();
      if (part instanceof Part.Wheel w && (w.end() == Part.End.FRONT) == atFront) {
        mass += shape.massKg();
      } else if ((part instanceof Part.Front && atFront)
          || (part instanceof Part.Swingarm && !atFront)) {
        mass += UNSPRUNG_SHARE * shape.massKg();
      }
    }
    return mass;
  }

  /** Returns the stance with these wheel travels, bump positive, mm. */
  public Standing at(String name, Stance.Kind kind, Rider rider, double frontMm, double rearMm) {
    Places places = suspension.moved(frontMm, rearMm);
    Ground ground = suspension.ground(places);
    boolean parked = kind == Stance.Kind.PARKED;
    Map<String, PartShape> shapes = new LinkedHashMap<>(drawn);
    Map<String, PartShape> moved = new LinkedHashMap<>();
    drawn.forEach(
        (part, shape) -> {
          boolean stand = parked && shape.part() instanceof Part.Stand;
          if (stand || movesBetween(shape.part(), suspension.drawn(), places)) {
            PartShape now = Shapes.of(shape.part(), places, parked);
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

  private static boolean movesBetween(Part part, Places before, Places after) {
    for (String pin : part.pins()) {
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
