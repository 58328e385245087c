package org.longlow.constraints.gap;

import java.util.BitSet;

/**
 * Numbered segments by the columns and rows of a square that their boxes meet, so that few pairs
 * need be looked at for where they cross.
 */
final class Bins {

  private static final int COUNT = 64;

  private final double halfMm;
  private final double slackMm;
  private final BitSet[] columns = new BitSet[COUNT];
  private final BitSet[] rows = new BitSet[COUNT];

  /**
   * @param halfMm the square reaches so far to each side of no shift; what lies beyond counts to
   *     its outermost columns and rows
   * @param slackMm boxes nearer than this count as meeting
   */
  Bins(double halfMm, double slackMm) {
    this.halfMm = halfMm;
    this.slackMm = slackMm;
    for (int k = 0; k < COUNT; k++) {
      columns[k] = new BitSet();
      rows[k] = new BitSet();
    }
  }

  /** Returns the segments put in before that may meet this one, and puts it in as number k. */
  BitSet meeting(int k, double x0, double z0, double x1, double z1) {
    BitSet met = among(columns, k, x0, x1);
    met.and(among(rows, k, z0, z1));
    return met;
  }

  private BitSet among(BitSet[] bins, int k, double a, double b) {
    BitSet found = new BitSet();
    int to = bin(Math.max(a, b) + slackMm);
    for (int i = bin(Math.min(a, b) - slackMm); i <= to; i++) {
      found.or(bins[i]);
      bins[i].set(k);
    }
    return found;
  }

  private int bin(double mm) {
    return (int) Math.max(0, Math.min(COUNT - 1, (mm / halfMm + 1) / 2 * COUNT));
  }
}
