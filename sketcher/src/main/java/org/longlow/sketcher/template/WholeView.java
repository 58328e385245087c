package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.PictureLayer;
import org.longlow.sketcher.picture.PictureOptions;
import org.longlow.sketcher.picture.Pictures;
import org.longlow.sketcher.picture.SheetInk;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.drawing.Layer;
import org.longlow.svg.drawing.Mark;
import org.longlow.svg.drawing.Planar;
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
        alone(SheetInk.BLACK.on(Pictures.of(study, options.withDenominator(1).withNames(true))));
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

  /** Returns a picture whose road and sight line need no paper that the machine does not. */
  private static Drawing alone(Drawing picture) {
    Envelope box =
        new Drawing("", picture.layers().stream().filter(l -> !runsOn(l)).toList()).boundsMm();
    Envelope all = picture.boundsMm();
    Geometry kept = Planar.rectangle(box.getMinX(), all.getMinY(), box.getMaxX(), all.getMaxY());
    return new Drawing(
        picture.title(), picture.layers().stream().map(l -> runsOn(l) ? cut(l, kept) : l).toList());
  }

  private static boolean runsOn(Layer layer) {
    return layer.id().equals(PictureLayer.GROUND.id())
        || layer.id().equals(PictureLayer.SIGHT.id());
  }

  private static Layer cut(Layer layer, Geometry kept) {
    List<Mark> marks = new ArrayList<>();
    for (Mark mark : layer.marks()) {
      if (mark instanceof Mark.Shape s && s.geometry().intersects(kept)) {
        marks.add(new Mark.Shape(s.subject(), s.geometry().intersection(kept), s.style()));
      }
    }
    return new Layer(layer.id(), layer.title(), marks);
  }
}
