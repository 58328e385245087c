package org.longlow.constraints.check.person;

import org.longlow.constraints.machine.Values;
import org.longlow.rider.body.Body;
import org.longlow.rider.body.Sex;

/**
 * Rising from a seat with the feet on the road beside it, shanks upright.
 *
 * @param hipMm height of the hips over the road as they sit, mm
 * @param kneeRad angle of the knee, interior, as they leave the seat
 * @param kneeNm moment of each knee then
 * @param strengthNm what a knee of somebody weak gives
 */
record Rising(double hipMm, double kneeRad, double kneeNm, double strengthNm) {

  /** Of body mass above the knees: head, trunk, arms and thighs; own calculation. */
  static final double ABOVE_KNEES = 0.878;

  /**
   * Least knee extension of older people, N m/kg, mid-range, lower end of the confidence of the
   * mean (Sarabon 2021, fphys 767941, checked).
   */
  static final double MALE_NM_KG = 1.74;

  static final double FEMALE_NM_KG = 1.40;

  /** Returns how somebody rises whose hip is so high over the road, mm. */
  static Rising of(Body body, double hipMm) {
    double knee = body.foot().ankle().z() + body.shankMm();
    double rise = Math.asin(Math.max(-1, Math.min(1, (knee - hipMm) / body.thighMm())));
    double run = body.thighMm() * Math.cos(rise) / 2 / 1000;
    double perKg = body.sex() == Sex.MALE ? MALE_NM_KG : FEMALE_NM_KG;
    return new Rising(hipMm, Math.PI / 2 - rise, kneeNm(body.massKg(), run), perKg * body.massKg());
  }

  /**
   * Returns the moment of each knee as somebody leaves a seat, N m.
   *
   * @param runM from the knees back to what they carry, m
   */
  static double kneeNm(double massKg, double runM) {
    return ABOVE_KNEES * massKg * Values.STANDARD_GRAVITY_MS2 * runM / 2;
  }

  /** Share of what a weak knee gives. */
  double share() {
    return kneeNm / strengthNm;
  }
}
