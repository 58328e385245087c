package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.gap.GapFindings;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.PartShape;
import org.longlow.rider.words.Words;

/** Parts that there are two of, one on each side: they may not be in each other. */
public final class TwinFindings {

  private TwinFindings() {}

  public static List<Finding> of(Map<String, PartShape> shapes) {
    List<Finding> findings = new ArrayList<>();
    for (PartShape shape : shapes.values()) {
      if (shape.part().paired()) {
        Interval one = shape.prisms().get(0).across();
        double apart = one.gap(one.mirrored());
        if (apart < 0) {
          findings.add(inEachOther(shape, -apart, one.middle() > 0));
        }
      }
    }
    return findings;
  }

  private static Finding inEachOther(PartShape shape, double mm, boolean aside) {
    String name = shape.part().name();
    return Finding.held(
            GapFindings.GAP,
            About.parts(name).named(name, name),
            Optional.empty(),
            Figures.atLeast(-mm, 0, FigureUnit.MM),
            List.of(Basis.model("the two sides of one part across the machine")),
            Words.of(
                Say.format("The left and the right %s are %s in each other: ", name, Say.mm(mm)),
                aside ? Say.format("set each of them %s farther out, or ", Say.mm(mm / 2)) : "",
                "make it one part across the middle."))
        .at(shape.centre());
  }
}
