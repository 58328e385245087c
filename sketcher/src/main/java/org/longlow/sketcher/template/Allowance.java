package org.longlow.sketcher.template;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.longlow.constraints.layout.Part;
import org.longlow.constraints.shape.Places;

/**
 * How far the line to cut of a part lies outside its net outline: edges grow by it and holes
 * shrink.
 *
 * @param mm less than 0 inside
 */
public record Allowance(double mm) {

  /** Corners stay sharp up to so many times the allowance. */
  private static final double MITRE = 5;

  static final Allowance NONE = new Allowance(0);

  public static Allowance of(Part part, Places places) {
    return new Allowance(part.base().allowance().map(places::value).orElse(0.0));
  }

  /** Returns the line to cut; the net outline itself where nothing is added or nothing is left. */
  public Geometry cut(Geometry net) {
    if (mm == 0 || net.getDimension() < 2) {
      return net;
    }
    BufferParameters sharp =
        new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE);
    Geometry cut = BufferOp.bufferOp(net, mm, sharp);
    return cut.isEmpty() ? net : cut;
  }

  /** Marks the net outline where the line to cut is another. */
  void mark(TemplateSheet sheet, Geometry net) {
    if (mm != 0) {
      sheet.mark(net.getBoundary(), TemplateLine.NET);
    }
  }

  /** Returns what a template says of its line. */
  String line(TemplateFigures figures) {
    return mm == 0
        ? "line is the net outline, nothing added"
        : "line to cut lies "
            + figures.mm(Math.abs(mm))
            + (mm > 0
                ? " outside the net outline, holes are as much smaller"
                : " inside the net outline, holes are as much larger");
  }
}
