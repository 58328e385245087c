package org.longlow.svg.page;

import java.util.List;
import java.util.Objects;

/**
 * What the title block of a drawing says: the data fields of ISO 7200:2004 that a single workshop
 * needs, as plain text. Any field may be empty; none is read from a clock.
 *
 * @param owner legal owner
 * @param number identification number, 16 characters in ISO 7200
 * @param date date of issue, such as {@code 2026-03-01}
 * @param sheet sheet number, such as {@code 1/2}
 * @param title title, 25 characters in ISO 7200
 * @param supplement supplementary title
 * @param creator who drew it
 * @param approval who approved it
 * @param documentType such as {@code elevation}
 * @param units in which lengths are written, such as {@code mm}
 * @param revisions what was changed, the newest last
 */
public record TitleBlock(
    String owner,
    String number,
    String date,
    String sheet,
    String title,
    String supplement,
    String creator,
    String approval,
    String documentType,
    String units,
    List<Revision> revisions) {

  /**
   * A change of the drawing.
   *
   * @param index such as {@code B}
   * @param date such as {@code 2026-03-01}; may be empty
   * @param what was changed
   */
  public record Revision(String index, String date, String what) {}

  public TitleBlock {
    revisions = List.copyOf(revisions);
    for (String field :
        new String[] {
          owner, number, date, sheet, title, supplement, creator, approval, documentType, units
        }) {
      Objects.requireNonNull(field, "field of a title block (may be empty)");
    }
  }

  /** Returns a block with title, number and date, sheet 1/1 of an elevation, the rest empty. */
  public static TitleBlock of(String title, String number, String date) {
    return new TitleBlock("", number, date, "1/1", title, "", "", "", "elevation", "mm", List.of());
  }

  /** Returns a copy with a supplementary title. */
  public TitleBlock withSupplement(String text) {
    return new TitleBlock(
        owner, number, date, sheet, title, text, creator, approval, documentType, units, revisions);
  }

  /** Returns a copy of a drawing of another type. */
  public TitleBlock withDocumentType(String text) {
    return new TitleBlock(
        owner, number, date, sheet, title, supplement, creator, approval, text, units, revisions);
  }

  /** Whether lengths are written in inches. */
  boolean isInInches() {
    return units.equals("in");
  }

  /** Returns a copy of a drawing whose lengths are written in other units. */
  public TitleBlock withUnits(String word) {
    return new TitleBlock(
        owner,
        number,
        date,
        sheet,
        title,
        supplement,
        creator,
        approval,
        documentType,
        word,
        revisions);
  }

  /** Returns a copy that says whose it is, who drew and who approved it. */
  public TitleBlock withPeople(String owns, String drew, String approved) {
    return new TitleBlock(
        owns,
        number,
        date,
        sheet,
        title,
        supplement,
        drew,
        approved,
        documentType,
        units,
        revisions);
  }

  /** Returns a copy with these changes, the newest last. */
  public TitleBlock withRevisions(List<Revision> all) {
    return new TitleBlock(
        owner, number, date, sheet, title, supplement, creator, approval, documentType, units, all);
  }

  /** Returns which state of the drawing this is; empty if it was never changed. */
  String revision() {
    return revisions.isEmpty() ? "" : revisions.get(revisions.size() - 1).index();
  }
}
