package org.longlow.constraints.check.person;

import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Tug;
import org.longlow.constraints.check.person.Effort.Held;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.ShellPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/**
 * What takes load off somebody's joints.
 *
 * @param known whether it is somebody of the crew; what helps one of a crowd is not sought, it
 *     takes long
 * @param screen what shelters the head
 */
record EffortAdvice(Sitting sitting, Places places, boolean known, String screen) {

  private static final double MM_PER_M = 1e3;

  static EffortAdvice of(Layout layout, Sitting sitting, Places places) {
    return new EffortAdvice(
        sitting,
        places,
        layout.crew().containsKey(sitting.person()),
        layout.parts(ShellPart.class).findAny().isPresent()
            ? "raise the screen or cowl ahead of it"
            : "put a screen ahead of it");
  }

  /** Says what to do where a joint holds more than it should. */
  Words words(Held held) {
    boolean falls = held.loadNm() < 0;
    return switch (held.joint()) {
      case NECK ->
          Words.of(
              falls
                  ? "lean the back a little farther, or wear a lighter helmet"
                  : sitting.parts().head().isPresent()
                      ? "bring the head rest to the head, or " + screen
                      : "give the head a rest, or " + screen);
      case SHOULDER -> falls ? arms(held) : Words.of("raise the grips");
      case ELBOW ->
          Words.of(falls ? "rest the forearms, or lower the grips" : "raise the grips a little");
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

  /** How much more must rest on each grip for the shoulders to hold nothing. */
  private Words arms(Held held) {
    Posture posture = sitting.posture().orElseThrow();
    double ahead = (posture.grip().x() - posture.shoulder().x()) / MM_PER_M;
    return held.brief()
        ? Words.of("lean the back farther, or give the hands something to push against")
        : sitting.parts().hands().isEmpty() || !(ahead > 0)
            ? Words.of("give the arms a rest")
            : Say.format(
                "let %s more rest on each grip (%s rest on both now), give the elbows a rest, or"
                    + " bring the grips lower and nearer",
                Say.newton(Math.abs(held.loadNm()) / ahead),
                Say.newton(sitting.seated().orElseThrow().load().handsN()));
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
          !falls
              ? Optional.of(Tug.of(Tug.Thing.GRIPS, Tug.Way.UP, ""))
              : held.brief()
                  ? Optional.of(
                      Tug.of(
                          Tug.Thing.BACK,
                          Tug.Way.FLATTER,
                          "give the hands something to push against"))
                  : sitting.parts().hands().isEmpty()
                      ? Optional.empty()
                      : Optional.of(
                          Tug.of(
                              Tug.Thing.GRIPS,
                              Tug.Way.DOWN,
                              Tug.Way.NEARER,
                              "give the elbows a rest"));
      case ELBOW ->
          Optional.of(
              falls
                  ? Tug.of(Tug.Thing.GRIPS, Tug.Way.DOWN, "rest the forearms")
                  : Tug.of(Tug.Thing.GRIPS, Tug.Way.UP, ""));
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
