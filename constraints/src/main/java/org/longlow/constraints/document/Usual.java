package org.longlow.constraints.document;

import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;

/**
 * What stands where a field says nothing, in few words: its usual value where the description has
 * one, else what its help says of that. Help says it by {@code … where absent}, {@code absent takes
 * …} (keeps, for, comes from), {@code instead of …} or {@code such as …}.
 */
final class Usual {

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
  static String of(Field<?, ?> field) {
    if (field.required()) {
      return "";
    }
    String own = own(field.type(), field.orElse());
    return own.isEmpty() ? said(field.help()) : own;
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

  /** Returns what a help sentence says of leaving a field out. */
  static String said(String help) {
    for (Pattern saying : SAYINGS) {
      Matcher matcher = saying.matcher(help);
      if (matcher.find()) {
        return matcher.group(1);
      }
    }
    return NOTHING;
  }
}
