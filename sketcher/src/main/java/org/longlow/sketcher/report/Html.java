package org.longlow.sketcher.report;

import java.util.List;
import org.longlow.svg.drawing.Lettering;
import org.longlow.svg.write.SharedOutlines;

/** Writes HTML; every text and attribute goes through {@link #escaped}. */
final class Html {

  /** The heading whose column is coloured by the kind of the row. */
  static final String VERDICT = "Verdict";

  private static final int FIGURE_LENGTH = 14;

  private final StringBuilder out = new StringBuilder(1 << 16);

  private final SharedOutlines outlines = new SharedOutlines();

  /** Returns the outlines that its pictures share. */
  SharedOutlines outlines() {
    return outlines;
  }

  /** Returns text that is safe between tags and inside quoted attributes. */
  static String escaped(String text) {
    StringBuilder s = new StringBuilder(text.length() + 16);
    text.codePoints()
        .forEach(
            c -> {
              switch (c) {
                case '&' -> s.append("&amp;");
                case '<' -> s.append("&lt;");
                case '>' -> s.append("&gt;");
                case '"' -> s.append("&quot;");
                case '\'' -> s.append("&#39;");
                default -> {
                  boolean control = c < ' ' && c != '\n' && c != '\t' || c == 0x7f;
                  boolean half = c >= 0xD800 && c <= 0xDFFF;
                  boolean turning = Lettering.turnsDirection(c);
                  s.appendCodePoint(control || half || turning ? 0xFFFD : c);
                }
              }
            });
    return s.toString();
  }

  /** Adds markup as it is; never with anything from a layout in it. */
  Html raw(String markup) {
    out.append(markup);
    return this;
  }

  Html text(String text) {
    out.append(escaped(text));
    return this;
  }

  /**
   * Adds an element with text.
   *
   * @param tag with attributes that are no user's words, such as {@code p class="note"}
   */
  Html element(String tag, String text) {
    String name = tag.contains(" ") ? tag.substring(0, tag.indexOf(' ')) : tag;
    out.append('<').append(tag).append('>').append(escaped(text));
    out.append("</").append(name).append(">\n");
    return this;
  }

  /**
   * Opens a table with a caption and column headings.
   *
   * @param kind its class
   * @param headings of the columns; the first column holds row headings
   */
  Html table(String kind, String caption, List<String> headings) {
    out.append("<table class=\"").append(escaped(kind)).append("\">\n");
    element("caption", caption);
    out.append("<thead><tr>");
    for (String h : headings) {
      out.append("<th scope=\"col\">").append(escaped(h)).append("</th>");
    }
    out.append("</tr></thead>\n<tbody>\n");
    return this;
  }

  /**
   * Adds a row; each cell repeats its heading for narrow screens.
   *
   * @param kind class of the row, may be empty
   */
  Html row(String kind, List<String> headings, List<String> cells) {
    out.append(kind.isEmpty() ? "<tr>" : "<tr class=\"" + escaped(kind) + "\">");
    for (int i = 0; i < cells.size(); i++) {
      String tag = i == 0 ? "th" : "td";
      out.append('<').append(tag).append(i == 0 ? " scope=\"row\"" : "");
      out.append(" data-heading=\"").append(escaped(headings.get(i))).append('"');
      if (headings.get(i).equals(VERDICT)) {
        out.append(" class=\"verdict\"");
      } else if (nothing(cells.get(i))) {
        out.append(" class=\"none\"");
      } else if (figure(cells.get(i))) {
        out.append(" class=\"figure\"");
      }
      out.append('>').append(escaped(minus(cells.get(i)))).append("</").append(tag).append('>');
    }
    out.append("</tr>\n");
    return this;
  }

  /** On a narrow screen, where a cell is a line, one that says nothing has none. */
  private static boolean nothing(String cell) {
    return cell.isEmpty() || cell.equals("-");
  }

  /** A short cell that starts with a figure is kept on one line. */
  private static boolean figure(String cell) {
    return cell.length() <= FIGURE_LENGTH
        && !cell.isEmpty()
        && (Character.isDigit(cell.charAt(0)) || negative(cell));
  }

  private static boolean negative(String cell) {
    return cell.length() > 1 && cell.charAt(0) == '-' && Character.isDigit(cell.charAt(1));
  }

  /** Paper has a true minus sign, and a dash where there is no figure. */
  private static String minus(String cell) {
    return cell.equals("-") ? "–" : negative(cell) ? "−" + cell.substring(1) : cell;
  }

  Html closeTable() {
    out.append("</tbody></table>\n");
    return this;
  }

  @Override
  public String toString() {
    return out.toString();
  }
}
