package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Occupant;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.seat.SeatParts;
import org.longlow.constraints.seat.Sitting;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Standing;
import org.longlow.constraints.study.Study;
import org.longlow.sketcher.desk.PaperChoice;
import org.longlow.sketcher.desk.PaperWork;

/** Who is aboard on a drawing, in which stance, and how far a section is open. */
final class PaperScene extends VBox {

  private static final String NOBODY = "nobody";
  private static final String LADEN = "laden by those aboard";
  private static final String DRAWN = StanceSteps.DRAWN;

  private final PaperWork work;
  private final VBox seats = new VBox(6);
  private final Map<String, ComboBox<String>> people = new LinkedHashMap<>();
  private final Map<String, Condition> stances = new LinkedHashMap<>();
  private final ComboBox<String> stance = new ComboBox<>();
  private final Slider opening = new Slider(0, 1, 1);
  private final Label open = Bits.label("", "crew-figure");
  private boolean showing;

  PaperScene(PaperWork work) {
    super(6);
    this.work = work;
    Called.by(stance, "paper-stance");
    stance.getStyleClass().add("paper-choice");
    stance.setAccessibleText("stance on the drawing");
    stance.setOnAction(
        e -> {
          if (!showing && stance.getValue() != null) {
            boolean drawn = stance.getValue().equals(DRAWN);
            Optional<Condition> next = Optional.ofNullable(stances.get(stance.getValue()));
            work.choose(c -> drawn ? c.withAsDrawn() : c.withStance(next));
          }
        });
    Called.by(opening, "paper-opening");
    opening.setAccessibleText("how far the section is open");
    opening.setBlockIncrement(0.05);
    opening
        .valueProperty()
        .addListener(
            (o, was, is) -> {
              if (!showing) {
                work.choose(c -> c.withOpening(Math.round(100 * is.doubleValue()) / 100.0));
              }
            });
    getChildren()
        .addAll(
            seats,
            Bits.line(Bits.label("stance", "bench-label"), stance),
            Bits.line(opening, open));
  }

  /** Offers who can sit where, and the stances there are. */
  void begin(Study study) {
    seats.getChildren().clear();
    people.clear();
    for (String seat : SeatParts.of(study.layout()).keySet()) {
      ComboBox<String> who = new ComboBox<>();
      Called.by(who, "paper-seat-" + seat);
      who.getStyleClass().add("paper-choice");
      who.setAccessibleText("who is on the seat " + seat);
      who.getItems().add(NOBODY);
      study.sittings().stream()
          .filter(s -> s.seat().equals(seat) && s.posture().isPresent())
          .map(Sitting::person)
          .forEach(who.getItems()::add);
      who.setOnAction(
          e -> {
            if (!showing && who.getValue() != null) {
              String name = who.getValue().equals(NOBODY) ? "" : who.getValue();
              work.choose(c -> c.seating(seat, name));
            }
          });
      people.put(seat, who);
      seats.getChildren().add(Bits.line(Bits.label(seat, "bench-label"), who));
    }
    stances.clear();
    study.standings().stream()
        .map(Standing::condition)
        .filter(c -> c.kind() != Stance.Kind.LADEN)
        .forEach(c -> stances.put(c.says(), c));
    List<String> names = new ArrayList<>(List.of(LADEN, DRAWN));
    names.addAll(stances.keySet());
    showing = true;
    stance.getItems().setAll(names);
    showing = false;
  }

  void refresh() {
    PaperChoice choice = work.choice();
    showing = true;
    people.forEach(
        (seat, who) ->
            who.setValue(
                choice.seated().stream()
                    .filter(o -> o.seat().equals(seat))
                    .map(Occupant::person)
                    .findFirst()
                    .orElse(NOBODY)));
    stance.setValue(
        choice.asDrawn()
            ? DRAWN
            : choice.stance().map(Condition::says).filter(stances::containsKey).orElse(LADEN));
    boolean opens = choice.stance().filter(c -> c.kind() == Stance.Kind.OPEN).isPresent();
    opening.setVisible(opens);
    opening.setManaged(opens);
    if (!opening.isValueChanging()) {
      opening.setValue(choice.opening());
    }
    open.setText(opens ? String.format(Locale.ROOT, "%.0f %% open", 100 * choice.opening()) : "");
    showing = false;
  }
}
