package org.longlow.sketcher.edit;

import java.util.List;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Places;
import org.longlow.rider.geom.PointMm;

/** Something on its way into a machine, which is given its places one after the other. */
public interface Putting {

  /** A part as it would lie. */
  record Ghost(Part part, Places places) {}

  /** Returns what it is, for people. */
  String title();

  /** Returns what is not seen of where it belongs, in a few words; mostly empty. */
  default String said(Layout layout) {
    return "";
  }

  /** Returns which pin is placed next, in a word; empty if there is but one or all are placed. */
  String next();

  boolean isPlaced();

  /** Returns it with one more place given. */
  Putting with(PinSpot spot);

  /** Returns it without the last place given; as it is if none was. */
  Putting back();

  /** Returns it hung on something. */
  Putting on(Hang hang);

  Hang hang();

  /** Returns the parts that it consists of, where they would be if the next place were here. */
  List<Ghost> ghosts(PointMm next);

  /** Returns the edit that puts it there; what has no place yet keeps to what has one. */
  Edit edit();

  /** Returns what will lie on the bench then. */
  String subjectIn(Layout layout);
}
