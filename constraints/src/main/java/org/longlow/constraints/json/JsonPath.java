package org.longlow.constraints.json;

import java.util.regex.Pattern;

/** Writes JSON paths. */
final class JsonPath {

  private static final Pattern PLAIN = Pattern.compile("[\\p{L}_$][\\p{L}\\p{N}_$-]*");

  private JsonPath() {}

  static String key(String path, String key) {
    return PLAIN.matcher(key).matches() ? path + '.' + key : path + '[' + Json.quoted(key) + ']';
  }

  static String index(String path, int index) {
    return path + '[' + index + ']';
  }
}
