package org.longlow.constraints.seat;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.layout.Traits.Duty;
import org.longlow.constraints.shape.Prism;

/**
 * Which limbs of somebody seated lie on a part. Names are those of {@link
 * org.longlow.rider.pose.Flesh}; which limb a cushion carries is a judgement.
 */
public final class Resting {

  private static final Set<String> ON_PAN = Set.of("pelvis", "thigh", "chest", "rucksack");
  private static final Set<String> ON_BACK =
      Set.of("pelvis", "chest", "rucksack", "upperArm", "neck");
  private static final Set<String> ON_HEAD_REST = Set.of("head", "neck", "chest", "rucksack");
  private static final Set<String> FEET = Set.of("foot", "shank");

  /** A hand is the end of its forearm. */
  private static final Set<String> HANDS = Set.of("forearm");

  private static final Set<String> LEVERS = Set.of("foot", "shank", "forearm");

  private Resting() {}

  /**
   * What of somebody must stay clear of a part.
   *
   * @param without limbs that may touch it
   * @param fine whether thighs are taken as far out as they are at each place
   */
  public record Clear(Set<String> without, boolean fine) {

    /** Returns what it is made of. */
    public List<Prism> prisms(Sitting sitting) {
      return fine ? sitting.finePrisms() : sitting.prismsWithout(without);
    }
  }

  /** Returns what of somebody must stay clear of a part that they may rest on. */
  public static Clear clear(Sitting sitting, Part part) {
    boolean ofOthers = part.seatOf().filter(seat -> !seat.equals(sitting.seat())).isPresent();
    return new Clear(limbs(sitting, part), ofOthers);
  }

  /** Returns the limbs that may lie on or in a part; none where nobody rests on it. */
  public static Set<String> limbs(Sitting sitting, Part part) {
    SeatParts seat = sitting.parts();
    if (part.equals(seat.pan())) {
      return ON_PAN;
    }
    if (is(seat.back(), part)) {
      return ON_BACK;
    }
    if (is(seat.head(), part)) {
      return ON_HEAD_REST;
    }
    if (is(seat.feet(), part)) {
      return FEET;
    }
    if (is(seat.hands(), part) || holds(seat.hands(), part)) {
      return HANDS;
    }
    boolean worked = part.traits().duty() == Duty.CONTROL;
    return worked && sitting.occupant().rides() ? LEVERS : Set.of();
  }

  /** Returns whether a part is a cushion of the seat somebody is on. */
  public static boolean ownCushion(Sitting sitting, Part part) {
    return part instanceof CushionPart && sitting.parts().parts().contains(part);
  }

  /** A bar that ends at a grip lies under the hand that holds it, and must clear the rest. */
  private static boolean holds(Optional<? extends Part> grips, Part part) {
    return grips.isPresent() && !Collections.disjoint(grips.get().pins(), part.pins());
  }

  private static boolean is(Optional<? extends Part> own, Part part) {
    return own.isPresent() && own.get().equals(part);
  }
}
