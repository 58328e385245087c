package org.longlow.constraints.document;

import org.longlow.constraints.words.OneLine;

/**
 * One thing wrong with a file.
 *
 * @param path where, as a JSON path such as {@code $.parts.pan.layers[1].thickness}
 * @param value the value found there as JSON, shortened; empty if there is none
 * @param message what is wrong and what is allowed
 * @param remedy what to do
 */
public record Fault(String path, String value, String message, String remedy) {

  /** Returns the fault on one line, whatever it quotes. */
  public String line() {
    StringBuilder line = new StringBuilder(path);
    if (!value.isEmpty()) {
      line.append(" = ").append(value);
    }
    line.append(": ").append(message);
    if (!remedy.isEmpty()) {
      line.append("; ").append(remedy);
    }
    return OneLine.of(line.toString());
  }
}
