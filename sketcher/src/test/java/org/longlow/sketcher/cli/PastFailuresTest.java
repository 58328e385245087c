package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Inputs that once ended badly, each with the exit code and the words it must end with. */
class PastFailuresTest {

  @TempDir Path folder;

  static Stream<String> index() throws IOException, URISyntaxException {
    List<String> lines = Files.readAllLines(inputs().resolve("index.txt"));
    assertThat(lines).hasSizeGreaterThan(15);
    return lines.stream().filter(l -> !l.startsWith("#"));
  }

  private static Path inputs() throws URISyntaxException {
    return Path.of(
            PastFailuresTest.class.getResource("/org/longlow/sketcher/failures/index.txt").toURI())
        .getParent();
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("index")
  void endsAsItShould(String line) throws Exception {
    String[] fields = line.split(" \\| ", 3);
    if (fields[0].contains("/dev/")) {
      assumeThat(Files.exists(Path.of("/dev/zero"))).isTrue();
    }
    String in = inputs().toString();
    Object[] args =
        Arrays.stream(fields[0].split(" "))
            .map(a -> a.startsWith("OUT") ? folder + a.substring(3) : a)
            .map(a -> a.startsWith("IN") ? in + a.substring(2) : a)
            .map(a -> a.startsWith("@IN") ? "@" + in + a.substring(3) : a)
            .toArray();
    Ran ran = Ran.of(args);
    String said = ran.said();
    assertThat(said).contains(fields[2]).doesNotContain("internal error", "Exception");
    assertThat(said.chars().filter(c -> c != '\n' && c != '\r' && c != '\t'))
        .noneMatch(c -> Character.isISOControl(c) || Character.getType(c) == Character.FORMAT);
    assertThat(fields[1].split(",")).contains(String.valueOf(ran.code()));
    if (ran.code() == ExitCodes.BAD_INPUT) {
      assertThat(ran.err().lines()).allMatch(l -> l.startsWith("longlow: "));
      try (Stream<Path> left = Files.list(folder)) {
        assertThat(left).isEmpty();
      }
    }
  }
}
