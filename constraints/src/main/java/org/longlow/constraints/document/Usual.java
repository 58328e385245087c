package org.longlow.constraints.document;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;

/**
 * What stands where a field says nothing, in few words: what its help says of that, else its usual
 * value where the description has one. Help says it by {@code … where absent}, {@code absent takes
 * …} (keeps, for, comes from), {@code instead of …} or {@code such as …}.
 */
public final class Usual {

  /** Said where nothing else is known. */
  static final String NOTHING = "not said";

  private static final List<Pattern> SAYINGS =
      List.of(
          Pattern.compile("(?:^|[;,] )([^;,]+?) where absent"),
          Pattern.compile("\\b[Aa]bsent (?:takes|keeps|for) ([^;,]+?)(?:\\.(?: |$)|[;,]|$)"),
          Pattern.compile("\\babsent it comes (from [^;,:]+?)(?: where\\b|[.;,:]|$)"),
          Pattern.compile("\\binstead of ([^;,]+?)(?:\\.(?: |$)|[;,]|$)"),
          Pattern.compile("\\b(such as [^;,]+?)(?:\\.(?: |$)|[;,]|$)"));

  private Usual() {}

  /** Returns it; empty for a field that has to be there. */
  public static String of(Field<?, ?> field) {
    if (field.required()) {
      return "";
    }
    // the value is that of the kind as described; help knows where it depends on the thing
    String said = said(field.help());
    String own = own(field.type(), field.orElse());
    return said.isEmpty() ? own.isEmpty() ? NOTHING : own : said;
  }

  private static String own(Type<?> type, Object value) {
    if (value instanceof Formula formula) {
      return formula.text();
    }
    if (value instanceof Number number) {
      return Range.number(number.doubleValue());
    }
    if (type instanceof Type.Word<?> word && value != null) {
      return word.of(value);
    }
    return value instanceof String text ? text : "";
  }

  /** Returns what a help sentence says of leaving a field out; empty if it says nothing. */
  static String said(String help) {
    for (Pattern saying : SAYINGS) {
      Matcher matcher = saying.matcher(help);
      if (matcher.find()) {
        return matcher.group(1);
      }
    }
    return "";
  }
}
