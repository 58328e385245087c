package org.longlow.constraints.check.whole;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Drives;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.shape.Runs;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** What a machine still lacks before it can be ridden: what holds its wheels, frame, steering. */
public final class CompletenessFindings {

  /** What a machine must have to be ridden. */
  public static final FindingKind COMPLETENESS =
      FindingKind.leading("completeness", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** What is welded or clamped to something is no farther from it than this, mm; judgement. */
  static final double JOINED_MM = 25;

  /** What is bolted on has brackets that nobody draws, no longer than this, mm; judgement. */
  static final double BRACKET_MM = 80;

  private static final Basis SOURCE =
      Basis.judgement("judgement: what must be there to ride, and joints within 25 mm");

  private final Layout layout;
  private final Wheels wheels;
  private final GapFindings bodies;
  private final List<String> lacks = new ArrayList<>();

  public CompletenessFindings(Layout layout, Wheels wheels, GapFindings bodies) {
    this.layout = layout;
    this.wheels = wheels;
    this.bodies = bodies;
  }

  public Finding of() {
    wheels();
    brakes();
    if (rails().isEmpty()) {
      lacks.add("there is no frame: draw its rails");
    }
    if (none(p -> p.traits().duty() == Duty.DRIVE || p instanceof WheelPart w && w.driven())) {
      lacks.add("nothing drives it: draw an engine or a motor");
    }
    if (layout.parts(StandPart.class).findAny().isEmpty()) {
      lacks.add("it has nothing to stand on when it is left: draw a stand");
    }
    steering();
    hinges();
    joints();
    carried();
    driven();
    return Finding.note(
            COMPLETENESS,
            About.thing("machine", "machine"),
            lacks.isEmpty() ? Verdict.PASS : Verdict.CAUTION,
            SOURCE,
            lacks.isEmpty()
                ? Words.of(
                    "Both wheels are held and braked, there are a frame, a drive and a stand, and"
                        + " the grips are on something that steers.")
                : Words.of("This machine cannot be ridden yet: " + String.join("; ", lacks) + "."))
        .measured(Figures.atMost(lacks.size(), 0, FigureUnit.COUNT));
  }

  /** A brake that reaches no farther from its axle holds nobody, mm; judgement. */
  private static final double LEAST_BRAKE_MM = 40;

  /** Of two-wheelers each wheel has a brake of its own (UN R78, 5.1.2, from memory). */
  private void brakes() {
    for (WheelPart wheel : layout.parts(WheelPart.class).toList()) {
      if (!isBraked(wheel)) {
        lacks.add("nothing brakes " + wheel.name() + ": say what disc or drum is \"inside\" it");
      }
    }
  }

  private boolean isBraked(WheelPart wheel) {
    return wheel.inside().stream()
        .filter(body -> body.what().brakes())
        .anyMatch(body -> wheels.drawn().value(body.radius()) >= LEAST_BRAKE_MM);
  }

  private void wheels() {
    if (wheels.front() == null) {
      lacks.add("there is no front wheel");
    } else if (wheels.fork() == null || !wheels.fork().axle().equals(wheels.front().axle())) {
      lacks.add("nothing holds the front wheel and steers it: draw a front on its axle");
    }
    if (wheels.rear() == null) {
      lacks.add("there is no rear wheel");
    } else if (none(p -> holds(p, wheels.rear().axle()))) {
      lacks.add("nothing holds the rear wheel: draw a swingarm, rail or bracket on its axle");
    }
  }

  private boolean none(Predicate<Part> such) {
    return layout.parts().values().stream().noneMatch(such);
  }

  private static boolean holds(Part part, String axle) {
    return (part instanceof SwingarmPart || part.traits().duty() == Duty.FRAME)
        && part.pins().contains(axle);
  }

  private List<TubePart> rails() {
    return layout
        .parts(TubePart.class)
        .filter(t -> t.traits().duty() == Duty.FRAME && !t.base().steered())
        .toList();
  }

  /**
   * The pins about which what carries a wheel turns or is held, each on something that is fixed.
   */
  private void hinges() {
    if (wheels.front() == null || wheels.rear() == null) {
      return; // that is told, and nothing is known of what moves
    }
    if (wheels.arm() != null && isBare(wheels.arm(), List.of(wheels.arm().pivot()))) {
      lacks.add("nothing holds " + wheels.arm().pivot() + ", the pivot of " + wheels.arm().name());
    }
    FrontPart fork = wheels.fork();
    if (fork != null) {
      List<String> head =
          fork.type().twoLinks()
              ? fork.pivot().stream().toList()
              : List.of(fork.top(), fork.bottom());
      if (isBare(fork, head)) {
        lacks.add(
            "nothing of the frame holds " + fork.name() + " at " + String.join(" and ", head));
      }
    }
  }

  /** Whether no fixed part is on any of some pins of a carrier, or near one. */
  private boolean isBare(Part carrier, List<String> pins) {
    return layout.parts().values().stream()
        .filter(p -> p != carrier && !(p instanceof WheelPart) && !(p instanceof Part.Carrier))
        .filter(p -> !p.base().steered() && p.pins().stream().noneMatch(wheels::carries))
        .noneMatch(
            p ->
                pins.stream()
                    .anyMatch(
                        pin ->
                            p.pins().contains(pin)
                                || bodies.drawn(p.name()).to(at(pin), JOINED_MM) != null));
  }

  private Solid at(String pin) {
    return new Solid(
        pin, List.of(new Prism(Curves.disc(wheels.drawn().pin(pin), 1), new Interval(-500, 500))));
  }

  /** An engine burns what is in a tank and blows it out hot; a motor runs from a battery. */
  private void driven() {
    boolean engine = !none(p -> is(p, SolidPart.Kind.ENGINE));
    boolean motor =
        !none(p -> is(p, SolidPart.Kind.MOTOR) || p instanceof WheelPart w && w.driven());
    if (engine && none(p -> is(p, SolidPart.Kind.TANK))) {
      lacks.add("there is no fuel for the engine: draw a tank");
    }
    if (engine && none(p -> p.base().hot() || is(p, SolidPart.Kind.SILENCER))) {
      lacks.add("nothing leads the engine's exhaust away: draw its pipe and silencer, hot");
    }
    boolean inHub =
        layout.parts(WheelPart.class).anyMatch(wheel -> Drives.isByMotor(layout, wheel));
    boolean run =
        Runs.of(layout).stream()
            .anyMatch(
                r ->
                    layout
                        .parts(WheelPart.class)
                        .anyMatch(w -> Runs.sprockets(r.getValue()).contains(w.axle())));
    boolean wheeled = wheels.front() != null && wheels.rear() != null;
    if (wheeled && (engine || motor) && !inHub && !run) {
      lacks.add(
          "no chain or belt leads the drive to a wheel: say it by a tie of belt length (a shaft"
              + " cannot be said)");
    }
    if (motor && none(p -> is(p, SolidPart.Kind.BATTERY))) {
      lacks.add("nothing feeds the motor: draw a battery");
    }
  }

  private static boolean is(Part part, SolidPart.Kind type) {
    return part instanceof SolidPart solid && solid.type() == type;
  }

  private void steering() {
    Optional<RestPart> grips =
        layout
            .parts(RestPart.class)
            .filter(r -> r.type().limb() == RestPart.Limb.HAND)
            .filter(r -> r.seat().equals(Occupant.RIDER))
            .findFirst();
    if (grips.isEmpty()) {
      lacks.add("there are no grips to steer with");
      return;
    }
    String name = grips.get().name();
    if (!grips.get().base().steered()) {
      lacks.add(name + " do not turn with the steering: set steered");
    }
    Solid body = bodies.drawn(name);
    boolean held =
        layout.parts().values().stream()
            .filter(p -> !p.name().equals(name))
            .filter(p -> p.base().steered() || p instanceof FrontPart)
            .anyMatch(p -> body.to(bodies.drawn(p.name()), JOINED_MM) != null);
    if (!held) {
      lacks.add(name + " are on nothing that steers: draw a bar to them, with steered set");
    }
  }

  /** Rails that share no pin with another part and are near none. */
  private void joints() {
    for (TubePart rail : rails()) {
      if (layout.parts().values().stream().allMatch(p -> p == rail || apart(rail, p, JOINED_MM))) {
        lacks.add(rail.name() + " hangs on nothing: bring it to another part");
      }
    }
  }

  /** What hangs, over whatever holds it, neither on the frame nor on what carries a wheel. */
  private void carried() {
    List<TubePart> rails = rails();
    if (rails.isEmpty()) {
      return; // there is nothing to hang on yet
    }
    Deque<Part> held = new ArrayDeque<>(rails);
    List<Part> loose = new ArrayList<>();
    for (Part part : layout.parts().values()) {
      if (part.traits().duty() == Duty.CARRIER) {
        held.add(part);
      } else if (!rails.contains(part) && !isSmall(part)) {
        loose.add(part);
      }
    }
    while (!held.isEmpty()) {
      Part by = held.remove();
      for (Part part : List.copyOf(loose)) {
        if (touches(by, part) || touches(part, by) || !apart(by, part, BRACKET_MM)) {
          loose.remove(part);
          held.add(part);
        }
      }
    }
    for (Part part : loose) {
      lacks.add(part.name() + " hangs on nothing: bring a rail, a bracket or another part to it");
    }
  }

  /** What is screwed on by what nobody draws; of wheels the carriers are asked for. */
  private static boolean isSmall(Part part) {
    return part instanceof WheelPart
        || part instanceof LampPart
        || part instanceof RestPart rest && rest.to().isEmpty();
  }

  private static boolean touches(Part one, Part other) {
    return one.base().touches().contains(other.name());
  }

  private boolean apart(Part one, Part other, double mm) {
    return one.pins().stream().noneMatch(other.pins()::contains)
        && bodies.drawn(one.name()).to(bodies.drawn(other.name()), mm) == null;
  }
}
