package org.longlow.constraints.document;

import java.util.List;
import java.util.Optional;
import org.longlow.constraints.layout.TitleEntries;

/** What drawings say in and beside their title block. */
final class TitleKinds {

  /** Judgement: more would leave the picture no room. */
  private static final int MOST_NOTES = 8;

  /** Judgement; a drawing shows the newest few. */
  private static final int MOST_REVISIONS = 100;

  static final Kind<TitleEntries.Revision> REVISION =
      Kind.of("revision", "A change of the drawing.", TitleKinds::revision);

  static final Kind<TitleEntries> TITLE_BLOCK =
      Kind.of(
          "titleBlock",
          "What drawings say beside their picture; what is not said stays empty on them.",
          TitleKinds::entries);

  private TitleKinds() {}

  /** Returns a revision to begin with, named after those that are there: A, B, then numbers. */
  static Optional<?> begun(Kind<?> kind, List<Object> there) {
    int n = there.size();
    String index = n < 26 ? String.valueOf((char) ('A' + n)) : Integer.toString(n + 1);
    return kind == REVISION
        ? Optional.of(new TitleEntries.Revision(index, "", ""))
        : Optional.empty();
  }

  private static TitleEntries.Revision revision(Source<TitleEntries.Revision> s) {
    return new TitleEntries.Revision(
        s.need(
            "index",
            Type.NAME,
            "a short name, such as B",
            TitleEntries.Revision::index,
            "Which state of the drawing it made, such as B."),
        s.text("date", TitleEntries.Revision::date, "When, such as 2026-03-01."),
        s.text("what", TitleEntries.Revision::what, "What was changed."));
  }

  private static TitleEntries entries(Source<TitleEntries> s) {
    return new TitleEntries(
        s.text("owner", TitleEntries::owner, "Whose machine it is."),
        s.text("drawnBy", TitleEntries::drawnBy, "Who drew it."),
        s.text("approvedBy", TitleEntries::approvedBy, "Who looked it over."),
        s.or(
            "notes",
            new Type.ListOf<>(Type.TEXT, 0, MOST_NOTES),
            List.of(),
            TitleEntries::notes,
            "Sentences printed on each drawing."),
        s.or(
            "revisions",
            new Type.ListOf<>(new Type.Nested<>(REVISION), 0, MOST_REVISIONS),
            List.of(),
            TitleEntries::revisions,
            "What was changed, the newest last."));
  }
}
