package org.longlow.sketcher.fx;

import java.util.Locale;
import java.util.OptionalDouble;
import javafx.geometry.Pos;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.layout.HBox;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.finding.Verdict;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.stand.Condition;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Shown;

/**
 * How far the section that is shown open is open. It stops where something first comes too close;
 * taken up again there, it goes on.
 */
final class OpeningSlider extends HBox {

  /** As near to where it stops as the slider cannot tell apart. */
  private static final double SAME = 0.004;

  private final Desk desk;
  private final Label words = Bits.label("", "crew-figure");
  private final Slider slider = new Slider(0, 1, 1);
  private boolean showing;
  private boolean past;

  OpeningSlider(Desk desk) {
    super(8);
    this.desk = desk;
    setAlignment(Pos.CENTER_LEFT);
    slider.setId("opening-share");
    slider.setAccessibleText("how far the section is open");
    slider.setBlockIncrement(0.05);
    slider.setPrefWidth(170);
    slider.setMinWidth(120);
    words.setMinWidth(USE_PREF_SIZE);
    words.setId("opening-words");
    slider.valueProperty().addListener((o, was, is) -> slid(was.doubleValue(), is.doubleValue()));
    slider
        .valueChangingProperty()
        .addListener(
            (o, was, is) -> {
              if (is) {
                past = stop().isPresent() && slider.getValue() > stop().getAsDouble() - SAME;
              }
            });
    getChildren().addAll(slider, words);
    desk.watch(this::refresh);
    refresh();
  }

  private void slid(double was, double is) {
    if (showing) {
      return;
    }
    OptionalDouble stop = stop();
    double share = stop.isPresent() && stops(was, is, stop.getAsDouble()) ? stop.getAsDouble() : is;
    if (share != is) {
      showing = true;
      slider.setValue(share);
      showing = false;
    }
    desk.look(o -> o.withOpening(Math.max(0, Math.min(1, share))));
  }

  /** The hand is stopped until it lets go; a key is stopped once. */
  private boolean stops(double was, double is, double stop) {
    boolean comes = slider.isValueChanging() ? !past && was <= stop + SAME : was < stop - SAME;
    return comes && is > stop;
  }

  private static boolean isOpen(Condition condition) {
    return condition.kind() == Stance.Kind.OPEN;
  }

  /** Returns where on its way the section first comes too close to something. */
  private OptionalDouble stop() {
    Shown shown = desk.shown().orElse(null);
    Condition now = desk.options().stance().filter(OpeningSlider::isOpen).orElse(null);
    if (shown == null || now == null) {
      return OptionalDouble.empty();
    }
    return shown.study().findings().stream()
        .filter(f -> f.verdict() == Verdict.FAIL && f.stance().filter(now::equals).isPresent())
        .map(Finding::from)
        .filter(OptionalDouble::isPresent)
        .mapToDouble(OptionalDouble::getAsDouble)
        .min();
  }

  private void refresh() {
    Condition now = desk.options().stance().filter(OpeningSlider::isOpen).orElse(null);
    setVisible(now != null);
    setManaged(now != null);
    if (now == null) {
      return;
    }
    double share = desk.options().opening();
    if (!slider.isValueChanging() && slider.getValue() != share) {
      showing = true;
      slider.setValue(share);
      showing = false;
    }
    OptionalDouble stop = stop();
    words.setText(
        String.format(Locale.ROOT, "%s %.0f %% open", now.stance().section(), 100 * share)
            + (stop.isPresent()
                ? String.format(Locale.ROOT, "; too close from %.0f %%", 100 * stop.getAsDouble())
                : ""));
  }
}
