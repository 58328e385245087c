package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.stream.IntStream;
import org.longlow.constraints.words.Progress;
import org.longlow.rider.body.BodyMeasures;

/**
 * Looks at what adjustment would take in. Settings lie on a grid; between two of them nothing is
 * looked at.
 *
 * @param machine the machine
 * @param judge what counts
 * @param crowd whom; the first {@link #SAMPLE} of them are asked at each setting
 */
public record AdjustRun(
    FitMachine machine,
    BodyJudge judge,
    Crowd crowd,
    int threads,
    Progress progress,
    BooleanSupplier stopped) {

  /** So many of the crowd tell the share at each setting. */
  public static final int SAMPLE = 200;

  /** Of two adjusters together every so many settings of each are looked at. */
  private static final int STRIDE = 2;

  /** Who fits at one setting: of the sample, and of the anchors; or why nobody can. */
  private record Asked(Optional<boolean[]> sample, boolean[] anchors, String barred) {}

  /** Returns what it would take in; empty if it was given up. */
  public Optional<AdjustReport> run() {
    List<Adjuster> adjusters = machine.adjusters();
    List<PercentilePerson> anchors = crowd.anchors();
    List<BodyMeasures> sample =
        IntStream.range(0, Math.min(SAMPLE, crowd.size())).mapToObj(crowd::person).toList();
    Set<String> fouled = machine.fouled();
    List<Map<Adjuster, Double>> all = new ArrayList<>();
    adjusters.forEach(a -> a.settings().forEach(s -> all.add(Map.of(a, s))));
    Optional<List<Asked>> asked = ask(all, sample, anchors, fouled, "settings of one adjuster");
    if (asked.isEmpty()) {
      return Optional.empty();
    }
    List<Boolean> fitting = anchors.stream().map(a -> judge.fits(a.measures())).toList();
    List<AdjustReport.Curve> curves = new ArrayList<>();
    Best best = new Best(fitting);
    int at = 0;
    for (Adjuster adjuster : adjusters) {
      List<Asked> own = asked.get().subList(at, at += adjuster.settings().size());
      curves.add(curve(adjuster, own, sample.size()));
      best.single(adjuster, own.stream().map(Asked::anchors).toList());
    }
    if (!best.all() && !pairs(best, adjusters, anchors, fouled)) {
      return Optional.empty();
    }
    return Optional.of(new AdjustReport(curves, anchors, fitting, best.least()));
  }

  private static AdjustReport.Curve curve(Adjuster adjuster, List<Asked> own, int people) {
    boolean[] anywhere = new boolean[people];
    List<AdjustReport.Point> points = new ArrayList<>();
    for (int k = 0; k < own.size(); k++) {
      boolean[] fit = own.get(k).sample().orElse(new boolean[0]);
      for (int i = 0; i < fit.length; i++) {
        anywhere[i] |= fit[i];
      }
      points.add(
          new AdjustReport.Point(
              adjuster.settings().get(k),
              own.get(k).sample().map(f -> new Share(count(f), f.length)),
              own.get(k).barred()));
    }
    return new AdjustReport.Curve(adjuster, points, new Share(count(anywhere), people));
  }

  private static int count(boolean[] of) {
    return (int) IntStream.range(0, of.length).filter(i -> of[i]).count();
  }

  /** Returns whether it was not given up. */
  private boolean pairs(
      Best best, List<Adjuster> adjusters, List<PercentilePerson> anchors, Set<String> fouled) {
    for (int i = 0; i < adjusters.size(); i++) {
      for (int j = i + 1; j < adjusters.size(); j++) {
        Adjuster a = adjusters.get(i);
        Adjuster b = adjusters.get(j);
        List<Map<Adjuster, Double>> grid = new ArrayList<>();
        for (int k = 0; k < a.settings().size(); k += STRIDE) {
          for (int l = 0; l < b.settings().size(); l += STRIDE) {
            Map<Adjuster, Double> both = new LinkedHashMap<>();
            both.put(a, a.settings().get(k));
            both.put(b, b.settings().get(l));
            grid.add(both);
          }
        }
        Optional<List<Asked>> asked =
            ask(grid, List.of(), anchors, fouled, "settings of " + a.name() + " and " + b.name());
        if (asked.isEmpty()) {
          return false;
        }
        best.pair(a, b, STRIDE, asked.get().stream().map(Asked::anchors).toList());
      }
    }
    return true;
  }

  private Optional<List<Asked>> ask(
      List<Map<Adjuster, Double>> settings,
      List<BodyMeasures> sample,
      List<PercentilePerson> anchors,
      Set<String> fouled,
      String what) {
    AtomicInteger done = new AtomicInteger();
    return new ManyAtOnce(threads, stopped)
        .map(
            settings.size(),
            k -> {
              Asked asked = ask(settings.get(k), sample, anchors, fouled);
              progress.at(what, done.incrementAndGet(), settings.size());
              return asked;
            });
  }

  private Asked ask(
      Map<Adjuster, Double> settings,
      List<BodyMeasures> sample,
      List<PercentilePerson> anchors,
      Set<String> fouled) {
    FitMachine.Adjusted adjusted = machine.at(settings, fouled);
    if (adjusted.checks().isEmpty()) {
      return new Asked(Optional.empty(), new boolean[anchors.size()], adjusted.barred());
    }
    BodyJudge there = judge.on(adjusted.checks().get());
    boolean[] fit = new boolean[sample.size()];
    for (int i = 0; i < fit.length; i++) {
      fit[i] = there.fits(sample.get(i));
    }
    boolean[] taken = new boolean[anchors.size()];
    for (int i = 0; i < taken.length; i++) {
      taken[i] = there.fits(anchors.get(i).measures());
    }
    return new Asked(Optional.of(fit), taken, "");
  }
}
