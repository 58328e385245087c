package org.longlow.constraints.document;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.layout.Layout;

/**
 * What is wrong with a layout beyond syntax: ranges, units, references and whatever must hold
 * between fields. The same for files, edits and callers from Java.
 */
public final class LayoutFaults {

  private LayoutFaults() {}

  /**
   * The answer.
   *
   * @param layout the layout with every quantity in the dimension of its field, so that a bare 24
   *     means degrees where an angle is asked for; sound only if there is no fault
   * @param faults in the order of the document
   * @param notes remarks that do not stop it, such as a measure that nothing uses
   */
  public record Verdict(Layout layout, List<Fault> faults, List<String> notes) {}

  /** Returns the faults of {@code layout}; none if it is sound. */
  public static List<Fault> of(Layout layout) {
    return verdict(layout, Tracer.NONE).faults();
  }

  /** Judges a layout that was put together in Java, such as by an edit. */
  public static Verdict verdict(Layout layout, Tracer tracer) {
    return verdict(layout, tracer, new Faults(), null);
  }

  /**
   * Judges a layout.
   *
   * @param layout entries that could not be read are null
   * @param faults those found so far
   * @param written how the file wrote it; null where it comes from no file
   */
  public static Verdict verdict(Layout layout, Tracer tracer, Faults faults, Written written) {
    Checking checking = new Checking(layout, tracer, faults, written);
    Layout plan = checking.layout();
    Layout fitted = faults.isEmpty() ? new VariedFaults(plan, tracer, faults).fitted() : plan;
    List<String> notes = new ArrayList<>(checking.notes());
    if (faults.isEmpty()) {
      notes.addAll(VariedFaults.notes(plan));
    }
    return new Verdict(fitted, faults.list(), notes);
  }
}
