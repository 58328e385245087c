package org.longlow.constraints.place;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.HeadTarget;
import org.longlow.rider.pose.PoseSolver;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.seat.Reseat;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SettledNearby;
import org.longlow.rider.seat.TrunkPose;

/**
 * A crew member on a seat, settled anew as the pins of the seat move. Who cannot be seated has no
 * body.
 *
 * <p>Hip, trunk and head answer the seat as {@link SettledNearby} says; limbs follow from those and
 * from pegs and grips in closed form.
 */
final class SeatedBody extends MovingBody {

  private static final double TURN_RAD = 1e-6;

  private final Unknowns unknowns;
  private final Person person;
  private final SeatParts parts;
  private final List<String> pins;

  /** The person on the seat as drawn, where no free measure changes the person. */
  private final Reseat always;

  private final Body body;

  private SeatedBody(
      Unknowns unknowns,
      Person person,
      SeatParts parts,
      List<String> pins,
      int[] variables,
      Body body,
      Reseat always) {
    super(variables);
    this.unknowns = unknowns;
    this.person = person;
    this.parts = parts;
    this.pins = pins;
    this.body = body;
    this.always = always;
  }

  /** Returns everybody on every seat they must fit, by the name that tells them apart. */
  static List<SeatedBody> all(Layout layout, Unknowns unknowns) {
    Map<String, SeatParts> seats = SeatParts.of(layout);
    List<SeatedBody> all = new ArrayList<>();
    for (Person person : layout.crew().values()) {
      for (String seat : person.seats()) {
        SeatParts parts = seats.get(seat);
        if (parts != null) {
          all.add(of(unknowns, person, parts));
        }
      }
    }
    return all;
  }

  private static SeatedBody of(Unknowns unknowns, Person person, SeatParts parts) {
    Set<String> pins = new LinkedHashSet<>();
    for (Part part : parts.parts()) {
      pins.addAll(part.pins());
    }
    Drawn drawn = new Drawn();
    int[] ofBody =
        unknowns.variablesOf(List.of(), places -> drawn.body = Seats.body(person, places));
    int[] ofSeat =
        unknowns.variablesOf(
            pins, places -> drawn.seat = Seats.geometry(parts, places).orElse(null));
    boolean changes = ofBody.length > 0 || drawn.seat == null;
    return new SeatedBody(
        unknowns,
        person,
        parts,
        List.copyOf(pins),
        IntStream.concat(IntStream.of(ofBody), IntStream.of(ofSeat)).distinct().sorted().toArray(),
        changes ? null : drawn.body,
        changes ? null : new Reseat(drawn.body, drawn.seat));
  }

  /** Person and seat as drawn. */
  private static final class Drawn {
    private Body body;
    private SeatGeometry seat;
  }

  /** Returns what tells this sitting apart from others of the crew. */
  String who() {
    return parts.seat().equals(Occupant.RIDER)
        ? person.name()
        : person.name() + " on the " + parts.seat() + " seat";
  }

  @Override
  At make(double[] x, double[] values) {
    double[] here = x.clone();
    Places places = unknowns.places(here, pins);
    SeatGeometry seat = Seats.geometry(parts, places).orElse(null);
    if (seat == null) {
      return new At(values, null, List::of);
    }
    Body sitter = body != null ? body : Seats.body(person, places);
    Reseat reseat = always != null ? always : new Reseat(sitter, seat);
    Optional<SettledNearby> settled = reseat.on(seat);
    if (settled.isEmpty()) {
      return new At(values, null, List::of);
    }
    Sitter on = new Sitter(sitter);
    return new At(
        values,
        on.solid(person.name(), settled.get().here(), seat),
        () -> besides(here, on, settled.get(), seat));
  }

  private SeatGeometry seat(double[] x, int variable, double by) {
    double at = x[variable];
    x[variable] = at + by;
    SeatGeometry seat = Seats.geometry(parts, unknowns.places(x, pins)).orElseThrow();
    x[variable] = at;
    return seat;
  }

  private List<Beside> besides(double[] x, Sitter on, SettledNearby settled, SeatGeometry here) {
    int n = variables().length;
    TrunkPose at = settled.here();
    double[][] trunk = new double[4][n];
    List<Beside> besides = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double step = STEP_MM * unknowns.scale(variables()[i]);
      SeatGeometry less = seat(x, variables()[i], -step);
      SeatGeometry more = seat(x, variables()[i], step);
      boolean wider = !less.width().equals(more.width());
      boolean feet = wider || !less.foot().equals(more.foot());
      if (feet || !less.hand().equals(more.hand())) {
        double[] slopes = new double[n];
        slopes[i] = 1;
        besides.add(new Beside(on.outlines(at, less), on.outlines(at, more), 2 * step, slopes));
      }
      if (feet // what they carry the pan does not
          || !less.pan().equals(more.pan())
          || !less.back().equals(more.back())
          || !Objects.equals(less.headRest(), more.headRest())) {
        TrunkPose from = settled.on(less);
        TrunkPose to = settled.on(more);
        PointMm moved = to.hip().minus(from.hip());
        trunk[0][i] = moved.x() / (2 * step);
        trunk[1][i] = moved.z() / (2 * step);
        trunk[2][i] = (to.reclineRad() - from.reclineRad()) / (2 * step);
        trunk[3][i] = (to.headPitchRad() - from.headPitchRad()) / (2 * step);
      }
    }
    for (int way = 0; way < trunk.length; way++) {
      double step = way < 2 ? STEP_MM : TURN_RAD;
      besides.add(
          new Beside(
              on.outlines(along(at, way, -step), here),
              on.outlines(along(at, way, step), here),
              2 * step,
              trunk[way]));
    }
    return besides;
  }

  private static TrunkPose along(TrunkPose at, int way, double by) {
    return switch (way) {
      case 0 ->
          new TrunkPose(at.hip().plus(new PointMm(by, 0)), at.reclineRad(), at.headPitchRad());
      case 1 ->
          new TrunkPose(at.hip().plus(new PointMm(0, by)), at.reclineRad(), at.headPitchRad());
      case 2 -> new TrunkPose(at.hip(), at.reclineRad() + by, at.headPitchRad());
      default -> new TrunkPose(at.hip(), at.reclineRad(), at.headPitchRad() + by);
    };
  }

  /** A body that takes the posture of a trunk on a seat. */
  private record Sitter(Body body) {

    private Posture posture(TrunkPose trunk, SeatGeometry seat) {
      return PoseSolver.solve(
              body,
              trunk.hip(),
              trunk.reclineRad(),
              new HeadTarget.Pitch(trunk.headPitchRad()),
              seat.foot(),
              seat.hand(),
              seat.width())
          .posture();
    }

    org.longlow.constraints.gap.Solid solid(String name, TrunkPose trunk, SeatGeometry seat) {
      return new org.longlow.constraints.gap.Solid(
          name, Sitting.prisms(body, posture(trunk, seat)));
    }

    IntFunction<Geometry> outlines(TrunkPose trunk, SeatGeometry seat) {
      Figure figure = new Figure(body, posture(trunk, seat));
      return face -> figure.part(Figure.Part.values()[face]).outline();
    }
  }
}
