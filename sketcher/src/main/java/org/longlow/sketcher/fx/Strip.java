package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Insets;
import javafx.geometry.Orientation;
import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;

/**
 * Things side by side that go on in a further row where the window is too narrow for them. What may
 * be narrower than it likes gives way, above all what gives way first; what grows takes what a row
 * leaves over, or a row of its own below all others where it has no room beside them. Where a row
 * ends is decided by the least widths alone, however little a thing likes just now: what changes
 * its words keeps room for them.
 */
class Strip extends Pane {

  /** Rows are at most so far apart, px. */
  private static final double ROWS_APART_PX = 10;

  /** Others have what they like while that leaves so much to what gives way first. */
  private static final double LEFT_SHARE = 0.5;

  private final double gap;
  private final double apart;

  /**
   * @param gap left free between two things, px
   */
  Strip(double gap, Node... things) {
    this.gap = gap;
    this.apart = Math.min(gap, ROWS_APART_PX);
    getChildren().addAll(things);
  }

  /** Of things that may be narrower than they like, this one gives way before others do. */
  static void givesWayFirst(Node n) {
    n.getProperties().put(Strip.class, true);
  }

  @Override
  public Orientation getContentBias() {
    return Orientation.HORIZONTAL;
  }

  private static double least(Node n) {
    return Math.min(n.minWidth(-1), liked(n));
  }

  private static double liked(Node n) {
    return Math.ceil(n.prefWidth(-1));
  }

  private static boolean grows(Node n) {
    return HBox.getHgrow(n) == Priority.ALWAYS;
  }

  private List<List<Node>> rows(double width) {
    List<List<Node>> rows = new ArrayList<>();
    List<List<Node>> last = new ArrayList<>();
    double used = Double.POSITIVE_INFINITY;
    for (Node n : getManagedChildren()) {
      double wide = Math.ceil(n.minWidth(-1));
      if (used + gap + wide > width) {
        if (grows(n) && wide > 0 && !rows.isEmpty()) {
          last.add(List.of(n));
          continue;
        }
        rows.add(new ArrayList<>());
        used = -gap;
      }
      rows.get(rows.size() - 1).add(n);
      used += gap + wide;
    }
    rows.addAll(last);
    return rows;
  }

  private static boolean gives(Node n) {
    return n.hasProperties() && n.getProperties().containsKey(Strip.class);
  }

  private static double share(double of, double liking) {
    return liking <= 0 ? 0 : Math.max(0, Math.min(1, of / liking));
  }

  /** Shares the width of a row out among its things. */
  private double[] widths(List<Node> row, double width) {
    double free = width - gap * (row.size() - 1);
    double liking = 0;
    double firm = 0;
    long growing = row.stream().filter(Strip::grows).count();
    for (Node n : row) {
      free -= least(n);
      liking += liked(n) - least(n);
      firm += gives(n) ? 0 : liked(n) - least(n);
    }
    boolean firmFirst = firm <= (1 - LEFT_SHARE) * free;
    double granted = firmFirst ? 1 : share(free, liking);
    double given = firmFirst ? share(free - firm, liking - firm) : granted;
    double over = growing == 0 ? 0 : Math.max(0, free - liking) / growing;
    double[] widths = new double[row.size()];
    for (int i = 0; i < widths.length; i++) {
      Node n = row.get(i);
      double some = gives(n) ? given : granted;
      double wide = least(n) + some * (liked(n) - least(n)) + (grows(n) ? over : 0);
      widths[i] = Math.min(wide, width);
    }
    return widths;
  }

  private static double high(List<Node> row, double[] widths) {
    double high = 0;
    for (int i = 0; i < widths.length; i++) {
      high = Math.max(high, Math.ceil(high(row.get(i), widths[i])));
    }
    return high;
  }

  private static double high(Node n, double width) {
    return n.prefHeight(n.getContentBias() == Orientation.HORIZONTAL ? width : -1);
  }

  private double inside(double width) {
    return width - getInsets().getLeft() - getInsets().getRight();
  }

  @Override
  protected double computePrefHeight(double width) {
    double wide = width < 0 ? Double.POSITIVE_INFINITY : inside(width);
    double high = getInsets().getTop() + getInsets().getBottom() - apart;
    for (List<Node> row : rows(wide)) {
      double[] widths = widths(row, Double.isInfinite(wide) ? line(row) : wide);
      high += apart + high(row, widths);
    }
    return Math.max(0, high);
  }

  private double line(List<Node> row) {
    return row.stream().mapToDouble(n -> liked(n) + gap).sum() - gap;
  }

  @Override
  protected double computeMinHeight(double width) {
    return computePrefHeight(width);
  }

  @Override
  protected double computePrefWidth(double height) {
    Insets in = getInsets();
    return in.getLeft() + in.getRight() + Math.max(0, line(getManagedChildren()));
  }

  @Override
  protected double computeMinWidth(double height) {
    double widest = getManagedChildren().stream().mapToDouble(Strip::least).max().orElse(0);
    return getInsets().getLeft() + getInsets().getRight() + widest;
  }

  @Override
  protected void layoutChildren() {
    double y = getInsets().getTop();
    double wide = inside(getWidth());
    for (List<Node> row : rows(wide)) {
      double[] widths = widths(row, wide);
      double high = high(row, widths);
      double x = getInsets().getLeft();
      for (int i = 0; i < widths.length; i++) {
        Node n = row.get(i);
        double own = Math.min(high, high(n, widths[i]));
        n.resizeRelocate(
            snapPositionX(x), snapPositionY(y + (high - own) / 2), Math.ceil(widths[i]), own);
        x += widths[i] + gap;
      }
      y += high + apart;
    }
  }
}
