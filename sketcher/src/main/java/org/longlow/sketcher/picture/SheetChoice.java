package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Frame;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.RevisionTable;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.SheetSpace;
import org.longlow.svg.page.TitleBlock;

/**
 * Finds the scale at which a picture goes on a framed sheet.
 *
 * @param what what is to fit, such as "the machine of 2710 x 1100 mm"
 * @param several whether that is several things
 * @param least the picture is at least so large, real mm
 * @param details how much may be dimensioned on it, the most first
 * @param worthIt how many times larger it must come out for some dimensions to be left off, at
 *     least 1
 * @param picture draws it
 */
record SheetChoice(
    Paper paper,
    TitleBlock title,
    String what,
    boolean several,
    Envelope least,
    List<Detail> details,
    double worthIt,
    Picture picture) {

  /** More than the step from 1:10 to 1:20, less than that from 1:20 to 1:50. */
  static final double MUCH_LARGER = 2.2;

  /** A picture at real size, lettered for a scale. */
  interface Picture {
    /**
     * Returns it.
     *
     * @param denominator N of the scale 1:N
     * @param detail how much is dimensioned
     */
    Drawing at(double denominator, Detail detail);
  }

  /**
   * Returns the sheet at the largest scale of {@link Scale#ANY} that fits, the paper turned
   * whichever way gives the larger one; not larger where that is not worth the dimensions it costs.
   *
   * @throws OutOfRange if it fits at no scale
   */
  DimensionedElevation.Sheet largest() {
    DimensionedElevation.Sheet best = null;
    for (Detail detail : details) {
      double above = best == null ? 0 : worthIt * best.scale().factor();
      best = largest(List.of(detail), above).orElse(best);
    }
    if (best == null) {
      throw new OutOfRange(
          what
              + (several ? " fit on " : " fits on ")
              + paper.name()
              + " at no scale; take larger paper");
    }
    return best;
  }

  /**
   * Returns the sheet at a given scale, with as many dimensions as fit.
   *
   * @throws OutOfRange if it does not fit; the message names the largest scale that does
   */
  DimensionedElevation.Sheet at(Scale scale) {
    return at(details, scale)
        .orElseThrow(
            () ->
                new OutOfRange(
                    what
                        + (several ? " do not fit on " : " does not fit on ")
                        + paper.name()
                        + " at "
                        + scale
                        + "; take "
                        + largest(details, 0).map(s -> s.scale() + " or ").orElse("")
                        + "larger paper"));
  }

  private Optional<DimensionedElevation.Sheet> largest(List<Detail> any, double above) {
    return Scale.ANY.stream()
        .filter(scale -> scale.paper() <= scale.real() && scale.factor() > above)
        .flatMap(scale -> at(any, scale).stream())
        .findFirst();
  }

  private Optional<DimensionedElevation.Sheet> at(List<Detail> any, Scale scale) {
    return any.stream().flatMap(detail -> at(detail, scale).stream()).findFirst();
  }

  /** Returns the sheet at a scale, the paper turned so that it fits; empty if it does not. */
  private Optional<DimensionedElevation.Sheet> at(Detail detail, Scale scale) {
    if (paper.roll()) {
      return onRoll(picture.at(scale.denominator(), detail), scale);
    }
    for (Paper turned : List.of(paper.landscape(), paper.portrait())) {
      if (!SheetSpace.serves(turned)) {
        continue;
      }
      Envelope space = RevisionTable.pictureSpace(turned, title);
      if (!fits(least, space, scale.factor())) {
        continue;
      }
      Drawing drawing = picture.at(scale.denominator(), detail);
      if (fits(drawing.scaled(scale.factor()).paperBoundsMm(), space, 1)) {
        return Optional.of(
            new DimensionedElevation.Sheet(Frame.sheet(turned, title, drawing, scale), scale));
      }
    }
    return Optional.empty();
  }

  private static boolean fits(Envelope box, Envelope space, double factor) {
    return box.getWidth() * factor <= space.getWidth()
        && box.getHeight() * factor <= space.getHeight();
  }

  /** Returns the sheet cut from a roll, its length along the picture; empty if it is too low. */
  private Optional<DimensionedElevation.Sheet> onRoll(Drawing drawing, Scale scale) {
    Envelope box = drawing.scaled(scale.factor()).paperBoundsMm();
    double length = Math.ceil(SheetSpace.longFor(box.getWidth()));
    if (length > Paper.LONGEST_MM) {
      return Optional.empty();
    }
    String name = String.format(Locale.ROOT, "%s cut to %.0f mm", paper.name(), length);
    Paper piece = new Paper(name, length, paper.widthMm());
    return SheetSpace.serves(piece) && fits(box, RevisionTable.pictureSpace(piece, title), 1)
        ? Optional.of(
            new DimensionedElevation.Sheet(Frame.sheet(piece, title, drawing, scale), scale))
        : Optional.empty();
  }
}
