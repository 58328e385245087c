package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import javafx.geometry.Point2D;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.stand.Condition;
import org.longlow.demo.Demos;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.cli.Ran;
import org.longlow.sketcher.desk.Slide;
import org.longlow.sketcher.desk.SlideWork;

/** Travel and lean by pointer and keys: opened, moved, stopped where something touches, closed. */
@Windowed
class SlidesWalkTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    begin(Demos.layout("curlew"));
  }

  private SlideWork slides() {
    return hands.desk().slides();
  }

  private Slide slide() {
    hands.until("the way", () -> slides().slide().isPresent());
    return Hands.onFx(() -> slides().slide().get());
  }

  private double value() {
    return Hands.onFx(() -> slides().value());
  }

  private String words() {
    return Hands.onFx(() -> hands.node("slide-words", Label.class).getText());
  }

  @Test
  @Tag("long")
  void itLeansToTheFirstTouchAndOnWhenTakenUpAgain() {
    hands.press(KeyCode.V);
    Slide.Mark first = slide().sides(true, 1).get(0);
    Slider slider = hands.node("lean-deg", Slider.class);
    assertThat(Hands.onFx(slider::isFocused)).isTrue();
    Point2D place = hands.at(first.where().orElseThrow().x(), first.where().orElseThrow().z());
    hands.slide(slider.lookup(".thumb"), -75, 0);
    assertThat(value()).as("stopped").isCloseTo(first.at(), within(1e-6));
    assertThat(words()).contains(first.words()).contains("Leans");
    assertThat(hands.at(first.where().get().x(), first.where().get().z()))
        .as("the springs are pressed")
        .isNotEqualTo(place);
    hands.press(KeyCode.LEFT);
    assertThat(value()).isLessThan(first.at() - 1);
    hands.settle();
    double high = Hands.onFx(() -> hands.node("slide-words", Label.class).getMinHeight());
    assertThat(high).isGreaterThan(0);
    Hands.onFx(
        () -> {
          slides().set(-3);
          return null;
        });
    hands.settle();
    assertThat(Hands.onFx(() -> hands.node("slide-words", Label.class).getMinHeight()))
        .as("the card keeps its place")
        .isGreaterThanOrEqualTo(high);
    assertThat(lit()).as("leaned").isEmpty();
    hands.press(KeyCode.ESCAPE);
    assertThat(Hands.onFx(() -> slides().open())).isEmpty();
    assertThat(Hands.onFx(() -> hands.node("slide-words", Label.class).isVisible())).isFalse();
    assertThat(Hands.onFx(slider::isFocused)).as("the keyboard is back on the card").isFalse();
    assertThat(Hands.onFx(() -> hands.desk().options().moved())).isEmpty();
    assertThat(hands.desk().session().get().undoName()).isEmpty();
  }

  @Test
  @Tag("long")
  void theWheelsGoUpTogetherAndApart() {
    hands.press(KeyCode.SHORTCUT, KeyCode.F).write("wheels travel").press(KeyCode.ENTER);
    slide();
    double before = hands.shown().standing().get().frontTravelMm();
    assertThat(words()).startsWith("As laden, Ada: front ");
    assertThat(lit()).as("what is lit is what is shown").containsExactly("laden");
    hands.press(KeyCode.RIGHT).press(KeyCode.RIGHT);
    assertThat(lit()).as("it is laden no more").isEmpty();
    hands.press(KeyCode.END);
    assertThat(lit()).containsExactly("full bump");
    hands.press(KeyCode.HOME);
    assertThat(lit()).containsExactly("full droop");
    hands.click("travel").click("travel");
    slide();
    assertThat(lit()).as("put back").containsExactly("laden");
    hands.press(KeyCode.RIGHT).press(KeyCode.RIGHT);
    double front = hands.shown().standing().get().frontTravelMm();
    double rear = hands.shown().standing().get().rearTravelMm();
    assertThat(front).isGreaterThan(before + 2);
    assertThat(words()).startsWith("front ");
    hands.click("travel-rear");
    slide();
    hands.slide(hands.node("travel-share", Slider.class).lookup(".thumb"), 200, 0);
    assertThat(hands.shown().standing().get().frontTravelMm()).isCloseTo(front, within(1e-9));
    assertThat(hands.shown().standing().get().rearTravelMm()).isGreaterThan(rear + 2);
    assertThat(words()).contains("front").contains("rear").contains("nothing touches on the way");
    hands.click("travel");
    assertThat(Hands.onFx(() -> slides().open())).isEmpty();
    assertThat(hands.shown().standing().get().frontTravelMm()).isEqualTo(before);
  }

  /** The stances that are lit below the card. */
  private List<String> lit() {
    return Hands.onFx(
        () ->
            hands.window().lookupAll(".step").stream()
                .map(ToggleButton.class::cast)
                .filter(b -> b.getUserData() instanceof Condition && b.isSelected())
                .map(ToggleButton::getText)
                .toList());
  }

  @Test
  @Tag("long")
  void travelIsSaidInTheUnitsShown() throws Exception {
    hands.abandon();
    hands = Hands.at(folder.resolve("inches"), List.of(Demos.layout("curlew").withUnits(Units.IN)));
    hands.click("machine-curlew").press(KeyCode.W);
    slide();
    assertThat(words()).contains(" in, rear ").doesNotContain("mm");
  }

  @Test
  void withNobodyAboardItSaysThatAnotherStanceIsNeeded() {
    Path wheels = folder.resolve("wheels.json");
    Ran.of("new", "--wheels-only", "--out", wheels);
    Hands.onFx(
        () -> {
          hands.desk().files().open(wheels);
          return null;
        });
    hands.until(
        "wheels", () -> hands.desk().shown().filter(s -> s.layout().crew().isEmpty()).isPresent());
    hands.settle().press(KeyCode.W).settle();
    assertThat(words()).isEqualTo("Nobody rides it, so it is not laden: choose another stance.");
    hands.press(KeyCode.CLOSE_BRACKET);
    slide();
    assertThat(words()).isEqualTo("No wheel that is meant has any travel.");
  }
}
