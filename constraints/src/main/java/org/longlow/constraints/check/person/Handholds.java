package org.longlow.constraints.check.person;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.RestPart;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.shape.Interval;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.body.Body;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.pose.Posture;

/** The handholds that somebody's hands reach, each on both sides; from other seats too. */
record Handholds(Layout layout, Places places) {

  /** Returns those that each hand reaches at its own side as they sit. */
  List<RestPart> seated(Sitting sitting) {
    Posture posture = sitting.posture().orElseThrow();
    return reached(
        sitting.body(),
        new Interval(posture.shoulder().x(), posture.shoulder().x()),
        posture.shoulder().z(),
        posture.across().shoulderMm());
  }

  /**
   * Returns those that one hand reaches as they stand beside: anywhere between pan and foot rest,
   * one shoulder over the outer end of that.
   */
  List<RestPart> beside(Sitting sitting) {
    Stand stand = stand(sitting);
    return reached(sitting.body(), stand.along, stand.zMm, stand.yMm);
  }

  /**
   * Returns by how much one arm falls short of each handhold as they stand beside, by its name, mm;
   * nothing of those it reaches.
   */
  Map<String, Double> shortBeside(Sitting sitting) {
    Map<String, Double> all = new TreeMap<>();
    Stand stand = stand(sitting);
    layout
        .parts(RestPart.class)
        .filter(r -> r.type() == RestPart.Kind.HANDHOLD)
        .forEach(
            r -> {
              double mm = offMm(r, stand.along, stand.zMm, stand.yMm) - armMm(sitting.body());
              if (mm > 0) {
                all.put(r.name(), mm);
              }
            });
    return all;
  }

  /** Where the shoulder is of somebody who stands beside: along, up and out. */
  record Stand(Interval along, double zMm, double yMm) {}

  Stand stand(Sitting sitting) {
    RestPart feet = sitting.parts().feet().orElseThrow();
    double pan = places.pin(sitting.parts().pan().from()).x();
    double foot = places.pin(feet.at()).x();
    Body body = sitting.body();
    return new Stand(
        new Interval(Math.min(pan, foot), Math.max(pan, foot)),
        body.measures().get("acromialheight") + body.gear().heelMm(),
        places.value(feet.y()) + places.value(feet.length()) / 2);
  }

  static double armMm(Body body) {
    return body.upperArmMm() + body.elbowToGripMm();
  }

  private double offMm(RestPart r, Interval along, double zMm, double yMm) {
    PointMm at = places.pin(r.at());
    double half = places.value(r.length()) / 2;
    double y = places.value(r.y());
    double ahead = Math.max(0, along.gap(new Interval(at.x(), at.x())));
    double aside = Math.max(0, new Interval(y - half, y + half).gap(new Interval(yMm, yMm)));
    return Math.hypot(Math.hypot(ahead, aside), at.z() - zMm);
  }

  private List<RestPart> reached(Body body, Interval along, double zMm, double yMm) {
    double arm = armMm(body);
    return layout
        .parts(RestPart.class)
        .filter(r -> r.type() == RestPart.Kind.HANDHOLD)
        .filter(r -> offMm(r, along, zMm, yMm) <= arm)
        .toList();
  }
}
