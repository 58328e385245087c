package org.longlow.constraints.fit;

import org.longlow.constraints.check.finding.Say;
import org.longlow.rider.words.Words;

/**
 * A share of people, with what it may be in the whole population: the 95 % interval of Wilson 1927
 * (from memory), which stays in [0, 1] and says something also where nobody or everybody counts.
 *
 * @param count how many of them
 * @param of how many there are
 */
public record Share(int count, int of) {

  /** The normal deviate that 95 % lie within. */
  private static final double Z = 1.959963984540054;

  public Share {
    if (count < 0 || count > of) {
      throw new IllegalArgumentException(count + " of " + of + " is no share");
    }
  }

  /** Returns the share, in [0, 1]; NaN of nobody. */
  public double value() {
    return (double) count / of;
  }

  /** Returns the least that it may well be; 0 of nobody. */
  public double low() {
    return of == 0 || count == 0 ? 0 : middle() - half();
  }

  /** Returns the most that it may well be; 1 of nobody. */
  public double high() {
    return of == 0 || count == of ? 1 : middle() + half();
  }

  private double middle() {
    return (count + Z * Z / 2) / (of + Z * Z);
  }

  private double half() {
    double p = value();
    return Z / (of + Z * Z) * Math.sqrt(of * p * (1 - p) + Z * Z / 4);
  }

  /** Returns it in words, such as {@code 42.1 % (95 %: 41.1 to 43.1 %)}. */
  public Words words() {
    return of == 0
        ? Words.of("nobody asked")
        : Words.of(
            Say.percent(value()), " (95 %: ", Say.percent(low()), " to ", Say.percent(high()), ")");
  }
}
