package org.longlow.sketcher.picture;

import java.util.Optional;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.person.AccessFindings;
import org.longlow.constraints.check.person.GettingIn;
import org.longlow.constraints.check.person.GettingInFindings;
import org.longlow.constraints.check.person.GettingInPose;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.study.Study;

/** Somebody who is shown in a pose of getting in. */
public record InPose(Occupant who, GettingInPose.Step step) {

  /** Returns how somebody gets in; empty where no way is known. */
  public static Optional<GettingIn> poses(Study study, Occupant who) {
    Places places = study.placed().places();
    AccessFindings ways = new AccessFindings(study.layout(), places, study.shapes());
    return study
        .sitting(who.person(), who.seat())
        .flatMap(
            s -> new GettingInFindings(study.layout(), places, ways).poses(s, study.standings()));
  }

  /** Returns the tightest pose of a finding about getting in. */
  static Optional<InPose> of(Study study, Finding finding) {
    return finding
        .who()
        .filter(who -> finding.kind() == GettingInFindings.GETTING_IN)
        .flatMap(who -> poses(study, who).map(in -> new InPose(who, in.tight())));
  }

  /** Returns it in words, such as {@code Ada stepping over}. */
  String words() {
    return who.words() + " " + step.words();
  }

  /** Returns somebody in it, seen from the machine's right. */
  static Manikin manikin(Sitting sitting, GettingInPose pose) {
    return of(sitting, pose, pose.left()).before(of(sitting, pose, !pose.left()));
  }

  private static Manikin of(Sitting sitting, GettingInPose pose, boolean inner) {
    return Manikin.of(
        sitting.person(), sitting.seat(), sitting.body(), inner ? pose.inner() : pose.outer());
  }
}
