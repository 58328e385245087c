package org.longlow.constraints.start;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.machine.Values;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.machine.ride.StaticSag;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.seat.Seats;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Shapes;
import org.longlow.constraints.stand.OnStand;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.Springs;
import org.longlow.constraints.stand.Stances;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.PointMm;

/** What a drawn machine weighs where, and what springs and stand follow from that. */
final class Weighing {

  /**
   * Share of the travel from full droop at which a wheel rests empty at least: off its stop. Common
   * practice: sag tables of suspension shops, 2 to 17 mm with nobody on it.
   */
  static final double EMPTY_AT = 0.08;

  /**
   * Share of the travel at which it rests under the heaviest, as drawn: a third. Common practice:
   * sag tables of suspension shops, 28 to 35 %.
   */
  static final double LADEN_AT = Rolling.DROOP_MM / (Rolling.DROOP_MM + Rolling.BUMP_MM);

  /**
   * Braking, in that of gravity, up to which the front keeps off its stop: riders without practice
   * reach 0.5 to 0.6 on a dry road (Ecker 2001, by quotation); a little is kept in hand.
   */
  static final double BRAKING_G = 0.62;

  /** A spring that dives too far is made so much stiffer at a time. */
  private static final double STIFFER = 1.02;

  private static final int MOST_STIFFER = 200;

  /** Each round comes about ten times nearer; what is left after so many is under a newton. */
  private static final int SPRING_ROUNDS = 5;

  /** How far behind the empty machine's centre of mass the stand's foot is, mm. */
  private static final double STAND_BEHIND_MM = 130;

  private final Layout layout;
  private final Wheels wheels;
  private final Places drawn;
  private final Map<String, PartShape> shapes;
  private final List<Rider> loads = new ArrayList<>();

  Weighing(Layout layout) {
    this.layout = layout;
    drawn = drawn(layout);
    shapes = Shapes.of(layout, drawn);
    wheels = Wheels.of(layout, drawn);
    List<Sitting> sittings = Seats.of(layout, drawn);
    loads.add(Rider.NOBODY);
    loads.addAll(Study.riders(sittings));
  }

  /** Where things are drawn, which is where the ties hold them. */
  private static Places drawn(Layout layout) {
    Measures measures = Measures.of(layout);
    Map<String, PointMm> pins = new LinkedHashMap<>();
    layout
        .pins()
        .forEach(
            (name, pin) ->
                pins.put(name, new PointMm(measures.drawn(pin.x()), measures.drawn(pin.z()))));
    return new Places(pins, measures.values(measures.start()::get));
  }

  /** Share of all weight on the front wheel under each load, nobody first. */
  List<Double> frontShares() {
    double base = drawn.pin("frontAxle").x();
    return loads.stream().map(load -> total(load).at().x() / base).toList();
  }

  private Springs on(Rider load) {
    return Springs.of(shapes.values(), load, wheels).orElseThrow();
  }

  private MassPoint total(Rider load) {
    Springs springs = on(load);
    return springs.sprung().plus(springs.atFront()).plus(springs.atRear()).total();
  }

  /**
   * Springs with which the wheels rest well between their stops under every load. What they carry
   * shifts with the wheels, so each round asks the machine as it rests on the springs of the last.
   */
  Tuning sprung(Tuning tuning) {
    Suspension front = wheels.frontSuspension();
    Suspension rear = wheels.rearSuspension();
    for (int round = 0; round < SPRING_ROUNDS; round++) {
      List<StaticSag> rests = new ArrayList<>();
      for (Rider load : loads) {
        rests.add(on(load).resting(wheels, front, rear));
      }
      Pressed ahead = pressed(front, on(Rider.NOBODY).atFront(), rests, s -> s.loads().frontN());
      Pressed behind = pressed(rear, on(Rider.NOBODY).atRear(), rests, s -> s.loads().rearN());
      rear = behind.spring(behind.softest());
      front = undived(ahead, rear);
    }
    return tuning.withSprings(rounded(front), rounded(rear));
  }

  /** The softest front spring that load and braking allow. */
  private Suspension undived(Pressed ahead, Suspension rear) {
    double rate = ahead.softest();
    for (int k = 0; k < MOST_STIFFER && dives(ahead.spring(rate), rear); k++) {
      rate *= STIFFER;
    }
    return ahead.spring(rate);
  }

  /** Whether the front comes to its stop under anybody, before the rear wheel lifts. */
  private boolean dives(Suspension front, Suspension rear) {
    return loads.stream()
        .skip(1)
        .map(this::on)
        .anyMatch(
            springs -> {
              double lift = springs.resting(wheels, front, rear).loads().brakeLiftG();
              return springs.braking(wheels, front, rear, Math.min(BRAKING_G, lift)).front().state()
                  == Suspension.State.BOTTOMED;
            });
  }

  /**
   * What presses a spring along the way of its axle.
   *
   * @param has the end, with whatever spring
   * @param leastN with the lightest load, where it is to rest empty
   * @param mostN with the heaviest, where it is to rest laden
   */
  private record Pressed(Suspension has, double leastN, double mostN) {

    /** Returns the softest rate with which it does not rest too low empty. */
    double softest() {
      double apart = travelAt(LADEN_AT, has) - travelAt(EMPTY_AT, has);
      return Math.max(1, (mostN - leastN) / apart);
    }

    /** Returns a spring of this rate on which it rests laden as it is to. */
    Suspension spring(double rateNPerMm) {
      double pressed = travelAt(LADEN_AT, has) + has.droopMm();
      double preload = Math.max(0, mostN - rateNPerMm * pressed);
      return new Suspension(has.path(), has.droopMm(), has.bumpMm(), rateNPerMm, preload);
    }
  }

  /** What presses a spring is what is carried times the rise of the axle along its path there. */
  private static Pressed pressed(
      Suspension has,
      MassPoint.Sum unsprung,
      List<StaticSag> rests,
      ToDoubleFunction<StaticSag> carried) {
    double empty = travelAt(EMPTY_AT, has);
    double laden = travelAt(LADEN_AT, has);
    double least = Double.POSITIVE_INFINITY;
    double most = 0;
    for (StaticSag rest : rests) {
      double newtons =
          carried.applyAsDouble(rest) - Values.STANDARD_GRAVITY_MS2 * unsprung.massKg();
      least = Math.min(least, newtons * rest.placement().turn(has.path().direction(empty)).z());
      most = Math.max(most, newtons * rest.placement().turn(has.path().direction(laden)).z());
    }
    return new Pressed(has, least, most);
  }

  /** Where along its path an axle has used a share of its travel up and down. */
  private static double travelAt(double share, Suspension has) {
    double low = has.path().axle(-has.droopMm()).z();
    double high = has.path().axle(has.bumpMm()).z();
    return has.path().travelForRiseMm(low + share * (high - low) - has.path().axle(0).z());
  }

  private static Tuning.Spring rounded(Suspension spring) {
    return new Tuning.Spring(
        Math.rint(spring.rateNPerMm() * 100) / 100, Math.rint(spring.preloadN()));
  }

  /**
   * A foot nearer to being on the road when the parked machine leans as far as is meant. Where it
   * is moves the springs, so this is asked some times over.
   */
  Tuning stood(Tuning tuning) {
    StandPart stand = layout.parts(StandPart.class).findFirst().orElseThrow();
    Standing parked =
        new Stances(wheels, shapes)
            .all(List.of()).stream()
                .filter(s -> s.kind() == Stance.Kind.PARKED)
                .findFirst()
                .orElseThrow();
    double lean = Math.toRadians(Fittings.STAND_LEAN_DEG);
    double off =
        new OnStand(wheels, parked, MassPoint.Sum.of(List.of(parked.load().total())), stand)
            .at(lean)
            .footOffMm();
    double x = Math.rint(total(Rider.NOBODY).at().x() - STAND_BEHIND_MM);
    double z = drawn.pin(stand.foot()).z() - off / Math.cos(lean);
    return tuning.withStand(x, Math.rint(z * 10) / 10);
  }
}
