package org.longlow.constraints.gap;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiPredicate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.index.strtree.STRtree;

/** Gaps of many bodies at once. */
public final class Gaps {

  private Gaps() {}

  /**
   * Returns the gaps among {@code bodies} that are not more than {@code horizonMm}, smallest first.
   *
   * @param wanted which pairs matter; asked once for each pair that comes near
   */
  public static List<Gap> among(
      List<Body> bodies, double horizonMm, BiPredicate<String, String> wanted) {
    STRtree tree = new STRtree();
    for (int i = 0; i < bodies.size(); i++) {
      if (!bodies.get(i).envelope().isNull()) {
        tree.insert(bodies.get(i).envelope(), i);
      }
    }
    List<Gap> gaps = new ArrayList<>();
    for (int i = 0; i < bodies.size(); i++) {
      Body body = bodies.get(i);
      if (body.envelope().isNull()) {
        continue;
      }
      for (Object hit : tree.query(grown(body.envelope(), horizonMm))) {
        int j = (Integer) hit;
        if (j > i) {
          add(gaps, body, bodies.get(j), horizonMm, wanted);
        }
      }
    }
    gaps.sort(order());
    return gaps;
  }

  /**
   * Returns the gaps between {@code some} and {@code others}, as {@link #among} does. Indexes are
   * built on {@code others}: let those be the ones that stay.
   */
  public static List<Gap> between(
      List<Body> some, List<Body> others, double horizonMm, BiPredicate<String, String> wanted) {
    List<Gap> gaps = new ArrayList<>();
    for (Body body : some) {
      if (body.envelope().isNull()) {
        continue;
      }
      Envelope near = grown(body.envelope(), horizonMm);
      for (Body other : others) {
        if (near.intersects(other.envelope()) && wanted.test(body.name(), other.name())) {
          // the other body's indexes serve again for the next one that comes near it
          Gap gap = other.to(body, horizonMm);
          if (gap != null) {
            gaps.add(new Gap(gap.second(), gap.first(), gap.gapMm(), gap.where()));
          }
        }
      }
    }
    gaps.sort(order());
    return gaps;
  }

  private static void add(
      List<Gap> into, Body a, Body b, double horizonMm, BiPredicate<String, String> wanted) {
    if (!wanted.test(a.name(), b.name())) {
      return;
    }
    Gap gap = a.to(b, horizonMm);
    if (gap != null) {
      into.add(gap);
    }
  }

  private static Comparator<Gap> order() {
    return Comparator.comparingDouble(Gap::gapMm)
        .thenComparing(Gap::first)
        .thenComparing(Gap::second);
  }

  private static Envelope grown(Envelope envelope, double by) {
    Envelope grown = new Envelope(envelope);
    grown.expandBy(by);
    return grown;
  }
}
