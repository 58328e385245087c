package org.longlow.constraints.check;

import java.util.Locale;

/** How a finding came out; the order is from worst to best. */
public enum Verdict {
  FAIL,
  CAUTION,
  PASS,
  NOT_APPLICABLE;

  /** The word in JSON, such as {@code not-applicable}. */
  public String word() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }
}
