package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;

/** How large the window opens. */
class LonglowWindowTest {

  @Test
  void itNeverOpensLargerThanTheScreen() {
    assertThat(LonglowWindow.side(0, 1280, 1024)).isEqualTo(1024);
    assertThat(LonglowWindow.side(1900, 1280, 1024)).isEqualTo(1024);
  }

  @Test
  void itOpensAsItWasOrElseWithRoomRoundIt() {
    assertThat(LonglowWindow.side(1100, 1280, 2000)).isEqualTo(1100);
    assertThat(LonglowWindow.side(0, 1280, 1300)).isEqualTo(1280);
    assertThat(LonglowWindow.side(0, 1280, 2000)).isEqualTo(1840);
  }
}
