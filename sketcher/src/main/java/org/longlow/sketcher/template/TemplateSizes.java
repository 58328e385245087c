package org.longlow.sketcher.template;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.locationtech.jts.geom.Envelope;
import org.longlow.constraints.layout.CushionPart;
import org.longlow.constraints.shape.AngleFlat;
import org.longlow.constraints.shape.FormerCuts;
import org.longlow.constraints.shape.PartShape;
import org.longlow.constraints.shape.Places;
import org.longlow.constraints.shape.Unrolled;
import org.longlow.constraints.study.Study;
import org.longlow.rider.geom.OutOfRange;
import org.longlow.svg.page.TemplateSettings;
import org.longlow.svg.page.TemplateSheets;

/** How many sheets templates will take, told from the boxes of parts before anything is drawn. */
public final class TemplateSizes {

  /** More sheets than this in one go are refused: a slip of a digit rather than a machine. */
  static final int MOST_SHEETS = 3_000;

  private TemplateSizes() {}

  /**
   * Lets pass templates that somebody may want to glue together.
   *
   * @param parts names; empty takes every part that a shop makes
   * @throws OutOfRange if a part, or all of them together, need too many sheets
   */
  public static void check(Study study, Set<String> parts, TemplateSettings settings) {
    double all = 0;
    for (PartShape shape : study.shapes().values()) {
      boolean links = parts.isEmpty() && LinkTemplates.has(shape.part());
      if (!links && !Templates.wanted(shape, parts)) {
        continue;
      }
      for (Envelope box :
          boxes(shape, study.placed().places(), new TemplateFigures(study.layout().units()))) {
        TemplateSheets.refusal(shape.part().name(), box, settings)
            .ifPresent(
                why -> {
                  throw new OutOfRange(why);
                });
        all += TemplateSheets.count(box, settings);
      }
    }
    if (all > MOST_SHEETS) {
      throw new OutOfRange(
          String.format(
              Locale.ROOT,
              "all templates together would need up to %.0f sheets; allowed: %d. Check the sizes of"
                  + " the parts, make some of them at a time or take larger paper",
              all,
              MOST_SHEETS));
    }
  }

  /** Returns the boxes of a part's templates; a board and a layer are about as long as its side. */
  private static List<Envelope> boxes(PartShape shape, Places places, TemplateFigures figures) {
    Envelope side = shape.outline().getEnvelopeInternal();
    List<Envelope> boxes = new ArrayList<>(List.of(side));
    if (shape.part() instanceof CushionPart cushion) {
      double length = Math.hypot(side.getWidth(), side.getHeight());
      double breadth = Math.max(0, shape.leftMm() + shape.rightMm());
      for (int i = 0; i <= cushion.layers().size(); i++) {
        boxes.add(new Envelope(0, length, 0, breadth));
      }
      double flaps = 2 * new CushionCover(cushion, places, figures).flapMm();
      boxes.add(new Envelope(0, length + flaps, 0, breadth + flaps));
    }
    Unrolled.of(shape.part(), places).stream()
        .flatMap(u -> u.patterns().stream())
        .forEach(p -> boxes.add(p.outline().getEnvelopeInternal()));
    AngleFlat.of(shape.part(), places)
        .ifPresent(flat -> boxes.add(flat.within().getEnvelopeInternal()));
    FormerCuts.of(shape.part(), places)
        .forEach(cut -> boxes.add(cut.board().getEnvelopeInternal()));
    return boxes;
  }
}
