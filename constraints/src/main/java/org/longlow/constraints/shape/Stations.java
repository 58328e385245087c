package org.longlow.constraints.shape;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.longlow.constraints.layout.Station;

/**
 * How far a body reaches to each side along its local x axis, by stations with figures for
 * formulas: straight from one to the next, without a kink at those that are smooth.
 */
record Stations(List<At> all) {

  /** A station: its right and left end, −right and +left. */
  record At(double x, double from, double to, boolean smooth) {

    private At with(At other) {
      return new At(x, Math.min(from, other.from), Math.max(to, other.to), smooth && other.smooth);
    }
  }

  static Stations of(List<Station> stations, Places places) {
    List<At> said = new ArrayList<>();
    for (Station s : stations) {
      if (s.reach().isEmpty()) {
        continue;
      }
      double left = places.value(s.reach().leftOrRight());
      double right = places.value(s.reach().rightOrLeft());
      double x = places.value(s.x());
      said.add(new At(x, Math.min(-right, left), Math.max(-right, left), s.smooth()));
    }
    // measures may bring stations past each other or into one place: none of them is lost
    said.sort(Comparator.comparingDouble(At::x));
    List<At> all = new ArrayList<>();
    for (At at : said) {
      int last = all.size() - 1;
      if (last >= 0 && all.get(last).x() == at.x()) {
        all.set(last, all.get(last).with(at));
      } else {
        all.add(at);
      }
    }
    return new Stations(List.copyOf(all));
  }

  /**
   * Returns the places at which a body must be cut so that it is straight between them.
   *
   * @param pieces from one station to the next where the breadth is curved
   */
  List<Double> places(int pieces) {
    List<Double> places = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      places.add(all.get(i).x());
      if (i + 1 < all.size() && (isBent(i) || isBent(i + 1))) {
        for (int k = 1; k < pieces; k++) {
          double share = (double) k / pieces;
          places.add(all.get(i).x() + share * (all.get(i + 1).x() - all.get(i).x()));
        }
      }
    }
    return places;
  }

  private boolean isBent(int i) {
    return all.get(i).smooth();
  }

  /** Returns its right end at a place, or its left, mm. */
  double at(double x, boolean left) {
    int i = 0;
    while (i + 1 < all.size() && all.get(i + 1).x() < x) {
      i++;
    }
    if (x <= all.get(i).x() || i + 1 == all.size()) {
      return y(i, left);
    }
    double width = all.get(i + 1).x() - all.get(i).x();
    double t = (x - all.get(i).x()) / width;
    double a = y(i, left);
    double b = y(i + 1, left);
    double straight = (b - a) / width;
    double ma = isBent(i) ? slope(i, left) : straight;
    double mb = isBent(i + 1) ? slope(i + 1, left) : straight;
    return Monotone.at(t, width, a, b, ma, mb);
  }

  /** The slope at a smooth station; straight on at both ends. */
  private double slope(int i, boolean left) {
    if (i == 0 || i + 1 == all.size()) {
      return all.size() < 2 ? 0 : rise(Math.max(0, i - 1), left);
    }
    return Monotone.slope(rise(i - 1, left), rise(i, left));
  }

  /** The slope of the straight line from a station to the next. */
  private double rise(int i, boolean left) {
    return (y(i + 1, left) - y(i, left)) / (all.get(i + 1).x() - all.get(i).x());
  }

  /** Returns whether each lies on both sides of the middle of the machine or at it. */
  boolean inMiddle() {
    return all.stream().allMatch(at -> at.from() <= 0 && at.to() >= 0)
        && all.stream().anyMatch(at -> at.from() < 0 && at.to() > 0);
  }

  private double y(int i, boolean left) {
    return left ? all.get(i).to() : all.get(i).from();
  }
}
