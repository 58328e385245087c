package org.longlow.constraints.shape;

import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Measure;
import org.longlow.constraints.layout.Measures;
import org.longlow.constraints.layout.Tie;

/**
 * The links of a chain.
 *
 * <p>A tie of belt length is a chain where its length is a count of links times their pitch: one
 * named number times one named length, each used by its formula or by a measure that it names.
 *
 * @param count of links, whole or not
 * @param pitchMm of each, mm
 */
public record ChainLinks(double count, double pitchMm) {

  /** How far the length may be from count times pitch, mm; rounding of decimals only. */
  private static final double SAME_MM = 1e-6;

  /** Returns those of a tie that is a chain. */
  public static Optional<ChainLinks> of(Layout layout, Places places, Tie tie) {
    if (tie.is().isEmpty()) {
      return Optional.empty();
    }
    Set<String> names = new LinkedHashSet<>();
    gather(layout, tie.is().get(), names);
    double length = places.value(tie.is().get());
    for (String count : names) {
      double n = places.measures().get(count);
      for (String pitch : names) {
        double p = places.measures().get(pitch);
        if (Measures.dim(layout, count).equals(Dim.NUMBER)
            && Measures.dim(layout, pitch).equals(Dim.LENGTH)
            && p > 0
            && Math.abs(n * p - length) < SAME_MM * Math.max(1, n)) {
          return Optional.of(new ChainLinks(n, p));
        }
      }
    }
    return Optional.empty();
  }

  private static void gather(Layout layout, Formula formula, Set<String> names) {
    for (String name : formula.names()) {
      Measure measure = layout.measures().get(name);
      if (measure != null && names.add(name)) {
        gather(layout, measure.is(), names);
      }
    }
  }
}
