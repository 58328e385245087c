package org.longlow.sketcher.picture;

import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.Frame;
import org.longlow.svg.page.Paper;
import org.longlow.svg.page.Scale;
import org.longlow.svg.page.SheetSpace;
import org.longlow.svg.page.TitleBlock;

/**
 * Finds the scale at which a picture goes on a framed sheet.
 *
 * @param what what is to fit, such as "the machine of 2710 x 1100 mm"
 * @param least the picture is at least so large, real mm
 * @param picture draws it
 */
record SheetChoice(Paper paper, TitleBlock title, String what, Envelope least, Picture picture) {

  /**
   * How much larger the picture must come out for the lesser dimensions to be left off; more than
   * the step from 1:10 to 1:20, less than that from 1:20 to 1:50.
   */
  private static final double WORTH_IT = 2.2;

  /** A picture at real size, lettered for a scale. */
  interface Picture {
    /**
     * Returns it.
     *
     * @param denominator N of the scale 1:N
     * @param full whether lesser dimensions are on it too
     */
    Drawing at(double denominator, boolean full);
  }

  /**
   * Returns the sheet at the largest preferred scale (ISO 5455) that fits, the paper turned
   * whichever way gives the larger one.
   *
   * @throws OutOfRange if it fits at no scale
   */
  DimensionedElevation.Sheet largest() {
    Optional<DimensionedElevation.Sheet> full = largest(true, 0);
    double larger = full.map(s -> WORTH_IT * s.scale().factor()).orElse(0.0);
    Optional<DimensionedElevation.Sheet> main = largest(false, larger);
    return main.or(() -> full)
        .orElseThrow(
            () ->
                new OutOfRange(
                    what + " fits on " + paper.name() + " at no scale; take larger paper"));
  }

  /**
   * Returns the sheet at a given scale.
   *
   * @throws OutOfRange if it does not fit; the message names a scale that does
   */
  DimensionedElevation.Sheet at(Scale scale) {
    return at(true, scale)
        .or(() -> at(false, scale))
        .orElseThrow(
            () ->
                new OutOfRange(
                    what
                        + " does not fit on "
                        + paper.name()
                        + " at "
                        + scale
                        + "; take "
                        + largest().scale()
                        + " or larger paper"));
  }

  private Optional<DimensionedElevation.Sheet> largest(boolean full, double above) {
    return Scale.PREFERRED.stream()
        .filter(scale -> scale.paper() <= scale.real() && scale.factor() > above)
        .flatMap(scale -> at(full, scale).stream())
        .findFirst();
  }

  /** Returns the sheet at a scale, the paper turned so that it fits; empty if it does not. */
  private Optional<DimensionedElevation.Sheet> at(boolean full, Scale scale) {
    for (Paper turned : List.of(paper.landscape(), paper.portrait())) {
      if (!SheetSpace.serves(turned)) {
        continue;
      }
      Envelope space = SheetSpace.pictureSpace(turned);
      if (!fits(least, space, scale.factor())) {
        continue;
      }
      Drawing drawing = picture.at(scale.denominator(), full);
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
}
