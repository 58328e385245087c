package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.HBox;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.picture.Aspect;

/**
 * From where the machine is seen on the card, in a row to step through. With large letters in a
 * narrow window only the one seen stands there, and leads to the next.
 */
final class AspectSteps extends HBox {

  /** In a window narrower than this, for letters as usual, there is no room for all of them, px. */
  private static final double ALL_SEEN_PX = 1000 / 1.3;

  private final Desk desk;
  private final Runnable putDown;
  private final Map<Aspect, ToggleButton> steps = new EnumMap<>(Aspect.class);

  /**
   * @param putDown puts down what a hand does on the card, which it does in the elevation
   */
  AspectSteps(Desk desk, Runnable putDown) {
    this.desk = desk;
    this.putDown = putDown;
    Called.by(this, "aspects");
    for (Aspect aspect : Aspect.values()) {
      ToggleButton step = new ToggleButton(aspect.word());
      Called.by(step, "aspect-" + aspect.word());
      step.setAccessibleText("see the " + aspect.says());
      Bits.told(step, "see the " + aspect.says() + ", key X");
      step.getStyleClass().add("step");
      step.setMinWidth(USE_PREF_SIZE);
      step.setOnAction(e -> show(isShort() && aspect == desk.options().aspect() ? null : aspect));
      steps.put(aspect, step);
      getChildren().add(step);
    }
    desk.watch(this::refresh);
    sceneProperty().flatMap(Scene::widthProperty).addListener((o, was, is) -> refresh());
    refresh();
  }

  /** Returns what can be done, for keys and finder. */
  List<Deed> deeds() {
    List<Deed> deeds = new ArrayList<>();
    deeds.add(new Deed("see it from the side, from ahead, from above", "X", () -> show(null)));
    for (Aspect aspect : Aspect.values()) {
      deeds.add(new Deed("see the " + aspect.says(), "", () -> show(aspect)));
    }
    return deeds;
  }

  /** Shows the machine from there; from the next side for null. */
  void show(Aspect aspect) {
    if (desk.shown().isPresent()) {
      putDown.run();
      desk.look(o -> o.withAspect(aspect == null ? o.aspect().next() : aspect));
    }
    refresh();
  }

  private boolean isShort() {
    return getScene() != null && getScene().getWidth() < ALL_SEEN_PX * TextSize.of(this);
  }

  /** Shows where it is seen from, as far as there is room. */
  void refresh() {
    boolean few = isShort();
    steps.forEach(
        (aspect, step) -> {
          boolean on = aspect == desk.options().aspect();
          step.setSelected(on);
          step.setVisible(on || !few);
          step.setManaged(on || !few);
        });
  }
}
