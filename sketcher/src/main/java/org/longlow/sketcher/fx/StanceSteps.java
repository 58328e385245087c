package org.longlow.sketcher.fx;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import org.longlow.constraints.stand.Standing;
import org.longlow.sketcher.edit.Desk;
import org.longlow.sketcher.edit.Shown;

/** The stances of the machine, in a row to step through. */
final class StanceSteps extends VBox {

  private final Desk desk;
  private final FlowPane row = new FlowPane(0, 4);
  private List<String> built = List.of();

  StanceSteps(Desk desk) {
    super(4);
    this.desk = desk;
    setId("stances");
    getStyleClass().add("stances");
    setAlignment(Pos.CENTER_LEFT);
    HBox.setHgrow(this, Priority.ALWAYS);
    row.setAlignment(Pos.CENTER_LEFT);
    getChildren().addAll(Bits.label("stance   [ and ] step through", "bench-heading"), row);
    desk.watch(this::refresh);
  }

  private void refresh() {
    List<String> names =
        desk.shown().map(s -> s.steps().stream().map(Standing::name).toList()).orElse(List.of());
    if (!names.equals(built)) {
      built = names;
      row.getChildren().clear();
      for (String name : names) {
        ToggleButton step = new ToggleButton(words(name));
        step.setId("stance-" + name.replaceAll("[^A-Za-z0-9]+", "-"));
        step.setUserData(name);
        step.setAccessibleText("stance " + name);
        step.getStyleClass().add("step");
        step.setMinWidth(USE_PREF_SIZE);
        step.setOnAction(
            e -> {
              desk.look(o -> o.withStance(name));
              step.setSelected(true);
            });
        row.getChildren().add(step);
      }
    }
    String now = desk.shown().flatMap(Shown::standing).map(Standing::name).orElse("");
    for (Node node : row.getChildren()) {
      ((ToggleButton) node).setSelected(now.equals(node.getUserData()));
    }
  }

  /** The one who rides is known from the crew; only who sits behind needs saying. */
  private static String words(String name) {
    int and = name.indexOf(" and ");
    return and > 0
        ? "laden with " + name.substring(and + " and ".length())
        : name.startsWith("laden, ") ? "laden" : name.replace("open, ", "open ");
  }

  /** Steps to the next or last stance. */
  static void step(Desk desk, int by) {
    desk.shown()
        .ifPresent(
            s -> {
              List<String> names = s.steps().stream().map(Standing::name).toList();
              if (!names.isEmpty()) {
                int now = names.indexOf(s.standing().map(Standing::name).orElse(""));
                String next = names.get(Math.floorMod(Math.max(now, 0) + by, names.size()));
                desk.look(o -> o.withStance(next));
              }
            });
  }
}
