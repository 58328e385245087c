package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.picture.View;

/** The stances of the machine, in a row to step through. */
final class StanceSteps extends VBox {

  /** The step that is always there to come back to. */
  static final String DRAWN = View.DRAWN;

  private final Desk desk;
  private final FlowPane row = new FlowPane(0, 4);
  private final Scrolled rows = new Scrolled(row);
  private final StanceSlides slides;
  private List<Condition> built = List.of();

  /** The step that was brought into sight last. */
  private Node seen;

  StanceSteps(Desk desk) {
    super(4);
    this.desk = desk;
    slides = new StanceSlides(desk);
    Called.by(this, "stances");
    getStyleClass().add("stances");
    setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(this, Priority.ALWAYS);
    row.setAlignment(Pos.CENTER_LEFT);
    rows.getStyleClass().add("stance-rows");
    getChildren().addAll(slides, rows);
    desk.watch(this::refresh);
  }

  StanceSlides slides() {
    return slides;
  }

  private void refresh() {
    List<Condition> steps =
        desk.shown()
            .map(s -> s.steps().stream().map(Standing::condition).toList())
            .orElse(List.of());
    if (desk.shown().isPresent() && (row.getChildren().isEmpty() || !steps.equals(built))) {
      built = steps;
      row.getChildren().setAll(step(Optional.empty(), DRAWN, DRAWN));
      steps.forEach(c -> row.getChildren().add(step(Optional.of(c), words(c), c.says())));
    }
    Optional<Condition> now = desk.shown().flatMap(BoardState::stance);
    boolean drawn = desk.shown().map(s -> s.standing().isEmpty()).orElse(false);
    for (Node node : row.getChildren()) {
      Object stance = node.getUserData();
      boolean on = stance == null ? drawn : now.filter(stance::equals).isPresent();
      ((ToggleButton) node).setSelected(on);
      if (on && node != seen) {
        seen = node;
        Platform.runLater(() -> rows.bringIntoView(node));
      }
    }
  }

  private ToggleButton step(Optional<Condition> stance, String words, String name) {
    ToggleButton step = Bits.verbatim(new ToggleButton(words));
    Called.by(step, "stance-" + name.replaceAll("[^A-Za-z0-9]+", "-"));
    step.setUserData(stance.orElse(null));
    step.setAccessibleText("stance " + name);
    Bits.told(
        step,
        stance.isEmpty()
            ? "the machine as drawn, which its fields tell, keys [ and ]"
            : "stance " + name + ", keys [ and ]");
    step.getStyleClass().add("step");
    step.setMinWidth(USE_PREF_SIZE);
    step.setOnAction(
        e -> {
          desk.shown().ifPresent(s -> desk.look(o -> s.in(stance, o)));
          step.setSelected(true);
        });
    return step;
  }

  /** The one who rides is known from the crew; only who sits behind needs saying. */
  private static String words(Condition stance) {
    List<Occupant> aboard = stance.aboard();
    return switch (stance.kind()) {
      case LADEN ->
          aboard.size() == 1
              ? "laden"
              : "laden with "
                  + aboard.stream()
                      .skip(1)
                      .map(Occupant::person)
                      .collect(Collectors.joining(" and "));
      case OPEN -> "open " + stance.stance().section();
      default -> stance.says();
    };
  }

  /** Steps to the next or last stance. */
  static void step(Desk desk, int by) {
    desk.shown().ifPresent(s -> desk.look(o -> s.stepped(by, o)));
  }
}
