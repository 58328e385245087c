package org.longlow.constraints.seat;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.layout.FoamSpec;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.effort.Vibration;
import org.longlow.rider.seat.CushionLoad;
import org.longlow.rider.seat.FoamStack;
import org.longlow.rider.seat.LongRide;
import org.longlow.rider.seat.PanRate;
import org.longlow.rider.seat.SeatLoad;
import org.longlow.rider.seat.SeatOutcome;
import org.longlow.rider.seat.Support;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * The next layer of a cushion to change and what that brings: each layer of another grade, thicker
 * or thinner, or split in two with one half of another grade, everybody who sits on it seated anew
 * each time.
 *
 * @param change in words, such as {@code make layer 1 firm}
 * @param layers all of its foam then
 * @param before what it does now under whoever it does least for
 * @param after what it would do
 */
public record CushionAdvice(String change, List<FoamSpec> layers, Held before, Held after) {

  /** Steps of thickness that are tried, mm. */
  static final double STEP_MM = 10;

  /** Thinner layers are not made, mm. */
  private static final double THINNEST_MM = 10;

  /** What counts as no worse of a figure that is over its limit already, of the limit. */
  private static final double ALIKE = 0.005;

  public CushionAdvice {
    layers = List.copyOf(layers);
  }

  /**
   * What a cushion does, of everybody on it the worst of each. What is asked of pans alone is 0 of
   * others.
   *
   * @param fresh how it holds
   * @param worn how it holds with worn foam
   * @param sinkMm design sink
   * @param leftMm foam left then
   * @param bonesKPa pressure under the sit bones
   * @param meanKPa mean pressure of a pan
   * @param felt of a road that shakes, over what is felt without foam; without end where nothing
   *     springs
   */
  public record Held(
      Support.Hold fresh,
      Support.Hold worn,
      double sinkMm,
      double leftMm,
      double bonesKPa,
      double meanKPa,
      double felt) {

    /** Whether it holds and keeps sit bones from being numbed. */
    public boolean isWell() {
      return fresh == Support.Hold.HOLDS
          && worn == Support.Hold.HOLDS
          && bonesKPa <= LongRide.MOST_KPA;
    }

    /** Whether no verdict is worse than of {@code o}, and nothing that is over its limit is. */
    public boolean isNoWorseThan(Held o) {
      return fresh.compareTo(o.fresh) <= 0
          && worn.compareTo(o.worn) <= 0
          && noWorse(bonesKPa, o.bonesKPa, LongRide.MOST_KPA)
          && noWorse(meanKPa, o.meanKPa, LongRide.STUDIED_MEAN_KPA)
          && noWorse(felt, o.felt, 1);
    }

    private static boolean noWorse(double now, double before, double limit) {
      return now <= limit || now <= before + ALIKE * limit;
    }

    /** By how much pressures and shaking are over their limits together, 1. */
    double over() {
      return Math.max(0, bonesKPa / LongRide.MOST_KPA - 1)
          + Math.max(0, meanKPa / LongRide.STUDIED_MEAN_KPA - 1)
          + Math.max(0, felt - 1);
    }

    private Held worse(Held o) {
      return new Held(
          fresh.compareTo(o.fresh) >= 0 ? fresh : o.fresh,
          worn.compareTo(o.worn) >= 0 ? worn : o.worn,
          Math.max(sinkMm, o.sinkMm),
          Math.min(leftMm, o.leftMm),
          Math.max(bonesKPa, o.bonesKPa),
          Math.max(meanKPa, o.meanKPa),
          Math.max(felt, o.felt));
    }
  }

  /** Best first: holding, then holding when worn, then all that is over its limit, then shaking. */
  private static final Comparator<Held> BETTER =
      Comparator.comparing(Held::fresh)
          .thenComparing(Held::worn)
          .thenComparing(h -> Math.rint(h.over() / ALIKE))
          .thenComparing(h -> Math.rint(h.felt() / ALIKE));

  private record Trial(String change, List<FoamSpec> layers) {}

  /** Returns what a cushion does; empty where nobody rests on it. */
  public static Optional<Held> held(CushionPart cushion, List<Sitting> sittings, Places places) {
    return sittings.stream()
        .filter(s -> s.parts().parts().contains(cushion))
        .flatMap(s -> held(cushion, s, places).stream())
        .reduce(Held::worse);
  }

  /**
   * Returns the best single change; empty where nobody rests on the cushion, nothing is to be
   * mended, or nothing tried is better.
   *
   * @param sittings of the layout that it is in
   */
  public static Optional<CushionAdvice> best(
      CushionPart cushion, List<Sitting> sittings, Places places) {
    Optional<Held> now = held(cushion, sittings, places).filter(h -> !h.isWell());
    if (now.isEmpty()) {
      return Optional.empty();
    }
    CushionAdvice best = null;
    for (Trial trial : trials(cushion, places)) {
      Optional<Held> then = held(cushion.of(trial.layers()), sittings, cushion, places);
      if (then.filter(h -> h.isNoWorseThan(now.get())).isPresent()
          && BETTER.compare(then.get(), best == null ? now.get() : best.after()) < 0) {
        best = new CushionAdvice(trial.change(), trial.layers(), now.get(), then.get());
      }
    }
    return Optional.ofNullable(best);
  }

  /** The same people on other foam; empty where one of them cannot sit there. */
  private static Optional<Held> held(
      CushionPart other, List<Sitting> sittings, CushionPart cushion, Places places) {
    Optional<Held> all = Optional.empty();
    for (Sitting s : sittings) {
      if (!s.parts().parts().contains(cushion) || load(s, cushion).isEmpty()) {
        continue;
      }
      Optional<Held> one =
          held(other, Seats.sit(s.person(), s.body(), s.parts().with(other), places), places);
      if (one.isEmpty()) {
        return Optional.empty();
      }
      all = Optional.of(all.map(one.get()::worse).orElse(one.get()));
    }
    return all;
  }

  private static Optional<Held> held(CushionPart cushion, Sitting s, Places places) {
    return load(s, cushion)
        .map(
            load -> {
              Support support = Support.of(load);
              boolean pan = cushion.role() == CushionPart.Role.PAN;
              return new Held(
                  support.fresh(),
                  support.worn(),
                  load.safeSinkMm(),
                  load.remainingMm(),
                  pan ? LongRide.sitBonesKPa(load) : 0,
                  pan ? load.meanKPa() : 0,
                  pan ? felt(s, places) : 0);
            });
  }

  private static double felt(Sitting s, Places places) {
    SeatOutcome.Seated seated = s.seated().orElseThrow();
    double rate = PanRate.nPerMm(s.body(), Seats.geometry(s.parts(), places).orElseThrow(), seated);
    return rate > 0 && rate < Double.POSITIVE_INFINITY
        ? Vibration.of(seated.load().panNormalN() / SeatLoad.GRAVITY, rate).felt()
        : Double.MAX_VALUE;
  }

  private static Optional<CushionLoad> load(Sitting sitting, CushionPart cushion) {
    return sitting
        .seated()
        .flatMap(
            s ->
                switch (cushion.role()) {
                  case PAN -> Optional.of(s.pan());
                  case BACK -> Optional.of(s.back());
                  case HEAD -> s.headRest();
                })
        .filter(l -> l.normalN() > 0);
  }

  /** Simplest first, for of equals the first is kept. */
  private static List<Trial> trials(CushionPart cushion, Places places) {
    List<Trial> simple = new ArrayList<>();
    List<Trial> split = new ArrayList<>();
    for (int i = 0; i < cushion.layers().size(); i++) {
      FoamSpec layer = cushion.layers().get(i);
      String name = "layer " + (i + 1);
      double mm = places.value(layer.thickness());
      if (layer.thickness().names().isEmpty()) {
        simple.add(with(cushion, i, "make " + name + " thicker", layer.thick(mm(mm + STEP_MM))));
        if (mm - STEP_MM >= THINNEST_MM) {
          simple.add(with(cushion, i, "make " + name + " thinner", layer.thick(mm(mm - STEP_MM))));
        }
      }
      int n = cushion.layers().size();
      boolean splits = mm >= 2 * THINNEST_MM && n < FoamStack.MOST_LAYERS;
      for (FoamGrade grade : FoamGrades.all()) {
        if (grade.isOf(layer)) {
          continue;
        }
        if (grade.belongs(cushion.role(), i, n, mm)) {
          FoamSpec whole = grade.layer(layer.thickness());
          simple.add(with(cushion, i, "make " + name + " of " + grade.name(), whole));
        }
        FoamSpec half = layer.thick(mm(mm / 2));
        FoamSpec other = grade.layer(mm(mm / 2));
        String begin = "split " + name + " and make its ";
        if (splits && grade.belongs(cushion.role(), i, n + 1, mm / 2)) {
          split.add(with(cushion, i, begin + "upper half of " + grade.name(), other, half));
        }
        if (splits && grade.belongs(cushion.role(), i + 1, n + 1, mm / 2)) {
          split.add(with(cushion, i, begin + "lower half of " + grade.name(), half, other));
        }
      }
    }
    simple.addAll(split);
    return simple;
  }

  private static Formula mm(double mm) {
    return Formula.of(Math.rint(mm * 1e4) / 1e4, Unit.MM);
  }

  private static Trial with(CushionPart cushion, int at, String change, FoamSpec... instead) {
    List<FoamSpec> layers = new ArrayList<>(cushion.layers());
    layers.remove(at);
    layers.addAll(at, List.of(instead));
    return new Trial(change, layers);
  }

  /** Returns what to do and what it brings, in words with a full stop. */
  public Words words() {
    return Words.format(
        "Next to change: %s%s. Of everybody on it the worst: design sink %s, now %s; %s left, now"
            + " %s%s. What it does then: %s; now: %s.",
        change,
        change.endsWith("thicker") || change.endsWith("thinner")
            ? Words.of(" by ", Words.figure(STEP_MM, FigureSort.LENGTH))
            : Words.NONE,
        Words.figure(after.sinkMm(), FigureSort.LENGTH),
        Words.figure(before.sinkMm(), FigureSort.LENGTH),
        Words.figure(after.leftMm(), FigureSort.LENGTH),
        Words.figure(before.leftMm(), FigureSort.LENGTH),
        before.bonesKPa() > 0 ? ofPan() : Words.NONE,
        new Support(after.fresh(), after.worn()).words(),
        new Support(before.fresh(), before.worn()).words());
  }

  private Words ofPan() {
    return Words.format(
        "; %s under the sit bones, now %s (long rides want at most %s); %s on average, now %s;"
            + " shaking felt %s, now %s",
        Words.figure(after.bonesKPa(), FigureSort.PRESSURE),
        Words.figure(before.bonesKPa(), FigureSort.PRESSURE),
        Words.figure(LongRide.MOST_KPA, FigureSort.PRESSURE),
        Words.figure(after.meanKPa(), FigureSort.PRESSURE),
        Words.figure(before.meanKPa(), FigureSort.PRESSURE),
        shaking(after),
        shaking(before));
  }

  private static String shaking(Held held) {
    return held.felt() == Double.MAX_VALUE
        ? "undamped"
        : Math.round(100 * held.felt()) + " % of the road's";
  }
}
