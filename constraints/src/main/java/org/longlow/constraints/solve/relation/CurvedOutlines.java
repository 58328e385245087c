package org.longlow.constraints.solve.relation;

import java.util.Arrays;
import java.util.List;
import org.longlow.constraints.solve.problem.Pt;
import org.longlow.constraints.solve.problem.Relation;
import org.longlow.rider.geom.Bracket;

/**
 * Relations between a point and outlines with curved edges, mm.
 *
 * <p>The nearest place is looked for along each edge and taken as it is, so that slopes are those
 * of the curve with that place held: it lies square to the edge, where its own way does not count.
 * Slopes by the vertices are differences of the curve.
 */
public final class CurvedOutlines {

  /** An edge as a function of the vertices that shape it. Pure. */
  @FunctionalInterface
  public interface Curve {
    /**
     * Gives a point of it.
     *
     * @param vertices x and z of each vertex, mm
     * @param share 0 at its start, 1 at its end, a little past either too
     * @param out receives x and z, mm
     */
    void at(double[] vertices, double share, double[] out);
  }

  /**
   * One edge.
   *
   * @param vertices which vertices of the outline shape it
   * @param curve its points from those
   */
  public record Edge(int[] vertices, Curve curve) {}

  private static final int SAMPLES = 16;
  private static final double SHARE_STEP = 1e-5;
  private static final double STEP_MM = 1e-3;

  private CurvedOutlines() {}

  /** Signed distance of a point from an edge, left of its direction positive; zero on it. */
  public static Relation on(Pt p, List<Pt> vertices, Edge edge) {
    return LocalRelation.of(
        (u, du) -> {
          Place place = Place.on(edge, u);
          place.find(u);
          return place.value(u, du, place.left(u) < 0 ? -1 : 1);
        },
        inputs(p, vertices));
  }

  /**
   * Room of a point inside a closed outline: its distance from the nearest edge, negative outside.
   *
   * @param edges all edges in order, in either sense
   */
  public static Relation inside(Pt p, List<Pt> vertices, List<Edge> edges) {
    return LocalRelation.of(
        (u, du) -> {
          Place best = null;
          double[] ring = new double[2 * SAMPLES * edges.size()];
          for (int i = 0; i < edges.size(); i++) {
            Place place = Place.on(edges.get(i), u);
            place.find(u);
            System.arraycopy(place.samples, 0, ring, 2 * SAMPLES * i, 2 * SAMPLES);
            best = best == null || place.distance < best.distance ? place : best;
          }
          boolean isLeft = best.left(u) >= 0 == area(ring) >= 0;
          // beside a corner the side of one edge says nothing; away from it the samples do
          boolean inside = best.isInner() ? isLeft : contains(ring, u[0], u[1]);
          return best.value(u, du, inside ? 1 : -1);
        },
        inputs(p, vertices));
  }

  private static Object[] inputs(Pt p, List<Pt> vertices) {
    Object[] inputs = new Object[vertices.size() + 1];
    inputs[0] = p;
    for (int i = 0; i < vertices.size(); i++) {
      inputs[i + 1] = vertices.get(i);
    }
    return inputs;
  }

  private static double area(double[] ring) {
    double twice = 0;
    for (int i = 0; i < ring.length; i += 2) {
      int j = (i + 2) % ring.length;
      twice += (ring[i] - ring[0]) * (ring[j + 1] - ring[1]);
      twice -= (ring[j] - ring[0]) * (ring[i + 1] - ring[1]);
    }
    return twice;
  }

  private static boolean contains(double[] ring, double x, double z) {
    boolean in = false;
    for (int i = 0; i < ring.length; i += 2) {
      int j = (i + 2) % ring.length;
      double share = (z - ring[i + 1]) / (ring[j + 1] - ring[i + 1]);
      if (ring[i + 1] > z != ring[j + 1] > z && x < ring[i] + (ring[j] - ring[i]) * share) {
        in = !in;
      }
    }
    return in;
  }

  /** The place of one edge that is nearest to the point. */
  private static final class Place {
    final Edge edge;
    final double[] corners;
    final double[] samples = new double[2 * SAMPLES];
    final double[] at = new double[2];
    final double[] tangent = new double[2];
    double share;
    double distance;

    private Place(Edge edge, double[] corners) {
      this.edge = edge;
      this.corners = corners;
    }

    static Place on(Edge edge, double[] u) {
      double[] corners = new double[2 * edge.vertices().length];
      for (int k = 0; k < edge.vertices().length; k++) {
        corners[2 * k] = u[2 + 2 * edge.vertices()[k]];
        corners[2 * k + 1] = u[3 + 2 * edge.vertices()[k]];
      }
      return new Place(edge, corners);
    }

    void find(double[] u) {
      int best = 0;
      double least = Double.POSITIVE_INFINITY;
      for (int k = 0; k <= SAMPLES; k++) {
        edge.curve().at(corners, (double) k / SAMPLES, at);
        if (k < SAMPLES) {
          samples[2 * k] = at[0];
          samples[2 * k + 1] = at[1];
        }
        double d = Math.hypot(u[0] - at[0], u[1] - at[1]);
        if (d < least) {
          least = d;
          best = k;
        }
      }
      double low = Math.max(0, best - 1.0) / SAMPLES;
      double high = Math.min(SAMPLES, best + 1.0) / SAMPLES;
      share = stationary(u, low, high);
      look(share);
      distance = Math.hypot(u[0] - at[0], u[1] - at[1]);
    }

    /** Where the way to the point is square to the edge, or the end it lies beyond. */
    private double stationary(double[] u, double from, double to) {
      if (ahead(u, from) <= 0) {
        return from;
      }
      if (ahead(u, to) >= 0) {
        return to;
      }
      return Bracket.root(place -> ahead(u, place), from, to, 1e-15);
    }

    /** How far the point lies ahead of a place, times the speed there. */
    private double ahead(double[] u, double place) {
      look(place);
      return (u[0] - at[0]) * tangent[0] + (u[1] - at[1]) * tangent[1];
    }

    private void look(double place) {
      double[] more = new double[2];
      edge.curve().at(corners, place + SHARE_STEP, more);
      edge.curve().at(corners, place - SHARE_STEP, tangent);
      tangent[0] = more[0] - tangent[0];
      tangent[1] = more[1] - tangent[1];
      edge.curve().at(corners, place, at);
    }

    boolean isInner() {
      return share > 0 && share < 1;
    }

    /** Positive left of the edge. */
    double left(double[] u) {
      return tangent[0] * (u[1] - at[1]) - tangent[1] * (u[0] - at[0]);
    }

    /** The distance with a sign, and its slopes. */
    double value(double[] u, double[] du, int sign) {
      double size = Math.hypot(tangent[0], tangent[1]);
      double nx;
      double nz;
      if (isInner() && size > 0) {
        // square to the edge, also where the point is on it
        double side = sign * Math.signum(left(u)) < 0 ? -1 : 1;
        nx = side * -tangent[1] / size;
        nz = side * tangent[0] / size;
      } else {
        nx = distance > 0 ? sign * (u[0] - at[0]) / distance : 0;
        nz = distance > 0 ? sign * (u[1] - at[1]) / distance : 0;
      }
      double value = nx * (u[0] - at[0]) + nz * (u[1] - at[1]);
      if (du != null) {
        Arrays.fill(du, 0);
        du[0] = nx;
        du[1] = nz;
        double[] more = new double[2];
        double[] less = new double[2];
        for (int k = 0; k < corners.length; k++) {
          double was = corners[k];
          corners[k] = was + STEP_MM;
          edge.curve().at(corners, share, more);
          corners[k] = was - STEP_MM;
          edge.curve().at(corners, share, less);
          corners[k] = was;
          int input = 2 + 2 * edge.vertices()[k / 2] + k % 2;
          du[input] -= (nx * (more[0] - less[0]) + nz * (more[1] - less[1])) / (2 * STEP_MM);
        }
      }
      return value;
    }
  }
}
