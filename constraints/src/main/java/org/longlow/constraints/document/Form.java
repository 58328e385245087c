package org.longlow.constraints.document;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.longlow.constraints.formula.Dim;

/**
 * All that can be said of one thing of a layout, as its kind describes it: a row for each field,
 * said or not, in the order of files. What a row shows is typed by {@link Typing} at its path.
 *
 * @param name of the kind, such as rail
 * @param help one sentence on the kind
 */
public record Form(String name, String help, List<Row> rows) {

  /** How a field is filled in. */
  public enum Input {
    QUANTITY,
    TEXT,
    NUMBER,
    /** true or false. */
    SWITCH,
    /** One of the row's choices. */
    CHOICE,
    /** Nothing to fill in: rows of its own follow, one deeper. */
    HEADING,
    /**
     * The end of a list or group that takes more: of its choices, or where there are none like the
     * last.
     */
    MORE
  }

  /**
   * One field, or one place in it.
   *
   * @param path from the top by keys, names and indices
   * @param depth 0 for fields of the thing itself
   * @param label for people, in lower case
   * @param text as the user wrote it; empty where nothing is said
   * @param choices what can be picked; may be empty
   * @param usual what stands in where it is left out, in few words; may be empty
   * @param optional true if it may be left out
   * @param item true if it is an item of a list that can be without it
   * @param dim what a quantity measures, where only one thing may
   */
  public record Row(
      List<String> path,
      int depth,
      String label,
      String help,
      Input input,
      String text,
      List<String> choices,
      String usual,
      boolean optional,
      boolean item,
      Optional<Dim> dim) {}

  public Form {
    rows = List.copyOf(rows);
  }

  /** Returns a name in camel case as words. */
  public static String words(String name) {
    return name.replaceAll("([a-z])([A-Z0-9])", "$1 $2").toLowerCase(Locale.ROOT);
  }
}
