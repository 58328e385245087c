package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.ToggleButton;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.longlow.constraints.check.finding.FigureUnit;
import org.longlow.constraints.check.finding.Finding;
import org.longlow.constraints.check.person.HandFindings;
import org.longlow.constraints.layout.Stance;
import org.longlow.constraints.machine.ride.Suspension;
import org.longlow.constraints.stand.Condition;
import org.longlow.constraints.stand.Travel;
import org.longlow.constraints.stand.TravelWay;
import org.longlow.constraints.stand.Wheels;
import org.longlow.rider.words.FigureSort;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.Slide;
import org.longlow.sketcher.desk.SlideWork;
import org.longlow.sketcher.desk.SlideWork.Kind;
import org.longlow.sketcher.desk.Ways;

/**
 * The sliders that move the machine in its stance: how far the section shown open is open, and, as
 * somebody opens them, the travel of its wheels, how far it leans and how far it is steered.
 */
final class StanceSlides extends VBox {

  private final Label heading = Bits.label("stance   [ and ] step through", "bench-heading");

  private final Desk desk;
  private final SlideWork slides;
  private final WaySlider opening;
  private final WaySlider travel;
  private final WaySlider lean;
  private final WaySlider steer;
  private final Label words = Bits.wrapped("", "crew-figure");
  private final Map<Kind, ToggleButton> openers;
  private final List<ToggleButton> ends = new ArrayList<>();
  private final FlowPane line = new FlowPane(6, 4);
  private Kind told;
  private double toldAcross;

  StanceSlides(Desk desk) {
    super(2);
    this.desk = desk;
    slides = desk.slides();
    opening = new WaySlider("opening-share", "how far the section is open", new Opening());
    travel = new WaySlider("travel-share", "how far the wheels are up", new Along(Kind.TRAVEL));
    lean = new WaySlider("lean-deg", "how far it leans, left to right", new Along(Kind.LEAN));
    steer =
        new WaySlider("steer-deg", "how far it is steered, left to right", new Along(Kind.STEER));
    openers =
        Map.of(
            Kind.TRAVEL,
            toggle("travel", "travel", "move the wheels along their travel, key W", Kind.TRAVEL),
            Kind.LEAN,
            toggle("lean", "lean", "lean the machine to see what touches, key V", Kind.LEAN),
            Kind.STEER,
            toggle("steer", "steer", "turn the steering from lock to lock, key R", Kind.STEER));
    for (TravelWay.Ends which : TravelWay.Ends.values()) {
      ToggleButton end = step("travel-" + which.name().toLowerCase(Locale.ROOT));
      end.setText(which.name().toLowerCase(Locale.ROOT));
      end.setUserData(which);
      end.setAccessibleText(
          which == TravelWay.Ends.BOTH
              ? "move both wheels"
              : "move the " + end.getText() + " wheel");
      end.setOnAction(
          e -> {
            slides.move(which);
            end.setSelected(true);
          });
      ends.add(end);
    }
    Called.by(words, "slide-words");
    line.setAlignment(Pos.CENTER_LEFT);
    line.getChildren().add(heading);
    line.getChildren()
        .addAll(openers.get(Kind.TRAVEL), openers.get(Kind.LEAN), openers.get(Kind.STEER));
    line.getChildren().addAll(ends);
    line.getChildren().addAll(travel, lean, steer, opening);
    getChildren().addAll(line, words);
    desk.watch(this::refresh);
    refresh();
  }

  private static ToggleButton step(String id) {
    ToggleButton button = Bits.verbatim(new ToggleButton());
    Called.by(button, id);
    button.getStyleClass().add("step");
    button.setMinWidth(USE_PREF_SIZE);
    return button;
  }

  private ToggleButton toggle(String id, String text, String tip, Kind kind) {
    ToggleButton button = Bits.told(step(id), tip);
    button.setText(text);
    button.setAccessibleText(tip);
    button.setOnAction(e -> toggle(kind));
    return button;
  }

  /** Opens a slider and puts the keyboard on it, or closes it. */
  void toggle(Kind kind) {
    if (slides.open().equals(Optional.of(kind))) {
      slides.close();
    } else {
      slides.open(kind);
      (kind == Kind.TRAVEL ? travel : kind == Kind.LEAN ? lean : steer).take();
    }
  }

  private Optional<Condition> open() {
    return desk.options().stance().filter(c -> c.kind() == Stance.Kind.OPEN);
  }

  private void refresh() {
    Kind now = slides.open().orElse(null);
    openers.forEach(
        (kind, button) -> {
          button.setSelected(kind == now);
          button.setDisable(desk.shown().isEmpty());
        });
    boolean opens = open().isPresent();
    show(opening, opens);
    show(heading, now == null);
    show(travel, now == Kind.TRAVEL && !opens);
    show(lean, now == Kind.LEAN && !opens);
    show(steer, now == Kind.STEER && !opens);
    for (ToggleButton end : ends) {
      show(end, now == Kind.TRAVEL && !opens);
      end.setSelected(end.getUserData() == slides.ends());
    }
    opening.refresh();
    travel.refresh();
    lean.refresh();
    steer.refresh();
    String says = opens ? openWords() : now == null ? "" : says(now);
    words.setText(says);
    show(words, !says.isEmpty());
    keepHigh(opens ? null : now);
  }

  private String says(Kind now) {
    return switch (now) {
      case TRAVEL -> far();
      case LEAN -> leans();
      case STEER -> steers();
    };
  }

  /** While one slider moves, its words may become fewer lines but the card keeps its place. */
  private void keepHigh(Kind now) {
    // its own width, for the words get theirs only with the next layout
    double wide = getWidth() > 0 ? getWidth() : -1;
    double high = words.prefHeight(wide);
    if (now != null) {
      high = Math.max(high, 2 * words.prefHeight(-1)); // one line becomes two once it was looked
    }
    boolean same = now != null && now == told && wide == toldAcross;
    words.setMinHeight(same ? Math.max(high, words.getMinHeight()) : high);
    told = now;
    toldAcross = wide;
  }

  private static void show(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }

  private String openWords() {
    String far =
        String.format(
            Locale.ROOT,
            "%s %.0f %% open",
            open().orElseThrow().stance().section(),
            100 * desk.options().opening());
    return far
        + opening
            .slide()
            .flatMap(s -> s.marks().stream().findFirst())
            .map(m -> "; " + m.words())
            .orElse("");
  }

  /** How far the wheels are up, and where something touches. */
  private String far() {
    TravelWay way = slides.way().orElse(null);
    if (way == null) {
      return slides.travel().isPresent()
          ? "Looking along the way\u2026"
          : "Nobody rides it, so it is not laden: choose another stance.";
    }
    if (!way.moves()) {
      return "No wheel that is meant has any travel.";
    }
    Travel now = slides.travel().orElse(way.at(0));
    StringBuilder says = new StringBuilder();
    way.stops().stream()
        .filter(s -> Math.abs(s.share() - way.share(now)) < WaySlider.SAME)
        .findFirst()
        .ifPresent(s -> says.append("As ").append(s.name()).append(": "));
    says.append(wheels(now));
    int touches = 0;
    for (Slide.Mark mark : slides.slide().orElseThrow().marks()) {
      if (mark.touch()) {
        touches++;
        says.append("; ").append(mark.words()).append(" at ").append(wheels(way.at(mark.at())));
      }
    }
    return says + (touches == 0 ? "; nothing touches on the way" : "") + ".";
  }

  /** Travel as it is used up, from full droop on. */
  private String wheels(Travel now) {
    var shown = desk.shown().orElseThrow();
    Wheels wheels = Wheels.of(shown.layout(), shown.study().placed().places());
    Units units = shown.layout().units();
    return used(units, "front", now.frontMm(), wheels.frontSuspension())
        + ", "
        + used(units, "rear", now.rearMm(), wheels.rearSuspension());
  }

  private static String used(Units units, String end, double mm, Suspension s) {
    double whole = s.droopMm() + s.bumpMm();
    return whole == 0
        ? end + " rigid"
        : end
            + " "
            + units.bare(mm + s.droopMm(), FigureSort.WHOLE_LENGTH)
            + " of "
            + units.says(whole, FigureSort.WHOLE_LENGTH);
  }

  private String leans() {
    Slide slide = slides.slide().orElse(null);
    if (slide == null) {
      boolean laden =
          desk.shown()
              .flatMap(s -> s.standing())
              .filter(s -> s.kind() == Stance.Kind.LADEN)
              .isPresent();
      return laden ? "Looking along the way\u2026" : "A machine leans with somebody riding it.";
    }
    return String.format(
        Locale.ROOT,
        "%s. Touches first to the left: %s; to the right: %s.",
        side("Leans", "Upright", slides.value()),
        first(slide, true),
        first(slide, false));
  }

  private String steers() {
    Slide slide = slides.slide().orElse(null);
    if (slide == null) {
      return slides.travel().isPresent()
          ? "Looking along the way\u2026"
          : "Nobody rides it, so it is not laden: choose another stance.";
    }
    String hands =
        desk.shown().orElseThrow().findings().stream()
            .filter(f -> f.kind().equals(HandFindings.HANDS))
            .map(StanceSlides::briefly)
            .collect(Collectors.joining());
    return String.format(
            Locale.ROOT,
            "%s. Meets first to the left: %s; to the right: %s.",
            side("Steered", "Straight ahead", slides.value()),
            first(slide, true),
            first(slide, false))
        + hands;
  }

  /** Its sentence hangs over the place; here is room for one line. */
  private static String briefly(Finding hands) {
    String kept = Double.isNaN(hands.value()) ? "" : ", to " + FigureUnit.DEG.says(hands.value());
    return " " + hands.subject() + " " + hands.verdict().says() + kept + ".";
  }

  private static String side(String moved, String still, double deg) {
    return Math.abs(deg) < 0.05
        ? still
        : String.format(
            Locale.ROOT,
            "%s %.1f\u00b0 to the %s",
            moved,
            Math.abs(deg),
            deg < 0 ? "left" : "right");
  }

  private static String first(Slide slide, boolean left) {
    List<String> two = slide.sides(left, 2).stream().map(Slide.Mark::degWords).toList();
    return two.isEmpty() ? "nothing" : String.join(", then ", two);
  }

  /** The section that is shown open. */
  private final class Opening implements WaySlider.Way {
    @Override
    public Optional<Slide> slide() {
      return open().flatMap(c -> desk.shown().map(s -> Ways.opening(s.findings(), c)));
    }

    @Override
    public double value() {
      return desk.options().opening();
    }

    @Override
    public void set(double value) {
      desk.look(o -> o.withOpening(Math.max(0, Math.min(1, value))));
    }
  }

  /** What the desk moves, if it is that which is open. */
  private final class Along implements WaySlider.Way {
    private final Kind kind;

    Along(Kind kind) {
      this.kind = kind;
    }

    @Override
    public Optional<Slide> slide() {
      return slides.open().filter(kind::equals).flatMap(k -> slides.slide());
    }

    @Override
    public double value() {
      return slides.value();
    }

    @Override
    public void set(double value) {
      slides.set(value);
    }
  }
}
