package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
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

/** The stances of the machine, in a row to step through. */
final class StanceSteps extends VBox {

  private final Desk desk;
  private final FlowPane row = new FlowPane(0, 4);
  private final StanceSlides slides;
  private List<Condition> built = List.of();

  StanceSteps(Desk desk) {
    super(4);
    this.desk = desk;
    slides = new StanceSlides(desk);
    setId("stances");
    getStyleClass().add("stances");
    setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(this, Priority.ALWAYS);
    row.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(slides, row);
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
    if (!steps.equals(built)) {
      built = steps;
      row.getChildren().clear();
      for (Condition stance : steps) {
        ToggleButton step = new ToggleButton(words(stance));
        String name = stance.says();
        step.setId("stance-" + name.replaceAll("[^A-Za-z0-9]+", "-"));
        step.setUserData(stance);
        step.setAccessibleText("stance " + name);
        Bits.told(step, "stance " + name + ", keys [ and ]");
        step.getStyleClass().add("step");
        step.setMinWidth(USE_PREF_SIZE);
        step.setOnAction(
            e -> {
              desk.look(o -> o.withStance(Optional.of(stance)));
              step.setSelected(true);
            });
        row.getChildren().add(step);
      }
    }
    Optional<Condition> now = desk.shown().flatMap(BoardState::stance);
    for (Node node : row.getChildren()) {
      ((ToggleButton) node).setSelected(now.equals(Optional.of(node.getUserData())));
    }
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
    desk.shown()
        .ifPresent(
            s -> {
              List<Condition> steps = s.steps().stream().map(Standing::condition).toList();
              if (!steps.isEmpty()) {
                int now = s.standing().map(t -> steps.indexOf(t.condition())).orElse(-1);
                Condition next = steps.get(Math.floorMod(Math.max(now, 0) + by, steps.size()));
                desk.look(o -> o.withStance(Optional.of(next)));
              }
            });
  }
}
