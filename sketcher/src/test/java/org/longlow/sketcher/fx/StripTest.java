package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import org.junit.jupiter.api.Test;

/** Things side by side that go on in a further row. */
class StripTest {

  private static Region thing(double least, double liked, double high) {
    Region thing = new Region();
    thing.setMinWidth(least);
    thing.setPrefSize(liked, high);
    return thing;
  }

  private static Strip laid(double width, Region... things) {
    Strip strip = new Strip(10, things);
    strip.resize(width, strip.prefHeight(width));
    strip.layout();
    return strip;
  }

  @Test
  void whatFitsStandsInOneRowAndWhatGrowsTakesTheRest() {
    Region name = thing(50, 100, 20);
    Region gap = thing(0, 0, 0);
    HBox.setHgrow(gap, Priority.ALWAYS);
    Region button = thing(80, 80, 30);
    Strip strip = laid(400, name, gap, button);
    assertThat(strip.getHeight()).isEqualTo(30);
    assertThat(name.getWidth()).isEqualTo(100);
    assertThat(gap.getWidth()).isEqualTo(400 - 100 - 80 - 20);
    assertThat(button.getLayoutX()).isEqualTo(320);
    assertThat(name.getLayoutY()).as("in the middle of the row").isEqualTo(5);
  }

  @Test
  void whatMayGivesWayBeforeARowIsBegun() {
    Region name = thing(50, 100, 20);
    Region button = thing(80, 80, 30);
    Strip strip = laid(150, name, button);
    assertThat(strip.getHeight()).isEqualTo(30);
    assertThat(name.getWidth()).isEqualTo(60);
    assertThat(button.getLayoutX()).isEqualTo(70);
  }

  /** 200 px are left: the words want 100 more than their least, the name 300. */
  @Test
  void whatGivesWayFirstLeavesOthersWhatTheyLikeWhileHalfIsLeft() {
    for (double liked : new double[] {160, 170}) {
      Region name = thing(50, 350, 20);
      Region words = thing(60, liked, 20);
      Strip.givesWayFirst(name);
      laid(320, name, words);
      if (liked == 160) {
        assertThat(words.getWidth()).isEqualTo(160);
        assertThat(name.getWidth()).isEqualTo(150);
      } else {
        // 200 of 300 + 110 px are shared out
        assertThat(words.getWidth()).isEqualTo(Math.ceil(60 + 110 * 200 / 410.0));
        assertThat(name.getWidth()).isEqualTo(Math.ceil(50 + 300 * 200 / 410.0));
      }
    }
  }

  /** A button whose words come and go: 40 px are kept for them, and what it needs is shared out. */
  @Test
  void whatChangesItsWordsEndsNoRow() {
    double[] highs = new double[3];
    double[] likes = {10, 40, 200};
    for (int i = 0; i < likes.length; i++) {
      Region changing = thing(40, likes[i], 20);
      Region last = thing(80, 80, 20);
      Strip strip = laid(130, changing, last);
      highs[i] = strip.getHeight();
      assertThat(changing.getWidth()).isEqualTo(Math.min(likes[i], 40));
      assertThat(last.getLayoutX() + last.getWidth()).isLessThanOrEqualTo(130);
    }
    assertThat(highs).containsOnly(20);
    double[] narrow = new double[2];
    for (int i = 0; i < narrow.length; i++) {
      narrow[i] = laid(129, thing(40, likes[i], 20), thing(80, 80, 20)).getHeight();
    }
    assertThat(narrow).as("one pixel less").containsOnly(50);
  }

  @Test
  void whatHasNoRoomGoesBelowAndNothingIsOutside() {
    List<Region> things = List.of(thing(50, 100, 20), thing(80, 80, 30), thing(300, 300, 40));
    Strip strip = laid(139, things.toArray(new Region[0]));
    assertThat(things.get(1).getLayoutY()).isEqualTo(30);
    assertThat(things.get(2).getLayoutY()).isEqualTo(70);
    assertThat(strip.getHeight()).isEqualTo(20 + 30 + 40 + 2 * 10);
    things.forEach(t -> assertThat(t.getLayoutX() + t.getWidth()).isLessThanOrEqualTo(139));
  }

  /** What grows would leave 100 px beside it empty, which the last thing has room in. */
  @Test
  void whatGrowsAndHasNoRoomGoesBelowAllOthers() {
    Region first = thing(120, 120, 20);
    Region grows = thing(100, 150, 30);
    HBox.setHgrow(grows, Priority.ALWAYS);
    Region last = thing(80, 80, 40);
    Strip strip = laid(219, first, grows, last);
    assertThat(last.getLayoutX()).isEqualTo(130);
    assertThat(last.getLayoutY()).isZero();
    assertThat(grows.getLayoutY()).isEqualTo(50);
    assertThat(grows.getWidth()).as("all the width").isEqualTo(219);
    assertThat(strip.getHeight()).isEqualTo(80);
    laid(330, first, grows, last);
    assertThat(grows.getLayoutX()).as("where there is room").isEqualTo(130);
    assertThat(last.getLayoutX()).isEqualTo(250);
  }

  /** A gap that grows has no room of its own and begins no row. */
  @Test
  void anEmptyGapIsNoRow() {
    Region gap = thing(0, 0, 0);
    HBox.setHgrow(gap, Priority.ALWAYS);
    Strip strip = laid(125, thing(120, 120, 20), gap, thing(50, 50, 20));
    assertThat(strip.getHeight()).isEqualTo(50);
  }

  @Test
  void rowsAreNoFartherApartThanNeedBe() {
    Region low = thing(80, 80, 20);
    Strip strip = new Strip(30, thing(80, 80, 20), low);
    strip.resize(100, strip.prefHeight(100));
    strip.layout();
    assertThat(low.getLayoutY()).isEqualTo(30);
    assertThat(strip.getHeight()).isEqualTo(50);
  }
}
