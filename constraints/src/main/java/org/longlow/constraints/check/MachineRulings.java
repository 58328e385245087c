package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.check.Ruling.Outcome;
import org.longlow.constraints.law.MachineRules;
import org.longlow.constraints.law.RuleSet;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.SeatOutcome;

/**
 * Foot rests, stand, mirrors and handlebar in law. What a layout does not hold asks for care; it
 * never passes.
 */
final class MachineRulings {

  private MachineRulings() {}

  /**
   * Returns what the rules in force say.
   *
   * @param unladen the machine with nobody on it
   * @param standings all stances, for the seat under its rider
   */
  static List<Ruling> of(
      Set<RuleSet> inForce,
      Layout layout,
      List<Sitting> sittings,
      Standing unladen,
      List<Standing> standings) {
    List<Ruling> rulings = new ArrayList<>();
    if (inForce.contains(RuleSet.US_FEDERAL)) {
      footRests(layout, rulings);
      usStand(layout, unladen, rulings);
      rulings.add(
          Ruling.said(
              RuleSet.US_FEDERAL,
              About.thing("mirrors", "mirror"),
              Outcome.CARE,
              "Not covered: mirrors are not in a layout; at least one is asked, 8064.5 mm2 flat or"
                  + " 6451.6 mm2 convex, its centre 279 mm out",
              List.of(MachineRules.US_MIRRORS)));
      rulings.add(handlebar(sittings, unladen, standings));
    }
    if (inForce.contains(RuleSet.UK)) {
      ukStand(layout, rulings);
      rulings.add(
          Ruling.said(
              RuleSet.UK,
              About.thing("mirrors", "mirror"),
              Outcome.NOT_APPLICABLE,
              "Mirrors are not asked on two wheels",
              List.of(MachineRules.UK_MIRRORS)));
    }
    return rulings;
  }

  private static void footRests(Layout layout, List<Ruling> out) {
    Map<String, SeatParts> seats = SeatParts.of(layout);
    if (seats.isEmpty()) {
      out.add(footRest("none", List.of(), Outcome.CARE, "Foot rests: no seat is given to judge"));
    }
    seats.forEach(
        (seat, parts) -> {
          List<String> names = parts.feet().map(Part::name).map(List::of).orElse(List.of());
          boolean rider = seat.equals(Occupant.RIDER);
          if (names.isEmpty()) {
            out.add(
                footRest(
                    seat,
                    names,
                    Outcome.OUTSIDE,
                    "Seat "
                        + seat
                        + " has no foot rest; give it pegs or a footboard of that seat"));
          } else {
            out.add(
                footRest(
                    seat,
                    names,
                    rider ? Outcome.INSIDE : Outcome.CARE,
                    "Seat "
                        + seat
                        + " has "
                        + names.get(0)
                        + " to rest the feet on"
                        + (rider
                            ? ""
                            : "; that it folds rearward and upward is asked, and is not in a"
                                + " layout")));
          }
        });
  }

  private static Ruling footRest(String seat, List<String> parts, Outcome outcome, String text) {
    return Ruling.said(
        RuleSet.US_FEDERAL,
        new About(
            parts.isEmpty() ? "foot rests" : parts.get(0),
            parts,
            Optional.empty(),
            List.of("foot-rest", seat)),
        outcome,
        text,
        List.of(MachineRules.US_FOOTRESTS));
  }

  private static List<Part.Stand> stands(Layout layout) {
    return layout.parts(Part.Stand.class).toList();
  }

  private static void usStand(Layout layout, Standing unladen, List<Ruling> out) {
    if (stands(layout).isEmpty()) {
      out.add(noStand(RuleSet.US_FEDERAL));
    }
    for (Part.Stand stand : stands(layout)) {
      PointMm foot = unladen.ground().toRoad(unladen.places().pin(stand.foot()));
      PointMm stowed = unladen.ground().toRoad(unladen.places().pin(stand.stowed()));
      boolean folds = stowed.x() < foot.x() && stowed.z() > foot.z();
      out.add(
          stand(
              RuleSet.US_FEDERAL,
              stand,
              folds ? Outcome.CARE : Outcome.OUTSIDE,
              folds
                  ? stand.name()
                      + " folds rearward and upward as drawn; that it gives way by itself when it"
                      + " touches the road is not in a layout"
                  : stand.name()
                      + " does not fold rearward and upward; stow its foot behind and above where"
                      + " it stands"));
    }
  }

  private static void ukStand(Layout layout, List<Ruling> out) {
    if (stands(layout).isEmpty()) {
      out.add(noStand(RuleSet.UK));
    }
    for (Part.Stand stand : stands(layout)) {
      out.add(
          stand(
              RuleSet.UK,
              stand,
              Outcome.CARE,
              stand.name()
                  + " may neither upset the machine nor close by itself when the parked lean"
                  + " changes; how it latches is not in a layout"));
    }
  }

  private static Ruling noStand(RuleSet rules) {
    return Ruling.said(
        rules,
        About.thing("stand", "stand"),
        Outcome.NOT_APPLICABLE,
        "No stand is given to judge",
        List.of(rules == RuleSet.UK ? MachineRules.UK_STAND : MachineRules.US_STAND));
  }

  private static Ruling stand(RuleSet rules, Part.Stand stand, Outcome outcome, String text) {
    return Ruling.said(
        rules,
        About.parts(stand.name()).under("stand"),
        outcome,
        text,
        List.of(rules == RuleSet.UK ? MachineRules.UK_STAND : MachineRules.US_STAND));
  }

  /** Grips above the seat of one person, mm. */
  private record Grip(String person, String part, double aboveSeatMm) {}

  private static Ruling handlebar(
      List<Sitting> sittings, Standing unladen, List<Standing> standings) {
    Optional<Grip> highest =
        sittings.stream()
            .flatMap(s -> grip(s, unladen, standings).stream())
            .max(Comparator.comparingDouble(Grip::aboveSeatMm));
    if (highest.isEmpty()) {
      return Ruling.said(
          RuleSet.US_FEDERAL,
          About.thing("handlebar", "handlebar"),
          Outcome.CARE,
          "Not covered: the height of the handlebar needs grips and somebody on the rider's seat",
          List.of(MachineRules.US_HANDLEBAR));
    }
    Grip grip = highest.get();
    Figures figures = Figures.atMost(grip.aboveSeatMm(), MachineRules.HANDLEBAR_MM, FigureUnit.MM);
    return new Ruling(
        RuleSet.US_FEDERAL,
        About.parts(grip.part()).named("handlebar"),
        Outcome.CARE,
        figures,
        Say.format(
            "%s is %s above the seat under %s; it varies by state, many allow %s%s",
            grip.part(),
            Say.mm(grip.aboveSeatMm()),
            grip.person(),
            Say.mm(MachineRules.HANDLEBAR_MM),
            figures.inside() ? "" : ", so lower it or ask your state"),
        List.of(MachineRules.US_HANDLEBAR));
  }

  private static Optional<Grip> grip(Sitting sitting, Standing unladen, List<Standing> standings) {
    Optional<SeatOutcome.Seated> seated = sitting.seated();
    Optional<Part.Rest> hands = sitting.parts().hands();
    if (seated.isEmpty() || hands.isEmpty() || !sitting.occupant().rides()) {
      return Optional.empty();
    }
    Standing laden =
        standings.stream()
            .filter(s -> s.condition().ladenBy(sitting.occupant()))
            .findFirst()
            .orElse(unladen);
    Places places = laden.places();
    double top =
        laden.ground().heightMm(places.pin(hands.get().at()))
            + places.value(hands.get().diameter()) / 2;
    // straight up there is at least this much foam left; the least makes the grips highest
    double seat =
        laden.ground().heightMm(seated.get().pan().centre()) + seated.get().pan().remainingMm();
    return Optional.of(new Grip(sitting.person(), hands.get().name(), top - seat));
  }
}
