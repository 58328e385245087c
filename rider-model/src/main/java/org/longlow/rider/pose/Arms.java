package org.longlow.rider.pose;

import org.longlow.rider.body.Body;

/** Flesh of the arms of a rider in a posture; both are alike. */
public final class Arms {

  private final Body body;
  private final Posture p;
  private final Thick thick;

  Arms(Body body, Posture posture) {
    this.body = body;
    this.p = posture;
    this.thick = thick(body);
  }

  /** How thick an arm is at its joints in what is worn: radii, mm. */
  public record Thick(
      double shoulderMm, double elbowMm, double forearmMm, double wristMm, double handMm) {}

  /** Returns how thick the arms are. */
  public Thick thick() {
    return thick;
  }

  private static Thick thick(Body body) {
    double jacket = body.gear().jacketMm();
    double glove = body.gear().gloveMm();
    double fore = Rounds.girthRadius(body, "forearmcircumferenceflexed");
    return new Thick(
        Rounds.girthRadius(body, "bicepscircumferenceflexed") + jacket,
        // armour fills the air of the sleeve
        0.9 * fore + Math.max(body.gear().armourMm(), jacket),
        fore + jacket,
        Rounds.girthRadius(body, "wristcircumference") + Math.max(jacket, glove),
        0.5 * body.measures().get("handbreadth") + glove);
  }

  /** Returns an upper arm. */
  Flesh upper(String name) {
    double upper = thick.shoulderMm();
    double shoulder = p.across().shoulderMm();
    double elbow = p.across().elbowMm();
    return Rounds.hull(
        name,
        Math.max(0, Math.min(shoulder, elbow) - upper),
        Math.max(
            0.5 * body.measures().get("bideltoidbreadth") + body.gear().jacketMm(), elbow + upper),
        Rounds.circle(p.shoulder(), upper),
        Rounds.circle(p.elbow(), thick.elbowMm()));
  }

  /** Returns a forearm with its hand, as wide all along as its ends together. */
  Flesh fore(String name) {
    double fore = thick.forearmMm();
    double wrist = thick.wristMm();
    double hand = thick.handMm();
    double elbow = p.across().elbowMm();
    double g = p.across().gripMm();
    return Rounds.hull(
        name,
        Math.max(0, Math.min(elbow - fore, g - hand)),
        Math.max(elbow + fore, g + hand),
        Rounds.circle(p.elbow(), fore),
        Rounds.circle(p.wrist(), wrist),
        Rounds.circle(p.grip(), hand));
  }

  /** Returns the forearm between two shares of the way from elbow to wrist. */
  Flesh fore(String name, double from, double to) {
    double fore = thick.forearmMm();
    double wrist = thick.wristMm();
    double toWrist = p.elbow().distance(p.wrist());
    double across =
        Rounds.mix(
            p.across().elbowMm(),
            p.across().gripMm(),
            toWrist / Math.max(1, toWrist + p.wrist().distance(p.grip())));
    double innerWrist = across - wrist;
    double outerWrist = across + wrist;
    double inner = p.across().elbowMm() - fore;
    double outer = p.across().elbowMm() + fore;
    return Rounds.hull(
        name,
        Math.max(
            0, Math.min(Rounds.mix(inner, innerWrist, from), Rounds.mix(inner, innerWrist, to))),
        Math.max(Rounds.mix(outer, outerWrist, from), Rounds.mix(outer, outerWrist, to)),
        Rounds.circle(p.elbow().towards(p.wrist(), from), Rounds.mix(fore, wrist, from)),
        Rounds.circle(p.elbow().towards(p.wrist(), to), Rounds.mix(fore, wrist, to)));
  }

  /** Returns a hand about its grip. */
  Flesh hand(String name) {
    double hand = thick.handMm();
    double g = p.across().gripMm();
    return Rounds.hull(
        name,
        Math.max(0, g - hand),
        g + hand,
        Rounds.circle(p.wrist(), thick.wristMm()),
        Rounds.circle(p.grip(), hand));
  }
}
