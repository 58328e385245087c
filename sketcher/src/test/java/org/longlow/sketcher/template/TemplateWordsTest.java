package org.longlow.sketcher.template;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

class TemplateWordsTest {
  @Test
  void longNameOfAFormerStillMakesANameForAFile() {
    String file = TemplateWords.fileName("x".repeat(59) + " bulkhead ".repeat(180));

    assertThat(file).isEqualTo("x".repeat(59));
    assertThat(TemplateWords.fileName("Rear bulkhead")).isEqualTo("rear-bulkhead");
  }
}
