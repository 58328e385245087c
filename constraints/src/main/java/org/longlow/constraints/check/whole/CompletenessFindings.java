package org.longlow.constraints.check.whole;

import java.util.ArrayList;
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
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** What a machine still lacks before it can be ridden: what holds its wheels, frame, steering. */
public final class CompletenessFindings {

  /** What a machine must have to be ridden. */
  public static final FindingKind COMPLETENESS =
      FindingKind.leading("completeness", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** What is welded or clamped to something is no farther from it than this, mm; judgement. */
  static final double JOINED_MM = 25;

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
    joints();
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

  /** Of two-wheelers each wheel has a brake of its own (UN R78, 5.1.2, from memory). */
  private void brakes() {
    for (WheelPart wheel : layout.parts(WheelPart.class).toList()) {
      if (!wheel.braked()) {
        lacks.add("nothing brakes " + wheel.name() + ": say what disc or drum is \"inside\" it");
      }
    }
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
      if (layout.parts().values().stream().allMatch(p -> p == rail || apart(rail, p))) {
        lacks.add(rail.name() + " hangs on nothing: bring it to another part");
      }
    }
  }

  private boolean apart(TubePart rail, Part other) {
    return rail.pins().stream().noneMatch(other.pins()::contains)
        && bodies.drawn(rail.name()).to(bodies.drawn(other.name()), JOINED_MM) == null;
  }
}
