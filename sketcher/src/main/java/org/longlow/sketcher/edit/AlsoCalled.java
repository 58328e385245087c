package org.longlow.sketcher.edit;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/**
 * Other words for what a machine has and what can be done: whoever looks for the word on the left
 * is shown what is called by any of those on the right too. The table is {@code also-called.txt}.
 */
public final class AlsoCalled {

  /** So much of a word tells which one is meant while it is typed. */
  private static final int TELLING = 3;

  private static final Map<String, List<String>> TABLE = read();

  private AlsoCalled() {}

  private static Map<String, List<String>> read() {
    Map<String, List<String>> table = new LinkedHashMap<>();
    try (InputStream in = AlsoCalled.class.getResourceAsStream("also-called.txt")) {
      String text = new String(in.readAllBytes(), StandardCharsets.UTF_8);
      text.lines()
          .filter(line -> !line.isBlank() && !line.startsWith("#"))
          .map(line -> line.split(": "))
          .forEach(row -> table.put(row[0], List.of(row[1].split(", "))));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return table;
  }

  /**
   * Returns whether a text has all the words of what was typed, or of what that is also called.
   *
   * @param text in lower case
   */
  public static boolean matches(String text, String typed) {
    return ways(typed).stream().anyMatch(way -> has(text, way));
  }

  /** Returns whether a text has all the words that were typed, in any order and case. */
  static boolean has(String text, String typed) {
    return words(typed).stream().allMatch(text::contains);
  }

  /** Returns what was typed and in what other ways it may be said. */
  private static Set<String> ways(String typed) {
    String said = String.join(" ", words(typed));
    Set<String> ways = new LinkedHashSet<>(List.of(said));
    TABLE.forEach(
        (word, others) -> {
          List<String> rest = rest(said, word);
          if (rest != null) {
            others.forEach(o -> ways.add(String.join(" ", rest) + " " + o));
          }
        });
    return ways;
  }

  /** Returns what is typed beside a word; null if that is not there, nor begun at the end. */
  private static List<String> rest(String said, String word) {
    String padded = " " + said + " ";
    int at = padded.indexOf(" " + word + " ");
    if (at >= 0) {
      return words(padded.substring(0, at) + padded.substring(at + word.length() + 1));
    }
    return said.length() >= TELLING && word.startsWith(said) ? new ArrayList<>() : null;
  }

  private static List<String> words(String typed) {
    return List.of(typed.strip().toLowerCase(Locale.ROOT).split("\\s+")).stream()
        .filter(w -> !w.isEmpty())
        .toList();
  }
}
