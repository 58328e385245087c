package org.longlow.constraints.suit;

import java.util.List;

/** Names that cannot be moved: one line each, saying why and what can. */
public final class UnknownNames extends IllegalArgumentException {
  private static final long serialVersionUID = 1L;

  private final transient List<String> lines;

  UnknownNames(List<String> lines) {
    super(String.join("\n", lines));
    this.lines = List.copyOf(lines);
  }

  /** Returns one line for each name. */
  public List<String> lines() {
    return lines;
  }
}
