package org.longlow.sketcher.picture;

/** From where a machine is seen; all on the road's axes. */
public enum Aspect {
  /** From its right: x, forward, to the right of the page and z up it. */
  SIDE("side", "elevation"),
  /** From ahead: y, left, to the right of the page and z up it. */
  FRONT("front", "front view"),
  /** From above: x, forward, to the right of the page and y, left, up it. */
  PLAN("plan", "plan");

  private final String word;
  private final String says;

  Aspect(String word, String says) {
    this.word = word;
    this.says = says;
  }

  /** Returns its short name. */
  public String word() {
    return word;
  }

  /** Returns what a drawing seen so is called. */
  public String says() {
    return says;
  }

  /** Returns the next one, and after the last the first. */
  public Aspect next() {
    return values()[(ordinal() + 1) % values().length];
  }
}
