package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Insets;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Layout;
import org.longlow.constraints.layout.Person;
import org.longlow.rider.words.FigureSort;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Edits;
import org.longlow.sketcher.edit.Target;

/** The row of people under the card: who sits, who is shown dashed, how tall and heavy. */
final class CrewRow extends HBox {

  /** Statures of the sliders, mm: a hand beyond the shortest and tallest percent of adults. */
  private static final double SHORTEST_MM = 1400;

  private static final double TALLEST_MM = 2100;
  private static final double LIGHTEST_KG = 40;
  private static final double HEAVIEST_KG = 150;
  private static final double TALLY_PX = 34;

  /** How long a slider is; it holds no words and so does not grow with letters. */
  private static final double SLIDER_PX = 150;

  /** How high a scroll bar is, px. */
  private static final double BAR_PX = 14;

  private final Desk desk;
  private final HBox people = new HBox(6);
  private final ScrollPane scroll = new ScrollPane();
  private final Slider stature = slider("stature", SHORTEST_MM, TALLEST_MM, 10);
  private final Slider mass = slider("mass", LIGHTEST_KG, HEAVIEST_KG, 1);
  private final Label statureWords = Bits.label("", "crew-figure", "crew-words");
  private final Label massWords = Bits.label("", "crew-figure", "crew-words");
  private Layout built;
  private boolean showing;

  /** What the slider that is held stood at when it was taken up. */
  private double taken;

  CrewRow(Desk desk) {
    super(14);
    this.desk = desk;
    Called.by(this, "crew");
    setAlignment(Pos.CENTER_LEFT);
    getStyleClass().add("crew");
    people.setAlignment(Pos.BOTTOM_LEFT);
    scroll.setContent(people);
    scroll.getStyleClass().addAll("slip-scroll", "people");
    scroll.setVbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
    scroll.setFocusTraversable(false);
    HBox.setHgrow(scroll, Priority.ALWAYS);
    scroll.widthProperty().addListener(o -> showBar());
    people.widthProperty().addListener(o -> showBar());
    follow(stature, true);
    follow(mass, false);
    VBox sliders = new VBox(2, Bits.line(statureWords, stature), Bits.line(massWords, mass));
    sliders.setAlignment(Pos.CENTER_LEFT);
    sliders.setMinWidth(Region.USE_PREF_SIZE);
    getChildren().addAll(scroll, sliders);
    desk.watch(this::refresh);
    refresh();
  }

  /** A bar only where there are more people than room for them, and then with room of its own. */
  private void showBar() {
    if (scroll.getHbarPolicy() != barWanted()) {
      Platform.runLater(
          () -> {
            // widths come one by one: what was wanted on the way to them no longer counts
            ScrollPane.ScrollBarPolicy policy = barWanted();
            scroll.setHbarPolicy(policy);
            boolean on = policy == ScrollPane.ScrollBarPolicy.ALWAYS;
            people.setPadding(new Insets(0, 0, on ? BAR_PX : 0, 0));
          });
    }
  }

  private ScrollPane.ScrollBarPolicy barWanted() {
    return people.getWidth() > scroll.getWidth() + 0.5 && scroll.getWidth() > 0
        ? ScrollPane.ScrollBarPolicy.ALWAYS
        : ScrollPane.ScrollBarPolicy.NEVER;
  }

  /** Turns the row so far that somebody is seen. */
  private void bringIntoView(Node tally) {
    double over = people.getWidth() - scroll.getViewportBounds().getWidth();
    if (over > 0) {
      Bounds at = tally.getBoundsInParent();
      double left = scroll.getHvalue() * over;
      double wanted =
          Math.min(at.getMinX(), Math.max(left, at.getMaxX() - people.getWidth() + over));
      scroll.setHvalue(Math.max(0, Math.min(1, wanted / over)));
    }
  }

  private static Slider slider(String id, double from, double to, double step) {
    Slider slider = new Slider(from, to, from);
    Called.by(slider, id);
    slider.setBlockIncrement(step);
    slider.setMinWidth(SLIDER_PX);
    slider.setPrefWidth(SLIDER_PX);
    slider.setAccessibleText(id + " of the person seated");
    return slider;
  }

  /** While the slider moves the change is only shown; letting go makes it a step. */
  private void follow(Slider slider, boolean isStature) {
    slider
        .valueProperty()
        .addListener(
            (o, was, is) -> {
              if (showing) {
                return;
              }
              if (slider.isValueChanging()) {
                desk.preview(edit(slider, isStature));
              } else {
                desk.settle(edit(slider, isStature), target(isStature));
              }
            });
    Held.putsBack(
        slider,
        before -> {
          showing = true;
          slider.setValueChanging(false);
          showing = false;
          desk.dropPreview();
        });
    slider
        .valueChangingProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                taken = slider.getValue();
              } else if (!showing && isMoved(slider, isStature)) {
                desk.settle(edit(slider, isStature), target(isStature));
              } else if (!showing) {
                desk.dropPreview();
              }
            });
  }

  /** Whether it was let go of where it was not taken up; rounding alone moves nobody. */
  private boolean isMoved(Slider slider, boolean isStature) {
    return slider.getValue() != taken && rounded(slider, isStature) != taken;
  }

  private static double rounded(Slider slider, boolean isStature) {
    return isStature
        ? Math.round(slider.getValue() / 5) * 5.0
        : Math.round(slider.getValue() * 2) / 2.0;
  }

  private Target target(boolean isStature) {
    return new Target.OfPerson(desk.options().person(), isStature);
  }

  private org.longlow.sketcher.edit.Edit edit(Slider slider, boolean isStature) {
    return Edits.set(
        target(isStature),
        String.format(Locale.ROOT, isStature ? "%.0f mm" : "%.1f kg", rounded(slider, isStature)));
  }

  private void refresh() {
    Optional<BoardState> shown = desk.shown();
    if (shown.isEmpty()) {
      stature.setVisible(false);
      mass.setVisible(false);
      return;
    }
    Layout layout = shown.get().layout();
    if (built == null || !built.crew().equals(layout.crew())) {
      rebuild(layout, shown.get());
    }
    built = layout;
    for (Node node : people.getChildren()) {
      if (node instanceof Tally tally) {
        tally.show();
      }
    }
    Person seated = layout.crew().get(desk.options().person());
    stature.setVisible(seated != null);
    mass.setVisible(seated != null);
    if (seated == null) {
      statureWords.setText("");
      massWords.setText("");
    } else {
      double tall = shown.get().study().placed().places().value(seated.stature());
      double heavy = shown.get().study().placed().places().value(seated.mass());
      showing = true;
      if (!stature.isValueChanging()) {
        stature.setValue(tall);
      }
      if (!mass.isValueChanging()) {
        mass.setValue(heavy);
      }
      showing = false;
      statureWords.setText("stature " + layout.units().says(tall, FigureSort.WHOLE_LENGTH));
      massWords.setText("mass " + layout.units().says(heavy, FigureSort.MASS_IN_TENTHS));
    }
  }

  private void rebuild(Layout layout, BoardState shown) {
    if (built != null && built.crew().keySet().equals(layout.crew().keySet())) {
      // same people: only their tallies change, and the keyboard stays where it is
      for (Node node : people.getChildren()) {
        if (node instanceof Tally tally) {
          tally.measure(shown);
        }
      }
      return;
    }
    people.getChildren().clear();
    ToggleGroup group = new ToggleGroup();
    for (String name : layout.crew().keySet()) {
      Tally tally = new Tally(name, group);
      tally.measure(shown);
      people.getChildren().add(tally);
    }
    if (layout.crew().isEmpty()) {
      people.getChildren().add(Bits.label("nobody in the crew", "bench-note"));
    }
  }

  /** One person: a mark as tall as they are, their name, and whether they are shown dashed. */
  private final class Tally extends VBox {
    private final String name;
    private final ToggleButton seat;
    private final CheckBox dashed = new CheckBox("ghost");
    private final Region stick = new Region();

    Tally(String name, ToggleGroup group) {
      super(2);
      this.name = name;
      getStyleClass().add("tally");
      seat = Bits.verbatim(new ToggleButton(name));
      Called.by(seat, "seat-" + name);
      seat.setToggleGroup(group);
      seat.getStyleClass().add("seat");
      Bits.told(seat, "seat " + name + "; keys . and , step through");
      stick.getStyleClass().add("stick");
      stick.setMinWidth(5);
      stick.setMaxWidth(5);
      HBox graphic = new HBox(stick);
      graphic.setAlignment(Pos.BOTTOM_CENTER);
      graphic.setMinHeight(TALLY_PX);
      seat.setGraphic(graphic);
      seat.setAccessibleText("seat " + name);
      seat.setOnAction(
          e -> {
            desk.seat(name);
            seat.setSelected(true);
          });
      Called.by(dashed, "ghost-" + name);
      dashed.setAccessibleText("show " + name + " as a ghost");
      Bits.told(dashed, "show " + name + " dashed");
      dashed.setOnAction(e -> desk.ghost(name, dashed.isSelected()));
      getChildren().addAll(seat, dashed);
    }

    void measure(BoardState shown) {
      Person person = shown.layout().crew().get(name);
      double tall = shown.study().placed().places().value(person.stature());
      double height = Math.max(6, TALLY_PX * tall / TALLEST_MM);
      stick.setMinHeight(height);
      stick.setMaxHeight(height);
    }

    void show() {
      boolean seated = desk.options().person().equals(name);
      if (seated && !seat.isSelected()) {
        bringIntoView(this);
      }
      seat.setSelected(seated);
      // who rides can still be shown on the other seats they are meant to fit
      boolean elsewhere =
          desk.shown()
              .map(n -> n.layout().crew().get(name))
              .map(p -> p.seats().size() > 1)
              .orElse(false);
      dashed.setDisable(seated && !elsewhere);
      dashed.setSelected(desk.options().ghosts().contains(name));
    }
  }

  /** Seats the next or last of the crew. */
  static void step(Desk desk, int by) {
    desk.shown()
        .ifPresent(
            s -> {
              List<String> names = List.copyOf(s.layout().crew().keySet());
              if (!names.isEmpty()) {
                int now = Math.max(0, names.indexOf(desk.options().person()));
                desk.seat(names.get(Math.floorMod(now + by, names.size())));
              }
            });
  }
}
