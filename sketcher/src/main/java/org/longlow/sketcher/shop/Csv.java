package org.longlow.sketcher.shop;

import java.util.List;
import java.util.stream.Collectors;
import org.longlow.constraints.words.OneLine;

/**
 * Comma separated values after RFC 4180: lines end with CR and LF, words with a comma, a quote or a
 * space at an end stand in quotes, quotes in them are doubled.
 *
 * <p>Spreadsheets take words that begin with =, +, - or @ for a formula: such words get an
 * apostrophe before them, which spreadsheets take for the mark of plain text.
 */
public final class Csv {

  private static final String FORMULA = "=+-@\t\r";

  private Csv() {}

  /** Returns a whole file of cells that are ready. */
  public static String of(List<List<String>> lines) {
    return lines.stream().map(l -> String.join(",", l) + "\r\n").collect(Collectors.joining());
  }

  /** Returns a cell of words, whatever is in them. */
  public static String words(String text) {
    String plain = OneLine.of(text);
    // behind spaces too, for some programs take these away first
    String inner = plain.strip();
    boolean formula = !inner.isEmpty() && FORMULA.indexOf(inner.charAt(0)) >= 0;
    String safe = formula ? "'" + plain : plain;
    boolean quoted = safe.contains(",") || safe.contains("\"") || !safe.equals(safe.strip());
    return quoted ? '"' + safe.replace("\"", "\"\"") + '"' : safe;
  }
}
