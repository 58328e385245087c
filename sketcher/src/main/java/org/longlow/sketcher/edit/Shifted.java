package org.longlow.sketcher.edit;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.longlow.constraints.formula.Formula;
import org.longlow.constraints.formula.Unit;

/** Lengths moved and turned about; what names measures goes on naming them. */
final class Shifted {

  private static final Pattern NEGATIVE = Pattern.compile("-\\((.*)\\)");

  private Shifted() {}

  /** Returns a length longer by so much. */
  static Formula by(Formula length, double mm) {
    if (mm == 0) {
      return length;
    }
    return length.names().isEmpty()
        ? Formula.of(length.evaluate(n -> 0) + mm, Unit.MM)
        : Formula.parse("(" + length.text() + ") + " + Formula.of(mm, Unit.MM).text());
  }

  /** Returns a quantity with the other sign. Twice gives the text that there was. */
  static Formula negative(Formula quantity) {
    String text = quantity.text().strip();
    if (text.matches("[0-9.][^-+*/()]*")) {
      return quantity.evaluate(n -> Double.NaN) == 0 ? quantity : Formula.parse("-" + text);
    }
    if (text.matches("-\\s*[0-9.][^-+*/()]*")) {
      return Formula.parse(text.substring(1).strip());
    }
    Matcher twice = NEGATIVE.matcher(text);
    return twice.matches() && isWhole(twice.group(1))
        ? Formula.parse(twice.group(1))
        : Formula.parse("-(" + text + ")");
  }

  /** Returns a place along a line, mirrored at {@code at}. Twice gives the text that there was. */
  static Formula mirrored(Formula x, double at) {
    if (x.names().isEmpty()) {
      double was = x.evaluate(n -> 0);
      return was == at ? x : Formula.of(2 * at - was, Unit.MM);
    }
    String before = Formula.of(2 * at, Unit.MM).text() + " - (";
    String text = x.text().strip();
    boolean twice = text.startsWith(before) && text.endsWith(")");
    String inner = twice ? text.substring(before.length(), text.length() - 1) : "";
    return twice && isWhole(inner) ? Formula.parse(inner) : Formula.parse(before + text + ")");
  }

  /** Returns whether brackets that are opened in a text are closed in it. */
  private static boolean isWhole(String text) {
    int open = 0;
    for (char c : text.toCharArray()) {
      open += c == '(' ? 1 : c == ')' ? -1 : 0;
      if (open < 0) {
        return false;
      }
    }
    return open == 0;
  }
}
