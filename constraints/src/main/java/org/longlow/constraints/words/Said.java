package org.longlow.constraints.words;

import java.util.List;
import java.util.Locale;

/** A name with what it is, which is not said twice where the name tells it already. */
public final class Said {

  private Said() {}

  /** Returns it such as {@code lid, cowl}; {@code swingarm} and {@code frontWheel} tell enough. */
  public static String with(String name, String kind) {
    return tells(name, kind) ? name : name + ", " + kind;
  }

  /** Returns it such as {@code tank and rail (gap)}; {@code Ada, hold} tells enough. */
  public static String in(String name, String kind) {
    return tells(name, kind) ? name : name + " (" + kind + ")";
  }

  /** Whether the words of a name, also one in camel case, have those of a kind among them. */
  private static boolean tells(String name, String kind) {
    List<String> of = words(kind);
    List<String> in = words(name);
    return of.isEmpty()
        || java.util.stream.IntStream.rangeClosed(0, in.size() - of.size())
            .anyMatch(i -> in.subList(i, i + of.size()).equals(of));
  }

  private static List<String> words(String text) {
    String apart = text.replaceAll("(\\p{Ll})(\\p{Lu})", "$1 $2").toLowerCase(Locale.ROOT);
    return List.of(apart.split("[^\\p{L}]+")).stream().filter(w -> !w.isEmpty()).toList();
  }
}
