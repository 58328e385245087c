package org.longlow.constraints.built;

import java.util.ArrayList;
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
import org.longlow.constraints.check.road.Weights;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.AsBuilt;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.study.Study;
import org.longlow.rider.words.Words;

/** What is found of a machine as built besides what is found of every machine. */
final class BuiltFindings {

  /** What was made against the plan. */
  private static final FindingKind AS_BUILT =
      new FindingKind("as-built", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  /** What scales show against what was reckoned. */
  private static final FindingKind SCALES =
      new FindingKind("scales", FindingGroup.LOADS, Rests.ON_DRAWING);

  private static final Basis MEASURED = Basis.ownDemand("what was measured, and this layout");

  /** Bathroom scales agree as well: the larger of a kilogram and a hundredth of the machine. */
  private static final Basis AS_SCALES =
      Basis.judgement("ordinary scales agree to 1 kg or a hundredth of the machine");

  private static final double SCALES_KG = 1;
  private static final double SCALES_SHARE = 0.01;

  /** Readings that agree so far when swapped are taken to be swapped; judgement. */
  private static final double SAME_SHARE = 0.02;

  /** What weighs so many times as much or as little is no missing part; judgement. */
  private static final double MOST_TIMES = 2;

  /** Names told of what weighs about where something is missing. */
  private static final int NEAR = 3;

  private BuiltFindings() {}

  static List<Finding> of(Layout plan, Study built, List<LetGo> letGo) {
    List<Finding> findings = new ArrayList<>();
    List<LetGo> ties = new ArrayList<>();
    for (LetGo gone : letGo) {
      if (gone.isLimit()) {
        findings.add(limit(gone));
      } else if (!gone.measured().isEmpty()) {
        Optional<Formula> is = plan.ties().get(gone.name()).is();
        boolean plainly =
            is.filter(f -> List.of(f.text().strip()).equals(gone.measured())).isPresent();
        findings.add(
            is.isPresent() && gone.isFigure() && !plainly
                ? byFormula(gone, is.get())
                : contradicted(gone, plainly));
      } else if (plan.ties().containsKey(gone.name())) {
        ties.add(gone);
      } else {
        findings.add(unlike(gone));
      }
    }
    if (!ties.isEmpty()) {
      findings.add(ties(ties));
    }
    scales(plan.asBuilt(), built).ifPresent(findings::add);
    return findings;
  }

  private static Finding limit(LetGo gone) {
    Words text =
        gone.isFigure()
            ? Say.format(
                "As built, %s (%s) is %s, the plan allows %s %s.",
                gone.name(),
                gone.what(),
                says(gone.built(), gone.dim()),
                gone.built() > gone.asked() ? "at most" : "at least",
                says(gone.asked(), gone.dim()))
            : Words.of(
                "As built, "
                    + gone.name()
                    + " ("
                    + gone.what()
                    + ") cannot hold beside what was measured.");
    return Finding.note(
        AS_BUILT, About.thing(gone.name(), gone.name()), Verdict.FAIL, MEASURED, text);
  }

  /** A measure beside other measurements that say otherwise. */
  private static Finding contradicted(LetGo gone, boolean asks) {
    String measures = String.join(", ", gone.measured());
    Words text =
        asks && gone.isFigure()
            ? Say.format(
                "%s was measured as %s, but what else was measured makes it %s (tie %s, %s). All"
                    + " findings go by the places of the pins; measure both again.",
                measures,
                says(gone.asked(), gone.dim()),
                says(gone.built(), gone.dim()),
                gone.name(),
                gone.what())
            : Words.of(
                "What was measured contradicts itself: by "
                    + measures
                    + " a pin lies where "
                    + gone.name()
                    + " ("
                    + gone.what()
                    + ") does not hold",
                gone.isFigure()
                    ? Words.of(", by ", says(Math.abs(gone.built() - gone.asked()), gone.dim()))
                    : Words.NONE,
                ". All findings go by the places of the pins; measure them again.");
    return Finding.note(
        AS_BUILT, About.thing(gone.name(), gone.name()), Verdict.FAIL, MEASURED, text);
  }

  /** It may be the formula of the plan that does not hold on the machine, not what was measured. */
  private static Finding byFormula(LetGo gone, Formula is) {
    return Finding.note(
        AS_BUILT,
        About.thing(gone.name(), gone.name()),
        Verdict.CAUTION,
        MEASURED,
        Say.format(
            "With %s as measured the plan makes it %s by the formula %s (tie %s, %s), but by the"
                + " places of its pins it is %s. Either the machine was made otherwise than the"
                + " formula says, or something was measured wrong: measure again, or mend the"
                + " formula. All findings go by the places of the pins.",
            String.join(", ", gone.measured()),
            says(gone.asked(), gone.dim()),
            is.text().strip(),
            gone.name(),
            gone.what(),
            says(gone.built(), gone.dim())));
  }

  /** Two measurements that no machine has at once. */
  private static Finding unlike(LetGo gone) {
    return Finding.note(
        AS_BUILT,
        About.thing(gone.name(), gone.name()),
        Verdict.FAIL,
        MEASURED,
        Say.format(
            "%s says %s, but by the places of its pins it is %s; measure both again.",
            gone.name().substring(0, 1).toUpperCase(java.util.Locale.ROOT)
                + gone.name().substring(1),
            says(gone.asked(), gone.dim()),
            says(gone.built(), gone.dim())));
  }

  private static Finding ties(List<LetGo> ties) {
    Words list = Words.NONE;
    for (LetGo tie : ties) {
      Words one =
          tie.isFigure()
              ? Say.format(
                  "%s %s instead of %s",
                  tie.name(), says(tie.built(), tie.dim()), says(tie.asked(), tie.dim()))
              : Words.of(tie.name());
      list = list == Words.NONE ? one : Words.of(list, ", ", one);
    }
    return Finding.note(
            AS_BUILT,
            About.thing("ties of the plan", "ties"),
            Verdict.CAUTION,
            MEASURED,
            Words.of(
                "Made otherwise than the plan ties it: ",
                list,
                ". What was measured holds, and what hangs on it follows."))
        .measured(Figures.only(ties.size(), FigureUnit.COUNT));
  }

  private static Optional<Finding> scales(AsBuilt built, Study study) {
    Optional<Scales> reckoned = Scales.reckoned(study);
    if (reckoned.isEmpty() || built.frontLoad().isEmpty() && built.rearLoad().isEmpty()) {
      return Optional.empty();
    }
    Optional<Scales> measured = Scales.measured(study, built);
    return Optional.of(
        measured.isPresent()
            ? both(measured.get(), reckoned.get(), study)
            : one(built, reckoned.get(), study));
  }

  private static Finding one(AsBuilt built, Scales reckoned, Study study) {
    boolean front = built.frontLoad().isPresent();
    double shown =
        study.placed().places().value(front ? built.frontLoad().get() : built.rearLoad().get());
    double meant = front ? reckoned.frontKg() : reckoned.rearKg();
    return scales(
        Math.abs(shown - meant),
        reckoned,
        Say.format(
            "Under the %s wheel the scale shows %s, reckoned are %s%s; weigh the %s wheel too, and"
                + " it can be told what is missing where.",
            front ? "front" : "rear",
            Say.kg(shown),
            Say.kg(meant),
            unknown(study),
            front ? "rear" : "front"));
  }

  private static Finding both(Scales shown, Scales reckoned, Study study) {
    double off =
        Math.max(
            Math.abs(shown.frontKg() - reckoned.frontKg()),
            Math.abs(shown.rearKg() - reckoned.rearKg()));
    Words text =
        Say.format(
            "The scales show %s in front and %s behind, reckoned are %s and %s%s.",
            Say.kg(shown.frontKg()),
            Say.kg(shown.rearKg()),
            Say.kg(reckoned.frontKg()),
            Say.kg(reckoned.rearKg()),
            unknown(study));
    return scales(
        off,
        reckoned,
        off <= allowed(reckoned) ? text : Words.of(text, explained(shown, reckoned, study)));
  }

  private static Words explained(Scales shown, Scales reckoned, Study study) {
    return Words.of(
        reason(shown, reckoned, study),
        shown.swapped().isNear(reckoned, SAME_SHARE)
            ? " With both readings swapped they would agree: look which scale stood under which"
                + " wheel."
            : "");
  }

  private static Words reason(Scales shown, Scales reckoned, Study study) {
    double wheelbase = Scales.wheelbaseMm(study);
    double more = shown.totalKg() - reckoned.totalKg();
    double further = shown.centreMm(wheelbase) - reckoned.centreMm(wheelbase);
    if (Math.abs(more) <= allowed(reckoned)) {
      return Say.format(
          " It weighs what it should, and its centre of mass is %s farther %s: something heavy lies"
              + " there, or masses were shared out otherwise.",
          Say.wholeMm(Math.abs(further)), further > 0 ? "forward" : "back");
    }
    double times = shown.totalKg() / reckoned.totalKg();
    if (times > MOST_TIMES || times < 1 / MOST_TIMES) {
      return Say.format(
          " Together that is %s %s than was reckoned: look at the unit of both readings and at the"
              + " scales, and give the mass of what has none.",
          Say.kg(Math.abs(more)), more > 0 ? "more" : "less");
    }
    double at = shown.missingAtMm(reckoned, wheelbase);
    if (!Scales.isInside(study, at)) {
      double front = shown.frontKg() - reckoned.frontKg();
      double rear = shown.rearKg() - reckoned.rearKg();
      return Say.format(
          " The front scale is %s and the rear scale %s. Nothing added or taken away inside the"
              + " machine does that: mass sits farther %s than drawn, or the scales are swapped or"
              + " wrong.",
          off(front), off(rear), further > 0 ? "forward" : "back");
    }
    return Say.format(
        " That would be explained by %s %s, %s %s the rear contact; what weighs about there: %s.",
        Say.kg(Math.abs(more)),
        more > 0 ? "that nobody reckoned with" : "reckoned too much",
        Say.wholeMm(Math.abs(at)),
        at < 0 ? "behind" : "ahead of",
        String.join(", ", Scales.nearest(study, at, NEAR)));
  }

  private static Words off(double kg) {
    return Words.of(Say.kg(Math.abs(kg)), kg < 0 ? " under" : " over");
  }

  private static Words unknown(Study study) {
    List<String> unknown = Weights.of(study.shapes().values()).unknown();
    return Words.of(
        unknown.isEmpty()
            ? ""
            : ", without " + String.join(", ", unknown) + ", whose mass is not given");
  }

  private static double allowed(Scales reckoned) {
    return Math.max(SCALES_KG, SCALES_SHARE * reckoned.totalKg());
  }

  private static Finding scales(double offKg, Scales reckoned, Words text) {
    Figures figures = Figures.atMost(offKg, allowed(reckoned), FigureUnit.KG);
    return Finding.note(
            SCALES,
            About.thing("machine", "machine"),
            figures.inside() ? Verdict.PASS : Verdict.CAUTION,
            AS_SCALES,
            text)
        .measured(figures);
  }

  private static Words says(double value, Dim dim) {
    return dim.equals(Dim.ANGLE)
        ? Say.deg(Math.toDegrees(value))
        : dim.equals(Dim.LENGTH)
            ? Say.tenths(value)
            : dim.equals(Dim.MASS) ? Say.kg(value) : Words.of(Say.number(value));
  }
}
