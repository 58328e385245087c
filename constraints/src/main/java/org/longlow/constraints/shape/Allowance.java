package org.longlow.constraints.shape;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;
import org.longlow.constraints.layout.Part;

/**
 * How far the line to cut of a part lies outside its net outline: edges grow by it and holes
 * shrink.
 *
 * @param mm less than 0 inside
 */
public record Allowance(double mm) {

  /** Corners stay sharp up to so many times the allowance. */
  private static final double MITRE = 5;

  public static final Allowance NONE = new Allowance(0);

  public static Allowance of(Part part, Places places) {
    return new Allowance(part.base().allowance().map(places::value).orElse(0.0));
  }

  /** Returns the line to cut; the net outline itself where nothing is added or nothing is left. */
  public Geometry cut(Geometry net) {
    if (mm == 0 || net.getDimension() < 2) {
      return net;
    }
    Geometry cut = offset(net);
    return cut.isEmpty() ? net : cut;
  }

  private Geometry offset(Geometry net) {
    BufferParameters sharp =
        new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, MITRE);
    return BufferOp.bufferOp(net, mm, sharp);
  }

  /** Returns whether the line to cut has every piece and every hole of the net outline. */
  public boolean leavesAll(Geometry net) {
    return mm == 0
        || net.getDimension() < 2
        || rings(offset(net)) == rings(net) && pieces(offset(net)) == pieces(net);
  }

  private static int pieces(Geometry area) {
    return area.isEmpty() ? 0 : area.getNumGeometries();
  }

  private static int rings(Geometry area) {
    return area.isEmpty() ? 0 : area.getBoundary().getNumGeometries();
  }
}
