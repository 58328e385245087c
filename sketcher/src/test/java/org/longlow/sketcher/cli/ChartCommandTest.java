package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.demo.Demos;

/** The chart of balance by command. */
class ChartCommandTest {

  @TempDir Path folder;

  @Test
  void itIsDrawnAndSmallChangesAreToldBesideIt() throws IOException {
    Demos.copy("curlew", folder);
    Path file = folder.resolve("curlew.json");
    Path out = folder.resolve("balance.svg");
    Ran ran = Ran.of("chart", file, "--out", out, "--units", "in");
    assertThat(ran.code()).isEqualTo(ExitCodes.PASS);
    assertThat(ran.out())
        .contains("as it is", "more rake", "1.18 in more trail", "rear wheel 6.6 lb heavier")
        .contains("mph", "no tyre slip", "drawn with Tam: " + out);
    assertThat(Files.readString(out)).contains("<svg", "Hands off, with Tam", "mph");
    assertThat(Ran.of("chart", file, "--out", folder.resolve("balance.txt")).code())
        .isEqualTo(ExitCodes.BAD_INPUT);
  }

  @Test
  void whyThereIsNoneIsSaid() throws IOException {
    Path file = folder.resolve("bare.json");
    Files.writeString(
        file,
        """
        {"longlow": 1, "name": "bare", "pins": {"rear": [0, 300], "front": [1600, 300]}, "parts": {
          "back": {"kind": "wheel", "end": "rear", "axle": "rear", "tyre": "150/60 R17"},
          "fore": {"kind": "wheel", "end": "front", "axle": "front", "tyre": "110/80-16"}}}
        """);
    Ran ran = Ran.of("chart", file, "--out", folder.resolve("b.svg"));
    assertThat(ran.code()).isEqualTo(ExitCodes.BAD_INPUT);
    assertThat(ran.err()).contains("not drawn: ", "needs two wheels with a mass");
    assertThat(folder.resolve("b.svg")).doesNotExist();
  }
}
