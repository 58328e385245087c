package org.longlow.sketcher.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** In which order offers are listed while better ones come. */
class MendsTest {

  @Test
  void whatIsListedKeepsItsPlaceUnderThePointer() {
    List<String> first = Mends.keepingPlaces(List.of(), List.of("raise", "lower"));
    assertThat(first).containsExactly("raise", "lower");
    List<String> better = Mends.keepingPlaces(first, List.of("turn", "lower", "raise"));
    assertThat(better).as("the better one comes below").containsExactly("raise", "lower", "turn");
    assertThat(Mends.keepingPlaces(better, List.of("turn", "move", "lower")))
        .as("what was withdrawn leaves its place")
        .containsExactly("lower", "turn", "move");
  }
}
