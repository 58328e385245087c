package org.longlow.constraints.document;

import java.util.regex.Pattern;
import org.longlow.constraints.words.Quoted;

/** Writes JSON paths. */
public final class FieldPath {

  private static final Pattern PLAIN = Pattern.compile("[\\p{L}_$][\\p{L}\\p{N}_$-]*");

  private FieldPath() {}

  public static String key(String path, String key) {
    return PLAIN.matcher(key).matches() ? path + '.' + key : path + '[' + Quoted.of(key) + ']';
  }

  public static String index(String path, int index) {
    return path + '[' + index + ']';
  }
}
