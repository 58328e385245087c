package org.longlow.sketcher.app;

import java.util.ArrayList;
import java.util.List;
import org.longlow.constraints.words.Counted;

/**
 * What paper a part takes.
 *
 * @param sheets of its own
 * @param shared how many of its templates lie on sheets that several parts share
 * @param figures how many of its pieces are given by figures instead
 */
public record PartPaper(int sheets, int shared, int figures) {

  static final PartPaper NONE = new PartPaper(0, 0, 0);

  PartPaper plus(PartPaper other) {
    return new PartPaper(sheets + other.sheets, shared + other.shared, figures + other.figures);
  }

  /** Returns it in few words, such as {@code 2 sheets + shared}. */
  public String words() {
    List<String> words = new ArrayList<>();
    if (sheets > 0) {
      words.add(Counted.of(sheets, "sheet"));
    }
    if (shared > 0) {
      words.add(sheets > 0 ? "shared" : "shared sheet");
    }
    if (figures > 0) {
      words.add("figures");
    }
    return String.join(" + ", words);
  }
}
