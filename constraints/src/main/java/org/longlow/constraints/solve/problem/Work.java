package org.longlow.constraints.solve.problem;

/**
 * Counts what a search costs, so that it ends after the same effort on any machine.
 *
 * <p>One unit is about one evaluation of a closed-form relation with its slopes, or {@link
 * #PRODUCTS} products of numbers. Not safe for several threads; each search has its own.
 */
public final class Work {
  /** Products of numbers that count as one unit. */
  static final int PRODUCTS = 256;

  /** A value of a costly relation: a part shaped or a person seated anew serves several rows. */
  public static final int COSTLY_VALUE = 150;

  /** As {@link #COSTLY_VALUE}, with slopes. */
  public static final int COSTLY_SLOPES = 600;

  private final long allowed;
  private long done;

  /**
   * @param allowed units, &gt; 0
   */
  public Work(long allowed) {
    this.allowed = allowed;
  }

  /** One without bound, where nobody counts. */
  public static Work unbounded() {
    return new Work(Long.MAX_VALUE);
  }

  public void add(long units) {
    done += units;
  }

  /** Adds products of numbers. */
  public void addProducts(long products) {
    done += products / PRODUCTS + 1;
  }

  public long done() {
    return done;
  }

  /** Whether no more than a share of what is allowed has been done. */
  public boolean isWithin(double share) {
    return done <= share * allowed;
  }

  /** Whether more than what is allowed has been done. */
  public boolean isSpent() {
    return done > allowed;
  }
}
