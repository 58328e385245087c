package org.longlow.rider.seat;

import org.longlow.rider.geom.PointMm;

/**
 * What one cushion carries and how it stands it.
 *
 * @param normalN force into the board, N
 * @param shearN force along the board, N, positive from {@code from} to {@code to}; frictionless
 *     cushions carry none
 * @param sinkMm best estimate of the sink (foam beside the body helping), mm; ±20 %
 * @param safeSinkMm sink without that help, for the bottoming verdict, mm
 * @param remainingMm foam left by {@code safeSinkMm}, mm
 * @param peakKPa highest pressure on the body, kPa, best estimate
 * @param meanKPa mean pressure on the body, kPa
 * @param areaCm2 contact area, cm²
 * @param centre pressure centre on the board's face
 * @param layers the layers at the peak, without the help, with verdict
 * @param holdsBump whether the base stays below 0.75 strain at twice the pressure (1 g up)
 * @param worn the same force on the same foam worn
 */
public record CushionLoad(
    double normalN,
    double shearN,
    double sinkMm,
    double safeSinkMm,
    double remainingMm,
    double peakKPa,
    double meanKPa,
    double areaCm2,
    PointMm centre,
    Compression layers,
    boolean holdsBump,
    Worn worn) {

  /**
   * How worn foam stands the same force; what its deeper sink does to the posture is left out.
   *
   * @param safeSinkMm sink without help of foam beside the body, mm
   * @param verdict what the layers do at the peak
   * @param holdsBump whether the base stays below 0.75 strain at twice the pressure
   */
  public record Worn(double safeSinkMm, Compression.Verdict verdict, boolean holdsBump) {}

  public Compression.Verdict verdict() {
    return layers.verdict();
  }
}
