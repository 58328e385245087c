package org.longlow.sketcher.fx;

import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.event.EventTarget;
import javafx.event.EventType;
import javafx.geometry.Point2D;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.robot.Robot;
import javafx.stage.Window;

/**
 * Pointer and keys. Each event is waited for until the interface thread is through with it, and no
 * longer: the waits that come with TestFX's robot sleep a twentieth of a second after every letter.
 */
final class Fingers {

  /** What the toolkit is told it hands on to the window in a later turn, some of it in two. */
  private static final int TURNS = 3;

  private final Robot robot = Hands.onFx(Robot::new);

  private void then(Runnable deed) {
    Hands.onFx(
        () -> {
          deed.run();
          return null;
        });
    through();
  }

  /** Waits until the interface thread is through with all that was sent to it. */
  static void through() {
    for (int turn = 0; turn < TURNS; turn++) {
      Hands.onFx(() -> null);
    }
  }

  /** Returns an event of the pointer that no robot sends, with no key held. */
  static MouseEvent event(
      EventType<MouseEvent> what, Point2D scene, Point2D screen, MouseButton button, int clicks) {
    return new MouseEvent(
        what,
        scene.getX(),
        scene.getY(),
        screen.getX(),
        screen.getY(),
        button,
        clicks,
        false,
        false,
        false,
        false,
        false,
        false,
        false,
        false,
        false,
        false,
        null);
  }

  void move(Point2D screen) {
    then(() -> robot.mouseMove(screen));
  }

  void press() {
    then(() -> robot.mousePress(MouseButton.PRIMARY));
  }

  void release() {
    then(() -> robot.mouseRelease(MouseButton.PRIMARY));
  }

  /** Clicks twice in one turn, so that it is a double click however busy the machine is. */
  void clickTwice() {
    then(
        () -> {
          for (int i = 0; i < 2; i++) {
            robot.mousePress(MouseButton.PRIMARY);
            robot.mouseRelease(MouseButton.PRIMARY);
          }
        });
  }

  /** Clicks with the other button. */
  void clickOther() {
    then(
        () -> {
          robot.mousePress(MouseButton.SECONDARY);
          robot.mouseRelease(MouseButton.SECONDARY);
        });
  }

  /** Turns the wheel by one notch; positive is towards the hand. */
  void notch(int way) {
    then(() -> robot.mouseWheel(way));
  }

  void hold(KeyCode... keys) {
    for (KeyCode key : keys) {
      then(() -> robot.keyPress(onThisSystem(key)));
    }
  }

  /** Lets go of keys, the last held first. */
  void leave(KeyCode... keys) {
    for (int i = keys.length - 1; i >= 0; i--) {
      KeyCode key = keys[i];
      then(() -> robot.keyRelease(onThisSystem(key)));
    }
  }

  void push(KeyCode... keys) {
    hold(keys);
    leave(keys);
  }

  private static KeyCode onThisSystem(KeyCode key) {
    boolean mac = System.getProperty("os.name").startsWith("Mac");
    return key != KeyCode.SHORTCUT ? key : mac ? KeyCode.COMMAND : KeyCode.CONTROL;
  }

  /** Types letters into whatever has the focus, whatever keys they are on. */
  void type(String text, Scene otherwise) {
    for (String letter : text.split("")) {
      for (EventType<KeyEvent> event :
          List.of(KeyEvent.KEY_PRESSED, KeyEvent.KEY_TYPED, KeyEvent.KEY_RELEASED)) {
        then(() -> Event.fireEvent(focused(otherwise), key(event, letter)));
      }
    }
  }

  private static KeyEvent key(EventType<KeyEvent> event, String letter) {
    String typed = event == KeyEvent.KEY_TYPED ? letter : KeyEvent.CHAR_UNDEFINED;
    return new KeyEvent(event, typed, letter, KeyCode.UNDEFINED, false, false, false, false);
  }

  private static EventTarget focused(Scene otherwise) {
    Scene scene =
        Window.getWindows().stream()
            .filter(Window::isFocused)
            .findFirst()
            .map(Window::getScene)
            .orElse(otherwise);
    return scene.getFocusOwner() != null ? scene.getFocusOwner() : scene;
  }

  /** Waits until everything has been laid out and painted once more. */
  static void painted(Scene scene) {
    CountDownLatch pulse = new CountDownLatch(1);
    Runnable seen = pulse::countDown;
    Hands.onFx(
        () -> {
          scene.addPostLayoutPulseListener(seen);
          Platform.requestNextPulse();
          return null;
        });
    try {
      if (!pulse.await(Hands.PATIENCE_S, TimeUnit.SECONDS)) {
        throw new AssertionError("the window is not laid out any more");
      }
    } catch (InterruptedException e) {
      Thread.currentThread().interrupt();
      throw new AssertionError(e);
    }
    Hands.onFx(
        () -> {
          scene.removePostLayoutPulseListener(seen);
          return null;
        });
  }
}
