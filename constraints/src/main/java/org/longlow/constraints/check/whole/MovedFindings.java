package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** What wheels move on their travel that cannot go with them, or must not. */
public final class MovedFindings {

  /** A part that would have to stretch as a wheel travels, or goes with a wheel and should not. */
  public static final FindingKind TIED =
      new FindingKind("tied", FindingGroup.PLACES, Rests.ON_DRAWING);

  /** Joints and rubber give so much, mm; judgement. */
  private static final double GIVES_MM = 2;

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("distances of pins at both ends of the travel of either wheel"),
          Basis.judgement("what is bolted up gives 2 mm"));

  private final Layout layout;
  private final Wheels wheels;

  private MovedFindings(Layout layout, Wheels wheels) {
    this.layout = layout;
    this.wheels = wheels;
  }

  public static List<Finding> of(Layout layout, Wheels wheels) {
    List<Finding> findings = new ArrayList<>();
    if (!wheels.stands()) {
      return findings;
    }
    MovedFindings moved = new MovedFindings(layout, wheels);
    List<Places> ends = moved.ends();
    for (Part part : layout.parts().values()) {
      moved.stretched(part, ends).ifPresent(findings::add);
      moved.carried(part).ifPresent(findings::add);
    }
    return findings;
  }

  private List<Places> ends() {
    Suspension front = wheels.frontSuspension();
    Suspension rear = wheels.rearSuspension();
    return List.of(
        wheels.moved(front.bumpMm(), rear.bumpMm()),
        wheels.moved(-front.droopMm(), -rear.droopMm()),
        wheels.moved(front.bumpMm(), -rear.droopMm()),
        wheels.moved(-front.droopMm(), rear.bumpMm()));
  }

  /** What is bought as it is may be a shock; what carries a wheel moves as it is said to. */
  private static boolean isStiff(Part part) {
    boolean shock = part instanceof TubePart tube && tube.bought();
    return !shock && !(part instanceof Part.Carrier) && !(part instanceof StandPart);
  }

  private Optional<Finding> stretched(Part part, List<Places> ends) {
    List<String> pins = part.pins();
    if (!isStiff(part) || pins.stream().noneMatch(wheels::carries)) {
      return Optional.empty();
    }
    double most = 0;
    String one = "";
    String other = "";
    for (int i = 0; i < pins.size(); i++) {
      for (int k = 0; k < i; k++) {
        double drawn = apart(wheels.drawn(), pins.get(k), pins.get(i));
        for (Places there : ends) {
          double by = Math.abs(apart(there, pins.get(k), pins.get(i)) - drawn);
          if (by > most) {
            most = by;
            one = pins.get(k);
            other = pins.get(i);
          }
        }
      }
    }
    if (most <= GIVES_MM) {
      return Optional.empty();
    }
    return Optional.of(
        Finding.held(
                TIED,
                About.parts(part.name()),
                Optional.empty(),
                Figures.atMost(most, GIVES_MM, FigureUnit.MM),
                BASIS,
                Words.of(
                    part.name() + " ties " + one + " to " + other + ", which come ",
                    Say.mm(most),
                    " nearer or farther apart on the travel of the wheels: it would lock the"
                        + " suspension or break. Hang it on pins that move alike; if it is a shock,"
                        + " say that it is bought."))
            .at(wheels.drawn().pin(one)));
  }

  private static double apart(Places places, String one, String other) {
    return places.pin(one).distance(places.pin(other));
  }

  /** A seat or a rest for the feet goes with the frame; so does what a carrier turns about. */
  private Optional<Finding> carried(Part part) {
    List<String> pins = steady(part).stream().filter(wheels::carries).toList();
    if (pins.isEmpty()) {
      return Optional.empty();
    }
    boolean several = pins.size() > 1;
    return Optional.of(
        Finding.note(
                TIED,
                About.parts(part.name()).named(part.name(), "with"),
                Verdict.FAIL,
                BASIS.get(0),
                Words.of(
                    part.name()
                        + " hangs on "
                        + String.join(" and ", pins)
                        + (several ? ", which go" : ", which goes")
                        + " up and down with a wheel: take \"with\" out of "
                        + (several ? "these pins" : "this pin")
                        + "."))
            .at(wheels.drawn().pin(pins.get(0))));
  }

  private static List<String> steady(Part part) {
    if (part instanceof CushionPart
        || part instanceof RestPart rest && rest.type().limb() == RestPart.Limb.FOOT) {
      return part.pins();
    }
    if (part instanceof FrontPart front) {
      return front.type().twoLinks() ? List.of() : List.of(front.top(), front.bottom());
    }
    return part instanceof SwingarmPart arm ? List.of(arm.pivot()) : List.of();
  }
}
