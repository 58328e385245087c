package org.longlow.sketcher.edit;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.document.Entries;
import org.longlow.constraints.document.Form.Input;
import org.longlow.constraints.formula.Dim;
import org.longlow.constraints.formula.Unit;
import org.longlow.rider.words.Decimals;
import org.longlow.rider.words.Units;

/**
 * What lies on the bench: a picked thing with its quantities, in groups.
 *
 * @param subject such as {@code part:tank} or {@code pin:gripPin}; empty for the whole machine
 * @param title its name
 * @param kind what it is, in a word or two
 * @param note the user's note on it, may be empty
 * @param groups its quantities
 */
public record Bench(String subject, String title, String kind, String note, List<Group> groups) {

  /** Quantities under one heading. */
  public record Group(String heading, List<Row> rows) {
    public Group {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One quantity, or anything else that is said of a thing.
   *
   * @param target what typing changes
   * @param label its name
   * @param text value or formula as the user wrote it
   * @param value what it is worth now, with unit; empty where text says it already
   * @param note for people, may be empty
   * @param measure true if it is a measure and can be freed
   * @param free true if it is a measure that the solver finds
   * @param input how it is filled in
   * @param choices what can be picked, where it is picked
   * @param usual what stands in where nothing is said, in few words; may be empty
   * @param drops true if it is an item of a list that can be dropped
   */
  public record Row(
      Target target,
      String label,
      String text,
      String value,
      String note,
      boolean measure,
      boolean free,
      Input input,
      List<String> choices,
      String usual,
      boolean drops) {

    /** A quantity that is no measure. */
    Row(Target target, String label, String text, String value, String note) {
      this(target, label, text, value, note, false, false, Input.QUANTITY, List.of(), "", false);
    }

    Row leaving(String instead) {
      return new Row(
          target, label, text, value, note, measure, free, input, choices, instead, drops);
    }

    Row dropping(boolean on) {
      return new Row(target, label, text, value, note, measure, free, input, choices, usual, on);
    }
  }

  public Bench {
    groups = List.copyOf(groups);
  }

  /** Returns the thing that lies on the bench, as the document has it; empty for the whole. */
  public Optional<Entries.Entry> entry() {
    return Subjects.entry(subject);
  }

  /** Says what something is worth: in inches as a shop reads it. */
  static String worth(double internal, Dim dim, Units units) {
    return units == Units.IN && dim.equals(Dim.LENGTH)
        ? units.inField(internal)
        : figure(internal, dim, units);
  }

  /** Writes a value in its edge unit, to a tenth of a millimetre or degree. */
  public static String figure(double internal, Dim dim, Units units) {
    if (units == Units.IN && dim.equals(Dim.LENGTH)) {
      return units.given(internal);
    }
    Unit unit = Unit.of(dim, units);
    double shown = unit.fromInternal(internal);
    int digits = dim.equals(Dim.NUMBER) ? 3 : dim.equals(Dim.ANGLE) ? 2 : 1;
    String text = Decimals.upTo(digits, shown);
    return unit == Unit.NONE ? text : text + " " + unit.symbol();
  }
}
