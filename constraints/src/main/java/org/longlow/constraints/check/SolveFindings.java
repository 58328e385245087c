package org.longlow.constraints.check;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.place.Placed;
import org.longlow.constraints.solve.Diagnosis;
import org.longlow.constraints.solve.LimitFailure;
import org.longlow.constraints.solve.Redundancy;
import org.longlow.constraints.solve.SolveReport;
import org.longlow.constraints.solve.SolveStatus;
import org.longlow.constraints.solve.relation.Relations;

/** How the layout itself solved: ties, limits, freedoms, what is redundant or near a dead point. */
final class SolveFindings {

  private static final String SOURCE = "this layout's ties and limits";

  private SolveFindings() {}

  static List<Finding> of(Placed placed) {
    List<Finding> findings = new ArrayList<>();
    SolveReport report = placed.report();
    int ties = placed.problem().problem().ties().size();
    if (report.status().holds()) {
      int free = report.diagnosis().map(Diagnosis::degreesOfFreedom).orElse(0);
      findings.add(
          Finding.note(
              "ties",
              "layout",
              "",
              Verdict.PASS,
              report.maxResidualMm(),
              "mm",
              SOURCE,
              Say.format("All %d ties hold; %d ways to move are left free.", ties, free)));
    } else if (report.status() == SolveStatus.LIMIT_FAILS) {
      for (LimitFailure failure : report.failedLimits()) {
        findings.add(limit(failure, placed.problem().isOfAngle(failure.limit())));
      }
    } else {
      List<String> set = report.diagnosis().map(Diagnosis::contradiction).orElse(List.of());
      List<String> named = set.isEmpty() ? report.failedTies() : set;
      findings.add(
          new Finding(
              "ties",
              String.join(", ", named),
              "",
              Verdict.FAIL,
              report.maxResidualMm(),
              0,
              -report.maxResidualMm(),
              "mm",
              SOURCE,
              "These ties cannot all hold: "
                  + String.join(", ", named)
                  + "; change or drop one of them. The drawing shows the nearest compromise, off by "
                  + Say.mm(report.maxResidualMm())
                  + ".",
              java.util.Optional.empty()));
    }
    report.diagnosis().ifPresent(d -> addDiagnosis(d, findings));
    return findings;
  }

  private static Finding limit(LimitFailure failure, boolean ofAngle) {
    double off =
        ofAngle
            ? Math.toDegrees(failure.shortfallMm() / Relations.ARC_RADIUS_MM)
            : failure.shortfallMm();
    String text =
        "Limit "
            + failure.limit()
            + " cannot hold together with the ties and other limits; it is missed by "
            + (ofAngle ? Say.deg(off) : Say.mm(off))
            + ".";
    return new Finding(
        "limit." + failure.limit(),
        failure.limit(),
        "",
        Verdict.FAIL,
        -off,
        0,
        -off,
        ofAngle ? "deg" : "mm",
        SOURCE,
        text,
        java.util.Optional.empty());
  }

  private static void addDiagnosis(Diagnosis diagnosis, List<Finding> findings) {
    for (Redundancy r : diagnosis.redundant()) {
      findings.add(
          Finding.note(
              "redundant." + r.tie(),
              r.tie(),
              "",
              Verdict.PASS,
              Double.NaN,
              "",
              SOURCE,
              "Tie "
                  + r.tie()
                  + " says nothing new: it follows from "
                  + String.join(", ", r.impliedBy())
                  + "."));
    }
    for (String tie : diagnosis.nearSingular()) {
      findings.add(
          Finding.note(
              "dead-point." + tie,
              tie,
              "",
              Verdict.CAUTION,
              diagnosis.largestGain(),
              "",
              SOURCE,
              "Tie " + tie + " is near a dead point: a small change of it moves much else."));
    }
  }
}
