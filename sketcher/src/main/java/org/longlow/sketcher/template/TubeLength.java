package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.TubePart;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;

/** How long a tube is sawn off, and what becomes of its ends, in words. */
public final class TubeLength {

  /** Ends that reach as little past their pins add nothing, mm. */
  private static final double NOTHING_MM = 0.05;

  private TubeLength() {}

  /** Returns the length to saw off for a tube of a study, mm: what its ends need is in it. */
  public static double blankMm(TubePart tube, TubeBends bends, Study study) {
    Places places = study.placed().places();
    TemplateFigures figures = new TemplateFigures(study.layout().units());
    return blankMm(bends, TubeEnds.of(tube, study.shapes(), places, figures));
  }

  /** Returns the length between the longest points of both ends, mm. */
  static double blankMm(TubeBends bends, List<TubeEnd> ends) {
    return bends.cutMm() + ends.stream().mapToDouble(TubeEnd::pastPinMm).sum();
  }

  /** Returns what a template or card says of it. */
  static List<String> lines(TubeBends bends, List<TubeEnd> ends, TemplateFigures figures) {
    List<String> lines = new ArrayList<>();
    double blank = blankMm(bends, ends);
    boolean other = ends.stream().anyMatch(e -> Math.abs(e.pastPinMm()) > NOTHING_MM);
    lines.add(
        "cut length "
            + figures.mm(blank)
            + (other
                ? " between the longest points of its ends; "
                    + figures.mm(bends.cutMm())
                    + " on the centre line, from pin to pin"
                : ", on the centre line"));
    for (TubeEnd end : ends) {
      lines.add(
          (lines.size() == 1 ? "first end, " : "last end, ") + end.line() + past(end, figures));
    }
    return lines;
  }

  /** Stations count from the pin, where an end that is cut to a line does not begin. */
  private static String past(TubeEnd end, TemplateFigures figures) {
    double mm = end.pastPinMm();
    return Math.abs(mm) <= NOTHING_MM
        ? ""
        : ", its longest point "
            + figures.mm(Math.abs(mm))
            + (mm > 0 ? " past the pin" : " short of the pin");
  }

  static String reduced(String radius) {
    return "* bend radius of "
        + radius
        + " does not fit here: move the pins apart or take a smaller one";
  }
}
