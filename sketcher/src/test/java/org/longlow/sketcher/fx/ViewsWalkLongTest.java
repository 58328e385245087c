package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Point;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.road.LeanFindings;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Slide;
import org.longlow.sketcher.desk.SlideWork;
import org.longlow.sketcher.picture.Aspect;
import org.longlow.sketcher.picture.Moved;
import org.longlow.svg.drawing.Mark;

/**
 * The card seen from ahead and from above: looked round, picked, leaned, steered, come back from.
 */
@Tag("long")
@Windowed
class ViewsWalkLongTest extends Walk {

  @BeforeEach
  void open() throws Exception {
    begin(Demos.layout("curlew"));
  }

  private Aspect aspect() {
    return hands.shown().options().aspect();
  }

  private SlideWork slides() {
    return hands.desk().slides();
  }

  private Slide slide() {
    hands.until("the way", () -> slides().slide().isPresent());
    return Hands.onFx(() -> slides().slide().get());
  }

  /** A place where that part is seen, on the screen. */
  private Point2D spot(String subject) {
    List<Geometry> areas = new ArrayList<>();
    hands.shown().drawing().layers().stream()
        .flatMap(l -> l.marks().stream())
        .filter(m -> m instanceof Mark.Shape s && s.style().fill() != null)
        .filter(m -> m.subject().equals(subject))
        .forEach(m -> areas.add(((Mark.Shape) m).geometry()));
    Point p = areas.get(areas.size() - 1).getInteriorPoint();
    return Hands.onFx(
        () -> {
          ViewFrame frame = hands.window().board().frame();
          return hands
              .window()
              .board()
              .localToScreen(frame.screenX(p.getX()), frame.screenY(p.getY()));
        });
  }

  @Test
  void aKeyGoesRoundAndPickingAThingPicksItInEach() {
    hands.press(KeyCode.X);
    assertThat(aspect()).isEqualTo(Aspect.FRONT);
    hands.clickAt(spot("part:frontWheel"));
    assertThat(hands.desk().options().chosen()).isEqualTo("part:frontWheel");
    hands.press(KeyCode.X);
    assertThat(aspect()).isEqualTo(Aspect.PLAN);
    assertThat(hands.desk().options().chosen()).isEqualTo("part:frontWheel");
    hands.clickAt(spot("part:tank"));
    assertThat(hands.desk().options().chosen()).isEqualTo("part:tank");
    assertThat(hands.shown().drawing().layers()).anyMatch(l -> l.id().equals("chosen"));
    // a drag moves nothing there: things are moved in the elevation
    var before = hands.layout();
    Point2D at = spot("part:tank");
    hands.dragAt(at, at.add(40, 0));
    hands.press(KeyCode.RIGHT);
    assertThat(hands.layout()).isSameAs(before);
    hands.click("aspect-side");
    assertThat(aspect()).isEqualTo(Aspect.SIDE);
    hands.press(KeyCode.SHORTCUT, KeyCode.F).write("front view").press(KeyCode.ENTER);
    assertThat(aspect()).isEqualTo(Aspect.FRONT);
    hands.press(KeyCode.G);
    assertThat(aspect()).as("what a hand does, it does in the elevation").isEqualTo(Aspect.SIDE);
    hands.press(KeyCode.X).press(KeyCode.X);
    assertThat(aspect()).as("seen from elsewhere the hand is empty").isEqualTo(Aspect.PLAN);
    assertThat(Hands.onFx(() -> hands.window().hands().hand())).isInstanceOf(Picking.class);
  }

  /** Whatever is asked for while a view is worked out is done on it in the end. */
  @Test
  void theTicketOfTheWholeMachineStandsAsideAndASignSaysWhatIsAwaited() {
    hands.press(KeyCode.ESCAPE).press(KeyCode.X);
    assertThat(aspect()).isEqualTo(Aspect.FRONT);
    assertThat(hands.desk().options().chosen()).isEmpty();
    assertThat(hands.node("bench-ticket", Node.class).isVisible()).isFalse();
    hands.press(KeyCode.SHORTCUT, KeyCode.DIGIT1);
    assertThat(hands.node("bench-ticket", Node.class).isVisible()).as("asked for").isTrue();
    hands.press(KeyCode.ESCAPE);
    assertThat(hands.node("view-awaited", Node.class).isVisible()).as("it is there").isFalse();
    assertThat(AwaitedView.words(Aspect.FRONT, Aspect.FRONT)).isEmpty();
    assertThat(AwaitedView.words(Aspect.SIDE, Aspect.PLAN))
        .contains("The plan is being worked out \u2026");
    Hands.onFx(
        () -> {
          // two keys before the first view is there
          hands.desk().look(o -> o.withAspect(o.aspect().next()));
          hands.desk().look(o -> o.withAspect(o.aspect().next()));
          return null;
        });
    hands.until("side again", () -> aspect() == Aspect.SIDE);
  }

  @Test
  void aFindingIsMarkedWhereItIsSeen() {
    hands.press(KeyCode.X);
    Finding touch =
        hands.shown().findings().stream()
            .filter(f -> f.kind().equals(LeanFindings.TOUCH) && f.across().isPresent())
            .findFirst()
            .orElseThrow();
    Hands.onFx(
        () -> {
          hands.desk().chooseFinding(touch.id());
          return null;
        });
    hands.settle();
    assertThat(hands.shown().isMarked(touch.id())).isTrue();
    PointMm at = hands.shown().onDrawing(touch);
    assertThat(at.x()).as("its left is at the right").isEqualTo(touch.across().getAsDouble());
    assertThat(at.z()).as("as high as it is").isGreaterThan(0);
  }

  @Test
  void itLeansFromAheadAndSteersFromAbove() {
    hands.press(KeyCode.X).press(KeyCode.V);
    Slide.Mark first = slide().sides(true, 1).get(0);
    Hands.onFx(
        () -> {
          slides().set(first.at());
          return null;
        });
    hands.settle();
    assertThat(aspect()).isEqualTo(Aspect.FRONT);
    PointMm touch = hands.shown().eye().page(first.where().orElseThrow(), first.yMm());
    assertThat(touch.z()).as("on the road").isCloseTo(0, within(0.01));
    hands.press(KeyCode.R);
    assertThat(aspect()).isEqualTo(Aspect.PLAN);
    assertThat(slide().from()).isEqualTo(-slide().to());
    hands.press(KeyCode.LEFT).press(KeyCode.LEFT);
    assertThat(hands.shown().options().moved().map(Moved::steerRad).orElse(0.0))
        .as("to the left")
        .isGreaterThan(0.02);
    assertThat(hands.node("slide-words", Label.class).getText())
        .startsWith("Steered ")
        .contains(" to the left. Meets first to the left: ");
    hands.press(KeyCode.ESCAPE);
    assertThat(aspect()).as("as it was seen before").isEqualTo(Aspect.FRONT);
    assertThat(hands.shown().options().moved()).isEqualTo(Optional.empty());
  }

  @Test
  void paperOffersTheViews() {
    hands.press(KeyCode.X).press(KeyCode.SHORTCUT, KeyCode.M).click("paper-drawing");
    ComboBox<?> views = hands.node("paper-views", ComboBox.class);
    assertThat(Hands.onFx(views::getValue)).isEqualTo("front view");
    assertThat(Hands.onFx(() -> views.getItems().size())).isEqualTo(5);
  }
}
