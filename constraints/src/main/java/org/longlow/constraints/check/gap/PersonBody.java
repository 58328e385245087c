package org.longlow.constraints.check.gap;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.seat.Resting;
import org.longlow.constraints.seat.Sitting;

/** Somebody seated, as the bodies that must stay clear of parts and of others; made once each. */
public final class PersonBody {

  /** All of somebody, as close up as it goes. */
  private static final Resting.Clear FINE = new Resting.Clear(Set.of(), true);

  private final Sitting sitting;
  private final Map<Resting.Clear, Solid> bodies = new HashMap<>();

  private PersonBody(Sitting sitting) {
    this.sitting = sitting;
  }

  /** Returns everybody who can sit. */
  public static List<PersonBody> of(List<Sitting> sittings) {
    return sittings.stream().filter(s -> s.posture().isPresent()).map(PersonBody::new).toList();
  }

  Sitting sitting() {
    return sitting;
  }

  /** Returns what of this person must stay clear of a part. */
  Solid clearOf(Part part, GapRules rules) {
    return body(rules.clear(part, sitting));
  }

  /** Returns all of this person, thighs as far out as they are at each place. */
  Solid fine() {
    return body(FINE);
  }

  private Solid body(Resting.Clear clear) {
    return bodies.computeIfAbsent(clear, c -> new Solid(sitting.person(), c.prisms(sitting)));
  }
}
