package org.longlow.constraints.machine.ride;

import java.util.List;
import org.longlow.constraints.machine.Values;

/**
 * The parameters of the linear bicycle model, in the axes and SI units of its source: x forward
 * from the rear contact, y right, z down, so heights enter negative.
 *
 * <p>Meijaard et al. 2007 (see {@link WhippleModel}), table 1 and appendix A. Wheels are symmetric:
 * I_zz = I_xx. I_xz is the matrix entry (negative of the product integral).
 *
 * @param wheelbaseM w, m, &gt; 0
 * @param trailM c, ground trail, m
 * @param rakeRad λ, rad
 * @param gravity g, N/kg
 * @param rearWheel R
 * @param rearFrame B, with rider
 * @param frontFrame H
 * @param frontWheel F
 */
public record WhippleParameters(
    double wheelbaseM,
    double trailM,
    double rakeRad,
    double gravity,
    Wheel rearWheel,
    Body rearFrame,
    Body frontFrame,
    Wheel frontWheel) {

  /**
   * A wheel.
   *
   * @param radiusM r, m, &gt; 0
   * @param massKg m, kg, &gt;= 0
   * @param ixx about a diameter, kg·m², &gt;= 0
   * @param iyy about the axle, kg·m², &gt;= 0
   */
  public record Wheel(double radiusM, double massKg, double ixx, double iyy) {
    public Wheel {
      Values.positive("wheel radius m", radiusM);
      Values.notNegative("wheel mass kg", massKg);
      Values.notNegative("wheel I_xx", ixx);
      Values.notNegative("wheel I_yy", iyy);
    }
  }

  /**
   * A frame about its own mass centre; I_yy does not enter the linear equations.
   *
   * @param xM forward, m
   * @param zM down, m, so negative above the ground
   * @param massKg kg, &gt;= 0
   * @param ixx roll, kg·m², &gt;= 0
   * @param ixz kg·m²
   * @param izz yaw, kg·m², &gt;= 0
   */
  public record Body(double xM, double zM, double massKg, double ixx, double ixz, double izz) {
    public Body {
      Values.finite("frame x m", xM);
      Values.finite("frame z m", zM);
      Values.notNegative("frame mass kg", massKg);
      Values.notNegative("frame I_xx", ixx);
      Values.finite("frame I_xz", ixz);
      Values.notNegative("frame I_zz", izz);
    }
  }

  public WhippleParameters {
    Values.positive("wheelbase m", wheelbaseM);
    Values.finite("trail m", trailM);
    Values.withinRad("rake", rakeRad, -Math.toRadians(85), Math.toRadians(85));
    Values.positive("gravity N/kg", gravity);
  }

  /** Returns the model's matrices (appendix A). */
  public WhippleModel model() {
    final double w = wheelbaseM;
    final double c = trailM;
    final double sin = Math.sin(rakeRad);
    final double cos = Math.cos(rakeRad);
    final Body b = rearFrame;
    final Body h = frontFrame;
    final Wheel r = rearWheel;
    final Wheel f = frontWheel;
    double mT = r.massKg() + b.massKg() + h.massKg() + f.massKg();
    Values.positive("total mass kg", mT);
    double mA = h.massKg() + f.massKg();
    Values.positive("mass of the steered parts kg", mA);
    double xT = (b.xM() * b.massKg() + h.xM() * h.massKg() + w * f.massKg()) / mT;
    double zT =
        (-r.radiusM() * r.massKg()
                + b.zM() * b.massKg()
                + h.zM() * h.massKg()
                - f.radiusM() * f.massKg())
            / mT;
    double iTxx =
        r.ixx()
            + b.ixx()
            + h.ixx()
            + f.ixx()
            + r.massKg() * r.radiusM() * r.radiusM()
            + b.massKg() * b.zM() * b.zM()
            + h.massKg() * h.zM() * h.zM()
            + f.massKg() * f.radiusM() * f.radiusM();
    double iTxz =
        b.ixz()
            + h.ixz()
            - b.massKg() * b.xM() * b.zM()
            - h.massKg() * h.xM() * h.zM()
            + f.massKg() * w * f.radiusM();
    double iTzz =
        r.ixx()
            + b.izz()
            + h.izz()
            + f.ixx()
            + b.massKg() * b.xM() * b.xM()
            + h.massKg() * h.xM() * h.xM()
            + f.massKg() * w * w;
    double xA = (h.xM() * h.massKg() + w * f.massKg()) / mA;
    double zA = (h.zM() * h.massKg() - f.radiusM() * f.massKg()) / mA;
    double hx = h.xM() - xA;
    double hz = h.zM() - zA;
    double fx = w - xA;
    double fz = f.radiusM() + zA;
    double iAxx = h.ixx() + f.ixx() + h.massKg() * hz * hz + f.massKg() * fz * fz;
    double iAxz = h.ixz() - h.massKg() * hx * hz + f.massKg() * fx * fz;
    double iAzz = h.izz() + f.ixx() + h.massKg() * hx * hx + f.massKg() * fx * fx;
    double uA = (xA - w - c) * cos - zA * sin;
    double iAll = mA * uA * uA + iAxx * sin * sin + 2 * iAxz * sin * cos + iAzz * cos * cos;
    double iAlx = -mA * uA * zA + iAxx * sin + iAxz * cos;
    double iAlz = mA * uA * xA + iAxz * sin + iAzz * cos;
    double mu = c / w * cos;
    double sR = r.iyy() / r.radiusM();
    double sF = f.iyy() / f.radiusM();
    double sT = sR + sF;
    double sA = mA * uA + mu * mT * xT;
    double mixed = iAlx + mu * iTxz;
    return new WhippleModel(
        rows(iTxx, mixed, mixed, iAll + 2 * mu * iAlz + mu * mu * iTzz),
        rows(
            0,
            mu * sT + sF * cos + iTxz / w * cos - mu * mT * zT,
            -(mu * sT + sF * cos),
            iAlz / w * cos + mu * (sA + iTzz / w * cos)),
        rows(mT * zT, -sA, -sA, -sA * sin),
        rows(0, (sT - mT * zT) * cos / w, 0, (sA + sF * sin) * cos / w),
        gravity);
  }

  private static List<List<Double>> rows(double a, double b, double c, double d) {
    return List.of(List.of(a, b), List.of(c, d));
  }
}
