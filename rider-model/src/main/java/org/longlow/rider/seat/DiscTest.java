package org.longlow.rider.seat;

import java.util.List;
import java.util.Locale;
import org.longlow.rider.geom.OutOfRange;

/**
 * A builder's own test of a foam: a disc of 203 mm pressed into a slab on a bathroom scale, depth
 * and load read after a minute, and the open-cell law that goes nearest to these points.
 *
 * <p>The load on the disc is F = A k(t) σ(ε), with the edge factor of the slab's own thickness. σ
 * is linear in A and B, so the least sum of squared shares (model − load) / load is two equations.
 *
 * @param foam the foam that goes nearest
 * @param ifd25N its IFD at 25 % of 100 mm, N
 * @param supportFactor its IFD at 65 % over that at 25 %
 * @param residualShare root of the mean squared share by which its loads differ from those read, 1
 */
public record DiscTest(Foam foam, double ifd25N, double supportFactor, double residualShare) {

  /** Fewest presses: two give any two constants, the third tells how well they hold. */
  public static final int FEWEST = 3;

  /** Most presses, ours. */
  public static final int MOST = 50;

  /** Residual from which these points are no foam, 1; judgement. */
  public static final double MOST_RESIDUAL = 0.25;

  /** Residual from which another test is advised, 1: data sheets promise 10 to 15 %. */
  public static final double ROUGH_RESIDUAL = 0.10;

  /** The shallowest press is no deeper and the deepest no shallower, as strains; judgement. */
  public static final double SHALLOW = 0.35;

  static final double DEEP = 0.50;

  /** Thinnest and thickest slab, mm; judgement. */
  static final double LEAST_MM = 20;

  static final double MOST_MM = 300;

  private static final double GAUGE_25 = 0.25;
  private static final double GAUGE_65 = 0.65;

  /**
   * One press.
   *
   * @param depthMm how deep the disc was, mm, &gt; 0
   * @param loadN what the scale read, N, &gt; 0
   */
  public record Press(double depthMm, double loadN) {}

  /**
   * Returns the foam that goes nearest.
   *
   * @param densityKgM3 of the slab, weighed, kg/m³
   * @param thicknessMm of the slab, mm, in [20, 300]
   * @param presses in any order, from 3
   * @throws OutOfRange where these points cannot be a foam; it says why and what to do
   */
  public static DiscTest fit(double densityKgM3, double thicknessMm, List<Press> presses) {
    FoamSheets.check(
        "thicknessMm",
        thicknessMm,
        thicknessMm >= LEAST_MM && thicknessMm <= MOST_MM,
        "20 to 300 mm");
    if (presses.size() < FEWEST || presses.size() > MOST) {
      throw new OutOfRange(
          "presses must number "
              + FEWEST
              + " to "
              + MOST
              + ", got "
              + presses.size()
              + "; press to about 25, 45 and 65 % of the thickness");
    }
    // the density decides where the foam is solid; any other figures do for that
    Foam like = Foam.openCell(densityKgM3, 100, 2);
    List<Press> sorted =
        presses.stream().sorted((a, b) -> Double.compare(a.depthMm(), b.depthMm())).toList();
    for (int i = 0; i < sorted.size(); i++) {
      check(sorted, i, like.lockStrain() * thicknessMm);
    }
    if (sorted.get(0).depthMm() > SHALLOW * thicknessMm
        || sorted.get(sorted.size() - 1).depthMm() < DEEP * thicknessMm) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "presses must reach from at most %.1f to at least %.1f mm deep in %.0f mm, got %.1f to"
                  + " %.1f; press to about 25, 45 and 65 %% of the thickness",
              SHALLOW * thicknessMm,
              DEEP * thicknessMm,
              thicknessMm,
              sorted.get(0).depthMm(),
              sorted.get(sorted.size() - 1).depthMm()));
    }
    return nearest(like, thicknessMm, presses);
  }

  private static void check(List<Press> sorted, int i, double lockMm) {
    Press p = sorted.get(i);
    FoamSheets.check(
        "loadN", p.loadN(), p.loadN() > 0 && p.loadN() <= 20_000, "above 0 to 20000 N");
    if (!(p.depthMm() > 0 && p.depthMm() < lockMm)) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "depthMm must be above 0 to below %.1f mm, where this foam is solid, got %s",
              lockMm,
              Double.toString(p.depthMm())));
    }
    if (i == 0) {
      return;
    }
    Press before = sorted.get(i - 1);
    if (!(p.depthMm() > before.depthMm() && p.loadN() > before.loadN())) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "loads must rise with depth: %.1f N at %.1f mm and %.1f N at %.1f mm are no foam; press"
                  + " again and read after a minute",
              before.loadN(),
              before.depthMm(),
              p.loadN(),
              p.depthMm()));
    }
  }

  private static DiscTest nearest(Foam like, double thicknessMm, List<Press> presses) {
    double aa = 0;
    double ab = 0;
    double bb = 0;
    double a1 = 0;
    double b1 = 0;
    for (Press p : presses) {
      double strain = p.depthMm() / thicknessMm;
      double f = FoamSheets.indentN(plateau(strain), thicknessMm) / p.loadN();
      double g = FoamSheets.indentN(hardening(like, strain), thicknessMm) / p.loadN();
      aa += f * f;
      ab += f * g;
      bb += g * g;
      a1 += f;
      b1 += g;
    }
    double determinant = aa * bb - ab * ab;
    double a = (a1 * bb - b1 * ab) / determinant;
    double b = (b1 * aa - a1 * ab) / determinant;
    if (!(a >= 0 && b >= 0)) {
      throw new OutOfRange(
          a < 0
              ? "loads rise faster with depth than those of any open-cell foam; is it closed-cell"
                  + " foam, or did the disc reach the scale? Check depths and thickness"
              : "loads rise slower with depth than those of any open-cell foam; press deeper, wait a"
                  + " minute at each depth and read again");
    }
    Foam foam = new Foam(Foam.Kind.OPEN_CELL, a, b, like.kneeStrain(), like.lockStrain());
    double sum = 0;
    double most = 0;
    for (Press p : presses) {
      double share =
          FoamSheets.indentN(foam.stressPa(p.depthMm() / thicknessMm), thicknessMm) / p.loadN() - 1;
      sum += share * share;
      most = Math.abs(share) > Math.abs(most) ? share : most;
    }
    double residual = Math.sqrt(sum / presses.size());
    if (residual > MOST_RESIDUAL) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "these loads lie %.0f %% off the nearest foam, one of them %.0f %%; press again and"
                  + " read after a minute",
              100 * residual,
              100 * Math.abs(most)));
    }
    return new DiscTest(
        foam, FoamSheets.ifd25N(foam), foam.stressPa(GAUGE_65) / foam.stressPa(GAUGE_25), residual);
  }

  /** Returns what the foam found carries under the disc, N. */
  public double loadN(double depthMm, double thicknessMm) {
    return FoamSheets.indentN(foam.stressPa(depthMm / thicknessMm), thicknessMm);
  }

  private static double plateau(double strain) {
    return 1 - Math.exp(-strain / Foam.OPEN_KNEE);
  }

  private static double hardening(Foam like, double strain) {
    return strain / (like.lockStrain() - strain);
  }

  /** Returns whether another test is advised. */
  public boolean isRough() {
    return residualShare > ROUGH_RESIDUAL;
  }
}
