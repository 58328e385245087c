package org.longlow.sketcher.picture;

import java.util.Collection;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Condition;

/**
 * What a picture of the machine shows.
 *
 * @param person who is shown, riding if they can, else behind who does; empty takes the first of
 *     the crew who has a seat
 * @param seated who is seated, on which seats; empty takes those of the stance, or {@code person}
 * @param ghosts others of the crew, dashed
 * @param stance the stance; empty takes the laden stance of those seated, or the machine as drawn
 * @param asDrawn whether the machine is shown as drawn, in no stance
 * @param opening how far the section of an open stance is open, 0 shut to 1 open
 * @param aspect from where the machine is seen
 * @param inPose who of those seated is shown getting in, all sections open; empty where they sit
 * @param moved what moves the wheels from where they are in the stance; empty for nothing
 * @param findings ids of findings to mark, with their numbers; those without a place, and those
 *     about somebody who is not drawn, have no mark
 * @param chosen subject to bring out, such as {@code part:tank}, or empty
 * @param pins whether pins are shown with their names
 * @param names whether larger parts are named
 * @param nameWidthMm widest a name may be, paper mm, greater than 0; longer ones are shortened
 * @param dimensions whether wheelbase, rake, trail and the main heights are written
 * @param over which state of the machine is drawn over it: a variant, as-built, or empty for none
 * @param denominator N of the scale 1:N at which the drawing will be shown, greater than 0
 */
public record PictureOptions(
    String person,
    List<Occupant> seated,
    Set<String> ghosts,
    Optional<Condition> stance,
    boolean asDrawn,
    double opening,
    Aspect aspect,
    Optional<InPose> inPose,
    Optional<Moved> moved,
    Map<String, Integer> findings,
    String chosen,
    boolean pins,
    boolean names,
    double nameWidthMm,
    boolean dimensions,
    String over,
    double denominator) {

  /** The machine with its first rider, no dimensions, for showing at 1:10. */
  public static final PictureOptions PLAIN =
      new PictureOptions(
          "",
          List.of(),
          Set.of(),
          Optional.empty(),
          false,
          1,
          Aspect.SIDE,
          Optional.empty(),
          Optional.empty(),
          Map.of(),
          "",
          false,
          false,
          Double.POSITIVE_INFINITY,
          false,
          "",
          10);

  public PictureOptions {
    seated = List.copyOf(seated);
    ghosts = Set.copyOf(ghosts);
    findings = Collections.unmodifiableMap(new LinkedHashMap<>(findings));
    if (!(opening >= 0 && opening <= 1)) {
      throw new IllegalArgumentException("opening is " + opening + "; allowed: 0 to 1");
    }
    if (!(nameWidthMm > 0)) {
      throw new IllegalArgumentException(
          "names may be " + nameWidthMm + " mm wide; allowed: greater than 0");
    }
    if (!(denominator > 0) || !Double.isFinite(denominator)) {
      throw new IllegalArgumentException(
          "scale denominator is " + denominator + "; allowed: finite, greater than 0");
    }
  }

  /** Returns a copy that shows this person, alone if they ride and the stance seats nobody else. */
  public PictureOptions withPerson(String name) {
    return with(
        d -> {
          d.person = name;
          d.seated = List.of();
          d.inPose = Optional.empty();
        });
  }

  /** Returns a copy with these and no others seated, whatever the stance. */
  public PictureOptions withSeated(List<Occupant> people) {
    return with(d -> d.seated = people);
  }

  public PictureOptions withGhosts(Set<String> people) {
    return with(d -> d.ghosts = people);
  }

  /**
   * Returns a copy in this stance, with those seated who are in it; its section fully open, its
   * wheels where they are in it.
   */
  public PictureOptions withStance(Optional<Condition> condition) {
    return with(
        d -> {
          d.stance = condition;
          d.asDrawn = false;
          d.seated = List.of();
          d.opening = 1;
          d.inPose = Optional.empty();
          d.moved = Optional.empty();
        });
  }

  /** Returns a copy with the machine as drawn, in no stance. */
  public PictureOptions withAsDrawn() {
    return withStance(Optional.empty()).with(d -> d.asDrawn = true);
  }

  /** Returns a copy with another state of the machine drawn over it; empty for none. */
  public PictureOptions withOver(String state) {
    return with(d -> d.over = state);
  }

  /** Returns a copy seen from elsewhere. */
  public PictureOptions withAspect(Aspect next) {
    return with(d -> d.aspect = next);
  }

  /** Returns a copy with somebody in a pose of getting in; empty as they sit. */
  public PictureOptions withInPose(Optional<InPose> pose) {
    return with(d -> d.inPose = pose);
  }

  /** Returns a copy with the wheels moved from where they are in the stance. */
  public PictureOptions withMoved(Optional<Moved> wheels) {
    return with(d -> d.moved = wheels);
  }

  /** Returns a copy with the section of the stance open by this share of its way. */
  public PictureOptions withOpening(double share) {
    return with(d -> d.opening = share);
  }

  /** Returns a copy that marks these findings, numbered from 1 in this order. */
  public PictureOptions withFindings(Collection<String> ids) {
    Map<String, Integer> numbers = new LinkedHashMap<>();
    ids.forEach(id -> numbers.put(id, numbers.size() + 1));
    return withFindings(numbers);
  }

  /** Returns a copy that marks these findings with these numbers. */
  public PictureOptions withFindings(Map<String, Integer> numbers) {
    return with(d -> d.findings = numbers);
  }

  public PictureOptions withChosen(String subject) {
    return with(d -> d.chosen = subject);
  }

  public PictureOptions withPins(boolean shown) {
    return with(d -> d.pins = shown);
  }

  public PictureOptions withNames(boolean shown) {
    return with(d -> d.names = shown);
  }

  /** Returns a copy whose names are no wider than this, paper mm. */
  public PictureOptions withNameWidth(double mm) {
    return with(d -> d.nameWidthMm = mm);
  }

  public PictureOptions withDimensions(boolean shown) {
    return with(d -> d.dimensions = shown);
  }

  public PictureOptions withDenominator(double n) {
    return with(d -> d.denominator = n);
  }

  private PictureOptions with(Consumer<Draft> change) {
    Draft draft = new Draft(this);
    change.accept(draft);
    return draft.options();
  }

  /** The options while one of them is changed. */
  private static final class Draft {
    private String person;
    private List<Occupant> seated;
    private Set<String> ghosts;
    private Optional<Condition> stance;
    private boolean asDrawn;
    private double opening;
    private Aspect aspect;
    private Optional<InPose> inPose;
    private Optional<Moved> moved;
    private Map<String, Integer> findings;
    private String chosen;
    private boolean pins;
    private boolean names;
    private double nameWidthMm;
    private boolean dimensions;
    private String over;
    private double denominator;

    Draft(PictureOptions o) {
      person = o.person;
      seated = o.seated;
      ghosts = o.ghosts;
      stance = o.stance;
      asDrawn = o.asDrawn;
      opening = o.opening;
      aspect = o.aspect;
      inPose = o.inPose;
      moved = o.moved;
      findings = o.findings;
      chosen = o.chosen;
      pins = o.pins;
      names = o.names;
      nameWidthMm = o.nameWidthMm;
      dimensions = o.dimensions;
      over = o.over;
      denominator = o.denominator;
    }

    PictureOptions options() {
      return new PictureOptions(
          person,
          seated,
          ghosts,
          stance,
          asDrawn,
          opening,
          aspect,
          inPose,
          moved,
          findings,
          chosen,
          pins,
          names,
          nameWidthMm,
          dimensions,
          over,
          denominator);
    }
  }
}
