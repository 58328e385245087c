package org.longlow.constraints.start;

import java.util.Optional;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Tracer;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Wish;

/** The layout of a first machine, once it is known where everything goes. */
final class FirstLayout {

  private FirstLayout() {}

  /**
   * Draws all of it.
   *
   * @param chain whether the chain is drawn
   */
  static Layout of(Lengthwise room, Story story, boolean chain) {
    Draft draft = new Draft();
    new RiderPlace(room, draft).draw();
    new Chassis(room, draft).draw();
    new DriveParts(room, draft, chain).draw();
    if (room.pillion.isPresent()) {
      new PillionSeat(room, draft).draw();
    }
    new LightsAhead(room, draft).draw();
    new Fittings(room, draft).draw();
    room.brief.crew().forEach(draft::person);
    draft.wish("ease", Wish.Kind.COMFORT, Optional.empty(), 1);
    return faultless(draft.layout(story.name(), story.title(), story.notes(), room.brief.law()));
  }

  /** Returns a layout with what its reading fills in; one with a fault is a mistake of ours. */
  static Layout faultless(Layout layout) {
    LayoutFaults.Verdict verdict = LayoutFaults.verdict(layout, Tracer.NONE);
    if (!verdict.faults().isEmpty()) {
      throw new IllegalStateException(
          "a first machine has a fault: " + verdict.faults().get(0).line());
    }
    return verdict.layout();
  }
}
