package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.longlow.constraints.words.Progress;

/**
 * Judges a crowd.
 *
 * @param judge the machine and what counts
 * @param crowd whom
 * @param threads on how many threads, from 1
 * @param progress told of how many are done
 * @param stopped whether to give up
 */
public record CrowdRun(
    BodyJudge judge, Crowd crowd, int threads, Progress progress, BooleanSupplier stopped) {

  /** So many are judged in one piece of work. */
  static final int CHUNK = 50;

  /**
   * Returns how they fit; empty if it was given up.
   *
   * @param known those who are judged already, by their index
   * @param done told of those that were judged, one piece of work after the other
   */
  public Optional<FitReport> run(Map<Integer, Judged> known, Consumer<List<Judged>> done) {
    int pieces = (crowd.size() + CHUNK - 1) / CHUNK;
    AtomicInteger judged = new AtomicInteger();
    return new ManyAtOnce(threads, stopped)
        .map(
            pieces,
            piece -> {
              List<Judged> all = new ArrayList<>();
              List<Judged> fresh = new ArrayList<>();
              int end = Math.min(crowd.size(), (piece + 1) * CHUNK);
              IntStream.range(piece * CHUNK, end)
                  .forEach(
                      i -> {
                        Judged one = known.get(i);
                        if (one == null) {
                          one = judge.judge(crowd, i);
                          fresh.add(one);
                        }
                        all.add(one);
                      });
              synchronized (done) {
                if (!fresh.isEmpty()) {
                  done.accept(fresh);
                }
                progress.at("people judged", judged.addAndGet(all.size()), crowd.size());
              }
              return all;
            })
        .map(all -> new FitReport(crowd.says(), all.stream().flatMap(List::stream).toList()));
  }

  /** Returns how they fit, judged all anew; empty if it was given up. */
  public Optional<FitReport> run() {
    return run(Map.of(), fresh -> {});
  }
}
