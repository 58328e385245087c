package org.longlow.constraints.check.finding;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

/**
 * Which way a finding would have something moved: any one of its ways is an answer.
 *
 * @param thing what is moved, such as {@code the grips}
 * @param ways which way, in an order that does not matter; one at least
 * @param instead what else answers it and leaves that where it is, in words; empty for nothing
 */
public record Tug(Thing thing, Set<Way> ways, String instead) {

  /** Of a finding that would have nothing moved. */
  static final Found NONE = new Found(Optional::empty);

  /** A tug, if any, that is found when somebody asks. */
  public static final class Found {

    private final Supplier<Optional<Tug>> found;

    /**
     * @param found gives it; follows from nothing that changes, for any thread
     */
    Found(Supplier<Optional<Tug>> found) {
      this.found = found;
    }

    Optional<Tug> get() {
      return found.get();
    }

    @Override
    public boolean equals(Object o) {
      return o instanceof Found other && get().equals(other.get());
    }

    @Override
    public int hashCode() {
      return 1; // what findings are about tells them apart
    }

    @Override
    public String toString() {
      return get().toString();
    }
  }

  /** What somebody's findings may pull about. */
  public enum Thing {
    GRIPS("the grips"),
    FOOT_RESTS("the foot rests"),
    BACK("the back"),
    PAN("the front of the pan");

    private final String words;

    Thing(String words) {
      this.words = words;
    }

    /** Returns it in words. */
    public String words() {
      return words;
    }
  }

  /** A way to move something; each has its opposite beside it. */
  public enum Way {
    NEARER("nearer to the seat"),
    FARTHER("farther from the seat"),
    UP("up"),
    DOWN("down"),
    STEEPER("steeper"),
    FLATTER("leaned farther back"),
    LONGER("farther forward"),
    SHORTER("farther back");

    private final String words;

    Way(String words) {
      this.words = words;
    }

    Way opposite() {
      return values()[ordinal() ^ 1];
    }
  }

  public Tug {
    ways = Set.copyOf(ways);
  }

  /** Returns one with one or two ways. */
  public static Tug of(Thing thing, Way way, Way or, String instead) {
    return new Tug(thing, EnumSet.of(way, or), instead);
  }

  /** Returns one with one way. */
  public static Tug of(Thing thing, Way way, String instead) {
    return new Tug(thing, EnumSet.of(way), instead);
  }

  /** Whether the two cannot both be followed: no way is common to them, and one is undone. */
  boolean against(Tug other) {
    return thing == other.thing
        && ways.stream().noneMatch(other.ways::contains)
        && ways.stream().map(Way::opposite).anyMatch(other.ways::contains);
  }

  /** Returns where it would have it, in words. */
  String wants() {
    return thing.words()
        + " "
        + String.join(
            " or ",
            EnumSet.allOf(Way.class).stream().filter(ways::contains).map(w -> w.words).toList());
  }
}
