package org.longlow.constraints.check.rule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.rule.Ruling.Outcome;
import org.longlow.constraints.law.Asked;
import org.longlow.constraints.law.Row;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.layout.SolidPart;
import org.longlow.constraints.layout.StandPart;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.words.Words;

/**
 * Foot rests, stand, mirrors and handlebar in law. What a layout does not hold asks for care; it
 * never passes.
 */
final class MachineRulings {

  private final Layout layout;
  private final List<Sitting> sittings;
  private final Standing unladen;
  private final List<Standing> standings;

  /**
   * @param unladen the machine with nobody on it
   * @param standings all stances, for the seat under its rider
   */
  MachineRulings(
      Layout layout, List<Sitting> sittings, Standing unladen, List<Standing> standings) {
    this.layout = layout;
    this.sittings = sittings;
    this.unladen = unladen;
    this.standings = standings;
  }

  private boolean mirrors() {
    return layout.parts(SolidPart.class).anyMatch(s -> s.type() == SolidPart.Kind.MIRROR);
  }

  /** Returns what the row says. */
  List<Ruling> of(Row row) {
    return switch (row.asked()) {
      case FOOT_RESTS -> footRests(row);
      case STAND_FOLDS, STAND_STAYS -> stands(row);
      case MIRRORS ->
          List.of(
              Ruling.said(
                  row,
                  About.thing("mirrors", "mirror"),
                  Outcome.CARE,
                  Words.read(
                      (mirrors()
                              ? "Not covered: size and place of the mirrors drawn"
                              : "Not covered: mirrors are not in this layout")
                          + "; at least one is asked, 8064.5 mm2 flat or 6451.6 mm2 convex, its"
                          + " centre 279 mm out")));
      case NO_MIRRORS ->
          List.of(
              Ruling.said(
                  row,
                  About.thing("mirrors", "mirror"),
                  Outcome.NOT_APPLICABLE,
                  Words.of("Mirrors are not asked on two wheels")));
      case HANDLEBAR -> List.of(handlebar(row));
      case NOT_COVERED ->
          List.of(
              Ruling.said(
                  row,
                  About.thing(row.name().replace('-', ' '), "not-covered", row.name()),
                  Outcome.NOT_COVERED,
                  Words.read("Not covered: " + row.text().substring(row.name().length() + 2))));
      default -> throw new IllegalArgumentException(row.asked() + " is about lamps");
    };
  }

  private List<Ruling> footRests(Row row) {
    Map<String, SeatParts> seats = SeatParts.of(layout);
    if (seats.isEmpty()) {
      return List.of(
          footRest(
              row,
              "none",
              Optional.empty(),
              Outcome.CARE,
              "Foot rests: no seat is given to judge"));
    }
    List<Ruling> out = new ArrayList<>();
    seats.forEach((seat, parts) -> out.add(footRest(row, seat, parts.feet().map(Part::name))));
    return out;
  }

  private static Ruling footRest(Row row, String seat, Optional<String> rest) {
    String given = "Seat " + seat + " has ";
    if (rest.isEmpty()) {
      return footRest(
          row,
          seat,
          rest,
          Outcome.OUTSIDE,
          given + "no foot rest; give it pegs or a footboard of that seat");
    }
    given += rest.get() + " to rest the feet on";
    return seat.equals(Occupant.RIDER)
        ? footRest(row, seat, rest, Outcome.INSIDE, given)
        : footRest(
            row,
            seat,
            rest,
            Outcome.CARE,
            given + "; that it folds rearward and upward is asked, and is not in a layout");
  }

  private static Ruling footRest(
      Row row, String seat, Optional<String> rest, Outcome outcome, String text) {
    About about = rest.map(About::parts).orElse(About.thing("foot rests"));
    return Ruling.said(row, about.named("foot-rest", seat), outcome, Words.of(text));
  }

  private List<Ruling> stands(Row row) {
    List<Ruling> rulings = layout.parts(StandPart.class).map(stand -> stand(row, stand)).toList();
    return rulings.isEmpty()
        ? List.of(
            Ruling.said(
                row,
                About.thing("stand", "stand"),
                Outcome.NOT_APPLICABLE,
                Words.of("No stand is given to judge")))
        : rulings;
  }

  private Ruling stand(Row row, StandPart stand) {
    About about = About.parts(stand.name()).under("stand");
    if (row.asked() == Asked.STAND_STAYS) {
      return Ruling.said(
          row,
          about,
          Outcome.CARE,
          Words.of(
              stand.name()
                  + " may neither upset the machine nor close by itself when the parked lean"
                  + " changes; how it latches is not in a layout"));
    }
    PointMm foot = unladen.ground().toRoad(unladen.places().pin(stand.foot()));
    PointMm stowed = unladen.ground().toRoad(unladen.places().pin(stand.stowed()));
    boolean folds = stowed.x() < foot.x() && stowed.z() > foot.z();
    return Ruling.said(
        row,
        about,
        folds ? Outcome.CARE : Outcome.OUTSIDE,
        Words.of(
            stand.name()
                + (folds
                    ? " folds rearward and upward as drawn; that it gives way by itself when it"
                        + " touches the road is not in a layout"
                    : " does not fold rearward and upward; stow its foot behind and above where it"
                        + " stands")));
  }

  /** Grips above the seat of one person, mm. */
  private record Grip(String person, String part, double aboveSeatMm) {}

  private Ruling handlebar(Row row) {
    Optional<Grip> highest =
        sittings.stream()
            .flatMap(s -> grip(s).stream())
            .max(Comparator.comparingDouble(Grip::aboveSeatMm));
    if (highest.isEmpty()) {
      return Ruling.said(
          row,
          About.thing("handlebar", "handlebar"),
          Outcome.CARE,
          Words.of(
              "Not covered: the height of the handlebar needs grips and somebody on the rider's"
                  + " seat"));
    }
    Grip grip = highest.get();
    Figures figures = Figures.atMost(grip.aboveSeatMm(), row.most(), FigureUnit.MM);
    return Ruling.of(
        row,
        About.parts(grip.part()).named("handlebar"),
        Outcome.CARE,
        figures,
        Say.format(
            "%s is %s above the seat under %s; it varies by state, many allow %s%s",
            grip.part(),
            Say.mm(grip.aboveSeatMm()),
            grip.person(),
            Say.mm(row.most()),
            figures.inside() ? "" : ", so lower it or ask your state"));
  }

  private Optional<Grip> grip(Sitting sitting) {
    Optional<SeatOutcome.Seated> seated = sitting.seated();
    Optional<RestPart> hands = sitting.parts().hands();
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
