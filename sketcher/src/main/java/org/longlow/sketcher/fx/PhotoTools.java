package org.longlow.sketcher.fx;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;
import org.longlow.constraints.layout.Photo;
import org.longlow.constraints.shape.Places;
import org.longlow.sketcher.desk.BoardState;
import org.longlow.sketcher.desk.Desk;
import org.longlow.sketcher.edit.Edit;
import org.longlow.sketcher.edit.PhotoEdits;
import org.longlow.sketcher.edit.Target;
import org.longlow.sketcher.photo.Pixel;

/** What can be done with a photo that is picked: scale, level, square up, move, fade, hide. */
final class PhotoTools extends VBox {

  private static final String PREFIX = "photo:";
  private static final PseudoClass TAKEN = PseudoClass.getPseudoClass("taken");

  private final Desk desk;
  private final Board board;
  private final BoardHands hands;
  private final Slider fade = new Slider(0, 1, 0.5);
  private final CheckBox locked = new CheckBox("locked");
  private final CheckBox hidden = new CheckBox("hidden");
  private final TextField first = new TextField();
  private final TextField second = new TextField();
  private final Label ask = Bits.wrapped("", "bench-label");
  private final Label trouble = Bits.wrapped("", "trouble");
  private final VBox asking = new VBox(4);
  private final List<Button> marking;
  private final Button asTaken;
  private String photo = "";
  private boolean showing;
  private boolean sent;

  /** Makes an edit of what was typed. */
  private interface Answer {
    Edit edit(String first, String second);
  }

  private Answer answer;
  private Hand mine;
  private Button works;

  PhotoTools(Desk desk, Board board, BoardHands hands) {
    super(5);
    this.desk = desk;
    this.board = board;
    this.hands = hands;
    Called.by(this, "photo-tools");
    marking =
        List.of(
            Bits.words("photo-scale", "Scale", "scale by two points and a length", this::scale),
            Bits.words("photo-level", "Level", "level by two points", this::level),
            Bits.words("photo-square", "Square up", "square up by four corners", this::square),
            Bits.words("photo-move", "Move", "move the photo by pointer or arrows", this::move));
    asTaken =
        Bits.words(
            "photo-as-taken", "As taken", "show the photo as it was taken", this::showAsTaken);
    FlowPane buttons = new FlowPane(5, 5);
    buttons.getChildren().addAll(marking);
    buttons.getChildren().add(asTaken);
    Called.by(fade, "photo-fade");
    fade.setBlockIncrement(0.05);
    fade.setMinWidth(0);
    fade.setAccessibleText("how pale the photo is shown");
    Called.by(locked, "photo-locked");
    Called.by(hidden, "photo-hidden");
    Bits.told(locked, "pointer and keys leave the photo where it lies");
    Bits.told(hidden, "the photo is not shown");
    locked.setOnAction(e -> edit(PhotoEdits.locked(photo, locked.isSelected())));
    hidden.setOnAction(e -> edit(PhotoEdits.hidden(photo, hidden.isSelected())));
    followFade();
    Called.by(first, "photo-first");
    Called.by(second, "photo-second");
    for (TextField field : List.of(first, second)) {
      field.setPrefColumnCount(9);
      field.setOnKeyPressed(
          e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
              putDown();
              e.consume();
            }
          });
      field.setOnAction(e -> answered());
    }
    asking
        .getChildren()
        .addAll(
            ask,
            Bits.line(
                first,
                second,
                Bits.words("photo-answer", "Apply", "apply what was typed", this::answered)));
    stopAsking();
    Called.by(trouble, "trouble-photo");
    getChildren()
        .addAll(
            buttons,
            asking,
            trouble,
            Bits.line(
                Bits.whole(Bits.label("pale", "bench-label")),
                fade,
                Bits.whole(locked),
                Bits.whole(hidden)));
    hands.onTake(this::showTaken);
    desk.watch(this::refresh);
    refresh();
  }

  private static void show(Node node, boolean on) {
    node.setVisible(on);
    node.setManaged(on);
  }

  private Target target() {
    return new Target.OfEntry(PhotoEdits.entry(photo));
  }

  private void edit(Edit edit) {
    desk.edit(edit, target(), "");
  }

  /** While the slider moves the change is only shown; letting go makes it a step. */
  private void followFade() {
    fade.valueProperty()
        .addListener(
            (o, was, is) -> {
              if (!showing && fade.isValueChanging()) {
                desk.preview(PhotoEdits.faded(photo, fade.getValue()));
              } else if (!showing) {
                desk.settle(PhotoEdits.faded(photo, fade.getValue()), target());
              }
            });
    Held.putsBack(
        fade,
        before -> {
          showing = true;
          fade.setValueChanging(false);
          showing = false;
          desk.dropPreview();
        });
    fade.valueChangingProperty()
        .addListener(
            (o, was, is) -> {
              if (!is && !showing) {
                desk.settle(PhotoEdits.faded(photo, fade.getValue()), target());
              }
            });
  }

  private void refresh() {
    Optional<BoardState> shown = desk.shown();
    String chosen = desk.options().chosen();
    String name = chosen.startsWith(PREFIX) ? chosen.substring(PREFIX.length()) : "";
    Photo now = shown.map(s -> s.layout().photos().get(name)).orElse(null);
    show(this, now != null);
    // what is locked or hidden is not to be marked or moved: no hand says so any more
    if (!name.equals(photo) || now == null || now.locked() || now.hidden()) {
      putDown();
    }
    photo = name;
    if (now == null) {
      return;
    }
    showing = true;
    if (!fade.isValueChanging()) {
      fade.setValue(shown.get().places().value(now.fade()));
    }
    locked.setSelected(now.locked());
    hidden.setSelected(now.hidden());
    marking.forEach(b -> b.setDisable(now.locked() || now.hidden()));
    asTaken.setDisable(now.locked());
    show(asTaken, !now.corners().isEmpty());
    showing = false;
    boolean refused = desk.trouble().map(t -> t.target().equals(target())).orElse(false);
    trouble.setText(refused ? desk.trouble().get().refused().words() : "");
    show(trouble, refused);
    // what was refused can be typed again, its marks are still there
    if (sent && desk.isIdle()) {
      sent = false;
      if (!refused) {
        putDown();
      }
    }
  }

  private void putDown() {
    if (hands.hand() == mine) {
      hands.takeNothing();
    }
    mine = null;
    stopAsking();
  }

  private Places places() {
    return desk.shown().orElseThrow().places();
  }

  private void take(int button, Hand hand) {
    stopAsking();
    works = marking.get(button);
    desk.forgetTrouble();
    mine = hand;
    hands.take(hand);
  }

  /** The button of what the hand does looks pressed while it does it. */
  private void showTaken() {
    boolean taken = mine != null && hands.hand() == mine;
    for (Button button : marking) {
      button.pseudoClassStateChanged(TAKEN, taken && button == works);
    }
  }

  private void mark(int button, List<String> steps, String afterwards, Consumer<List<Pixel>> done) {
    take(button, new PhotoMarks(board, desk, photo, steps, afterwards, done, this::stopAsking));
  }

  private void scale() {
    mark(
        0,
        List.of("mark one end of something you know the length of", "mark its other end"),
        "type how long that is",
        marks ->
            ask(
                "how long is it between the two marks?",
                false,
                (length, none) ->
                    PhotoEdits.scaled(photo, places(), marks.get(0), marks.get(1), length)));
  }

  private void level() {
    mark(
        1,
        List.of("mark a point of something that is level", "mark another point at the same height"),
        "",
        marks -> {
          edit(PhotoEdits.level(photo, places(), marks.get(0), marks.get(1)));
          putDown();
        });
  }

  private void square() {
    mark(
        2,
        List.of(
            "mark the lower left corner of a rectangle you know",
            "mark its lower right corner",
            "mark its upper right corner",
            "mark its upper left corner"),
        "type how wide and how high it is",
        marks ->
            ask(
                "how wide and how high is the rectangle?",
                true,
                (wide, high) -> PhotoEdits.squared(photo, places(), marks, wide, high)));
  }

  private void move() {
    take(3, new PhotoShift(board, desk, photo));
  }

  private void showAsTaken() {
    edit(PhotoEdits.asTaken(photo, places()));
  }

  private void ask(String words, boolean two, Answer next) {
    boolean begins = answer == null;
    answer = next;
    ask.setText(words);
    first.setPromptText(two ? "wide" : "long");
    first.setAccessibleText(words.replace("?", two ? ", width" : ""));
    second.setPromptText("high");
    second.setAccessibleText(words.replace("?", ", height"));
    show(asking, true);
    show(second, two);
    if (begins) {
      first.clear();
      second.clear();
    }
    first.requestFocus();
  }

  private void stopAsking() {
    answer = null;
    show(asking, false);
  }

  private void answered() {
    boolean missing = first.getText().isBlank() || second.isVisible() && second.getText().isBlank();
    if (answer == null || missing) {
      (first.getText().isBlank() ? first : second).requestFocus();
      return;
    }
    String said = first.getText() + (second.isVisible() ? " by " + second.getText() : "");
    sent = true;
    desk.edit(answer.edit(first.getText(), second.getText()), target(), said);
  }
}
