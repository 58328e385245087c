package org.longlow.constraints.machine.ride;

/** Which wheels drive a machine. */
public enum DrivenWheels {
  FRONT,
  REAR,
  BOTH
}
