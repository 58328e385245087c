package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;

/**
 * The picture that shows what a finding is about: its stance, with those on the machine whom it
 * concerns.
 *
 * @param stance the stance; empty where any will do
 * @param opening how far the section of an open stance is open, 0 shut to 1 open
 * @param seated who is seated, on which seats
 * @param inPose who of them is getting in, if somebody is
 */
public record View(
    Optional<Condition> stance, double opening, List<Occupant> seated, Optional<InPose> inPose) {

  /** What the machine is called that stands in no stance. */
  public static final String DRAWN = "as drawn";

  public View {
    seated = List.copyOf(seated);
  }

  View(Optional<Condition> stance, double opening, List<Occupant> seated) {
    this(stance, opening, seated, Optional.empty());
  }

  /** Returns the picture that shows a finding. */
  public static View of(Study study, Finding finding) {
    View view = atRest(study, finding);
    return new View(view.stance, view.opening, view.seated, InPose.of(study, finding));
  }

  /** Returns the picture that shows somebody on their seat, with as few others as may be. */
  public static View seating(Study study, Occupant who) {
    List<Sitting> needed = Company.with(study, who);
    return new View(
        Company.laden(study, needed).map(Standing::condition), 1, Company.occupants(needed));
  }

  private static View atRest(Study study, Finding finding) {
    Optional<Standing> standing = finding.stance().flatMap(study::standing);
    List<Sitting> company = standing.map(s -> Company.of(study, s)).orElse(List.of());
    Optional<Condition> stance = standing.map(Standing::condition);
    double opening = finding.opening().orElse(1);
    if (finding.who().isEmpty() || Company.occupants(company).contains(finding.who().get())) {
      return new View(stance, opening, Company.occupants(company));
    }
    List<Sitting> needed = Company.with(study, finding.who().get());
    boolean loaded = standing.isEmpty() || standing.get().kind() == Stance.Kind.LADEN;
    return new View(
        loaded ? Company.laden(study, needed).map(Standing::condition) : stance,
        opening,
        Company.occupants(needed));
  }

  /** Returns what a picture with these options shows. */
  public static View shown(Study study, PictureOptions options) {
    Optional<Standing> standing = Scenes.standing(study, options);
    return new View(
        standing.map(Standing::condition),
        options.opening(),
        Company.occupants(Scenes.seated(study, options, standing)),
        options.inPose());
  }

  /** Returns {@code options} with this stance and these people. */
  public PictureOptions in(PictureOptions options) {
    String rider =
        seated.stream()
            .filter(Occupant::rides)
            .map(Occupant::person)
            .findFirst()
            .orElse(options.person());
    return options
        .withPerson(rider)
        .withStance(stance)
        .withOpening(opening)
        .withSeated(seated)
        .withInPose(inPose);
  }

  /** Returns who is seen and how the machine stands, such as {@code Ada riding; full bump}. */
  public String words() {
    String people = seated.stream().map(this::words).collect(Collectors.joining(", "));
    String name = stance.map(Condition::says).orElse(DRAWN);
    String how =
        opening == 1 ? name : String.format(Locale.ROOT, "%s at %.0f %%", name, 100 * opening);
    boolean said =
        inPose.isPresent() || stance.filter(s -> s.kind() == Stance.Kind.LADEN).isPresent();
    return people.isEmpty()
        ? stance.isEmpty() ? "the machine " + DRAWN : how
        : people + (said ? "" : "; " + how);
  }

  private String words(Occupant who) {
    if (inPose.filter(p -> p.who().equals(who)).isPresent()) {
      return inPose.get().words();
    }
    return who.rides() ? who.person() + " riding" : who.words();
  }
}
