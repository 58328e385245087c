package org.longlow.constraints.words;

import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One and several of the same, as English has them. */
public final class Counted {

  private static final Pattern HISSING = Pattern.compile("(.*(?:ch|sh|ss|x))es");

  private Counted() {}

  /** Returns how many there are, such as {@code 1 sheet} or {@code 3 boxes}. */
  public static String of(long n, String one) {
    return n + " " + (n == 1 ? one : many(one));
  }

  private static String many(String one) {
    if (one.endsWith("person")) {
      return one.substring(0, one.length() - "person".length()) + "people";
    }
    boolean hisses = HISSING.matcher(one + "es").matches();
    return one + (hisses ? "es" : "s");
  }

  /** Returns what one of several is called: a touch of touches, a layer of layers. */
  public static String one(String many) {
    Matcher hissing = HISSING.matcher(many);
    if (hissing.matches()) {
      return hissing.group(1);
    }
    if (many.endsWith("bodies")) {
      return many.substring(0, many.length() - "ies".length()) + "y";
    }
    return many.endsWith("s") ? many.substring(0, many.length() - 1) : many;
  }
}
