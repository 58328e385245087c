package org.longlow.constraints.machine.chassis;

import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * What a tyre carries by the load index behind its size: one table for all tyres (ISO 4000-1, ETRTO
 * Standards Manual, UN R75 annex 2). 43 to 90 checked in a tyre shop's published table; the others
 * from memory.
 */
public final class LoadIndex {

  /** The least index of the table. */
  public static final int LEAST = 20;

  /** The greatest. */
  public static final int MOST = 100;

  /** From {@link #LEAST} on, kg. */
  private static final double[] KG = {
    80, 82.5, 85, 87.5, 90, 92.5, 95, 97.5, 100, 103, //
    106, 109, 112, 115, 118, 121, 125, 128, 132, 136, //
    140, 145, 150, 155, 160, 165, 170, 175, 180, 185, //
    190, 195, 200, 206, 212, 218, 224, 230, 236, 243, //
    250, 257, 265, 272, 280, 290, 300, 307, 315, 325, //
    335, 345, 355, 365, 375, 387, 400, 412, 425, 437, //
    450, 462, 475, 487, 500, 515, 530, 545, 560, 580, //
    600, 615, 630, 650, 670, 690, 710, 730, 750, 775, //
    800
  };

  private LoadIndex() {}

  /** Returns the load at the tyre's full pressure, kg; empty outside the table. */
  public static OptionalDouble kg(int index) {
    return index < LEAST || index > MOST
        ? OptionalDouble.empty()
        : OptionalDouble.of(KG[index - LEAST]);
  }

  /** Returns the least index of the table that carries so much, kg; empty where none does. */
  public static OptionalInt carrying(double kg) {
    for (int index = LEAST; index <= MOST; index++) {
      if (KG[index - LEAST] >= kg) {
        return OptionalInt.of(index);
      }
    }
    return OptionalInt.empty();
  }
}
