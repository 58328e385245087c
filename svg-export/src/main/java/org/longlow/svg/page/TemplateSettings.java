package org.longlow.svg.page;

import java.util.Locale;
import java.util.Objects;
import java.util.Optional;

/**
 * How template sheets are made.
 *
 * @param paper sheet size
 * @param mayTurn whether the sheets may be turned by a quarter when that needs fewer of them
 * @param marginMm empty border all round, mm, in [0, 50]
 * @param overlapMm width of the band neighbours share, mm, in [5, 50]: it carries crosses and words
 * @param correction print correction
 * @param upWord what the upper side of the drawing is called, such as {@code up}
 * @param rightWord what the right side of the drawing is called, such as {@code forward}
 * @param lengths how lengths are written
 * @param cut whether its wide lines are cut by; else it is looked at and held against
 */
public record TemplateSettings(
    Paper paper,
    boolean mayTurn,
    double marginMm,
    double overlapMm,
    PrintCorrection correction,
    String upWord,
    String rightWord,
    SheetLengths lengths,
    boolean cut) {

  /** Smallest usable side of a sheet, mm: both bars, the notes and two bands must find room. */
  public static final double LEAST_USABLE_MM = 160;

  /** Height of the block of notes on every sheet, mm. */
  static final double NOTES_HEIGHT_MM = 36;

  public TemplateSettings {
    Objects.requireNonNull(paper, "paper of template sheets");
    Objects.requireNonNull(correction, "print correction of template sheets");
    Objects.requireNonNull(upWord, "word for the upper side");
    Objects.requireNonNull(rightWord, "word for the right side");
    Objects.requireNonNull(lengths, "how lengths are written");
    if (!(marginMm >= 0 && marginMm <= 50)) {
      throw new IllegalArgumentException("margin is " + marginMm + " mm; allowed: 0 to 50");
    }
    if (!(overlapMm >= 5 && overlapMm <= 50)) {
      throw new IllegalArgumentException("overlap is " + overlapMm + " mm; allowed: 5 to 50");
    }
    refusal(paper, marginMm, overlapMm)
        .ifPresent(
            why -> {
              throw new IllegalArgumentException(why);
            });
  }

  /** Returns why paper does not serve with the usual settings; empty if it does. */
  public static Optional<String> refusal(Paper paper) {
    return refusal(paper, Tiling.MARGIN_MM, Tiling.OVERLAP_MM);
  }

  private static Optional<String> refusal(Paper paper, double marginMm, double overlapMm) {
    double least = LEAST_USABLE_MM + 2 * marginMm + 2 * (overlapMm - 10);
    return Math.min(paper.widthMm(), paper.heightMm()) >= least
        ? Optional.empty()
        : Optional.of(
            String.format(
                Locale.ROOT,
                "paper %s of %s x %s mm is too small for template sheets: each side must be at"
                    + " least %s mm; take larger paper, such as a4",
                paper.name(),
                paper.widthMm(),
                paper.heightMm(),
                least));
  }

  /** Returns the usual settings: margin and overlap 10 mm, no correction, x forward and y up. */
  public static TemplateSettings on(Paper paper) {
    return new TemplateSettings(
        paper,
        true,
        Tiling.MARGIN_MM,
        Tiling.OVERLAP_MM,
        PrintCorrection.NONE,
        "up",
        "forward",
        SheetLengths.MM,
        true);
  }

  /** Returns a copy with other paper. */
  public TemplateSettings withPaper(Paper other, boolean turn) {
    return new TemplateSettings(
        other, turn, marginMm, overlapMm, correction, upWord, rightWord, lengths, cut);
  }

  /** Returns a copy with another print correction. */
  public TemplateSettings withCorrection(PrintCorrection other) {
    return new TemplateSettings(
        paper, mayTurn, marginMm, overlapMm, other, upWord, rightWord, lengths, cut);
  }

  /** Returns a copy with other words for the upper and the right side of the drawing. */
  public TemplateSettings withSides(String up, String right) {
    return new TemplateSettings(
        paper, mayTurn, marginMm, overlapMm, correction, up, right, lengths, cut);
  }

  /** Returns a copy that writes lengths otherwise. */
  public TemplateSettings withLengths(SheetLengths other) {
    return new TemplateSettings(
        paper, mayTurn, marginMm, overlapMm, correction, upWord, rightWord, other, cut);
  }

  /** Returns a copy for a drawing that nothing is cut by. */
  public TemplateSettings toLookAt() {
    return new TemplateSettings(
        paper, mayTurn, marginMm, overlapMm, correction, upWord, rightWord, lengths, false);
  }
}
