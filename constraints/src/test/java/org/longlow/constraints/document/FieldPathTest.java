package org.longlow.constraints.document;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Keys stand bare in a path where they are names, else in brackets. */
class FieldPathTest {

  @ParameterizedTest
  @ValueSource(strings = {"a", "Z9", "_x", "$schema", "side-stand", "größe", "é2"})
  void namesStandBare(String key) {
    assertThat(FieldPath.key("$.pins", key)).isEqualTo("$.pins." + key);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "9a", "-a", "a b", "a.b", "a/b", "a[0]", "a~", "a\n", "é b", "€"})
  void allElseStandsInBrackets(String key) {
    String quoted = key.replace("\n", "\\n");
    assertThat(FieldPath.key("$.pins", key)).isEqualTo("$.pins[\"" + quoted + "\"]");
  }
}
