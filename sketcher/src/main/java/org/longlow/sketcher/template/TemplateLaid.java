package org.longlow.sketcher.template;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.longlow.svg.drawing.Drawing;
import org.longlow.svg.page.LaidOut;
import org.longlow.svg.page.Tiling;

/**
 * A template that can be laid on paper at any turn.
 *
 * @param subject what is drawn
 * @param outline the line to cut, unturned, mm
 * @param steps everything else on it
 * @param text what it says of itself
 * @param turnRad how far it is turned about the origin, counter-clockwise
 * @param isBrief whether its words are few and small
 */
record TemplateLaid(
    String subject,
    Geometry outline,
    List<TemplateStep> steps,
    TemplateText text,
    double turnRad,
    boolean isBrief)
    implements LaidOut {

  @Override
  public Drawing on(Function<Envelope, Tiling> sheets) {
    return laying().on(sheets);
  }

  private TemplateLaying laying() {
    TemplateLaying laying = new TemplateLaying(subject, outline, text, turnRad, isBrief);
    steps.forEach(s -> s.on(laying));
    return laying;
  }

  @Override
  public Optional<Geometry> ink() {
    return Optional.of(laying().ink());
  }

  @Override
  public LaidOut turned(double rad) {
    return new TemplateLaid(subject, outline, steps, text, turnRad + rad, isBrief);
  }

  @Override
  public LaidOut brief() {
    return new TemplateLaid(subject, outline, steps, text.withoutGeneral(), turnRad, true);
  }
}
