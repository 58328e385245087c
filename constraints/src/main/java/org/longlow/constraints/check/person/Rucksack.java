package org.longlow.constraints.check.person;

import org.longlow.constraints.check.finding.Say;
import org.longlow.constraints.seat.Sitting;
import org.longlow.rider.words.Words;

/** That a rucksack between somebody and the back rest changes how they sit. */
public final class Rucksack {

  private Rucksack() {}

  /** Returns it as a sentence after another; nothing of somebody without one. */
  public static Words words(Sitting sitting) {
    double mm = sitting.body().gear().rucksackMm();
    return mm > 0
        ? Say.format(
            " The rucksack, %s thick, pushes %s so far forward off the back rest, with less of the"
                + " thighs on the pan: without it, or strapped to the machine, this is another"
                + " figure.",
            Say.wholeMm(mm), sitting.occupant().words())
        : Words.NONE;
  }
}
