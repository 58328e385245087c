package org.longlow.constraints.words;

import java.util.List;
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

  /** Returns the word for one where there is one, else that for several, such as is and are. */
  public static String either(long n, String one, String several) {
    return n == 1 ? one : several;
  }

  /** Returns them with commas between and an and before the last. */
  public static String listed(List<String> all) {
    int last = all.size() - 1;
    return last < 1
        ? String.join("", all)
        : String.join(", ", all.subList(0, last)) + " and " + all.get(last);
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
    return many.endsWith("s") && !many.endsWith("ss") ? many.substring(0, many.length() - 1) : many;
  }
}
