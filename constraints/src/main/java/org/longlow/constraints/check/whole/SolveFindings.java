package org.longlow.constraints.check.whole;

import java.util.ArrayList;
import java.util.HashSet;
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
import org.longlow.constraints.gap.SideBySide;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Limit;
import org.longlow.constraints.place.LayoutProblem;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.solve.Conflict;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.solve.LimitFailure;
import org.longlow.constraints.solve.Redundancy;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.problem.SolveStatus;
import org.longlow.constraints.solve.problem.SolverSettings;
import org.longlow.constraints.solve.relation.Relations;
import org.longlow.rider.words.Words;

/** How the layout itself solved: ties, limits, freedoms, what is redundant or near a dead point. */
public final class SolveFindings {

  /** Whether the ties hold. */
  public static final FindingKind TIES =
      new FindingKind("ties", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  /** A limit of the layout that cannot hold. */
  private static final FindingKind LIMIT =
      new FindingKind("limit", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  /** Whether ties and limits can hold could not be decided. */
  private static final FindingKind UNDECIDED =
      new FindingKind("undecided", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  /** What is left free could not be decided. */
  private static final FindingKind FREEDOMS =
      new FindingKind("freedoms", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  /** A tie that says nothing new. */
  private static final FindingKind REDUNDANT =
      new FindingKind("redundant", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  /** A tie near a dead point. */
  private static final FindingKind DEAD_POINT =
      new FindingKind("dead-point", FindingGroup.LAYOUT, Rests.ON_DRAWING);

  private static final Basis SOURCE = Basis.ownDemand("this layout's ties and limits");

  /** Amounts below this would read as nothing, mm. */
  private static final double LEAST_SAID_MM = 0.05;

  private static final Words ALLOWED =
      Say.format(
          "the work allowed, %d million evaluations",
          SolverSettings.DEFAULT.workAllowed() / 1_000_000);

  private static final About LAYOUT = About.thing("layout");

  private SolveFindings() {}

  public static List<Finding> of(Placed placed) {
    List<Finding> findings = new ArrayList<>();
    SolveReport report = placed.report();
    Optional<Diagnosis> diagnosis = report.diagnosis();
    Optional<Conflict> conflict = diagnosis.flatMap(Diagnosis::conflict);
    if (report.status().holds()) {
      findings.add(holds(placed, diagnosis));
    } else if (report.status() == SolveStatus.NOT_DECIDED) {
      findings.add(notDecided(report));
    } else if (report.status() == SolveStatus.LIMIT_FAILS) {
      boolean decided = diagnosis.map(Diagnosis::decided).orElse(true);
      for (LimitFailure failure : worthSaying(report.failedLimits())) {
        findings.add(limit(failure, placed.problem(), conflict, decided));
      }
    } else {
      findings.add(ties(report, conflict));
    }
    findings.addAll(idle(placed.layout(), report));
    diagnosis.ifPresent(d -> addDiagnosis(d, report.failedTies(), findings));
    if (report.status().holds() && !diagnosis.map(Diagnosis::decided).orElse(true)) {
      findings.add(
          Finding.note(
              FREEDOMS,
              LAYOUT,
              Verdict.CAUTION,
              SOURCE,
              Words.of(
                  "Not decided: what the ties leave free and which of them say nothing new; working"
                      + " it out takes more than ",
                  ALLOWED,
                  ".")));
    }
    return findings;
  }

  /** Limits between one thing and itself: they hold, or fail, whatever moves. */
  private static List<Finding> idle(Layout layout, SolveReport report) {
    List<Finding> idle = new ArrayList<>();
    layout
        .limits()
        .forEach(
            (name, limit) -> {
              boolean same =
                  limit.kind() != Limit.Kind.ANGLE_BETWEEN && one(limit.pins())
                      || one(limit.parts());
              boolean fails = report.failedLimits().stream().anyMatch(f -> f.limit().equals(name));
              if (same && !fails) {
                idle.add(
                    Finding.note(
                        REDUNDANT,
                        About.thing(name, name),
                        Verdict.CAUTION,
                        SOURCE,
                        Words.of(
                            "Limit "
                                + name
                                + " is from a thing to itself and holds whatever moves, so it"
                                + " limits nothing; look whether it names what you mean.")));
              }
            });
    return idle;
  }

  private static boolean one(List<String> names) {
    return names.size() > 1 && names.stream().distinct().count() == 1;
  }

  private static Finding holds(Placed placed, Optional<Diagnosis> diagnosis) {
    int ties = placed.problem().problem().ties().size();
    int free = diagnosis.map(Diagnosis::degreesOfFreedom).orElse(0);
    return Finding.note(
            TIES,
            LAYOUT,
            Verdict.PASS,
            SOURCE,
            Say.format("All %d ties hold; %d ways to move are left free.", ties, free))
        .measured(Figures.only(placed.report().maxResidualMm(), FigureUnit.MM));
  }

  /** What is missed by nothing that can be said is left out beside what is missed by more. */
  private static List<LimitFailure> worthSaying(List<LimitFailure> failures) {
    List<LimitFailure> large =
        failures.stream().filter(f -> f.shortfallMm() >= LEAST_SAID_MM).toList();
    return large.isEmpty() ? failures : large;
  }

  private static Finding notDecided(SolveReport report) {
    List<String> open = new ArrayList<>(report.failedTies());
    report.failedLimits().forEach(f -> open.add(f.limit()));
    String what = open.isEmpty() ? "the ties and limits" : String.join(", ", open);
    return Finding.note(
            UNDECIDED,
            About.thing(what),
            Verdict.FAIL,
            SOURCE,
            Words.of(
                "Not decided: whether "
                    + what
                    + " can hold together with the rest; finding out takes more than ",
                ALLOWED,
                ". The drawing shows where the search stopped. Loosen one of them, or draw the"
                    + " layout nearer to what is meant."))
        .measured(Figures.only(report.maxResidualMm(), FigureUnit.MM));
  }

  private static Finding ties(SolveReport report, Optional<Conflict> conflict) {
    List<String> named = conflict.map(Conflict::names).orElse(report.failedTies());
    double off = report.maxResidualMm();
    String smallest =
        conflict.isPresent() ? "" : ", and which of them to blame was not worked out to the end";
    return Finding.note(
            TIES,
            About.thing(String.join(", ", named)),
            Verdict.FAIL,
            SOURCE,
            Words.of(
                "These ties cannot all hold"
                    + smallest
                    + ": "
                    + String.join(", ", named)
                    + "; change or drop one of them. The drawing shows the nearest compromise, off"
                    + " by ",
                amount(off, false),
                "."))
        .measured(new Figures(off, 0, -off, FigureUnit.MM));
  }

  private static Finding limit(
      LimitFailure failure, LayoutProblem problem, Optional<Conflict> conflict, boolean decided) {
    boolean ofAngle = problem.isOfAngle(failure.limit());
    double off = ofAngle ? degrees(failure.shortfallMm()) : failure.shortfallMm();
    Optional<SideBySide.Pair> across =
        problem
            .across(failure.limit())
            .filter(pair -> pair.shortMm() >= failure.shortfallMm() - LEAST_SAID_MM);
    Words text =
        across.isPresent()
            ? Words.of(
                "Limit " + failure.limit() + " is ",
                Say.mm(across.get().shortMm()),
                " short across the machine; no move in the elevation of less than ",
                Say.mm(across.get().wayMm()),
                " helps, since the two lie side by side there. Change how wide or how far out one"
                    + " of them is.")
            : Words.of(
                "Limit " + failure.limit() + " ", together(failure, ofAngle, conflict, decided));
    return Finding.note(
            LIMIT, About.thing(failure.limit(), failure.limit()), Verdict.FAIL, SOURCE, text)
        .measured(new Figures(-off, 0, -off, ofAngle ? FigureUnit.DEG : FigureUnit.MM));
  }

  /** What a limit cannot hold together with. */
  private static Words together(
      LimitFailure failure, boolean ofAngle, Optional<Conflict> conflict, boolean decided) {
    Words missed = Words.of(" it is missed by ", amount(failure.shortfallMm(), ofAngle));
    Optional<Conflict> own = conflict.filter(c -> c.names().contains(failure.limit()));
    if (own.isEmpty()) {
      return Words.of(
          "cannot hold together with the ties and other limits;",
          missed,
          (decided ? "." : ". Which of them to blame was not worked out to the end."));
    }
    List<String> others =
        own.get().names().stream().filter(n -> !n.equals(failure.limit())).toList();
    if (others.isEmpty()) {
      return Words.of("cannot hold wherever things are moved;", missed, ".");
    }
    return Words.of(
        "cannot hold together with " + String.join(", ", others) + ";",
        missed,
        ". Without any one of these the rest can hold",
        (own.get().missed().equals(failure.limit())
            ? Words.of(
                "; where the others hold, it is short by ",
                amount(own.get().missMm(), ofAngle),
                " at best.")
            : "."));
  }

  private static Words amount(double shortMm, boolean ofAngle) {
    return shortMm < LEAST_SAID_MM
        ? Words.of("less than ", Say.mm(LEAST_SAID_MM))
        : ofAngle ? Say.deg(degrees(shortMm)) : Say.mm(shortMm);
  }

  private static double degrees(double arcMm) {
    return Math.toDegrees(arcMm / Relations.ARC_RADIUS_MM);
  }

  private static void addDiagnosis(
      Diagnosis diagnosis, List<String> failedTies, List<Finding> findings) {
    Set<String> disputed = new HashSet<>(failedTies);
    disputed.addAll(diagnosis.contradiction());
    for (Redundancy r : diagnosis.redundant()) {
      Set<String> same = new HashSet<>(r.impliedBy());
      same.add(r.tie());
      if (same.stream().anyMatch(disputed::contains)) {
        continue; // of the same directions as others, but it asks for something else
      }
      findings.add(
          Finding.note(
              REDUNDANT,
              About.thing(r.tie(), r.tie()),
              r.impliedBy().isEmpty() ? Verdict.CAUTION : Verdict.PASS,
              SOURCE,
              Words.of(
                  "Tie "
                      + r.tie()
                      + (r.impliedBy().isEmpty()
                          ? " holds whatever moves, so it ties nothing; look whether it names the"
                              + " pins you mean."
                          : " says nothing new: it follows from "
                              + String.join(", ", r.impliedBy())
                              + "."))));
    }
    for (String tie : diagnosis.nearSingular()) {
      findings.add(
          Finding.note(
                  DEAD_POINT,
                  About.thing(tie, tie),
                  Verdict.CAUTION,
                  SOURCE,
                  Words.of(
                      "Tie "
                          + tie
                          + " is near a dead point: a small change of it moves much else."))
              .measured(Figures.only(diagnosis.largestGain(), FigureUnit.NONE)));
    }
  }
}
