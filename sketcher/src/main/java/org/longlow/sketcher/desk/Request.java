package org.longlow.sketcher.desk;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.PictureOptions;

/**
 * What the desk asks about the machine on the board: solve it as it is now, or as the hand pulls
 * it, and draw it. Immutable, so that it can wait for the worker while the desk goes on.
 *
 * @param from the layout that it is a change of, itself where it is a step
 * @param known what was found last of the machine, before it was changed
 * @param options how the picture is asked for
 * @param finding id of the finding picked, or empty
 * @param live whether the answer shows something that is not a step yet
 * @param pull where the pin that is held is to go; empty if none is
 */
record Request(
    Layout layout,
    Layout from,
    List<Finding> known,
    PictureOptions options,
    String finding,
    boolean live,
    Optional<DragWork.Pull> pull) {

  /** What there is to show, and what the pull did, if there was one. */
  record Answer(BoardState shown, Optional<DragNow> dragged) {}

  /** Answers the question, on the worker's thread. */
  Answer answered(Studio studio) {
    Study study = pull.map(DragWork.Pull::study).orElseGet(() -> studio.of(layout, from));
    BoardState shown = studio.draw(layout, study, known, options, finding, live);
    return new Answer(shown, pull.map(p -> p.words(layout, study)));
  }
}
