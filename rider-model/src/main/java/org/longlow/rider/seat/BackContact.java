package org.longlow.rider.seat;

/**
 * A straight torso on a back cushion: compression varies linearly along the contact, so that both
 * the force and the place where it acts agree with the load model.
 *
 * <p>Two unknowns, the compressions at both ends of the contact, by Newton's method with exact
 * slopes; where it does not settle the torso stays parallel to the board.
 *
 * @param lowMm compression at the lower end of the contact, mm, may be negative (clear of the foam)
 * @param highMm the same at the upper end
 * @param peakPa highest foam pressure, Pa
 * @param lengthMm length of the contact, mm
 */
record BackContact(double lowMm, double highMm, double peakPa, double lengthMm) {

  private static final double MOST_PA = 5e7;

  /**
   * Presses a torso in.
   *
   * @param from lower end of the contact from the hip, mm
   * @param to upper end, mm, above {@code from}
   * @param widthM effective width, m
   * @param forceN force, N, ≥ 0
   * @param centreMm where it acts from the hip, mm, inside the contact
   */
  static BackContact press(
      FoamStack stack,
      double from,
      double to,
      double widthM,
      double forceN,
      double centreMm,
      BackContact guess) {
    double length = to - from;
    if (!(forceN > 0)) {
      return new BackContact(0, 0, 0, 0);
    }
    StackCurve curve = stack.curve();
    double need = forceN / (widthM * 1e-3);
    double share = (centreMm - from) / length;
    double flat = uniform(stack, need / length);
    double a = guess == null ? flat : guess.lowMm();
    double b = guess == null ? flat : guess.highMm();
    double limit = 0.999999 * curve.limitMm();
    double[] reading = new double[2];
    for (int step = 0; step < 40; step++) {
      double force = 0;
      double moment = 0;
      double fa = 0;
      double fb = 0;
      double mb = 0;
      // The part of the contact in which the line dips below the free surface, as shares 0 to 1.
      double start = a >= 0 ? 0 : b > 0 ? -a / (b - a) : 1;
      double stop = b >= 0 ? 1 : a > 0 ? a / (a - b) : 0;
      double half = 0.5 * (stop - start);
      for (int i = 0; i < Gauss.N; i++) {
        double t = start + half * (1 + Gauss.NODE[i]);
        double c = a + (b - a) * t;
        curve.read(c, reading);
        double p = reading[0];
        double k = reading[1];
        double w = Gauss.WEIGHT[i] * half * length;
        force += w * p;
        moment += w * p * t;
        fa += w * k * (1 - t);
        fb += w * k * t;
        mb += w * k * t * t;
      }
      double ma = fb - mb;
      double det = fa * mb - fb * ma;
      double missF = need - force;
      double missM = need * share - moment;
      double da = (missF * mb - fb * missM) / det;
      double db = (fa * missM - ma * missF) / det;
      if (!Double.isFinite(da) || !Double.isFinite(db)) {
        break;
      }
      double most = 0.3 * curve.limitMm();
      double shrink = Math.min(1, most / Math.max(Math.abs(da), Math.abs(db)));
      a = Math.min(limit, a + shrink * da);
      b = Math.min(limit, b + shrink * db);
      if (Math.abs(da) < 1e-11 && Math.abs(db) < 1e-11) {
        double touching = a < 0 ? b / (b - a) : b < 0 ? a / (a - b) : 1;
        return new BackContact(a, b, curve.pressurePa(Math.max(a, b)), length * touching);
      }
    }
    return new BackContact(flat, flat, curve.pressurePa(flat), length);
  }

  /** The torso parallel to the board: one pressure all along the contact. */
  static BackContact parallel(FoamStack stack, double lengthMm, double widthM, double forceN) {
    if (!(forceN > 0)) {
      return new BackContact(0, 0, 0, 0);
    }
    double pa = Math.min(forceN / (widthM * lengthMm * 1e-3), MOST_PA);
    double sink = stack.springySinkMm(pa);
    return new BackContact(sink, sink, pa, lengthMm);
  }

  private static double uniform(FoamStack stack, double pa) {
    return stack.springySinkMm(Math.min(pa, MOST_PA));
  }
}
