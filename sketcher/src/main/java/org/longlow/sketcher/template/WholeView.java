package org.longlow.sketcher.template;

import java.util.Optional;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Pictures;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;

/**
 * The whole machine at full size, seen from one side: to hang on the wall, to hold tubes against.
 */
public final class WholeView {

  private WholeView() {}

  /**
   * Returns it, in black, its parts named.
   *
   * @param options who is shown, in which stance, and from where
   * @throws OutOfRange if it needs far too many sheets, or there is nothing to see
   */
  public static NamedDrawing of(Study study, PictureOptions options, TemplateSettings settings) {
    Aspect aspect = options.aspect();
    Drawing drawing =
        SheetInk.BLACK.on(Pictures.of(study, options.withDenominator(1).withNames(true)));
    if (drawing.boundsMm().isNull()) {
      throw new OutOfRange("the machine has nothing to be seen in the " + aspect.says());
    }
    TemplateSheets.refusal("the whole " + aspect.says(), drawing.paperBoundsMm(), settings)
        .ifPresent(
            why -> {
              throw new OutOfRange(why);
            });
    TemplateFigures figures = new TemplateFigures(study.layout().units());
    return new NamedDrawing(
        "whole-" + aspect.word(),
        "Whole " + aspect.says(),
        "",
        aspect == Aspect.PLAN ? "left" : "up",
        aspect == Aspect.FRONT ? "left" : "forward",
        sheets -> drawing,
        figures.sheets(),
        Optional.empty());
  }
}
