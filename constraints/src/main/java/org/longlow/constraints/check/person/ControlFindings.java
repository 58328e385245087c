package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Control;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.lock.SteeringAxis;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Curves;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** Whether fingers reach hand levers and thumbs reach switches from the grips. */
public final class ControlFindings {

  /** From the back of a grip to the front of its lever. */
  public static final FindingKind LEVER =
      new FindingKind("lever", FindingGroup.POSTURE, Rests.ON_DRAWING);

  /** From the inner end of a grip to a switch. */
  public static final FindingKind SWITCH =
      new FindingKind("switch", FindingGroup.POSTURE, Rests.ON_DRAWING);

  private static final Basis SPAN = Basis.model("distance as drawn, lever let go");

  /**
   * From the front of a grip forward to the front of its lever, let go, mm: the lever, its travel
   * and the fingers that stay on the grip; common practice without a source.
   */
  static final double LEAST_AHEAD_MM = 30;

  private static final Basis AHEAD =
      Basis.practice("30 mm from grip to lever: common practice, no source");

  private static final Basis HAND =
      Basis.published(Known.CHECKED, "hand length of the survey, bare");

  /** A body so near to a pad is one that it is on, mm. */
  private static final double AT_PAD_MM = 1;

  private final Wheels wheels;
  private final Places places;
  private final Map<String, PartShape> shapes;

  /**
   * @param shapes every part as drawn
   */
  public ControlFindings(Wheels wheels, Map<String, PartShape> shapes) {
    this.wheels = wheels;
    this.places = wheels.drawn();
    this.shapes = shapes;
  }

  /**
   * Returns what is found of all that somebody's hands work; nothing where no part says so, where
   * they do not ride, or have no grips.
   */
  public List<Finding> of(Sitting sitting, Condition stance) {
    List<Finding> findings = new ArrayList<>();
    Optional<RestPart> grips = sitting.parts().hands();
    if (!sitting.occupant().rides() || grips.isEmpty()) {
      return findings;
    }
    for (SolidPart part : wheels.layout().parts(SolidPart.class).toList()) {
      Optional<Control> worked = part.worked().filter(w -> !w.by().pedal());
      if (worked.isPresent()) {
        findings.add(
            worked.get().by() == Control.By.FINGERS
                ? lever(sitting, stance, grips.get(), part, worked.get())
                : thumb(sitting, stance, grips.get(), part, worked.get()));
      }
    }
    return findings;
  }

  private Finding lever(
      Sitting sitting, Condition stance, RestPart grips, SolidPart part, Control worked) {
    PointMm pad = places.pin(worked.pad());
    double reach = pad.distance(places.pin(grips.at())) + places.value(grips.diameter()) / 2;
    double hand = sitting.body().measures().get("handlength");
    double share = places.value(wheels.layout().demands().limit(Demands.Key.LEVER_SPAN));
    // palm and finger pads stand off by their glove
    double glove = sitting.body().gear().gloveMm();
    double span = share * hand - 2 * glove;
    Figures figures = Figures.atMost(reach, span, FigureUnit.MM);
    Interval grip = ends(grips);
    Interval blade = blade(part, grips, pad);
    double aside = grip.gap(blade);
    boolean beside = aside > 0;
    double ahead = pad.x() - places.pin(grips.at()).x() - places.value(grips.diameter()) / 2;
    boolean close = ahead < LEAST_AHEAD_MM;
    // what fails by its span is measured by that, else what is too close by its clearance
    Figures decides =
        close && figures.margin() >= 0
            ? Figures.atLeast(ahead, LEAST_AHEAD_MM, FigureUnit.MM)
            : figures;
    Words text =
        Words.of(
            "From the back of the grip to the front of " + part.name() + " are ",
            Say.mm(reach),
            "; the hand of " + sitting.person() + " is ",
            Say.mm(hand),
            " long and spans ",
            Say.mm(span),
            glove > 0 ? " with force, in gloves" : " with force",
            beside
                ? Words.of(
                    ". But no finger lies on it: it stands beside the grip; move it ",
                    Words.atLeast(aside),
                    blade.from() > grip.to() ? " inwards." : " outwards.")
                : close
                    ? Words.of(
                        ". But its front is ",
                        Say.mm(Math.abs(ahead)),
                        ahead < 0
                            ? " behind the front of the grip; lever, travel and the fingers on the grip need "
                            : " ahead of the grip; lever, travel and the fingers on the grip need ",
                        Say.mm(LEAST_AHEAD_MM),
                        ": set it farther ahead.")
                    : figures.margin() < 0
                        ? Words.of(
                            ". Bring its front ", Words.atLeast(-figures.margin()), " nearer.")
                        : ".");
    Finding f =
        Finding.held(
            LEVER,
            about(sitting, part),
            Optional.of(stance),
            decides,
            List.of(Sources.of(wheels.layout(), Demands.Key.LEVER_SPAN), SPAN, HAND, AHEAD),
            text);
    return turning(beside ? f.withVerdict(Verdict.FAIL) : f, grips, part).at(pad);
  }

  private Finding thumb(
      Sitting sitting, Condition stance, RestPart grips, SolidPart part, Control worked) {
    PointMm pad = places.pin(worked.pad());
    double across = near(part, grips).middle() - ends(grips).from();
    double reach = Math.hypot(pad.distance(places.pin(grips.at())), across);
    double limit = places.value(wheels.layout().demands().limit(Demands.Key.THUMB_REACH));
    Figures figures = Figures.atMost(reach, limit, FigureUnit.MM);
    Words text =
        Words.of(
            "From the inner end of the grip the thumb of " + sitting.person() + " goes ",
            Say.mm(reach),
            " to " + part.name() + "; ",
            Say.mm(limit),
            figures.margin() < 0
                ? Words.of(
                    " are asked. Bring it ",
                    Words.atLeast(-figures.margin()),
                    " nearer, or the hand lets go of the grip for it.")
                : " are asked.");
    Finding f =
        Finding.held(
            SWITCH,
            about(sitting, part),
            Optional.of(stance),
            figures,
            List.of(Sources.of(wheels.layout(), Demands.Key.THUMB_REACH), SPAN),
            text);
    return turning(f, grips, part).at(pad);
  }

  private static About about(Sitting sitting, SolidPart part) {
    return About.person(sitting.occupant(), part.name(), part.name()).on(part.name());
  }

  /** What does not turn with the grips is reached straight ahead only. */
  private Finding turning(Finding f, RestPart grips, SolidPart part) {
    Optional<Steered> steered =
        wheels.fork() == null
            ? Optional.empty()
            : Steered.of(wheels.layout(), wheels.fork(), places);
    SteeringAxis axis = steered.map(s -> s.axisOf().get(grips.name())).orElse(null);
    SteeringAxis own = steered.map(s -> s.axisOf().get(part.name())).orElse(null);
    if (axis == null || axis.equals(own)) {
      return f;
    }
    return (f.verdict() == Verdict.PASS ? f.withVerdict(Verdict.CAUTION) : f)
        .withText(
            Words.of(
                f.words(),
                " That is straight ahead: it does not turn with the grips; set steered."));
  }

  /** The left grip across the machine. */
  private Interval ends(RestPart grips) {
    double y = places.value(grips.y());
    double half = places.value(grips.length()) / 2;
    return new Interval(y - half, y + half);
  }

  /**
   * What of a lever the fingers lie on: the broadest of its bodies at the pad, as if at the left.
   */
  private Interval blade(SolidPart part, RestPart grips, PointMm pad) {
    List<Prism> prisms = shapes.get(part.name()).prisms();
    Geometry at = Curves.bar(pad, pad, 2 * AT_PAD_MM);
    double most =
        prisms.stream()
            .filter(p -> p.outline().intersects(at))
            .mapToDouble(p -> p.across().length())
            .max()
            .orElse(0);
    return nearest(
        prisms.stream()
            .filter(p -> most == 0 || p.outline().intersects(at) && p.across().length() == most)
            .toList(),
        ends(grips));
  }

  /** The body of a part that is nearest to a grip across the machine, as if at the left. */
  private Interval near(SolidPart part, RestPart grips) {
    return nearest(shapes.get(part.name()).prisms(), ends(grips));
  }

  private static Interval nearest(List<Prism> prisms, Interval grip) {
    Interval best = null;
    for (Prism prism : prisms) {
      for (Interval i : List.of(prism.across(), prism.across().mirrored())) {
        if (best == null || i.gap(grip) < best.gap(grip)) {
          best = i;
        }
      }
    }
    return best == null ? grip : best;
  }
}
