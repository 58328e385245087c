package org.longlow.sketcher.fx;

import java.util.Optional;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import org.longlow.sketcher.desk.Slide;

/**
 * A slider that moves the machine along a way, with marks for what is on it. It stops where
 * something first touches; taken up again there, it goes on.
 */
final class WaySlider extends HBox {

  /** What a slider moves. */
  interface Way {
    /** Returns the way; empty while there is none, or it is not known yet. */
    Optional<Slide> slide();

    /** Returns how far along it the machine is. */
    double value();

    void set(double value);
  }

  /** The skin leaves half a thumb free at both ends of the groove, px. */
  private static final double END_PX = 8;

  /** As near as the slider cannot tell apart, as a share of its way. */
  static final double SAME = 0.004;

  private final Way way;
  private final Slider slider = new Slider(0, 1, 0);
  private final Pane marks = new Pane();
  private Slide built;
  private double taken;
  private boolean showing;

  /**
   * @param id of the slider; its marks are named after it
   * @param does what it is for, for who does not see it
   */
  WaySlider(String id, String does, Way way) {
    super(8);
    this.way = way;
    setAlignment(Pos.CENTER_LEFT);
    Called.by(slider, id);
    slider.setAccessibleText(does);
    slider.getStyleClass().add("way-slider");
    marks.setMouseTransparent(true);
    Called.by(marks, id + "-marks");
    slider.valueProperty().addListener((o, was, is) -> slid(was.doubleValue(), is.doubleValue()));
    slider
        .valueChangingProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                taken = slider.getValue();
              }
            });
    Held.putsBack(
        slider,
        before -> {
          slider.setValueChanging(false);
          way.set(before);
        });
    StackPane groove = new StackPane(slider, marks);
    groove.setMinWidth(USE_PREF_SIZE);
    slider.widthProperty().addListener((o, was, is) -> layMarks());
    getChildren().add(groove);
  }

  /** Puts the keyboard on the slider. */
  void take() {
    slider.requestFocus();
  }

  /** Returns the way that it moves along, if there is one. */
  Optional<Slide> slide() {
    return way.slide();
  }

  private double near() {
    return SAME * (slider.getMax() - slider.getMin());
  }

  /** The hand is stopped until it lets go; a key is stopped once. */
  private void slid(double was, double is) {
    if (showing || way.slide().isEmpty()) {
      return;
    }
    double from = slider.isValueChanging() ? taken : was;
    OptionalDouble stop =
        way.slide().map(s -> s.stop(from, is, near())).orElse(OptionalDouble.empty());
    double value = stop.orElse(is);
    show(value);
    way.set(value);
  }

  private void show(double value) {
    if (slider.getValue() != value) {
      showing = true;
      slider.setValue(value);
      showing = false;
    }
  }

  /** Shows what the way is now. */
  void refresh() {
    Slide slide = way.slide().orElse(null);
    if (slide == null) {
      return;
    }
    if (!slide.equals(built)) {
      built = slide;
      showing = true;
      slider.setMin(slide.from());
      slider.setMax(slide.to());
      slider.setBlockIncrement((slide.to() - slide.from()) / 20);
      showing = false;
      layMarks();
    }
    if (!slider.isValueChanging()) {
      show(way.value());
    }
  }

  private void layMarks() {
    marks.getChildren().clear();
    if (built == null || built.to() <= built.from()) {
      return;
    }
    double larger = TextSize.of(this);
    double end = END_PX * larger;
    for (Slide.Mark mark : built.marks()) {
      Region tick = new Region();
      boolean stops = mark.stop() != Slide.Stop.NOT;
      tick.getStyleClass().add(stops ? "way-stop" : mark.touch() ? "way-touch" : "way-mark");
      double share = (mark.at() - built.from()) / (built.to() - built.from());
      double wide = stops ? 3 : 1;
      double high = larger * (stops ? 16 : 9);
      double x = end + share * (slider.getWidth() - 2 * end);
      tick.resizeRelocate(x - wide / 2, (slider.getHeight() - high) / 2, wide, high);
      tick.setManaged(false);
      marks.getChildren().add(tick);
    }
  }
}
