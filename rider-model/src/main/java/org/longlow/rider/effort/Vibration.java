package org.longlow.rider.effort;

/**
 * What a seat passes on of a shaking floor, up and down: a mass on a spring with a damper. An
 * estimate: bodies are no single mass, and foam is stiffer the faster it is pressed.
 *
 * @param naturalHz at which it would shake by itself, Hz
 */
public record Vibration(double naturalHz) {

  /** Damping of foam and flesh over critical; from memory (0.2 to 0.4). */
  public static final double DAMPING = 0.3;

  /** Foam shaken over foam pressed slowly, in stiffness; from memory (1.5 to 2). */
  public static final double DYNAMIC = 1.75;

  /** Frequencies of the road that are looked at, all alike in acceleration, Hz; judgement. */
  private static final double LOW_HZ = 1;

  private static final double HIGH_HZ = 20;
  private static final int STEPS = 39;
  private static final double[] WEIGHT = weights();

  /**
   * Returns the seat that carries so much on foam of such a rate.
   *
   * @param massKg what is on the pan, &gt; 0
   * @param nPerMm static rate, &gt; 0
   */
  public static Vibration of(double massKg, double nPerMm) {
    return new Vibration(Math.sqrt(DYNAMIC * nPerMm * 1e3 / massKg) / (2 * Math.PI));
  }

  /**
   * Returns how much larger shaking comes out than it goes in.
   *
   * @param ratio frequency over the natural one, &ge; 0
   * @param damping over critical
   */
  public static double transfer(double ratio, double damping) {
    double damped = 2 * damping * ratio;
    double stiff = 1 - ratio * ratio;
    return Math.sqrt((1 + damped * damped) / (stiff * stiff + damped * damped));
  }

  /** Returns how much it shakes more than the floor at its worst. */
  public double peak() {
    return transfer(1, DAMPING);
  }

  /** Returns from where on it takes shaking off, Hz: √2 of its own, whatever the damping. */
  public double isolatesHz() {
    return Math.sqrt(2) * naturalHz;
  }

  /**
   * Returns what is felt on the seat over what is felt on the floor (SEAT value, Griffin 1990, from
   * memory), both weighted by {@link Weighting#UP}; less than 1 where the seat helps.
   */
  public double felt() {
    double seat = 0;
    double floor = 0;
    for (int i = 0; i < STEPS; i++) {
      double t = transfer(hz(i) / naturalHz, DAMPING);
      seat += t * t * WEIGHT[i];
      floor += WEIGHT[i];
    }
    return Math.sqrt(seat / floor);
  }

  private static double hz(int step) {
    return LOW_HZ + (HIGH_HZ - LOW_HZ) * step / (STEPS - 1);
  }

  private static double[] weights() {
    double[] weights = new double[STEPS];
    for (int i = 0; i < STEPS; i++) {
      double w = Weighting.UP.at(hz(i));
      weights[i] = w * w;
    }
    return weights;
  }
}
