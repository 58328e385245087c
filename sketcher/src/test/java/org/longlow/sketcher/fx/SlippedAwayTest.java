package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import javafx.geometry.Point2D;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** A turn of the wheel just after a slip has moved from under the pointer. */
class SlippedAwayTest {

  private final Region slip = new Region();
  private final SlippedAway slipped = new SlippedAway(slip);

  private void lay(double x) {
    slipped.around(() -> slip.resizeRelocate(x, 0, 100, 100));
  }

  private void point(double x, double y) {
    Point2D at = new Point2D(x, y);
    slipped.pointed(Fingers.event(MouseEvent.MOUSE_MOVED, at, at, MouseButton.NONE, 0));
  }

  private boolean isSwallowed() {
    ScrollEvent turn =
        new ScrollEvent(
            ScrollEvent.SCROLL,
            0,
            0,
            0,
            0,
            false,
            false,
            false,
            false,
            false,
            false,
            0,
            40,
            0,
            40,
            ScrollEvent.HorizontalTextScrollUnits.NONE,
            0,
            ScrollEvent.VerticalTextScrollUnits.NONE,
            0,
            0,
            null);
    slipped.scrolled(turn);
    return turn.isConsumed();
  }

  @Test
  void isSwallowedUntilThePointerMoves() {
    lay(0);
    point(50, 50);
    assertThat(isSwallowed()).isFalse();
    lay(300);
    assertThat(isSwallowed()).isTrue();
    lay(300);
    point(50, 50);
    assertThat(isSwallowed()).as("nothing has moved").isTrue();
    point(51, 50);
    assertThat(isSwallowed()).isFalse();
  }

  @Test
  void isNotWhereTheSlipWasNotOrIsAgain() {
    lay(0);
    point(150, 50);
    lay(300);
    assertThat(isSwallowed()).isFalse();
    lay(100);
    lay(300);
    assertThat(isSwallowed()).isTrue();
    lay(100);
    assertThat(isSwallowed()).as("it is there again").isFalse();
  }
}
