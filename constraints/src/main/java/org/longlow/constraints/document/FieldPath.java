package org.longlow.constraints.document;

import java.util.regex.Pattern;
import org.longlow.constraints.words.Quoted;

/** Writes JSON paths. */
public final class FieldPath {

  private static final Pattern PLAIN = Pattern.compile("[\\p{L}_$][\\p{L}\\p{N}_$-]*");

  private FieldPath() {}

  public static String key(String path, String key) {
    return isPlain(key) ? path + '.' + key : path + '[' + Quoted.of(key) + ']';
  }

  /** Nearly all keys are ASCII, and a path is written for each field that is read. */
  private static boolean isPlain(String key) {
    for (int i = 0; i < key.length(); i++) {
      char c = key.charAt(i);
      if (c > '~') {
        return PLAIN.matcher(key).matches();
      }
      boolean first = c >= 'a' && c <= 'z' || c >= 'A' && c <= 'Z' || c == '_' || c == '$';
      if (!first && (i == 0 || !(c >= '0' && c <= '9' || c == '-'))) {
        return false;
      }
    }
    return !key.isEmpty();
  }

  public static String index(String path, int index) {
    return path + '[' + index + ']';
  }
}
