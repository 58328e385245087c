package org.longlow.constraints.check.ride;

import java.util.List;
import java.util.Optional;
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
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.Words;

/** What the pull of a chain or of a motor in the hub does to the rear springs. */
public final class PullingAway {

  /** How the rear end answers drive. */
  public static final FindingKind SQUAT =
      new FindingKind("squat", FindingGroup.SAG, Rests.ON_MASSES);

  /** Of the load that pulling away moves to the rear, so much is borne by the chain; judgement. */
  static final double LEAST_SHARE = 0.5;

  static final double MOST_SHARE = 2;

  static final Basis STATICS =
      Basis.model(
          "statics of arm, wheel and the pull of the upper run, the lower one slack; no damping");

  static final Basis SHARE =
      Basis.judgement(
          "that chain pull should bear about the load which pulling away moves to the rear, half to"
              + " twice of it, is judgement");

  private PullingAway() {}

  /** Whether somebody rides in a stance whose centre of mass is over the road. */
  static boolean isLaden(Standing s) {
    return s.kind() == Stance.Kind.LADEN
        && s.load() != null
        && s.load().axles().total().at().z() > 0;
  }

  /**
   * Returns the finding.
   *
   * @param share of the load that moves to the rear, borne by what drives
   * @param bear what bears it, with its verb
   * @param answer what becomes of the rear, and what helps
   */
  static Finding said(
      About about, Standing s, double share, String bear, String answer, Wheels wheels) {
    Figures figures = Figures.within(share, LEAST_SHARE, MOST_SHARE, FigureUnit.SHARE);
    return new Finding(
            SQUAT,
            about,
            Optional.of(s.condition()),
            figures.margin() < 0 ? Verdict.CAUTION : Verdict.PASS,
            figures,
            List.of(STATICS, SHARE),
            Words.of(
                "With " + s.condition().people() + " pulling away, " + bear,
                Say.percent(share),
                " of the load that moves to the rear" + answer + "."))
        .at(wheels.drawn().pin(wheels.arm().pivot()));
  }
}
