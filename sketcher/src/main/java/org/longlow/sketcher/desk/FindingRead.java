package org.longlow.sketcher.desk;

import java.util.Optional;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * The finding picked: it is shown in the stance in which it is worst, and put down the machine is
 * seen as drawn where it was before. Belongs to the desk's thread.
 */
final class FindingRead {

  private final DrawnBefore drawnBefore;
  private String id = "";

  FindingRead(DrawnBefore drawnBefore) {
    this.drawnBefore = drawnBefore;
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
    drawnBefore.enter(DrawnBefore.By.FINDING, now);
    PictureOptions next = shown.optionsFor(id, now.withInPose(Optional.empty()));
    if (!next.stance().equals(now.stance())) {
      drawnBefore.put(next.stance());
    }
    return next;
  }

  private PictureOptions putDown(BoardState shown, PictureOptions now, boolean wasRead) {
    boolean back = wasRead && drawnBefore.leave(DrawnBefore.By.FINDING, now);
    return back ? shown.in(Optional.empty(), now) : now.withInPose(Optional.empty());
  }
}
