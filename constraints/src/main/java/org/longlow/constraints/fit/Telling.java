package org.longlow.constraints.fit;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Words;

/**
 * What sets some people apart from others: how far their means lie apart, over the spread within
 * both.
 *
 * @param trait what they differ by
 * @param theirs their mean
 * @param others the mean of the others
 * @param apart the difference over the pooled standard deviation (Cohen 1988, from memory)
 */
public record Telling(BodyTrait trait, double theirs, double others, double apart) {

  /** A difference that is worth telling; half a standard deviation is called medium (ibid.). */
  static final double LEAST = 0.5;

  /** What differs by less of its size is the same but for rounding. */
  private static final double ROUNDING = 1e-9;

  /** More than these say the same again. */
  private static final int MOST = 3;

  /** Returns what sets some apart from others, most telling first; at most three traits. */
  static List<Telling> of(List<Judged> some, List<Judged> others) {
    List<Telling> all = new ArrayList<>();
    if (some.size() < 2 || others.size() < 2) {
      return all;
    }
    for (BodyTrait trait : BodyTrait.values()) {
      double[] a = some.stream().mapToDouble(p -> p.of(trait)).toArray();
      double[] b = others.stream().mapToDouble(p -> p.of(trait)).toArray();
      double spread = Math.sqrt((squares(a) + squares(b)) / Math.max(1, a.length + b.length - 2));
      double apart = (mean(a) - mean(b)) / spread;
      boolean alike = !(spread > ROUNDING * Math.abs(mean(b)));
      if (Math.abs(apart) >= LEAST && !alike) {
        all.add(new Telling(trait, mean(a), mean(b), apart));
      }
    }
    all.sort(Comparator.comparingDouble(t -> -Math.abs(t.apart())));
    return all.subList(0, Math.min(MOST, all.size()));
  }

  private static double mean(double[] of) {
    double sum = 0;
    for (double v : of) {
      sum += v;
    }
    return sum / of.length;
  }

  private static double squares(double[] of) {
    double mean = mean(of);
    double sum = 0;
    for (double v : of) {
      sum += (v - mean) * (v - mean);
    }
    return sum;
  }

  /** Returns it in words, such as {@code short legs (741 mm, others 803 mm)}. */
  public Words words() {
    return Words.of(trait.says(apart > 0) + " (", figure(theirs), ", others ", figure(others), ")");
  }

  private Words figure(double value) {
    Optional<FigureSort> sort = trait.sort();
    return sort.isPresent()
        ? Words.figure(value, sort.get())
        : Words.of(Say.number(Math.rint(value * 10) / 10) + " kg/m²");
  }
}
