package org.longlow.constraints.check.person;

import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.person.Effort.Held;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.effort.Joint;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/**
 * What takes load off somebody's joints.
 *
 * @param known whether it is somebody of the crew; what helps one of a crowd is not sought, it
 *     takes long
 * @param screen what shelters the head
 * @param grips the move of them that helps most, found when somebody asks
 */
record EffortAdvice(
    Sitting sitting,
    Places places,
    boolean known,
    String screen,
    Supplier<Optional<GripRelief>> grips) {

  private static final double MM_PER_M = 1e3;

  /** Found once, whoever asks; for any thread. */
  private static final class Asked implements Supplier<Optional<GripRelief>> {

    private final Supplier<Optional<GripRelief>> how;
    private Optional<GripRelief> found;

    Asked(Supplier<Optional<GripRelief>> how) {
      this.how = how;
    }

    @Override
    @SuppressWarnings("OptionalAssignedToNull")
    public synchronized Optional<GripRelief> get() {
      if (found == null) {
        found = how.get();
      }
      return found;
    }
  }

  static EffortAdvice of(
      Layout layout, Sitting sitting, List<Standing> standings, Effort effort, Places places) {
    Posture posture = sitting.posture().orElseThrow();
    double radius = sitting.body().head().radiusMm();
    double ahead = posture.headCentre().x() + radius;
    // a guard low over a wheel is no screen, however near it is
    double low = 0.5 * (posture.hip().z() + posture.shoulder().z());
    return new EffortAdvice(
        sitting,
        places,
        layout.crew().containsKey(sitting.person()),
        Shelter.highest(
                sitting.occupant(), standings, ahead, low, posture.headCentre().z() + radius)
            .map(name -> "raise " + name + " ahead of it")
            .orElse("put a screen ahead of it"),
        new Asked(() -> GripRelief.of(sitting, places, effort.wind())));
  }

  /** Says what to do where a joint holds more than it should. */
  Words words(Held held) {
    boolean falls = held.loadNm() < 0;
    return switch (held.joint()) {
      case NECK ->
          falls
              ? Words.of("lean the back a little farther, or wear a lighter helmet")
              : sitting.parts().head().isPresent()
                  ? Words.of(
                      HeadRestShift.words(sitting, places)
                          .map(how -> Words.of(how, ", to the head, or "))
                          .orElse(Words.NONE),
                      screen)
                  : Words.of("give the head a rest, or " + screen);
      case SHOULDER, ELBOW ->
          falls && held.brief() && held.joint() == Joint.SHOULDER
              ? Words.of("lean the back farther, or give the hands something to push against")
              : Words.of(arms(held), moved(held));
      case HIP ->
          held.brief() || !known
              ? Words.of("lean the back farther, or give the feet something to push against")
              : Words.later(() -> relief(held));
      case KNEE ->
          Words.of(
              falls
                  ? "give heels or calves a rest, or bring the foot rests nearer"
                  : "move the foot rests farther from the seat, or lower them");
      case ANKLE ->
          Words.of(
              falls
                  ? "let the foot lie flat on a board"
                  : "give the heels a rest, such as a footboard");
    };
  }

  /** What helps the hips takes seating anew on each change, so it waits until somebody reads it. */
  private Words relief(Held held) {
    return HipRelief.of(sitting, places)
        .map(r -> r.words(held.weak()))
        .orElse(
            Words.of(
                "no change tried of pan, foot rests or back alone helps: give the feet something to"
                    + " push against"));
  }

  /**
   * How much more must rest on each grip for the shoulders to hold nothing, or a rest of its own.
   */
  private Words arms(Held held) {
    Posture posture = sitting.posture().orElseThrow();
    double ahead = (posture.grip().x() - posture.shoulder().x()) / MM_PER_M;
    boolean falls = held.loadNm() < 0;
    return held.joint() == Joint.ELBOW
        ? Words.of(falls ? "rest the forearms" : "let less of the weight rest on the hands")
        : !falls
            ? Words.of("let less rest on each grip")
            : sitting.parts().hands().isEmpty() || !(ahead > 0)
                ? Words.of("give the arms a rest")
                : Say.format(
                    "let %s more rest on each grip (%s rest on both now), or give the elbows a"
                        + " rest",
                    Say.newton(Math.abs(held.loadNm()) / ahead),
                    Say.newton(sitting.seated().orElseThrow().load().handsN()));
  }

  /** Seating them anew on each takes long, so it waits until somebody reads it. */
  private Words moved(Held held) {
    return !tries(held)
        ? Words.NONE
        : Words.later(
            () ->
                grips
                    .get()
                    .map(r -> Words.of(", or ", r.words()))
                    .orElse(Words.of(" (no move of the grips tried alone helps)")));
  }

  private boolean tries(Held held) {
    return known && !held.brief() && sitting.parts().hands().isPresent();
  }

  private Optional<Tug> gripsPull(Held held) {
    return tries(held) ? grips.get().map(GripRelief::pull) : Optional.empty();
  }

  /** Which way {@link #words} would have something moved. */
  Optional<Tug> pull(Held held) {
    boolean falls = held.loadNm() < 0;
    return switch (held.joint()) {
      case NECK ->
          falls
              ? Optional.of(Tug.of(Tug.Thing.BACK, Tug.Way.FLATTER, "wear a lighter helmet"))
              : Optional.empty();
      case SHOULDER ->
          falls && held.brief()
              ? Optional.of(
                  Tug.of(
                      Tug.Thing.BACK, Tug.Way.FLATTER, "give the hands something to push against"))
              : gripsPull(held);
      case ELBOW -> gripsPull(held);
      case HIP ->
          held.brief() || !known
              ? Optional.of(
                  Tug.of(
                      Tug.Thing.BACK, Tug.Way.FLATTER, "give the feet something to push against"))
              : HipRelief.of(sitting, places).map(HipRelief::pull);
      case KNEE ->
          Optional.of(
              falls
                  ? Tug.of(Tug.Thing.FOOT_RESTS, Tug.Way.NEARER, "give heels or calves a rest")
                  : Tug.of(Tug.Thing.FOOT_RESTS, Tug.Way.FARTHER, Tug.Way.DOWN, ""));
      case ANKLE -> Optional.empty();
    };
  }
}
