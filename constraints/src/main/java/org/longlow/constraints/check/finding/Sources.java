package org.longlow.constraints.check.finding;

import org.longlow.constraints.layout.Demands;
import org.longlow.constraints.layout.Layout;

/** Where limits come from, in words. */
public final class Sources {

  private Sources() {}

  /** Returns the source of a demand: the layout itself, or common practice. */
  public static Basis of(Layout layout, Demands.Key key) {
    return layout.demands().limits().containsKey(key)
        ? Basis.ownDemand("this layout's demand: " + key.meaning())
        : Basis.practice("common practice, no published source: " + key.meaning());
  }
}
