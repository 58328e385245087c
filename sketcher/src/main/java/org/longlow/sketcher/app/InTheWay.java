package org.longlow.sketcher.app;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;

/**
 * What stands where files are to be written.
 *
 * @param ours files as Longlow wrote them, which are replaced
 * @param others files of somebody else, or changed by hand since, which are kept beside
 */
public record InTheWay(List<Path> ours, List<Path> others) {

  public InTheWay {
    ours = List.copyOf(ours);
    others = List.copyOf(others);
  }

  /** Looks at places where files are to be written. */
  public static InTheWay of(Collection<Path> places) throws IOException {
    List<Path> ours = new ArrayList<>();
    List<Path> others = new ArrayList<>();
    for (Path place : places) {
      if (Files.exists(place, LinkOption.NOFOLLOW_LINKS)) {
        (Output.isSomebodysWork(place) ? others : ours).add(place);
      }
    }
    return new InTheWay(ours, others);
  }

  /** Returns all of them. */
  public List<Path> all() {
    List<Path> all = new ArrayList<>(ours);
    all.addAll(others);
    return all;
  }

  /** Asks whether they may be replaced. */
  @FunctionalInterface
  public interface Consent {

    /** The commands' rule: what is ours is replaced, what is not is kept beside. */
    Consent GIVEN = there -> true;

    /** Returns whether these, of which there is one at least, may be replaced. */
    boolean to(InTheWay there);

    /**
     * Lets pass what is agreed to.
     *
     * @throws NotAgreed otherwise
     */
    default void ask(Collection<Path> places) throws IOException {
      InTheWay there = of(places);
      if (!there.all().isEmpty() && !to(there)) {
        throw new NotAgreed(there);
      }
    }
  }

  /** Nothing was written, because something stands there and nobody agreed to replace it. */
  public static final class NotAgreed extends IOException {
    private static final long serialVersionUID = 1;

    private final transient InTheWay there;

    NotAgreed(InTheWay there) {
      super("there are files of these names already: " + there.all());
      this.there = there;
    }

    public InTheWay there() {
      return there;
    }
  }
}
