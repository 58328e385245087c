package org.longlow.sketcher.edit;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** The kinds of parts that can be drawn point by point. */
public final class DrawnKind {

  /** What is drawn where nothing else was said. */
  public static final String FIRST = "bracket";

  private DrawnKind() {}

  /** Returns their words in the order of letters. */
  public static List<String> all() {
    return Stream.of(NewPart.kinds(), NewTube.kinds()).flatMap(List::stream).sorted().toList();
  }

  /** Returns those that begin with what was typed, then those that have it further on. */
  public static List<String> matching(String typed) {
    String letters = typed.strip().toLowerCase(Locale.ROOT);
    List<String> begin = all().stream().filter(k -> k.startsWith(letters)).toList();
    return Stream.concat(
            begin.stream(), all().stream().filter(k -> k.contains(letters) && !begin.contains(k)))
        .toList();
  }
}
