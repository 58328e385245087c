package org.longlow.constraints.check.person;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
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
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Bearings;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Prism;
import org.longlow.constraints.stand.Standing;
import org.longlow.rider.pose.Posture;
import org.longlow.rider.words.Words;

/** What is seen behind: over the shoulder, past the machine. */
final class BehindFindings {

  /** What hides the view straight behind. */
  static final FindingKind BEHIND =
      new FindingKind("behind", FindingGroup.SIGHT_AND_FOOT, Rests.ON_MASSES);

  /** Eyes and a turned head see so far round from straight ahead, rad: 70 and 35; from memory. */
  static final double ROUND_RAD = Math.toRadians(105);

  private static final List<Basis> LOOK =
      List.of(
          Basis.model("bodies as broad as they are, in plan from the eye"),
          Basis.published(
              Known.FROM_MEMORY,
              "a head turns some 70 degrees and eyes 35, so one sees 105 round (from memory)"));

  private BehindFindings() {}

  static List<Finding> of(Sitting sitting, Posture posture, Standing standing) {
    List<Finding> findings = new ArrayList<>();
    if (!(standing.ground().heightMm(posture.eye()) > 0)) {
      return findings;
    }
    findings.add(behind(sitting, posture, standing));
    return findings;
  }

  /** A sector with the part that hides it. */
  private record Hidden(String part, Bearings.Sector sector) {}

  private static Finding behind(Sitting sitting, Posture posture, Standing standing) {
    Bearings from =
        MirrorFindings.back(
            posture.eye(),
            0,
            standing.ground(),
            MirrorFindings.SEEN_HIGH_MM,
            MirrorFindings.SEEN_FAR_MM);
    List<Hidden> hidden = new ArrayList<>();
    Set<String> through = new LinkedHashSet<>();
    for (PartShape shape : standing.shapes().values()) {
      if (!from.meets(shape.box())) {
        continue;
      }
      for (Prism prism : shape.prisms()) {
        Optional<Bearings.Sector> sector = from.of(prism);
        if (LookingAhead.clear(shape.part())) {
          sector.ifPresent(s -> through.add(shape.part().name()));
        } else {
          sector.ifPresent(s -> hidden.add(new Hidden(shape.part().name(), s)));
        }
      }
    }
    Optional<Bearings.Sector> sector =
        Bearings.round(0, hidden.stream().map(Hidden::sector).toList());
    double left = Math.toDegrees(sector.map(Bearings.Sector::toRad).orElse(0.0));
    double right = Math.toDegrees(-sector.map(Bearings.Sector::fromRad).orElse(0.0));
    double most = 180 - Math.toDegrees(ROUND_RAD);
    double worse = Math.max(left, right);
    Figures figures = Figures.atMost(worse, most, FigureUnit.DEG);
    boolean sees = figures.verdict() == Verdict.PASS;
    String by =
        hidden.stream()
            .filter(h -> sector.isPresent())
            .filter(
                h ->
                    left >= right
                        ? h.sector().toRad() >= sector.get().toRad()
                        : h.sector().fromRad() <= sector.get().fromRad())
            .map(Hidden::part)
            .findFirst()
            .orElse("");
    boolean mirrors = standing.shapes().values().stream().anyMatch(MirrorFindings::mirror);
    return new Finding(
            BEHIND,
            About.person(sitting.occupant(), "what is behind", "behind"),
            Optional.of(standing.condition()),
            sees && through.isEmpty() ? Verdict.PASS : Verdict.CAUTION,
            figures,
            LOOK,
            Words.of(
                worse > 0
                    ? Say.format(
                        "Straight behind, the machine hides a car's lamps %s to the left and %s to"
                            + " the right, at the edge by %s",
                        Say.deg(left), Say.deg(right), by)
                    : Words.of("Nothing of the machine stands straight behind"),
                Say.format(
                    "; over the shoulder %s sees to some %s from there, and nearer only in mirrors",
                    sitting.person(), Say.deg(most)),
                mirrors ? "" : ", of which none is drawn: draw one, and what it shows is told",
                sees
                    ? "."
                    : ": make what stands behind narrower or lower at the height of the eye.",
                LookingAhead.through(through)))
        .at(posture.eye());
  }
}
