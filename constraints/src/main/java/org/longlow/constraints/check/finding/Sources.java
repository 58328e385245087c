package org.longlow.constraints.check.finding;

import org.longlow.constraints.law.Known;
import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;

/** Where limits come from, in words. */
public final class Sources {

  private static final Basis SITTING =
      Basis.published(
          Known.TRANSCRIBED,
          "EN 1005-3, as a summary has it: 85 in a hundred adults lift 50 N sitting, of which half"
              + " is asked; 99 in a hundred lift 31 N, of which half is 15 N");

  private Sources() {}

  /** Returns the source of a demand: the layout itself, or common practice, maybe from memory. */
  public static Basis of(Layout layout, Demands.Key key) {
    if (layout.demands().limits().containsKey(key)) {
      return Basis.ownDemand("this layout's demand: " + key.meaning());
    }
    if (key == Demands.Key.WAY_OUT_FORCE) {
      return SITTING;
    }
    return key.fromMemory()
        ? Basis.practice("common practice, from memory: " + key.meaning()).fromMemory()
        : Basis.practice("common practice, no published source: " + key.meaning());
  }
}
