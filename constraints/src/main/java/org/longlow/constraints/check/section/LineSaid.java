package org.longlow.constraints.check.section;

import org.longlow.constraints.check.finding.Basis;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.FindingGroup;
import org.longlow.constraints.check.finding.FindingKind;
import org.longlow.constraints.check.finding.FindingKind.Rests;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.check.section.LineWays.Way;
import org.longlow.constraints.gap.Solid;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.line.LinePath;
import org.longlow.constraints.shape.Prism;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/** What all that is found of a line has in common: its kind, its basis, its state and place. */
public final class LineSaid {

  /** How long a line must be, and what it passes. */
  public static final FindingKind LINE =
      new FindingKind("line", FindingGroup.GAPS, Rests.ON_DRAWING);

  static final Basis HOW =
      Basis.model(
          "a thin rod through its points (natural spline), wheels, steering to both locks and"
              + " sections moved; of what it passes only tyres, the road, people and what burns"
              + " are looked at");

  /** Balls so far apart are no more than 1 mm farther from what is 40 mm off than the line, mm. */
  static final double BALLS_MM = 15;

  private LineSaid() {}

  /** Returns the body of a line, as balls along it. */
  static Solid body(String name, LinePath path, double radiusMm) {
    return new Solid(
        name,
        path.evenly(BALLS_MM).stream()
            .map(p -> Prism.ball(new PointMm(p[0], p[2]), p[1], radiusMm))
            .toList());
  }

  static Finding placed(Finding f, Way way, double[] at) {
    Finding there = f.at(new PointMm(at[0], at[2]), at[1]);
    return way.condition().kind() == Stance.Kind.OPEN ? there.openBy(way.opening()) : there;
  }

  static Words state(Way way) {
    if (way.condition().kind() == Stance.Kind.OPEN) {
      return Words.of(
          ", section " + way.condition().stance().section() + " ",
          Say.percent(way.opening()),
          " open");
    }
    if (way.turnRad() == 0) {
      return Words.of(", steering straight");
    }
    return Words.of(
        ", steering ",
        Say.deg(Math.toDegrees(Math.abs(way.turnRad()))),
        way.turnRad() > 0 ? " to the left" : " to the right");
  }
}
