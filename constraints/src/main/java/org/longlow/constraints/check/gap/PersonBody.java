package org.longlow.constraints.check.gap;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.lock.SpaceBody;
import org.longlow.constraints.lock.TurnSweep;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.ByThing;

/** Somebody seated, as the bodies that must stay clear of parts and of others; made once each. */
public final class PersonBody {

  /** All of somebody, as close up as it goes. */
  private static final Resting.Clear FINE = new Resting.Clear(Set.of(), true);

  private static final Resting.Clear WHOLE = new Resting.Clear(Set.of(), false);

  /** They go with the grips, wherever these go. */
  private static final Set<String> ARMS = Set.of("upperArm", "forearm");

  /** Bodies of people who sat so lately, for any thread. */
  private static final ByThing<Sitting, Map<Resting.Clear, Solid>> BODIES =
      new ByThing<>(32, sitting -> new ConcurrentHashMap<>());

  private static final ByThing<Sitting, Map<String, Solid>> LIMBS =
      new ByThing<>(32, PersonBody::solids);

  private final Sitting sitting;
  private List<SpaceBody> limbs;

  private PersonBody(Sitting sitting) {
    this.sitting = sitting;
  }

  /** Returns everybody who can sit. */
  public static List<PersonBody> of(List<Sitting> sittings) {
    return sittings.stream().filter(s -> s.posture().isPresent()).map(PersonBody::new).toList();
  }

  /** Returns all of somebody; empty if they cannot sit. */
  public static Optional<Solid> all(Sitting sitting) {
    return sitting.posture().map(p -> new PersonBody(sitting).body(WHOLE));
  }

  public Sitting sitting() {
    return sitting;
  }

  /** Returns this person without some of their limbs, by name. */
  public Solid without(Set<String> limbs) {
    return body(new Resting.Clear(limbs, false));
  }

  /** Returns what of this person must stay clear of a part. */
  Solid clearOf(Part part, GapRules rules) {
    return body(rules.clear(part, sitting));
  }

  /** Returns all of this person, thighs as far out as they are at each place. */
  Solid fine() {
    return body(FINE);
  }

  /**
   * Returns the limbs that a part must stay clear of while it turns with the steering. Arms go with
   * the grips. Of a part that rests or works somebody's limbs, or that is said to touch the rider,
   * those may be in it turned that it touches straight ahead.
   *
   * @param body the part straight ahead, in space
   */
  List<SpaceBody> limbsBeside(Part part, GapRules rules, SpaceBody body) {
    Set<String> without = rules.clear(part, sitting).without();
    List<SpaceBody> beside = new ArrayList<>();
    for (SpaceBody limb : limbs()) {
      boolean may = !rules.clearOfPeople(part.name()) || without.contains(limb.name());
      if (!may || !TurnSweep.touch(limb, body)) {
        beside.add(limb);
      }
    }
    return beside;
  }

  /** All limbs but the arms, thighs as far out as they are at each place. */
  private List<SpaceBody> limbs() {
    if (limbs == null) {
      limbs = new ArrayList<>();
      sitting
          .fineLimbs()
          .forEach(
              (name, prisms) -> {
                if (!ARMS.contains(name)) {
                  limbs.add(SpaceBody.of(name, prisms));
                }
              });
    }
    return limbs;
  }

  private Solid body(Resting.Clear clear) {
    return BODIES
        .of(sitting)
        .computeIfAbsent(
            clear,
            c ->
                c.fine()
                    ? new Solid(sitting.person(), c.prisms(sitting))
                    : Solid.of(sitting.person(), limbsWithout(c.without())));
  }

  private List<Solid> limbsWithout(Set<String> without) {
    return LIMBS.of(sitting).entrySet().stream()
        .filter(limb -> !without.contains(limb.getKey()))
        .map(Map.Entry::getValue)
        .toList();
  }

  private static Map<String, Solid> solids(Sitting sitting) {
    Map<String, Solid> solids = new LinkedHashMap<>();
    sitting.limbs().forEach((limb, prisms) -> solids.put(limb, new Solid(limb, prisms)));
    return Collections.unmodifiableMap(solids);
  }
}
