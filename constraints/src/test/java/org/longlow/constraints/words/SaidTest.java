package org.longlow.constraints.words;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A kind is said beside a name that does not tell it, and only there. */
class SaidTest {

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "lid | cowl | lid, cowl | lid (cowl)",
        "swingarm | swingarm | swingarm | swingarm",
        "frontWheel | wheel | frontWheel | frontWheel",
        "Ada, hold | hold | Ada, hold | Ada, hold",
        "Ada on passenger | hold | Ada on passenger, hold | Ada on passenger (hold)",
        "standard | stand | standard, stand | standard (stand)",
        "rail 2 | rail | rail 2 | rail 2",
        "fog lamp | fog-lamp | fog lamp | fog lamp",
        "fog | fog-lamp | fog, fog-lamp | fog (fog-lamp)",
      })
  void onceAndNotTwice(String name, String kind, String with, String in) {
    assertThat(Said.with(name, kind)).isEqualTo(with);
    assertThat(Said.in(name, kind)).isEqualTo(in);
  }
}
