package org.longlow.constraints.mend;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;
import org.longlow.rider.words.Words;

/**
 * Nailed pins, or the points of an outline, moved together.
 *
 * @param name what is moved, in the user's names
 * @param coordinates all that are moved
 * @param way the direction of a step, of length 1
 */
record Shift(String name, List<Coordinate> coordinates, PointMm way) implements Dial.Moving {

  /**
   * A coordinate as written.
   *
   * @param path where it stands
   * @param isX along the machine, else up
   */
  record Coordinate(List<String> path, Formula written, boolean isX) {}

  Shift {
    coordinates = List.copyOf(coordinates);
  }

  @Override
  public String thing() {
    return coordinates.get(0).path().get(0) + " " + coordinates.get(0).path().get(1);
  }

  @Override
  public Grid grid() {
    return Grid.MM;
  }

  @Override
  public Dial.Moving along(PointMm other) {
    return new Shift(name, coordinates, other);
  }

  /** Whole millimetres each way, so that what is said is what is typed. */
  private static int whole(double mm) {
    return (int) (Math.signum(mm) * Math.ceil(Math.abs(mm) - 1e-9));
  }

  @Override
  public Optional<Rewrite> turned(int steps) {
    int x = whole(steps * way.x());
    int z = whole(steps * way.z());
    Map<List<String>, String> texts = new LinkedHashMap<>();
    for (Coordinate c : coordinates) {
      int mm = c.isX() ? x : z;
      if (mm != 0) {
        texts.put(c.path(), Grid.MM.plus(c.written(), mm));
      }
    }
    return Optional.of(new Rewrite(texts));
  }

  @Override
  public Words says(int steps, Places before, Places after) {
    return Say.moved(name, new PointMm(whole(steps * way.x()), whole(steps * way.z())));
  }
}
