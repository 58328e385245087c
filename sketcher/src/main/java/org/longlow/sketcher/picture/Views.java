package org.longlow.sketcher.picture;

import java.util.List;

/**
 * Which views of a machine go on a sheet, and how they lie on it.
 *
 * @param layers those that will be left on it, for lines break only at what is drawn
 */
public record Views(Kind kind, Projection projection, LayerChoice layers) {

  /** Views with all their layers. */
  public Views(Kind kind, Projection projection) {
    this(kind, projection, LayerChoice.ALL);
  }

  /** The elevation alone. */
  public static final Views SIDE = new Views(Kind.SIDE, Projection.FIRST_ANGLE);

  /** Which views. */
  public enum Kind {
    /** The elevation. */
    SIDE("elevation"),
    /** From ahead, the machine's left at the viewer's right. */
    FRONT("front view"),
    /** From above, the front to the right. */
    PLAN("plan"),
    /** The three at one scale, in line with each other. */
    ALL("three views");

    private final String words;

    Kind(String words) {
      this.words = words;
    }

    /** Returns what a sheet of it is called. */
    public String words() {
      return words;
    }
  }

  /** Returns all that can be chosen, once each: how views lie matters only for all three. */
  public static List<Views> all() {
    return List.of(
        SIDE,
        new Views(Kind.FRONT, Projection.FIRST_ANGLE),
        new Views(Kind.PLAN, Projection.FIRST_ANGLE),
        new Views(Kind.ALL, Projection.FIRST_ANGLE),
        new Views(Kind.ALL, Projection.THIRD_ANGLE));
  }

  /** Returns the view that a card shows; before it was turned, those that were chosen. */
  public static Views onTheCard(Aspect aspect, Views before) {
    return switch (aspect) {
      case SIDE -> before;
      case FRONT -> all().get(1);
      case PLAN -> all().get(2);
    };
  }

  /** Returns it in words, such as {@code three views, first angle}. */
  public String words() {
    return kind.words()
        + (kind != Kind.ALL
            ? ""
            : projection == Projection.FIRST_ANGLE ? ", first angle" : ", third angle");
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
