package org.longlow.sketcher.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.demo.Demos;

/** States of a machine in commands: picked, refused, compared, drawn over each other. */
class VariantCommandsTest {

  @TempDir Path folder;
  private Path file;
  private String text;

  @BeforeEach
  void write() throws Exception {
    String plan = Demos.text("dunlin").strip();
    text =
        plan.substring(0, plan.lastIndexOf('}'))
            + """
            , "variants": {"heavy": {"measures": {}, "note": "as it is"}},
              "asBuilt": {"pins": {"frontAxle": ["1652.6 mm", "300 mm"]},
                          "frontLoad": "100 kg", "rearLoad": "100 kg"}}
            """;
    file = Files.writeString(folder.resolve("m.json"), text);
  }

  @Test
  void theMachineAsBuiltIsCheckedWithWhatWasMeasuredBesideThePlan() {
    Ran built = Ran.of("check", file, "--as-built", "--mends", 0);
    assertThat(built.out()).contains("planned").contains("1652.6 mm").contains("scales");
    assertThat(Ran.of("check", file).out())
        .doesNotContain("as-built")
        .doesNotContain("scales.machine");
    assertThat(Ran.of("check", file, "--as-built", "--mends", 0, "--json").err())
        .contains("--json has no mends; leave out --mends");
    assertThat(Ran.of("check", file, "--variant", "as-built", "--mends", 0).out())
        .isEqualTo(built.out());
    Ran inches = Ran.of("check", file, "--as-built", "--units", "in", "--mends", 0);
    assertThat(inches.out()).contains("65 1/16 in").doesNotContain("1652");
  }

  @Test
  void listsAreForTheStateAskedFor() throws Exception {
    Path plan = folder.resolve("plan");
    Path built = folder.resolve("built");
    assertThat(Ran.of("list", file, "--out", plan).code()).isLessThan(4);
    assertThat(Ran.of("list", file, "--out", built, "--as-built").code()).isLessThan(4);
    assertThat(Files.readString(built.resolve("weighing-01.svg")))
        .isNotEqualTo(Files.readString(plan.resolve("weighing-01.svg")));
  }

  @Test
  void aStateThatIsNotThereIsRefusedByName() throws Exception {
    Ran unknown = Ran.of("check", file, "--variant", "heavi");
    assertThat(unknown.code()).isEqualTo(2);
    assertThat(unknown.err()).contains("did you mean heavy?");
    Path bare = Files.writeString(folder.resolve("bare.json"), Demos.text("dunlin"));
    Ran nothing = Ran.of("draw", bare, "--as-built", "--out", folder.resolve("x.svg"));
    assertThat(nothing.code()).isEqualTo(2);
    assertThat(nothing.err()).contains("nothing was measured yet");
    assertThat(folder.resolve("x.svg")).doesNotExist();
    assertThat(Ran.of("compare", file).err()).contains("B is missing");
    assertThat(Ran.of("check", file, "--as-built", "--variant", "heavy").code()).isEqualTo(2);
  }

  @Test
  void aComparisonIsDrawnLightUnderDark() throws Exception {
    Path out = folder.resolve("both.svg");
    Ran compared = Ran.of("compare", file, "--as-built", "--out", out, "--date", "2026-01-02");
    assertThat(compared.out()).contains("light as before, dark as after").contains("baseline");
    String svg = Files.readString(out);
    assertThat(svg).contains("id=\"before\"").contains("id=\"after\"").contains("id=\"same\"");
    assertThat(svg.indexOf("id=\"before\"")).isLessThan(svg.indexOf("id=\"after\""));
    assertThat(svg).contains("Light: as planned. Dark: as-built.");
    assertThat(Ran.of("compare", file, "--variant", "heavy").out()).startsWith("nothing changed");
    assertThat(Files.readString(file)).isEqualTo(text);
  }
}
