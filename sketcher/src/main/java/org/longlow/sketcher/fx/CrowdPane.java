package org.longlow.sketcher.fx;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.Executor;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.layout.VBox;
import org.longlow.constraints.fit.SampledCrowd;
import org.longlow.rider.words.Units;
import org.longlow.sketcher.app.FitSet;
import org.longlow.sketcher.app.FitWords;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.desk.FitWork;
import org.longlow.svg.page.Page;

/** A slip over the card: how a whole population fits the machine, worked out beside the window. */
final class CrowdPane extends VBox {

  private static final long SEED = 1;
  private static final double AROUND_MM = 6;
  private static final double SHEET_PX = 300;

  private final Desk desk;
  private final FitWork work;
  private final TextField people = new TextField("1000");
  private final TextField women = new TextField("50");
  private final CheckBox adults = new CheckBox("US adults, from memory");
  private final Button begin;
  private final Button giveUp;
  private final ProgressBar bar = new ProgressBar(0);
  private final Label state = Bits.wrapped("", "bench-note");
  private final Label trouble = Bits.wrapped("", "trouble");
  private final VBox lines = new VBox(4);
  private final SheetView sheet = new SheetView();

  /** What cannot be read of what was typed last. */
  private String refusal = "";

  private FitWork.Outcome told;
  private Units toldIn;

  /**
   * @param owner the window's thread
   * @param close puts the slip away; what is worked out goes on
   */
  CrowdPane(Desk desk, Executor owner, Runnable close) {
    super(8);
    this.desk = desk;
    work = new FitWork(owner, this::refresh);
    Called.by(this, "crowd-slip");
    getStyleClass().addAll("slip", "over", "guide-slip");
    setMaxHeight(USE_PREF_SIZE);
    field(people, "crowd-people", "how many people, 1 to " + SampledCrowd.MOST);
    field(women, "crowd-women", "how many of a hundred are women");
    Called.by(adults, "crowd-adults");
    Bits.told(adults, "else soldiers of the survey, who are fitter and lighter than others");
    begin = Bits.words("crowd-begin", "Seat them", "seat them and judge each", this::start);
    giveUp = Bits.words("crowd-give-up", "Give up", "stop working it out", work::cancel);
    Called.by(bar, "crowd-bar");
    bar.setMaxWidth(Double.MAX_VALUE);
    bar.setMinHeight(USE_PREF_SIZE);
    bar.setAccessibleText("how much is done");
    Called.by(state, "crowd-state");
    Called.by(trouble, "crowd-trouble");
    Called.by(sheet, "crowd-sheet");
    sheet.setMinHeight(SHEET_PX);
    sheet.setPrefHeight(SHEET_PX);
    getChildren()
        .addAll(
            Bits.label("HOW A POPULATION FITS", "slip-title"),
            Bits.line(
                Bits.label("people"), people, Bits.label("women, of a hundred"), women, adults),
            Bits.line(
                begin, giveUp, Bits.words("crowd-away", "Put away", "put this slip away", close)),
            trouble,
            state,
            bar,
            Bits.pages("crowd-scroll", "how they fit", new VBox(8, lines, sheet)));
    desk.watch(this::refresh);
    refresh();
  }

  private void field(TextField field, String name, String spoken) {
    Called.by(field, name);
    field.setPrefColumnCount(5);
    field.setAccessibleText(spoken);
    field.setOnAction(e -> start());
  }

  /** Begins to ask. */
  void begin() {
    people.requestFocus();
    people.selectAll();
  }

  private void start() {
    OptionalDouble size = number(people, SampledCrowd.MOST, true);
    OptionalDouble share = number(women, 100, false);
    refusal = "";
    if (size.isEmpty() || size.getAsDouble() < 1) {
      refuse(people, "People is " + said(people) + "; write 1 to " + SampledCrowd.MOST + ".");
    } else if (share.isEmpty()) {
      refuse(women, "Women is " + said(women) + "; write 0 to 100 of a hundred.");
    } else {
      SampledCrowd.From from =
          adults.isSelected() ? SampledCrowd.From.ADULTS : SampledCrowd.From.SOLDIERS;
      desk.shown()
          .map(BoardState::study)
          .ifPresent(
              study ->
                  work.start(
                      study.placed(),
                      new SampledCrowd(
                          from.of(SEED, share.getAsDouble() / 100),
                          from,
                          (int) size.getAsDouble())));
    }
  }

  private void refuse(TextField field, String why) {
    refusal = why;
    refresh();
    field.requestFocus();
  }

  private static String said(TextField field) {
    return field.getText().isBlank() ? "empty" : "'" + field.getText().strip() + "'";
  }

  private static OptionalDouble number(TextField field, double most, boolean whole) {
    try {
      double value = Double.parseDouble(field.getText().strip());
      return value >= 0 && value <= most && (!whole || value == Math.rint(value))
          ? OptionalDouble.of(value)
          : OptionalDouble.empty();
    } catch (NumberFormatException e) {
      return OptionalDouble.empty();
    }
  }

  private void refresh() {
    giveUp.setDisable(!work.isRunning());
    show(bar, work.isRunning());
    bar.setProgress(work.share());
    trouble.setText(refusal.isEmpty() ? work.trouble() : refusal);
    show(trouble, !trouble.getText().isEmpty());
    Optional<BoardState> shown = desk.shown();
    boolean changed =
        work.outcome()
            .filter(o -> shown.filter(s -> s.study().layout() != o.layout()).isPresent())
            .isPresent();
    state.setText(
        work.isRunning()
            ? work.words()
            : changed ? "This is of the machine as it was before the last change." : "");
    show(state, !state.getText().isEmpty());
    Units units = shown.map(BoardState::units).orElse(Units.MM);
    FitWork.Outcome now = work.outcome().orElse(null);
    if (now != told || units != toldIn) {
      told = now;
      toldIn = units;
      tell(now, units);
    }
  }

  private void tell(FitWork.Outcome outcome, Units units) {
    lines.getChildren().clear();
    show(sheet, outcome != null);
    if (outcome == null) {
      lines
          .getChildren()
          .add(
              Bits.wrapped(
                  "People are sampled from the survey, seated one by one on the rider's seat with"
                      + " helmet and boots, and judged. It goes on while you work.",
                  "bench-note"));
      return;
    }
    List<String> all = new ArrayList<>(FitWords.shares(outcome.report(), units));
    all.addAll(FitWords.reasons(outcome.report(), units));
    outcome.adjusted().ifPresent(a -> all.addAll(FitWords.adjustments(a, units)));
    all.add(FitWords.CAUTION);
    all.forEach(line -> lines.getChildren().add(Bits.wrapped(line, "bench-note")));
    FitSet set = new FitSet(outcome.layout().name(), outcome.report(), outcome.adjusted(), units);
    sheet.show(
        Page.round(set.stature(), AROUND_MM), "stature over sitting height of each, by verdict");
  }

  private static void show(Node node, boolean is) {
    node.setVisible(is);
    node.setManaged(is);
  }

  /** Returns what can be done, for the list of keys. */
  Deed deed(Runnable open) {
    return new Deed("how a population fits: seat thousands of people", "Z", open);
  }
}
