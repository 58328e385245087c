package org.longlow.svg.page;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.buffer.BufferOp;
import org.locationtech.jts.operation.buffer.BufferParameters;

/**
 * Allowance for what a cutting process takes away. Kerf and edge angle must be tested on the
 * machine used.
 */
public final class Kerf {

  /** Kerfs above this are not a cut, mm; plasma over 100 A takes 3 to 6. */
  public static final double WIDEST_MM = 10;

  private Kerf() {}

  /**
   * Returns the path of the middle of the cut round a part: outlines grow and holes shrink by half
   * the kerf. Corners stay sharp up to a mitre of five times the offset.
   *
   * @param part polygons, mm
   * @param kerfMm width taken away, mm, in [0, {@value #WIDEST_MM}]
   */
  public static Geometry outsideOffset(Geometry part, double kerfMm) {
    if (!(kerfMm >= 0 && kerfMm <= WIDEST_MM)) {
      throw new IllegalArgumentException("kerf is " + kerfMm + " mm; allowed: 0 to " + WIDEST_MM);
    }
    if (part.getDimension() < 2) {
      throw new IllegalArgumentException(
          "kerf needs a closed outline, got " + part.getGeometryType());
    }
    if (kerfMm == 0) {
      return part;
    }
    BufferParameters sharp =
        new BufferParameters(16, BufferParameters.CAP_FLAT, BufferParameters.JOIN_MITRE, 5);
    return BufferOp.bufferOp(part, kerfMm / 2, sharp);
  }
}
