package org.longlow.sketcher.report;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.seat.CushionAdvice;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.picture.CushionPicture;
import org.longlow.sketcher.picture.CushionStack;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Page;

/** A cut through each cushion, with what it does under everybody who sits on it. */
final class SeatPictures {

  /** So that the letters can be read on a telephone, paper mm. */
  private static final double WIDE_MM = 110;

  /** Heights are drawn at 1:2, as on the cushion bench. */
  private static final double DENOMINATOR = 2;

  private SeatPictures() {}

  /** Writes those of a seat. */
  static void write(Html h, Study study, String seat) {
    List<CushionStack> stacks = new ArrayList<>();
    for (String name : cushions(study, seat)) {
      CushionStack.of(study, name).filter(s -> !s.layers().isEmpty()).ifPresent(stacks::add);
    }
    if (stacks.isEmpty()) {
      return;
    }
    List<String> parts = List.copyOf(study.layout().parts().keySet());
    h.raw("<figure>\n<div class=\"row\">\n");
    for (CushionStack stack : stacks) {
      Drawing drawing = CushionPicture.unexplained(stack, WIDE_MM, DENOMINATOR);
      Plate.write(
          h,
          "cushion" + (1 + parts.indexOf(stack.cushion())),
          stack.cushion() + " cut through",
          Page.round(drawing.scaled(1 / DENOMINATOR), Elevations.MARGIN_MM));
    }
    h.raw("</div>\n");
    h.element(
        "figcaption",
        "Cut through "
            + String.join(", ", stacks.stream().map(CushionStack::cushion).toList())
            + ": free at the left, and as deep as it is pressed under each. "
            + CushionPicture.TO_SCALE
            + study.layout().units().word()
            + ".");
    h.raw("</figure>\n");
    stacks.forEach(stack -> advice(h, study, stack.cushion()));
  }

  /** What to change next where a cushion does not hold well. */
  private static void advice(Html h, Study study, String cushion) {
    CushionPart part = (CushionPart) study.layout().parts().get(cushion);
    CushionAdvice.best(part, study.sittings(), study.placed().places())
        .ifPresent(a -> h.element("p", cushion + ". " + a.words().in(study.layout().units())));
  }

  private static Set<String> cushions(Study study, String seat) {
    Set<String> names = new LinkedHashSet<>();
    for (Sitting s : study.sittings()) {
      if (s.seat().equals(seat)) {
        names.add(s.parts().pan().name());
        s.parts().back().map(CushionPart::name).ifPresent(names::add);
        s.parts().head().map(CushionPart::name).ifPresent(names::add);
      }
    }
    return names;
  }
}
