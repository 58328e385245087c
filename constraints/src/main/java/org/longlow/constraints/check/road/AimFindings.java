package org.longlow.constraints.check.road;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.longlow.constraints.check.finding.About;
import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Figures;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.LampPart;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * How a headlamp's aim tips with who is aboard. Heights of lamps are asked of the empty machine,
 * and judged there; a dipped beam has to be right with the rider alone and fully laden.
 */
public final class AimFindings {

  /** How far a dipped beam tips between those who ride. */
  public static final FindingKind AIM = new FindingKind("aim", FindingGroup.SAG, Rests.ON_MASSES);

  /** A dipped beam may fall by so much for its way, and by so much more; from memory. */
  private static final double LEAST_FALL = 0.005;

  private static final double MOST_FALL = 0.025;

  /** Between both, deg. */
  static final double MOST_DEG = Math.toDegrees(Math.atan(MOST_FALL) - Math.atan(LEAST_FALL));

  private static final List<Basis> BASIS =
      List.of(
          Basis.model("how the frame lies over the road with each crew; springs in balance"),
          Basis.published(
              Known.FROM_MEMORY,
              "UN R53 6.2.5: set with the rider alone and fully laden (seen in a copy); that a"
                  + " dipped beam falls by 0.5 to 2.5 % is from memory"));

  private AimFindings() {}

  /** Returns one for a machine with a headlamp whose rider takes somebody along or not. */
  public static List<Finding> of(Layout layout, List<Standing> standings) {
    Optional<LampPart> lamp =
        layout.parts(LampPart.class).filter(p -> p.type() == LampPart.Kind.HEADLAMP).findFirst();
    Optional<Standing> unladen =
        standings.stream().filter(s -> s.kind() == Stance.Kind.UNLADEN).findFirst();
    if (lamp.isEmpty() || unladen.isEmpty()) {
      return List.of();
    }
    // another rider sets it anew, so each is looked at with and without somebody behind
    return standings.stream()
        .filter(s -> s.kind() == Stance.Kind.LADEN)
        .collect(Collectors.groupingBy(s -> s.condition().aboard().get(0)))
        .values()
        .stream()
        .filter(crews -> crews.size() > 1)
        .map(Tipped::of)
        .max(Comparator.comparingDouble(Tipped::deg))
        .map(tipped -> aim(lamp.get(), unladen.get(), tipped))
        .stream()
        .toList();
  }

  /** The two crews of one rider between which a machine tips most. */
  private record Tipped(Standing low, Standing high) {

    static Tipped of(List<Standing> crews) {
      Comparator<Standing> byTip = Comparator.comparingDouble(AimFindings::upDeg);
      return new Tipped(
          crews.stream().min(byTip).orElseThrow(), crews.stream().max(byTip).orElseThrow());
    }

    double deg() {
      return upDeg(high) - upDeg(low);
    }
  }

  private static Finding aim(LampPart lamp, Standing unladen, Tipped tipped) {
    Standing low = tipped.low();
    Standing high = tipped.high();
    double deg = tipped.deg();
    Figures figures = Figures.atMost(deg, MOST_DEG, FigureUnit.DEG);
    Words found =
        Say.format(
            "From %s to %s aboard the beam of %s tips up by %s; its centre, %s high with nobody, is"
                + " then at %s and %s",
            low.condition().people(),
            high.condition().people(),
            lamp.name(),
            Say.deg(deg),
            Say.mm(heightMm(lamp, unladen)),
            Say.mm(heightMm(lamp, low)),
            Say.mm(heightMm(lamp, high)));
    boolean inside = figures.verdict() == Verdict.PASS;
    return new Finding(
            AIM,
            About.parts(lamp.name()),
            Optional.of(high.condition()),
            inside ? Verdict.PASS : Verdict.CAUTION,
            figures,
            BASIS,
            inside
                ? Words.of(found, ": set it with the rider alone.")
                : Words.of(
                    found,
                    Say.format(
                        "; no one setting serves both within %s: fit an adjuster that is reached"
                            + " from the seat, or more preload in the rear with somebody behind.",
                        Say.deg(MOST_DEG))))
        .at(high.places().pin(lamp.at()));
  }

  private static double heightMm(LampPart lamp, Standing s) {
    return s.ground().toRoad(s.places().pin(lamp.at())).z();
  }

  /** How far the nose is up over the road, deg: axes are the frame's, so the road tips under it. */
  private static double upDeg(Standing s) {
    PointMm along = s.ground().along();
    return -Math.toDegrees(Math.atan2(along.z(), along.x()));
  }
}
