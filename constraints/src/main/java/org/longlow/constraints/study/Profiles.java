package org.longlow.constraints.study;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.FrontPart;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.lock.Steered;
import org.longlow.constraints.machine.ride.Silhouette;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.stand.Rider;
import org.longlow.constraints.stand.SeenFrom;
import org.longlow.constraints.stand.Silhouettes;
import org.longlow.constraints.stand.Standing;

/** How large a machine is from each side: alone, what turns with its bars, and with people. */
public final class Profiles {

  private Profiles() {}

  /**
   * What is seen from one side.
   *
   * @param what of which bodies, in words
   * @param from the side
   * @param seen area and middle, on the page of that side and the road's axes
   */
  public record Profile(String what, SeenFrom from, Silhouette seen) {}

  /** Returns them all; none of a machine that does not stand. */
  public static List<Profile> of(Study study) {
    List<Profile> all = new ArrayList<>();
    if (study.standings().isEmpty()) {
      return all;
    }
    Standing first = study.standings().get(0);
    add(all, "machine alone", first, first.shapes().values(), Rider.NOBODY);
    List<PartShape> turning = turning(study, first);
    add(all, "what turns with the bars, straight ahead", first, turning, Rider.NOBODY);
    study.standings().stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .forEach(s -> add(all, s.condition().says(), s, s.shapes().values(), s.rider()));
    return all;
  }

  private static List<PartShape> turning(Study study, Standing standing) {
    Optional<Steered> steered =
        study
            .layout()
            .parts(FrontPart.class)
            .findFirst()
            .flatMap(fork -> Steered.of(study.layout(), fork, study.placed().places()));
    return standing.shapes().values().stream()
        .filter(s -> steered.filter(t -> t.turns(s.part().name())).isPresent())
        .toList();
  }

  private static void add(
      List<Profile> all,
      String what,
      Standing standing,
      Collection<PartShape> shapes,
      Rider rider) {
    for (SeenFrom from : SeenFrom.values()) {
      Silhouettes.of(shapes, rider, standing.ground(), from)
          .ifPresent(s -> all.add(new Profile(what, from, s)));
    }
  }
}
