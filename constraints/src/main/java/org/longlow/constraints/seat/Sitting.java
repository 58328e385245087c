package org.longlow.constraints.seat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.machine.chassis.MassPoint;
import org.longlow.constraints.shape.ByThing;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.body.Body;
import org.longlow.rider.pose.Figure;
import org.longlow.rider.pose.Flesh;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.pose.SegmentMass;
import org.longlow.rider.seat.SeatOutcome;

/**
 * One crew member on one seat, in the axes of the drawn machine.
 *
 * @param person the user's name for them
 * @param seat the seat
 * @param parts the parts of that seat
 * @param body their body
 * @param outcome how they sit, or why they cannot
 */
public record Sitting(String person, String seat, SeatParts parts, Body body, SeatOutcome outcome) {

  /** Pieces of a limb that goes outwards: each is then some 20 mm wider than the limb. */
  private static final int LIMB_PIECES = 8;

  private static final ByThing<Sitting, List<Flesh>> FLESH = new ByThing<>(32, Sitting::fleshed);

  private static final ByThing<Sitting, List<Flesh>> FINE = new ByThing<>(32, Sitting::finely);

  private static final ByThing<Sitting, Map<String, List<Prism>>> FINE_LIMBS =
      new ByThing<>(32, sitting -> sitting.limbs(FINE.of(sitting)));

  /** Returns who sits where. */
  public Occupant occupant() {
    return new Occupant(person, seat);
  }

  /** Returns why any answer about them is rough: a body that is not the survey's. */
  public Optional<String> doubt() {
    return body.measures().doubt(person);
  }

  /** Returns how they sit, if they can. */
  public Optional<SeatOutcome.Seated> seated() {
    return outcome instanceof SeatOutcome.Seated s ? Optional.of(s) : Optional.empty();
  }

  /** Returns where their joints are, if they can sit. */
  public Optional<Posture> posture() {
    return seated().map(s -> s.pose().posture());
  }

  /** Returns their flesh, boots and helmet by part; empty if they cannot sit. */
  public List<Flesh> flesh() {
    return FLESH.of(this);
  }

  private List<Flesh> fleshed() {
    return posture().map(p -> List.copyOf(Figure.parts(body, p))).orElse(List.of());
  }

  private List<Flesh> finely() {
    return posture()
        .map(p -> List.copyOf(Figure.fineParts(body, p, LIMB_PIECES)))
        .orElse(List.of());
  }

  /** Returns their body, for gaps; nothing if they cannot sit. */
  public List<Prism> prisms() {
    return prisms(flesh());
  }

  /**
   * Returns their body without some limbs.
   *
   * @param limbs names of {@link Flesh}
   */
  public List<Prism> prismsWithout(Set<String> limbs) {
    return prisms(flesh().stream().filter(f -> !limbs.contains(f.name())).toList());
  }

  /** Returns their body where limbs that go outwards do so piece by piece. */
  public List<Prism> finePrisms() {
    return prisms(FINE.of(this));
  }

  /**
   * Returns what each limb of that is made of, by the name of its {@link Flesh}; asked again, the
   * same lists.
   */
  public Map<String, List<Prism>> fineLimbs() {
    return FINE_LIMBS.of(this);
  }

  /** Returns what each limb of their body is made of, by the name of its {@link Flesh}. */
  public Map<String, List<Prism>> limbs() {
    return limbs(flesh());
  }

  private Map<String, List<Prism>> limbs(List<Flesh> pieces) {
    Map<String, List<Flesh>> limbs = new LinkedHashMap<>();
    pieces.forEach(f -> limbs.computeIfAbsent(f.name(), n -> new ArrayList<>()).add(f));
    Map<String, List<Prism>> prisms = new LinkedHashMap<>();
    limbs.forEach((name, flesh) -> prisms.put(name, prisms(flesh)));
    return Collections.unmodifiableMap(prisms);
  }

  /** Returns what the solid of {@code body} in a posture is made of. */
  public static List<Prism> prisms(Body body, Posture posture) {
    return prisms(Figure.parts(body, posture));
  }

  private static List<Prism> prisms(List<Flesh> flesh) {
    List<Prism> prisms = new ArrayList<>();
    for (Flesh part : flesh) {
      if (part.innerMm() > 0) {
        Interval left = new Interval(part.innerMm(), part.outerMm());
        prisms.add(new Prism(part.outline(), left));
        prisms.add(new Prism(part.outline(), left.mirrored()));
      } else {
        prisms.add(new Prism(part.outline(), new Interval(-part.outerMm(), part.outerMm())));
      }
    }
    return prisms;
  }

  /**
   * Returns their masses by segment, in the axes of the drawn machine; empty if they cannot sit.
   */
  public List<MassPoint> masses() {
    return posture().stream()
        .flatMap(p -> SegmentMass.of(body, p).stream())
        .map(m -> new MassPoint(m.massKg(), m.centre().x(), m.centre().z()))
        .toList();
  }
}
