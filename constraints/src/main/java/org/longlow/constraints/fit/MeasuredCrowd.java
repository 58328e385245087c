package org.longlow.constraints.fit;

import java.util.List;
import org.longlow.constraints.words.Counted;
import org.longlow.rider.body.BodyMeasures;

/**
 * People who were measured.
 *
 * @param people each of them
 */
public record MeasuredCrowd(List<Someone> people) implements Crowd {

  /**
   * One of them.
   *
   * @param name what they are called
   * @param measures their measures; what was not measured is the likeliest that goes with them
   */
  public record Someone(String name, BodyMeasures measures) {}

  public MeasuredCrowd {
    people = List.copyOf(people);
  }

  @Override
  public int size() {
    return people.size();
  }

  @Override
  public BodyMeasures person(int index) {
    return people.get(index).measures();
  }

  @Override
  public String name(int index) {
    return people.get(index).name();
  }

  @Override
  public List<Anchor> anchors() {
    return Anchor.of(people.stream().map(Someone::measures).toList());
  }

  @Override
  public String says() {
    return Counted.of(size(), "person") + " measured";
  }
}
