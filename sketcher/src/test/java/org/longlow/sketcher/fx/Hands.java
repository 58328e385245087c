package org.longlow.sketcher.fx;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.ListCell;
import javafx.scene.control.ListView;
import javafx.scene.control.ScrollPane;
import javafx.scene.image.PixelReader;
import javafx.scene.input.KeyCode;
import javafx.scene.paint.Color;
import javafx.stage.PopupWindow;
import javafx.stage.Stage;
import org.longlow.constraints.layout.Layout;
import org.longlow.rider.geom.PointMm;
import org.longlow.sketcher.desk.Autosave;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.testfx.api.FxToolkit;
import org.testfx.util.WaitForAsyncUtils;

/** A pair of hands at a window: real pointer and key events, and waits for what they cause. */
final class Hands {

  static final long PATIENCE_S = 60;

  /**
   * Nobody looks at the screen of a test, and painting it in software is half of a walk. Pointer,
   * keys and layout take no notice of this; what a test looks at is painted for it, by a snapshot.
   */
  private static final double UNSEEN = 0;

  private final Fingers fingers = new Fingers();
  private final Window window;

  private Hands(Window window) {
    this.window = window;
  }

  /** Opens a window whose unsaved work is kept under {@code home}. */
  static Hands at(Path home, List<Layout> shipped) throws Exception {
    return at(
        stage ->
            LonglowWindow.show(
                stage,
                new Desk(Platform::runLater, new Autosave(home)),
                () -> shipped.stream().map(l -> new Shipped(l, Optional.empty())).toList()));
  }

  /** Opens whatever window is shown on the stage. */
  static Hands at(Function<Stage, Window> shown) throws Exception {
    Stage stage = FxToolkit.registerPrimaryStage();
    Window window = onFx(() -> shown.apply(stage));
    onFx(
        () -> {
          window.setOpacity(UNSEEN);
          return null;
        });
    return new Hands(window);
  }

  static <T> T onFx(Callable<T> job) {
    return WaitForAsyncUtils.waitForAsyncFx(PATIENCE_S * 1000, job);
  }

  Desk desk() {
    return window.desk();
  }

  Layout layout() {
    return onFx(() -> desk().session().get().layout());
  }

  BoardState shown() {
    return onFx(() -> desk().shown().get());
  }

  /** Waits until a condition holds on the interface thread. */
  void until(String what, Callable<Boolean> condition) {
    try {
      WaitForAsyncUtils.waitFor(PATIENCE_S, TimeUnit.SECONDS, () -> onFx(condition));
    } catch (TimeoutException e) {
      throw new AssertionError("waited in vain for: " + what, e);
    }
  }

  /** Waits until everything asked so far is answered and shown. */
  Hands settle() {
    Fingers.through();
    until("answers", () -> desk().isIdle());
    Fingers.painted(window.getScene());
    // what was laid out may have asked for more
    until("answers", () -> desk().isIdle());
    Fingers.through();
    return this;
  }

  Hands click(String id) {
    until("a visible #" + id, () -> find(id).map(Hands::isShown).orElse(false));
    // what has just appeared gets its place with the next layout
    settle();
    Node node = onFx(() -> find(id).get());
    Point2D at =
        onFx(
            () -> {
              window.applyCss();
              window.layout();
              intoView(node);
              window.layout();
              return middle(node);
            });
    jump(at);
    fingers.press();
    fingers.release();
    return settle();
  }

  /** Opens a list of choices and clicks one of them. */
  Hands choose(String id, String words) {
    click(id);
    until("choices of #" + id, () -> cell(words).isPresent() || scrolledTo(words));
    until("the choice " + words, () -> cell(words).isPresent());
    jump(onFx(() -> middle(cell(words).get())));
    fingers.press();
    fingers.release();
    return settle();
  }

  private static Optional<Node> cell(String words) {
    return lists()
        .flatMap(l -> l.lookupAll(".list-cell").stream())
        .filter(c -> c.isVisible() && words.equals(((ListCell<?>) c).getText()))
        .findFirst();
  }

  private static boolean scrolledTo(String words) {
    lists().filter(l -> l.getItems().contains(words)).forEach(l -> scroll(l, words));
    return lists().anyMatch(l -> l.getItems().contains(words));
  }

  private static <T> void scroll(ListView<T> list, Object item) {
    list.scrollTo(list.getItems().indexOf(item));
  }

  /** Lists of choices that are open, each in a window of its own. */
  private static Stream<ListView<?>> lists() {
    return javafx.stage.Window.getWindows().stream()
        .filter(PopupWindow.class::isInstance)
        .flatMap(w -> w.getScene().getRoot().lookupAll(".list-view").stream())
        .map(l -> (ListView<?>) l);
  }

  /** Turns the wheel, as it were, until a node on a long slip is seen. */
  private static void intoView(Node node) {
    Node at = node;
    while (at != null && !(at instanceof ScrollPane)) {
      at = at.getParent();
    }
    if (at instanceof ScrollPane scroll) {
      double all = scroll.getContent().getBoundsInLocal().getHeight();
      double seen = scroll.getViewportBounds().getHeight();
      double y =
          scroll.getContent().sceneToLocal(node.localToScene(0, 0)).getY()
              + node.getBoundsInLocal().getHeight() / 2;
      if (all > seen) {
        scroll.setVvalue(Math.max(0, Math.min(1, (y - seen / 2) / (all - seen))));
      }
    }
  }

  private static boolean isShown(Node node) {
    for (Node n = node; n != null; n = n.getParent()) {
      if (!n.isVisible()) {
        return false;
      }
    }
    return true;
  }

  static Point2D middle(Node node) {
    var b = node.localToScreen(node.getBoundsInLocal());
    return new Point2D((b.getMinX() + b.getMaxX()) / 2, (b.getMinY() + b.getMaxY()) / 2);
  }

  /** Returns what is called so, or the last of several names within the one before. */
  Optional<Node> find(String id) {
    Optional<Node> at = Optional.of(window);
    for (String name : id.split(" ")) {
      at = at.flatMap(n -> called(n, name));
    }
    return at;
  }

  /** Returns the first that is called so, from a node down. */
  static Optional<Node> called(Node from, String name) {
    if (name.equals(Called.of(from))) {
      return Optional.of(from);
    }
    if (from instanceof OnceSeen place && place.node().getParent() == null) {
      return called(place.node(), name);
    }
    if (from instanceof Parent parent) {
      for (Node child : parent.getChildrenUnmodifiable()) {
        Optional<Node> found = called(child, name);
        if (found.isPresent()) {
          return found;
        }
      }
    }
    return Optional.empty();
  }

  <T extends Node> T node(String id, Class<T> kind) {
    return kind.cast(onFx(() -> find(id).orElseThrow(() -> new AssertionError("no #" + id))));
  }

  /** Types over what is in a field and presses Enter. */
  Hands typeInto(String id, String text) {
    click(id);
    fingers.push(KeyCode.SHORTCUT, KeyCode.A);
    fingers.type(text, window.getScene());
    fingers.push(KeyCode.ENTER);
    return settle();
  }

  Hands write(String text) {
    fingers.type(text, window.getScene());
    return settle();
  }

  Hands press(KeyCode... keys) {
    fingers.push(keys);
    return settle();
  }

  /** Returns where a pin is on the screen. */
  Point2D pin(String name) {
    return onFx(
        () -> {
          PointMm at = desk().shown().get().onDrawing(name);
          ViewFrame f = window.board().frame();
          return window.board().localToScreen(f.screenX(at.x()), f.screenY(at.z()));
        });
  }

  /** Returns where a place of the drawn machine is on the screen. */
  Point2D at(double xMm, double zMm) {
    return onFx(
        () -> {
          PointMm px = window.board().onScreen(new PointMm(xMm, zMm));
          return window.board().localToScreen(px.x(), px.z());
        });
  }

  /** Clicks on the card, keys held. */
  Hands clickAt(Point2D at, KeyCode... held) {
    moveTo(at);
    fingers.hold(held);
    fingers.press();
    fingers.release();
    fingers.leave(held);
    return settle();
  }

  /** Clicks twice in quick succession, as one does who means a double click. */
  Hands clickTwiceAt(Point2D at) {
    moveTo(at);
    fingers.clickTwice();
    return settle();
  }

  /** Drags over the card from one place to another, keys held. */
  Hands dragAt(Point2D from, Point2D to, KeyCode... held) {
    moveTo(from);
    fingers.hold(held);
    fingers.press();
    for (int i = 1; i <= 5; i++) {
      jump(from.add(to.subtract(from).multiply(i / 5.0)));
    }
    fingers.release();
    fingers.leave(held);
    return settle();
  }

  Hands moveTo(Point2D at) {
    jump(at);
    return settle();
  }

  /** Moves the pointer at once, without a way there. */
  private void jump(Point2D at) {
    fingers.move(at);
  }

  /** Returns a place on the screen where a thing is drawn and nothing lies over it. */
  Point2D somewhereOn(String subject) {
    return onFx(
        () -> {
          Board board = window.board();
          Spots.Box box = board.boxOf(desk().shown().get(), subject);
          for (double x = Math.ceil(box.x()); x <= box.right(); x += 2) {
            for (double y = Math.ceil(box.y()); y <= box.bottom(); y += 2) {
              Point2D at = board.localToScreen(x, y);
              if (board.pinAt(x, y).isEmpty()
                  && isAllOf(board, subject, x, y)
                  && window.lookupAll(".ticket").stream().noneMatch(t -> covers(t, at))) {
                return at;
              }
            }
          }
          throw new AssertionError(subject + " is nowhere to be picked");
        });
  }

  /** Some way round too, for the pointer comes to rest on whole pixels. */
  private static boolean isAllOf(Board board, String subject, double x, double y) {
    for (int i = -1; i <= 1; i++) {
      for (int k = -1; k <= 1; k++) {
        if (board.subjectAt(x + 2 * i, y + 2 * k).filter(subject::equals).isEmpty()) {
          return false;
        }
      }
    }
    return true;
  }

  private static boolean covers(Node slip, Point2D screen) {
    return slip.isVisible() && slip.contains(slip.screenToLocal(screen));
  }

  /** Takes a pin and moves it by some pixels, still holding. */
  Hands drag(String name, double dx, double dy) {
    return dragFrom(pin(name), dx, dy);
  }

  /** Presses at a place and moves by some pixels, still holding. */
  Hands dragFrom(Point2D from, double dx, double dy) {
    moveTo(from);
    fingers.press();
    for (int i = 1; i <= 8; i++) {
      jump(from.add(dx * i / 8, dy * i / 8));
    }
    return settle();
  }

  /** Drags a node, such as the thumb of a slider, by some pixels, and lets go. */
  Hands slide(Node node, double dx, double dy) {
    Point2D from = onFx(() -> middle(node));
    moveTo(from);
    fingers.press();
    for (int i = 1; i <= 5; i++) {
      jump(from.add(dx * i / 5, dy * i / 5));
    }
    settle();
    return letGo();
  }

  /** Clicks with the other button where the pointer is. */
  Hands otherClickHere() {
    fingers.clickOther();
    return settle();
  }

  /** Presses the button where the pointer is, and lets go. */
  Hands pressHere() {
    fingers.press();
    return letGo();
  }

  Hands letGo() {
    fingers.release();
    return settle();
  }

  Hands scroll(int steps) {
    for (int i = 0; i < Math.abs(steps); i++) {
      fingers.notch(Integer.signum(steps));
    }
    return settle();
  }

  Window window() {
    return window;
  }

  /** Returns what the board looks like at a place on the screen. */
  Color pixel(Point2D screen) {
    return pixels(screen, 1).get(0);
  }

  /** Returns what the board looks like at a place on the screen and to the right of it. */
  List<Color> pixels(Point2D screen, int many) {
    return pixels(window.board(), screen, many);
  }

  /** As {@link #pixels(Point2D, int)}, of a node and what lies on it. */
  List<Color> pixels(Node of, Point2D screen, int many) {
    return onFx(
        () -> {
          Point2D p = of.screenToLocal(screen);
          SnapshotParameters some = new SnapshotParameters();
          some.setViewport(new Rectangle2D((int) p.getX(), (int) p.getY(), many, 1));
          PixelReader seen = of.snapshot(some, null).getPixelReader();
          return IntStream.range(0, many).mapToObj(x -> seen.getColor(x, 0)).toList();
        });
  }

  /** Leaves the window as a killed program does: nothing is saved, nothing is tidied up. */
  void abandon() throws Exception {
    FxToolkit.cleanupStages();
    desk().close(); // a program that ends holds no files any more
  }
}
