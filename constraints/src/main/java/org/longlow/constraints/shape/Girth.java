package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.Breadth;
import org.longlow.constraints.layout.HalfBreadths;
import org.longlow.constraints.layout.Outline;
import org.longlow.constraints.layout.Vertex;
import org.longlow.rider.geom.PointMm;

/**
 * A point of an outline in its local axes with how far the body reaches to each side there.
 *
 * @param x along the local x axis, mm
 * @param z square to it
 * @param from its right end across the machine
 * @param to its left end
 */
record Girth(double x, double z, double from, double to) {

  /**
   * Returns the points of an outline in turn, no more than are asked for.
   *
   * @param vertices of all of it in local axes
   * @param even the interval of the part, where neither a vertex nor a station says another
   */
  static List<Girth> of(
      Outline outline,
      Breadth breadth,
      List<PointMm> vertices,
      Interval even,
      Fineness fineness,
      Places places) {
    Stations stations = Stations.of(breadth.stations(), places);
    List<Boolean> smooth = outline.smooth();
    int n = vertices.size();
    double[] from = new double[n];
    double[] to = new double[n];
    for (int i = 0; i < n; i++) {
      Optional<HalfBreadths> said =
          Optional.of(outline.vertices().get(outline.written(i))).flatMap(Vertex::reach);
      Interval there = said.map(r -> interval(r, places)).orElse(even);
      from[i] = there.from();
      to[i] = there.to();
    }
    List<Girth> fine = new ArrayList<>();
    List<Integer> fixed = new ArrayList<>();
    Curves.walk(
        vertices,
        smooth,
        outline.closed(),
        fineness.chordMm(),
        (i, span, share) -> {
          if (share == 0) {
            fixed.add(fine.size());
          }
          PointMm p = share == 0 ? span.from() : span.at(share);
          fine.add(girth(p, stations, along(from, i, span, share), along(to, i, span, share)));
        });
    if (!outline.closed()) {
      fixed.add(fine.size());
      fine.add(girth(vertices.get(n - 1), stations, from[n - 1], to[n - 1]));
    }
    List<Girth> all = new ArrayList<>();
    List<Integer> kept = new ArrayList<>();
    List<Double> cuts = stations.places(fineness.stationPieces());
    for (int i = 0; i < fine.size(); i++) {
      if (kept.size() < fixed.size() && fixed.get(kept.size()) == i) {
        kept.add(all.size());
      }
      all.add(fine.get(i));
      if (outline.closed() || i + 1 < fine.size()) {
        fine.get(i).stations(fine.get((i + 1) % fine.size()), cuts, stations, all);
      }
    }
    return thinned(all, kept, outline.closed(), fineness.flatnessMm());
  }

  /** Adds the points of the line from here to another at which stations change the breadth. */
  private void stations(Girth to, List<Double> cuts, Stations stations, List<Girth> into) {
    List<Double> places = new ArrayList<>(cuts);
    if (to.x < x) {
      Collections.reverse(places);
    }
    for (double place : places) {
      if (place > Math.min(x, to.x) && place < Math.max(x, to.x)) {
        double share = (place - x) / (to.x - x);
        into.add(girth(new PointMm(place, z + share * (to.z - z)), stations, 0, 0));
      }
    }
  }

  private static Interval interval(HalfBreadths reach, Places places) {
    double left = places.value(reach.leftOrRight());
    double right = places.value(reach.rightOrLeft());
    return new Interval(Math.min(-right, left), Math.max(-right, left));
  }

  private static double along(double[] values, int i, Span span, double share) {
    int n = values.length;
    return share == 0
        ? values[i]
        : span.along(
            share, values[(i + n - 1) % n], values[i], values[(i + 1) % n], values[(i + 2) % n]);
  }

  private static Girth girth(PointMm p, Stations stations, double from, double to) {
    return stations.all().isEmpty()
        ? new Girth(p.x(), p.z(), Math.min(from, to), Math.max(from, to))
        : new Girth(p.x(), p.z(), stations.at(p.x(), false), stations.at(p.x(), true));
  }

  /** Leaves out points between fixed ones that are near enough to the line past them. */
  private static List<Girth> thinned(
      List<Girth> fine, List<Integer> fixed, boolean closed, double flatnessMm) {
    List<Girth> kept = new ArrayList<>();
    int runs = closed ? fixed.size() : fixed.size() - 1;
    for (int r = 0; r < runs; r++) {
      int from = fixed.get(r);
      int to = r + 1 < fixed.size() ? fixed.get(r + 1) : fine.size();
      kept.add(fine.get(from));
      thin(fine, from, to, flatnessMm, kept);
    }
    if (!closed) {
      kept.add(fine.get(fine.size() - 1));
    }
    return kept;
  }

  private static void thin(
      List<Girth> fine, int from, int to, double flatnessMm, List<Girth> kept) {
    Girth a = fine.get(from);
    Girth b = fine.get(to % fine.size());
    double most = flatnessMm;
    int at = -1;
    for (int i = from + 1; i < to; i++) {
      double off = fine.get(i).offMm(a, b);
      if (off > most) {
        most = off;
        at = i;
      }
    }
    if (at >= 0) {
      thin(fine, from, at, flatnessMm, kept);
      kept.add(fine.get(at));
      thin(fine, at, to, flatnessMm, kept);
    }
  }

  /** How far it is from the line between two others, breadths and all. */
  private double offMm(Girth a, Girth b) {
    double[] u = {b.x - a.x, b.z - a.z, b.from - a.from, b.to - a.to};
    double[] v = {x - a.x, z - a.z, from - a.from, to - a.to};
    double uu = 0;
    double uv = 0;
    double vv = 0;
    for (int k = 0; k < 4; k++) {
      uu += u[k] * u[k];
      uv += u[k] * v[k];
      vv += v[k] * v[k];
    }
    double t = uu > 0 ? Math.max(0, Math.min(1, uv / uu)) : 0;
    return Math.sqrt(Math.max(0, vv - 2 * t * uv + t * t * uu));
  }

  /** Returns the direction to another, breadths and all. */
  double[] way(Girth to) {
    double[] way = {to.x - x, to.z - z, to.from - from, to.to - this.to};
    double length = 0;
    for (double w : way) {
      length += w * w;
    }
    for (int k = 0; k < way.length; k++) {
      way[k] = length > 0 ? way[k] / Math.sqrt(length) : 0;
    }
    return way;
  }

  Girth towards(Girth other, double share) {
    return new Girth(
        x + share * (other.x - x),
        z + share * (other.z - z),
        from + share * (other.from - from),
        to + share * (other.to - to));
  }
}
