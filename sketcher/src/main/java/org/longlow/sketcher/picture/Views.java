package org.longlow.sketcher.picture;

/** Which views of a machine go on a sheet, and how they lie on it. */
public record Views(Kind kind, Projection projection) {

  /** The elevation alone. */
  public static final Views SIDE = new Views(Kind.SIDE, Projection.FIRST_ANGLE);

  /** Which views. */
  public enum Kind {
    /** The elevation. */
    SIDE,
    /** From ahead, the machine's left at the viewer's right. */
    FRONT,
    /** From above, the front to the right. */
    PLAN,
    /** The three at one scale, in line with each other. */
    ALL
  }

  /**
   * How views lie about the elevation (ISO 5456-2). The elevation has the front at the right, so it
   * is seen from the machine's right.
   */
  public enum Projection {
    /** The front view at its left, the plan below it. */
    FIRST_ANGLE("First-angle", "front view left of the elevation, plan below it"),
    /** The front view at its right, the plan above it. */
    THIRD_ANGLE("Third-angle", "front view right of the elevation, plan above it");

    private final String word;
    private final String where;

    Projection(String word, String where) {
      this.word = word;
      this.where = where;
    }

    /** Returns it in words, without a full stop. */
    public String words() {
      return word + " projection: " + where;
    }
  }
}
