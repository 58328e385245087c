package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.stream.Collectors;
import java.util.stream.IntStream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.text.Text;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.json.LayoutReader;
import org.longlow.constraints.json.ReadResult;
import org.longlow.constraints.layout.Layout;

/** Many stances leave the machine its room, and names are shown as they are written. */
@Windowed
class ManyStancesWalkTest extends Walk {

  private static final int SECTIONS = 24;

  private static Layout machine() {
    String sections =
        IntStream.range(0, SECTIONS)
            .mapToObj(
                i ->
                    "\"hatch_%02d\": {\"parts\": [\"lid\"], \"pivot\": \"o\", \"angle\": \"9 deg\"}"
                        .formatted(i))
            .collect(Collectors.joining(", "));
    ReadResult read =
        LayoutReader.read(
            """
            {"longlow": 1, "name": "hatches",
             "pins": {"rear": {"at": [0, 300], "nailed": true}, "front": {"at": [1500, 300], "nailed": true},
               "o": {"at": [600, 700], "nailed": true}},
             "parts": {"w1": {"kind": "wheel", "end": "rear", "axle": "rear", "radius": 300, "width": 120},
               "w2": {"kind": "wheel", "end": "front", "axle": "front", "radius": 300, "width": 120},
               "lid": {"kind": "block", "frame": "o", "left": 9, "right": 9, "mass": 1,
                 "outline": {"points": [[0, 0], [200, 0], [200, 90]]}}},
             "sections": {%s},
             "crew": {"Ann_of_the_hill": {"sex": "female", "stature": 1640, "mass": 60}}}
            """
                .formatted(sections),
            null);
    assertThat(read).as(read.toString()).isInstanceOf(ReadResult.Read.class);
    return ((ReadResult.Read) read).layout();
  }

  private static String shown(Node button) {
    return button.lookupAll(".text").stream().map(t -> ((Text) t).getText()).findFirst().orElse("");
  }

  @Test
  void rowsAreScrolledAndNamesReadWhole() throws Exception {
    begin(machine());
    Scrolled rows = (Scrolled) Hands.onFx(() -> hands.window().lookup(".stance-rows"));
    double all = Hands.onFx(() -> rows.getContent().getBoundsInLocal().getHeight());
    assertThat(all).as("more than three rows").isGreaterThan(rows.getHeight() + 20);
    // a row is 24 px with 4 px between two, by the padding of a step
    assertThat(rows.getHeight()).isBetween(50.0, 90.0);

    hands.press(KeyCode.OPEN_BRACKET).press(KeyCode.OPEN_BRACKET);
    ToggleButton last =
        hands.node("stance-open-hatch-%02d".formatted(SECTIONS - 1), ToggleButton.class);
    hands.click("stance-as-drawn");
    hands.press(KeyCode.OPEN_BRACKET);
    assertThat(last.isSelected()).as("before the first is the last").isTrue();
    Bounds at = Hands.onFx(() -> rows.sceneToLocal(last.localToScene(last.getBoundsInLocal())));
    assertThat(at.getMinY()).isGreaterThanOrEqualTo(-1);
    assertThat(at.getMaxY()).isLessThanOrEqualTo(rows.getHeight() + 1);

    assertThat(shown(last)).isEqualTo("open hatch_%02d".formatted(SECTIONS - 1));
    assertThat(shown(hands.node("seat-Ann_of_the_hill", ToggleButton.class)))
        .isEqualTo("Ann_of_the_hill");
  }
}
