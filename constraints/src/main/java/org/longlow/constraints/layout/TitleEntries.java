package org.longlow.constraints.layout;

import java.util.List;

/**
 * What drawings of the machine say beside their picture. Any text may be empty.
 *
 * @param owner whose machine it is
 * @param drawnBy who drew it
 * @param approvedBy who looked it over
 * @param notes sentences printed on each drawing
 * @param revisions what was changed, the newest last
 */
public record TitleEntries(
    String owner, String drawnBy, String approvedBy, List<String> notes, List<Revision> revisions) {

  /** Says nothing. */
  public static final TitleEntries NONE = new TitleEntries("", "", "", List.of(), List.of());

  public TitleEntries {
    notes = List.copyOf(notes);
    revisions = List.copyOf(revisions);
  }

  /**
   * A change of the drawing.
   *
   * @param index which state that made, such as {@code B}
   * @param date when, such as {@code 2026-03-01}; may be empty
   * @param what was changed
   */
  public record Revision(String index, String date, String what) {}
}
