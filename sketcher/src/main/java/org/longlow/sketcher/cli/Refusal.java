package org.longlow.sketcher.cli;

import java.util.List;

/** Input that a command cannot work with: one line a fault, exit code 2. */
final class Refusal extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient List<String> lines;

  Refusal(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  Refusal(String line) {
    this(List.of(line));
  }

  List<String> lines() {
    return lines;
  }
}
