package org.longlow.svg.write;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.locationtech.jts.geom.CoordinateSequence;
import org.locationtech.jts.geom.LineString;
import org.longlow.svg.page.Page;

/**
 * The outlines of all pictures of one HTML page: what has the same steps to 0.001 mm is written
 * once, and used again wherever it lies. For one thread.
 */
public final class SharedOutlines {

  /** Shorter paths are as short as a reference to them, characters. */
  private static final int LEAST = 100;

  private final Map<String, String> ids = new HashMap<>();

  /**
   * An outline and where it begins.
   *
   * @param id empty where it is not shared; {@code path} then begins where it lies
   * @param isNew whether nobody has written it yet
   * @param path steps from its first point
   * @param x of its first point on the page, thousandths of a mm
   * @param y down from the upper edge, thousandths of a mm
   */
  record Placed(String id, boolean isNew, String path, long x, long y) {}

  /** Returns lines of a page as one outline; they hold at least one point. */
  Placed of(List<LineString> lines, Page page) {
    long x0 = thousandths(lines.get(0).getCoordinateN(0).x);
    long y0 = thousandths(page.down(lines.get(0).getCoordinateN(0).y));
    String steps = steps(lines, page, x0, y0);
    if (steps.length() < LEAST) {
      return new Placed("", false, steps(lines, page, 0, 0), x0, y0);
    }
    String id = "outline" + (ids.size() + 1);
    String known = ids.putIfAbsent(steps, id);
    return new Placed(known == null ? id : known, known == null, steps, x0, y0);
  }

  /** Steps between points that are rounded first, so that no error adds up. */
  private static String steps(List<LineString> lines, Page page, long fromX, long fromY) {
    StringBuilder d = new StringBuilder();
    long x = fromX;
    long y = fromY;
    for (LineString line : lines) {
      CoordinateSequence points = line.getCoordinateSequence();
      boolean closed = Lines.isClosed(line);
      int n = closed ? points.size() - 1 : points.size();
      long startX = x;
      long startY = y;
      for (int i = 0; i < n; i++) {
        long nextX = thousandths(points.getX(i));
        long nextY = thousandths(page.down(points.getY(i)));
        d.append(i == 0 ? 'm' : ' ');
        Millimetres.append(d, (nextX - x) / 1000.0).append(' ');
        Millimetres.append(d, (nextY - y) / 1000.0);
        x = nextX;
        y = nextY;
        if (i == 0) {
          startX = x;
          startY = y;
        }
      }
      if (closed) {
        d.append('z');
        x = startX;
        y = startY;
      }
    }
    return d.toString();
  }

  private static long thousandths(double mm) {
    return Math.round(mm * 1000);
  }
}
