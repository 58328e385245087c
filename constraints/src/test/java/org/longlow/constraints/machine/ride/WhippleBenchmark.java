package org.longlow.constraints.machine.ride;

/** Parameters of the published benchmark bicycle (Meijaard et al. 2007, table 1). */
final class WhippleBenchmark {

  static final WhippleParameters PARAMETERS =
      new WhippleParameters(
          1.02,
          0.08,
          Math.PI / 10,
          9.81,
          new WhippleParameters.Wheel(0.3, 2, 0.0603, 0.12),
          new WhippleParameters.Body(0.3, -0.9, 85, 9.2, 2.4, 2.8),
          new WhippleParameters.Body(0.9, -0.7, 4, 0.05892, -0.00756, 0.00708),
          new WhippleParameters.Wheel(0.35, 3, 0.1405, 0.28));

  static WhippleModel model() {
    return PARAMETERS.model();
  }

  private WhippleBenchmark() {}
}
