package org.longlow.sketcher.fx;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Application;
import javafx.beans.value.ChangeListener;
import javafx.geometry.Rectangle2D;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.util.Duration;
import org.longlow.sketcher.desk.Autosave;
import org.longlow.sketcher.desk.Desk;

/** The window as a program. */
public final class LonglowWindow extends Application {

  private static final double WIDTH = 1280;
  private static final double HEIGHT = 800;

  /** The least that everything in the window has room in. */
  private static final double LEAST_WIDTH = 1000;

  private static final double LEAST_HEIGHT = 620;

  /** Share of a larger screen that the window opens at; the rest is for its border and others. */
  private static final double ROOMY = 0.92;

  /** How often the file on disk is looked at. */
  private static final Duration DISK_LOOK = Duration.seconds(2);

  private static Optional<Beginning> begun = Optional.empty();

  /**
   * Opens the window and returns when it is closed.
   *
   * @param file a layout file to open
   * @throws UnsupportedOperationException if there is no screen to open it on
   */
  public static void open(Optional<Path> file) {
    begun = Optional.of(new Beginning(file.map(Path::toAbsolutePath), Autosave.atHome()));
    Application.launch(LonglowWindow.class);
  }

  @Override
  public void start(Stage stage) {
    show(stage, begun.orElseGet(() -> new Beginning(Optional.empty(), Autosave.atHome())));
  }

  /** As large as it was the last time, as far as the screen allows. */
  static double side(double before, double usual, double screen) {
    return Math.min(screen, before > 0 ? before : Math.max(usual, ROOMY * screen));
  }

  /** On a screen that is too small for it the window is looked at piece by piece. */
  static Parent framed(Region window, double screenWidth, double screenHeight) {
    if (screenWidth >= LEAST_WIDTH && screenHeight >= LEAST_HEIGHT) {
      return window;
    }
    window.setMinSize(LEAST_WIDTH, LEAST_HEIGHT);
    ScrollPane scroll = new ScrollPane(window);
    scroll.setFitToWidth(true);
    scroll.setFitToHeight(true);
    scroll.setFocusTraversable(false);
    return scroll;
  }

  /** Shows the window on {@code stage}, with what was begun before there was one. */
  static Window show(Stage stage, Beginning begun) {
    return begun.shown((desk, shipped) -> show(stage, desk, shipped));
  }

  /** Shows the window on {@code stage}. */
  static Window show(Stage stage, Desk desk, Supplier<List<Shipped>> shipped) {
    Window window = new Window(desk, shipped);
    stage.setTitle("Longlow");
    Rectangle2D screen = Screen.getPrimary().getVisualBounds();
    stage.setScene(
        new Scene(
            framed(window, screen.getWidth(), screen.getHeight()),
            side(window.habits().widthPx(), WIDTH, screen.getWidth()),
            side(window.habits().heightPx(), HEIGHT, screen.getHeight())));
    stage.setMinWidth(Math.min(LEAST_WIDTH, screen.getWidth()));
    stage.setMinHeight(Math.min(LEAST_HEIGHT, screen.getHeight()));
    stage.setOnCloseRequest(
        e -> {
          if (!window.mayClose(stage::close)) {
            e.consume();
          }
        });
    Timeline disk = new Timeline(new KeyFrame(DISK_LOOK, e -> desk.files().checkDisk()));
    disk.setCycleCount(Timeline.INDEFINITE);
    disk.play();
    ChangeListener<Boolean> comingBack =
        (o, was, is) -> {
          if (is) {
            desk.files().checkDisk();
          }
        };
    stage.focusedProperty().addListener(comingBack);
    stage.setOnHidden(
        e -> {
          window.keepHabits();
          disk.stop();
          desk.close();
          // a stage may be shown again with another window, and is not to keep this one
          stage.focusedProperty().removeListener(comingBack);
        });
    stage.show();
    if (desk.session().isPresent()) {
      window.board().requestFocus(); // before there was a scene nothing could have the keyboard
    }
    return window;
  }
}
