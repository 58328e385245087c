package org.longlow.constraints.words;

import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** Helps with mistyped names. */
public final class Names {

  private static final int LISTED = 12;

  /** Names that share fewer letters in a row do so by chance. */
  private static final int SHARED = 3;

  /** They are asked for again and again while a machine is answered. */
  private static final ClassValue<String[]> WORDS =
      new ClassValue<>() {
        @Override
        protected String[] computeValue(Class<?> kind) {
          return Arrays.stream(kind.getEnumConstants())
              .map(e -> ((Enum<?>) e).name().toLowerCase(Locale.ROOT).replace('_', '-'))
              .toArray(String[]::new);
        }
      };

  private Names() {}

  /** Returns how files write {@code value}. */
  public static String word(Enum<?> value) {
    return WORDS.get(value.getDeclaringClass())[value.ordinal()];
  }

  /** Returns the known name nearest to {@code name} if it is near enough to be meant. */
  public static Optional<String> nearest(String name, Collection<String> known) {
    String best = null;
    int fewest = Math.max(2, name.length() / 3) + 1;
    for (String other : known) {
      int edits = edits(name.toLowerCase(Locale.ROOT), other.toLowerCase(Locale.ROOT), fewest);
      if (edits < fewest) {
        fewest = edits;
        best = other;
      }
    }
    return Optional.ofNullable(best);
  }

  /** Returns advice on what to write instead of {@code name}. */
  public static String advice(String name, Collection<String> known, String what) {
    Optional<String> near = nearest(name, known);
    if (near.isPresent()) {
      return "did you mean " + near.get() + "?";
    }
    if (known.isEmpty()) {
      return "there is no " + what + " yet";
    }
    String list =
        known.stream()
            .sorted(Comparator.comparingInt(other -> -inCommon(name, other)))
            .limit(LISTED)
            .collect(Collectors.joining(", "));
    int more = known.size() - LISTED;
    return "use one of " + list + (more > 0 ? " and " + more + " more" : "");
  }

  /** How many letters in a row two names share, if so many that it is hardly chance; else 0. */
  private static int inCommon(String name, String other) {
    String a = name.toLowerCase(Locale.ROOT);
    String b = other.toLowerCase(Locale.ROOT);
    int most = SHARED - 1;
    for (int from = 0; from + most < a.length(); from++) {
      while (from + most < a.length() && b.contains(a.substring(from, from + most + 1))) {
        most++;
      }
    }
    return most < SHARED ? 0 : most;
  }

  /** Edit distance (Levenshtein), given up at {@code enough}. */
  private static int edits(String a, String b, int enough) {
    if (Math.abs(a.length() - b.length()) >= enough || a.length() > 80 || b.length() > 80) {
      return enough;
    }
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
