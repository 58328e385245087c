package org.longlow.constraints.seat;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.longlow.constraints.document.FoamOf;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Person;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.shape.ByPlaces;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Spreads;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.BodyMeasures;
import org.longlow.rider.body.Gear;
import org.longlow.rider.body.Sex;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.FootContact;
import org.longlow.rider.pose.HandContact;
import org.longlow.rider.pose.RiderWidth;
import org.longlow.rider.seat.Cushion;
import org.longlow.rider.seat.FoamLayer;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.SeatGeometry;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Settle;

/** Seats every crew member on every seat they must fit. */
public final class Seats {

  /** Whoever sat where, in this edit and the one before. */
  private static final ByThing<SeatParts, ByPlaces<Person, Sitting>> KNOWN =
      new ByThing<>(
          64,
          parts ->
              new ByPlaces<>(
                  64,
                  2,
                  (person, places) -> sit(person.name(), bodyOf(person, places), parts, places)));

  private static final ByPlaces<Person, Body> BODIES = new ByPlaces<>(64, 2, Seats::body);

  private Seats() {}

  private static Body bodyOf(Person person, Places places) {
    return BODIES.of(person, places);
  }

  /**
   * Returns the sittings of {@code layout}, person by person in the order of the crew. Whoever has
   * not moved since they were last asked for is the same object.
   */
  public static List<Sitting> of(Layout layout, Places places) {
    Map<String, SeatParts> seats = SeatParts.of(layout);
    List<Sitting> sittings = new ArrayList<>();
    for (Person person : layout.crew().values()) {
      for (String seat : person.seats()) {
        SeatParts parts = seats.get(seat);
        if (parts != null) {
          sittings.add(KNOWN.of(parts).of(person, places));
        }
      }
    }
    return sittings;
  }

  /** Returns the body of {@code person} in their gear. */
  public static Body body(Person person, Places places) {
    Sex sex = person.sex().equals("female") ? Sex.FEMALE : Sex.MALE;
    Map<String, Double> measured = new LinkedHashMap<>();
    person.measured().forEach((name, value) -> measured.put(name, places.value(value)));
    Gear gear = Gear.riding(person.helmet(), person.boots(), person.clothes());
    if (person.clothes()) {
      gear =
          gear.withClothes(
              places.value(person.jacketThickness()), places.value(person.gloveThickness()));
    }
    double rucksackKg = person.rucksack().map(places::value).orElse(0.0);
    if (rucksackKg > 0) {
      gear = gear.withRucksack(rucksackKg, places.value(person.rucksackThickness()));
    }
    OptionalDouble years = person.age().stream().mapToDouble(places::value).findFirst();
    return Body.of(
        BodyMeasures.of(
            sex, places.value(person.stature()), places.value(person.mass()), years, measured),
        gear);
  }

  /** Returns {@code body} on a seat. */
  public static Sitting sit(String person, Body body, SeatParts parts, Places places) {
    SeatOutcome outcome;
    try {
      outcome = outcome(body, parts, places);
    } catch (OutOfRange e) {
      outcome = new SeatOutcome.Unseatable(e.getMessage());
    }
    return new Sitting(person, parts.seat(), parts, body, outcome);
  }

  /**
   * Returns where knees, feet and hands are sideways: feet and hands at their rests; knees splay
   * with the feet as in the usual seat.
   */
  private static RiderWidth width(SeatParts parts, Places places) {
    RiderWidth usual = RiderWidth.DEFAULT;
    double feet = parts.feet().map(r -> Math.abs(places.value(r.y()))).orElse(usual.footHalfMm());
    double hands = parts.hands().map(r -> Math.abs(places.value(r.y()))).orElse(usual.gripHalfMm());
    double knees = feet * usual.kneeHalfMm() / usual.footHalfMm();
    return new RiderWidth(Math.min(600, knees), Math.min(800, feet), Math.min(800, hands));
  }

  private static SeatOutcome outcome(Body body, SeatParts parts, Places places) {
    List<String> lacks = new ArrayList<>();
    if (parts.back().isEmpty()) {
      lacks.add("has no back; give it a cushion with the role back, a low pad at least");
    }
    if (parts.feet().isEmpty()) {
      lacks.add("has nowhere to put the feet; add a peg or a footboard");
    }
    if (!lacks.isEmpty()) {
      return new SeatOutcome.Unseatable(
          "seat " + parts.seat() + " " + String.join(". It also ", lacks) + ".");
    }
    return Settle.settle(body, surfaces(parts, places));
  }

  /**
   * Returns the surfaces of a seat, if one can sit on them: with a back and a place for the feet.
   */
  public static Optional<SeatGeometry> geometry(SeatParts parts, Places places) {
    if (parts.back().isEmpty() || parts.feet().isEmpty()) {
      return Optional.empty();
    }
    try {
      return Optional.of(surfaces(parts, places));
    } catch (OutOfRange e) {
      return Optional.empty(); // such as a cushion wider than any; sit() says why
    }
  }

  private static SeatGeometry surfaces(SeatParts parts, Places places) {
    return new SeatGeometry(
        cushion(parts.pan(), places),
        cushion(parts.back().orElseThrow(), places),
        parts.head().map(c -> cushion(c, places)).orElse(null),
        foot(parts.feet().orElseThrow(), places),
        parts
            .hands()
            .<HandContact>map(r -> new HandContact.Grip(places.pin(r.at())))
            .orElse(new HandContact.OnThighs()),
        width(parts, places));
  }

  private static FootContact foot(RestPart rest, Places places) {
    double thick = places.value(rest.diameter()) / 2;
    PointMm at = places.pin(rest.at());
    if (rest.to().isEmpty()) {
      // the sole meets the peg on its rear upper side, whatever the foot's slope; a peg's radius
      // behind its centre is within a few millimetres of it
      return new FootContact.BallOnPeg(at.plus(PointMm.unit(PEG_FACE_RAD).times(thick)));
    }
    PointMm to = places.pin(rest.to().get());
    PointMm along = to.minus(at);
    PointMm up = along.left().times(thick / Math.max(along.length(), 1e-9));
    return new FootContact.Footboard(at.plus(up), to.plus(up));
  }

  /** Where a sole meets a peg, from +x: up and back, as for a foot that slopes 45°; judgement. */
  private static final double PEG_FACE_RAD = Math.toRadians(135);

  private static Cushion cushion(CushionPart cushion, Places places) {
    List<FoamLayer> layers = new ArrayList<>();
    for (FoamSpec spec : cushion.layers()) {
      layers.add(new FoamLayer(places.value(spec.thickness()), FoamOf.of(spec, places::value)));
    }
    double width = Spreads.of(cushion.base(), places).stream().mapToDouble(Interval::length).sum();
    return new Cushion(
        places.pin(cushion.from()), places.pin(cushion.to()), new FoamStack(layers), width);
  }
}
