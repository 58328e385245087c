package org.longlow.sketcher.desk;

import java.util.Optional;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * The finding picked: it is shown in the stance in which it is worst, and put down the machine is
 * seen as before. Belongs to the desk's thread.
 */
final class FindingRead {

  private final SeenBefore before;
  private String id = "";

  FindingRead(SeenBefore before) {
    this.before = before;
  }

  /** Returns the id of the finding picked, or empty. */
  String id() {
    return id;
  }

  /** None is picked any more, on another machine. */
  void forget() {
    id = "";
  }

  /** Picks another, or with an empty id none; returns how the picture is asked for then. */
  PictureOptions pick(String next, Optional<BoardState> shown, PictureOptions now) {
    boolean wasRead = !id.isEmpty();
    id = next;
    return shown.map(on -> next.isEmpty() ? putDown(on, now, wasRead) : read(on, now)).orElse(now);
  }

  private PictureOptions read(BoardState shown, PictureOptions now) {
    before.enter(SeenBefore.By.FINDING, now);
    PictureOptions next = shown.optionsFor(id, now.withInPose(Optional.empty()));
    if (!next.stance().equals(now.stance())) {
      before.put(next);
    }
    return next;
  }

  private PictureOptions putDown(BoardState shown, PictureOptions now, boolean wasRead) {
    return Optional.of(now)
        .filter(o -> wasRead)
        .flatMap(o -> before.leave(SeenBefore.By.FINDING, shown, o))
        .orElse(now.withInPose(Optional.empty()));
  }
}
