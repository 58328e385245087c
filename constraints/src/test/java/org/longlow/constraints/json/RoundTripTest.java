package org.longlow.constraints.json;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;

class RoundTripTest {

  @Test
  void plankIsReadWhole() {
    Layout plank = Plank.layout();
    assertThat(plank.name()).isEqualTo("plank");
    assertThat(plank.measures()).hasSize(7);
    assertThat(plank.pins()).hasSize(28);
    assertThat(plank.parts()).hasSize(18);
    assertThat(plank.crew().get("Jon").stature().evaluate(n -> 0)).isEqualTo(5.9 * 304.8);
  }

  @Test
  void writingAndReadingGivesAnEqualLayout() {
    Layout plank = Plank.layout();
    String text = LayoutWriter.toJson(plank);
    assertThat(Plank.layout(text)).isEqualTo(plank);
    assertThat(LayoutWriter.toJson(Plank.layout(text))).isEqualTo(text);
  }
}
