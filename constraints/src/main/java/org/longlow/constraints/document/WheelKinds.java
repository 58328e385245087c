package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.FORCE;
import static org.longlow.constraints.document.Type.LENGTH;
import static org.longlow.constraints.document.Type.NUMBER;
import static org.longlow.constraints.document.Type.PRESSURE;
import static org.longlow.constraints.document.Type.RATE;
import static org.longlow.constraints.document.Type.words;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.HubBody;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Shock;
import org.longlow.constraints.layout.SwingarmPart;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.words.Quoted;

/** Wheels and what carries them: their fields besides what {@link PartCommon} says of all. */
final class WheelKinds {

  /** Nothing round is less spread than a bare hub. */
  private static final double LEAST_SPREAD = 0.1;

  /** Most bodies about one axle. */
  private static final int MAX_INSIDE = 12;

  private static final Kind<HubBody> HUB_BODY =
      Kind.of(
          "hubBody",
          "Something round about an axle, within the wheel or beside it.",
          (Source<HubBody> s) ->
              new HubBody(
                  s.need("what", words(HubBody.What.class), HubBody::what, "What it is."),
                  s.need(
                      "radius",
                      PartSizes.SIZE,
                      HubBody::radius,
                      "How far it reaches from the axle."),
                  s.need(
                      "width",
                      PartSizes.SIZE,
                      HubBody::width,
                      "How broad it is across the machine."),
                  s.orSaid(
                      "y",
                      PartSizes.REACH,
                      Formula.parse("0 mm"),
                      HubBody::y,
                      "Distance of its middle from the middle plane, left positive, 0 mm where"
                          + " absent.")));

  private static final Kind<Shock.Rocker> ROCKER =
      Kind.of(
              "rocker",
              "What turns the travel of an arm into the stroke of its shock: a rocker (bell crank)"
                  + " that a rod pushes or pulls.",
              (Source<Shock.Rocker> s) ->
                  new Shock.Rocker(
                      s.may(
                          "pivot",
                          Type.ref(Referent.PIN),
                          Shock.Rocker::pivot,
                          "The pin it turns about, on the frame or on the arm."),
                      s.may(
                          "rod",
                          Type.ref(Referent.PIN),
                          Shock.Rocker::rod,
                          "Its pin that the rod hangs on; it goes with the rocker."),
                      s.may(
                          "end",
                          Type.ref(Referent.PIN),
                          Shock.Rocker::end,
                          "The pin at the other end of the rod: on the arm where the rocker is on"
                              + " the frame, on the frame where it is on the arm.")))
          .together("pivot", "rod", "end")
          .rule(WheelKinds::rocker);

  static final Kind<Shock> SHOCK =
      Kind.of("shock", "Spring and damper between arm and frame.", WheelKinds::shock)
          .together("foot", "top", "stroke", "spring")
          .rule(
              (shock, at) -> {
                if (shock.loop().isPresent() && shock.foot().isEmpty()) {
                  at.fault("foot", "", "is missing, a rocker needs it", "say all of the shock");
                }
              });

  static final Kind<FrontPart.Links> LINKS =
      Kind.of(
              "links",
              "What holds the upright of a front with two links.",
              (Source<FrontPart.Links> s) ->
                  new FrontPart.Links(
                      s.may(
                          "joint",
                          Type.ref(Referent.PIN),
                          FrontPart.Links::joint,
                          "The pin at which the lower link or the arm holds the upright, such as"
                              + " the axle's; it goes with the front wheel."),
                      s.may(
                          "rodPivot",
                          Type.ref(Referent.PIN),
                          FrontPart.Links::rodPivot,
                          "The pin that the upper link or the rod turns about, beside \"pivot\"."),
                      s.may(
                          "rodJoint",
                          Type.ref(Referent.PIN),
                          FrontPart.Links::rodJoint,
                          "The pin at which that holds the upright; it goes with the front"
                              + " wheel.")))
          .together("joint", "rodPivot", "rodJoint");

  private WheelKinds() {}

  /** What a new body about an axle begins with. */
  static Optional<?> begun(Kind<?> kind) {
    return kind == HUB_BODY
        ? Optional.of(
            new HubBody(
                HubBody.What.DISC,
                Formula.parse("120 mm"),
                Formula.parse("5 mm"),
                Formula.parse("0 mm")))
        : Optional.empty();
  }

  static WheelPart wheel(Source<WheelPart> s) {
    return new WheelPart(
        PartCommon.across(s),
        s.need("end", words(Part.End.class), WheelPart::end, "Which end of the machine it is at."),
        s.pin("axle", "the axle", WheelPart::axle, "Its axle pin."),
        s.text(
            "tyre",
            WheelPart::tyre,
            "Size designation, such as 120/70 R17; may be absent if radius and width are given."),
        s.may(
            "radius",
            PartSizes.WHEEL_RADIUS,
            WheelPart::radius,
            "Measured free radius, instead of the designation's."),
        s.may(
            "width",
            PartSizes.SIZE,
            WheelPart::width,
            "Measured section width, instead of the designation's."),
        s.may(
            "crown",
            PartSizes.SIZE,
            WheelPart::crown,
            "Measured section (crown) radius, instead of half the width."),
        s.may(
            "pressure",
            PRESSURE.positive(),
            WheelPart::pressure,
            "Pressure of its air, cold, such as 230 kPa or 33 psi; less than the sidewall asks"
                + " carries less."),
        s.may(
            "spread",
            NUMBER.between(LEAST_SPREAD, 1),
            WheelPart::spread,
            "Its moment of inertia about the axle over its mass times its radius squared, for"
                + " balance: 0.5 for a plain disc, 1 for a thin ring; 0.7 where absent."),
        s.may(
            "rimInside",
            PartSizes.SIZE,
            WheelPart::rimInside,
            "Radius of what is free inside its rim, from the axle to the wall of its well. Where it is"
                + " not said the rim is taken as 25 mm deep under the tyre, from memory."),
        s.or(
            "inside",
            new Type.ListOf<>(new Type.Nested<>(HUB_BODY), 0, MAX_INSIDE),
            List.of(),
            WheelPart::inside,
            "What sits about its axle and is not drawn as a part: hub motor, brakes, sprocket."),
        ElectricKinds.said(s, WheelPart::electric));
  }

  static FrontPart front(Source<FrontPart> s) {
    return new FrontPart(
        PartCommon.cut(s),
        s.need(
            "type",
            words(FrontPart.Kind.class),
            FrontPart::type,
            "How the front wheel is carried."),
        s.pin(
            "top",
            "the upper end of the steering axis",
            FrontPart::top,
            "Upper pin of the steering axis."),
        s.pin(
            "bottom",
            "the lower end of the steering axis",
            FrontPart::bottom,
            "Lower pin of the steering axis."),
        s.may(
            "pivot",
            Type.ref(Referent.PIN),
            FrontPart::pivot,
            "Link pivot; not for a telescopic fork. Of two links the pivot of the lower one, or of"
                + " the arm."),
        s.pin("axle", "the axle", FrontPart::axle, "Front axle pin."),
        s.need("tube", PartSizes.SIZE, FrontPart::tube, "Diameter of stanchion, stem or link."),
        s.need(
            "y", LENGTH.notNegative(), FrontPart::y, "Distance of each leg from the middle plane."),
        bump(s),
        droop(s),
        rate(s),
        preload(s),
        s.may(
            "postTop",
            Type.ref(Referent.PIN),
            FrontPart::postTop,
            "Upper pin of the axis that the bars turn about, where they stand on a post of their"
                + " own and a link takes their turn to the fork."),
        s.may(
            "postBottom", Type.ref(Referent.PIN), FrontPart::postBottom, "Lower pin of that axis."),
        s.flag(
            "brakeRod",
            FrontPart::brakeRod,
            "True if a rod beside the link, as long and as level, holds the brake; else it swings with"
                + " the link, which a leading one lifts and a trailing one presses down while braking."),
        s.or(
            "links",
            new Type.Nested<>(LINKS),
            FrontPart.Links.NONE,
            FrontPart::links,
            "What holds the upright of a parallelogram or hub-centre front: where the lower link,"
                + " or the arm, meets it, and the upper link, or the rod."));
  }

  static SwingarmPart swingarm(Source<SwingarmPart> s) {
    return new SwingarmPart(
        PartCommon.wide(s, false),
        s.pin("pivot", "the pivot", SwingarmPart::pivot, "Its pivot pin."),
        s.pin("axle", "the axle", SwingarmPart::axle, "Rear axle pin."),
        s.need("depth", PartSizes.SIZE, SwingarmPart::depth, "Depth of the arm in the elevation."),
        bump(s),
        droop(s),
        rate(s),
        preload(s),
        s.or(
            "shock",
            new Type.Nested<>(SHOCK),
            Shock.NOT_SAID,
            SwingarmPart::shock,
            "Spring and damper that hang on pins of arm and frame, if that is how it is sprung."));
  }

  private static Shock shock(Source<Shock> s) {
    return new Shock(
        s.may(
            "foot",
            Type.ref(Referent.PIN),
            Shock::foot,
            "The pin at the arm, which goes with the rear wheel, or at the rocker if there is one."),
        s.may("top", Type.ref(Referent.PIN), Shock::top, "The pin at the frame."),
        s.may("stroke", PartSizes.SIZE, Shock::stroke, "By how much it can close."),
        s.may(
            "spring",
            RATE.positive(),
            Shock::spring,
            "Force for each mm by which it closes; of two, both together."),
        s.or(
            "rocker",
            new Type.Nested<>(ROCKER),
            Shock.Rocker.NONE,
            Shock::rocker,
            "The rocker that its foot hangs on, if it does not hang on the arm."));
  }

  private static void rocker(Shock.Rocker rocker, Spot at) {
    if (rocker.rod().isPresent() && rocker.rod().equals(rocker.pivot())) {
      at.fault("rod", Quoted.of(rocker.rod().get()), "is the pivot again", "name another pin");
    }
    if (rocker.end().isPresent()
        && (rocker.end().equals(rocker.pivot()) || rocker.end().equals(rocker.rod()))) {
      at.fault(
          "end", Quoted.of(rocker.end().get()), "is named twice", "name the far end of the rod");
    }
  }

  private static <P extends Part.Carrier> Formula bump(Source<P> s) {
    return s.need(
        "bump",
        LENGTH.notNegative(),
        P::bump,
        "How far the wheel goes up from the drawn position, measured straight up.");
  }

  private static <P extends Part.Carrier> Formula droop(Source<P> s) {
    return s.need(
        "droop",
        LENGTH.notNegative(),
        P::droop,
        "How far the wheel goes down from the drawn position, measured straight down.");
  }

  private static <P extends Part.Carrier> Optional<Formula> rate(Source<P> s) {
    return s.may(
        "rate",
        RATE.positive(),
        P::rate,
        "Force for each mm that the axle moves along its own way: along the slider of a"
            + " telescopic front (both springs together), along the arc of an arm.");
  }

  private static <P extends Part.Carrier> Optional<Formula> preload(Source<P> s) {
    return s.may(
        "preload",
        FORCE.notNegative(),
        P::preload,
        "Force along that way which the spring carries already at full droop.");
  }
}
