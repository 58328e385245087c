package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import org.junit.jupiter.api.Test;

class ProgressLineTest {

  @Test
  void theLineIsWrittenOverItselfAndWipedAtTheEnd() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream terminal = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    try (ProgressLine line = new ProgressLine(terminal)) {
      line.show("refining", 1, 4);
      line.show("refining", 2, 4);
    }
    String text = bytes.toString(StandardCharsets.UTF_8);
    assertThat(text).contains("refining: 1 of 4").contains("refining: 2 of 4");
    assertThat(text).doesNotContain("\n").endsWith("\r\u001b[K");
  }

  @Test
  void whatIsSoonDoneIsNotTold() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream terminal = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    try (ProgressLine line = new ProgressLine(terminal).after(Duration.ofDays(1))) {
      line.show("looking", 1, 4);
    }
    assertThat(bytes.size()).isZero();
    try (ProgressLine line = new ProgressLine(terminal).after(Duration.ZERO)) {
      line.show("looking", 1, 4);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8)).contains("looking: 1 of 4");
  }

  @Test
  void nothingIsSaidWhereThereIsNoTerminal() {
    try (ProgressLine line = new ProgressLine(null)) {
      line.show("refining", 1, 4);
    }
    // the build's own errors go to a file or pipe
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream terminal = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    new ProgressLine(terminal).close();
    assertThat(bytes.size()).isZero();
  }

  /** A pipe gets whole lines, few of them, and nothing to wipe. */
  @Test
  void aPipeIsToldALineNowAndThen() {
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    PrintStream pipe = new PrintStream(bytes, true, StandardCharsets.UTF_8);
    try (ProgressLine line = ProgressLine.lines(pipe, Duration.ofDays(1), Duration.ZERO)) {
      line.show("judging", 1, 4);
    }
    assertThat(bytes.size()).isZero();
    try (ProgressLine line = ProgressLine.lines(pipe, Duration.ZERO, Duration.ofDays(1))) {
      line.show("judging", 2, 4);
      line.show("judging", 3, 4);
    }
    try (ProgressLine line = ProgressLine.lines(pipe, Duration.ZERO, Duration.ZERO)) {
      line.show("judging", 3, 4);
      line.show("judging", 4, 4);
    }
    assertThat(bytes.toString(StandardCharsets.UTF_8).lines())
        .containsExactly(
            "longlow: judging: 2 of 4", "longlow: judging: 3 of 4", "longlow: judging: 4 of 4");
  }
}
