package org.longlow.constraints.disk;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WindowsTest {

  @ParameterizedTest
  @ValueSource(
      strings = {
        "con",
        "CON",
        "Con.svg",
        "nul.tar.gz",
        "PRN",
        "aux.",
        "com1",
        "COM9.pdf",
        "LPT1",
        "con .svg",
        "x.",
        "x ",
        "sheet. ",
        "two\nlines.json",
        "tab\t.svg"
      })
  void devicesAndEndsThatGetLost(String name) {
    assertThat(Windows.refuses(name)).isTrue();
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "cone",
        "con-a4.pdf",
        "icon.svg",
        "com.svg",
        "com10",
        "lpt",
        "nullam",
        "x.con",
        ""
      })
  void allOthers(String name) {
    assertThat(Windows.refuses(name)).isFalse();
  }
}
