package org.longlow.rider.seat;

import org.longlow.rider.geom.OutOfRange;

/**
 * A body outline pressed squarely into foam: each column of foam carries the pressure of its own
 * compression (Winkler), board straight.
 *
 * <pre>
 * c(s) = max(0, δ − y(s)),  p(s) = stack pressure at compression c,  F = b ∫ p ds,  s* = ∫ s p ds / ∫ p ds
 * </pre>
 *
 * <p>Integrated by Gauss-Legendre on each half of the circle; δ by a safeguarded Newton iteration
 * to 1e-12 mm. Foam beside the body helps by a factor k (see {@link #edgeFactor}): pressure on the
 * body is k times the foam's.
 *
 * @param sinkMm δ, total sink, memory layers included, mm; ±20 %
 * @param peakKPa highest pressure on the body in the side view, kPa; across the width the sitting
 *     bones carry about twice this ("order of", common practice)
 * @param meanKPa force over contact area, kPa
 * @param areaCm2 contact area, cm²
 * @param centreMm s*, pressure centre along the board from the lowest point, mm
 * @param forceN the force carried, N
 * @param stack layers at the peak, with verdict
 * @param remainingMm foam left under the lowest point, mm
 */
public record FoamContact(
    double sinkMm,
    double peakKPa,
    double meanKPa,
    double areaCm2,
    double centreMm,
    double forceN,
    Compression stack,
    double remainingMm) {

  /** Share of the contact's rim with spare foam beyond it, best estimate; common practice. */
  public static final double EDGE_SHARE = 0.5;

  /**
   * Returns how much foam beside the body adds: k = 1 + 0.9 f H / √(4A/π).
   *
   * @param edgeShare f, share of the rim with spare foam, 0 for the bottoming check, 0.5 for the
   *     best estimate of the hip
   * @param thicknessMm H, free thickness of the stack, mm
   * @param areaCm2 A, contact area, cm²
   */
  public static double edgeFactor(double edgeShare, double thicknessMm, double areaCm2) {
    if (!(areaCm2 > 0)) {
      return 1;
    }
    double diameterMm = Math.sqrt(4 * areaCm2 * 100 / Math.PI);
    return 1 + Foam.EDGE_SLOPE * edgeShare * thicknessMm / diameterMm;
  }

  /** Presses an outline into a stack with nothing but the foam under it. */
  public static FoamContact press(FoamStack stack, Underside outline, double forceN) {
    return press(stack, outline, forceN, 1);
  }

  /**
   * Presses an outline into a stack.
   *
   * @param forceN normal force, N, in [0, 1e6]
   * @param edgeFactor k, ≥ 1
   */
  public static FoamContact press(
      FoamStack stack, Underside outline, double forceN, double edgeFactor) {
    if (!(forceN >= 0 && forceN <= 1e6)) {
      throw new OutOfRange("forceN must be 0 to 1000000 N, got " + forceN);
    }
    double depth = depth(stack, outline, forceN / edgeFactor, Double.NaN);
    return at(stack, outline, depth, forceN, edgeFactor);
  }

  /**
   * Returns the springy sink at which the foam alone carries a force, mm.
   *
   * @param guess where to start, mm; NaN for no idea
   */
  static double depth(FoamStack stack, Underside outline, double forceN, double guess) {
    if (!(forceN > 0)) {
      return 0;
    }
    StackCurve curve = stack.curve();
    if (!(curve.limitMm() > 0)) {
      return 0;
    }
    double low = 0;
    double high = curve.limitMm();
    double depth = guess > 0 && guess < high ? guess : 0.5 * high;
    Pass pass = new Pass();
    for (int i = 0; i < 100; i++) {
      pass.run(curve, outline, depth);
      double miss = pass.force - forceN;
      if (miss > 0) {
        high = depth;
      } else {
        low = depth;
      }
      double newton = depth - miss / pass.slope;
      // The error of a Newton step is of the order of its square.
      if (Math.abs(newton - depth) < 1e-7) {
        return newton;
      }
      double next = newton > low && newton < high ? newton : 0.5 * (low + high);
      depth = next;
    }
    return depth;
  }

  /** Describes the contact at a springy sink. */
  static FoamContact at(
      FoamStack stack, Underside outline, double depth, double forceN, double edgeFactor) {
    StackCurve curve = stack.curve();
    Pass pass = new Pass();
    pass.run(curve, outline, depth);
    // Memory foam alone springs nowhere: the body lies in it up to its collapse.
    boolean dead = forceN > 0 && !(curve.limitMm() > 0);
    double area = areaCm2(outline, dead ? stack.rigidSinkMm() : depth);
    double foamPa = dead ? forceN / edgeFactor / area * 1e4 : curve.pressurePa(depth);
    Compression layers = stack.compress(Math.min(foamPa / 1000, 100_000));
    double sink = forceN > 0 ? depth + stack.rigidSinkMm() : 0;
    return new FoamContact(
        sink,
        edgeFactor * foamPa / 1000,
        area > 0 ? forceN / area * 10 : 0,
        area,
        pass.force > 0 ? pass.moment / pass.force : 0,
        forceN,
        layers,
        stack.thicknessMm() - sink);
  }

  static double areaCm2(Underside outline, double depth) {
    if (!(depth > 0)) {
      return 0;
    }
    double edge = edge(outline, depth);
    double front =
        depth > outline.flatGapMm() ? outline.frontMm() : Math.min(outline.meetMm(), edge);
    double length = front - Math.max(outline.rearMm(), -edge);
    return length * outline.widthM() * 10;
  }

  /** Half the length of the circle's contact, mm. */
  static double edge(Underside outline, double depth) {
    double drop = outline.radiusMm() - depth;
    return drop <= 0
        ? outline.radiusMm()
        : Math.sqrt(outline.radiusMm() * outline.radiusMm() - drop * drop);
  }

  /** Force (N), its slope (N/mm) and its moment (N·mm) at one sink. */
  private static final class Pass {
    final double[] reading = new double[2];
    double force;
    double slope;
    double moment;

    void run(StackCurve curve, Underside outline, double depth) {
      force = 0;
      slope = 0;
      moment = 0;
      double r = outline.radiusMm();
      double edge = edge(outline, depth);
      arc(curve, r, depth, Math.max(outline.rearMm(), -edge), 0);
      arc(curve, r, depth, 0, Math.min(outline.meetMm(), edge));
      double length = outline.frontMm() - outline.meetMm();
      if (depth > outline.flatGapMm() && length > 0) {
        curve.read(depth - outline.flatGapMm(), reading);
        force += reading[0] * length;
        slope += reading[1] * length;
        moment += reading[0] * length * 0.5 * (outline.frontMm() + outline.meetMm());
      }
      // Pa · mm · m is 1e-3 N.
      double unit = outline.widthM() * 1e-3;
      force *= unit;
      slope *= unit;
      moment *= unit;
    }

    private void arc(StackCurve curve, double r, double depth, double from, double to) {
      double half = 0.5 * (to - from);
      double middle = 0.5 * (to + from);
      for (int i = 0; i < Gauss.N; i++) {
        double s = middle + half * Gauss.NODE[i];
        curve.read(depth - r + Math.sqrt((r - s) * (r + s)), reading);
        double weight = Gauss.WEIGHT[i] * half;
        force += weight * reading[0];
        slope += weight * reading[1];
        moment += weight * reading[0] * s;
      }
    }
  }
}
