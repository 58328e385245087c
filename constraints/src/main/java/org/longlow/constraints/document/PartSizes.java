package org.longlow.constraints.document;

import static org.longlow.constraints.document.Type.LENGTH;

/** Ranges that sizes of parts lie in; that others are a slip of the unit is judgement. */
final class PartSizes {

  /** A size of a part. */
  static final Type.Quantity SIZE = LENGTH.atLeast(1);

  /** How thick a sheet, wall or board is. */
  static final Type.Quantity SHEET = LENGTH.atLeast(0.05);

  /** How far a part may reach to a side; that more is a slip of the unit is judgement. */
  static final Type.Quantity REACH = LENGTH.between(-5_000, 5_000);

  /** No road wheel is smaller, mm. */
  static final double LEAST_WHEEL_RADIUS_MM = 50;

  /** Of a wheel that is planned. */
  static final Type.Quantity WHEEL_RADIUS = LENGTH.atLeast(LEAST_WHEEL_RADIUS_MM);

  /** Of one that was measured; that no road wheel is larger is judgement. */
  static final Type.Quantity MEASURED_RADIUS = LENGTH.between(LEAST_WHEEL_RADIUS_MM, 2_000);

  private PartSizes() {}
}
