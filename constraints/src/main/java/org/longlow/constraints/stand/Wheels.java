package org.longlow.constraints.stand;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.longlow.constraints.document.FieldPath;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Pin;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.machine.chassis.Tyre;
import org.longlow.constraints.machine.ride.LinkedPath;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.machine.ride.WheelPath;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Tyres;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;

/**
 * The wheels of a layout and how they move against its frame.
 *
 * @param layout the layout
 * @param drawn places as drawn
 * @param front front wheel, or null
 * @param rear rear wheel, or null
 * @param fork the front system, or null
 * @param arm the swingarm, or null
 * @param frontSuspension path, stops and spring of the front wheel; rigid where it has no travel
 * @param rearSuspension likewise of the rear wheel
 * @param faults what is wrong with a suspension, which then counts as rigid, or with the wheels
 */
public record Wheels(
    Layout layout,
    Places drawn,
    WheelPart front,
    WheelPart rear,
    FrontPart fork,
    SwingarmPart arm,
    Suspension frontSuspension,
    Suspension rearSuspension,
    List<Fault> faults) {

  /** Axles nearer than this carry nothing; two wheels would lie in each other, mm. */
  public static final double LEAST_WHEELBASE_MM = 100;

  /**
   * What is wrong with a suspension or with the wheels.
   *
   * @param about the part, or {@code wheels}
   * @param text one sentence without its full stop
   */
  public record Fault(String about, String text) {

    /** Returns the place in the layout, such as {@code $.parts.fork}. */
    public String path() {
      return about.equals(WHEELS) ? "$.parts" : FieldPath.key("$.parts", about);
    }
  }

  private static final String WHEELS = "wheels";

  /** Axles nearer than their radii differ and this have no road under both, mm. */
  private static final double LEAST_APART_MM = 1;

  public Wheels {
    faults = List.copyOf(faults);
  }

  /** Returns the wheels of {@code layout}. */
  public static Wheels of(Layout layout, Places drawn) {
    WheelPart front = last(layout.parts(WheelPart.class).filter(w -> w.end() == Part.End.FRONT));
    WheelPart rear = last(layout.parts(WheelPart.class).filter(w -> w.end() == Part.End.REAR));
    FrontPart fork = last(layout.parts(FrontPart.class));
    SwingarmPart arm = last(layout.parts(SwingarmPart.class));
    List<Fault> faults = new ArrayList<>();
    Suspension atFront =
        front == null
            ? null
            : suspension(fork, (f, at) -> path(layout, f, at), front, drawn, faults);
    Suspension atRear = rear == null ? null : suspension(arm, Wheels::path, rear, drawn, faults);
    if (front != null && rear != null && !apart(front, rear, drawn)) {
      faults.add(new Fault(WHEELS, notApart(front, rear, drawn)));
    }
    Wheels wheels = new Wheels(layout, drawn, front, rear, fork, arm, atFront, atRear, faults);
    return wheels.sprungByShock().map(s -> wheels.withRear(s)).orElse(wheels);
  }

  private Wheels withRear(Suspension suspension) {
    return new Wheels(layout, drawn, front, rear, fork, arm, frontSuspension, suspension, faults);
  }

  /** Returns the rear end with the spring of its shock, where nobody says its rate at the wheel. */
  private Optional<Suspension> sprungByShock() {
    return rearSuspension == null || rearSuspension.known()
        ? Optional.empty()
        : shock()
            .flatMap(
                s ->
                    s.forcesN(
                        rearSuspension.droopMm(),
                        rearSuspension.bumpMm(),
                        rearSuspension.preloadN()))
            .map(rearSuspension::withForces);
  }

  private static <P> P last(Stream<P> parts) {
    return parts.reduce((before, after) -> after).orElse(null);
  }

  private static <C extends Part.Carrier> Suspension suspension(
      C carrier,
      BiFunction<C, Places, WheelPath> path,
      WheelPart wheel,
      Places drawn,
      List<Fault> faults) {
    PointMm axle = drawn.pin(wheel.axle());
    try {
      if (carrier != null) {
        return suspension(carrier, path.apply(carrier, drawn), drawn);
      }
    } catch (OutOfRange e) {
      faults.add(
          new Fault(
              carrier.name(),
              carrier.name()
                  + " cannot work as drawn and counts as rigid, so that its sag, its dive and what"
                  + " it meets on its travel are not told: "
                  + e.getMessage()));
    }
    return Suspension.rigid(WheelPath.rigid(axle));
  }

  private static WheelPath path(SwingarmPart arm, Places drawn) {
    return WheelPath.swingarm(drawn.pin(arm.pivot()), drawn.pin(arm.axle()));
  }

  private static WheelPath path(Layout layout, FrontPart fork, Places drawn) {
    PointMm axle = drawn.pin(fork.axle());
    if (fork.type().twoLinks() && fork.links().whole() && fork.pivot().isPresent()) {
      goWithWheel(layout, fork);
      return new LinkedPath(
          drawn.pin(fork.pivot().get()),
          drawn.pin(fork.links().joint().get()),
          drawn.pin(fork.links().rodPivot().get()),
          drawn.pin(fork.links().rodJoint().get()),
          axle);
    }
    if (fork.type() == FrontPart.Kind.TELESCOPIC || fork.pivot().isEmpty()) {
      PointMm up = drawn.pin(fork.top()).minus(drawn.pin(fork.bottom()));
      return WheelPath.telescopic(axle, Math.atan2(-up.x(), up.z()));
    }
    PointMm pivot = drawn.pin(fork.pivot().get());
    return fork.type() == FrontPart.Kind.LEADING_LINK
        ? WheelPath.leadingLink(pivot, axle)
        : WheelPath.trailingLink(pivot, axle);
  }

  /** What the upright holds moves with it, and nothing else of the front. */
  private static void goWithWheel(Layout layout, FrontPart fork) {
    List<String> go = new ArrayList<>();
    go.add(fork.links().joint().orElseThrow());
    go.add(fork.links().rodJoint().orElseThrow());
    List<String> stay = new ArrayList<>();
    stay.add(fork.pivot().orElseThrow());
    stay.add(fork.links().rodPivot().orElseThrow());
    (fork.type().turns() ? stay : go).addAll(List.of(fork.top(), fork.bottom()));
    for (String pin : go) {
      if (!pin.equals(fork.axle()) && !layout.pins().get(pin).with().equals(Pin.FRONT_WHEEL)) {
        throw new OutOfRange(
            "pin " + pin + " is on the upright; write \"with\": \"front-wheel\" for it");
      }
    }
    for (String pin : stay) {
      if (pin.equals(fork.axle()) || layout.pins().get(pin).with().equals(Pin.FRONT_WHEEL)) {
        throw new OutOfRange("pin " + pin + " moves with the wheel and must stay with the frame");
      }
    }
  }

  private static Suspension suspension(Part.Carrier carrier, WheelPath path, Places drawn) {
    // bump and droop are how far the wheel rises and falls, not how far it goes along its path
    return new Suspension(
        path,
        -path.travelForRiseMm(-drawn.value(carrier.droop())),
        path.travelForRiseMm(drawn.value(carrier.bump())),
        carrier.rate().map(drawn::value).orElse(Double.NaN),
        carrier.preload().map(drawn::value).orElse(0.0));
  }

  /** Returns the carriers of wheels that have travel and no rate. */
  public List<String> withoutRate() {
    List<String> names = new ArrayList<>();
    if (fork != null && frontSuspension != null && !frontSuspension.known()) {
      names.add(fork.name());
    }
    if (arm != null && rearSuspension != null && !rearSuspension.known()) {
      names.add(arm.name());
    }
    return names;
  }

  /** Returns whether there are two wheels, far enough apart for one road to lie under both. */
  public boolean stands() {
    return front != null && rear != null && apart(front, rear, drawn);
  }

  private static boolean swapped(WheelPart front, WheelPart rear, Places drawn) {
    return drawn.pin(rear.axle()).x() - drawn.pin(front.axle()).x() >= LEAST_WHEELBASE_MM;
  }

  private static String notApart(WheelPart front, WheelPart rear, Places drawn) {
    double ahead = drawn.pin(front.axle()).x() - drawn.pin(rear.axle()).x();
    if (ahead >= LEAST_WHEELBASE_MM) {
      return String.format(
          Locale.ROOT,
          "the radii of %s, %.1f mm, and %s, %.1f mm, differ by as much as their axles are apart,"
              + " %.1f mm, so no road lies under both; mend the radius of one, or its tyre",
          front.name(),
          Tyres.of(front, drawn).freeRadiusMm(),
          rear.name(),
          Tyres.of(rear, drawn).freeRadiusMm(),
          drawn.pin(front.axle()).distance(drawn.pin(rear.axle())));
    }
    return String.format(
        Locale.ROOT,
        "the front axle, %s, comes %.1f mm ahead of the rear axle, %s, and at least %.0f mm"
            + " are needed, so the machine stands on no road; %s",
        front.axle(),
        ahead,
        rear.axle(),
        LEAST_WHEELBASE_MM,
        swapped(front, rear, drawn)
            ? "if front and rear are swapped, exchange the 'end' of %s and %s; else look where they are drawn and at their ties"
                .formatted(front.name(), rear.name())
            : "look where they are drawn and at their ties");
  }

  private static boolean apart(WheelPart front, WheelPart rear, Places drawn) {
    double distance = drawn.pin(front.axle()).distance(drawn.pin(rear.axle()));
    double radii =
        Math.abs(Tyres.of(front, drawn).freeRadiusMm() - Tyres.of(rear, drawn).freeRadiusMm());
    double wheelbase = drawn.pin(front.axle()).x() - drawn.pin(rear.axle()).x();
    return wheelbase >= LEAST_WHEELBASE_MM && distance > radii + LEAST_APART_MM;
  }

  public Tyre frontTyre() {
    return Tyres.of(front, drawn);
  }

  public Tyre rearTyre() {
    return Tyres.of(rear, drawn);
  }

  /** Returns places with the wheels moved by these travels along their paths, bump positive, mm. */
  public Places moved(double frontMm, double rearMm) {
    if (frontMm == 0 && rearMm == 0) {
      return drawn;
    }
    Map<String, PointMm> pins = new LinkedHashMap<>(drawn.pins());
    move(pins, Pin.FRONT_WHEEL, front.axle(), frontSuspension.path(), frontMm);
    move(pins, Pin.REAR_WHEEL, rear.axle(), rearSuspension.path(), rearMm);
    for (String name : onRocker()) {
      pins.put(name, pin(name, frontMm, rearMm));
    }
    return drawn.withPins(pins);
  }

  private void move(
      Map<String, PointMm> pins, String carrier, String axle, WheelPath path, double travelMm) {
    if (travelMm == 0) {
      return;
    }
    layout
        .pins()
        .forEach(
            (name, pin) -> {
              if (name.equals(axle) || pin.with().equals(carrier)) {
                pins.put(name, path.carried(drawn.pin(name), travelMm));
              }
            });
  }

  /** Returns where a pin is with the wheels moved by these travels, as {@link #moved} puts it. */
  public PointMm pin(String name, double frontMm, double rearMm) {
    if (onRocker().contains(name)) {
      return shock().orElseThrow().pin(name, rearMm);
    }
    if (carries(Part.End.FRONT, name)) {
      return frontSuspension.path().carried(drawn.pin(name), frontMm);
    }
    return carries(Part.End.REAR, name)
        ? rearSuspension.path().carried(drawn.pin(name), rearMm)
        : drawn.pin(name);
  }

  /** Returns how the shock of the arm goes, if it has one. */
  public Optional<ShockTravel> shock() {
    return arm == null || rear == null
        ? Optional.empty()
        : ShockTravel.of(
            arm.shock(), drawn, pin -> carries(Part.End.REAR, pin), rearSuspension.path());
  }

  private List<String> onRocker() {
    return shock().map(ShockTravel::onRocker).orElse(List.of());
  }

  /** Returns whether a pin moves with a wheel. */
  public boolean carries(String pin) {
    return onRocker().contains(pin) || carries(Part.End.FRONT, pin) || carries(Part.End.REAR, pin);
  }

  /** Returns whether there are pins, and all move with the wheel of an end. */
  boolean carriesAll(Part.End end, List<String> pins) {
    for (String pin : pins) {
      if (!carries(end, pin)) {
        return false;
      }
    }
    return !pins.isEmpty();
  }

  /** Returns whether a pin moves with the wheel of an end. */
  boolean carries(Part.End end, String pin) {
    boolean atFront = end == Part.End.FRONT;
    return pin.equals((atFront ? front : rear).axle())
        || layout.pins().get(pin).with().equals(atFront ? Pin.FRONT_WHEEL : Pin.REAR_WHEEL);
  }

  /**
   * Returns how far the mass of a part that moves with a wheel, as drawn, rises for each mm of the
   * axle. What hangs on one pin goes with that, what has several turns with the arm.
   */
  double riseShare(Part.End end, PartShape shape) {
    List<String> pins = shape.pins();
    double x = pins.size() == 1 ? drawn.pin(pins.get(0)).x() : shape.centre().x();
    WheelPath path = suspension(end).path();
    PointMm axle = path.axle(0);
    return 1 + path.turnPerMm(axle) * (x - axle.x()) / path.directionAt(axle).z();
  }

  private Suspension suspension(Part.End end) {
    return end == Part.End.FRONT ? frontSuspension : rearSuspension;
  }

  /** Returns the road under the wheels in {@code places}. */
  public Ground ground(Places places) {
    return Ground.under(
        places.pin(rear.axle()),
        rearTyre().freeRadiusMm(),
        places.pin(front.axle()),
        frontTyre().freeRadiusMm());
  }
}
