package org.longlow.constraints.law;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FieldOfViewTest {

  @Test
  void theLowestBoundThatALampIsBelowCounts() {
    FieldOfView field =
        FieldOfView.read("in 20, out 80, up 15, down 15, down 10 below 1500, down 5 below 750");
    assertThat(field.in()).isEqualTo(20);
    assertThat(field.out()).isEqualTo(80);
    assertThat(field.up()).isEqualTo(15);
    assertThat(field.down(1500)).isEqualTo(15);
    assertThat(field.down(1499.9)).isEqualTo(10);
    assertThat(field.down(750)).isEqualTo(10);
    assertThat(field.down(749.9)).isEqualTo(5);
  }

  @ParameterizedTest
  @ValueSource(strings = {"", "in", "in 20, aside 5", "in 20 below", "in twenty"})
  void whatIsNoFieldIsRefused(String text) {
    assertThatThrownBy(() -> FieldOfView.read(text)).isInstanceOf(IllegalArgumentException.class);
  }
}
