package org.longlow.sketcher.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;

/** Who sits on the machine together. */
public final class Company {

  private Company() {}

  /** Returns those who are on the machine in a stance, the rider first; empty where nobody is. */
  static List<Sitting> of(Study study, Standing standing) {
    return sittings(study, standing.condition().aboard());
  }

  /**
   * Returns the smallest company in which a person on a seat can be shown: a rider alone, anybody
   * else behind the first of the crew who can ride with them; empty if they cannot sit there.
   */
  static List<Sitting> with(Study study, Occupant who) {
    Optional<Sitting> sitting = seated(study).stream().filter(s -> is(s, who)).findFirst();
    if (sitting.isEmpty()) {
      return List.of();
    }
    List<Sitting> company = new ArrayList<>();
    if (!rides(sitting.get())) {
      riders(study).stream()
          .filter(s -> !s.person().equals(who.person()))
          .findFirst()
          .ifPresent(company::add);
    }
    company.add(sitting.get());
    return company;
  }

  /**
   * Returns the smallest company in which somebody of the crew can be shown, riding if they can,
   * else on the first seat that they can sit on; empty if there is none.
   */
  static List<Sitting> with(Study study, String person) {
    return seated(study).stream()
        .filter(s -> s.person().equals(person))
        .min(Comparator.comparing(s -> !rides(s)))
        .map(s -> with(study, s.occupant()))
        .orElse(List.of());
  }

  /** Returns who rides where somebody of the crew is shown: they themselves unless they cannot. */
  public static String rider(Study study, String person) {
    return with(study, person).stream().findFirst().map(Sitting::person).orElse(person);
  }

  /** Returns the sittings of people on seats; those who cannot sit there are left out. */
  static List<Sitting> sittings(Study study, List<Occupant> people) {
    List<Sitting> out = new ArrayList<>();
    people.forEach(who -> seated(study).stream().filter(s -> is(s, who)).forEach(out::add));
    return out;
  }

  /** Returns the stance in which the machine carries just these people, if there is one. */
  static Optional<Standing> laden(Study study, List<Sitting> company) {
    return study.standings().stream()
        .filter(s -> s.condition().equals(Condition.laden(occupants(company))))
        .findFirst();
  }

  /** Returns who sits where. */
  static List<Occupant> occupants(List<Sitting> company) {
    return company.stream().map(Sitting::occupant).toList();
  }

  /** Returns the first of the crew who can ride, if anybody can. */
  static Optional<Sitting> firstRider(Study study) {
    return riders(study).stream().findFirst();
  }

  private static boolean is(Sitting sitting, Occupant who) {
    return sitting.occupant().equals(who);
  }

  private static boolean rides(Sitting sitting) {
    return sitting.occupant().rides();
  }

  private static List<Sitting> riders(Study study) {
    return seated(study).stream().filter(Company::rides).toList();
  }

  private static List<Sitting> seated(Study study) {
    return study.sittings().stream().filter(s -> s.posture().isPresent()).toList();
  }
}
