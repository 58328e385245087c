package org.longlow.constraints.start;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.document.LayoutFaults;
import org.longlow.constraints.document.Tracer;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Wish;
import org.longlow.constraints.study.Study;

/** Makes a first machine from answers. */
public final class FirstMachine {

  private FirstMachine() {}

  static Layout draw(String name, Room room) {
    Draft draft = new Draft();
    new Seating(room, draft).draw();
    new Chassis(room, draft).draw();
    new Loading(room, draft).draw();
    new Fittings(room, draft).draw();
    room.brief.crew().forEach(draft::person);
    draft.wish("ease", Wish.Kind.COMFORT, Optional.empty(), 1);
    Layout layout = draft.layout(name, "A first machine", List.of(), room.brief.law());
    LayoutFaults.Verdict verdict = LayoutFaults.verdict(layout, Tracer.NONE);
    if (!verdict.faults().isEmpty()) {
      throw new IllegalStateException(
          "a first machine is no sound layout: " + verdict.faults().get(0).line());
    }
    return verdict.layout();
  }

  static Layout layout(Answers answers) {
    return new Trim(Brief.of(answers)).layout();
  }

  static Study study(Answers answers) {
    return Study.of(layout(answers));
  }
}
