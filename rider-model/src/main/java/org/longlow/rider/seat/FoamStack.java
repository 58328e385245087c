package org.longlow.rider.seat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * Foam layers in series on a board, top layer first: one pressure through all of them.
 *
 * <p>Sink c(p) = Σ hᵢ εᵢ(p). The order of layers does not change the sink in this model; the last
 * layer is the base, which decides whether the stack bottoms.
 *
 * <p>Verdict (common practice, no source): the stack <b>bottoms</b> if its base layer is spent
 * (strain ≥ 0.70), or the mean strain is ≥ 0.65, or less than 15 mm is left; otherwise <b>topper
 * spent</b> if any other layer is spent; otherwise <b>sound</b>. A single layer is its own base.
 *
 * <p>A memory layer counts as compressed to {@link Foam#MEMORY_STRAIN} at any pressure above zero.
 */
public final class FoamStack {

  /** Most layers in a stack. */
  public static final int MOST_LAYERS = 20;

  /** Highest pressure a stack is compressed with, kPa; foam is solid long before. */
  public static final double MOST_KPA = 100_000;

  /** Caution shown with every sink. */
  public static final String SINK_CAUTION =
      "Sink is good to about ±20 %: foam sheets, the edge factor and the foam's age all move it.";

  /** Half-width of the band in which a sink is quoted, as a fraction. */
  public static final double SINK_BAND = 0.20;

  /** Mean strain of the stack from which it bottoms, 1; common practice, no source. */
  public static final double MEAN_LIMIT = 0.65;

  /** Thickness below which the rider feels the board, mm; common practice, no source. */
  public static final double LEAST_LEFT_MM = 15;

  /** Strain that the base must stay below in a bump of 1 g, 1; common practice, no source. */
  public static final double BUMP_BASE_LIMIT = 0.75;

  /** Curves by layers: an edit elsewhere makes new stacks of the same foam. About 5 kB each. */
  private static final Map<List<FoamLayer>, StackCurve> CURVES = new ConcurrentHashMap<>();

  private static final int MOST_CURVES = 256;

  private final List<FoamLayer> layers;
  private final double thicknessMm;
  private final double rigidSinkMm;
  private volatile StackCurve curve;

  /**
   * Makes a stack.
   *
   * @param layers top first, 1 to 20
   */
  public FoamStack(List<FoamLayer> layers) {
    if (layers.isEmpty() || layers.size() > MOST_LAYERS) {
      throw new OutOfRange(
          "layers must number 1 to 20, got " + layers.size() + "; add a foam layer");
    }
    this.layers = List.copyOf(layers);
    double total = 0;
    double rigid = 0;
    for (FoamLayer layer : this.layers) {
      total += layer.thicknessMm();
      if (layer.foam().kind() == Foam.Kind.MEMORY) {
        rigid += layer.thicknessMm() * Foam.MEMORY_STRAIN;
      }
    }
    this.thicknessMm = total;
    this.rigidSinkMm = rigid;
  }

  public static FoamStack of(FoamLayer... layers) {
    return new FoamStack(List.of(layers));
  }

  public List<FoamLayer> layers() {
    return layers;
  }

  /** Returns the free thickness, mm. */
  public double thicknessMm() {
    return thicknessMm;
  }

  /** Returns the part of the sink that comes from collapsed memory layers at once, mm. */
  public double rigidSinkMm() {
    return rigidSinkMm;
  }

  /**
   * Compresses the stack under a uniform pressure.
   *
   * @param pressureKPa kPa, in [0, 100000]
   */
  public Compression compress(double pressureKPa) {
    if (!(pressureKPa >= 0 && pressureKPa <= MOST_KPA)) {
      throw new OutOfRange("pressureKPa must be 0 to 100000 kPa, got " + pressureKPa);
    }
    double pa = pressureKPa * 1000;
    List<Compression.Layer> out = new ArrayList<>(layers.size());
    double sink = 0;
    double compliance = 0;
    boolean upperSpent = false;
    boolean baseSpent = false;
    for (int i = 0; i < layers.size(); i++) {
      double h = layers.get(i).thicknessMm();
      double strain = strain(i, pa);
      Compression.LayerVerdict verdict = Compression.LayerVerdict.of(strain);
      out.add(new Compression.Layer(strain, h * strain, verdict));
      sink += h * strain;
      if (layers.get(i).foam().kind() != Foam.Kind.MEMORY) {
        compliance += h / layers.get(i).foam().slopePa(strain);
      }
      boolean spent = verdict == Compression.LayerVerdict.SPENT;
      if (i == layers.size() - 1) {
        baseSpent = spent;
      } else {
        upperSpent |= spent;
      }
    }
    double left = thicknessMm - sink;
    boolean bottoms =
        baseSpent || sink / thicknessMm >= MEAN_LIMIT || left < LEAST_LEFT_MM && sink > 0;
    return new Compression(
        pressureKPa,
        out,
        sink,
        left,
        1 / (compliance * 1000),
        bottoms
            ? Compression.Verdict.BOTTOMS
            : upperSpent ? Compression.Verdict.TOPPER_SPENT : Compression.Verdict.SOUND);
  }

  /** Returns this stack with every layer worn ({@link Foam#worn}). */
  public FoamStack worn() {
    return new FoamStack(
        layers.stream().map(l -> new FoamLayer(l.thicknessMm(), l.foam().worn())).toList());
  }

  /** Returns whether the base stays below 0.75 strain at twice this pressure (a 1 g bump). */
  public boolean holdsBump(double pressureKPa) {
    return strain(layers.size() - 1, 2000 * pressureKPa) < BUMP_BASE_LIMIT;
  }

  /** Returns plain warnings about the make-up of the stack; empty when there are none. */
  public List<Words> warnings() {
    List<Words> out = new ArrayList<>();
    for (int i = 0; i < layers.size(); i++) {
      FoamLayer layer = layers.get(i);
      if (layer.foam().kind() != Foam.Kind.MEMORY) {
        continue;
      }
      out.add(
          Words.of(
              "Layer "
                  + (i + 1)
                  + " is memory foam: it gives way under a held load and stiffens in the cold, so"
                  + " it is counted as fully collapsed."));
      if (i > 0) {
        out.add(
            Words.of("Layer " + (i + 1) + " is memory foam below the top: use it on top only."));
      }
      if (layer.thicknessMm() > FoamLayer.MEMORY_MAX_MM) {
        out.add(
            Words.format(
                "Layer %d is %s of memory foam: use at most %s.",
                i + 1,
                Words.figure(layer.thicknessMm(), FigureSort.WHOLE_LENGTH),
                Words.figure(FoamLayer.MEMORY_MAX_MM, FigureSort.WHOLE_LENGTH)));
      }
    }
    return out;
  }

  /** Returns the tabulated curve of this stack, made at the first call for such layers. */
  StackCurve curve() {
    StackCurve ready = curve;
    if (ready == null) {
      if (CURVES.size() >= MOST_CURVES) {
        CURVES.clear();
      }
      ready = CURVES.computeIfAbsent(layers, StackCurve::new);
      curve = ready;
    }
    return ready;
  }

  /** Returns the sink without memory layers, mm, at a pressure, Pa, ≥ 0. */
  double springySinkMm(double pa) {
    double sink = 0;
    for (FoamLayer layer : layers) {
      if (layer.foam().kind() != Foam.Kind.MEMORY) {
        sink += layer.thicknessMm() * layer.foam().strainAt(pa);
      }
    }
    return sink;
  }

  private double strain(int layer, double pa) {
    Foam foam = layers.get(layer).foam();
    if (foam.kind() == Foam.Kind.MEMORY) {
      return pa > 0 ? Foam.MEMORY_STRAIN : 0;
    }
    return foam.strainAt(pa);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof FoamStack stack && layers.equals(stack.layers);
  }

  @Override
  public int hashCode() {
    return layers.hashCode();
  }
}
