package org.longlow.rider.seat;

import java.util.List;

/**
 * A cushion under one uniform pressure.
 *
 * @param pressureKPa the pressure, kPa
 * @param layers each layer, top first
 * @param sinkMm total sink, mm; see {@link FoamStack#SINK_CAUTION}
 * @param remainingMm thickness left, mm
 * @param stiffnessKPaPerMm tangent stiffness of the stack, kPa/mm
 * @param verdict what the stack does
 */
public record Compression(
    double pressureKPa,
    List<Layer> layers,
    double sinkMm,
    double remainingMm,
    double stiffnessKPaPerMm,
    Verdict verdict) {

  /** Strain from which a layer is spent, 1; common practice, no source. */
  public static final double SPENT_STRAIN = 0.70;

  /** Strain from which a layer is marginal, 1; common practice, no source. */
  public static final double MARGINAL_STRAIN = 0.60;

  public Compression {
    layers = List.copyOf(layers);
  }

  /**
   * One layer under load.
   *
   * @param strain compression over free thickness, 1
   * @param sinkMm compression, mm
   * @param verdict how far the layer is used up
   */
  public record Layer(double strain, double sinkMm, LayerVerdict verdict) {}

  /** How far a layer is used up; limits 0.60 and 0.70 are common practice, no source. */
  public enum LayerVerdict {
    /** Strain below 0.60. */
    SOUND("sound"),
    /** Strain from 0.60 to below 0.70: 65 % is the deepest point of the standard tests. */
    MARGINAL("marginal"),
    /** Strain 0.70 or more: the curve beyond is densification. */
    SPENT("spent");

    private final String words;

    LayerVerdict(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }

    static LayerVerdict of(double strain) {
      return strain >= SPENT_STRAIN ? SPENT : strain >= MARGINAL_STRAIN ? MARGINAL : SOUND;
    }
  }

  /** What the stack does. */
  public enum Verdict {
    /** No layer is spent. */
    SOUND("sound"),
    /** A layer above the base is spent and does nothing more, while the stack holds. */
    TOPPER_SPENT("topper spent"),
    /** The rider feels the board. */
    BOTTOMS("bottoms");

    private final String words;

    Verdict(String words) {
      this.words = words;
    }

    public String words() {
      return words;
    }
  }
}
