package org.longlow.sketcher.edit;

/** A quantity of a layout that can be typed over. */
public sealed interface Target {

  /** Returns what the quantity is called in messages and in the history. */
  String name();

  /** The value or formula of a measure. */
  record OfMeasure(String measure) implements Target {
    @Override
    public String name() {
      return measure;
    }
  }

  /** A quantity of a part; see {@link PartFields}. */
  record OfPart(String part, String path, String label) implements Target {
    @Override
    public String name() {
      return part + " " + label;
    }
  }

  /**
   * A coordinate of a pin.
   *
   * @param x true for x, false for z
   */
  record OfPin(String pin, boolean x) implements Target {
    @Override
    public String name() {
      return pin + (x ? " x" : " z");
    }
  }

  /** What a tie holds its quantity to. */
  record OfTie(String tie) implements Target {
    @Override
    public String name() {
      return "tie " + tie;
    }
  }

  /**
   * One end of a limit.
   *
   * @param from true for the smallest value allowed, false for the largest
   */
  record OfLimit(String limit, boolean from) implements Target {
    @Override
    public String name() {
      return "limit " + limit + (from ? " from" : " to");
    }
  }

  /**
   * A quantity of a crew member.
   *
   * @param stature true for stature, false for mass
   */
  record OfPerson(String person, boolean stature) implements Target {
    @Override
    public String name() {
      return person + (stature ? " stature" : " mass");
    }
  }
}
