package org.longlow.sketcher.fx;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.longlow.constraints.layout.Layout;
import org.longlow.demo.Demos;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Wren;

/** Whatever is dragged is put back by Escape, and stays put whatever the pointer does after it. */
@Tag("long")
@Windowed
class EscapeWalkLongTest extends Walk {

  /** Drags, looks, presses Escape, drags on, lets go. */
  private void putBack(String what, Point2D from, double dx, double dy, Callable<Object> state) {
    Layout layout = hands.layout();
    String undo = undoName();
    Object before = Hands.onFx(state);
    hands.dragFrom(from, dx, dy);
    assertThat(Hands.onFx(state)).as(what + " is dragged").isNotEqualTo(before);
    hands.press(KeyCode.ESCAPE);
    assertThat(Hands.onFx(state)).as(what + " is put back").isEqualTo(before);
    hands.moveTo(from.add(dx / 2, dy / 2)).letGo();
    assertThat(Hands.onFx(state)).as(what + " stays put").isEqualTo(before);
    assertThat(hands.layout()).isSameAs(layout);
    assertThat(undoName()).isEqualTo(undo);
  }

  private String undoName() {
    return Hands.onFx(() -> hands.desk().session().get().undoName().orElse(""));
  }

  private Point2D middle(Node node) {
    return Hands.onFx(() -> Hands.middle(node));
  }

  /** Returns a place of the card with nothing on it. */
  private Point2D bare() {
    return Hands.onFx(
        () -> {
          Board board = hands.window().board();
          for (double x = 60; x < board.getWidth() - 200; x += 10) {
            double y = board.getHeight() - 80;
            if (board.subjectAt(x, y).isEmpty() && board.pinAt(x, y).isEmpty()) {
              return board.localToScreen(x, y);
            }
          }
          throw new AssertionError("the card is full");
        });
  }

  private PointMm placed(String pin) {
    return hands.desk().shown().get().study().placed().places().pin(pin);
  }

  @Test
  void pinsPartsPointsSectionsSlidersSlipsAndTheCardItself() throws Exception {
    begin(Demos.layout("heron"));
    putBack("a pin", hands.pin("backTop"), -30, 20, () -> placed("backTop"));
    assertThat(hands.desk().drags().drag()).isEmpty();

    putBack("the card", bare(), 40, 10, () -> hands.window().board().frame());

    pickOnCard("part:pan");
    putBack(
        "what is picked",
        hands.somewhereOn("part:pan"),
        30,
        -20,
        () -> hands.desk().shown().get().layout().pins().get("panFront"));

    pickOnCard("part:nose");
    hands.press(KeyCode.E);
    OutlineHand points = (OutlineHand) Hands.onFx(() -> hands.window().hands().hand());
    PointMm corner = Hands.onFx(() -> points.points().handles().get(0).at());
    Point2D at = hands.at(corner.x(), corner.z());
    Layout before = hands.layout();
    hands.dragFrom(at, 30, 20).press(KeyCode.ESCAPE);
    assertThat(Hands.onFx(() -> hands.window().hands().hand())).as("it works on").isSameAs(points);
    hands.letGo();
    assertThat(hands.layout()).isSameAs(before);
    hands.press(KeyCode.ESCAPE);
    assertThat(Hands.onFx(() -> hands.window().hands().hand())).isInstanceOf(Picking.class);

    Slider stature = hands.node("stature", Slider.class);
    putBack("a slider", middle(stature.lookup(".thumb")), 30, 0, stature::getValue);
    putBack("its groove", middle(stature.lookup(".track")), 60, 0, stature::getValue);

    Node ticket = hands.node("bench-ticket", Node.class);
    putBack(
        "a slip",
        middle(ticket.lookup(".ticket-head")),
        60,
        40,
        () -> new Point2D(ticket.getLayoutX(), ticket.getLayoutY()));

    hands.click("stance-open-lid");
    pickOnCard("");
    Callable<Object> opening = () -> hands.desk().options().opening();
    putBack(
        "how far it is open",
        middle(hands.node("opening-share", Slider.class).lookup(".thumb")),
        -50,
        0,
        opening);
    putBack("a section", hands.somewhereOn("part:lid"), 60, 60, opening);
  }

  @Test
  void photosAndTheirMarks() throws Exception {
    Path layout = Wren.file(Files.createDirectories(folder.resolve("machine")));
    Path photo = layout.resolveSibling("side.png");
    ImageIO.write(new BufferedImage(800, 600, BufferedImage.TYPE_INT_RGB), "png", photo.toFile());
    openOn(Wren.layout());
    open(layout);
    hands.click("trace");
    TextField field = hands.node("trace-file", TextField.class);
    Hands.onFx(
        () -> {
          field.setText(photo.toString());
          return null;
        });
    hands.press(KeyCode.ENTER);
    hands.click("photo-move");
    Point2D free = bare();
    putBack(
        "a photo",
        free,
        40,
        20,
        () -> hands.desk().shown().get().layout().photos().get("side").x());
    hands.press(KeyCode.ESCAPE);

    hands.click("photo-scale");
    hands.clickAt(free).clickAt(free.add(120, 0));
    PhotoMarks marks = (PhotoMarks) Hands.onFx(() -> hands.window().hands().hand());
    putBack("a mark", free, 30, 10, marks::marks);
  }
}
