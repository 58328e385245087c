package org.longlow.constraints.check.road;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Sources;
import org.longlow.constraints.check.gap.AfterMove;
import org.longlow.constraints.check.gap.Nudged;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.layout.WheelPart;
import org.longlow.constraints.stand.Lowest;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.words.Words;

/** The lowest point under the machine, laden and at full bump. */
public final class GroundFindings {

  /** The lowest point over the road. */
  public static final FindingKind CLEARANCE =
      new FindingKind("clearance", FindingGroup.CLEARANCE, Rests.ON_MASSES);

  /** What is so near to the road, or to a limit, is on it, mm. */
  private static final double ON_THE_ROAD_MM = 1e-6;

  private GroundFindings() {}

  /** Without what a part comes near when it is raised as is advised. */
  public static List<Finding> of(Layout layout, List<Standing> standings) {
    return of(layout, standings, Optional.empty());
  }

  /**
   * @param nudged tells what a part comes near when it is raised as is advised
   */
  public static List<Finding> of(Layout layout, List<Standing> standings, Optional<Nudged> nudged) {
    List<Finding> findings = new ArrayList<>();
    Finding laden = null;
    for (Standing standing : standings) {
      if (standing.kind() == Stance.Kind.LADEN) {
        Finding f = lowest(layout, standing, "laden", Demands.Key.GROUND_CLEARANCE, nudged);
        if (f != null && (laden == null || f.value() < laden.value())) {
          laden = f;
        }
      } else if (standing.kind() == Stance.Kind.FULL_BUMP) {
        Finding f = lowest(layout, standing, "bump", Demands.Key.BUMP_CLEARANCE, nudged);
        if (f != null) {
          findings.add(f);
        }
      }
    }
    if (laden != null) {
      findings.add(0, laden);
    }
    return findings;
  }

  private static Finding lowest(
      Layout layout, Standing standing, String state, Demands.Key demand, Optional<Nudged> nudged) {
    Lowest lowest = Lowest.of(standing).orElse(null);
    if (lowest == null) {
      return null;
    }
    String part = lowest.part();
    double least = lowest.heightMm();
    double limit = standing.places().value(layout.demands().limit(demand));
    return Finding.held(
            CLEARANCE,
            About.parts(part).named(state),
            Optional.of(standing.condition()),
            Figures.atLeast(least, limit, FigureUnit.MM),
            List.of(Sources.of(layout, demand)),
            Words.of(
                (layout.parts().get(part) instanceof WheelPart
                    ? "What sits about the axle of " + part + " comes lowest, "
                    : part + " is the lowest part, "),
                Say.mm(Math.abs(least)),
                least < -ON_THE_ROAD_MM ? " below the road; " : " above the road; ",
                Words.atLeast(limit),
                " are asked " + demand.meaning(),
                (limit - least > ON_THE_ROAD_MM
                    ? layout.parts().get(part) instanceof WheelPart
                        ? Words.of(": make it ", Words.atLeast(limit - least), " less in radius.")
                        : Words.of(
                            ": raise it ",
                            Words.atLeast(limit - least),
                            ".",
                            nudged
                                .map(n -> n.but(part, List.of(AfterMove.Move.up(limit - least))))
                                .orElse(Words.NONE))
                    : ".")))
        .at(lowest.at());
  }
}
