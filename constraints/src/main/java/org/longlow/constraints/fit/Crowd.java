package org.longlow.constraints.fit;

import java.util.List;
import org.longlow.rider.body.BodyMeasures;

/** Many people, each of whom can be asked for alone and by several threads. */
public interface Crowd {

  /** Returns how many there are; may be none. */
  int size();

  /** Returns the measures of one of them, from 0. */
  BodyMeasures person(int index);

  /** Returns what one of them is called. */
  String name(int index);

  /** Returns whom of them an adjustment is to take in. */
  List<PercentilePerson> anchors();

  /** Returns who they are, in words that go on after "of". */
  String says();
}
