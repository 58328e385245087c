package org.longlow.constraints.check.finding;

import org.longlow.rider.words.Words;

/** Care about what is held to a published text that nobody had before them: it never passes. */
public final class MemoryCare {

  private MemoryCare() {}

  /** Returns a finding that asks for care where it would pass by memory alone. */
  public static Finding held(Finding f) {
    return f.verdict() == Verdict.PASS && f.basis().stream().anyMatch(Basis::doubted)
        ? f.withVerdict(Verdict.CAUTION)
            .withText(Words.of(f.words(), " That is judged by a source known from memory only."))
        : f;
  }
}
