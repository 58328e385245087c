package org.longlow.constraints.machine.line;

import java.util.ArrayList;
import java.util.List;

/**
 * The way of something bendy through points in space: a cubic from each to the next, bent alike on
 * both sides of each point and straight at its ends, which is nearly how a thin rod lies (a natural
 * spline over the straight distances).
 */
public final class LinePath {

  /** Points nearer to each other than this are one, mm. */
  private static final double SAME_MM = 1e-6;

  /** Each piece is looked at in so many steps. */
  private static final int STEPS = 16;

  /** Gauss-Legendre, three points from 0 to 1: places and weights. */
  private static final double[] GAUSS = {0.5 - Math.sqrt(0.15), 0.5, 0.5 + Math.sqrt(0.15)};

  private static final double[] WEIGHTS = {5.0 / 18, 8.0 / 18, 5.0 / 18};

  private final List<double[]> points = new ArrayList<>();
  private final double[] chord;

  /** Second derivatives at the points, by the distance along. */
  private final double[][] bent;

  /**
   * A place where it is bent.
   *
   * @param radiusMm infinite where it is straight
   * @param at forward, to the left and up, mm
   */
  public record Bend(double radiusMm, double[] at) {}

  /**
   * @param through points forward, to the left and up, mm; at least one
   */
  public LinePath(List<double[]> through) {
    for (double[] p : through) {
      if (points.isEmpty() || distance(points.get(points.size() - 1), p) > SAME_MM) {
        points.add(p.clone());
      }
    }
    chord = new double[points.size() - 1];
    for (int i = 0; i < chord.length; i++) {
      chord[i] = distance(points.get(i), points.get(i + 1));
    }
    bent = new double[points.size()][3];
    for (int axis = 0; axis < 3; axis++) {
      bend(axis);
    }
  }

  private static double distance(double[] a, double[] b) {
    return Math.sqrt(
        (a[0] - b[0]) * (a[0] - b[0])
            + (a[1] - b[1]) * (a[1] - b[1])
            + (a[2] - b[2]) * (a[2] - b[2]));
  }

  /** Solves the three-banded equations of one axis from end to end. */
  private void bend(int axis) {
    int n = points.size();
    double[] kept = new double[n];
    double[] right = new double[n];
    for (int i = 1; i + 1 < n; i++) {
      double before = chord[i - 1];
      double after = chord[i];
      double slope =
          (points.get(i + 1)[axis] - points.get(i)[axis]) / after
              - (points.get(i)[axis] - points.get(i - 1)[axis]) / before;
      double pivot = 2 * (before + after) - before * kept[i - 1];
      kept[i] = after / pivot;
      right[i] = (6 * slope - before * right[i - 1]) / pivot;
    }
    for (int i = n - 2; i > 0; i--) {
      bent[i][axis] = right[i] - kept[i] * bent[i + 1][axis];
    }
  }

  /** Returns its length, mm. */
  public double lengthMm() {
    double sum = 0;
    for (int piece = 0; piece < chord.length; piece++) {
      for (int k = 0; k < STEPS; k++) {
        for (int g = 0; g < GAUSS.length; g++) {
          double[] way = first(piece, (k + GAUSS[g]) / STEPS);
          sum += WEIGHTS[g] * chord[piece] / STEPS * size(way);
        }
      }
    }
    return sum;
  }

  /** Returns where it is bent most, ends of its pieces and places between looked at. */
  public Bend tightest() {
    Bend most = new Bend(Double.POSITIVE_INFINITY, points.get(0).clone());
    for (int piece = 0; piece < chord.length; piece++) {
      for (int k = 0; k <= STEPS; k++) {
        double u = (double) k / STEPS;
        double radius = radius(first(piece, u), second(piece, u));
        if (radius < most.radiusMm()) {
          most = new Bend(radius, at(piece, u));
        }
      }
    }
    return most;
  }

  private static double radius(double[] way, double[] bend) {
    double[] square = {
      way[1] * bend[2] - way[2] * bend[1],
      way[2] * bend[0] - way[0] * bend[2],
      way[0] * bend[1] - way[1] * bend[0]
    };
    double turns = size(square);
    double size = size(way);
    return turns > 0 ? size * size * size / turns : Double.POSITIVE_INFINITY;
  }

  private static double size(double[] v) {
    return Math.sqrt(v[0] * v[0] + v[1] * v[1] + v[2] * v[2]);
  }

  /** Returns points along it, its own among them, no farther apart than some distance, nearly. */
  public List<double[]> evenly(double apartMm) {
    List<double[]> all = new ArrayList<>();
    all.add(points.get(0).clone());
    for (int piece = 0; piece < chord.length; piece++) {
      int each = (int) Math.ceil(chord[piece] / apartMm);
      for (int k = 1; k <= each; k++) {
        all.add(at(piece, (double) k / each));
      }
    }
    return all;
  }

  private double[] at(int piece, double u) {
    double h = chord[piece];
    double v = 1 - u;
    double[] out = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      out[axis] =
          v * points.get(piece)[axis]
              + u * points.get(piece + 1)[axis]
              + h
                  * h
                  / 6
                  * ((v * v * v - v) * bent[piece][axis] + (u * u * u - u) * bent[piece + 1][axis]);
    }
    return out;
  }

  /** How it goes on, for each mm of the straight distance. */
  private double[] first(int piece, double u) {
    double h = chord[piece];
    double v = 1 - u;
    double[] out = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      out[axis] =
          (points.get(piece + 1)[axis] - points.get(piece)[axis]) / h
              + h
                  / 6
                  * ((3 * u * u - 1) * bent[piece + 1][axis] - (3 * v * v - 1) * bent[piece][axis]);
    }
    return out;
  }

  private double[] second(int piece, double u) {
    double[] out = new double[3];
    for (int axis = 0; axis < 3; axis++) {
      out[axis] = (1 - u) * bent[piece][axis] + u * bent[piece + 1][axis];
    }
    return out;
  }
}
