package org.longlow.constraints.check.section;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Line;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.Section;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.lock.Turned;
import org.longlow.constraints.machine.line.LinePath;
import org.longlow.constraints.machine.linkage.RigidMotion;
import org.longlow.constraints.machine.linkage.SectionMotion;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Sections;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/** The ways of lines while wheels, steering and sections move. */
final class LineWays {

  /** Places from lock to lock that are looked at, straight ahead among them. */
  private static final int TURNS = 13;

  /** Places from shut to open that are looked at. */
  private static final int OPENINGS = 13;

  /**
   * A line in one state.
   *
   * @param condition of the machine
   * @param turnRad of the steering, left positive
   * @param opening of the section of the condition, else 0
   * @param alike where pins are, the steering straight, in each state that has the line so
   * @param turns whether it has points that the steering turns; else this is how it lies at any
   *     lock
   */
  record Way(
      Condition condition,
      double turnRad,
      double opening,
      LinePath path,
      Map<Condition, Places> alike,
      boolean turns) {

    /** Returns the same in another of the states that are alike. */
    Way in(Condition other) {
      return new Way(other, turnRad, opening, path, alike, turns);
    }
  }

  private final Layout layout;
  private final Places drawn;
  private final List<Standing> standings;
  private final double lockRad;
  private final Optional<Steered> steered;

  LineWays(Layout layout, Wheels wheels, Places drawn, List<Standing> standings) {
    this.layout = layout;
    this.drawn = drawn;
    this.standings = standings.stream().filter(s -> s.kind() != Stance.Kind.OPEN).toList();
    lockRad = drawn.value(layout.demands().limit(Demands.Key.LOCK));
    steered = Optional.ofNullable(wheels.fork()).flatMap(f -> Steered.of(layout, f, drawn));
  }

  /** Gives the line in each state that moves it; the first is as drawn. */
  void each(Line line, Consumer<Way> to) {
    Condition unladen = Condition.empty(Stance.Kind.UNLADEN);
    to.accept(new Way(unladen, 0, 0, drawn(line), Map.of(unladen, drawn), true));
    Map<List<PointMm>, List<Standing>> alike = new LinkedHashMap<>();
    for (Standing standing : standings) {
      List<PointMm> now = line.points().stream().map(p -> standing.places().pin(p.pin())).toList();
      alike.computeIfAbsent(now, n -> new ArrayList<>()).add(standing);
    }
    alike.values().forEach(all -> turned(line, all, to));
    line.points().stream()
        .map(p -> layout.pins().get(p.pin()).with())
        .filter(layout.sections()::containsKey)
        .distinct()
        .forEach(section -> opened(line, section, to));
  }

  /** Returns the axis that the front wheel turns about, if it is known. */
  Optional<SteeringAxis> head() {
    return steered.map(Steered::head);
  }

  /** Returns how far the front wheel is turned while a line lies so, rad. */
  double[] wheelTurns(Way way) {
    return way.turns() ? new double[] {way.turnRad()} : new double[] {-lockRad, 0, lockRad};
  }

  /** The way of a line as drawn. */
  LinePath drawn(Line line) {
    return path(line, drawn, Map.of(), 0, "", RigidMotion.NONE);
  }

  private void turned(Line line, List<Standing> alike, Consumer<Way> to) {
    Standing standing = alike.get(0);
    Map<Condition, Places> places = new LinkedHashMap<>();
    alike.forEach(s -> places.put(s.condition(), s.places()));
    Map<String, SteeringAxis> axes = axes(line, standing.places());
    int turns = axes.isEmpty() ? 1 : TURNS;
    for (int k = 0; k < turns; k++) {
      double turn = turns == 1 ? 0 : lockRad * (2.0 * k / (TURNS - 1) - 1);
      LinePath path = path(line, standing.places(), axes, turn, "", RigidMotion.NONE);
      to.accept(new Way(standing.condition(), turn, 0, path, places, !axes.isEmpty()));
    }
  }

  private void opened(Line line, String name, Consumer<Way> to) {
    Section section = layout.sections().get(name);
    SectionMotion motion;
    try {
      motion = Sections.motion(section, drawn);
    } catch (OutOfRange e) {
      return; // that it cannot open is said already
    }
    for (int k = 1; k < OPENINGS; k++) {
      double opening = (double) k / (OPENINGS - 1);
      LinePath path = path(line, drawn, Map.of(), 0, name, motion.at(opening));
      Condition open = Condition.open(name);
      to.accept(new Way(open, 0, opening, path, Map.of(open, drawn), true));
    }
  }

  /** The axis that each pin of a line turns about which turns at all. */
  private Map<String, SteeringAxis> axes(Line line, Places places) {
    if (steered.isEmpty()) {
      return Map.of();
    }
    Map<String, SteeringAxis> axes = new HashMap<>();
    for (Line.Point point : line.points()) {
      String pin = point.pin();
      if (layout.pins().get(pin).with().equals(Pin.FRONT_WHEEL)) {
        axes.put(pin, steered.get().head());
      } else {
        turning(pin).ifPresent(axis -> axes.put(pin, axis));
      }
    }
    return axes;
  }

  private Optional<SteeringAxis> turning(String pin) {
    Stream<Part> parts = layout.parts().values().stream();
    return parts
        .filter(p -> p.pins().contains(pin) && steered.get().turns(p.name()))
        .map(p -> steered.get().axisOf().get(p.name()))
        .findFirst();
  }

  private LinePath path(
      Line line,
      Places places,
      Map<String, SteeringAxis> axes,
      double turnRad,
      String section,
      RigidMotion motion) {
    List<double[]> points = new ArrayList<>();
    for (Line.Point point : line.points()) {
      PointMm p = places.pin(point.pin());
      if (layout.pins().get(point.pin()).with().equals(section)) {
        p = motion.apply(p);
      }
      double[] at = {p.x(), drawn.value(point.y()), p.z()};
      SteeringAxis axis = axes.get(point.pin());
      points.add(axis == null ? at : Turned.point(axis, at, turnRad));
    }
    return new LinePath(points);
  }
}
