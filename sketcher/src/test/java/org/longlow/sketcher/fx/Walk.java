package org.longlow.sketcher.fx;

import java.nio.file.Path;
import java.util.Arrays;
import javafx.scene.Node;
import javafx.scene.paint.Color;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.io.TempDir;
import org.longlow.constraints.layout.Layout;
import org.testfx.api.FxToolkit;

/** A walk through a window that is opened for each test and put away after it. */
abstract class Walk {

  @TempDir Path folder;
  Hands hands;

  @AfterEach
  void leave() throws Exception {
    FxToolkit.cleanupStages();
  }

  /** Opens the window at its start page, where these machines lie. */
  final void openOn(Layout... shipped) throws Exception {
    hands = Hands.at(folder.resolve("home"), Arrays.asList(shipped));
  }

  /** Opens the window and takes a machine from its start page. */
  final void begin(Layout machine) throws Exception {
    openOn(machine);
    hands.click("machine-" + machine.name());
  }

  /** Opens a file in the window, and waits for its machine. */
  final void open(Path file) {
    Hands.onFx(
        () -> {
          hands.desk().files().open(file);
          return null;
        });
    hands.until("the machine", () -> hands.desk().shown().isPresent());
    hands.settle();
  }

  /** Picks what a ticket is wanted of, whatever lies over it on the card. */
  final Hands pick(String subject) {
    Hands.onFx(
        () -> {
          hands.desk().choose(subject);
          return null;
        });
    return hands.settle();
  }

  /** Picks as a click on the card does, which has the keyboard then. */
  final Hands pickOnCard(String subject) {
    Hands.onFx(
        () -> {
          hands.desk().choose(subject);
          hands.window().board().requestFocus();
          return null;
        });
    return hands.settle();
  }

  /** Returns what has the keyboard. */
  final Node focused() {
    return Hands.onFx(() -> hands.window().getScene().getFocusOwner());
  }

  /** Returns how far two colours are apart in the channel that differs most, in [0, 1]. */
  static double far(Color a, Color b) {
    return Math.max(
        Math.abs(a.getRed() - b.getRed()),
        Math.max(Math.abs(a.getGreen() - b.getGreen()), Math.abs(a.getBlue() - b.getBlue())));
  }
}
