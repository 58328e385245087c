package org.longlow.constraints.fit;

import java.util.List;
import org.longlow.rider.body.BodyMeasures;

/**
 * Some of a crowd, taken at even steps through it, so that a table in any order gives of each.
 *
 * @param whole all of them
 * @param size how many are taken, from 0 to all
 */
public record EvenlyTaken(Crowd whole, int size) implements Crowd {

  public EvenlyTaken {
    if (size < 0 || size > whole.size()) {
      throw new IllegalArgumentException(size + " cannot be taken of " + whole.size());
    }
  }

  private int place(int index) {
    return (int) ((long) index * whole.size() / size);
  }

  @Override
  public BodyMeasures person(int index) {
    return whole.person(place(index));
  }

  @Override
  public String name(int index) {
    return whole.name(place(index));
  }

  @Override
  public List<PercentilePerson> anchors() {
    return whole.anchors();
  }

  @Override
  public String says() {
    return size + " of " + whole.says();
  }
}
